import { describe, expect, test } from "vitest";
import type { PlacedMember } from "../../src/item/placed.ts";
import { exact, inches, type Length } from "../../src/units/length.ts";
import { member, placed } from "./placing.ts";

/** [from, to] along an axis as text fractions. */
const span = (m: PlacedMember, axis: "x" | "y" | "z"): [string, string] => [text(m.min[axis]), text(m.max[axis])];
const text = (l: Length): string => (typeof l === "number" ? String(l) : l.toFraction(true));

const corral = `
overall: 30 x 18 x 26
sizes:
  clear: 3
pieces:
  strip: fence board, ripped to 1 11/16
panels:
  face:
    size: width x height
    legs: 2 strip, upright, from bottom to top, spread left to right
    rails: 6 strip, level, between legs, spread clear to top
  end:
    size: fit x height
    posts: 2 strip, upright, from clear to top, spread left to right
    rails: 6 strip, level, between posts, spread clear to top
stand:
  front-face: face, at front
  back-face: face, at back
  left-end: end, at left, between front-face and back-face
  right-end: end, at right, between front-face and back-face
  slats: 9 strip, flat, from front to back, under front-face rails, spread between front-face legs, end gaps
`;

describe("a corral of four panels and a floor", () => {
  const placing = placed(corral);

  test("has 2 x (2 + 6) + 2 x (2 + 6) + 9 = 41 members", () => {
    expect(placing.members).toHaveLength(41);
  });

  test("has face rails of 30 - 2 x 1 11/16 = 26 5/8", () => {
    expect(text(member(placing, "front-face/rails/3").length)).toBe("26 5/8");
  });

  test("has end panels of 18 - 2 x 5/8 = 16 3/4, their rails 16 3/4 - 2 x 1 11/16 = 13 3/8", () => {
    expect(text(placing.panels.find((p) => p.name === "left-end")?.width as Length)).toBe("16 3/4");
    expect(text(member(placing, "left-end/rails/1").length)).toBe("13 3/8");
  });

  test("spaces six rails from 3 to 26 by (23 - 6 x 1 11/16) / 5 = 2 23/40", () => {
    const rails = [1, 2].map((n) => member(placing, `front-face/rails/${n}`));
    expect(span(rails[0] as PlacedMember, "z")).toEqual(["3", "4 11/16"]);
    expect(text(rails[1]?.min.z as Length)).toBe(exact(75, 16).add(exact(103, 40)).toFraction(true));
  });

  test("lays nine slats 18 long with ten gaps of (26 5/8 - 9 x 1 11/16) / 10 = 1 23/160 and their tops at 3", () => {
    const slats = placing.gaps.find((g) => g.group === "slats");
    expect(text(slats?.gap as Length)).toBe("1 23/160");
    const first = member(placing, "slats/1");
    expect(span(first, "y")).toEqual(["0", "18"]);
    expect(span(first, "z")).toEqual(["2 3/8", "3"]);
    expect(text(first.min.x)).toBe(exact(27, 16).add(exact(183, 160)).toFraction(true));
  });

  test("turns the back so that its first rail end is at the item's right", () => {
    const leg = member(placing, "back-face/legs/1");
    expect(span(leg, "x")).toEqual(["28 5/16", "30"]);
    expect(span(leg, "y")).toEqual(["17 3/8", "18"]);
    expect(leg.lie.show).toEqual({ axis: "y", sign: 1 });
  });

  test("re-flows when it is 29 1/2 wide: rails 29 1/2 - 3 3/8 = 26 1/8", () => {
    const narrow = placed(corral.replace("30 x 18", "29 1/2 x 18"));
    expect(text(member(narrow, "front-face/rails/1").length)).toBe("26 1/8");
    expect(narrow.members).toHaveLength(41);
  });
});

const rack = `
overall: 28 x 14 x 60
sizes:
  pitch: 18
pieces:
  strip: fence board, ripped to 2 1/2
panels:
  face:
    size: width x height
    legs: 2 strip, upright, from bottom to top, spread left to right
    strips: 4 strip, level, between legs, lapping half, on back of legs, top every pitch down from height - thickness of strip
stand:
  front-face: face, at front
  back-face: face, at back
  sides: 2 strip, on edge, between front-face legs and back-face legs, spread left to right, top at top of each front-face strips
  boards: 4 strip, flat, from left to right, on each front-face strips, spread between front-face legs and back-face legs
`;

describe("a rack of two faces and four decks", () => {
  const placing = placed(rack);

  test("has 4 legs, 8 strips, 8 side boards and 16 deck boards: 36 members", () => {
    expect(placing.members).toHaveLength(36);
  });

  test("has strips from leg centre to leg centre, 28 - 2 x 1 1/4 = 25 1/2, on the legs' inner faces", () => {
    const strip = member(placing, "front-face/strips/4");
    expect(text(strip.length)).toBe("25 1/2");
    expect(span(strip, "y")).toEqual(["5/8", "1 1/4"]);
    expect(span(strip, "z")).toEqual(["56 7/8", "59 3/8"]);
    expect(span(member(placing, "front-face/strips/1"), "z")).toEqual(["2 7/8", "5 3/8"]);
  });

  test("has deck tops at 60, 42, 24 and 6", () => {
    expect([13, 9, 5, 1].map((n) => inches(member(placing, `boards/${n}`).max.z))).toEqual([60, 42, 24, 6]);
  });

  test("spaces four boards over 14 - 2 x 5/8 = 12 3/4 by (12 3/4 - 10) / 3 = 11/12", () => {
    expect(text(placing.gaps.find((g) => g.group === "boards")?.gap as Length)).toBe("11/12");
    expect(span(member(placing, "boards/1"), "y")).toEqual(["5/8", "3 1/8"]);
    expect(span(member(placing, "boards/1"), "x")).toEqual(["0", "28"]);
  });

  test("has side boards 12 3/4 long, level with the legs' outer edges", () => {
    const side = member(placing, "sides/2");
    expect(text(side.length)).toBe("12 3/4");
    expect(span(side, "x")).toEqual(["27 3/8", "28"]);
    expect(side.lie.show).toEqual({ axis: "x", sign: 1 });
  });

  test("re-flows with decks 16 apart and 26 wide", () => {
    const other = placed(rack.replace("pitch: 18", "pitch: 16").replace("28 x 14", "26 x 14"));
    expect([13, 9, 5, 1].map((n) => inches(member(other, `boards/${n}`).max.z))).toEqual([60, 44, 28, 12]);
    expect(text(member(other, "front-face/strips/2").length)).toBe("23 1/2");
  });
});

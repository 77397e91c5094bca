import { describe, expect, test } from "vitest";
import { inches, type Length } from "../../src/units/length.ts";
import { member, place, placed } from "./placing.ts";

const degrees = Math.PI / 180;

const trestle = `
overall: 72 x fit x 36
sizes:
  splay: 14 deg
  top-depth: 24
  brace-height: 8
  setback: 10
pieces:
  stud: 2x4
  plank: 2x6
panels:
  trestle:
    size: fit x height - thickness of plank
    legs: 2 stud, mirrored, leaning splay inward, from bottom to top, touching at top
    brace: 1 stud, level, between legs, bottom at brace-height
    bearer: 1 stud, level, top-depth long, centred, top at top, on back of legs
stand:
  left-trestle: trestle, setback from left
  right-trestle: trestle, setback from right
  planks: 4 plank, flat, from left to right, on left-trestle, spread over top-depth, centred
`;

describe("a pair of trestles", () => {
  const placing = placed(trestle);
  const rise = 34.5;
  const t = Math.tan(14 * degrees);
  const c = Math.cos(14 * degrees);
  const foot = 3.5 / c;

  test("has 2 x (2 + 1 + 1) + 4 = 12 members", () => {
    expect(placing.members).toHaveLength(12);
  });

  test("reaches 2 x (34 1/2 tan 14 + 3 1/2 / cos 14) = 24.417 over its feet", () => {
    expect(inches(placing.overall.depth)).toBeCloseTo(2 * (rise * t + foot), 9);
  });

  test("say so where the depth is asked for, though the pieces decide it", () => {
    const worked = placing.work({ kind: "size", at: { file: "", line: 1, column: 1 }, name: "depth" }, undefined);
    expect("value" in worked && inches(worked.value)).toBeCloseTo(2 * (rise * t + foot), 9);
  });

  test("has legs with edges of 34 1/2 / cos 14 = 35.556 on a blank 3 1/2 tan 14 = 0.873 longer", () => {
    const leg = member(placing, "left-trestle/legs/1");
    expect(inches(leg.length)).toBeCloseTo(rise / c + 3.5 * t, 9);
    expect(leg.slant?.trims).toHaveLength(2);
  });

  test("has a brace that follows the legs: at 8 up the room is 2 x (34 1/2 - 8) tan 14, at 11 1/2 it is 2 x 23 tan 14", () => {
    const brace = member(placing, "left-trestle/brace");
    expect(inches(brace.length)).toBeCloseTo(2 * (rise - 8) * t, 9);
    expect(brace.slant?.trims.map((trim) => Math.abs(trim.normal[2]))).toEqual(
      [0, 1].map(() => expect.closeTo(Math.sin(14 * degrees), 9)),
    );
  });

  test("lays its planks level with 36", () => {
    expect(inches(member(placing, "planks/1").max.z)).toBe(36);
    expect(inches(placing.gaps.find((g) => g.group === "planks")?.gap as Length)).toBeCloseTo(2 / 3, 12);
  });

  test("leans 17 degrees when told so, and its feet follow", () => {
    const wide = placed(trestle.replace("14 deg", "17 deg"));
    const c17 = Math.cos(17 * degrees);
    expect(inches(wide.overall.depth)).toBeCloseTo(2 * (rise * Math.tan(17 * degrees) + 3.5 / c17), 9);
  });

  test("whose leg is given 35 1/2 long without a datum is told what each reading gives", () => {
    const { told } = place(trestle.replace("from bottom to top, touching", "35 1/2 long, bottom at bottom, touching"));
    expect(told.join("\n")).toContain("as its edge, edge 35 1/2");
    expect(told.join("\n")).toContain("as its length over all, edge 34 5/8");
  });
});

const hopper = `
overall: 12 x 12 x fit
sizes:
  slope: 12 deg
pieces:
  wall: 1x6
stand:
  front-wall: 1 wall, running left to right, on edge, leaning slope front, at front, bottom at bottom, mitred with left-wall and right-wall
  back-wall: 1 wall, running left to right, on edge, leaning slope back, at back, bottom at bottom, mitred with left-wall and right-wall
  left-wall: 1 wall, running front to back, on edge, leaning slope left, at left, bottom at bottom, mitred with front-wall and back-wall
  right-wall: 1 wall, running front to back, on edge, leaning slope right, at right, bottom at bottom, mitred with front-wall and back-wall
`;

describe("a hopper of four mitred walls, 12 degrees from plumb", () => {
  const placing = placed(hopper);

  test("is 5 1/2 cos 12 + 3/4 sin 12 = 5.536 high", () => {
    const c = Math.cos(12 * degrees);
    expect(inches(placing.overall.height)).toBeCloseTo(5.5 * c + 0.75 * Math.sin(12 * degrees), 9);
  });

  test("has walls 12 long over all, cut in upright planes at 45 degrees", () => {
    const wall = member(placing, "front-wall");
    expect(inches(wall.length)).toBeCloseTo(12, 9);
    for (const { normal } of wall.slant?.trims ?? []) {
      expect(normal.map(Math.abs)).toEqual([Math.SQRT1_2, Math.SQRT1_2, 0].map((v) => expect.closeTo(v, 9)));
    }
  });
});

describe("a frame mitred in its face", () => {
  const frame = placed(`
overall: 20 x 3/4 x 14
pieces:
  strip: 1x6, ripped to 2
panels:
  frame:
    size: width x height
    stiles: 2 strip, upright, spread left to right, mitred with rails 1 and rails 2
    rails: 2 strip, level, spread bottom to top, mitred with stiles 1 and stiles 2
stand:
  frame: frame, at front
`);

  test("has rails 20 and stiles 14 over all, trimmed at 45 degrees", () => {
    expect(inches(member(frame, "frame/rails/1").length)).toBeCloseTo(20, 9);
    expect(inches(member(frame, "frame/stiles/2").length)).toBeCloseTo(14, 9);
    const normal = member(frame, "frame/rails/1").slant?.trims[0]?.normal.map(Math.abs);
    expect(normal).toEqual([Math.SQRT1_2, 0, Math.SQRT1_2].map((v) => expect.closeTo(v, 9)));
  });
});

describe("a lid of boards on a slope from 10 in front to 16 at the back of a frame 30 deep", () => {
  const lidded = (front: string) =>
    placed(`
overall: 36 x 30 x fit
sizes:
  front-height: ${front}
pieces:
  board: 1x6
panels:
  lid:
    size: width x fit
    boards: 5 board, level, from left to right, spread bottom to top
stand:
  floor-boards: 2 board, flat, from left to right, bottom at bottom, spread front to back
  lid: lid, flat, sloping front-height at front to 16 at back, at front, back at back, left at left
`);
  const placing = lidded("10");
  const rise = 6 / 30;
  const slope = Math.atan(rise);

  test("is (30 - 3/4 sin a) / cos a up the slope, tan a = 6 / 30", () => {
    const lid = placing.panels.find((p) => p.name === "lid");
    expect(inches(lid?.height as Length)).toBeCloseTo((30 - 0.75 * Math.sin(slope)) / Math.cos(slope), 9);
  });

  test("has its underside 10 high at the very front and its top 16 + 3/4 cos a at the back less the lean of its end", () => {
    const first = member(placing, "lid/boards/1");
    const last = member(placing, "lid/boards/5");
    const foot = 0.75 * Math.sin(slope);
    expect(inches(first.min.y)).toBeCloseTo(0, 9);
    expect(inches(last.max.y)).toBeCloseTo(30, 9);
    expect(inches(first.min.z)).toBeCloseTo(10 + foot * rise, 9);
    expect(inches(last.max.z)).toBeCloseTo(16 + 0.75 * Math.cos(slope), 9);
    expect(first.slant?.width.map((v) => v)).toEqual(
      [0, Math.cos(slope), Math.sin(slope)].map((v) => expect.closeTo(v, 9)),
    );
  });

  test("follows when the front is 12 high", () => {
    const flatter = lidded("12");
    expect(inches(member(flatter, "lid/boards/1").min.z)).toBeCloseTo(
      12 + 0.75 * Math.sin(Math.atan(4 / 30)) * (4 / 30),
      9,
    );
  });
});

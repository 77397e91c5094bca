import { describe, expect, test } from "vitest";
import { memberOf, worked } from "./bench-yard.ts";

/** Two upright boards facing front, 10 long, each held by one rail behind; cuts as given. */
const pair = (cuts: string, board = "fence board, ripped to 2") => `
overall: 20 x fit x 10
pieces:
  strip: ${board}
  rail: fence board, ripped to 3
stand:
  posts: 2 strip, upright, facing front, from bottom to top, at front, spread left to right
  back-rail: rail, on edge, from left to right, on back of posts, bottom at 4
joins:
  back-rail to posts: 2 screw No. 6 x 1
cuts:
${cuts}
`;

const marks = (cuts: string, board?: string) =>
  worked(pair(cuts, board)).pieces.map((p) => [p.mark, p.count, p.members.join(" ")]);

describe("marks", () => {
  test("like boards share one: two posts 10 long are A, the rail 20 long is B, as their pieces are declared", () => {
    const item = worked(pair("  posts: hole 1/2, 2 from top, centred"));
    expect(item.pieces.map((p) => [p.mark, p.count, p.name])).toEqual([
      ["A", 2, "posts"],
      ["B", 1, "back-rail"],
    ]);
    // 10 x 2 x 5/8 = 12 1/2 less a round 1/2 across and 5/8 deep.
    expect(item.pieces[0]?.volume).toBeCloseTo(12.5 - (Math.PI / 16) * 0.625, 2);
  });

  test("a board turned end for end in its face is the same board: 2 from the top here, 2 from the bottom there", () => {
    expect(
      marks("  posts 1: hole 1/2, 2 from top, 1/2 from left\n  posts 2: hole 1/2, 2 from bottom, 1/2 from right"),
    ).toEqual([
      ["A", 2, "posts/1 posts/2"],
      ["B", 1, "back-rail"],
    ]);
  });

  test("a through hole is the same from either face of a board with two good faces: the board is turned over", () => {
    expect(
      marks("  posts 1: hole 1/2, 2 from top, 1/2 from left\n  posts 2: hole 1/2, 2 from top, 1/2 from right"),
    ).toEqual([
      ["A", 2, "posts/1 posts/2"],
      ["B", 1, "back-rail"],
    ]);
  });

  test("with one good face the two are left and right of one letter", () => {
    expect(
      marks(
        "  posts 1: hole 1/2, 2 from top, 1/2 from left\n  posts 2: hole 1/2, 2 from top, 1/2 from right",
        "rough board, ripped to 2",
      ),
    ).toEqual([
      ["A left", 1, "posts/1"],
      ["A right", 1, "posts/2"],
      ["B", 1, "back-rail"],
    ]);
  });

  test("mirrored holes that stop in the wood make a left and a right, whatever the faces", () => {
    const blind = (side: string) => `hole 1/2, 2 from top, 1/2 from ${side}, 1/4 deep, in front`;
    const item = worked(pair(`  posts 1: ${blind("left")}\n  posts 2: ${blind("right")}`));
    expect(item.pieces.map((p) => [p.mark, p.letter, p.hand])).toEqual([
      ["A left", "A", "left"],
      ["A right", "A", "right"],
      ["B", "B", undefined],
    ]);
    expect(memberOf(item, "posts/1").mark).toBe("A left");
    expect(memberOf(item, "posts/2").mark).toBe("A right");
  });

  test("a square board may be turned on its side: holes through either pair of faces are alike", () => {
    const square = (cuts: string) => marks(cuts, "2x2");
    expect(
      square("  posts 1: hole 1/4, 2 from top, centred\n  posts 2: hole 1/4, 2 from top, centred, in left"),
    ).toEqual([
      ["A", 2, "posts/1 posts/2"],
      ["B", 1, "back-rail"],
    ]);
  });

  test("longer boards of one piece come before shorter ones", () => {
    const item = worked(`
overall: 20 x fit x fit
pieces:
  strip: fence board, ripped to 2
stand:
  short: strip, flat, 12 long, running left to right, centred left to right, at front, bottom at 0
  tall: strip, flat, from left to right, at front, on short
joins:
  tall to short: 2 screw No. 6 x 1
`);
    expect(item.pieces.map((p) => [p.mark, p.name])).toEqual([
      ["A", "tall"],
      ["B", "short"],
    ]);
  });
});

describe("panels used again", () => {
  const faces = (second: string) => `
overall: 20 x 12 x 10
pieces:
  strip: rough board, ripped to 2
panels:
  face:
    size: width x height
    legs: 2 strip, upright, from bottom to top, spread left to right
    rail: strip, level, between legs, top at top
stand:
  front-face: face, at front
  back-face: face, at back${second}
  ties: 2 strip, on edge, between front-face legs and back-face legs, spread left to right, bottom at 0
joins:
  rail to legs: 2 pocket screw No. 6 x 1, back
  legs to ties: 1 screw No. 6 x 1 5/8
cuts:
  face legs 1: hole 1/2, 2 from top, 1/2 from left, 1/4 deep, in front
`;
  const body =
    "## Make\nmakes face, twice\n\n1. Lay **legs** and **rail**.\n\n## Stand\n\n1. Put up **front-face**, **back-face** and **ties**.";
  const bored = (second: string) =>
    worked(faces(second), body)
      .pieces.filter((p) => p.cuts.length > 0)
      .map((p) => [p.hand, p.count]);

  test("facing each other from front and back are alike: 2 bored legs of one mark", () => {
    expect(bored("")).toEqual([[undefined, 2]]);
  });

  test("mirrored are left and right: 1 of each", () => {
    expect(bored(", mirrored")).toEqual([
      ["left", 1],
      ["right", 1],
    ]);
  });

  test("a hole in the good face is told at the high end of the board's thickness", () => {
    const [leg] = worked(faces(""), body).pieces.filter((p) => p.cuts.length > 0);
    expect(leg?.cuts).toMatchObject([{ kind: "hole", axis: "thickness", from: "high", deep: 0.25 }]);
  });
});

describe("weight", () => {
  test("is wood by its yard's density with 0.1 oz a screw: 2 x 10 x 2 x 5/8 + 20 x 3 x 5/8 = 62 1/2 and 4 screws", () => {
    const item = worked(pair("  posts: notch 1 x 1, at top, at left").replace(/cuts:[\s\S]*/, ""));
    const density = memberOf(item, "back-rail").board.density;
    expect(item.woodWeight).toBeCloseTo(62.5 * density, 9);
    expect(item.weight).toBeCloseTo(62.5 * density + (4 * 0.1) / 16, 9);
    expect(item.centreOfMass[0]).toBeCloseTo(10, 9);
  });

  test("a kit that goes along weighs 4 oz more and moves nothing", () => {
    const plain = pair("").replace(/cuts:[\s\S]*/, "");
    const [without, along] = [worked(plain), worked(`${plain}fittings:\n  strap: anchor kit, loose\n`)];
    expect(along.weight - without.weight).toBeCloseTo(0.25, 12);
    expect(along.centreOfMass).toEqual(without.centreOfMass);
  });
});

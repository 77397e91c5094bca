// Half-laps and housings of boards that cross on the slant. Sums: plane geometry; two strips w and v wide that cross at an angle have
// w x v / sin of it in common.
import { describe, expect, test } from "vitest";
import { memberOf, pieceOf, told, worked } from "./bench-yard.ts";

const sine = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
const cosine = (degrees: number) => Math.cos((degrees * Math.PI) / 180);

const crossed = (way: string, brace = "leaning 30 deg right, left at 0, at front") => `
overall: fit x fit x 40
pieces:
  stud: 2x4
stand:
  post: stud, upright, facing front, from bottom to top, left at 12, at front
  brace: stud, upright, facing front, from bottom to top, ${brace}
joins:
  brace to post: ${way}
`;

describe("a 2x4 that leans 30 degrees across an upright one", () => {
  const item = worked(crossed("half-lap; glue"));
  const taken = ((3.5 * 3.5) / sine(30)) * 0.75;

  test("each loses 3 1/2 x 3 1/2 / sin 30 x 3/4 = 18 3/8", () => {
    expect(taken).toBeCloseTo(18.375, 9);
    expect(memberOf(item, "post").solid.volume).toBeCloseTo(40 * 3.5 * 1.5 - 18.375, 6);
    expect(memberOf(item, "brace").solid.volume).toBeCloseTo((40 / cosine(30)) * 3.5 * 1.5 - 18.375, 6);
  });

  test("the brace keeps the front half, so the post's cut is 0 to 3/4 from the front", () => {
    expect(memberOf(item, "post").cuts).toMatchObject([
      { kind: "prism", name: "half-lap", axis: "thickness", low: 0, high: 0.75 },
    ]);
    expect(memberOf(item, "brace").cuts).toMatchObject([{ low: 0.75, high: 1.5 }]);
  });

  test("they touch and share no room", () => {
    expect(item.overlaps).toEqual([]);
    const faces = item.contacts.filter(({ normal }) => Math.abs(normal[1]) > 0.9);
    expect(faces.reduce((sum, { area }) => sum + area, 0)).toBeCloseTo((3.5 * 3.5) / sine(30), 6);
  });
});

describe("other laps on the slant", () => {
  test("two mirrored braces across one rail are cut alike, left and right", () => {
    const item = worked(`
overall: fit x fit x 40
pieces:
  stud: 2x4
stand:
  braces: 2 stud, upright, facing front, mirrored, leaning 20 deg inward, from bottom to top, touching at top, at front
  rail: stud, on edge, running left to right, 30 long, centred, bottom at 10, at front
joins:
  braces to rail: half-lap; glue
`);
    expect(item.pieces.map(({ mark }) => mark)).toEqual(["A left", "A right", "B"]);
    expect(pieceOf(item, "A left").volume).toBeCloseTo(pieceOf(item, "A right").volume, 9);
    // Each crossing: 3 1/2 high along the rail, 3 1/2 / cos 20 wide, 3/4 deep.
    const one = ((3.5 * 3.5) / cosine(20)) * 0.75;
    expect(30 * 3.5 * 1.5 - pieceOf(item, "B").volume).toBeCloseTo(2 * one, 6);
  });

  test("let in 1/2: the post is cut 1/2 deep where the brace stands, and the brace stays whole", () => {
    const item = worked(crossed("let in; glue", "leaning 30 deg right, left at 0, front at 1"));
    expect(40 * 3.5 * 1.5 - memberOf(item, "post").solid.volume).toBeCloseTo(((3.5 * 3.5) / sine(30)) * 0.5, 6);
    expect(memberOf(item, "brace").cuts).toEqual([]);
    expect(item.overlaps).toEqual([]);
  });

  test("screws through a lap stand in the wood that is left", () => {
    const item = worked(crossed("half-lap; 2 screw No. 6 x 1 1/4, front"));
    expect(item.joins[0]?.driven.map(({ through, into }) => [through, into])).toEqual([
      [0.75, 0.5],
      [0.75, 0.5],
    ]);
  });
});

describe("screws through a lap from the side of the second board", () => {
  test("back is the post's face there: they go 3/4 through the post and 1/2 into the brace", () => {
    const { driven = [] } = worked(crossed("half-lap; 2 screw No. 6 x 1 1/4, back")).joins[0] ?? {};
    expect(driven.map(({ a, b, head, way, into }) => [a, b, head[1], way[1], into])).toEqual([
      ["post", "brace", 1.5, -1, 0.5],
      ["post", "brace", 1.5, -1, 0.5],
    ]);
  });

  test("without a lap the first board is the one they go through", () => {
    expect(told(crossed("2 screw No. 6 x 1 1/4, back", "leaning 30 deg right, left at 0, back at 0"))[0]).toMatch(
      /^heads-side-wrong/,
    );
  });
});

describe("what can't be sawn is told", () => {
  test("a half-lap whose first board stands behind the other", () => {
    expect(told(crossed("half-lap; glue", "leaning 30 deg right, left at 0, front at 1"))[0]).toMatch(
      /^half-lap-closed 10: /,
    );
  });

  test("boards of which one leans two ways have no face level with each other", () => {
    const skew = crossed("half-lap; glue", "leaning 30 deg right, leaning 2 deg back, left at 0, at front");
    expect(told(skew)[0]).toMatch(/^slant-carved 10: brace and post cross with no face of the one level/);
  });

  test("boards whose boxes meet but whose wood doesn't are told to cross nowhere", () => {
    expect(told(crossed("half-lap; glue", "leaning 30 deg right, left at 16, at front"))[0]).toMatch(
      /^join-no-crossing 10: /,
    );
  });
});

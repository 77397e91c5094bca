import { describe, expect, test } from "vitest";
import { memberOf, pieceOf, told, worked } from "./bench-yard.ts";

// A 2x4 is 1 1/2 x 3 1/2; a shelf of it 20 long lies on two legs.
const shelf = (cuts: string) => `
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  board: stud, flat, from left to right, at front, bottom at 10
  legs: 2 stud, upright, facing left, from bottom to 10, at front, spread left to right
joins:
  board to legs: 2 screw No. 10 x 3
cuts:
${cuts}
`;

const volume = 20 * 3.5 * 1.5;

describe("holes", () => {
  test("in the middle goes 1 1/2 through: 105 - pi/4 x 1 1/2 left, to the chords of its round", () => {
    const item = worked(shelf("  board: hole 1, centred"));
    const left = memberOf(item, "board").solid.volume;
    const removed = (Math.PI / 4) * 1.5;
    expect(volume - left).toBeLessThanOrEqual(removed);
    // FACTS of the reference models: 0.02 mm chords leave a 12 mm round 0.41 % low.
    expect(volume - left).toBeGreaterThan(removed * 0.995);
    expect(memberOf(item, "board").cuts).toMatchObject([
      { kind: "hole", axis: "thickness", across: 1, at3: [10, 1.75, 0] },
    ]);
  });

  test("15/16 from both ends and both edges are four, at 15/16 and 20 - 15/16, 15/16 and 3 1/2 - 15/16", () => {
    const glued = shelf("  board: hole 3/8, 15/16 from both ends and both edges").replace("2 screw No. 10 x 3", "glue");
    const item = worked(glued);
    const spots = memberOf(item, "board").cuts.map((c) => (c.kind === "hole" ? c.at3.slice(0, 2) : []));
    expect(spots).toEqual([
      [0.9375, 0.9375],
      [0.9375, 2.5625],
      [19.0625, 0.9375],
      [19.0625, 2.5625],
    ]);
  });

  test("drilled 1 deep in top starts at the top and leaves 1 1/2 - 1 = 1/2 of wood", () => {
    const item = worked(shelf("  board: hole 1/2, 3 from left, centred, 1 deep, in top"));
    const [hole] = memberOf(item, "board").cuts;
    expect(hole).toMatchObject({ axis: "thickness", deep: 1, from: "high", at3: [3, 1.75, 0] });
    const solid = memberOf(item, "board").solid;
    const bottom = solid.faces.find((f) => f.normal[2] === 1 && Math.abs(f.offset - 10.5) < 1e-9);
    expect(bottom?.area).toBeCloseTo(Math.PI / 16, 2);
  });

  test("into an edge runs across the board and is placed along it and through it", () => {
    const item = worked(shelf("  board: hole 1/2, 3 from right, centred, 2 deep, in front"));
    expect(memberOf(item, "board").cuts).toMatchObject([{ axis: "width", from: "low", deep: 2, at3: [17, 0, 0.75] }]);
  });

  test("that run out, go too deep, or aren't placed are told with their numbers", () => {
    expect(told(shelf("  board: hole 1, 1/4 from left, centred"))).toEqual([
      'cut-outside 12: "hole 1, 1/4 from left, centred" runs 1/4 past the left of board, which is 20 along the board.',
    ]);
    expect(told(shelf("  board: hole 1, centred, 2 deep, in top"))).toEqual([
      'cut-too-deep 12: "hole 1, centred, 2 deep, in top" goes 2 into the top of board, which is 1 1/2 there.',
    ]);
    expect(told(shelf("  board: hole 1, centred, 1 deep"))[0]).toMatch(/^cut-side-missing/);
    expect(told(shelf("  board: hole 1, 3 from left"))).toEqual([
      'cut-spot-missing 12: nothing says where "hole 1, 3 from left" sits across the board on board.',
    ]);
    expect(told(shelf("  board: hole 1, 3 from left, 4 from right, centred"))[0]).toMatch(/^cut-spot-twice/);
    expect(told(shelf("  board: hole 1, centred, 1 from top"))[0]).toMatch(/^cut-spot-idle/);
  });

  test("1 wide, 7/8 apart, run into each other; 1 1/8 apart they don't", () => {
    const two = (x: string) => shelf(`  board: hole 1, 3 from left, centred; hole 1, ${x} from left, centred`);
    expect(told(two("3 7/8"))[0]).toMatch(/^cuts-meet/);
    expect(told(two("4 1/8"))).toEqual([]);
  });
});

describe("notches and laps", () => {
  test("a notch 2 x 1 in a front corner takes 2 x 1 x 1 1/2 = 3 of 105 cubic inches", () => {
    const item = worked(shelf("  board: notch 2 x 1, 6 from left, at front"));
    expect(memberOf(item, "board").solid.volume).toBeCloseTo(volume - 3, 9);
    expect(memberOf(item, "board").cuts).toMatchObject([{ name: "notch", min: [6, 0, 0], max: [8, 1, 1.5] }]);
  });

  test("at the right it is measured from there: 20 - 6 - 2 = 12", () => {
    const item = worked(shelf("  board: notch 2 x 1, 6 from right, at back"));
    expect(memberOf(item, "board").cuts).toMatchObject([{ min: [12, 2.5, 0], max: [14, 3.5, 1.5] }]);
  });

  test("a lap 2 long 1/2 deep goes over the whole 3 1/2: 3 1/2 cubic inches", () => {
    const item = worked(shelf("  board: lap 2 long, 1/2 deep, in top, centred"));
    expect(memberOf(item, "board").solid.volume).toBeCloseTo(volume - 3.5, 9);
    expect(memberOf(item, "board").cuts).toMatchObject([{ name: "lap", min: [9, 0, 1], max: [11, 3.5, 1.5] }]);
  });

  test("wider than the board, as deep as it, or into its end are told", () => {
    expect(told(shelf("  board: notch 2 x 4, 6 from left, at front"))).toEqual([
      'cut-outside 12: "notch 2 x 4, 6 from left, at front" runs 1/2 past the back of board, which is 3 1/2 across the board.',
    ]);
    expect(told(shelf("  board: lap 2 long, 1 1/2 deep, in top, centred"))[0]).toMatch(/^cut-too-deep/);
    expect(told(shelf("  board: lap 2 long, 1/2 deep, in left, centred"))[0]).toMatch(/^lap-into-end/);
  });

  test("a hole may go through a lap but not into a notch", () => {
    expect(told(shelf("  board: lap 2 long, 1/2 deep, in top, centred; hole 1, centred"))).toEqual([]);
    expect(told(shelf("  board: notch 2 x 1, centred; hole 3, centred"))[0]).toMatch(/^cuts-meet/);
  });
});

test("cut boards have a mark of their own; the plain ones come first", () => {
  const item = worked(shelf("  legs 1: hole 1/2, centred"));
  expect(item.pieces.map((p) => [p.mark, p.count, p.members[0]])).toEqual([
    ["A", 1, "board"],
    ["B", 1, "legs/2"],
    ["C", 1, "legs/1"],
  ]);
  expect(pieceOf(item, "C").cuts).toHaveLength(1);
});

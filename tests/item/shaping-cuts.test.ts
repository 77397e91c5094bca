// Source of the circle and cone sums: plane geometry. Chords of 0.02 mm take up to 0.5 % off a round.
import { describe, expect, test } from "vitest";
import { memberOf, worked } from "./bench-yard.ts";

// A 2x4 is 1 1/2 x 3 1/2; a shelf of it 20 long lies on two legs, its top at 11 1/2.
const shelf = (cuts: string) => `
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  board: stud, flat, from left to right, at front, bottom at 10
  legs: 2 stud, upright, facing left, from bottom to 10, at front, spread left to right
joins:
  board to legs: glue
cuts:
  ${cuts}
`;
const board = (cuts: string) => memberOf(worked(shelf(`board: ${cuts}`)), "board");
const whole = 20 * 3.5 * 1.5;

describe("channels and arrises", () => {
  test("a rabbet 3/4 x 1/2 in top along front takes 20 x 3/4 x 1/2", () => {
    const { solid, cuts } = board("rabbet 3/4 x 1/2, in top, along front");
    expect(solid.volume).toBeCloseTo(whole - 20 * 0.75 * 0.5, 9);
    expect(cuts).toMatchObject([{ name: "rabbet", min: [0, 0, 1], max: [20, 0.75, 1.5] }]);
  });

  test("a rabbet along an end takes 3 1/2 x 3/4 x 1/2", () => {
    const { solid, cuts } = board("rabbet 3/4 x 1/2, in bottom, along right");
    expect(solid.volume).toBeCloseTo(whole - 3.5 * 0.75 * 0.5, 9);
    expect(cuts).toMatchObject([{ min: [19.25, 0, 0], max: [20, 3.5, 0.5] }]);
  });

  test("rabbets on all four arrises of a face share their corners: 23.5 x 2 less 4 corners, x 1/2 deep, 3/4 wide", () => {
    const sides = ["front", "back", "left", "right"].map((side) => `rabbet 3/4 x 1/2, in top, along ${side}`);
    const rim = 20 * 3.5 - 18.5 * 2;
    expect(board(sides.join("; ")).solid.volume).toBeCloseTo(whole - rim * 0.5, 9);
  });

  test("a dado 3/4 wide, 3/8 deep across the board takes 3 1/2 x 3/4 x 3/8", () => {
    expect(board("dado 3/4 wide, 3/8 deep, in top, 6 from left").solid.volume).toBeCloseTo(
      whole - 3.5 * 0.75 * 0.375,
      9,
    );
  });

  test("a groove 1/4 wide, 1/2 deep in its edge runs 20 long and sits through the thickness", () => {
    const { solid, cuts } = board("groove 1/4 wide, 1/2 deep, in front, centred");
    expect(solid.volume).toBeCloseTo(whole - 20 * 0.25 * 0.5, 9);
    expect(cuts).toMatchObject([{ min: [0, 0, 0.625], max: [20, 0.5, 0.875] }]);
  });

  test("a dado across a groove of the same depth shares its crossing", () => {
    const { solid } = board("dado 1 wide, 1/2 deep, in top, centred; groove 1 wide, 1/2 deep, in top, centred");
    expect(solid.volume).toBeCloseTo(whole - (3.5 + 20 - 1) * 0.5, 9);
  });
});

describe("sunk heads and rounded arrises are cut from the wood", () => {
  const slope = Math.tan((41 * Math.PI) / 180);
  /** A cone from radius a down to b with this slope: pi (a^3 - b^3) / (3 tan). */
  const cone = (a: number, b: number) => (Math.PI * (a ** 3 - b ** 3)) / (3 * slope);

  test.each(["top", "bottom"])(
    "a countersink 3/8 on a hole 3/16 in %s: pi (3/16^3 - 3/32^3) / (3 tan 41) less the hole through its cone",
    (side) => {
      const { solid } = board(`hole 3/16, 4 from left, centred, in ${side}, countersink 3/8`);
      const hole = Math.PI * (3 / 32) ** 2;
      const deep = (3 / 16 - 3 / 32) / slope;
      const taken = hole * 1.5 + cone(3 / 16, 3 / 32) - hole * deep;
      expect(Math.abs(whole - solid.volume - taken) / taken).toBeLessThan(0.012);
      expect(solid.volume).toBeGreaterThan(whole - taken);
    },
  );

  test("into an edge it is a cone along the width: 3 1/2 of hole", () => {
    const { solid } = board("hole 3/16, 4 from left, centred, in front, countersink 3/8");
    const hole = Math.PI * (3 / 32) ** 2;
    const taken = hole * 3.5 + cone(3 / 16, 3 / 32) - hole * (3 / 32 / slope);
    expect(Math.abs(whole - solid.volume - taken) / taken).toBeLessThan(0.012);
  });

  test("its walls are smooth: no edge between the facets of the cone is drawn", () => {
    const { solid } = board("hole 3/16, 4 from left, centred, in top, countersink 3/8");
    const sharp = solid.edges.filter(
      ({ smooth, a, b }) => !smooth && Math.abs(a[2] - b[2]) > 0.01 && Math.abs(a[2] - b[2]) < 0.2,
    );
    expect(sharp).toEqual([]);
  });

  test("an arris rounded to 3/8 along the front takes 20 x (1 - pi / 4) x 3/8 x 3/8; along the left 3 1/2 of it", () => {
    const corner = (1 - Math.PI / 4) * 0.375 ** 2;
    for (const [sides, long] of [
      ["in top, along front", 20],
      ["in bottom, along back", 20],
      ["in front, along bottom", 20],
      ["in top, along left", 3.5],
      ["in right, along back", 1.5],
    ] as const) {
      const taken = whole - board(`rounded arris 3/8, ${sides}`).solid.volume;
      expect(Math.abs(taken / (corner * long) - 1)).toBeLessThan(0.02);
    }
  });

  test("on both long arrises of the top and one end they meet in the corners", () => {
    const cuts = ["front", "back", "left"].map((side) => `rounded arris 1/4, in top, along ${side}`).join("; ");
    const one = (1 - Math.PI / 4) * 0.25 ** 2;
    const taken = whole - board(cuts).solid.volume;
    expect(taken).toBeLessThan(one * (20 + 20 + 3.5) * 1.02);
    expect(taken).toBeGreaterThan(one * (20 + 20 + 3));
  });

  test("left and right boards rounded on their outer arrises are each other's mirror", () => {
    const item = worked(
      shelf(
        "legs 1: rounded arris 1/2, in left, along front, hole 1/4, centred".replace(
          ", hole 1/4, centred",
          "; hole 1/4, 2 from top, 1 from front",
        ),
      ).replace(/$/, "  legs 2: rounded arris 1/2, in right, along front; hole 1/4, 2 from top, 1 from front\n"),
    );
    expect(item.pieces.map(({ mark }) => mark)).toEqual(["A", "B left", "B right"]);
  });
});

describe("channels that stop", () => {
  test("a groove stopped 2 from left and 3 from right runs 20 - 2 - 3 = 15", () => {
    const { solid, cuts } = board(
      "groove 1/4 wide, 1/2 deep, in top, centred, stopped 2 from left, stopped 3 from right",
    );
    expect(solid.volume).toBeCloseTo(whole - 15 * 0.25 * 0.5, 9);
    expect(cuts).toMatchObject([{ min: [2, 1.625, 1], max: [17, 1.875, 1.5] }]);
  });

  test("stopped 2 from both ends it runs 16; a dado stopped 1 from front runs 3 1/2 - 1", () => {
    expect(board("groove 1/4 wide, 1/2 deep, in top, centred, stopped 2 from both ends").solid.volume).toBeCloseTo(
      whole - 16 * 0.25 * 0.5,
      9,
    );
    expect(board("dado 3/4 wide, 3/8 deep, in top, 6 from left, stopped 1 from front").solid.volume).toBeCloseTo(
      whole - 2.5 * 0.75 * 0.375,
      9,
    );
  });

  test("a rabbet along the back, stopped 4 from left, takes 16 x 3/8 x 1/2", () => {
    const { solid, cuts } = board("rabbet 3/8 x 1/2, in top, along back, stopped 4 from left");
    expect(solid.volume).toBeCloseTo(whole - 16 * 0.375 * 0.5, 9);
    expect(cuts).toMatchObject([{ min: [4, 3.125, 1], max: [20, 3.5, 1.5] }]);
  });
});

describe("holes in grids and with sunk heads", () => {
  test("8 x 3 every 1, centred: from (20 - 7) / 2 = 6 1/2 along and (3 1/2 - 2) / 2 = 3/4 across", () => {
    const { cuts } = board("hole 3/8, 8 x 3 every 1, centred");
    expect(cuts).toHaveLength(24);
    expect(cuts[0]).toMatchObject({ at3: [6.5, 0.75, 0] });
    expect(cuts.at(-1)).toMatchObject({ at3: [13.5, 2.75, 0] });
  });

  test("1 from left and 1/2 from front is where the first one stands; two pitches", () => {
    const { cuts } = board("hole 1/4, 3 x 2 every 2 x 1 1/2, 1 from left, 1/2 from front");
    expect(cuts.map((cut) => (cut.kind === "hole" ? cut.at3.slice(0, 2) : []))).toEqual([
      [1, 0.5],
      [1, 2],
      [3, 0.5],
      [3, 2],
      [5, 0.5],
      [5, 2],
    ]);
  });

  test("a counterbore 1 x 1/2 on a hole of 1/2: pi/4 (1/2^2 x 1 + 1^2 x 1/2)", () => {
    const { solid } = board("hole 1/2, centred, in top, counterbore 1 x 1/2");
    const removed = (Math.PI / 4) * (0.25 * 1 + 0.5);
    expect(Math.abs((whole - solid.volume) / removed - 1)).toBeLessThan(0.005);
  });

  test("a countersink is told with its hole, from the side it is sunk at", () => {
    expect(board("hole 3/16, centred, in top, countersink 3/8").cuts).toMatchObject([
      { countersink: 0.375, from: "high" },
    ]);
  });
});

describe("recesses, slots, openings", () => {
  test("a recess in an edge, A along the board: 1 3/8 x 5/8 x 1/16", () => {
    const { solid, cuts } = board("recess 1 3/8 x 5/8 x 1/16, in back, 2 from left, centred");
    expect(solid.volume).toBeCloseTo(whole - (11 / 8) * (5 / 8) * (1 / 16), 9);
    expect(cuts).toMatchObject([{ min: [2, 3.4375, 0.4375], max: [3.375, 3.5, 1.0625] }]);
  });

  test("a slot 2 x 1/2 right through: (1 1/2 x 1/2 + pi/16) x 1 1/2", () => {
    const removed = (1.5 * 0.5 + Math.PI / 16) * 1.5;
    expect(Math.abs((whole - board("slot 2 x 1/2, centred").solid.volume) / removed - 1)).toBeLessThan(0.002);
  });

  test("a slot in a recess goes on from its floor: only what the recess left counts", () => {
    const { solid } = board(
      "recess 1 3/8 x 5/8 x 1/16, in back, 2 from left, centred; slot 7/8 x 3/8 x 1/2, in back, 2 1/4 from left, centred",
    );
    const slot = (0.5 * 0.375 + (Math.PI / 4) * 0.375 ** 2) * (7 / 16);
    expect(whole - solid.volume).toBeCloseTo((11 / 8) * (5 / 8) * (1 / 16) + slot, 3);
  });

  test("an opening 6 x 2 with corners of 1/2: (12 - (4 - pi) / 4) x 1 1/2", () => {
    const removed = (12 - (4 - Math.PI) / 4) * 1.5;
    expect(Math.abs((whole - board("opening 6 x 2, corners 1/2, centred").solid.volume) / removed - 1)).toBeLessThan(
      0.002,
    );
  });
});

describe("corners, arrises, slopes", () => {
  test("four corners of 1 take (4 - pi) x 1 1/2, the two at the left half of it", () => {
    const corner = (1 - Math.PI / 4) * 1.5;
    expect((whole - board("rounded corners 1").solid.volume) / corner / 4).toBeCloseTo(1, 1);
    expect((whole - board("rounded corners 1, along left").solid.volume) / corner / 2).toBeCloseTo(1, 1);
  });

  test("two corners may meet: radius 1 3/4 along an end 3 1/2 wide leaves a half round", () => {
    expect(board("rounded corners 1 3/4, along left").solid.volume).toBeLessThan(whole);
  });

  test("eased arrises are listed and leave the solid alone", () => {
    const { solid, cuts } = board("eased arrises 1/8");
    expect(cuts).toMatchObject([{ kind: "eased", radius: 0.125 }]);
    expect(solid.volume).toBeCloseTo(whole, 9);
  });

  test("a slope from 10 at left to 11 1/2 at right leaves half the board", () => {
    expect(board("slope 10 at left to 11 1/2 at right").solid.volume).toBeCloseTo(whole / 2, 9);
  });

  test("layers under the line stay whole, the one it crosses loses a wedge: 36 wide, 10 in front to 16 at the back", () => {
    // Three 2x4 on edge, 36 long: heights 0..3 1/2, 3 1/2..7, 7..10 1/2; the line is over 10 1/2 from 1/2 in 6 of 36 on: 3 in.
    const item = worked(`
overall: 36 x fit x fit
pieces:
  stud: 2x4
stand:
  layers: 3 stud, on edge, from left to right, at front, bottom every 3 1/2 up from 0
joins:
  layers to layers: glue
cuts:
  layers: slope 10 at left to 16 at right
`);
    const volumes = [1, 2, 3].map((n) => memberOf(item, `layers/${n}`).solid.volume);
    const layer = 36 * 3.5 * 1.5;
    expect(volumes[0]).toBeCloseTo(layer, 9);
    expect(volumes[1]).toBeCloseTo(layer, 9);
    expect(volumes[2]).toBeCloseTo(layer - ((3 * 0.5) / 2) * 1.5, 9);
  });

  test("in a panel the heights and sides are the panel's own, seen from its good side", () => {
    const item = worked(`
overall: 36 x 12 x 10
pieces:
  stud: 2x4
panels:
  end:
    size: 12 x 10
    posts: 2 stud, upright, from bottom to top, spread left to right
    rail: 1 stud, level, between posts, at bottom
stand:
  left-end: end, at left
  right-end: end, at right
  bar: stud, flat, between left-end and right-end, at front, at bottom
joins:
  rail to posts: 2 pocket screw No. 8 x 2 1/2, back
  bar to posts: glue
cuts:
  left-end posts: slope 8 at left to 10 at right
`);
    // Seen from the left, the panel's left is the back: there the post is cut from 8 to 8 + 2 x 3 1/2 / 12.
    const cut = [1, 2].map((n) => memberOf(item, `left-end/posts/${n}`));
    const mean = (x: number) => 8 + (2 * x) / 12;
    expect(cut[0]?.solid.volume).toBeCloseTo(mean(1.75) * 3.5 * 1.5, 9);
    expect(cut[1]?.solid.volume).toBeCloseTo(mean(10.25) * 3.5 * 1.5, 9);
    expect(cut[0]?.solid.centroid[1]).toBeGreaterThan(cut[1]?.solid.centroid[1] ?? 0);
  });

  test("a left and a right board with rabbets in mirrored places are told apart, turned ones are one piece", () => {
    const item = worked(`
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  board: stud, flat, from left to right, at front, bottom at 10
  legs: 2 stud, upright, facing left, from bottom to 10, at front, spread left to right
joins:
  board to legs: glue
cuts:
  legs 1: slot 2 x 1/2, 2 from bottom, 1 from front
  legs 2: slot 2 x 1/2, 2 from bottom, 1 from back
`);
    expect(item.pieces.filter((piece) => piece.cuts.length > 0)).toHaveLength(1);
  });
});

import { describe, expect, test } from "vitest";
import type { Join } from "../../src/item/item.ts";
import { memberOf, told, tried, worked } from "./bench-yard.ts";

/** A 2x4 shelf 20 long on two upright 2x4 legs: each place is 1 1/2 x 3 1/2. */
const shelf = (joins: string, legs = "facing left") => `
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  board: stud, flat, from left to right, at front, bottom at 10
  legs: 2 stud, upright, ${legs}, from bottom to 10, at front, spread left to right
joins:
${joins}
`;

const near = (v: readonly number[]) => v.map((x) => expect.closeTo(x, 9));
const driven = (join: Join | undefined) => join?.driven ?? [];

describe("straight fasteners", () => {
  test("a 3 in screw through 1 1/2 bites 3 - 1 1/2 = 1 1/2; two stand 3 1/2 / 4 from the edges", () => {
    const item = worked(shelf("  board to legs: 2 screw No. 10 x 3"));
    expect(item.joins).toHaveLength(2);
    const [first, second] = driven(item.joins[0]);
    // 10 diameters of 0.190 are 1.9, more than a quarter of 3 1/2: each stands in the middle of its half.
    expect(first?.head).toEqual(near([0.75, 0.875, 11.5]));
    expect(first?.tip).toEqual(near([0.75, 0.875, 8.5]));
    expect(second?.head).toEqual(near([0.75, 2.625, 11.5]));
    expect([first?.through, first?.into]).toEqual([1.5, 1.5]);
    expect(first?.way).toEqual(near([0, 0, -1]));
  });

  test("one alone stands in the middle: 3 1/2 / 2 = 1 3/4", () => {
    const item = worked(shelf("  board to legs: 1 screw No. 10 x 3"));
    expect(driven(item.joins[1])[0]?.head).toEqual(near([19.25, 1.75, 11.5]));
  });

  test("a screw through 1 1/2 that bites only 1/8 is too short: 2 x 0.138 is least", () => {
    expect(told(shelf("  board to legs: 2 screw No. 6 x 1 5/8"))).toEqual([
      "fastener-too-short 10: screw No. 6 x 1 5/8 goes 1 1/2 through board and only 1/8 into legs/1.",
    ]);
    expect(told(shelf("  board to legs: 2 screw No. 6 x 1"))[0]).toMatch(/doesn't reach legs\/1/);
  });

  test("driven the other way, through a leg 10 long, it doesn't reach", () => {
    expect(told(shelf("  legs to board: 2 screw No. 10 x 3"))[0]).toMatch(
      /goes 10 through legs\/1 and doesn't reach board/,
    );
  });

  test("a dowel sits half in each: 2 / 2 = 1", () => {
    const item = worked(shelf("  board to legs: 2 dowel 3/8 x 2; glue"));
    const [dowel] = driven(item.joins[0]);
    expect([dowel?.through, dowel?.into]).toEqual([1, 1]);
    expect(dowel?.head[2]).toBeCloseTo(11, 9);
    expect(item.joins[0]).toMatchObject({ ways: ["fastener", "glue"], glue: "wood glue" });
  });

  test("heads named on the wrong side are told with the side that works", () => {
    const [wrong] = tried(shelf("  board to legs: 2 screw No. 10 x 3, bottom")).problems;
    expect(wrong).toMatchObject({ code: "heads-side-wrong", expected: "heads at the top of board" });
    expect(told(shelf("  board to legs: 2 screw No. 10 x 3, top"))).toEqual([]);
  });

  test("ten where six have room: 3 diameters of 0.190 go 3 1/2 / 0.57 = 6 times into 3 1/2", () => {
    const [crowded] = tried(shelf("  board to legs: 10 screw No. 10 x 3")).problems;
    expect(crowded).toMatchObject({ code: "fasteners-crowded", found: "10" });
    expect(crowded?.expected).toMatch(/^at most 6 /);
  });
});

describe("boards face to face", () => {
  const faces = (screw: string) => `
overall: 20 x fit x fit
pieces:
  strip: fence board, ripped to 1 1/2
stand:
  lower: strip, flat, from left to right, at front, bottom at 0
  upper: strip, flat, from left to right, at front, on lower
joins:
  upper to lower: 3 ${screw}
`;

  test("three No. 6 keep 10 x 0.138 = 1.38 from both ends; the third is halfway, at 10", () => {
    const item = worked(faces("screw No. 6 x 1"));
    expect(driven(item.joins[0]).map((d) => d.head[0])).toEqual(near([1.38, 10, 18.62]));
    expect(driven(item.joins[0])[0]?.into).toBeCloseTo(0.375, 9);
  });

  test("1 5/8 through 5/8 + 5/8 comes out at the far face: the bite of 1 is more than 5/8", () => {
    expect(told(faces("screw No. 6 x 1 5/8"))).toEqual([
      "fastener-breaks-through 10: screw No. 6 x 1 5/8 goes 5/8 through upper and 1 into lower, which has only 5/8 there: its point comes out.",
    ]);
  });

  test("1 1/4 is just as long as both together, and that comes out too", () => {
    expect(told(faces("screw No. 6 x 1 1/4"))[0]).toMatch(/^fastener-breaks-through/);
  });

  test("a bolt goes through both and needs 1/2 for its nut: 5/8 + 5/8 + 1/2 = 1 3/4 is less than 3", () => {
    expect(told(faces("bolt 1/4 x 3"))).toEqual([]);
  });
});

describe("pocket screws", () => {
  const frame = (join: string) => `
overall: 20 x fit x 20
pieces:
  strip: fence board, ripped to 1 1/2
panels:
  face:
    size: width x height
    legs: 2 strip, upright, from bottom to top, spread left to right
    rail: strip, level, between legs, top at top
stand:
  front-face: face, at front
joins:
  rail to legs: ${join}
`;
  const body = "## Make\nmakes face\n\n1. Lay the **legs** and the **rail**.\n\n## Stand\n\n1. Put **front-face** up.";

  test("leaves the end at half of 5/8, 15 degrees from the back; 2/3 x 5/8 = 5/12 of wood, 1 - 5/12 = 7/12 of bite", () => {
    const item = worked(frame("2 pocket screw No. 6 x 1, back"), body);
    const [first, second] = driven(item.joins[0]);
    expect(first?.through).toBeCloseTo(5 / 12, 9);
    expect(first?.into).toBeCloseTo(7 / 12, 9);
    // Into the left leg: toward the left and toward the front, from the back face.
    const [c, s] = [Math.cos(Math.PI / 12), Math.sin(Math.PI / 12)];
    expect(first?.way).toEqual(near([-c, -s, 0]));
    expect(first?.head).toEqual(near([1.5 + (5 / 12) * c, 5 / 16 + (5 / 12) * s, 18.875]));
    expect(first?.tip).toEqual(near([1.5 - (7 / 12) * c, 5 / 16 - (7 / 12) * s, 18.875]));
    expect(second?.head[2]).toBeCloseTo(19.625, 9);
  });

  test("without a side, or from a side that leads nowhere, are told", () => {
    expect(told(frame("2 pocket screw No. 6 x 1"), body)).toEqual([
      "pocket-side-missing 14: nothing says in which face of front-face/rail the pockets of pocket screw No. 6 x 1 are bored.",
    ]);
    expect(told(frame("2 pocket screw No. 6 x 1, left"), body)[0]).toMatch(/^pocket-side-wrong/);
  });

  test("the back of a panel at the back is the item's front", () => {
    const item = worked(
      frame("2 pocket screw No. 6 x 1, back")
        .replace("face, at front", "face, at back")
        .replace("fit x 20", "5/8 x 20"),
      body,
    );
    expect(driven(item.joins[0])[0]?.way[1]).toBeGreaterThan(0);
  });
});

describe("half-laps", () => {
  const cross = (join: string, second = "bottom at 0") => `
overall: 20 x 20 x fit
pieces:
  stud: 2x4
stand:
  bar: stud, flat, from left to right, bottom at 0, centred front to back
  across: stud, flat, from front to back, ${second}, centred left to right
joins:
  ${join}
`;

  test("each loses 3 1/2 x 3 1/2 x 3/4 = 9 3/16 of 20 x 3 1/2 x 1 1/2 = 105; the first keeps the upper half", () => {
    const item = worked(cross("bar to across: half-lap; glue"));
    expect(item.overlaps).toEqual([]);
    expect(memberOf(item, "bar").solid.volume).toBeCloseTo(105 - 9.1875, 9);
    expect(memberOf(item, "across").solid.volume).toBeCloseTo(105 - 9.1875, 9);
    expect(memberOf(item, "bar").cuts).toMatchObject([
      { name: "half-lap", min: [8.25, 0, 0], max: [11.75, 3.5, 0.75] },
    ]);
    expect(memberOf(item, "across").cuts).toMatchObject([{ min: [8.25, 0, 0.75], max: [11.75, 3.5, 1.5] }]);
    // Like boards turned over: one kind of piece.
    expect(item.pieces.map((p) => [p.mark, p.count])).toEqual([["A", 2]]);
  });

  test("without the join they are in one place: 3 1/2 x 3 1/2 x 1 1/2, and 1 1/2 apart is the least way out", () => {
    const { problems, item } = tried(cross("bar to across: glue"));
    const clash = problems.find((p) => p.code === "two-in-one-place");
    expect(clash).toMatchObject({ at: { line: 7 }, also: { line: 8 }, found: "18.375 cubic inches in both" });
    expect(clash?.says).toBe(
      "bar and across are in one place: they share 3 1/2 x 3 1/2 x 1 1/2 (left to right, front to back, up).",
    );
    expect(clash?.mend).toMatch(/^Move across 1 1\/2 toward the (top|bottom)/);
    expect(item?.overlaps).toMatchObject([{ a: "bar", b: "across", volume: 18.375, depth: 1.5 }]);
  });

  test("of boards that only touch is told", () => {
    expect(told(cross("bar to across: half-lap", "on bar"))[0]).toMatch(
      /^join-no-crossing .*nothing to halve: bar and across only touch\./,
    );
  });

  test("with the upper board keeping its lower half can't be sawn", () => {
    expect(told(cross("bar to across: half-lap", "bottom at 1/2"))[0]).toMatch(/^half-lap-closed/);
    expect(told(cross("across to bar: half-lap", "bottom at 1/2"))).toEqual([]);
  });
});

describe("letting in", () => {
  const housing = (deep: string) => `
overall: 20 x fit x fit
pieces:
  stud: 2x4
  strip: fence board, ripped to 1 1/2
stand:
  beam: stud, on edge, from left to right, at front, bottom at 0
  cleat: strip, upright, facing front, from bottom to 3 1/2, front at ${deep}, centred left to right
joins:
  cleat to beam: let in; 1 screw No. 6 x 1
`;

  test("1/4 deep takes 1 1/2 x 3 1/2 x 1/4 = 1 5/16 of the beam and nothing of the cleat", () => {
    const item = worked(housing("1 1/4"));
    expect(memberOf(item, "beam").solid.volume).toBeCloseTo(105 - 1.3125, 9);
    expect(memberOf(item, "cleat").cuts).toEqual([]);
    expect(item.overlaps).toEqual([]);
    // From the cleat's back at 1 7/8 through 5/8 into what is left of the beam.
    expect(driven(item.joins[0])[0]?.head[1]).toBeCloseTo(1.875, 9);
    expect(driven(item.joins[0])[0]?.tip[1]).toBeCloseTo(0.875, 9);
  });

  test("right across the beam would cut it in two", () => {
    expect(told(housing("1/2").replace("cleat to beam: let in", "beam to cleat: let in"))[0]).toMatch(
      /^let-in-through/,
    );
  });
});

describe("what is held by what", () => {
  const pair = (joins: string, second = "on lower", loose = "") => `
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  lower: stud, flat, from left to right, at front, bottom at 0
  upper: stud, flat, from left to right, at front, ${second}${loose}
${joins}
`;

  test("two boards without a join hold nothing, unless one is loose", () => {
    expect(told(pair(""))).toEqual(["held-by-nothing 8: upper is held by no join; upper touches lower."]);
    expect(told(pair("", "on lower", ", loose"))).toEqual([]);
  });

  test("a board 1/4 off touches nothing; a join of the two has no place", () => {
    expect(told(pair("", "1/4 above lower"))).toEqual([
      "touches-nothing 8: upper touches nothing and is held by no join.",
    ]);
    expect(told(pair("joins:\n  upper to lower: glue", "1/4 above lower"))).toEqual([
      'join-no-meeting 10: no "upper" touches a "lower": the nearest, upper and lower, stand 1/4 apart.',
    ]);
  });

  test("a loose board in the air is told", () => {
    expect(told(pair("", "1/4 above lower", ", loose"))).toEqual([
      "loose-in-air 8: upper is loose, but lies on nothing and not on the floor.",
    ]);
  });

  test("four boards joined two by two are two things", () => {
    const four = `
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  a: stud, flat, from left to right, at front, bottom at 0
  b: stud, flat, from left to right, at front, on a
  c: stud, flat, from left to right, at front, on b
  d: stud, flat, from left to right, at front, on c
joins:
  a to b: glue
  c to d: glue
`;
    expect(told(four)).toEqual([
      "cluster-apart 9: c and d are joined to each other but not to the other 2; they touch b.",
    ]);
  });

  test("names the yard doesn't know are told with the nearest", () => {
    const { problems } = tried(pair("joins:\n  upper to lower: 2 screw No. 10 x 33"));
    expect(problems[0]).toMatchObject({ code: "unknown-fastener", nearest: "screw No. 10 x 3" });
  });
});

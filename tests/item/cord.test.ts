import { describe, expect, test } from "vitest";
import { solidOf } from "../../src/geometry/solid.ts";
import { ropeToBuy } from "../../src/item/cord/rope-to-buy.ts";
import type { Cord, Item } from "../../src/item/item.ts";
import { neighboursOf } from "../../src/item/neighbours.ts";
import { workJson } from "../../src/item/work-json.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { exact, inches } from "../../src/units/length.ts";
import { demoYard } from "../cases/demo-yard.ts";

const yard = demoYard();

function worked(front: string): Item {
  const cords = [...front.matchAll(/^ +(\S+): rope 1/gm)].map(([, name]) => ` **${name}**`).join();
  const read = readRecipe(
    "sign.md",
    `---\ntitle: Sign\n${front.trim()}\n---\nA sign.\n\n## Thread it\n\n1. Thread the **planks** with${cords}.\n`,
  );
  const { item, problems } = read.recipe ? workOut(read.recipe, yard) : { item: undefined, problems: read.problems };
  if (!item || problems.length > 0 || read.problems.length > 0)
    throw new Error([...read.problems, ...problems].map((p) => `${p.at.line}: ${p.says}`).join("\n"));
  return item;
}

const only = (item: Item): Cord => {
  const [cord, ...more] = item.cords;
  if (!cord || more.length > 0) throw new Error(`${item.cords.length} cords`);
  return cord;
};

const sign = (cords: string, planks = "3 plank, on edge, facing front, from left to right, gap 2") => `
overall: 12 x fit x fit
pieces:
  plank: 1x4
stand:
  planks: ${planks}, at front, bottom at bottom
cuts:
  each planks: hole for 1/4 rope, 15/16 from both ends and both edges
cords:
  ${cords}
`;
const up = "up through the left holes of planks";
const down = "down through the right holes of planks";
const tied = "knots at both ends, 4 for each knot";

describe("one rope up a straight sign of three planks, over a hook 8 above it, and down", () => {
  const item = worked(sign(`rope: rope 1/4, ${up}, hanger 8 above planks 3, ${down}, ${tied}`));
  const cord = only(item);

  test("is inside the wood for 2 sides x 3 planks x 2 holes x 3/4 = 9", () => {
    expect(cord.through).toBeCloseTo(9, 12);
  });

  test("runs 2 x (3 x 1 5/8 behind the planks + 2 x 3 7/8 over the gaps) = 25 1/4 along it", () => {
    // 3 1/2 - 2 x 15/16 = 1 5/8; 2 + 2 x 15/16 = 3 7/8
    expect(cord.between).toBeCloseTo(25.25, 12);
  });

  test("hangs by two legs of the root of 5 1/16 squared + 8 15/16 squared = 10.272", () => {
    // 6 - 15/16 = 5 1/16; 8 + 15/16 = 8 15/16
    expect(cord.hanging).toBeCloseTo(2 * Math.hypot(5.0625, 8.9375), 12);
    expect(cord.legs.map((leg) => leg.length)).toEqual([10.2717, 10.2717].map((v) => expect.closeTo(v, 3)));
  });

  test("is cut 9 + 25 1/4 + 20.543 + 2 x 4 = 62.793 long and bought as 6 ft, 72", () => {
    expect(cord.length).toBeCloseTo(62.793, 3);
    expect(inches(ropeToBuy(cord.rope, [cord.length]).buy)).toBe(72);
  });

  test("weighs 62.793 / 12 x 0.2 oz, and the item so much more than its wood", () => {
    expect(cord.weight).toBeCloseTo(((62.793 / 12) * 0.2) / 16, 6);
    expect(item.weight).toBeCloseTo(item.woodWeight + cord.weight, 12);
  });

  test("goes in from the front, comes out behind, and changes at every hole", () => {
    const depths = cord.points.map((point) => point[1]);
    const side = [0, 0.75, 0.75, 0];
    expect(depths).toEqual([...side, ...side, ...side, 0, ...side, ...side, ...side]);
  });

  test("makes legs of atan(8 15/16 / 5 1/16) = 60.5 degrees that pull W / (2 sin 60.5)", () => {
    const degrees = (Math.atan(8.9375 / 5.0625) * 180) / Math.PI;
    expect(cord.load?.degrees).toBeCloseTo(degrees, 9);
    expect(cord.load?.tension).toBeCloseTo(item.weight / 2 / Math.sin(Math.atan(8.9375 / 5.0625)), 9);
  });

  test("keeps half of its 1250 lb once it is knotted: 625 / its pull", () => {
    expect(cord.load?.designFactor).toBeCloseTo(625 / (cord.load?.tension ?? 0), 9);
  });

  test("holds planks that no join holds, and leaves the item 12 x 3/4 x 14 1/2 without it", () => {
    expect(item.joins).toHaveLength(0);
    expect(Object.values(item.overall).map(inches)).toEqual([12, 0.75, 14.5]);
  });

  test("is drawn as closed rods, one a stretch and one a knot, 1/4 thick: pi x 1/8 squared x 3/4 = 0.0368 in the first hole", () => {
    expect(cord.tube).toHaveLength(cord.points.length - 1 + cord.knots);
    const solids = cord.tube.slice(0, -cord.knots).map((rod) => solidOf(rod));
    expect(solids[0]?.volume).toBeCloseTo(Math.PI * 0.125 ** 2 * 0.75, 3);
    const whole = Math.PI * 0.125 ** 2 * (cord.through + cord.between + cord.hanging);
    expect(solids.reduce((sum, solid) => sum + solid.volume, 0)).toBeGreaterThan(0.97 * whole);
  });

  test("overlaps no plank and not itself where it is drawn", () => {
    const rods = cord.tube.map((shape, i) => ({ id: `rod ${i}`, solid: solidOf(shape) }));
    expect(neighboursOf([...item.members, ...rods]).overlaps).toEqual([]);
  });
});

describe("other ways a rope goes", () => {
  test("two ropes, each with a loop 8 up: each carries half, straight down", () => {
    const ends = "knot at start, 3 for each knot";
    const item = worked(
      sign(
        `left-rope: rope 1/4, ${up}, loop 8 above planks 3, ${ends}\n  right-rope: rope 1/4, ${up.replace("left", "right")}, loop 8 above planks 3, ${ends}`,
      ),
    );
    expect(item.cords.map((cord) => cord.load?.degrees)).toEqual([90, 90]);
    expect(item.cords.map((cord) => cord.load?.tension)).toEqual([0, 0].map(() => expect.closeTo(item.weight / 2, 9)));
    // 6 holes x 3/4 + 3 x 1 5/8 + 2 x 3 7/8 + 8 15/16 + 2 x 3
    expect(item.cords[0]?.length).toBeCloseTo(4.5 + 4.875 + 7.75 + 8.9375 + 6, 9);
  });

  test("two ropes tied at one hook pull like one rope that runs over it", () => {
    const ends = "knot at start, 4 for each knot";
    const hook = "hanger 8 above planks 3";
    const two = worked(
      sign(
        `left-rope: rope 1/4, ${up}, ${hook}, ${ends}\n  right-rope: rope 1/4, ${up.replace("left", "right")}, ${hook}, ${ends}`,
      ),
    );
    const one = worked(sign(`rope: rope 1/4, ${up}, ${hook}, ${down}, ${tied}`));
    const ratio = (two.cords[0]?.load?.tension ?? 0) / two.weight;
    expect(ratio).toBeCloseTo((only(one).load?.tension ?? 0) / one.weight, 9);
  });

  test("started at the back it leaves the front free: the first point lies 3/4 behind", () => {
    const cord = only(worked(sign(`rope: rope 1/4, ${up}, hanger 8 above planks 3, ${down}, back and front, ${tied}`)));
    expect(cord.points[0]?.[1]).toBe(0.75);
    expect(cord.points[1]?.[1]).toBe(0);
  });

  test("slack 2 makes it 2 longer and nothing else", () => {
    const way = `rope: rope 1/4, ${up}, hanger 8 above planks 3, ${down}, ${tied}`;
    const tight = only(worked(sign(way)));
    const slack = only(worked(sign(`${way}, slack 2`)));
    expect(slack.length - tight.length).toBeCloseTo(2, 9);
    expect(slack.points).toEqual(tight.points);
  });

  test("through boards that lie over each other it runs straight on: 3 x 3/4 of wood and 2 gaps of 6", () => {
    const item = worked(`
overall: 12 x fit x fit
pieces:
  plank: 1x4
stand:
  planks: 3 plank, flat, from left to right, gap 6 bottom to top, at front, bottom at bottom
cuts:
  each planks: hole for 1/4 rope, 2 from both ends, centred
cords:
  left-rope: rope 1/4, up through the left holes of planks, loop 10 above planks 3, knot at start, 4 for each knot
  right-rope: rope 1/4, up through the right holes of planks, loop 10 above planks 3, knot at start, 4 for each knot
`);
    const [cord] = item.cords;
    expect([cord?.through, cord?.between, cord?.hanging]).toEqual([2.25, 12, 10]);
  });
});

describe("rope is bought by what the yard sells", () => {
  const rope = { ...(yard.ropes.find((r) => r.name === "rope 1/4") as Cord["rope"]), sold: exact(12) };

  test("two of 17 come out of one run: 34 needs 3 ft at 0.35 = 1.05", () => {
    const bought = ropeToBuy(rope, [17, 17]);
    expect(inches(bought.buy)).toBe(36);
    expect(bought.cost.valueOf()).toBeCloseTo(1.05, 12);
  });

  test("36 is 3 ft, a hair more is 4 ft, and sold by 50 ft it is 600", () => {
    expect(inches(ropeToBuy(rope, [36]).buy)).toBe(36);
    expect(inches(ropeToBuy(rope, [36.001]).buy)).toBe(48);
    expect(inches(ropeToBuy({ ...rope, sold: exact(600) }, [36.001]).buy)).toBe(600);
  });
});

describe("the JSON of a cord", () => {
  test("has its way, its lengths and its load in inches, degrees and pounds", () => {
    const item = worked(sign(`rope: rope 1/4, ${up}, hanger 8 above planks 3, ${down}, ${tied}`));
    const [cord] = workJson(item).cords;
    expect(cord).toMatchObject({ rope: "rope 1/4", diameter: 0.25, through: 9, between: 25.25, knots: 2, buy: 72 });
    expect(cord?.members).toEqual(["planks/1", "planks/2", "planks/3"]);
  });
});

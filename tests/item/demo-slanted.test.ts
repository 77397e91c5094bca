// The demo's leaning, tapered and raked goods: sizes worked by hand, and what re-flows when one size changes.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Item, Piece } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { inches } from "../../src/units/length.ts";
import { demoYard } from "../cases/demo-yard.ts";

const yard = demoYard();
const degrees = Math.PI / 180;

/** The item of a demo recipe, with one piece of its text changed if asked. */
function made(slug: string, variant?: string, change: readonly [string, string] = ["", ""]): Item {
  const file = join(import.meta.dirname, "../../content/recipes", `${slug}.md`);
  const text = readFileSync(file, "utf8");
  expect(text).toContain(change[0]);
  const { recipe, problems } = readRecipe(file, text.replace(...change));
  expect(problems.map((p) => p.says)).toEqual([]);
  const worked = workOut(recipe as NonNullable<typeof recipe>, yard, variant);
  expect(worked.problems.map((p) => p.says)).toEqual([]);
  return worked.item as Item;
}

const pieceOf = (item: Item, member: string): Piece => {
  const found = item.pieces.find((p) => p.members.some((id) => id.includes(member)));
  if (!found) throw new Error(`no piece for ${member}`);
  return found;
};
const edges = (piece: Piece): number[] => piece.edges.map(inches).sort((a, b) => a - b);

describe("the trestle pair with its plank top", () => {
  const check = (item: Item, lean: number) => {
    const [t, c] = [Math.tan(lean * degrees), Math.cos(lean * degrees)];
    const rise = 36 - 1.5;
    expect(item.members).toHaveLength(12);
    expect(inches(item.overall.depth)).toBeCloseTo(2 * (rise * t + 3.5 / c), 9);
    const leg = pieceOf(item, "trestle/legs");
    expect(edges(leg)[0]).toBeCloseTo(rise / c, 9);
    expect(inches(leg.length)).toBeCloseTo(rise / c + 3.5 * t, 9);
    expect(leg.ends.map((e) => e.mitre)).toEqual([expect.closeTo(lean, 9), expect.closeTo(lean, 9)]);
    const brace = pieceOf(item, "brace");
    expect(edges(brace)[1]).toBeCloseTo(2 * (rise - 8) * t, 9);
    expect(edges(brace)[0]).toBeCloseTo(2 * (rise - 8 - 3.5) * t, 9);
    expect(brace.ends.map((e) => Math.abs(e.mitre))).toEqual([expect.closeTo(lean, 9), expect.closeTo(lean, 9)]);
  };

  test("leans 14: legs 34 1/2 / cos 14 = 35.556 on the edge, brace 2 x 26 1/2 tan 14 = 13.214 and 2 x 23 tan 14 = 11.469, feet 24.418", () => {
    check(made("trestle-pair-with-plank-top"), 14);
  });

  test("leans 17 when the splay says so, and legs, brace and feet follow", () => {
    check(made("trestle-pair-with-plank-top", undefined, ["splay: 14 deg", "splay: 17 deg"]), 17);
  });

  test("spaces four planks of 5 1/2 over 24 by (24 - 22) / 3 = 2/3, and bores 1 1/2 + 1/8 = 1 5/8", () => {
    const item = made("trestle-pair-with-plank-top");
    expect(inches(item.gaps.find((g) => g.group === "planks")?.gap ?? 0)).toBeCloseTo(2 / 3, 12);
    const hole = item.members.find((m) => m.id === "planks/2")?.cuts[0];
    expect(hole?.kind === "hole" && hole.across).toBe(1.625);
  });
});

describe("the tapered herb planter", () => {
  /** A wall of board width w, t thick, leaning a from plumb, `mouth` across the top outside. */
  const check = (item: Item, mouth: number, w: number, a: number) => {
    const [s, c] = [Math.sin(a * degrees), Math.cos(a * degrees)];
    const wall = pieceOf(item, "front-wall");
    expect(wall.count).toBe(4);
    expect(inches(item.overall.height)).toBeCloseTo(w * c + 0.75 * s, 9);
    expect(edges(wall)[1]).toBeCloseTo(mouth, 9);
    // The outer face narrows by w sin a at each side.
    expect(edges(wall)[0]).toBeCloseTo(mouth - 2 * w * s, 9);
    for (const end of wall.ends) {
      // Side pitch 90 - a from level: tan M = sin a tan 45, sin B = cos a sin 45.
      expect(Math.abs(end.mitre)).toBeCloseTo(Math.atan(s) / degrees, 9);
      expect(Math.abs(end.bevel)).toBeCloseTo(Math.asin(c * Math.SQRT1_2) / degrees, 9);
    }
  };

  test("is 12 across and 7 1/4 cos 12 + 3/4 sin 12 = 7.248 high; its walls are 12 and 12 - 2 x 7 1/4 sin 12 = 8.985 long, mitre 11.745, blade 43.761", () => {
    check(made("tapered-herb-planter"), 12, 7.25, 12);
  });

  test("is 16 across from 1x10 and 20 across from 1x12 when the buyer chooses so", () => {
    check(made("tapered-herb-planter", "medium"), 16, 9.25, 12);
    check(made("tapered-herb-planter", "large"), 20, 11.25, 12);
  });

  test("slopes 15 when the size says so, and mitres, blades and lengths follow", () => {
    check(made("tapered-herb-planter", undefined, ["slope: 12 deg", "slope: 15 deg"]), 12, 7.25, 15);
  });
});

describe("the raked cold frame", () => {
  const check = (item: Item, front: number) => {
    const rise = (16 - front) / 30;
    const slope = Math.atan(rise);
    // The lid reaches 1 out in front: 31 level, less the lean of its end, up the slope.
    const stile = pieceOf(item, "lid/stiles");
    expect(inches(stile.length)).toBeCloseTo((31 - 0.75 * Math.sin(slope)) / Math.cos(slope), 9);
    expect(inches(item.overall.depth)).toBeCloseTo(31, 9);
    // The pane, 30 long and 1/4 thick, lies in the middle of the lid's length: its upper corner is the highest point.
    const up = inches(stile.length);
    const top = 16 - ((up - 30) / 2) * Math.sin(slope) + (0.75 + 0.25) * Math.cos(slope);
    expect(inches(item.overall.height)).toBeCloseTo(top, 9);
    const side = item.members.filter((m) => m.group === "left-layers");
    const area = side.reduce((sum, m) => sum + m.solid.volume, 0) / 0.75;
    // The side is a trapezoid: its mean height times 30.
    expect(area).toBeCloseTo(((16 + front) / 2) * 30, 6);
  };

  test("has sides of (16 + 10) / 2 x 30 = 390 sq in and a lid (31 - 3/4 sin a) / cos a = 31.464 long, tan a = 6 / 30", () => {
    check(made("raked-cold-frame"), 10);
  });

  test("follows when its front is 11 high", () => {
    check(made("raked-cold-frame", undefined, ["front-height: 10", "front-height: 11"]), 11);
  });
});

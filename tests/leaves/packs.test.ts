// What a plan that is sold is made of: generic names, boards that differ, pieces as a table; and what never gets in.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { binderEdition } from "../../src/leaves/edition.ts";
import { beforeSheet } from "../../src/leaves/packs/before-sheet.ts";
import { boardEffects } from "../../src/leaves/packs/board-effects.ts";
import { boardName, fastenerName, fastenerSpec } from "../../src/leaves/packs/generic-names.ts";
import { packForm } from "../../src/leaves/packs/pack-item.ts";
import { packShop } from "../../src/leaves/packs/pack-shop.ts";
import { piecesCsv } from "../../src/leaves/packs/pieces-csv.ts";
import { revisionWords } from "../../src/leaves/packs/terms-sheet.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { hasPack } from "../../src/site/pack-of.ts";
import { formatLength } from "../../src/units/format-length.ts";
import { exact } from "../../src/units/length.ts";
import type { Fastener } from "../../src/yard/yard.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { corral, demoItem, sixteenths } from "../drawing/demo.ts";
import { demoShop } from "../paper/sets.ts";
import { plainNumber } from "./model-numbers.ts";

const yard = demoYard();
const recipeOf = (slug: string, change: (text: string) => string = (text) => text) => {
  const file = join(import.meta.dirname, `../../content/recipes/${slug}.md`);
  const { recipe } = readRecipe(file, change(readFileSync(file, "utf8")));
  if (!recipe) throw new Error(`${slug} can't be read`);
  return recipe;
};
const screw = (kind: Fastener["kind"], diameter: number, length: ReturnType<typeof exact>): Fastener => ({
  ...{ name: "zygomax", kind, diameter, length, weight: 0.01, material: "stainless steel", driver: "quaxly" },
  pack: { count: 100, price: exact(9), priced: "2026-10-03" },
  at: { file: "f", line: 1, column: 1 },
});

describe("generic names", () => {
  // ASME B18.6.1: No. 6 is 0.138 in, No. 8 0.164, No. 10 0.190. The half millimetre nearest to it: common practice, no source.
  it.each([
    [0.138, exact(1), "No. 6 × 1 in", "3.5 × 25 mm"],
    [0.164, exact(5, 4), "No. 8 × 1\u00a01⁄4 in", "4 × 30 mm"],
    [0.19, exact(5, 2), "No. 10 × 2\u00a01⁄2 in", "5 × 60 mm"],
  ])("a screw of %s in is told in both systems, the metric one never longer", (diameter, length, inch, metric) => {
    expect(fastenerSpec(screw("screw", diameter, length))).toEqual({ inch, metric });
  });
  it("steps call it by kind, number and length, not by the yard's name", () => {
    expect(fastenerName(screw("pocket screw", 0.138, exact(1)))).toBe("pocket screw No. 6 x 1");
    expect(fastenerName(screw("dowel", 0.375, exact(3, 2)))).toBe("dowel 3/8 x 1 1/2");
    expect(fastenerName(screw("nail", 0.092, exact(3, 2)))).toBe("nail 0.09 x 1 1/2");
  });
  it("a fence board of 5/8 x 5 1/2 has no name in every yard, so it is told by its sizes; a 1x8 keeps its own", () => {
    const named = yard.boards.filter(({ name }) => name === "fence board" || name === "1x8");
    expect(named.map((board) => boardName(board, sixteenths)).sort()).toEqual([
      "1x8 western redcedar",
      "5⁄8\u00a0×\u00a05\u00a01⁄2 western redcedar",
    ]);
  });
});

describe("the wall of packs", () => {
  const [packed] = packForm([corral], sixteenths, yard.glues);
  it("lets no note, evidence, price, method or name of the yard's through, and leaves the item as it was", () => {
    expect(corral.notes).toBeDefined();
    expect([packed.notes, packed.evidence, packed.record, packed.comparables]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    const names = [...packed.pieces, ...packed.members].map(({ board }) => board.name);
    expect([...new Set(names)]).toEqual(["5⁄8\u00a0×\u00a05\u00a01⁄2 western redcedar"]);
    expect(packed.sections.flatMap(({ notes }) => notes)).toEqual([]);
    for (const { board } of packed.pieces)
      for (const { price, length, priced } of board.lengths) expect([price, priced]).toEqual([length, ""]);
    for (const { fastener } of packed.joins.flatMap(({ driven }) => driven))
      expect([fastener.pack.price.valueOf(), fastener.driver]).toEqual([0, ""]);
  });
  it("one board stays one board: all pieces of the corral are cut from the same", () => {
    expect(new Set(packed.pieces.map(({ board }) => board)).size).toBe(1);
  });
  it("of the shop neither wage nor notes nor rates come along, and without terms nothing is sold", () => {
    const shop = demoShop();
    const open = packShop(shop);
    expect([open?.wage.valueOf(), open?.notes, open?.minutes, open?.selling]).toEqual([0, "", undefined, undefined]);
    const { plans, ...silent } = shop;
    expect(plans).toBeDefined();
    expect(packShop(silent)).toBeUndefined();
  });
});

describe("boards that differ", () => {
  const told = (slug: string): string[] =>
    boardEffects(recipeOf(slug), yard, demoItem(slug), sixteenths).map(({ board, thicker, overall, pieces, stops }) =>
      [
        board,
        thicker ? "thicker" : "thinner",
        overall
          ? ["width", "depth", "height"].map((side) => formatLength(overall[side as "width"], sixteenths)).join(" x ")
          : "same size",
        stops
          ? "stops"
          : pieces.map(({ mark, what, to }) => `${mark} ${what} ${formatLength(to, sixteenths)}`).join(", "),
      ].join(": "),
    );
  it("corral, 18 deep: its end rails fill what faces and posts leave, 18 - 2 x 11/16 - 2 x 1 11/16 = 13 1/4; with 9/16, 13 1/2", () => {
    expect(told("hose-and-pot-corral")).toEqual([
      "fence board: thicker: same size: E length 13 1/4",
      "fence board: thinner: same size: E length 13 1/2",
    ]);
  });
  const page = (slug: string): string => {
    const form = packForm([demoItem(slug)], sixteenths, yard.glues);
    const shop = packShop(demoShop());
    if (!shop) throw new Error("the shop sells no plans");
    const effects = boardEffects(recipeOf(slug), yard, demoItem(slug), sixteenths);
    return plainNumber(
      JSON.stringify(beforeSheet({ item: form[0], shop, edition: binderEdition(sixteenths), effects })),
    );
  };
  it("corral, 1/16 thicker: the end its rails are in is 18 - 2 x 11/16 = 16 5/8 wide, and so is step 5's figure", () => {
    const said = page("hose-and-pot-corral");
    expect(said).toContain("E: length 13 1/4 in, not 13 3/8 in; end: width 16 5/8 in, not 16 3/4 in");
    expect(said).toContain("step 5: 16 5/8 in, not 16 3/4 in");
    expect(said).not.toContain("leave everything else");
  });
  it("corral: three strips and two cuts, 3 x 1 11/16 + 2 x 1/8 = 5 5/16, are how wide a board must be", () => {
    expect(page("hose-and-pot-corral")).toContain("at least 5 5/16 in wide");
  });
  it("trestle, planks 1/16 thicker: 36 - 1 9/16 = 34 7/16 to the bearer, A's stop 34 7/16 / cos 14 = 35 1/2, and nothing that reads the same", () => {
    const said = page("trestle-pair-with-plank-top");
    expect(said).toContain("step 3: 34 7/16 in, not 34 1/2 in");
    expect(said).toContain("A: stop 35 1/2 in, not 35 9/16 in");
    for (const [, to, from] of said.matchAll(/ ([0-9/ ]+) in, not ([0-9/ ]+) in/g)) expect(to).not.toBe(from);
  });
  it("ladder, said to be 3/4 thick: its thickness follows the boards, 3/4 + 1/16 = 13/16", () => {
    expect(told("stall-price-ladder").map((line) => line.split(": ").slice(0, 3).join(": "))).toEqual([
      "1x4: thicker: 22 x 13/16 x 25 1/2",
      "1x4: thinner: 22 x 11/16 x 25 1/2",
    ]);
  });
});

describe("pieces as a table", () => {
  const rows = piecesCsv(corral, sixteenths).split("\r\n");
  it("has a head, a row for each kind, and ends its last line (RFC 4180)", () => {
    expect(rows).toHaveLength(1 + corral.pieces.length + 1);
    expect(rows.at(-1)).toBe("");
    expect(rows[0]).toBe("mark,number,length,width,thickness,unit,piece,board,work");
  });
  it("quotes what holds a comma: rip, crosscut is one field", () => {
    expect(rows[2]).toMatch(/^B,4,26,1\.6875,0\.625,in,[^,]+,[^,]+,"rip, crosscut"$/);
  });
  it("in millimetres it says so: 26 in is 660.4 mm", () => {
    expect(piecesCsv(corral, { unit: "mm" }).split("\r\n")[2]).toMatch(/^B,4,660\.4,42\.8625,15\.875,mm,/);
  });
});

describe("revisions", () => {
  it("the last line of the log counts: two lines are Revision 2", () => {
    expect(revisionWords(corral)).toBe("Revision 2 of 2026-11-02");
    expect(revisionWords({ revisions: [] })).toBe("");
  });
});

describe("who has a pack", () => {
  const recipe = recipeOf("hose-and-pot-corral");
  it("a recipe that says plan: yes; one that says nothing has none", () => {
    expect(hasPack(recipe, [corral])).toBe(true);
    expect(
      hasPack(
        recipeOf("hose-and-pot-corral", (text) => text.replace("plan: yes\n", "")),
        [corral],
      ),
    ).toBe(false);
  });
  it("one for children only with all its evidence", () => {
    expect(hasPack(recipe, [{ ...corral, classes: ["C"] }])).toBe(false);
    const kinds = ["finish", "edges", "small parts", "gaps", "tip", "tracking label", "certificate"] as const;
    const evidence = Object.fromEntries(kinds.map((kind) => [kind, "tried and found right"]));
    expect(hasPack(recipe, [{ ...corral, classes: ["C"], evidence }])).toBe(true);
  });
});

// A yard with boards, fasteners, glue and finishes in round figures, and a recipe worked out of it in one call.
import { readFileSync } from "node:fs";
import type { Item, Member, Piece } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { readYard } from "../../src/yard/read-yard.ts";
import type { Yard } from "../../src/yard/yard.ts";

const text = `
priced: 2026-03-02
boards:
  fence board:
    species: western redcedar
    size: 5/8 x 5 1/2
    moisture: 12
    end-loss: 1 1/2
    words: western redcedar, not treated
    lengths:
      72: 3.25
  rough board:
    species: western redcedar
    size: 5/8 x 5 1/2
    show: one side
    moisture: 12
    words: western redcedar, one face rough
    lengths:
      72: 3.25
  2x4:
    species: Douglas-fir, coast
    moisture: 15
    words: Douglas-fir, not treated
    lengths:
      96: 4.10
  2x2:
    species: Douglas-fir, coast
    size: 1 1/2 x 1 1/2
    moisture: 15
    words: Douglas-fir, not treated
    lengths:
      96: 3.10
fasteners:
  screw No. 6 x 1: { }
  screw No. 6 x 1 1/4: { }
  screw No. 6 x 1 5/8: { }
  screw No. 10 x 3: { }
  pocket screw No. 6 x 1: { }
  pocket screw No. 8 x 2 1/2: { }
  nail 6d: { }
  dowel 3/8 x 2: { }
  bolt 1/4 x 4: { }
  bolt 1/4 x 3: { }
glues:
  wood glue: waterproof wood glue
finishes:
  oil: { }
  white: { }
  slate: { }
fittings:
  hanger plate:
    words: a steel hanger plate
    size: 2 x 5/8 x 1/16
    weight: 1 oz
    price: 0.40
  anchor kit:
    words: a strap that ties it to the wall
    weight: 4 oz
    price: 2.10
`.replace(/: \{ \}/g, (_, at: number, whole: string) =>
  at < whole.indexOf("finishes:")
    ? ":\n    weight: 0.1 oz\n    material: stainless steel\n    driver: star T-15\n    pack: 100 for 8.40"
    : ":\n    kind: oil\n    words: clear oil\n    colour: b9814f\n    clear: 0.85\n    coverage: 300\n    tin: 1 quart\n    price: 24.50\n    recoat: 24\n    cure: 168\n    oily-rags: yes\n    method: Wipe it on.\n    care: Wipe it on again.",
);

const read = readYard([{ file: "yard/yard.yaml", text }]);
if (!read.yard)
  throw new Error(`the yard has problems: ${read.problems.map((p) => `${p.at.line}: ${p.says}`).join("; ")}`);

export const benchYard: Yard = read.yard;

/** One step that puts in place every line under `stand:`. */
function allAtOnce(matter: string): string {
  const stand = /^stand:\n((?: {2}.*\n?)+)/m.exec(`${matter}\n`)?.[1] ?? "";
  const names = [...stand.matchAll(/^ {2}([a-z0-9-]+):/gm)].map((m) => `**${m[1]}**`);
  return `## Build it\n\n1. Put ${names.join(", ")} in place.`;
}

export type Tried = {
  readonly item: Item | undefined;
  readonly problems: readonly Problem[];
  readonly codes: readonly string[];
};

/** A recipe's front-matter (after its title) and body; without a body all that stands is put in place in one step. */
export function tried(matter: string, body = allAtOnce(matter.trim()), variant?: string): Tried {
  const file = readRecipe("recipes/x.md", `---\ntitle: X\n${matter.trim()}\n---\nAn item.\n\n${body}\n`);
  if (!file.recipe) return { item: undefined, problems: file.problems, codes: file.problems.map((p) => p.code) };
  const { item, problems } = workOut(file.recipe, benchYard, variant);
  const all = [...file.problems, ...problems];
  return { item, problems: all, codes: all.map((p) => p.code) };
}

/** The item of a recipe that has no problem. */
export function worked(matter: string, body?: string, variant?: string): Item {
  const { item, problems } = tried(matter, body, variant);
  if (!item || problems.length > 0)
    throw new Error(problems.map((p) => `${p.code} ${p.at.line}: ${p.says}`).join("\n"));
  return item;
}

/** What is told about a recipe, as one text a problem. */
export const told = (matter: string, body?: string, variant?: string): string[] =>
  tried(matter, body, variant).problems.map((p) => `${p.code} ${p.at.line}: ${p.says}`);

export function memberOf(item: Item, id: string): Member {
  const found = item.members.find((m) => m.id === id);
  if (!found) throw new Error(`no ${id} among ${item.members.map((m) => m.id).join(" ")}`);
  return found;
}

export function pieceOf(item: Item, mark: string): Piece {
  const found = item.pieces.find((p) => p.mark === mark);
  if (!found) throw new Error(`no piece ${mark} among ${item.pieces.map((p) => p.mark).join(" ")}`);
  return found;
}

/** One of the demo's own recipes, worked out of the demo's own yard. */
export function demoItem(slug: string, variant?: string): Tried {
  const yard = readYard(
    ["boards", "fasteners", "finishes", "fittings"].map((name) => {
      const file = `content/yard/${name}.yaml`;
      return { file, text: readFileSync(file, "utf8") };
    }),
  ).yard;
  const file = `content/recipes/${slug}.md`;
  const { recipe, problems } = readRecipe(file, readFileSync(file, "utf8"));
  if (!yard || !recipe) throw new Error(`${slug} can't be read: ${problems.map((p) => p.says).join("; ")}`);
  const out = workOut(recipe, yard, variant);
  return { item: out.item, problems: out.problems, codes: out.problems.map((p) => p.code) };
}

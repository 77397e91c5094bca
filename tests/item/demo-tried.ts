// Front-matter worked out with the demo's own yard, and drawings beside it.
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";

const yard = demoYard();

type Drawings = Readonly<Record<string, string>>;

function triedWith(matter: string, drawings: Drawings) {
  const stand = /^stand:\n((?: {2}.*\n?)+)/m.exec(`${matter.trim()}\n`)?.[1] ?? "";
  const names = [...stand.matchAll(/^ {2}([a-z0-9-]+):/gm)].map((m) => `**${m[1]}**`);
  const text = `---\ntitle: X\n${matter.trim()}\n---\nAn item.\n\n## Build it\n\n1. Put ${names.join(", ")} in place.\n`;
  const { recipe, problems } = readRecipe("x.md", text, (name) => drawings[name]);
  return recipe ? workOut(recipe, yard) : { item: undefined, problems };
}

/** The item of front-matter without a problem. */
export function workedWith(matter: string, drawings: Drawings = {}): Item {
  const { item, problems } = triedWith(matter, drawings);
  if (!item || problems.length > 0)
    throw new Error(problems.map((p) => `${p.at.line} ${p.code}: ${p.says}`).join("\n"));
  return item;
}

/** What is told: `file:line:column code sentence`. */
export const toldWith = (matter: string, drawings: Drawings = {}): string[] =>
  triedWith(matter, drawings).problems.map((p) => `${p.at.file}:${p.at.line}:${p.at.column} ${p.code} ${p.says}`);

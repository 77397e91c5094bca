// A recipe file -> its front-matter as a tree whose shape is checked, and the body below it.
import { z } from "zod";
import type { Place } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { bare, checkShape, shapeOf } from "../problems/tree-shape.ts";
import { readYamlTree, type TreeMap } from "../problems/yaml-tree.ts";

/** Every field is private unless it says that it goes to the store. */
const text = z.string();
const publicText = z.string().meta({ shelf: "store" });
const lines = z.record(z.string(), text);

export const frontMatterSchema = z.strictObject({
  format: text.optional(),
  title: publicText,
  class: publicText.optional(),
  line: publicText.optional(),
  draft: text.optional(),
  /** Since when it is in the store. */
  listed: publicText.optional(),
  /** Ready, made to order or sold: for the whole recipe, or variant by variant. */
  availability: z
    .union([publicText, z.record(z.string(), publicText)])
    .meta({ shelf: "store" })
    .optional(),
  /** What each photograph shows, by its number. */
  photos: z.record(z.string(), publicText).meta({ shelf: "store" }).optional(),
  purpose: publicText.optional(),
  /** What changed on which day: for paper alone, for it may name what is sold in a plan. */
  revisions: lines.optional(),
  /** Whether a plan pack of it is sold. */
  plan: text.optional(),
  notes: text.optional(),
  overall: publicText,
  sizes: lines.optional(),
  pieces: lines.optional(),
  outlines: z.record(z.string(), z.object({ edge: text }).catchall(text)).optional(),
  panels: z.record(z.string(), z.object({ size: text }).catchall(text)).optional(),
  assemblies: z.record(z.string(), z.object({ size: text }).catchall(text)).optional(),
  stand: lines,
  fittings: lines.optional(),
  joins: lines.optional(),
  cuts: lines.optional(),
  cords: lines.optional(),
  text: lines.optional(),
  /** Of a finish only its name is public; how it is put on is the shop's own. */
  finish: lines.meta({ shelf: "store names" }).optional(),
  /** Of a choice its name and those of its values are public; what they change is made of the maker's own names. */
  choices: z
    .record(z.string(), z.union([text, lines]))
    .meta({ shelf: "store names" })
    .optional(),
  loads: lines.meta({ shelf: "store names" }).optional(),
  for: publicText.optional(),
  "sold as": publicText.optional(),
  /** What is asked is shown to the buyer; how it was found is not here. */
  price: z.union([text, lines]).meta({ shelf: "store" }).optional(),
  claims: lines.optional(),
  fixed: text.optional(),
  /**
   * A line for each batch that was made: the day, how many, in which variant (all, where it isn't said), and minutes with their
   * setting up, by kind of work, or `all` together:
   * `2026-10-12: 5 made in stained, fetch 18, rip 22, crosscut 41, screw 260`.
   */
  record: lines.optional(),
  /** The heading of the section that whoever buys it does. */
  "left to the buyer": text.optional(),
  /** Between which days of the year it sells. */
  season: text.optional(),
  /** Where others ask what for the like, dated: `spring fair: 79.00, 2026-05-09, 28 x 16 x 24`. */
  comparables: lines.optional(),
  /** Tests and reasons that let a thing be sold to those it is for. */
  evidence: z
    .strictObject({
      finish: text.optional(),
      edges: text.optional(),
      "small parts": text.optional(),
      gaps: text.optional(),
      tip: text.optional(),
      "tracking label": text.optional(),
      certificate: text.optional(),
      food: text.optional(),
    })
    .optional(),
});

/** The fields whose schemas say that the store may show them, whole or only the names under them. */
export const storeFields: readonly { readonly key: string; readonly names: boolean }[] = Object.entries(
  shapeOf(frontMatterSchema) ?? {},
).flatMap(([key, schema]) => {
  const shelf = z.globalRegistry.get(bare(schema) ?? schema)?.shelf;
  return shelf === "store" || shelf === "store names" ? [{ key, names: shelf === "store names" }] : [];
});

export type FrontMatter = {
  readonly tree: TreeMap;
  /** The body and the number of its first line. */
  readonly body: string;
  readonly bodyLine: number;
  readonly problems: readonly Problem[];
};

/** `text` has single line feeds. Without front-matter only the problem that says so is returned. */
export function readFrontMatter(file: string, text: string): FrontMatter {
  const start: Place = { file, line: 1, column: 1 };
  const none = { tree: { kind: "map", at: start, entries: [] } as const, body: "", bodyLine: 1 };
  const all = text.split("\n");
  if (all[0]?.trimEnd() !== "---") {
    const found = (all[0] ?? "").slice(0, 60);
    return { ...none, problems: [problem("no-front-matter", start, { found })] };
  }
  const close = all.findIndex((line, i) => i > 0 && line.trimEnd() === "---");
  if (close < 0) return { ...none, problems: [problem("front-matter-open", start, {})] };
  const { tree, problems } = readYamlTree(file, all.slice(1, close).join("\n"), 2);
  const shape = problems.length === 0 || tree.entries.length > 0 ? checkShape(tree, frontMatterSchema, inRecipe) : none;
  const found = "problems" in shape ? shape.problems : [];
  return {
    tree: asMeant(tree, found),
    body: all.slice(close + 1).join("\n"),
    bodyLine: close + 2,
    problems: [...problems, ...withoutMissed(found)],
  };
}

/** A key that is missing because it is misspelt is told once, where it is misspelt. */
function withoutMissed(problems: readonly Problem[]): readonly Problem[] {
  const meant = problems.flatMap((p) => (p.code === "unknown-key" && p.nearest !== undefined ? [p.nearest] : []));
  return problems.filter((p) => p.code !== "missing-key" || !meant.some((key) => p.says.startsWith(`"${key}" `)));
}

/** The tree with misspelt keys as they were meant, where that key isn't there as well, so that what stands under them is known. */
function asMeant(tree: TreeMap, problems: readonly Problem[]): TreeMap {
  const there = new Set(tree.entries.map(({ key }) => key.text));
  const entries = tree.entries.map((entry) => {
    const told = problems.find((p) => p.code === "unknown-key" && isSamePlace(p.at, entry.key.at));
    const meant = told?.nearest;
    if (meant === undefined || there.has(meant)) return entry;
    there.add(meant);
    return { ...entry, key: { ...entry.key, text: meant } };
  });
  return { ...tree, entries };
}

const isSamePlace = (a: Place, b: Place): boolean => a.line === b.line && a.column === b.column;

const inRecipe = "between the --- lines";

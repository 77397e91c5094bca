// The texts of the yard files -> the Yard, or every problem in them at its line.

import { nearest } from "../problems/nearest.ts";
import type { Place, Written } from "../problems/place.ts";
import { inReadingOrder, type Problem, problem } from "../problems/problem.ts";
import { entriesUnder, readYamlTree, type Tree, type TreeEntry, textUnder } from "../problems/yaml-tree.ts";
import { zero } from "../units/length.ts";
import { type Problems, parseYardLength, parseYardSize } from "./parse-values.ts";
import { readBoard } from "./read-board.ts";
import { readFastener } from "./read-fastener.ts";
import { readFinish } from "./read-finish.ts";
import { readFitting } from "./read-fitting.ts";
import type { OfAllFiles } from "./read-own-boards.ts";
import { readRope } from "./read-rope.ts";
import { readSpecies } from "./read-species.ts";
import { speciesTable } from "./species-table.ts";
import type { Yard } from "./yard.ts";
import { yardSchema } from "./yard-schema.ts";

const sections = Object.keys(yardSchema.shape);

/** The yard is absent where there is any problem. Several files are read as one; a name may stand in only one of them. */
export function readYard(files: readonly { file: string; text: string }[]): { yard?: Yard; problems: Problem[] } {
  const problems: Problems = [];
  const trees = files.map(({ file, text }) => {
    const { tree, problems: found } = readYamlTree(file, text, 1);
    problems.push(...found);
    return tree;
  });
  for (const tree of trees) checkSections(tree, problems);
  const species = readSpecies(trees, speciesTable, problems);
  const ofAll = readOfAllFiles(trees, problems);
  const each = <T>(section: string, read: (entry: TreeEntry, priced: Written | undefined) => T | undefined): T[] =>
    namedOnce(trees, section, problems).flatMap(({ entry, priced }) => read(entry, priced) ?? []);
  const yard: Yard = {
    boards: each("boards", (entry, priced) => readBoard(entry, species, priced, ofAll, problems)),
    fasteners: each("fasteners", (entry, priced) => readFastener(entry, priced, problems)),
    finishes: each("finishes", (entry, priced) => readFinish(entry, priced, problems)),
    fittings: each("fittings", (entry, priced) => readFitting(entry, priced, problems)),
    ropes: each("ropes", (entry, priced) => readRope(entry, priced, problems)),
    glues: each("glues", (entry) => readGlue(entry, problems)),
  };
  return problems.length > 0 ? { problems: inReadingOrder(problems) } : { yard, problems };
}

/** Lines that are no section: a value on the line itself. */
const plainLines: Readonly<Record<string, string>> = {
  priced: "a day like 2026-10-03",
  vehicle: "a length like 8 ft",
  "fresh-end": "a length like 1/4",
};

/** A line of any file; where two files have it, the later one is told. */
function readOfAllFiles(trees: readonly Tree[], problems: Problems): OfAllFiles {
  const lineOf = (key: string): Written | undefined => {
    const [first, second] = trees.flatMap((tree) => textUnder(tree, key) ?? []);
    if (first && second) problems.push(problem("yard-line-twice", second.at, { key }, first.at));
    return first;
  };
  const vehicle = lineOf("vehicle");
  const fresh = lineOf("fresh-end");
  return {
    vehicle: vehicle && parseYardSize("vehicle", vehicle, problems),
    freshEnd: (fresh && parseYardLength("fresh-end", fresh, problems)) ?? zero,
  };
}

/** Sections the schema knows, each with lines of its own. */
function checkSections(tree: Tree, problems: Problems): void {
  if (tree.kind !== "map") return;
  for (const { key, value } of tree.entries) {
    const isKnown = sections.includes(key.text);
    if (!isKnown)
      problems.push(
        problem("unknown-key", key.at, {
          key: key.text,
          where: "of a yard file",
          known: sections,
          nearest: nearest(key.text, sections),
        }),
      );
    else if (key.text in plainLines !== (value.kind === "text") && !(value.kind === "text" && value.text === ""))
      problems.push(
        problem("wrong-kind", value.at, {
          key: key.text,
          found: value.kind === "text" ? `"${value.text}"` : "lines of its own",
          expected: plainLines[key.text] ?? "names with lines of their own, pushed in below it",
        }),
      );
  }
}

type Named = { readonly entry: TreeEntry; readonly priced: Written | undefined };

/** The entries of a section over all files; a name that stands twice is told with both places. */
function namedOnce(trees: readonly Tree[], section: string, problems: Problems): Named[] {
  const first = new Map<string, Place>();
  return trees.flatMap((tree) =>
    entriesUnder(tree, section).flatMap((entry) => {
      const before = first.get(entry.key.text);
      if (before) {
        problems.push(problem("yard-name-twice", entry.key.at, { name: entry.key.text, section }, before));
        return [];
      }
      first.set(entry.key.text, entry.key.at);
      return [{ entry, priced: textUnder(tree, "priced") }];
    }),
  );
}

function readGlue(entry: TreeEntry, problems: Problems): Yard["glues"][number] | undefined {
  const { key, value } = entry;
  if (value.kind === "text" && value.text !== "") return { name: key.text, words: value.text, at: key.at };
  problems.push(
    problem("wrong-kind", value.at, {
      key: key.text,
      found: value.kind === "text" ? "no value" : "lines of its own",
      expected: "what the buyer reads, on its line",
    }),
  );
  return undefined;
}

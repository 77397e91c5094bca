// One finish of a yard file -> a Finish: colour, coverage, tin with its dated price, times, method and care.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { checkShape } from "../problems/tree-shape.ts";
import type { TreeEntry } from "../problems/yaml-tree.ts";
import { type Exact, exact } from "../units/length.ts";
import { parseNumber, plainSigns } from "../units/parse-number.ts";
import { type Problems, parsePlain, parsePrice, parsePriced } from "./parse-values.ts";
import { checkPublicWords } from "./unprovable.ts";
import type { Finish } from "./yard.ts";
import { finishSchema } from "./yard-schema.ts";

/** US gallons in a measure; 1 gal = 128 fl oz = 3.785411784 L, exact by definition. */
const gallons: Readonly<Record<string, Exact>> = {
  gallon: exact(1),
  gallons: exact(1),
  quart: exact(1, 4),
  quarts: exact(1, 4),
  pint: exact(1, 8),
  pints: exact(1, 8),
  "fl oz": exact(1, 128),
  l: exact(1).div("3.785411784"),
  ml: exact(1).div("3785.411784"),
};

/** `1 quart`, `8 fl oz`, `500 ml` in gallons; undefined for anything else. */
export function findGallons(text: string): Exact | undefined {
  const [, number = "", unit = ""] = /^(\S.*?)\s*(gallons?|quarts?|pints?|fl oz|ml|l)$/i.exec(plainSigns(text)) ?? [];
  const read = parseNumber(number);
  const per = gallons[unit.toLowerCase()];
  return read.ok && per && read.value.compare(0) > 0 ? read.value.mul(per) : undefined;
}

/** Undefined, with every problem told, where something about the finish is wrong. */
export function readFinish(
  entry: TreeEntry,
  pricedInFile: Written | undefined,
  problems: Problems,
): Finish | undefined {
  const { placed: f, problems: found } = checkShape(entry.value, finishSchema, `of "${entry.key.text}"`, entry.key.at);
  problems.push(...found, ...checkPublicWords([f?.words, f?.care]));
  if (!f) return undefined;
  const isColour = /^#?[0-9a-f]{6}$/i.test(f.colour.text);
  if (!isColour) problems.push(problem("yard-colour", f.colour.at, { found: f.colour.text }));
  const clear = parsePlain("clear", f.clear, 0, 1, problems);
  const coverage = parsePlain("coverage", f.coverage, 1, 2000, problems);
  const inTin = findGallons(f.tin.text);
  if (!inTin)
    problems.push(
      problem("yard-number", f.tin.at, {
        key: "tin",
        found: f.tin.text,
        expected: 'a measure like "1 quart", "8 fl oz" or "500 ml"',
      }),
    );
  const price = parsePrice(f.price, problems);
  const priced = parsePriced(entry.key, f.priced, pricedInFile, problems);
  const recoatHours = parsePlain("recoat", f.recoat, 0, 10000, problems);
  const cureHours = parsePlain("cure", f.cure, 0, 10000, problems);
  if (!isColour || clear === undefined || coverage === undefined || !inTin || !price || priced === undefined)
    return undefined;
  if (recoatHours === undefined || cureHours === undefined) return undefined;
  return {
    name: entry.key.text,
    kind: f.kind.text as Finish["kind"],
    words: f.words.text,
    colour: `#${f.colour.text.replace("#", "").toLowerCase()}`,
    clear,
    coverage,
    tin: { size: f.tin.text, gallons: inTin, price, priced },
    recoatHours,
    cureHours,
    oilyRags: f["oily-rags"].text === "yes",
    method: f.method.text,
    care: f.care.text,
    at: entry.key.at,
  };
}

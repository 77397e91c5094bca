// One fitting of a yard file -> a Fitting: a bought body that isn't wood, with size, weight and dated price.
import type { Written } from "../problems/place.ts";
import { checkShape } from "../problems/tree-shape.ts";
import type { TreeEntry } from "../problems/yaml-tree.ts";
import { type Problems, parsePrice, parsePriced, parseSides, parseWeight } from "./parse-values.ts";
import { checkPublicWords } from "./unprovable.ts";
import type { Fitting } from "./yard.ts";
import { fittingSchema } from "./yard-schema.ts";

/** Undefined, with every problem told, where something about the fitting is wrong. */
export function readFitting(
  entry: TreeEntry,
  pricedInFile: Written | undefined,
  problems: Problems,
): Fitting | undefined {
  const { placed: f, problems: found } = checkShape(entry.value, fittingSchema, `of "${entry.key.text}"`, entry.key.at);
  problems.push(...found, ...checkPublicWords([f?.words]));
  if (!f) return undefined;
  const weight = parseWeight("weight", f.weight, problems);
  const price = parsePrice(f.price, problems);
  const priced = parsePriced(entry.key, f.priced, pricedInFile, problems);
  const sides = f.size && parseSides("size", f.size, ["length", "width", "thickness"], problems);
  const [length, width, thickness] = sides ?? [];
  if (weight === undefined || !price || priced === undefined || (f.size && !sides)) return undefined;
  return {
    name: entry.key.text,
    words: f.words.text,
    ...(length && width && thickness ? { size: { length, width, thickness } } : {}),
    weight,
    price,
    priced,
    at: entry.key.at,
  };
}

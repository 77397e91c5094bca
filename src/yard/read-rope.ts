// One rope of a yard file -> a Rope: thickness, strength with its source, weight and dated price a foot.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { checkShape } from "../problems/tree-shape.ts";
import type { TreeEntry } from "../problems/yaml-tree.ts";
import { exact } from "../units/length.ts";
import { type Problems, parsePrice, parsePriced, parseWeight, parseYardSize } from "./parse-values.ts";
import { findRopeStrength, ropeStrengthSource, ropeStrengths } from "./rope-strength.ts";
import { checkPublicWords } from "./unprovable.ts";
import type { Rope } from "./yard.ts";
import { ropeSchema } from "./yard-schema.ts";

/** Undefined, with every problem told, where something about the rope is wrong. */
export function readRope(entry: TreeEntry, pricedInFile: Written | undefined, problems: Problems): Rope | undefined {
  const { placed: f, problems: found } = checkShape(entry.value, ropeSchema, `of "${entry.key.text}"`, entry.key.at);
  problems.push(...found, ...checkPublicWords([f?.words]));
  if (!f) return undefined;
  const diameter = parseYardSize("diameter", f.diameter, problems);
  const perFoot = parseWeight("weight", f.weight, problems);
  const price = parsePrice(f.price, problems);
  const priced = parsePriced(entry.key, f.priced, pricedInFile, problems);
  const sold = f.sold ? parseYardSize("sold", f.sold, problems) : exact(12);
  const stated = f.strength && parseWeight("strength", f.strength, problems);
  const strength = f.strength ? stated : diameter && findRopeStrength(f.material.text, diameter);
  if (!f.strength && diameter && strength === undefined)
    problems.push(
      problem("yard-rope-strength", entry.key.at, { name: entry.key.text, known: Object.keys(ropeStrengths) }),
    );
  if (f.strength && !f.source)
    problems.push(problem("yard-rope-source", f.strength.at, { name: entry.key.text, found: f.strength.text }));
  if (!diameter || perFoot === undefined || !price || priced === undefined || !sold || strength === undefined)
    return undefined;
  return {
    name: entry.key.text,
    words: f.words.text,
    material: f.material.text,
    diameter,
    strength,
    strengthSource: f.source?.text ?? ropeStrengthSource,
    weightPerFoot: perFoot,
    sold,
    pricePerFoot: price,
    priced,
    at: entry.key.at,
  };
}

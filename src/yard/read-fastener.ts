// One fastener of a yard file -> a Fastener: kind and size from its name, weight from its shank where none is given.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { checkShape } from "../problems/tree-shape.ts";
import type { TreeEntry } from "../problems/yaml-tree.ts";
import { type Exact, exact } from "../units/length.ts";
import { parseLength } from "../units/parse-length.ts";
import { findMaterialDensity, knownMaterials } from "./density.ts";
import { type Problems, parsePlain, parsePrice, parsePriced, parseWeight, parseYardSize } from "./parse-values.ts";
import type { Fastener } from "./yard.ts";
import { fastenerSchema } from "./yard-schema.ts";

/** Shank diameter in inches of a screw's number: 0.060 + 0.013 n. Source: ASME B18.6.1, from memory; No. 10 checked. */
export const screwShank = (gauge: number): number => Math.round((0.06 + 0.013 * gauge) * 1000) / 1000;

/** Common nails, diameter and length in inches. Source: ASTM F1667, from memory. */
export const commonNails: Readonly<Record<string, { readonly diameter: number; readonly length: Exact }>> = {
  "6d": { diameter: 0.113, length: exact(2) },
  "8d": { diameter: 0.131, length: exact(5, 2) },
  "10d": { diameter: 0.148, length: exact(3) },
  "16d": { diameter: 0.162, length: exact(7, 2) },
};

type Size = { readonly kind: Fastener["kind"]; readonly diameter: number; readonly length: Exact };

/** What a name says by itself: `screw No. 6 x 1`, `pocket screw No. 8 x 2 1/2`, `nail 8d`, `dowel 3/8 x 2`, `bolt 3/8 x 4`. */
export function findFastenerSize(name: string): Size | undefined {
  const screw = /^(pocket screw|screw) No\. (\d+) x (.+)$/.exec(name);
  if (screw) {
    const length = parseLength(screw[3] ?? "");
    if (length.ok)
      return { kind: screw[1] as Size["kind"], diameter: screwShank(Number(screw[2])), length: length.value };
  }
  const nail = commonNails[/^(?:common )?nail (\d+d)$/.exec(name)?.[1] ?? ""];
  if (nail) return { kind: "nail", ...nail };
  const round = /^(dowel|bolt|nail) (\S+) x (.+)$/.exec(name);
  const across = parseLength(round?.[2] ?? "");
  const length = parseLength(round?.[3] ?? "");
  if (round && across.ok && length.ok)
    return { kind: round[1] as Size["kind"], diameter: across.value.valueOf(), length: length.value };
  return undefined;
}

/** Undefined, with every problem told, where something about the fastener is wrong. */
export function readFastener(
  entry: TreeEntry,
  pricedInFile: Written | undefined,
  problems: Problems,
): Fastener | undefined {
  const { placed: f, problems: found } = checkShape(
    entry.value,
    fastenerSchema,
    `of "${entry.key.text}"`,
    entry.key.at,
  );
  problems.push(...found);
  if (!f) return undefined;
  const named = findFastenerSize(entry.key.text);
  const kind = (f.kind?.text as Fastener["kind"] | undefined) ?? named?.kind;
  const across = f.diameter && parseYardSize("diameter", f.diameter, problems);
  const diameter = f.diameter ? across?.valueOf() : named?.diameter;
  const length = f.length ? parseYardSize("length", f.length, problems) : named?.length;
  const isUnsized = kind === undefined || (!f.diameter && !named) || (!f.length && !named);
  if (isUnsized) problems.push(problem("yard-fastener-name", entry.key.at, { name: entry.key.text }));
  const pack = readPack(entry.key, f.pack, f.priced ?? pricedInFile, problems);
  const density = findMaterialDensity(f.material.text);
  if (!f.weight && density === undefined)
    problems.push(problem("yard-material", f.material.at, { found: f.material.text, known: knownMaterials }));
  const stated = f.weight && parseWeight("weight", f.weight, problems);
  if (kind === undefined || diameter === undefined || !length || !pack) return undefined;
  const weight = f.weight ? stated : density && (Math.PI / 4) * diameter ** 2 * length.valueOf() * density;
  if (weight === undefined) return undefined;
  return {
    name: entry.key.text,
    kind,
    diameter,
    length,
    weight,
    material: f.material.text,
    driver: f.driver.text,
    pack,
    at: entry.key.at,
  };
}

function readPack(
  name: Written,
  w: Written,
  priced: Written | undefined,
  problems: Problems,
): Fastener["pack"] | undefined {
  const [, many, dollars] = /^(\S+) for (\S+)$/.exec(w.text) ?? [];
  if (many === undefined || dollars === undefined) {
    problems.push(
      problem("yard-number", w.at, {
        key: "pack",
        found: w.text,
        expected: 'a count and its price, like "100 for 9.50"',
      }),
    );
    return undefined;
  }
  const count = parsePlain("pack", { text: many, at: w.at }, 1, 1e6, problems);
  const price = parsePrice({ text: dollars, at: w.at }, problems);
  const day = parsePriced(name, priced, undefined, problems);
  return count !== undefined && price && day !== undefined ? { count, price, priced: day } : undefined;
}

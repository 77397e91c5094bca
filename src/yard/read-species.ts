// A species section -> the woods a yard knows: the published table, with rows added or overridden.
import { checkShape } from "../problems/tree-shape.ts";
import { entriesUnder, type Tree, type TreeEntry } from "../problems/yaml-tree.ts";
import { type Problems, parsePlain } from "./parse-values.ts";
import type { Species } from "./yard.ts";
import { speciesSchema } from "./yard-schema.ts";

/** All species of the files, by name, over those of the table. */
export function readSpecies(
  trees: readonly Tree[],
  table: readonly Species[],
  problems: Problems,
): ReadonlyMap<string, Species> {
  const own = trees.flatMap((tree) => entriesUnder(tree, "species")).map((e) => readOne(e, problems));
  return new Map([...table, ...own.filter((s) => s !== undefined)].map((s) => [s.name, s]));
}

function readOne(entry: TreeEntry, problems: Problems): Species | undefined {
  const { placed: f, problems: found } = checkShape(entry.value, speciesSchema, `of "${entry.key.text}"`, entry.key.at);
  problems.push(...found);
  if (!f) return undefined;
  const specificGravity = parsePlain("gravity", f.gravity, 0.1, 1.4, problems);
  const stiffness = parsePlain("stiffness", f.stiffness, 1e5, 4e6, problems);
  const rupture = parsePlain("rupture", f.rupture, 1000, 40000, problems);
  const radial = parsePlain("radial", f.radial, 0, 0.01, problems);
  const tangential = parsePlain("tangential", f.tangential, 0, 0.01, problems);
  const saturation = parsePlain("saturation", f.saturation, 15, 40, problems);
  const fastener = f["fastener-gravity"];
  const fastenerGravity = fastener && parsePlain("fastener-gravity", fastener, 0.1, 1.4, problems);
  if (
    specificGravity === undefined ||
    stiffness === undefined ||
    rupture === undefined ||
    radial === undefined ||
    tangential === undefined ||
    saturation === undefined
  )
    return undefined;
  return {
    name: entry.key.text,
    specificGravity,
    stiffness,
    rupture,
    radial,
    tangential,
    saturation,
    ...(fastenerGravity === undefined ? {} : { fastenerGravity }),
    decay: f.decay.text as Species["decay"],
    source: f.source.text,
  };
}

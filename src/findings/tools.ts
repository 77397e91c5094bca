// Worked-out item -> the tools it takes, in the order they are first picked up.
import type { Item, Piece, WorkedStep } from "../item/item.ts";
import { cuttingOperations, finishingOperations, type Operation, stepOperations } from "./operations.ts";

const toolsFor: Partial<Record<Operation, readonly string[]>> = {
  rip: ["table saw with guard and riving knife", "push stick"],
  plane: ["thickness planer"],
  crosscut: ["crosscut saw with a stop block"],
  bore: ["clamps"],
  notch: ["fine saw and chisel"],
  sand: ["sanding block or sander", "sandpaper, 80 to 180 grit", "dust mask"],
  "pocket holes": ["pocket-hole jig with its bit and collar", "clamps"],
  "lead holes": ["drill with lead-hole bits", "clamps"],
  "drive nails": ["hammer"],
  glue: ["clamps"],
  coat: ["brushes or rags"],
  "coat with lime": ["goggles", "waterproof gloves", "water to rinse with"],
  "coat with drying oil": ["waterproof gloves", "lidded metal can for rags"],
};

const always = ["tape and pencil", "square", "safety glasses", "ear muffs"] as const;

export type Tools = {
  readonly names: readonly string[];
  /** Bits that fit the heads of the screws used, and diameters in inches of the holes bored. */
  readonly drivers: readonly string[];
  readonly bores: readonly number[];
};

/** Every tool once, for all variants given (the standard one first). */
export function toolsOf(variants: readonly [Item, ...Item[]]): Tools {
  const [item] = variants;
  const steps = item.sections.flatMap((section) =>
    section.steps.flatMap((step) => stepOperations(step, item, section.makes !== undefined)),
  );
  const operations = [...cuttingOperations(item), ...steps, ...finishingOperations(variants)];
  const shaping = [
    ...(item.pieces.some(({ blanks }) => blanks !== undefined) ? ["clamps"] : []),
    ...(item.pieces.some(({ outline }) => outline !== undefined) ? ["bandsaw or scroll saw", "file"] : []),
    ...(hasGluedMitres(item) ? ["band clamp"] : []),
    ...(item.pieces.some(isSlanted) ? ["sliding bevel"] : []),
  ];
  const holes = item.pieces.flatMap((piece) => piece.cuts.flatMap((cut) => (cut.kind === "hole" ? [cut.across] : [])));
  const screws = item.joins.flatMap((join) => join.driven.map(({ fastener }) => fastener));
  return {
    names: [...new Set([...always, ...operations.flatMap((operation) => toolsFor[operation] ?? []), ...shaping])],
    drivers: [...new Set(screws.map(({ driver }) => driver).filter((driver) => driver !== ""))].sort(),
    bores: [...new Set(holes)].sort((a, b) => a - b),
  };
}

/** Whether any end is cut at a slant that a saw is set to. */
const isSlanted = ({ ends }: Piece): boolean =>
  ends.some(({ mitre, bevel }) => Math.abs(mitre) + Math.abs(bevel) > 0.05);

/** A glued join of two boards whose ends are both cut at a slant: only a band draws it shut. */
function hasGluedMitres({ joins, pieces }: Item): boolean {
  const slanted = new Set(pieces.filter(isSlanted).flatMap((piece) => piece.members));
  return joins.some(({ ways, a, b }) => ways.includes("glue") && slanted.has(a) && slanted.has(b));
}

/** What a few steps take in whoever's hands does them: the tools of their operations, and a bit for each sort of head. */
export function stepTools(item: Item, steps: readonly WorkedStep[]): string[] {
  const operations = steps.flatMap((step) => stepOperations(step, item, false));
  const drivers = steps.flatMap(({ joins }) =>
    joins.flatMap((join) => join.driven.map(({ fastener }) => fastener.driver).filter((driver) => driver !== "")),
  );
  return [...new Set([...operations.flatMap((operation) => toolsFor[operation] ?? []), ...drivers])];
}

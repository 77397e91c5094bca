// The drawings that are kept as they were when they were looked at: all of two items and of the slanted work, and those of the other
// items on paper with what is only theirs: panes, plates, ropes, curves.
import type { Drawing } from "../../src/drawing/drawing.ts";
import { corral, demoItems, drawingsOf, rack } from "./demo.ts";
import { slantedItems } from "./slanted.ts";

const others = demoItems.filter(({ slug }) => slug !== corral.slug && slug !== rack.slug);

export const golden: readonly Drawing[] = [
  ...[corral, rack].flatMap((item) => drawingsOf(item)),
  ...slantedItems.flatMap((item) => drawingsOf(item, () => item)),
  ...others.flatMap((item) => drawingsOf(item)).filter(({ id }) => !id.endsWith("-phone")),
];

// Worked-out item -> how it is used: what the words on use, cautions and care are chosen by, beyond its classes. Nothing private.
import type { Item } from "../item/item.ts";
import type { HazardClass } from "../recipe/recipe.ts";
import { compareLengths, exact, inches } from "../units/length.ts";

export type Use = {
  readonly classes: readonly HazardClass[];
  /** What is stated that it carries: pounds of one, and how many on all that is sold as one. */
  readonly loads: readonly { readonly name: string; readonly pounds: number; readonly count: number }[];
  /** Whether one of the loads is a person. */
  readonly carriesPeople: boolean;
  /** It is to be fastened to a wall: it comes with an anchor, or is tall for its depth. */
  readonly anchored: boolean;
  /** It has narrow gaps between boards that lie side by side: those gaps follow the wood as it swells. */
  readonly hasGaps: boolean;
  readonly hasRope: boolean;
  readonly hasLid: boolean;
};

/** Furniture that falls under the tip-over rule is 27 in high or more: 16 CFR 1261. Depth to height: common practice, no source. */
const tallFrom = 27;
const slender = 3;

/** A wider gap is open at every season. Common practice, no source. */
const narrowGap = exact(1);

const person = /\b(?:person|people|adult|grown-?up|sitter|somebody|child|children)\b/i;

/** Whether a load of this name is somebody. */
export const isPersonLoad = (name: string): boolean => person.test(name.replaceAll("-", " "));

type Used = Pick<
  Item,
  "classes" | "fittings" | "overall" | "gaps" | "members" | "panels" | "cords" | "loads" | "soldAs"
>;

export function useOf(item: Used): Use {
  const fitted = (words: RegExp): boolean =>
    item.fittings.some(({ fitting }) => words.test(fitting.name) || words.test(fitting.words));
  const sold = item.soldAs?.count ?? 1;
  return {
    classes: item.classes,
    loads: item.loads.map(({ name, pounds, places }) => ({ name, pounds, count: places.length * sold })),
    carriesPeople: item.loads.some(({ name }) => isPersonLoad(name)),
    anchored: hasAnchor(item.fittings) || isSlender(item.overall),
    hasGaps: narrowGaps(item).length > 0,
    hasRope: item.cords.length > 0,
    hasLid: fitted(/\bhinge|\bstay\b/i),
  };
}

/** Whether a kit comes with it that fastens it to a wall. */
export const hasAnchor = (fittings: Item["fittings"]): boolean =>
  fittings.some(({ fitting: { name, words } }) => /\banchor|\bto a wall\b/i.test(`${name} ${words}`));

/** Tall for its depth or its width: pulled at its top, it comes down. */
export function isSlender(overall: Item["overall"]): boolean {
  const [height, width, depth] = [overall.height, overall.width, overall.depth].map(inches) as [number, number, number];
  return height >= tallFrom && height >= slender * Math.min(width, depth);
}

/** Those between boards that lie side by side, and narrow enough to follow the wood as it swells. */
export const narrowGaps = (item: Used): Item["gaps"] => item.gaps.filter((gap) => isNarrow(item, gap));

/** Side by side: the boards' width runs along the row. */
function isNarrow({ members, panels }: Used, { group, panelKind, axis, gap }: Item["gaps"][number]): boolean {
  if (inches(gap) <= 0 || compareLengths(gap, narrowGap) > 0) return false;
  return members.some((member) => {
    if (member.group !== group || member.panelKind !== panelKind) return false;
    const panel = panels.find(({ name }) => name === member.panel);
    const own = panel && { x: panel.across.axis, y: panel.through.axis, z: panel.up.axis };
    return member.lie.width === (own ? own[axis] : axis);
  });
}

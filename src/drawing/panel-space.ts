// A panel standing anywhere in its item -> its own flat space: across from its left, up from its bottom, seen from the good side.
import type { Vec3 } from "../geometry/shape.ts";
import { cross, dot } from "../geometry/vector.ts";
import type { View } from "../geometry/view.ts";
import type { Heading, Item, Member, Panel } from "../item/item.ts";
import { type Length, minus } from "../units/length.ts";
import { axes } from "../units/side.ts";

export const membersOf = (item: Item, ids: readonly string[]): readonly Member[] => {
  const wanted = new Set(ids);
  return item.members.filter((member) => wanted.has(member.id));
};

/** A heading as a unit vector. */
export const toward = (heading: Heading): Vec3 =>
  axes.map((axis) => (axis === heading.axis ? heading.sign : 0)) as unknown as Vec3;

export const opposed = (heading: Heading): Heading => ({ axis: heading.axis, sign: heading.sign === 1 ? -1 : 1 });

/** What is on the right hand of someone who looks at the good side: its across, unless the panel is a mirrored one. */
export function rightOf(panel: Panel): Heading {
  const right = cross(toward(panel.up), toward(opposed(panel.through)));
  return dot(right, toward(panel.across)) > 0 ? panel.across : opposed(panel.across);
}

/** Square on to the good side, as the panel lies on the bench. */
export const faceOnView = (panel: Panel): View => ({
  right: toward(rightOf(panel)),
  up: toward(panel.up),
  toViewer: toward(opposed(panel.through)),
});

/** The first panel of every kind; a mirrored one counts as a kind of its own. */
export const differentPanels = (item: Item): readonly Panel[] =>
  item.panels.filter(
    (panel, i) =>
      item.panels.findIndex((other) => other.kind === panel.kind && other.mirrored === panel.mirrored) === i,
  );

/** The rows of a panel that are spaced by a block: of two boards alone the panel's own size is the gap's measure. */
export const spacedRows = (item: Item, panel: Panel): Item["gaps"] =>
  item.gaps.filter(
    (entry) =>
      entry.panelKind === panel.kind &&
      membersOf(item, panel.members).filter((member) => member.group === entry.group).length > 2,
  );

/** Where a member starts and ends along one of its panel's headings, from the panel's own edge; exact. */
export function reachIn(panel: Panel, member: Member, heading: Heading): readonly [Length, Length] {
  const { axis } = heading;
  return heading.sign === 1
    ? [minus(member.min[axis], panel.min[axis]), minus(member.max[axis], panel.min[axis])]
    : [minus(panel.max[axis], member.max[axis]), minus(panel.max[axis], member.min[axis])];
}

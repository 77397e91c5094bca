// A panel standing anywhere in its item -> its own flat space: across from its left, up from its bottom, seen from the good side.
import type { Vec2, Vec3 } from "../geometry/shape.ts";
import { add, cross, dot, subtract, times } from "../geometry/vector.ts";
import type { View } from "../geometry/view.ts";
import type { Heading, Item, Member, Panel } from "../item/item.ts";
import { inches, type Length, minus } from "../units/length.ts";
import { axes } from "../units/side.ts";

export const membersOf = (item: Item, ids: readonly string[]): readonly Member[] => {
  const wanted = new Set(ids);
  return item.members.filter((member) => wanted.has(member.id));
};

/** A heading as a unit vector. */
export const toward = (heading: Heading): Vec3 =>
  axes.map((axis) => (axis === heading.axis ? heading.sign : 0)) as unknown as Vec3;

const opposed = (heading: Heading): Heading => ({ axis: heading.axis, sign: heading.sign === 1 ? -1 : 1 });

/** What is on the right hand of someone who looks at the good side: its across, unless the panel is a mirrored one. */
function rightOf(panel: Panel): Heading {
  const right = cross(toward(panel.up), toward(opposed(panel.through)));
  return dot(right, toward(panel.across)) > 0 ? panel.across : opposed(panel.across);
}

/** Square on to the good side, as the panel lies on the bench; a tipped panel has directions of its own. */
export function faceOnView(panel: Panel): View {
  const { tipped } = panel;
  if (tipped === undefined) {
    return { right: toward(rightOf(panel)), up: toward(panel.up), toViewer: toward(opposed(panel.through)) };
  }
  const toViewer = times(tipped.through, -1);
  return { right: cross(tipped.up, toViewer), up: tipped.up, toViewer };
}

/** The panel's lower left corner in the item, as it is seen from its good side; its depth says nothing. */
function cornerOf(panel: Panel): Vec3 {
  const { tipped } = panel;
  if (tipped !== undefined) {
    const isFar = dot(faceOnView(panel).right, tipped.across) < 0;
    return isFar ? add(tipped.origin, times(tipped.across, inches(panel.width))) : tipped.origin;
  }
  const [right, up] = [rightOf(panel), panel.up];
  return axes.map((axis) => {
    const heading = axis === right.axis ? right : up;
    return inches((heading.axis === axis && heading.sign === -1 ? panel.max : panel.min)[axis]);
  }) as unknown as Vec3;
}

/** Every corner of a member's board as the panel's own places: from its left, and from its bottom. */
export function cornersIn(panel: Panel, member: Member): readonly Vec2[] {
  const view = faceOnView(panel);
  const corner = cornerOf(panel);
  return member.solid.edges.map(({ a }): Vec2 => {
    const p = subtract(a, corner);
    return [dot(p, view.right), dot(p, view.up)];
  });
}

/** The board's length in the panel, to the right and upward, its sign so that it runs up (or, level, to the right). */
export function lengthIn(panel: Panel, member: Member): Vec2 {
  const view = faceOnView(panel);
  const [x, y] = [dot(member.shape.frame.x, view.right), dot(member.shape.frame.x, view.up)];
  return y < -1e-9 || (Math.abs(y) <= 1e-9 && x < 0) ? [0 - x, 0 - y] : [x, y];
}

/** Whether a board runs neither along nor across its panel, but still in its plane. */
export function leansIn(panel: Panel, member: Member): boolean {
  const [x, y] = lengthIn(panel, member);
  return Math.abs(x) > 1e-6 && Math.abs(y) > 1e-6;
}

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

/** Where a member starts and ends in its panel, from the left or from the bottom; exact where the panel isn't tipped. */
export function reachIn(panel: Panel, member: Member, way: "right" | "up"): readonly [Length, Length] {
  if (panel.tipped !== undefined) {
    const places = cornersIn(panel, member).map((corner) => corner[way === "right" ? 0 : 1]);
    return [Math.min(...places), Math.max(...places)];
  }
  const { axis, sign } = way === "right" ? rightOf(panel) : panel.up;
  return sign === 1
    ? [minus(member.min[axis], panel.min[axis]), minus(member.max[axis], panel.min[axis])]
    : [minus(panel.max[axis], member.max[axis]), minus(panel.max[axis], member.min[axis])];
}

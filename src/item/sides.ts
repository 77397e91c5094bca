// A side as the maker says it, in the item or in a panel -> where it looks in item space; and back.
import { axisOf, isFar, type Side, sides } from "../units/side.ts";
import { type Lying, type OwnAxis, ownAlong } from "./frame.ts";
import type { Heading, Panel } from "./item.ts";

/** Which way this side looks; sides of a panel's member are those of the panel seen from its good side. */
export function headingOf(side: Side, panel: Panel | undefined): Heading {
  const axis = axisOf[side];
  const sign = isFar(side) ? 1 : -1;
  if (!panel) return { axis, sign };
  const own = { x: panel.across, y: panel.through, z: panel.up }[axis];
  return { axis: own.axis, sign: own.sign === sign ? 1 : -1 };
}

/** The maker's word for the low or high end of one of the board's own axes. */
export function sideAt(member: Lying, panel: Panel | undefined, own: OwnAxis, far: boolean): Side {
  const axis = member.lie[own];
  const found = sides.find((side) => {
    const heading = headingOf(side, panel);
    return heading.axis === axis && (heading.sign === 1) === far;
  });
  if (!found) throw new Error(`no side looks along ${axis}`);
  return found;
}

/** The own axis a side closes, and whether the side is at its high end. */
export function ownSideOf(member: Lying, panel: Panel | undefined, side: Side): { own: OwnAxis; far: boolean } {
  const heading = headingOf(side, panel);
  return { own: ownAlong(member, heading.axis), far: heading.sign === 1 };
}

// The contacts of two members -> the patch that fasteners go through, told along the axes of the item.
import type { Vec3 } from "../../geometry/shape.ts";
import { type Axis, axes } from "../../units/side.ts";
import { along } from "../frame.ts";
import type { Contact } from "../item.ts";

/** A flat patch square to `axis`; `sign` points from a into b. `long` and `short` are its own two sides. */
export type Seat = {
  readonly axis: Axis;
  readonly sign: 1 | -1;
  readonly plane: number;
  readonly area: number;
  readonly long: Axis;
  readonly short: Axis;
  readonly room: Readonly<Record<Axis, { readonly low: number; readonly high: number }>>;
};

/** The patches where a meets b, seen from a, largest first; contacts that stand askew to the item's axes are left out. */
export function seatsOf(contacts: readonly Contact[], a: string): Seat[] {
  return contacts
    .flatMap((contact): Seat[] => {
      const normal = contact.a === a ? contact.normal : (contact.normal.map((v) => 0 - v) as unknown as Vec3);
      const axis = axes.find((x) => Math.abs(along(normal, x)) > 1 - 1e-9);
      if (!axis) return [];
      const reach = (x: Axis) => {
        const values = contact.patch.map((p) => along(p, x));
        return { low: Math.min(...values), high: Math.max(...values) };
      };
      const room = { x: reach("x"), y: reach("y"), z: reach("z") };
      const [one, other] = axes.filter((x) => x !== axis) as [Axis, Axis];
      const wide = (x: Axis) => room[x].high - room[x].low;
      const long = wide(other) > wide(one) + 1e-9 ? other : one;
      return [
        {
          axis,
          sign: along(normal, axis) > 0 ? 1 : -1,
          plane: room[axis].low,
          area: contact.area,
          long,
          short: long === one ? other : one,
          room,
        },
      ];
    })
    .sort((p, q) => q.area - p.area);
}

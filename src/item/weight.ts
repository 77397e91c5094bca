// Members, fasteners and fittings -> pounds, and where they balance.
import type { Vec3 } from "../geometry/shape.ts";
import { add, length, subtract, times } from "../geometry/vector.ts";
import { vecOf } from "./frame.ts";
import type { Cord, Item, Join, Member, PlacedFitting } from "./item.ts";

type Mass = { readonly pounds: number; readonly at: Vec3 };

const middle = (a: Vec3, b: Vec3): Vec3 => times(add(a, b), 1 / 2);

/**
 * Wood by its solids, fasteners at the middle of their length, fittings at the middle of their box. A kit without a place counts in
 * the weight but not in the balance. Rope weighs along its way, its knots and slack spread over it. Glue and finish are not weighed.
 */
export function weigh(
  members: readonly Pick<Member, "weight" | "solid">[],
  joins: readonly Join[],
  fittings: readonly PlacedFitting[],
  cords: readonly Pick<Cord, "weight" | "points">[],
): Pick<Item, "weight" | "woodWeight" | "centreOfMass"> {
  const wood = members.map((m): Mass => ({ pounds: m.weight, at: m.solid.centroid }));
  const metal = joins
    .flatMap((join) => join.driven)
    .map((d): Mass => ({ pounds: d.fastener.weight, at: middle(d.head, d.tip) }));
  const bodies = fittings.flatMap(({ fitting, count, box }): Mass[] =>
    box ? [{ pounds: fitting.weight * count, at: middle(vecOf(box.min), vecOf(box.max)) }] : [],
  );
  const ropes = cords.flatMap(ropeMasses);
  const placed = [...wood, ...metal, ...bodies, ...ropes];
  const kits = fittings.filter((f) => !f.box).reduce((sum, f) => sum + f.fitting.weight * f.count, 0);
  const inPlace = total(placed);
  const moment = placed.reduce<Vec3>((sum, m) => add(sum, times(m.at, m.pounds)), [0, 0, 0]);
  return {
    weight: inPlace + kits,
    woodWeight: total(wood),
    centreOfMass: inPlace > 0 ? times(moment, 1 / inPlace) : [0, 0, 0],
  };
}

const total = (masses: readonly Mass[]): number => masses.reduce((sum, m) => sum + m.pounds, 0);

/** A cord's weight, stretch by stretch. */
const ropeMasses = ({ weight, points }: Pick<Cord, "weight" | "points">): Mass[] => {
  const stretches = points.slice(1).map((to, i) => ({ from: points[i] as Vec3, to }));
  const runs = stretches.map(({ from, to }) => length(subtract(to, from)));
  const whole = runs.reduce((sum, run) => sum + run, 0);
  return stretches.map(({ from, to }, i) => ({ pounds: (weight * (runs[i] as number)) / whole, at: middle(from, to) }));
};

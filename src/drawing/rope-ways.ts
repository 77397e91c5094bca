// Ropes in their boards, which may be moved apart -> their bodies, and their way where wood hides it.
import type { Vec3 } from "../geometry/shape.ts";
import { add, length, subtract } from "../geometry/vector.ts";
import type { Cord, Item, Member } from "../item/item.ts";
import type { Mark, Paper } from "./drawing.ts";
import { type Extra, ropeExtras } from "./extras.ts";
import { type Picture, type Placement, spotOnPaper } from "./picture.ts";
import { hiddenStretches, seenStretches } from "./visibility.ts";

type StepOf = (member: string) => Vec3;

const isSame = (a: Vec3, b: Vec3): boolean => length(subtract(a, b)) < 1e-9;

/** How far a rope moves as one; undefined where its boards have moved against each other. */
function stepOf(cord: Cord, of: StepOf): Vec3 | undefined {
  const [first, ...others] = cord.members.map(of);
  return first !== undefined && others.every((step) => isSame(step, first)) ? first : undefined;
}

/** The tubes of ropes whose boards keep their places to each other. */
export const ropesApart = (item: Item, of: StepOf): readonly Extra[] =>
  item.cords.flatMap((cord) => {
    const by = stepOf(cord, of);
    return by === undefined ? [] : ropeExtras(cord, by);
  });

/** Inside or beside a board by this much a mouth is one of its own, inches. */
const beside = 0.05;

const isOn = ({ solid: { box } }: Member, spot: Vec3): boolean =>
  spot.every((at, k) => at > (box.min[k] as number) - beside && at < (box.max[k] as number) + beside);

/** Where the points of a rope's way are once its boards have moved: a hanger moves with the hole before it. */
function movedPoints(cord: Cord, members: readonly Member[], of: StepOf): readonly Vec3[] {
  const own = members.filter(({ id }) => cord.members.includes(id));
  let last: Vec3 = of(cord.members[0] ?? "");
  return cord.points.map((spot) => {
    const board = own.find((member) => isOn(member, spot));
    if (board !== undefined) last = of(board.id);
    return add(spot, last);
  });
}

/** As its middle line: where wood hides the rope, and all of it where its boards have moved against each other. */
export function drawRopeWays(cords: readonly Cord[], of: StepOf, picture: Picture, placement: Placement): Mark[] {
  const members = picture.bodies.map(({ member }) => member);
  const chains = cords.flatMap((cord) => {
    const points = movedPoints(cord, members, of);
    const stretches = stepOf(cord, of) === undefined ? seenStretches : hiddenStretches;
    return points
      .slice(1)
      .flatMap((to, i) => stretches(picture, points[i] as Vec3, to))
      .map((pair) => pair.map((spot): Paper => spotOnPaper(picture, placement, spot)))
      .filter(([a, b]) => a !== undefined && b !== undefined && Math.hypot(b[0] - a[0], b[1] - a[1]) > 0.5);
  });
  return chains.length === 0 ? [] : [{ kind: "lines", line: "path", chains }];
}

// A fastener and what stands round it -> whether a driver gets behind its head.
import { distinct, fillsHull, type Hull, hullOf, isClear } from "../geometry/clear-way.ts";
import type { Vec3 } from "../geometry/shape.ts";
import type { Solid } from "../geometry/solid.ts";
import { stretchIn } from "../geometry/stretch-in.ts";
import { add, cross, subtract, times, unit } from "../geometry/vector.ts";
import type { Driven } from "./item.ts";

/** The least room behind a head, inches: for the bit, then for what holds it, from so far back to so far (common practice, no source). */
const rooms = [
  { wide: 3 / 8, from: 0, to: 1 },
  { wide: 3 / 4, from: 1, to: 4 },
] as const;

/** Things that are turned or struck from behind their heads. Dowels are not driven; a bolt is turned from beside it. */
const isDriven = ({ fastener: { kind } }: Driven): boolean =>
  kind === "screw" || kind === "pocket screw" || kind === "nail";

const still: Vec3 = [0, 0, 0];
const corners = 8;

/** An eight-sided bar inside each round room behind the head, from where it has wholly left the board. */
function roomBehind({ head, way }: Driven, board: Solid, { wide, from, to }: (typeof rooms)[number]): Hull {
  const back = times(way, -1);
  const across = unit(cross(way, Math.abs(way[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]));
  const over = cross(way, across);
  const rim = Array.from({ length: corners }, (_, i): Vec3 => {
    const angle = (i * 2 * Math.PI) / corners;
    const [u, v] = [(Math.cos(angle) * wide) / 2, (Math.sin(angle) * wide) / 2];
    return add(head, add(times(across, u), times(over, v)));
  });
  const out = Math.max(...[head, ...rim].map((p) => stretchIn(board, p, back, 0)?.[1] ?? 0), 0);
  const foot = rim.map((p) => add(p, times(back, out + from)));
  const sides = distinct(foot.map((p, i) => subtract(foot[(i + 1) % corners] as Vec3, p)));
  return {
    points: [...foot, ...foot.map((p) => add(p, times(back, to - from)))],
    normals: [way, ...sides.map((side) => unit(cross(side, way)))],
    arrises: [way, ...sides],
  };
}

/** The first of the bodies that surely stands in a driver's room; undefined where there is none. */
export function blockerOf<Body extends { readonly solid: Solid }>(
  driven: Driven,
  board: Solid,
  bodies: readonly Body[],
): Body | undefined {
  if (!isDriven(driven)) return undefined;
  const hulls = rooms.map((room) => roomBehind(driven, board, room));
  return bodies.find(
    ({ solid }) => fillsHull(solid) && hulls.some((room) => !isClear(room, still, still, hullOf(solid))),
  );
}

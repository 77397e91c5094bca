// `slope H at SIDE to H at SIDE` -> the plane that trims a member, in its own frame.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, cross, dot, unit as oneLong, times } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import { axisOf, isFar } from "../../units/side.ts";
import { along, blankOf, ownAxes, unit, vecOf } from "../frame.ts";
import type { Heading, Panel } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { cutLength } from "./cut-length.ts";
import { refused, type Worked } from "./worked.ts";

type SlopeCut = Cut & { readonly kind: "slope" };
/** `rise`: how far its unit normal rises, so that heights over it can be told plumb. */
type Plane = { readonly normal: Vec3; readonly offset: number; readonly rise: number };
/** A space as seen from its own left, front and bottom. */
type Own = { readonly origin: Vec3; readonly x: Vec3; readonly y: Vec3; readonly z: Vec3; readonly size: Vec3 };

export function workSlope(cut: SlopeCut, member: PlacedMember, placing: Placing): Worked {
  const plane = planeOf(cut, member, placing);
  if ("code" in plane) return refused(plane);
  const { over, under } = reach(plane, member);
  if (over <= sameLength) return { cuts: [] };
  if (under >= -sameLength) {
    return refused(problem("slope-above", cut.at, { cut: cut.text, member: member.id, by: under }));
  }
  const blank = blankOf(member);
  const normal = ownAxes.map((axis) => dot(plane.normal, blank[axis])) as unknown as Vec3;
  const offset = plane.offset - dot(plane.normal, blank.origin);
  return { cuts: [{ kind: "slope", why: "cut", at: cut.at, normal, offset }] };
}

/** How far the member's highest point is over the plane, plumb; undefined where the slope can't be worked out. */
export function slopeLeft(cut: SlopeCut, member: PlacedMember, placing: Placing): { over: number } | undefined {
  const plane = planeOf(cut, member, placing);
  if ("code" in plane) return undefined;
  return { over: reach(plane, member).over };
}

function reach({ normal, offset, rise }: Plane, member: PlacedMember): { over: number; under: number } {
  const { origin, size, length, width, thickness } = blankOf(member);
  const corners = [0, 1].flatMap((l) =>
    [0, 1].flatMap((w) =>
      [0, 1].map((t) =>
        add(origin, add(times(length, l * size[0]), add(times(width, w * size[1]), times(thickness, t * size[2])))),
      ),
    ),
  );
  const heights = corners.map((corner) => (dot(normal, corner) - offset) / rise);
  return { over: Math.max(...heights), under: Math.min(...heights) };
}

/** The plane through both heights, square to the side the slope is seen from; its normal looks up. */
function planeOf(cut: SlopeCut, member: PlacedMember, placing: Placing): Plane | Problem {
  const { from, fromSide, to, toSide } = cut.slope;
  const axis = axisOf[fromSide];
  if (axis !== axisOf[toSide] || fromSide === toSide) {
    return problem("slope-sides", cut.at, { cut: cut.text, fromSide, toSide });
  }
  const panel = placing.turned(member);
  const [a, b] = [cutLength(from, placing, panel), cutLength(to, placing, panel)];
  if (typeof a !== "number") return a;
  if (typeof b !== "number") return b;
  const own = panel ? ownOf(panel) : itemSpace(placing);
  const [low, high] = isFar(fromSide) ? [b, a] : [a, b];
  const [way, length] = axis === "x" ? [own.x, own.size[0]] : [own.y, own.size[1]];
  const square = axis === "x" ? own.y : own.x;
  const start = add(own.origin, times(own.z, low));
  const line = add(times(way, length), times(own.z, high - low));
  const normal = oneLong(cross(line, square));
  const up: Vec3 = dot(normal, own.z) > 0 ? normal : times(normal, -1);
  return { normal: up, offset: dot(up, start), rise: dot(up, own.z) };
}

function itemSpace({ overall }: Placing): Own {
  const size = vecOf({ x: overall.width, y: overall.depth, z: overall.height });
  return { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], size };
}

function ownOf(panel: Panel): Own {
  const size = vecOf({ x: panel.width, y: panel.thickness, z: panel.height });
  if (panel.tipped) {
    const { origin, across: x, through: y, up: z } = panel.tipped;
    return { origin, x, y, z, size };
  }
  const [min, max] = [vecOf(panel.min), vecOf(panel.max)];
  const way = ({ axis, sign }: Heading) => unit(axis, sign);
  const start = ({ axis, sign }: Heading): Vec3 => times(unit(axis), along(sign > 0 ? min : max, axis));
  const origin = [panel.across, panel.through, panel.up].map(start).reduce(add);
  return { origin, x: way(panel.across), y: way(panel.through), z: way(panel.up), size };
}

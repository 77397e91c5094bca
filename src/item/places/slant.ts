// A member that leans or ends on slants -> its square blank, its directions and the planes that cut it.
import type { Trim, Vec3 } from "../../geometry/shape.ts";
import { add, dot, times } from "../../geometry/vector.ts";
import { inches } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import type { Slant } from "../placed.ts";
import { axisVector, directionsOf, entry, layIn, leans, sectionCorners, sectionSize } from "./lean.ts";
import { feetOf } from "./lean-size.ts";
import type { Places } from "./places.ts";
import { arrises, endsOnSlants, maySlant, slantedEnds } from "./slanted-ends.ts";
import type { One } from "./target.ts";
import { clauseOf } from "./thing.ts";

/** The slant of a member in its own space; undefined where it lies and ends square. */
export function slantOf(places: Places, one: One): Slant | undefined {
  if (!maySlant(one.thing)) return undefined;
  return leans(one.thing) && layIn(one.thing).length === "z" ? leaningUpright(places, one) : slantedLevel(places, one);
}

const levelTrims = (lo: number, hi: number): Trim[] => [
  { point: axisVector("z", lo), normal: axisVector("z", -1) },
  { point: axisVector("z", hi), normal: axisVector("z", 1) },
];

/** A leaning upright board, both ends cut level. */
function leaningUpright(places: Places, one: One): Slant {
  const { thing, index } = one;
  const way = directionsOf(places, thing, one.k);
  const section = sectionSize(thing);
  const corners = sectionCorners(thing, way, section);
  const stands = places.interval(thing, index, "z");
  const [low, high] = [inches(stands.lo), inches(stands.hi)];
  const rise = times(way.length, (high - low) / way.length[2]);
  const feet = feetOf(corners, way.length);
  const reach = [...feet, ...feet.map((f) => add(f, rise))];
  const base = (axis: Axis) =>
    inches(places.interval(thing, index, axis).lo) - Math.min(...reach.map((p) => entry(p, axis)));
  const foot: Vec3 = [base("x"), base("y"), low];
  const starts = corners.map((c) => -c[2] / way.length[2]);
  const first = Math.min(...starts);
  const length = (high - low) / way.length[2] + Math.max(...starts) - first;
  return {
    origin: add(foot, times(way.length, first)),
    ...way,
    size: [length, section.width, section.thickness],
    trims: levelTrims(low, high),
  };
}

/** A level board tipped about its length, or any board whose ends follow slants. */
function slantedLevel(places: Places, one: One): Slant {
  const { thing, index } = one;
  const lay = layIn(thing);
  const way = directionsOf(places, thing, one.k);
  const section = sectionSize(thing);
  const interval = places.interval(thing, index, lay.length);
  const [lo, hi] = [inches(interval.lo), inches(interval.hi)];
  const lines = arrises(places, one);
  const across = lines.map((p) => dot(p, way.width));
  const through = lines.map((p) => dot(p, way.thickness));
  const [w, t] = [Math.min(...across), Math.min(...through)];
  const origin = add(add(axisVector(lay.length, lo), times(way.width, w)), times(way.thickness, t));
  const edges = clauseOf(thing.line, "edges level") !== undefined;
  const heights = lines.map((p) => p[2]);
  const ends = clauseOf(thing.line, "mitred") || endsOnSlants(thing) ? slantedEnds(places, one, lay.length) : undefined;
  return {
    origin,
    ...way,
    size: [hi - lo, Math.max(...across) - w, section.thickness],
    trims: [
      ...(edges ? levelTrims(Math.min(...heights), Math.max(...heights)) : []),
      ...(ends ? [ends.near, ends.far] : []),
    ],
  };
}

/** A slant told in a space that is turned and moved against it: `turn` for directions, `place` for points. */
export function movedSlant(slant: Slant, turn: (v: Vec3) => Vec3, place: (p: Vec3) => Vec3): Slant {
  return {
    origin: place(slant.origin),
    length: turn(slant.length),
    width: turn(slant.width),
    thickness: turn(slant.thickness),
    size: slant.size,
    trims: slant.trims.map(({ point, normal }) => ({ point: place(point), normal: turn(normal) })),
  };
}

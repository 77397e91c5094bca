// A flat panel that lies on a slope: how it is tipped, and where its own points come to lie in the item.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, times } from "../../geometry/vector.ts";
import { problem } from "../../problems/problem.ts";
import { inches, minus } from "../../units/length.ts";
import { type Axis, axes, axisOf, isFar } from "../../units/side.ts";
import type { Slant } from "../placed.ts";
import { Fault } from "./fault.ts";
import { type Interval, sizeOf } from "./interval.ts";
import { axisVector, entry } from "./lean.ts";
import { resolve } from "./meant.ts";
import type { Places } from "./places.ts";
import { clauseOf, type Space, type Thing } from "./thing.ts";
import { ownAxis } from "./turn.ts";

/** The slope under a tipped panel: it rises along a level axis of the item by `rise` an inch, and is `start` high at 0. */
export type Tilt = { readonly along: Axis; readonly rise: number; readonly start: number };

/** The tilt of a panel's line; undefined for one that isn't tipped. Throws a Fault where the slope makes no sense. */
export function tiltOf(places: Places, thing: Thing): Tilt | undefined {
  const clause = clauseOf(thing.line, "sloping");
  if (!clause) return undefined;
  const words = `the slope of ${thing.line.name.text}`;
  return places.answers.ask({ key: `tilt ${thing.key}`, words, at: clause.at }, () => {
    const { from, fromSide, to, toSide } = clause.slope;
    const along = axisOf[fromSide];
    const name = thing.line.name.text;
    const isFlat = thing.body.kind === "panel" && thing.body.facing === "top";
    if (!isFlat || along !== axisOf[toSide] || fromSide === toSide) {
      throw new Fault(problem("slopes-nowhere", clause.at, { name, fromSide, toSide, isFlat }));
    }
    const reading = { space: thing.space, axis: undefined, set: 0 };
    const { of } = clause.slope;
    const ends = of
      ? places.box(resolve(places, of, thing.space, 0), thing.space, along)
      : { lo: places.near(thing.space, along), hi: places.far(thing.space, along) };
    const at = (side: typeof fromSide): number => inches(isFar(side) ? ends.hi : ends.lo);
    const rise =
      (inches(places.length(to, reading)) - inches(places.length(from, reading))) / (at(toSide) - at(fromSide));
    return { along, rise, start: inches(places.length(from, reading)) - rise * at(fromSide) };
  });
}

/** Unit directions up the slope and square out of it. */
function slopeFrame({ along, rise }: Tilt): { up: Vec3; out: Vec3 } {
  const c = 1 / Math.hypot(1, rise);
  const s = rise * c;
  return {
    up: add(times(axisVector(along), c), axisVector("z", s)),
    out: add(times(axisVector(along), -s), axisVector("z", c)),
  };
}

/** The level room along the slope that a panel of this length up the slope and this thickness takes, and the reverse. */
export const levelRoom = (tilt: Tilt, length: number, thickness: number): number =>
  (length + Math.abs(tilt.rise) * thickness) / Math.hypot(1, tilt.rise);
export const slopeLength = (tilt: Tilt, room: number, thickness: number): number =>
  room * Math.hypot(1, tilt.rise) - Math.abs(tilt.rise) * thickness;

/** The item point of a tipped panel's own point, and the item direction of its own direction. */
export type Tipped = { readonly place: (own: Vec3) => Vec3; readonly turn: (own: Vec3) => Vec3 };

/** How a tipped panel's own space lies in the item. `box` is its own box, by which it is placed. */
export function tipped(places: Places, inner: Space, tilt: Tilt): Tipped {
  const host = inner.host;
  const thing = host?.thing();
  if (!host || thing?.body.kind !== "panel") throw new Error(`${inner.key} is no panel`);
  const turns = thing.body.turn;
  const own = ownAxis(turns, tilt.along);
  const across = axes.find((axis) => axis !== tilt.along && axis !== "z") as Axis;
  const through = places.boarded(inner);
  const thickness = inches(sizeOf(through));
  const box = places.ownBox(inner, own);
  const outer = places.interval(thing, host.index, tilt.along);
  const { up, out } = slopeFrame(tilt);
  const sign = turns[own].sign;
  // The near end of the underside: its upper arris overhangs it where the panel rises along the axis.
  const foot = inches(outer.lo) + Math.max(0, entry(out, tilt.along) * -thickness);
  const base: Vec3 = add(axisVector(tilt.along, foot), axisVector("z", tilt.start + tilt.rise * foot));
  const side = places.offset(inner, across);
  const sideOwn = ownAxis(turns, across);
  const turn = (v: Vec3): Vec3 =>
    add(
      add(times(up, sign * entry(v, own)), times(out, -entry(v, "y"))),
      axisVector(across, side.sign * entry(v, sideOwn)),
    );
  const from = sign === 1 ? inches(box.lo) : inches(box.hi);
  const origin = add(add(base, times(up, -sign * from)), times(out, inches(through.hi)));
  const whole = add(origin, axisVector(across, inches(side.offset)));
  return { turn, place: (p) => add(whole, turn(p)) };
}

/** The item box along an axis of an own box of a tipped panel. */
export function tippedBox(tip: Tipped, own: Record<Axis, Interval>, axis: Axis): Interval {
  const ends = (a: Axis): number[] => [inches(own[a].lo), inches(own[a].hi)];
  const values = ends("x").flatMap((x) =>
    ends("y").flatMap((y) => ends("z").map((z) => entry(tip.place([x, y, z]), axis))),
  );
  return { lo: Math.min(...values), hi: Math.max(...values) };
}

/** A square member of a tipped panel as a slant in the item. */
export function tippedSlant(
  tip: Tipped,
  box: Record<Axis, Interval>,
  lay: { length: Axis; width: Axis; thickness: Axis },
): Slant {
  return {
    origin: tip.place([inches(box.x.lo), inches(box.y.lo), inches(box.z.lo)]),
    length: tip.turn(axisVector(lay.length)),
    width: tip.turn(axisVector(lay.width)),
    thickness: tip.turn(axisVector(lay.thickness)),
    size: [lay.length, lay.width, lay.thickness].map((a) => inches(minus(box[a].hi, box[a].lo))) as unknown as Vec3,
    trims: [],
  };
}

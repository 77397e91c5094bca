// One line's clauses -> what they say along one axis: near side, far side, middle, size.
import { problem } from "../../problems/problem.ts";
import type { Reference } from "../../recipe/recipe.ts";
import { compareLengths, exact, type Length, minus, plus, times, zero } from "../../units/length.ts";
import { type Axis, axisOf, isFar } from "../../units/side.ts";
import { Fault } from "./fault.ts";
import { halfOf, type Interval, middleOf, type Said, sizeOf } from "./interval.ts";
import { apartAxis, axisNamed } from "./lay.ts";
import { resolve } from "./meant.ts";
import type { Places } from "./places.ts";
import { axisWords, type Reading } from "./target.ts";
import { clauseOf, type Space, type Thing } from "./thing.ts";
import { ownAxis } from "./turn.ts";

/** What the line says, or what goes without saying where it says nothing. */
export function saidOrUsual(places: Places, thing: Thing, axis: Axis, set: number): Said[] {
  const said = clauseSays(places, thing, axis, set);
  if (said.length > 0) return said;
  const at = thing.line.at;
  if (thing.space.kind === "panel") {
    // A panel's boards lie with their good faces level.
    return axis === "y" ? [{ what: "lo", value: zero, words: "good faces level", at }] : said;
  }
  const body = thing.body;
  if (body.kind !== "panel" || body.turn.z.axis !== "z") return said;
  if (axis === "z") return [{ what: "lo", value: zero, words: "it stands on the floor", at }];
  if (axis !== body.turn.x.axis || clauseOf(thing.line, "centred")) return said;
  const words = `it fills the box ${axisWords[axis]}`;
  return [
    { what: "lo", value: places.near(thing.space, axis), words, at },
    { what: "hi", value: places.far(thing.space, axis), words, at },
  ];
}

/** What the line's clauses say along one axis; sizes and free centring are added by the callers. */
export function clauseSays(places: Places, thing: Thing, axis: Axis, set: number): Said[] {
  const { line, space } = thing;
  const reading: Reading = { space, axis, set };
  const said: Said[] = [];
  for (const clause of line.clauses) {
    const say = (what: Said["what"], value: Length) => said.push({ what, value, words: clause.text, at: clause.at });
    const both = (i: Interval) => {
      say("lo", i.lo);
      say("hi", i.hi);
    };
    switch (clause.kind) {
      case "from to":
        if (axis === endsAxis(thing, axisNamed(clause.from) ?? axisNamed(clause.to))) {
          const a = places.length(clause.from, reading);
          const b = places.length(clause.to, reading);
          both(compareLengths(a, b) <= 0 ? { lo: a, hi: b } : { lo: b, hi: a });
        }
        break;
      case "between": {
        const along = endsAxis(thing, apartAxis(space, clause.a, clause.b));
        if (axis === along) both(lapped(places, thing, clause.a, clause.b, axis, set));
        break;
      }
      case "centred":
        if (clause.axis === axis) say("mid", middleOf(centredIn(places, clause.on, space, set, axis)));
        break;
      case "side at":
        if (axisOf[clause.side] === axis) say(isFar(clause.side) ? "hi" : "lo", places.length(clause.line, reading));
        break;
      case "in from":
        if (axisOf[clause.side] === axis) {
          const off = places.amount(clause.distance, reading);
          if (isFar(clause.side)) say("hi", minus(places.far(space, axis), off));
          else say("lo", plus(places.near(space, axis), off));
        }
        break;
      case "touching":
        if (axisOf[clause.side] === axis) {
          const box = places.box(resolve(places, clause.of, space, set), space, axis);
          const off = clause.off ? places.amount(clause.off, reading) : zero;
          if (isFar(clause.side)) say("lo", plus(box.hi, off));
          else say("hi", minus(box.lo, off));
        }
        break;
      case "level with":
        if (axisOf[clause.side] === axis) {
          const box = places.box(resolve(places, clause.of, space, set), space, axis);
          const out = clause.out ? places.amount(clause.out, reading) : zero;
          const by = clause.in ? minus(out, places.amount(clause.in, reading)) : out;
          if (isFar(clause.side)) say("hi", plus(box.hi, by));
          else say("lo", minus(box.lo, by));
        }
        break;
      case "spread":
        if (axis === thing.rowAxis) {
          const a = places.length(clause.from, reading);
          const b = places.length(clause.to, reading);
          both(compareLengths(a, b) <= 0 ? { lo: a, hi: b } : { lo: b, hi: a });
        }
        break;
      case "spread between":
        if (axis === thing.rowAxis) both(room(places, thing, clause.a, clause.b, axis, set));
        break;
      default:
        break;
    }
  }
  return said;
}

/** The axis that a line's ends run along: its boards' length, or across a panel unless another is named. */
function endsAxis(thing: Thing, named: Axis | undefined): Axis {
  return thing.body.kind === "panel" ? (named ?? thing.body.turn.x.axis) : thing.body.lay.length;
}

/** Adds the middle that a `centred` without a direction gives this axis, where nothing else settles it. */
export function withCentre(places: Places, thing: Thing, axis: Axis, set: number, said: Said[]): Said[] {
  const clause = clauseOf(thing.line, "centred");
  const free = clause && clause.axis === undefined && isFree(thing, axis);
  if (!free || new Set(said.map((s) => s.what)).size > 1 || said.some((s) => s.what !== "size")) return said;
  const space = thing.space;
  const value = middleOf(centredIn(places, clause.on, space, set, axis));
  return [...said, { what: "mid", value, words: clause.text, at: clause.at }];
}

/** What something is centred in: another thing, or its space. */
function centredIn(places: Places, on: Reference | undefined, space: Space, set: number, axis: Axis): Interval {
  return on
    ? places.box(resolve(places, on, space, set), space, axis)
    : { lo: places.near(space, axis), hi: places.far(space, axis) };
}

/** Whether `centred` without a direction may settle this axis: a level one, or in a panel one across its face. */
function isFree(thing: Thing, axis: Axis): boolean {
  return thing.space.kind === "panel" ? axis !== "y" : axis !== "z";
}

/** The clear room between the two of a, or between a and b, along an axis. */
function room(places: Places, thing: Thing, a: Reference, b: Reference | undefined, axis: Axis, set: number): Interval {
  const [near, far] = apart(places, thing, a, b, axis, set);
  if (compareLengths(near.hi, far.lo) > 0) {
    const facts = { name: thing.line.name.text, a: a.text, b: b?.text, along: axisWords[axis] };
    throw new Fault(problem("nothing-between", a.at, { ...facts, over: minus(near.hi, far.lo) }));
  }
  return { lo: near.hi, hi: far.lo };
}

function apart(
  places: Places,
  thing: Thing,
  a: Reference,
  b: Reference | undefined,
  axis: Axis,
  set: number,
): [Interval, Interval] {
  const { space } = thing;
  const first = resolve(places, a, space, set);
  const boxes = b
    ? [places.box(first, space, axis), places.box(resolve(places, b, space, set), space, axis)]
    : first.map((t) => places.extent(t, space, axis));
  if (boxes.length !== 2) {
    const facts = { name: thing.line.name.text, what: a.text, count: boxes.length };
    throw new Fault(problem("between-how-many", a.at, facts));
  }
  const [p, q] = boxes as [Interval, Interval];
  return compareLengths(p.lo, q.lo) <= 0 ? [p, q] : [q, p];
}

/** The room between, or further over what stands there by a lap. */
function lapped(
  places: Places,
  thing: Thing,
  a: Reference,
  b: Reference | undefined,
  axis: Axis,
  set: number,
): Interval {
  const clause = clauseOf(thing.line, "lapping");
  if (!clause) return room(places, thing, a, b, axis, set);
  const [near, far] = apart(places, thing, a, b, axis, set);
  const by = (lapped: Interval): Length =>
    clause.by === "half" ? halfOf(sizeOf(lapped)) : places.amount(clause.by, { space: thing.space, axis, set });
  return { lo: minus(near.hi, by(near)), hi: plus(far.lo, by(far)) };
}

export function sizeSaid(places: Places, thing: Thing, axis: Axis, k: number): Said[] {
  const value = ownSize(places, thing, axis, k);
  if (value === undefined) return [];
  const body = thing.body;
  const long = clauseOf(thing.line, "long");
  if (body.kind === "panel") {
    const at = ownAxis(body.turn, axis) === "z" ? body.panel.height.at : body.panel.width.at;
    return [{ what: "size", value, words: `the size of ${body.panel.name.text}`, at }];
  }
  if (long && axis === body.lay.length) return [{ what: "size", value, words: long.text, at: long.at }];
  const words = `the ${axis === body.lay.width ? "width" : "thickness"} of ${thing.line.what.text}`;
  return [{ what: "size", value, words, at: thing.line.what.at }];
}

/** A member's own size along an axis, where its board or its line gives it. */
export function ownSize(places: Places, thing: Thing, axis: Axis, k: number): Length | undefined {
  const body = thing.body;
  const reading: Reading = { space: thing.space, axis: undefined, set: 0 };
  if (body.kind === "panel") {
    const own = ownAxis(body.turn, axis);
    const space = body.inner[0] as Space;
    const extent = own === "y" ? undefined : own === "x" ? body.panel.width : body.panel.height;
    if (extent?.kind === "fit" && thing.rowAxis !== axis) return undefined;
    return sizeOf(places.ownBox(space, own));
  }
  if (axis !== body.lay.length) {
    const isWidth = axis === body.lay.width;
    if (body.kind === "piece") return isWidth ? body.section.width : body.section.thickness;
    return isWidth ? body.fitting.size?.width : body.fitting.size?.thickness;
  }
  if (body.kind === "fitting") return body.fitting.size?.length;
  const long = clauseOf(thing.line, "long");
  if (!long) return undefined;
  const length = places.amount(long.length, reading);
  return long.more ? plus(length, times(places.amount(long.more, reading), exact(k))) : length;
}

// Every thing's place along each axis, worked out from what its line says and from its neighbours, in any order.

import type { Vec3 } from "../../geometry/shape.ts";
import { problem } from "../../problems/problem.ts";
import type { Extent, PanelKind, Recipe, Reference, Sum } from "../../recipe/recipe.ts";
import {
  compareLengths,
  exact,
  inches,
  type Length,
  least,
  minus,
  most,
  plus,
  times,
  zero,
} from "../../units/length.ts";
import { type Axis, axes, axisOf, isFar, type Side } from "../../units/side.ts";
import { evenGap, fewestForGap } from "../../units/spacing.ts";
import type { Slant } from "../placed.ts";
import type { Answers } from "./ask.ts";
import { Fault } from "./fault.ts";
import { findTargets } from "./find.ts";
import { type Interval, middleOf, type Said, settle, sizeOf } from "./interval.ts";
import { thingNamed } from "./lay.ts";
import { entry } from "./lean.ts";
import { meant, resolve } from "./meant.ts";
import { measureOf } from "./measures.ts";
import { ownSize, sizeSaid } from "./own-size.ts";
import { clauseSays, floatsInSpace, type Saying, saidOrUsual, sorts, withCentre, workedOut } from "./said.ts";
import { rowTooTight, settleThing } from "./settle-thing.ts";
import { type OverallName, overallAxis, overallOf, sizeNamed } from "./sizes.ts";
import { movedSlant, slantOf } from "./slant.ts";
import type { Sections } from "./spaces.ts";
import { type Asked, type Value, workLength, workSum } from "./sums.ts";
import { axisWords, type One, type Reading, type Target } from "./target.ts";
import { clauseOf, referencesOf, type Space, type Thing } from "./thing.ts";
import { slopeLength, type Tipped, tiltOf, tipped, tippedBox, tippedSlant } from "./tilt.ts";
import { ownAxis } from "./turn.ts";

/** A row of like members along one axis: where it starts and ends, and the clear gap between neighbours. */
export type Row = { readonly interval: Interval; readonly gap: Length; readonly count: number };

/** Answers for all places of one recipe. Every method may throw a Fault with the maker's problem. */
export class Places {
  readonly recipe: Recipe;
  readonly sections: Sections;
  readonly item: Space;
  /** Shared with the modules of this folder that work out parts of a place. */
  readonly answers: Answers;

  constructor(recipe: Recipe, sections: Sections, item: Space, answers: Answers) {
    this.recipe = recipe;
    this.sections = sections;
    this.item = item;
    this.answers = answers;
  }

  asked(reading: Reading): Asked {
    const asked: Asked = {
      size: (name, at) => sizeNamed(this.recipe, this.answers, name, at, asked, (overall) => this.#followed(overall)),
      line: (sum) => ({ kind: "length", value: this.#line(sum, reading) }),
      measure: (sum) => measureOf(this, sum, reading.space),
    };
    return asked;
  }

  value(sum: Sum, reading: Reading): Value {
    return workSum(sum, this.asked(reading));
  }

  length(sum: Sum, reading: Reading): Length {
    return workLength(sum, this.asked(reading));
  }

  /** A sum that must be an angle, in degrees. */
  angle(sum: Sum, reading: Reading): number {
    const worked = this.value(sum, reading);
    if (worked.kind === "angle") return inches(worked.value);
    throw new Fault(problem("wants-an-angle", sum.at, {}));
  }

  /** A length that can't be negative. */
  amount(sum: Sum, reading: Reading): Length {
    const length = this.length(sum, { ...reading, axis: undefined });
    if (inches(length) < 0) throw new Fault(problem("below-nothing", sum.at, { length }));
    return length;
  }

  #followed(overall: OverallName): Length {
    const axis = overallAxis[overall];
    return minus(this.far(this.item, axis), this.near(this.item, axis));
  }

  /** A line across the space: where it cuts the axis, from where the finished thing begins if that is known. */
  #line(sum: Sum & { kind: "line" }, reading: Reading): Length {
    const own = sum.side === "middle" ? reading.axis : axisOf[sum.side];
    const line = this.#lineIn(sum, reading);
    if (!reading.anywhere || own === undefined) return line;
    const start = reading.space.kind === "item" ? reading.anywhere.origin[own] : this.near(reading.space, own);
    return minus(line, start);
  }

  #lineIn(sum: Sum & { kind: "line" }, reading: Reading): Length {
    const own = sum.side === "middle" ? reading.axis : axisOf[sum.side];
    if (own === undefined) throw new Fault(problem("middle-of-what", sum.at, {}));
    if (reading.axis !== undefined && own !== reading.axis) {
      throw new Fault(problem("line-lies-across", sum.at, { side: sum.side, wanted: axisWords[reading.axis] }));
    }
    if (!sum.of) return isFar(sum.side as Side) ? this.far(reading.space, own) : this.near(reading.space, own);
    const targets =
      reading.anywhere && !thingNamed(reading.space, sum.of)
        ? findTargets(this, sum.of, undefined)
        : resolve(this, sum.of, reading.space, reading.set);
    const box = this.box(targets, reading.space, own);
    return sum.side === "middle" ? middleOf(box) : isFar(sum.side) ? box.hi : box.lo;
  }

  /** The box of several targets along an axis of the space they are spoken of in. */
  box(targets: readonly Target[], space: Space, axis: Axis): Interval {
    const all = targets.map((t) => this.extent(t, space, axis));
    const first = all[0];
    if (!first) throw new Error("a box of nothing was asked for");
    return all.reduce((box, i) => ({ lo: least(box.lo, i.lo), hi: most(box.hi, i.hi) }), first);
  }

  /** Where a target lies along an axis of `space`: its own space, or the item for one inside a panel. */
  extent({ thing, index }: Target, space: Space, axis: Axis): Interval {
    const body = thing.body;
    if (body.kind !== "panel")
      return this.#seenFrom(thing.space, space, axis, (own) => this.interval(thing, index, own));
    const inner = body.inner[index] as Space;
    return this.#seenFrom(inner, space, axis, (own) => this.bodily(inner, own));
  }

  /** Intervals along the axes of one space, as one along an axis of a space around it. */
  #seenFrom(from: Space, to: Space, axis: Axis, own: (axis: Axis) => Interval): Interval {
    if (from === to) return own(axis);
    const host = from.host?.thing();
    if (!host) throw new Error(`${from.key} is not inside ${to.key}`);
    return this.#seenFrom(host.space, to, axis, (around) => this.#turned(from, around, own));
  }

  /** How a tipped panel's space lies in the item; undefined for one that stands or lies square. */
  tip(inner: Space): Tipped | undefined {
    const thing = inner.host?.thing();
    const tilt = thing && tiltOf(this, thing);
    if (!thing || !tilt) return undefined;
    const words = `how ${thing.line.name.text} lies on its slope`;
    return this.answers.ask({ key: `tip ${inner.key}`, words, at: thing.line.at }, () => tipped(this, inner, tilt));
  }

  /** An interval of a panel's own space as one along an axis of the item; `own` answers for each of the own axes. */
  #turned(inner: Space, axis: Axis, own: (axis: Axis) => Interval): Interval {
    const thing = inner.host?.thing();
    if (thing?.body.kind !== "panel") throw new Error(`${inner.key} is no panel`);
    const tilt = tiltOf(this, thing);
    if (tilt && (axis === "z" || axis === tilt.along)) {
      return tippedBox(this.tip(inner) as Tipped, { x: own("x"), y: own("y"), z: own("z") }, axis);
    }
    return this.#moved(inner, axis, own(ownAxis(thing.body.turn, axis)));
  }

  #moved(inner: Space, axis: Axis, own: Interval): Interval {
    const { offset, sign } = this.offset(inner, axis);
    return sign === 1
      ? { lo: plus(offset, own.lo), hi: plus(offset, own.hi) }
      : { lo: minus(offset, own.hi), hi: minus(offset, own.lo) };
  }

  /** item = offset + sign * own, along an axis of the item, for a panel's space. */
  offset(inner: Space, axis: Axis): { readonly offset: Length; readonly sign: 1 | -1 } {
    const host = inner.host;
    const thing = host?.thing();
    if (!host || thing?.body.kind !== "panel") throw new Error(`${inner.key} is no panel`);
    const own = ownAxis(thing.body.turn, axis);
    const sign = thing.body.turn[own].sign;
    const outer = this.interval(thing, host.index, axis);
    const box = this.ownBox(inner, own);
    return { offset: sign === 1 ? minus(outer.lo, box.lo) : plus(outer.hi, box.lo), sign };
  }

  /** Whether a space's size along an axis is left to what its members fill. */
  followsPieces(space: Space, axis: Axis): boolean {
    const host = space.host?.thing();
    if (!space.panel || !host) return overallOf(this.recipe, overallAlong(axis)).kind === "fit";
    const extent = extentOf(space.panel, axis);
    if (!extent) return true;
    if (extent.kind !== "fit") return false;
    if (host.body.kind !== "panel") throw new Error(`${host.key} is no panel`);
    const along = host.body.turn[axis].axis;
    return host.rowAxis === along || sorts(saidOrUsual(this, firstOf(host), along)) < 2;
  }

  /** Where a space begins along an axis: at 0, unless its pieces decide its size and some of them lie on its middle. */
  near(space: Space, axis: Axis): Length {
    if (axis === "y" && space.kind === "panel") return zero;
    const floating =
      this.followsPieces(space, axis) && [...space.things.values()].some((t) => floatsInSpace(this, t, axis));
    return floating ? this.bodily(space, axis).lo : zero;
  }

  far(space: Space, axis: Axis): Length {
    if (space.kind !== "item") return this.ownBox(space, axis).hi;
    const name = overallAlong(axis);
    const extent = overallOf(this.recipe, name);
    const words = extent.kind === "fit" ? `the ${name}, which is to fit` : `the ${name}`;
    return this.answers.ask({ key: `far ${axis}`, words, at: extent.at }, () =>
      extent.kind === "fit" ? this.bodily(space, axis).hi : this.length(extent, { space, axis: undefined, set: 0 }),
    );
  }

  /** The thickness of a panel's boards from its good side to its back; a pane or a hinge on it doesn't count. */
  boarded(inner: Space): Interval {
    const boards = [...inner.things.values()].filter((thing) => thing.body.kind === "piece");
    const targets = boards.flatMap((thing) =>
      Array.from({ length: this.count(thing) }, (_, index) => ({ thing, index })),
    );
    return targets.length > 0 ? this.box(targets, inner, "y") : this.bodily(inner, "y");
  }

  /** What the members of a space fill along its axis. */
  bodily(space: Space, axis: Axis): Interval {
    const words = `what ${space.panel?.name.text ?? "the whole"} comes to ${axisWords[axis]}`;
    const at = space.panel?.at ?? this.recipe.overall.at;
    return this.answers.ask({ key: `bodily ${space.key} ${axis}`, words, at }, () => {
      const targets = [...space.things.values()].flatMap((thing) =>
        Array.from({ length: this.count(thing) }, (_, index) => ({ thing, index })),
      );
      if (targets.length === 0) throw new Fault(problem("empty-panel", at, { name: space.panel?.name.text }));
      return this.box(targets, space, axis);
    });
  }

  /** The box a panel is placed by: its size, or what the room outside gives it, or what its members fill. */
  ownBox(space: Space, axis: Axis): Interval {
    const panel = space.panel;
    const host = space.host;
    if (!panel || !host) throw new Error("the item has no box of its own");
    const extent = extentOf(panel, axis);
    if (!extent) return this.bodily(space, "y");
    const words = `the ${overallAlong(axis)} of ${panel.name.text}`;
    return this.answers.ask({ key: `box ${space.key} ${axis}`, words, at: extent.at }, (): Interval => {
      if (extent.kind !== "fit") return { lo: zero, hi: this.length(extent, { space, axis: undefined, set: 0 }) };
      if (this.followsPieces(space, axis)) return { lo: this.near(space, axis), hi: this.bodily(space, axis).hi };
      const thing = host.thing();
      const body = thing.body;
      if (body.kind !== "panel") throw new Error(`${thing.key} is no panel`);
      const along = body.turn[axis].axis;
      const said = workedOut(saidOrUsual(this, firstOf(thing), along));
      const room = sizeOf(settleThing(thing, along, said));
      const tilt = tiltOf(this, thing);
      if (tilt?.along !== along) return { lo: zero, hi: room };
      return { lo: zero, hi: slopeLength(tilt, inches(room), inches(sizeOf(this.boarded(space)))) };
    });
  }

  /** How many a thing has to a set, and how many sets. */
  per(thing: Thing): number {
    const count = thing.line.count;
    if (count !== "follows") return count;
    const axis = thing.rowAxis as Axis;
    const words = `how many ${thing.line.name.text} there are`;
    return this.answers.ask({ key: `per ${thing.key}`, words, at: thing.line.at }, () => {
      const clause = clauseOf(thing.line, "gaps at most");
      if (!clause) throw new Error(`${thing.key} has no count and no widest gap`);
      const room = settle(workedOut(clauseSays(this, firstOf(thing), axis)));
      if (room.kind !== "settled")
        throw new Fault(problem("not-spread", clause.at, { name: thing.line.name.text, count: "follows" }));
      const widest = this.amount(clause.gap, { space: thing.space, axis: undefined, set: 0 });
      const size = ownSize(this, firstOf(thing), axis) as Length;
      const ends = clauseOf(thing.line, "end gaps") !== undefined;
      const count = fewestForGap(sizeOf(room.interval), size, widest, ends);
      if (count === undefined) throw this.#noCountFits(thing, sizeOf(room.interval), size, widest, ends);
      return count;
    });
  }

  /** As many as fit leave wider gaps, and one more has no room. */
  #noCountFits(thing: Thing, room: Length, size: Length, widest: Length, ends: boolean): Fault {
    const fit = Math.floor(inches(room) / inches(size) + 1e-9);
    const gap = fit < 1 ? undefined : evenGap(room, times(size, exact(fit)), fit, ends);
    const clause = clauseOf(thing.line, "gaps at most");
    const facts = { name: thing.line.name.text, room, size, widest, fit, gap };
    return new Fault(problem("no-count-fits", clause?.at ?? thing.line.at, facts));
  }

  /** All members of a thing, over all its sets. */
  count(thing: Thing): number {
    return this.per(thing) * this.sets(thing);
  }

  /** How many times a line stands: once for each member an `each` of it means. */
  sets(thing: Thing): number {
    return this.answers.ask(
      { key: `sets ${thing.key}`, words: `how many sets of ${thing.line.name.text} there are`, at: thing.line.at },
      () => {
        const each = thing.line.clauses.flatMap(referencesOf).filter((r) => r.each);
        const counts = each.map((r) => meant(this, r, thing.space).length);
        const odd = counts.findIndex((c) => c !== counts[0]);
        if (odd > 0) {
          const [a, b] = [each[0] as Reference, each[odd] as Reference];
          const facts = { a: a.text, b: b.text, countA: counts[0] as number, countB: counts[odd] as number };
          throw new Fault(problem("each-differs", b.at, facts, a.at));
        }
        return counts[0] ?? 1;
      },
    );
  }

  /** Where member `index` (from 0) of a thing lies along an axis of its own space; for a panel, the box it is placed by. */
  interval(thing: Thing, index: number, axis: Axis): Interval {
    const words = `where ${thing.line.name.text} ${index + 1} stands ${axisWords[axis]}`;
    return this.answers.ask({ key: `at ${thing.key} ${index} ${axis}`, words, at: thing.line.at }, () => {
      const per = this.per(thing);
      const set = Math.floor(index / per);
      const k = index % per;
      const one: One = { thing, index, set, k };
      if (thing.rowAxis !== axis) return this.#settled(one, axis);
      const every = clauseOf(thing.line, "every");
      if (every) {
        const reading = { space: thing.space, axis, set };
        const pitch = this.amount(every.pitch, reading);
        const first = this.length(every.from, reading);
        const line = isFar(every.toward)
          ? plus(first, times(pitch, exact(k)))
          : minus(first, times(pitch, exact(per - 1 - k)));
        const what = isFar(every.side) ? "hi" : "lo";
        const size = sizeSaid(this, one, axis);
        return settleThing(thing, axis, [{ what, value: line, words: every.text, at: every.at }, ...size]);
      }
      const { interval, gap } = this.row(thing, set);
      const size = ownSize(this, one, axis) as Length;
      const start = clauseOf(thing.line, "end gaps") ? plus(interval.lo, gap) : interval.lo;
      const lo = plus(start, times(plus(size, gap), exact(k)));
      return { lo, hi: plus(lo, size) };
    });
  }

  /** The row of one set. Only for things spread or set at a gap. */
  row(thing: Thing, set: number): Row {
    const axis = thing.rowAxis;
    if (axis === undefined) throw new Error(`${thing.key} stands in no row`);
    const words = `the gaps of ${thing.line.name.text}`;
    return this.answers.ask({ key: `row ${thing.key} ${set}`, words, at: thing.line.at }, (): Row => {
      const count = this.per(thing);
      const one: One = { thing, index: set * count, set, k: 0 };
      const size = ownSize(this, one, axis);
      if (size === undefined) throw new Fault(problem("row-end-to-end", thing.line.at, { name: thing.line.name.text }));
      const ends = clauseOf(thing.line, "end gaps") !== undefined;
      const reading = { space: thing.space, axis, set };
      const settled = (whole: readonly Saying[]) =>
        settleThing(thing, axis, workedOut(withCentre(this, one, axis, [...clauseSays(this, one, axis), ...whole])));
      const fixed = clauseOf(thing.line, "gap");
      const meeting = clauseOf(thing.line, "meeting");
      if (fixed || meeting) {
        const gap = fixed ? this.amount(fixed.gap, reading) : zero;
        const gaps = exact(ends ? count + 1 : count - 1);
        const { text, at } = fixed ?? (meeting as NonNullable<typeof meeting>);
        const value = () => plus(times(size, exact(count)), times(gap, gaps));
        return { interval: settled([{ what: "size", value, words: `${count} with ${text}`, at }]), gap, count };
      }
      const over = clauseOf(thing.line, "spread over");
      const room: Saying[] = over
        ? [{ what: "size", value: () => this.amount(over.length, reading), words: over.text, at: over.at }]
        : [];
      const interval = settled(room);
      const gap = evenGap(sizeOf(interval), times(size, exact(count)), count, ends);
      if (gap === undefined) {
        const facts = { name: thing.line.name.text, room: sizeOf(interval), size };
        throw new Fault(problem("one-in-a-row", thing.line.at, facts));
      }
      if (inches(gap) < 0) throw rowTooTight(thing, interval, count, size);
      const limit = clauseOf(thing.line, "gaps at most");
      const widest = limit && this.amount(limit.gap, reading);
      if (limit && widest !== undefined && compareLengths(gap, widest) > 0) {
        throw new Fault(problem("gap-over-limit", limit.at, { name: thing.line.name.text, count, gap, widest }));
      }
      return { interval, gap, count };
    });
  }

  /** The clear distance between neighbours of one set. */
  gap(thing: Thing, set: number): Length {
    const axis = thing.rowAxis as Axis;
    if (!clauseOf(thing.line, "every")) return this.row(thing, set).gap;
    const per = this.per(thing);
    const first = this.interval(thing, set * per, axis);
    return per === 1 ? zero : minus(this.interval(thing, set * per + 1, axis).lo, first.hi);
  }

  /** How a member leans and ends, where it isn't square; in its own space. */
  slant(thing: Thing, index: number): Slant | undefined {
    const words = `how ${thing.line.name.text} ${index + 1} slants`;
    return this.answers.ask({ key: `slant ${thing.key} ${index}`, words, at: thing.line.at }, () => {
      const per = this.per(thing);
      return slantOf(this, { thing, index, set: Math.floor(index / per), k: index % per });
    });
  }

  /** A slant told in a panel's space, as one in the item. */
  slantOutside(inner: Space, slant: Slant): Slant {
    const tip = this.tip(inner);
    if (tip) return movedSlant(slant, tip.turn, tip.place);
    const body = inner.host?.thing().body;
    if (body?.kind !== "panel") throw new Error(`${inner.key} is no panel`);
    const moves = axes.map((axis) => ({ own: ownAxis(body.turn, axis), ...this.offset(inner, axis) }));
    const turn = (v: Vec3): Vec3 => moves.map(({ own, sign }) => sign * entry(v, own)) as unknown as Vec3;
    const place = (p: Vec3): Vec3 =>
      moves.map(({ own, sign, offset }) => inches(offset) + sign * entry(p, own)) as unknown as Vec3;
    return movedSlant(slant, turn, place);
  }

  /** The slant of a member as a space around it sees it: its own, or that of the slope its panel lies on. */
  slantIn(thing: Thing, index: number, space: Space): Slant | undefined {
    let slant = this.slant(thing, index);
    let here = thing.space;
    while (here !== space) {
      const host: Thing | undefined = here.host?.thing();
      if (!host) throw new Error(`${thing.key} is not inside ${space.key}`);
      const tip = this.tip(here);
      if (slant) slant = this.slantOutside(here, slant);
      else if (tip && thing.body.kind !== "panel" && here === thing.space) {
        const [x, y, z] = axes.map((axis) => this.interval(thing, index, axis)) as [Interval, Interval, Interval];
        slant = tippedSlant(tip, { x, y, z }, thing.body.lay);
      }
      here = host.space;
    }
    return slant;
  }

  #settled(one: One, axis: Axis): Interval {
    const { thing } = one;
    const tilt = thing.body.kind === "panel" && axis === "z" ? tiltOf(this, thing) : undefined;
    if (tilt) return this.extent(one, thing.space, "z");
    const said = workedOut(saidOrUsual(this, one, axis));
    const body = thing.body;
    const size: Said[] = sizeSaid(this, one, axis);
    if (body.kind === "panel" && size.length === 0 && sorts(said) < 2) {
      // A panel that is to fit and that nothing outside sizes is as big as its members make it.
      const own = ownAxis(body.turn, axis);
      const value = sizeOf(this.ownBox(body.inner[0] as Space, own));
      size.push({ what: "size", value, words: `what ${body.panel.name.text} comes to`, at: body.panel.at });
    }
    const all: Saying[] = [...said, ...size].map((s) => ({ ...s, value: () => s.value }));
    return settleThing(thing, axis, workedOut(withCentre(this, one, axis, all)));
  }
}

const firstOf = (thing: Thing): One => ({ thing, index: 0, set: 0, k: 0 });

/** What a panel or assembly says of its size along one of its own axes; undefined for the thickness of a panel. */
const extentOf = (panel: PanelKind, axis: Axis): Extent | undefined =>
  axis === "x" ? panel.width : axis === "z" ? panel.height : panel.depth;

const overallAlong = (axis: Axis): OverallName =>
  (Object.keys(overallAxis) as OverallName[]).find((name) => overallAxis[name] === axis) as OverallName;

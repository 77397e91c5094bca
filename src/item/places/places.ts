// Every thing's place along each axis, worked out from what its line says and from its neighbours, in any order.
import { nearest } from "../../problems/nearest.ts";
import { problem } from "../../problems/problem.ts";
import type { Extent, Recipe, Reference, Sum } from "../../recipe/recipe.ts";
import {
  compareLengths,
  exact,
  inches,
  type Length,
  least,
  minus,
  most,
  over,
  plus,
  times,
  zero,
} from "../../units/length.ts";
import { type Axis, axisOf, isFar, type Side } from "../../units/side.ts";
import { evenGap, fewestForGap } from "../../units/spacing.ts";
import type { Answers } from "./ask.ts";
import { Fault } from "./fault.ts";
import { type Interval, middleOf, type Said, settle, sizeOf } from "./interval.ts";
import { apartAxis, axisNamed, thingNamed } from "./lay.ts";
import { measureOf } from "./measures.ts";
import { type OverallName, overallAxis, overallOf, sizeNamed } from "./sizes.ts";
import { type Asked, type Value, workLength, workSum } from "./sums.ts";
import { clauseOf, referencesOf, type Space, type Thing } from "./thing.ts";
import { ownAxis } from "./turn.ts";

/** One member of a thing; for a panel line, one panel as a whole. */
export type Target = { readonly thing: Thing; readonly index: number };

/** A row of like members along one axis: where it starts and ends, and the clear gap between neighbours. */
export type Row = { readonly interval: Interval; readonly gap: Length; readonly count: number };

/** Where a sum or a reference is read: the space, the axis it must lie along, and which set of an `each` line. */
type Reading = { readonly space: Space; readonly axis: Axis | undefined; readonly set: number };

export const axisWords: Readonly<Record<Axis, string>> = {
  x: "from left to right",
  y: "from front to back",
  z: "in height",
};

/** Answers for all places of one recipe. Every method may throw a Fault with the maker's problem. */
export class Places {
  readonly recipe: Recipe;
  readonly item: Space;
  readonly #answers: Answers;

  constructor(recipe: Recipe, item: Space, answers: Answers) {
    this.recipe = recipe;
    this.item = item;
    this.#answers = answers;
  }

  // ---- sums and references -------------------------------------------------------------------------------------

  asked(reading: Reading): Asked {
    const asked: Asked = {
      size: (name, at) => sizeNamed(this.recipe, this.#answers, name, at, asked, (overall) => this.#followed(overall)),
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

  /** A length that can't be negative. */
  #amount(sum: Sum, reading: Reading): Length {
    const length = this.length(sum, { ...reading, axis: undefined });
    if (inches(length) < 0) throw new Fault(problem("below-nothing", sum.at, { length }));
    return length;
  }

  #followed(overall: OverallName): Length {
    return this.far(this.item, overallAxis[overall]);
  }

  /** A line across the space: where it cuts the axis. */
  #line(sum: Sum & { kind: "line" }, reading: Reading): Length {
    const own = sum.side === "middle" ? reading.axis : axisOf[sum.side];
    if (own === undefined) throw new Fault(problem("middle-of-what", sum.at, {}));
    if (reading.axis !== undefined && own !== reading.axis) {
      throw new Fault(problem("line-lies-across", sum.at, { side: sum.side, wanted: axisWords[reading.axis] }));
    }
    if (!sum.of) return isFar(sum.side as Side) ? this.far(reading.space, own) : this.near(reading.space, own);
    const box = this.box(this.resolve(sum.of, reading.space, reading.set), reading.space, own);
    return sum.side === "middle" ? middleOf(box) : isFar(sum.side) ? box.hi : box.lo;
  }

  /** The members (or whole panels) a reference written in this space means; with `each`, the one of this set. */
  resolve(reference: Reference, space: Space, set: number): readonly Target[] {
    const all = this.#meant(reference, space);
    if (!reference.each) return all;
    const one = all[set];
    if (!one) throw new Error(`set ${set} of ${reference.text} asked for, of ${all.length}`);
    return [one];
  }

  #meant(reference: Reference, space: Space): readonly Target[] {
    const found = thingNamed(space, reference);
    if (!found) throw this.#unknown(reference, space);
    const hosts = found.panel?.body.kind === "panel" ? found.panel.body.inner : undefined;
    const name = found.thing.line.name.text;
    const things = hosts ? hosts.flatMap((inner) => inner.things.get(name) ?? []) : [found.thing];
    return things.flatMap((thing) => this.picked(thing, reference));
  }

  #unknown(reference: Reference, space: Space): Fault {
    const [first, second] = reference.names;
    const outer = first && space.things.get(first.text);
    const inside = outer?.body.kind === "panel" ? outer.body.inner[0] : undefined;
    const wrong = (outer && second) ?? first;
    const known = [...((outer && inside) || space).things.keys()];
    const what = wrong?.text ?? reference.text;
    const facts = { what, where: (outer && outer.line.name.text) || space.panel?.name.text, known };
    return new Fault(problem("nothing-called", wrong?.at ?? reference.at, { ...facts, nearest: nearest(what, known) }));
  }

  /** The members of a thing that a reference's numbers pick. */
  picked(thing: Thing, reference: Reference): Target[] {
    const count = this.count(thing);
    const all = Array.from({ length: count }, (_, index) => ({ thing, index }));
    const pick = reference.pick;
    switch (pick.kind) {
      case "all":
        return all;
      case "last":
        return all.slice(-1);
      case "odd":
        return all.filter((t) => t.index % 2 === 0);
      case "even":
        return all.filter((t) => t.index % 2 === 1);
      case "numbers": {
        const wrong = pick.ranges.find((r) => r.from < 1 || r.to > count || r.from > r.to);
        if (wrong) {
          const number = wrong.to > count ? wrong.to : wrong.from;
          const facts = { name: thing.line.name.text, number, count };
          throw new Fault(problem("no-such-number", reference.at, facts, thing.line.at));
        }
        return all.filter((t) => pick.ranges.some((r) => t.index + 1 >= r.from && t.index + 1 <= r.to));
      }
    }
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
    if (thing.body.kind === "panel") {
      const inner = thing.body.inner[index] as Space;
      return this.#turned(inner, axis, this.bodily(inner, ownAxis(thing.body.turn, axis)));
    }
    if (thing.space === space) return this.interval(thing, index, axis);
    const host = thing.space.host;
    if (!host) throw new Error(`${thing.key} is spoken of from inside a panel`);
    const body = host.thing().body;
    if (body.kind !== "panel") throw new Error(`${host.thing().key} holds things but is no panel`);
    return this.#turned(thing.space, axis, this.interval(thing, index, ownAxis(body.turn, axis)));
  }

  /** An interval of a panel's own space as one along an axis of the item. */
  #turned(inner: Space, axis: Axis, own: Interval): Interval {
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
    const box = this.#ownBox(inner, own);
    return { offset: sign === 1 ? minus(outer.lo, box.lo) : plus(outer.hi, box.lo), sign };
  }

  // ---- spaces --------------------------------------------------------------------------------------------------

  near(space: Space, axis: Axis): Length {
    return space.kind === "item" || axis === "y" ? zero : this.#ownBox(space, axis).lo;
  }

  far(space: Space, axis: Axis): Length {
    if (space.kind === "panel") return this.#ownBox(space, axis).hi;
    const name = (Object.keys(overallAxis) as OverallName[]).find((n) => overallAxis[n] === axis) as OverallName;
    const extent = overallOf(this.recipe, name);
    if (extent.kind !== "fit") return this.length(extent, { space, axis: undefined, set: 0 });
    const words = `the ${name}, which is to fit`;
    return this.#answers.ask({ key: `far ${axis}`, words, at: extent.at }, () => this.bodily(space, axis).hi);
  }

  /** What the members of a space fill along its axis. */
  bodily(space: Space, axis: Axis): Interval {
    const words = `what ${space.panel?.name.text ?? "the whole"} comes to ${axisWords[axis]}`;
    const at = space.panel?.at ?? this.recipe.overall.at;
    return this.#answers.ask({ key: `bodily ${space.key} ${axis}`, words, at }, () => {
      const targets = [...space.things.values()].flatMap((thing) =>
        Array.from({ length: this.count(thing) }, (_, index) => ({ thing, index })),
      );
      if (targets.length === 0) throw new Fault(problem("empty-panel", at, { name: space.panel?.name.text }));
      return this.box(targets, space, axis);
    });
  }

  /** The box a panel is placed by: its size, or what the room outside gives it, or what its members fill. */
  #ownBox(space: Space, axis: Axis): Interval {
    const panel = space.panel;
    const host = space.host;
    if (!panel || !host) throw new Error("the item has no box of its own");
    if (axis === "y") return this.bodily(space, "y");
    const extent: Extent = axis === "x" ? panel.width : panel.height;
    const words = `the ${axis === "x" ? "width" : "height"} of ${panel.name.text}`;
    return this.#answers.ask({ key: `box ${space.key} ${axis}`, words, at: extent.at }, (): Interval => {
      if (extent.kind !== "fit") return { lo: zero, hi: this.length(extent, { space, axis: undefined, set: 0 }) };
      const thing = host.thing();
      const body = thing.body;
      if (body.kind !== "panel") throw new Error(`${thing.key} is no panel`);
      const along = body.turn[axis].axis;
      if (thing.rowAxis !== along) {
        const said = this.#saidOrUsual(thing, along, 0);
        const room = new Set(said.map((s) => s.what)).size > 1 ? settle(said) : undefined;
        if (room?.kind === "settled") return { lo: zero, hi: sizeOf(room.interval) };
      }
      return this.bodily(space, axis);
    });
  }

  // ---- things --------------------------------------------------------------------------------------------------

  /** How many a thing has to a set, and how many sets. */
  per(thing: Thing): number {
    const count = thing.line.count;
    if (count !== "follows") return count;
    const axis = thing.rowAxis as Axis;
    const words = `how many ${thing.line.name.text} there are`;
    return this.#answers.ask({ key: `per ${thing.key}`, words, at: thing.line.at }, () => {
      const clause = clauseOf(thing.line, "gaps at most");
      if (!clause) throw new Error(`${thing.key} has no count and no widest gap`);
      const room = settle(this.#said(thing, axis, 0));
      if (room.kind !== "settled")
        throw new Fault(problem("not-spread", clause.at, { name: thing.line.name.text, count: "follows" }));
      const widest = this.#amount(clause.gap, { space: thing.space, axis: undefined, set: 0 });
      const size = this.#ownSize(thing, axis, 0) as Length;
      const ends = clauseOf(thing.line, "end gaps") !== undefined;
      const count = fewestForGap(sizeOf(room.interval), size, widest, ends);
      if (count === undefined) throw this.#noRoom(thing, room.interval, 1, size);
      return count;
    });
  }

  /** All members of a thing, over all its sets. */
  count(thing: Thing): number {
    return this.per(thing) * this.sets(thing);
  }

  /** How many times a line stands: once for each member an `each` of it means. */
  sets(thing: Thing): number {
    return this.#answers.ask(
      { key: `sets ${thing.key}`, words: `how many sets of ${thing.line.name.text} there are`, at: thing.line.at },
      () => {
        const each = thing.line.clauses.flatMap(referencesOf).filter((r) => r.each);
        const counts = each.map((r) => this.#meant(r, thing.space).length);
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
    return this.#answers.ask({ key: `at ${thing.key} ${index} ${axis}`, words, at: thing.line.at }, () => {
      const per = this.per(thing);
      const set = Math.floor(index / per);
      const k = index % per;
      if (thing.rowAxis !== axis) return this.#settled(thing, axis, set, k);
      const every = clauseOf(thing.line, "every");
      if (every) {
        const reading = { space: thing.space, axis, set };
        const pitch = this.#amount(every.pitch, reading);
        const first = this.length(every.from, reading);
        const line = isFar(every.toward)
          ? plus(first, times(pitch, exact(k)))
          : minus(first, times(pitch, exact(per - 1 - k)));
        const what = isFar(every.side) ? "hi" : "lo";
        const size = this.#sizeSaid(thing, axis, k);
        return this.#settleOr(thing, axis, [{ what, value: line, words: every.text, at: every.at }, ...size]);
      }
      const { interval, gap } = this.row(thing, set);
      const size = this.#ownSize(thing, axis, k) as Length;
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
    return this.#answers.ask({ key: `row ${thing.key} ${set}`, words, at: thing.line.at }, (): Row => {
      const count = this.per(thing);
      const size = this.#ownSize(thing, axis, 0);
      if (size === undefined) throw new Fault(problem("row-end-to-end", thing.line.at, { name: thing.line.name.text }));
      const said = this.#said(thing, axis, set);
      const fixed = clauseOf(thing.line, "gap");
      const ends = clauseOf(thing.line, "end gaps") !== undefined;
      const reading = { space: thing.space, axis, set };
      if (fixed) {
        const gap = this.#amount(fixed.gap, reading);
        const gaps = exact(ends ? count + 1 : count - 1);
        const value = plus(times(size, exact(count)), times(gap, gaps));
        said.push({ what: "size", value, words: `${count} with ${fixed.text}`, at: fixed.at });
        return { interval: this.#settleOr(thing, axis, this.#centred(thing, axis, set, said)), gap, count };
      }
      const over = clauseOf(thing.line, "spread over");
      if (over) said.push({ what: "size", value: this.#amount(over.length, reading), words: over.text, at: over.at });
      const interval = this.#settleOr(thing, axis, this.#centred(thing, axis, set, said));
      const gap = evenGap(sizeOf(interval), times(size, exact(count)), count, ends);
      if (gap === undefined) {
        const facts = { name: thing.line.name.text, room: sizeOf(interval), size };
        throw new Fault(problem("one-in-a-row", thing.line.at, facts));
      }
      if (inches(gap) < 0) throw this.#noRoom(thing, interval, count, size);
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

  #noRoom(thing: Thing, room: Interval, count: number, size: Length): Fault {
    const need = times(size, exact(count));
    const facts = { name: thing.line.name.text, count, size, need, room: sizeOf(room) };
    const spread = thing.line.clauses.find((c) => c.kind.startsWith("spread"));
    return new Fault(
      problem("row-too-tight", spread?.at ?? thing.line.at, { ...facts, short: minus(need, facts.room) }),
    );
  }

  /** A member's own size along an axis, where its board or its line gives it. */
  #ownSize(thing: Thing, axis: Axis, k: number): Length | undefined {
    const body = thing.body;
    const reading: Reading = { space: thing.space, axis: undefined, set: 0 };
    if (body.kind === "panel") {
      const own = ownAxis(body.turn, axis);
      const space = body.inner[0] as Space;
      const extent = own === "y" ? undefined : own === "x" ? body.panel.width : body.panel.height;
      if (extent?.kind === "fit" && thing.rowAxis !== axis) return undefined;
      return sizeOf(this.#ownBox(space, own));
    }
    if (axis !== body.lay.length) {
      const isWidth = axis === body.lay.width;
      if (body.kind === "piece") return isWidth ? body.section.width : body.section.thickness;
      return isWidth ? body.fitting.size?.width : body.fitting.size?.thickness;
    }
    if (body.kind === "fitting") return body.fitting.size?.length;
    const long = clauseOf(thing.line, "long");
    if (!long) return undefined;
    const length = this.#amount(long.length, reading);
    return long.more ? plus(length, times(this.#amount(long.more, reading), exact(k))) : length;
  }

  #sizeSaid(thing: Thing, axis: Axis, k: number): Said[] {
    const value = this.#ownSize(thing, axis, k);
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

  // ---- what is said --------------------------------------------------------------------------------------------

  #settled(thing: Thing, axis: Axis, set: number, k: number): Interval {
    const said = [...this.#saidOrUsual(thing, axis, set), ...this.#sizeSaid(thing, axis, k)];
    const whole = this.#centred(thing, axis, set, said);
    const body = thing.body;
    if (body.kind === "panel" && new Set(whole.map((s) => s.what)).size < 2) {
      // A panel that is to fit and that nothing outside sizes is as big as its members make it.
      const own = ownAxis(body.turn, axis);
      const value = sizeOf(this.bodily(body.inner[0] as Space, own));
      whole.push({ what: "size", value, words: `what ${body.panel.name.text} comes to`, at: body.panel.at });
      return this.#settleOr(thing, axis, this.#centred(thing, axis, set, whole));
    }
    return this.#settleOr(thing, axis, whole);
  }

  #settleOr(thing: Thing, axis: Axis, said: readonly Said[]): Interval {
    const result = settle(said);
    const name = thing.line.name.text;
    const along = axisWords[axis];
    switch (result.kind) {
      case "settled":
        return result.interval;
      case "clash": {
        const { a, b, due } = result;
        const facts = { name, along, what: b.what, first: a.words, second: b.words, due, said: b.value };
        const other = b.at.line === a.at.line && b.at.column === a.at.column ? said.find((s) => s.at !== b.at) : a;
        throw new Fault(problem("said-twice", b.at, facts, other?.at));
      }
      case "open": {
        const has = result.said.map((s) => s.words);
        const isLength = thing.body.kind !== "panel" && thing.body.lay.length === axis;
        const isThrough = thing.body.kind !== "panel" && thing.body.lay.thickness === axis;
        throw new Fault(problem("not-settled", thing.line.at, { name, along, axis, has, isLength, isThrough }));
      }
      case "turned": {
        const [a, b] = result.said;
        const size = sizeOf(result.interval);
        const facts = { name, along, size, first: a?.words ?? "", second: b?.words ?? "" };
        throw new Fault(problem("no-room", (b ?? a ?? thing.line).at, facts, a?.at));
      }
    }
  }

  /** What the line says, or what goes without saying where it says nothing. */
  #saidOrUsual(thing: Thing, axis: Axis, set: number): Said[] {
    const said = this.#said(thing, axis, set);
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
      { what: "lo", value: this.near(thing.space, axis), words, at },
      { what: "hi", value: this.far(thing.space, axis), words, at },
    ];
  }

  /** What the line's clauses say along one axis; sizes and free centring are added by the callers. */
  #said(thing: Thing, axis: Axis, set: number): Said[] {
    const { line, space } = thing;
    const reading: Reading = { space, axis, set };
    const said: Said[] = [];
    for (const clause of line.clauses) {
      const say = (what: Said["what"], value: Length) => said.push({ what, value, words: clause.text, at: clause.at });
      const room = (i: Interval) => {
        say("lo", i.lo);
        say("hi", i.hi);
      };
      switch (clause.kind) {
        case "from to":
          if (axis === this.#endsAxis(thing, axisNamed(clause.from) ?? axisNamed(clause.to))) {
            const a = this.length(clause.from, reading);
            const b = this.length(clause.to, reading);
            room(compareLengths(a, b) <= 0 ? { lo: a, hi: b } : { lo: b, hi: a });
          }
          break;
        case "between": {
          const along = this.#endsAxis(thing, apartAxis(space, clause.a, clause.b));
          if (axis === along) room(this.#lapped(thing, clause.a, clause.b, axis, set));
          break;
        }
        case "centred":
          if (clause.axis === axis) say("mid", middleOf(this.#centredIn(clause.on, space, set, axis)));
          break;
        case "side at":
          if (axisOf[clause.side] === axis) say(isFar(clause.side) ? "hi" : "lo", this.length(clause.line, reading));
          break;
        case "in from":
          if (axisOf[clause.side] === axis) {
            const off = this.#amount(clause.distance, reading);
            if (isFar(clause.side)) say("hi", minus(this.far(space, axis), off));
            else say("lo", plus(this.near(space, axis), off));
          }
          break;
        case "touching":
          if (axisOf[clause.side] === axis) {
            const box = this.box(this.resolve(clause.of, space, set), space, axis);
            const off = clause.off ? this.#amount(clause.off, reading) : zero;
            if (isFar(clause.side)) say("lo", plus(box.hi, off));
            else say("hi", minus(box.lo, off));
          }
          break;
        case "level with":
          if (axisOf[clause.side] === axis) {
            const box = this.box(this.resolve(clause.of, space, set), space, axis);
            const out = clause.out ? this.#amount(clause.out, reading) : zero;
            const by = clause.in ? minus(out, this.#amount(clause.in, reading)) : out;
            if (isFar(clause.side)) say("hi", plus(box.hi, by));
            else say("lo", minus(box.lo, by));
          }
          break;
        case "spread":
          if (axis === thing.rowAxis) {
            const a = this.length(clause.from, reading);
            const b = this.length(clause.to, reading);
            room(compareLengths(a, b) <= 0 ? { lo: a, hi: b } : { lo: b, hi: a });
          }
          break;
        case "spread between":
          if (axis === thing.rowAxis) room(this.#room(thing, clause.a, clause.b, axis, set));
          break;
        default:
          break;
      }
    }
    return said;
  }

  /** The axis that a line's ends run along: its boards' length, or across a panel unless another is named. */
  #endsAxis(thing: Thing, named: Axis | undefined): Axis {
    return thing.body.kind === "panel" ? (named ?? thing.body.turn.x.axis) : thing.body.lay.length;
  }

  /** Adds the middle that a `centred` without a direction gives this axis, where nothing else settles it. */
  #centred(thing: Thing, axis: Axis, set: number, said: Said[]): Said[] {
    const clause = clauseOf(thing.line, "centred");
    const free = clause && clause.axis === undefined && this.#isFree(thing, axis);
    if (!free || new Set(said.map((s) => s.what)).size > 1 || said.some((s) => s.what !== "size")) return said;
    const space = thing.space;
    const value = middleOf(this.#centredIn(clause.on, space, set, axis));
    return [...said, { what: "mid", value, words: clause.text, at: clause.at }];
  }

  /** What something is centred in: another thing, or its space. */
  #centredIn(on: Reference | undefined, space: Space, set: number, axis: Axis): Interval {
    return on
      ? this.box(this.resolve(on, space, set), space, axis)
      : { lo: this.near(space, axis), hi: this.far(space, axis) };
  }

  /** Whether `centred` without a direction may settle this axis: a level one, or in a panel one across its face. */
  #isFree(thing: Thing, axis: Axis): boolean {
    return thing.space.kind === "panel" ? axis !== "y" : axis !== "z";
  }

  /** The clear room between the two of a, or between a and b, along an axis. */
  #room(thing: Thing, a: Reference, b: Reference | undefined, axis: Axis, set: number): Interval {
    const [near, far] = this.#apart(thing, a, b, axis, set);
    if (compareLengths(near.hi, far.lo) > 0) {
      const facts = { name: thing.line.name.text, a: a.text, b: b?.text, along: axisWords[axis] };
      throw new Fault(problem("nothing-between", a.at, { ...facts, over: minus(near.hi, far.lo) }));
    }
    return { lo: near.hi, hi: far.lo };
  }

  #apart(thing: Thing, a: Reference, b: Reference | undefined, axis: Axis, set: number): [Interval, Interval] {
    const { space } = thing;
    const first = this.resolve(a, space, set);
    const boxes = b
      ? [this.box(first, space, axis), this.box(this.resolve(b, space, set), space, axis)]
      : first.map((t) => this.extent(t, space, axis));
    if (boxes.length !== 2) {
      const facts = { name: thing.line.name.text, what: a.text, count: boxes.length };
      throw new Fault(problem("between-how-many", a.at, facts));
    }
    const [p, q] = boxes as [Interval, Interval];
    return compareLengths(p.lo, q.lo) <= 0 ? [p, q] : [q, p];
  }

  /** The room between, or further over what stands there by a lap. */
  #lapped(thing: Thing, a: Reference, b: Reference | undefined, axis: Axis, set: number): Interval {
    const clause = clauseOf(thing.line, "lapping");
    if (!clause) return this.#room(thing, a, b, axis, set);
    const [near, far] = this.#apart(thing, a, b, axis, set);
    const by = (over_: Interval): Length =>
      clause.by === "half" ? over(sizeOf(over_), 2) : this.#amount(clause.by, { space: thing.space, axis, set });
    return { lo: minus(near.hi, by(near)), hi: plus(far.lo, by(far)) };
  }
}

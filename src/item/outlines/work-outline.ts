// An outline as written or drawn -> its loops from 0, 0 and its exact size; checked before any wood is.
import { findCrossings, isInside, middleOf, thinWood } from "../../geometry/outline-faults.ts";
import { movedLoop } from "../../geometry/outline-move.ts";
import { boxOf, splitAtExtremes } from "../../geometry/outline-split.ts";
import { thinTips } from "../../geometry/outline-tips.ts";
import { tightInsideTurns } from "../../geometry/outline-turns.ts";
import { profileOf } from "../../geometry/profile.ts";
import type { Loop, Vec2 } from "../../geometry/shape.ts";
import type { Place } from "../../problems/place.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { Outline, Sum } from "../../recipe/recipe.ts";
import { inches, type Length, minus } from "../../units/length.ts";
import { Fault, orFault } from "../places/fault.ts";
import { type Drawn, drawLoop, type Typed } from "./draw-strokes.ts";

export type WorkedOutline = {
  readonly name: string;
  readonly at: Place;
  readonly edge: Loop;
  readonly holes: readonly Loop[];
  readonly width: Length;
  readonly height: Length;
};

/** What is asked of it: the least wood and the least turn in inches, and where they are asked for. */
export type Limits = {
  /** Where nothing is said, only tips like splinters are told. */
  readonly wood: { readonly least: number; readonly at: Place; readonly said: boolean };
  /** Without `said` sharp corners pass: they are sawn from both sides. */
  readonly turn: { readonly least: number; readonly at: Place; readonly said: boolean };
};

/** Chords of the checks lie off their curves by this at most (inches), and webs are compared to twice it. */
const chord = 0.0005;

/** Corners sharper than this don't hold where wood of some width is asked for, or at all; common practice, no source. */
const bluntTip = 60;
const splinter = 25;

/** A thin tip shorter than this (inches) is rounded off with the sandpaper. */
const shortTip = 1 / 4;

/** More places than these of one kind are only counted. */
const mostTold = 4;

/** Throws a Fault with all that is wrong. */
export function workOutline(outline: Outline, sizeOf: (sum: Sum) => Length, limits: Limits): WorkedOutline {
  const typed: Typed = { across: [], up: [] };
  const tried = outline.loops.map((loop) => orFault(() => drawLoop(loop, sizeOf, typed)));
  const drawn = tried.flatMap((loop) => (loop instanceof Fault ? [] : [loop]));
  const problems = tried.flatMap((loop) => (loop instanceof Fault ? [loop.problem, ...loop.others] : []));
  const loops = drawn.map(({ loop }) => (loop.kind === "path" ? splitAtExtremes(loop) : loop));
  const lines = loops.map((loop) => profileOf(loop, chord).points);
  const whole = problems.length === 0;
  const meeting = checkApart(drawn, lines, !(tried[0] instanceof Fault));
  problems.push(...meeting, ...checkTurns(outline, drawn, limits));
  // Between lines that cross or are missing there is no width to measure.
  if (whole && meeting.length === 0) problems.push(...checkWood(outline, lines, limits));
  const [first, ...others] = problems;
  if (first) throw new Fault(first, others);
  const [edge] = loops;
  if (!edge) throw new Error(`${outline.name} has no edge`);
  const { min, max } = boxOf([edge]);
  const toCorner = (p: Vec2): Vec2 => [p[0] - min[0], p[1] - min[1]];
  return {
    name: outline.name,
    at: outline.at,
    edge: movedLoop(edge, toCorner),
    holes: loops.slice(1).map((loop) => movedLoop(loop, toCorner)),
    width: extent(typed.across, min[0], max[0]),
    height: extent(typed.up, min[1], max[1]),
  };
}

/** Exact where both ends are lines that were typed. */
function extent(typed: readonly Length[], low: number, high: number): Length {
  const at = (value: number) => typed.find((each) => Math.abs(inches(each) - value) < 1e-9);
  const [a, b] = [at(low), at(high)];
  return a === undefined || b === undefined ? high - low : minus(b, a);
}

function checkApart(drawn: readonly Drawn[], lines: readonly (readonly Vec2[])[], hasEdge: boolean): Problem[] {
  const crossings = findCrossings(lines);
  const crossed = new Set(crossings.flatMap(({ loops }) => loops));
  const told = crossings.map(({ at: [x, y], loops }) => {
    const [a, b] = loops.map((i) => drawn[i]);
    if (!a || !b) throw new Error("a crossing names a line that isn't there");
    if (a === b) return problem("outline-crosses-itself", a.at, { name: a.name, x, y });
    return problem("outlines-meet", b.at, { a: a.name, b: b.name, x, y }, a.at);
  });
  const [edge = [], ...holes] = lines;
  const placed = holes.flatMap((hole, i): Problem[] => {
    const one = drawn[i + 1];
    const [x, y] = hole[0] ?? [0, 0];
    if (!one || !hasEdge || crossed.has(i + 1)) return [];
    if (!isInside(edge, [x, y])) return [problem("cut-out-outside", one.at, { name: one.name, x, y })];
    const within = holes.findIndex((other, k) => k !== i && isInside(other, [x, y]));
    const other = drawn[within + 1];
    if (within < 0 || !other) return [];
    return [problem("cut-out-within", one.at, { name: one.name, other: other.name }, other.at)];
  });
  return [...told, ...placed];
}

function checkTurns(outline: Outline, drawn: readonly Drawn[], { turn }: Limits): Problem[] {
  return drawn.flatMap(({ name, at, loop }) => {
    const isEdge = name === outline.loops[0]?.name;
    const [worst, ...more] = tightInsideTurns(loop, !isEdge, chord, turn.said, turn.least - 1e-6);
    if (!worst) return [];
    const facts = { name, ...told(worst, more), radius: worst.radius, least: turn.least, said: turn.said };
    return [problem("turn-too-tight", at, facts, turn.at)];
  });
}

const told = ({ at: [x, y] }: { readonly at: Vec2 }, more: readonly { readonly at: Vec2 }[]) => ({
  x,
  y,
  more: more.slice(0, mostTold).map(({ at }) => at),
  others: Math.max(0, more.length - mostTold),
});

function checkWood(outline: Outline, lines: readonly (readonly Vec2[])[], { wood }: Limits): Problem[] {
  const webs = thinWood(lines, wood.least - 2 * chord).map((web) => ({ ...web, at: middleOf(web) }));
  const degrees = wood.said ? bluntTip : splinter;
  // What hangs on a thin web is thin up to its end, and told with it.
  const tips = thinTips(lines, wood.least, degrees).filter(
    (tip) => tip.long > shortTip && webs.every(({ at }) => awayFrom(at, tip.at, tip.base) >= wood.least),
  );
  const [web, ...moreWebs] = webs;
  const [tip, ...moreTips] = tips;
  const facts = { outline: outline.name, least: wood.least };
  return [
    ...(web
      ? [problem("wood-too-thin", outline.at, { ...facts, width: web.width, ...told(web, moreWebs) }, wood.at)]
      : []),
    ...(tip
      ? [problem("tip-too-thin", outline.at, { ...facts, degrees, long: tip.long, ...told(tip, moreTips) }, wood.at)]
      : []),
  ];
}

/** Inches from a point to the nearest of the line between two others. */
function awayFrom(p: Vec2, a: Vec2, b: Vec2): number {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / Math.max(ux * ux + uy * uy, 1e-30)));
  return Math.hypot(p[0] - a[0] - t * ux, p[1] - a[1] - t * uy);
}

// An outline as written or drawn -> its loops from 0, 0 and its exact size; checked before any wood is.
import { findCrossing, isInside, thinnestWood, type Web } from "../../geometry/outline-faults.ts";
import { movedLoop } from "../../geometry/outline-move.ts";
import { boxOf, splitAtExtremes } from "../../geometry/outline-split.ts";
import { tightestInsideTurn } from "../../geometry/outline-turns.ts";
import { profileOf } from "../../geometry/profile.ts";
import type { Loop, Vec2 } from "../../geometry/shape.ts";
import type { Place } from "../../problems/place.ts";
import { problem } from "../../problems/problem.ts";
import type { Outline, Sum } from "../../recipe/recipe.ts";
import { inches, type Length, minus } from "../../units/length.ts";
import { Fault } from "../places/fault.ts";
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
  readonly wood: { readonly least: number; readonly at: Place };
  /** Without `said` sharp corners pass: they are sawn from both sides. */
  readonly turn: { readonly least: number; readonly at: Place; readonly said: boolean };
};

/** Chords of the checks lie off their curves by this at most (inches), and webs are compared to twice it. */
const chord = 0.0005;

/** Throws a Fault with the first thing that is wrong. */
export function workOutline(outline: Outline, sizeOf: (sum: Sum) => Length, limits: Limits): WorkedOutline {
  const typed: Typed = { across: [], up: [] };
  const drawn = outline.loops.map((loop) => drawLoop(loop, sizeOf, typed));
  const loops = drawn.map(({ loop }) => (loop.kind === "path" ? splitAtExtremes(loop) : loop));
  const [edge] = loops;
  if (!edge) throw new Error(`${outline.name} has no edge`);
  const lines = loops.map((loop) => profileOf(loop, chord).points);
  checkApart(drawn, lines);
  checkTurns(outline, drawn, limits);
  checkWood(outline, lines, limits);
  const { min, max } = boxOf([edge]);
  const toCorner = (p: Vec2): Vec2 => [p[0] - min[0], p[1] - min[1]];
  const [first, ...others] = loops.map((loop) => movedLoop(loop, toCorner));
  return {
    name: outline.name,
    at: outline.at,
    edge: first ?? edge,
    holes: others,
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

function checkApart(drawn: readonly Drawn[], lines: readonly (readonly Vec2[])[]): void {
  const crossing = findCrossing(lines);
  if (crossing) {
    const [a, b] = crossing.loops.map((i) => drawn[i]);
    const [x, y] = crossing.at;
    if (!a || !b) throw new Error("a crossing names a line that isn't there");
    if (a === b) throw new Fault(problem("outline-crosses-itself", a.at, { name: a.name, x, y }));
    throw new Fault(problem("outlines-meet", b.at, { a: a.name, b: b.name, x, y }, a.at));
  }
  const [edge = [], ...holes] = lines;
  holes.forEach((hole, i) => {
    const one = drawn[i + 1];
    const [x, y] = hole[0] ?? [0, 0];
    if (!one) return;
    if (!isInside(edge, [x, y])) throw new Fault(problem("cut-out-outside", one.at, { name: one.name, x, y }));
    const within = holes.findIndex((other, k) => k !== i && isInside(other, [x, y]));
    const other = drawn[within + 1];
    if (within >= 0 && other) {
      throw new Fault(problem("cut-out-within", one.at, { name: one.name, other: other.name }, other.at));
    }
  });
}

function checkTurns(outline: Outline, drawn: readonly Drawn[], { turn }: Limits): void {
  drawn.forEach(({ name, at, loop }, i) => {
    const found = tightestInsideTurn(loop, i > 0, chord, turn.said);
    if (!found || found.radius >= turn.least - 1e-6) return;
    const [x, y] = found.at;
    const facts = { outline: outline.name, name, radius: found.radius, least: turn.least, x, y, said: turn.said };
    throw new Fault(problem("turn-too-tight", at, facts, turn.at));
  });
}

function checkWood(outline: Outline, lines: readonly (readonly Vec2[])[], { wood }: Limits): void {
  const web: Web | undefined = thinnestWood(lines);
  if (!web || web.width >= wood.least - 2 * chord) return;
  const [x, y] = [(web.from[0] + web.to[0]) / 2, (web.from[1] + web.to[1]) / 2];
  throw new Fault(
    problem("wood-too-thin", outline.at, { outline: outline.name, width: web.width, least: wood.least, x, y }, wood.at),
  );
}

// The strokes of one closed line, sizes worked out -> its loop, and every line across and up that was typed.
import { arcOf } from "../../geometry/outline-arc.ts";
import { curveThrough, roundThrough } from "../../geometry/outline-curve.ts";
import { movedLoop } from "../../geometry/outline-move.ts";
import { endOf, sidesOf } from "../../geometry/outline-split.ts";
import { roundedRectangle } from "../../geometry/rounded-rectangle.ts";
import type { Loop, PathItem, Vec2 } from "../../geometry/shape.ts";
import type { Place } from "../../problems/place.ts";
import { problem } from "../../problems/problem.ts";
import type { CurveWay, OutlineLoop, OutlinePoint, Stroke, Sum } from "../../recipe/recipe.ts";
import { inches, type Length, plus } from "../../units/length.ts";
import { Fault } from "../places/fault.ts";

/** Lengths as they were written, so that a size that is exact stays so. */
export type Typed = { readonly across: Length[]; readonly up: Length[] };
export type Drawn = { readonly name: string; readonly at: Place; readonly loop: Loop };

type SizeOf = (sum: Sum) => Length;

/** Throws a Fault where the strokes make no closed line. */
export function drawLoop(loop: OutlineLoop, sizeOf: SizeOf, typed: Typed): Drawn {
  const { name, at } = loop;
  if (loop.kind === "drawn") return { name, at, loop: loop.loop };
  return { name, at, loop: new Pen(sizeOf, typed, loop).draw() };
}

class Pen {
  readonly #sizeOf: SizeOf;
  readonly #typed: Typed;
  readonly #name: string;
  readonly #place: Place;
  readonly #strokes: readonly Stroke[];
  #start: Vec2 = [0, 0];
  #at: Vec2 = [0, 0];
  readonly #items: PathItem[] = [];

  constructor(sizeOf: SizeOf, typed: Typed, loop: OutlineLoop & { kind: "words" }) {
    this.#sizeOf = sizeOf;
    this.#typed = typed;
    this.#name = loop.name;
    this.#place = loop.at;
    this.#strokes = loop.strokes;
  }

  draw(): Loop {
    const [first, ...others] = this.#strokes;
    // The reader lets no empty line through.
    if (!first) throw new Error(`${this.#name} has no stroke`);
    const whole = this.#whole(first);
    const extra = whole ? others[0] : others.find((stroke) => stroke.kind === "start" || this.#isWhole(stroke));
    if (extra) throw new Fault(problem("stroke-order", extra.at, { stroke: extra.text, first: whole !== undefined }));
    if (whole) return whole;
    if (first.kind !== "start") throw new Fault(problem("outline-no-start", first.at, { stroke: first.text }));
    this.#start = this.#point(first.to);
    this.#at = this.#start;
    others.forEach((stroke, i) => {
      const ends = stroke.kind === "close" || stroke.kind === "mirrored";
      if (ends && i < others.length - 1) {
        throw new Fault(problem("stroke-after-end", (others[i + 1] ?? stroke).at, { end: stroke.kind }));
      }
      this.#stroke(stroke);
    });
    return this.#closed();
  }

  #closed(): Loop {
    const gap = Math.hypot(this.#at[0] - this.#start[0], this.#at[1] - this.#start[1]);
    if (gap > 1e-6) {
      const facts = { name: this.#name, x: this.#at[0], y: this.#at[1], toX: this.#start[0], toY: this.#start[1], gap };
      throw new Fault(problem("outline-open", this.#strokes.at(-1)?.at ?? this.#place, facts));
    }
    const last = this.#items.at(-1);
    const bent = this.#items.some((item) => "to" in item);
    if (!last || this.#items.length < (bent ? 2 : 3)) {
      throw new Fault(problem("outline-flat", this.#place, { name: this.#name }));
    }
    const end = "to" in last ? { ...last, to: this.#start } : this.#start;
    return { kind: "path", items: [...this.#items.slice(0, -1), end] };
  }

  #isWhole(stroke: Stroke): boolean {
    return stroke.kind === "circle" || stroke.kind === "rectangle" || stroke.kind === "round";
  }

  /** The loop of a stroke that is a whole line by itself. */
  #whole(stroke: Stroke): Loop | undefined {
    if (stroke.kind === "circle") {
      const across = this.#above0(stroke.across, stroke.text);
      const centre = this.#point(stroke.centre);
      return { kind: "circle", centre, radius: across / 2 };
    }
    if (stroke.kind === "rectangle") {
      const [w, h] = [this.#above0(stroke.width, stroke.text), this.#above0(stroke.height, stroke.text)];
      const [x, y] = this.#point(stroke.corner);
      this.#typed.across.push(plus(this.#sizeOf(stroke.corner.x), this.#sizeOf(stroke.width)));
      this.#typed.up.push(plus(this.#sizeOf(stroke.corner.y), this.#sizeOf(stroke.height)));
      const radius = stroke.corners ? inches(this.#sizeOf(stroke.corners)) : 0;
      const most = Math.min(w, h) / 2;
      if (radius > most) throw new Fault(problem("corners-too-round", stroke.at, { cut: stroke.text, radius, most }));
      return movedLoop(roundedRectangle(w, h, [radius, radius, radius, radius]), (p) => [p[0] + x, p[1] + y]);
    }
    if (stroke.kind !== "round") return undefined;
    const points = stroke.points.map((point) => this.#point(point));
    if (points.length < 3) throw new Fault(problem("round-points", stroke.at, { count: points.length }));
    this.#apart(points, stroke);
    return { kind: "path", items: roundThrough(points) };
  }

  #stroke(stroke: Stroke): void {
    switch (stroke.kind) {
      case "line":
        this.#add(this.#apart([this.#at, this.#point(stroke.to)], stroke)[1] as Vec2);
        return;
      case "arc": {
        const [mid, to] = [this.#point(stroke.through), this.#point(stroke.to)];
        this.#apart([this.#at, mid, to], stroke);
        if (!arcOf(this.#at, mid, to)) throw new Fault(problem("arc-straight", stroke.at, { stroke: stroke.text }));
        this.#add({ mid, to });
        return;
      }
      case "curve":
        this.#curve(stroke);
        return;
      case "close":
        if (this.#at[0] !== this.#start[0] || this.#at[1] !== this.#start[1]) this.#add(this.#start);
        return;
      case "mirrored":
        this.#mirror(stroke);
        return;
      default:
        throw new Error(`${stroke.kind} is no stroke on the way`);
    }
  }

  #curve(stroke: Stroke & { kind: "curve" | "round" }): void {
    const points = this.#apart([this.#at, ...stroke.points.map((point) => this.#point(point))], stroke);
    const last = points.at(-1) ?? this.#at;
    const before = stroke.smooth ? this.#arriving() : undefined;
    if (stroke.smooth && !before) throw new Fault(problem("smooth-after-nothing", stroke.at, { stroke: stroke.text }));
    const leaving = stroke.leaving ? this.#way(stroke.leaving, this.#at, 1) : before;
    const arriving = stroke.arriving && this.#way(stroke.arriving, last, -1);
    for (const item of curveThrough(points, leaving, arriving)) this.#add(item);
  }

  /** The unit direction of a way; `sign` -1 where a point is where it comes from. */
  #way(way: CurveWay, end: Vec2, sign: 1 | -1): Vec2 {
    if (way.kind !== "point") {
      const ways = { left: [-1, 0], right: [1, 0], up: [0, 1], down: [0, -1] } as const;
      return ways[way.kind];
    }
    const [x, y] = this.#point(way.point);
    const out: Vec2 = [sign * (x - end[0]), sign * (y - end[1])];
    const size = Math.hypot(...out);
    if (size < 1e-9) throw new Fault(problem("points-same", way.at, { stroke: "this direction", x, y }));
    return [out[0] / size, out[1] / size];
  }

  /** The direction in which the last stroke arrives. */
  #arriving(): Vec2 | undefined {
    const last = this.#items.at(-1);
    if (!last) return undefined;
    const before = this.#items.at(-2);
    const from = before ? endOf(before) : this.#start;
    const to = endOf(last);
    const arc = "mid" in last ? arcOf(from, last.mid, to) : undefined;
    const turn = Math.sign(arc?.sweep ?? 1);
    const way: Vec2 = arc
      ? [-turn * (to[1] - arc.centre[1]), turn * (to[0] - arc.centre[0])]
      : "leave" in last
        ? [to[0] - last.reach[0], to[1] - last.reach[1]]
        : [to[0] - from[0], to[1] - from[1]];
    const size = Math.hypot(...way);
    return [way[0] / size, way[1] / size];
  }

  #mirror(stroke: Stroke): void {
    const [[sx, sy], [x, y]] = [this.#start, this.#at];
    const upright = Math.abs(sx - x) < 1e-9;
    if (upright === Math.abs(sy - y) < 1e-9) {
      throw new Fault(problem("mirror-line", stroke.at, { x: sx, y: sy, toX: x, toY: y }));
    }
    const over = ([px, py]: Vec2): Vec2 => (upright ? [2 * sx - px, py] : [px, 2 * sy - py]);
    // Sizes on the far side follow from the near ones.
    const typed = upright ? this.#typed.across : this.#typed.up;
    const line = typed[0];
    if (line !== undefined) for (const each of [...typed]) typed.push(plus(plus(line, line), negative(each)));
    const sides = sidesOf({ kind: "path", items: [this.#start, ...this.#items] }).slice(1);
    for (const { from, item } of sides.reverse()) {
      const to = over(from);
      if ("leave" in item) this.#add({ leave: over(item.reach), reach: over(item.leave), to });
      else this.#add("mid" in item ? { mid: over(item.mid), to } : to);
    }
  }

  #add(item: PathItem): void {
    this.#items.push(item);
    this.#at = endOf(item);
  }

  #point({ x, y }: OutlinePoint): Vec2 {
    const [across, up] = [this.#sizeOf(x), this.#sizeOf(y)];
    this.#typed.across.push(across);
    this.#typed.up.push(up);
    return [inches(across), inches(up)];
  }

  #above0(sum: Sum, text: string): number {
    const size = inches(this.#sizeOf(sum));
    if (size <= 0) throw new Fault(problem("cut-no-size", sum.at, { cut: text, size }));
    return size;
  }

  /** The points, if no two that follow each other are the same. */
  #apart(points: readonly Vec2[], stroke: Stroke): readonly Vec2[] {
    points.forEach((p, i) => {
      const next = points[i + 1];
      if (next && Math.hypot(next[0] - p[0], next[1] - p[1]) < 1e-9) {
        throw new Fault(problem("points-same", stroke.at, { stroke: `"${stroke.text}"`, x: p[0], y: p[1] }));
      }
    });
    return points;
  }
}

const negative = (a: Length): Length => (typeof a === "number" ? -a : a.neg());

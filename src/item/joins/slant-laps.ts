// Two boards of which one at least doesn't lie square -> where they cross, as a flat figure through a part of their depth.
import { keptBelow, withinRectangle } from "../../geometry/convex.ts";
import { isClash, overlapOf } from "../../geometry/overlap.ts";
import { signedArea } from "../../geometry/profile.ts";
import type { Vec2, Vec3 } from "../../geometry/shape.ts";
import { solidOf } from "../../geometry/solid.ts";
import { inInches } from "../../geometry/tolerance.ts";
import { add, dot, subtract, times } from "../../geometry/vector.ts";
import { blankOf, type OwnAxis, ownAxes, ownEntry, shapeOf } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Slant } from "../placed.ts";

type Range = readonly [number, number];
type Carved = WorkedCut & { kind: "prism" };

/** A way that is square to a face of both boards, and what of it each of them fills. */
export type Crossing = {
  readonly way: Vec3;
  readonly a: { readonly own: OwnAxis; readonly range: Range };
  readonly b: { readonly own: OwnAxis; readonly range: Range };
  readonly low: number;
  readonly high: number;
};

/** "apart" where their bodies share no room, "skew" where no face of the one is level with a face of the other. */
export function crossingOf(a: PlacedMember, b: PlacedMember): Crossing | "apart" | "skew" {
  const [p, q] = [blankOf(a), blankOf(b)];
  if (!isClash(overlapOf(solidOf(shapeOf(a, [])), solidOf(shapeOf(b, []))))) return "apart";
  const shared = ownAxes.flatMap((one) =>
    ownAxes.flatMap((other) => (Math.abs(dot(p[one], q[other])) > 1 - 1e-9 ? [{ one, other }] : [])),
  );
  // Through both boards: neither of their lengths, and the thinner way first.
  const through = shared.filter(({ one, other }) => one !== "length" && other !== "length");
  const thin = through.find(({ one, other }) => one === "thickness" && other === "thickness") ?? through[0];
  if (!thin) return "skew";
  const way = p[thin.one];
  const reach = (blank: Slant, own: OwnAxis): Range => {
    const start = dot(way, blank.origin);
    const end = start + dot(way, blank[own]) * ownEntry(blank.size, own);
    return [Math.min(start, end), Math.max(start, end)];
  };
  const [ra, rb] = [reach(p, thin.one), reach(q, thin.other)];
  const [low, high] = [Math.max(ra[0], rb[0]), Math.min(ra[1], rb[1])];
  const flat = [p, q].every(({ trims }) =>
    trims.every(({ normal }) => Math.abs(dot(normal, way)) < 1e-9 || Math.abs(dot(normal, way)) > 1 - 1e-9),
  );
  if (!flat || a.outline || b.outline) return "skew";
  return { way, a: { own: thin.one, range: ra }, b: { own: thin.other, range: rb }, low, high };
}

/** What `by` takes out of a board between two levels along the way of their crossing; undefined where that is nothing. */
export function carve(
  from: PlacedMember,
  own: OwnAxis,
  by: PlacedMember,
  { way }: Pick<Crossing, "way">,
  [low, high]: Range,
): Pick<Carved, "axis" | "outline" | "low" | "high"> | undefined {
  const blank = blankOf(from);
  const [u, v] = ownAxes.filter((axis) => axis !== own) as [OwnAxis, OwnAxis];
  const flat = (point: Vec3): Vec2 => {
    const out = subtract(point, blank.origin);
    return [dot(out, blank[u]), dot(out, blank[v])];
  };
  const other = blankOf(by);
  const [r, s] = ownAxes.filter((axis) => Math.abs(dot(other[axis], way)) < 0.5) as [OwnAxis, OwnAxis];
  const corner = (k: number, l: number): Vec3 =>
    add(other.origin, add(times(other[r], k * ownEntry(other.size, r)), times(other[s], l * ownEntry(other.size, s))));
  const rectangle = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)].map(flat);
  const turned = signedArea(rectangle) < 0 ? rectangle.reverse() : rectangle;
  const cut = other.trims.reduce<Vec2[]>((left, { point, normal }) => {
    const square: Vec2 = [dot(normal, blank[u]), dot(normal, blank[v])];
    if (Math.hypot(...square) < 0.5) return left;
    const at = flat(point);
    return keptBelow(left, square, square[0] * at[0] + square[1] * at[1]);
  }, turned);
  const outline = withinRectangle(cut, [ownEntry(blank.size, u), ownEntry(blank.size, v)]);
  if (outline.length < 3 || signedArea(outline) < inInches.clashDepth ** 2) return undefined;
  const start = dot(way, blank.origin);
  const sign = dot(way, blank[own]);
  const levels = [low, high].map((level) => (level - start) * sign).sort((x, y) => x - y);
  return { axis: own, outline, low: levels[0] as number, high: levels[1] as number };
}

/** Whether a board is cut in two: right across it, and through all of its depth. */
export function cutsThrough(from: PlacedMember, { axis, outline, low, high }: Carved): boolean {
  const size = blankOf(from).size;
  if (low > 1e-9 || high < ownEntry(size, axis) - 1e-9) return false;
  const across = ownAxes.filter((own) => own !== axis).indexOf(axis === "width" ? "thickness" : "width");
  const room = ownEntry(size, axis === "width" ? "thickness" : "width");
  const values = outline.map((p) => p[across] as number);
  return Math.min(...values) < 1e-9 && Math.max(...values) > room - 1e-9;
}

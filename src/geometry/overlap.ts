// Two solids -> the wood they both claim: its volume, and how deep it is.
import type { Body, Side } from "./body.ts";
import { clipped } from "./clip.ts";
import { depthOfMesh } from "./inner-width.ts";
import { withCommonSolid } from "./kernel.ts";
import { nearPairs } from "./near-pairs.ts";
import type { Frame, Vec3 } from "./shape.ts";
import { type Box, closedBody, type Face, type Solid } from "./solid.ts";
import { inInches, type Tolerances } from "./tolerance.ts";
import { dot } from "./vector.ts";

/**
 * The body two solids have in common. `depth` is the least extent of that body, taken square to each of its own faces;
 * a body with inward corners is cut along them first, and the deepest of the pieces counts.
 */
export type Overlap = { readonly volume: number; readonly depth: number };

const none: Overlap = { volume: 0, depth: 0 };

/** Solids that only touch, or share a skin thinner than the `solid` tolerance, have nothing in common. */
export function overlapOf(a: Solid, b: Solid, tolerances: Tolerances = inInches): Overlap {
  const near = tolerances.solid;
  const common = commonBox(a.box, b.box);
  if (common === undefined || Math.min(...common) <= near) return none;
  if (fillsBox(a) && fillsBox(b)) {
    return { volume: common[0] * common[1] * common[2], depth: Math.min(...common) };
  }
  if (standsBehindFace(a, b, near) || standsBehindFace(b, a, near)) return none;
  return isConvex(a, near) && isConvex(b, near) ? convexOverlap(a, b, near) : carvedOverlap(a, b, tolerances);
}

/** Whether an overlap is a clash: more than 1 mm3, and more than 0.05 mm deep. */
export const isClash = (overlap: Overlap, tolerances: Tolerances = inInches): boolean =>
  overlap.volume > tolerances.clashVolume && overlap.depth > tolerances.clashDepth;

/** Every pair of solids that clashes, by their places in the list, the first of a pair before the second. */
export function clashesAmong(
  solids: readonly Solid[],
  tolerances: Tolerances = inInches,
): (Overlap & { readonly a: number; readonly b: number })[] {
  return nearPairs(solids, 0)
    .map(([i, j]) => ({ a: i, b: j, ...overlapOf(solidAt(solids, i), solidAt(solids, j), tolerances) }))
    .filter((clash) => isClash(clash, tolerances));
}

function solidAt(solids: readonly Solid[], i: number): Solid {
  const solid = solids[i];
  if (solid === undefined) throw new Error(`no solid ${i} among ${solids.length}`);
  return solid;
}

function commonBox(a: Box, b: Box): [number, number, number] | undefined {
  const along = (k: 0 | 1 | 2) => Math.min(a.max[k], b.max[k]) - Math.max(a.min[k], b.min[k]);
  const common: [number, number, number] = [along(0), along(1), along(2)];
  return common.every((extent) => extent > 0) ? common : undefined;
}

/** Whether a solid is all of its box: six faces, each square to an axis. */
export const fillsBox = (solid: Solid): boolean =>
  solid.faces.length === 6 && solid.faces.every((face) => face.normal.filter((n) => n === 0).length === 2);

/** Whether one face of `a` has all of `a` behind it and all of `b` before it. */
function standsBehindFace(a: Solid, b: Solid, near: number): boolean {
  return a.faces.some((face) => isBehind(a, face, near) && cornersOf(b).every((p) => height(face, p) >= -near));
}

const isConvex = (solid: Solid, near: number): boolean => solid.faces.every((face) => isBehind(solid, face, near));

const isBehind = (solid: Solid, face: Face, near: number): boolean =>
  cornersOf(solid).every((p) => height(face, p) <= near);

const height = (face: Face, p: Vec3): number => dot(face.normal, p) - face.offset;

const cornersOf = (solid: Solid): readonly Vec3[] => solid.edges.map((edge) => edge.a);

const standing: Frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0] };

function convexOverlap(a: Solid, b: Solid, near: number): Overlap {
  const body = b.faces.reduce((left, face, i) => clipped(left, sideOf(face, `b${i}`), near), bodyOf(a));
  if (body.faces.length === 0) return none;
  const { faces, edges, volume } = closedBody(body, standing);
  const extents = faces.map((face) => Math.max(...edges.map((edge) => -height(face, edge.a))));
  return { volume, depth: Math.min(...extents) };
}

const sideOf = (face: Face, name: string): Side => ({ normal: face.normal, offset: face.offset, name });

/** A convex solid as a body again; faces that share a corner share its number. */
function bodyOf(solid: Solid): Body {
  const numbers = new Map<string, number>();
  const points: Vec3[] = [];
  const numberOf = (p: Vec3): number => {
    const known = numbers.get(p.join(" "));
    if (known !== undefined) return known;
    numbers.set(p.join(" "), points.length);
    points.push(p);
    return points.length - 1;
  };
  const faces = solid.faces.map((face, i) => ({
    side: sideOf(face, `a${i}`),
    loops: face.loops.map((loop) => loop.map(numberOf)),
  }));
  return { points, faces };
}

function carvedOverlap(a: Solid, b: Solid, tolerances: Tolerances): Overlap {
  return withCommonSolid(a.shape, b.shape, tolerances.chord, (common) => {
    const volume = common.volume();
    // touching solids leave films of no thickness
    if (volume <= (common.surfaceArea() / 2) * tolerances.solid) return none;
    return { volume, depth: depthOfMesh(common, tolerances) };
  });
}

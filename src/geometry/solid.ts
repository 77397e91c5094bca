// Shape -> closed solid: flat faces, edges, volume, area, centroid.
import { type Body, prismBody, prismSides, type Side } from "./body.ts";
import { clipped, isConvex } from "./clip.ts";
import { touchesItself } from "./contact.ts";
import { carvedBody } from "./coplanar.ts";
import type { Frame, Shape, Trim, Vec3 } from "./shape.ts";
import { inInches, type Tolerances } from "./tolerance.ts";
import { add, cross, dot, doubleArea, placed, subtract, times, turned, unit } from "./vector.ts";

export type Box = { readonly min: Vec3; readonly max: Vec3 };

/** One flat face. Loops: outer first, counter-clockwise seen from outside, then holes clockwise. */
export type Face = {
  readonly normal: Vec3;
  /** normal . p = offset for every point p of the face. */
  readonly offset: number;
  readonly loops: readonly (readonly Vec3[])[];
  readonly area: number;
  /** Facets of one curved wall share a number; flat faces have none. */
  readonly wall?: number;
};

/** An edge between two faces (indices); smooth where the two facets belong to one curved wall or meet in a tangent. */
export type Edge = {
  readonly a: Vec3;
  readonly b: Vec3;
  readonly faces: readonly [number, number];
  readonly smooth: boolean;
};

/** A closed solid where its shape stands. A shape that is trimmed away whole has no faces and no volume. */
export type Solid = {
  /** What it was made from. */
  readonly shape: Shape;
  readonly faces: readonly Face[];
  readonly edges: readonly Edge[];
  readonly volume: number;
  readonly area: number;
  readonly centroid: Vec3;
  readonly box: Box;
};

/** The solid of a shape. Curves become chords no further off than the table says, for good in every figure. */
export function solidOf(shape: Shape, tolerances: Tolerances = inInches): Solid {
  return { shape, ...closedBody(bodyOf(shape, tolerances), shape.frame) };
}

function bodyOf(shape: Shape, tolerances: Tolerances): Body {
  const trims = shape.trims.map(trimSide);
  const sides = prismSides(shape, "0", tolerances.chord);
  const convex = shape.holes.length === 0 && isConvex(sides.profiles[0]?.points ?? []);
  if (shape.removals.length === 0 && (convex || trims.length === 0)) {
    return trims.reduce((body, trim) => clipped(body, trim, tolerances.solid), prismBody(sides, shape.depth));
  }
  return remembered(shape, tolerances, () => carvedWithoutSkins(shape, trims, tolerances));
}

/**
 * Cuts that meet in one plane can leave a skin of no thickness between them by a rounding error of the kernel (about
 * once in thousands); cut in another order they don't. A body without skins never touches itself.
 */
function carvedWithoutSkins(shape: Shape, trims: readonly Side[], tolerances: Tolerances): Body {
  const first = carvedBody(shape, trims, "together", tolerances);
  const hasSkin = (body: Body): boolean => touchesItself(closedBody(body, ownFrame).faces, tolerances);
  if (!hasSkin(first)) return first;
  const others = (["forward", "backward"] as const).map((order) => carvedBody(shape, trims, order, tolerances));
  return others.find((body) => !hasSkin(body)) ?? first;
}

const ownFrame: Frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0] };

/** Carved bodies by what they are made from; like pieces of an item, and of its next working out, are carved once. */
const carved = new Map<string, Body>();
const mostCarved = 2000;

function remembered(
  { outline, holes, depth, trims, removals }: Shape,
  tolerances: Tolerances,
  carve: () => Body,
): Body {
  const key = JSON.stringify([outline, holes, depth, trims, removals, tolerances]);
  const known = carved.get(key);
  if (known !== undefined) return known;
  const body = carve();
  if (carved.size >= mostCarved) carved.clear();
  carved.set(key, body);
  return body;
}

function trimSide(trim: Trim, i: number): Side {
  const normal = unit(trim.normal);
  return { normal, offset: dot(normal, trim.point), name: `trim:${i}` };
}

/** Faces, edges and figures of a body told in a frame. */
export function closedBody(body: Body, frame: Frame): Omit<Solid, "shape"> {
  const points = body.points.map((p) => placed(frame, p));
  const walls = new Map<string, number>();
  const faces = body.faces.map((face) => finishedFace(face, points, frame, walls));
  return { faces, edges: edgesOf(body, points), ...measured(faces, frame.origin) };
}

function finishedFace(
  { side, loops }: Body["faces"][number],
  points: readonly Vec3[],
  frame: Frame,
  walls: Map<string, number>,
): Face {
  const normal = turned(frame, side.normal);
  const rings = loops
    .map((loop) => loop.map((i) => corner(points, i)))
    .map((ring) => ({ ring, area: dot(doubleArea(ring), normal) / 2 }))
    .sort((a, b) => b.area - a.area);
  const wallName = side.curve?.wall;
  if (wallName !== undefined && !walls.has(wallName)) walls.set(wallName, walls.size);
  const wall = wallName === undefined ? undefined : walls.get(wallName);
  return {
    normal,
    offset: dot(normal, rings[0]?.ring[0] ?? frame.origin),
    loops: rings.map((r) => r.ring),
    area: rings.reduce((sum, r) => sum + r.area, 0),
    ...(wall === undefined ? {} : { wall }),
  };
}

function edgesOf(body: Body, points: readonly Vec3[]): Edge[] {
  const open = new Map<number, number>();
  const edge = (from: number, to: number): number => from * points.length + to;
  const edges: Edge[] = [];
  body.faces.forEach((face, number) => {
    for (const loop of face.loops) {
      loop.forEach((a, i) => {
        const b = loop[(i + 1) % loop.length] ?? a;
        const other = open.get(edge(b, a));
        if (other === undefined) {
          open.set(edge(a, b), number);
          return;
        }
        open.delete(edge(b, a));
        const smooth = runsInto(body.faces[other]?.side, face.side);
        edges.push({ a: corner(points, b), b: corner(points, a), faces: [other, number], smooth });
      });
    }
  });
  if (open.size > 0) throw new Error(`a solid is open at ${open.size} edges`);
  return edges;
}

const runsInto = (a: Side | undefined, b: Side): boolean => a?.runsInto === b.name || (!!a && b.runsInto === a.name);

/** Volume and centroid as sums of signed tetrahedra from one point to the fans of every loop. */
function measured(faces: readonly Face[], origin: Vec3) {
  const from = faces[0]?.loops[0]?.[0] ?? origin;
  let six = 0;
  let moment: Vec3 = [0, 0, 0];
  const min: [number, number, number] = [...from];
  const max: [number, number, number] = [...from];
  for (const face of faces) {
    for (const loop of face.loops) {
      const arms = loop.map((p) => subtract(p, from));
      const first = arms[0] ?? from;
      for (let i = 1; i + 1 < arms.length; i++) {
        const [a, b] = [arms[i] ?? first, arms[i + 1] ?? first];
        const part = dot(first, cross(a, b));
        six += part;
        moment = add(moment, times(add(first, add(a, b)), part));
      }
      for (const p of loop) {
        for (const k of [0, 1, 2] as const) {
          min[k] = Math.min(min[k], p[k]);
          max[k] = Math.max(max[k], p[k]);
        }
      }
    }
  }
  return {
    volume: six / 6,
    area: faces.reduce((sum, face) => sum + face.area, 0),
    centroid: six > 0 ? add(from, times(moment, 1 / (4 * six))) : from,
    box: { min, max },
  };
}

function corner(points: readonly Vec3[], i: number): Vec3 {
  const p = points[i];
  if (p === undefined) throw new Error(`a face names corner ${i} of ${points.length}`);
  return p;
}

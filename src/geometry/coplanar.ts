// The kernel's triangles -> a body: triangles in one plane become one face, named by the side that made it.
import { type Body, type PrismSides, prismSides, type Side } from "./body.ts";
import { type CutOrder, type Mesh, meshOf } from "./kernel.ts";
import type { Removal, Shape, Vec3 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";
import { cross, dot, length, placed, subtract, turned } from "./vector.ts";

/** The body of a shape with holes, trims or removals of any kind, in the shape's own frame. */
export function carvedBody(shape: Shape, trims: readonly Side[], order: CutOrder, tolerances: Tolerances): Body {
  const mesh = meshOf(shape, tolerances.chord, order);
  const sources = [
    allSides(prismSides(shape, "0", tolerances.chord)),
    ...shape.removals.map((removal, i) => removalSides(removal, `${i + 1}`, tolerances.chord)),
  ];
  const triangles = readTriangles(mesh, tolerances);
  for (const triangle of triangles) {
    triangle.side = sideOf(triangle, sources[mesh.sources[triangle.number] ?? -1] ?? trims, tolerances.plane);
  }
  const faces = grownFaces(triangles, tolerances.plane);
  return bodyOf(mesh, triangles, faces);
}

function allSides(sides: PrismSides): Side[] {
  return [...sides.walls.flat(), sides.bottom, sides.top];
}

/** What a removal leaves behind are its own sides, turned inside out. */
function removalSides(removal: Removal, name: string, chordError: number): Side[] {
  return allSides(prismSides(removal, name, chordError)).map((side) => {
    const out = turned(removal.frame, side.normal);
    const normal: Vec3 = [0 - out[0], 0 - out[1], 0 - out[2]];
    const offset = dot(normal, removal.frame.origin) - side.offset;
    if (side.curve?.stretch === undefined) return { ...side, normal, offset };
    const { start, along, length } = side.curve.stretch;
    const stretch = { start: placed(removal.frame, start), along: turned(removal.frame, along), length };
    return { ...side, normal, offset, curve: { wall: side.curve.wall, stretch } };
  });
}

type Triangle = {
  readonly number: number;
  readonly corners: readonly [Vec3, Vec3, Vec3];
  /** Square to the triangle, as long as twice its area. */
  readonly square: Vec3;
  readonly needle: boolean;
  /** The triangle across each side: from corner 0 to 1, 1 to 2, 2 to 0. */
  readonly across: readonly [number, number, number];
  readonly longest: 0 | 1 | 2;
  side: Side | undefined;
  face: number;
};

function readTriangles(mesh: Mesh, tolerances: Tolerances): Triangle[] {
  const { triangles: flat, points } = mesh;
  const owner = new Map<number, number>();
  for (let h = 0; h < flat.length; h++) owner.set(halfEdge(flat, points.length, h), Math.floor(h / 3));
  const across = (h: number): number => {
    const other = owner.get(halfEdgeBack(flat, points.length, h));
    if (other === undefined) throw new Error("the mesh of a solid is open");
    return other;
  };
  return Array.from({ length: flat.length / 3 }, (_, number) => {
    const h = 3 * number;
    const corner = (k: number): Vec3 => points[flat[h + k] ?? 0] ?? [0, 0, 0];
    const [a, b, c] = [corner(0), corner(1), corner(2)];
    const square = cross(subtract(b, a), subtract(c, a));
    const sides = [length(subtract(b, a)), length(subtract(c, b)), length(subtract(a, c))] as const;
    const long = Math.max(...sides);
    return {
      number,
      corners: [a, b, c],
      square,
      needle: length(square) < tolerances.plane * long,
      across: [across(h), across(h + 1), across(h + 2)],
      longest: long === sides[0] ? 0 : long === sides[1] ? 1 : 2,
      side: undefined,
      face: -1,
    };
  });
}

const nextInTriangle = (h: number): number => (h % 3 === 2 ? h - 2 : h + 1);
const halfEdge = (flat: Uint32Array, count: number, h: number): number =>
  (flat[h] ?? 0) * count + (flat[nextInTriangle(h)] ?? 0);
const halfEdgeBack = (flat: Uint32Array, count: number, h: number): number =>
  (flat[nextInTriangle(h)] ?? 0) * count + (flat[h] ?? 0);

function sideOf(triangle: Triangle, sides: readonly Side[], near: number): Side | undefined {
  if (triangle.needle) return undefined;
  let best: Side | undefined;
  let bestGap = near;
  for (const side of sides) {
    if (dot(side.normal, triangle.square) <= 0) continue;
    const gap = gapTo(triangle, side);
    // between a flat side and a facet in one plane, the facet's own stretch decides
    if (gap > bestGap || (side.curve !== undefined && !onStretch(triangle, side.curve, near))) continue;
    if (best?.curve !== undefined && side.curve === undefined) continue;
    best = side;
    bestGap = gap;
  }
  if (best === undefined) throw new Error(`triangle ${triangle.number} lies on no side of its shape`);
  return best;
}

const gapTo = (triangle: Triangle, side: Side): number =>
  Math.max(...triangle.corners.map((p) => Math.abs(dot(side.normal, p) - side.offset)));

const onStretch = (triangle: Triangle, { stretch }: NonNullable<Side["curve"]>, near: number): boolean =>
  stretch === undefined ||
  triangle.corners.every((p) => {
    const at = dot(subtract(p, stretch.start), stretch.along);
    return at > -near && at < stretch.length + near;
  });

/** Gives every triangle its face number, largest triangles first; what comes back are the faces' sides. */
function grownFaces(triangles: readonly Triangle[], near: number): Side[] {
  const faces: Side[] = [];
  const bySize = triangles.filter((t) => !t.needle).sort((a, b) => length(b.square) - length(a.square));
  for (const seed of bySize) {
    if (seed.face >= 0 || seed.side === undefined) continue;
    const side = seed.side;
    const open = [seed];
    seed.face = faces.length;
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      for (const number of at.across) {
        const next = triangles[number];
        if (next === undefined || next.needle || next.face >= 0 || !belongsTo(next, side, near)) continue;
        next.face = faces.length;
        open.push(next);
      }
    }
    faces.push(side);
  }
  adoptNeedles(triangles);
  return faces;
}

function belongsTo(triangle: Triangle, side: Side, near: number): boolean {
  if (triangle.side === side) return true;
  if (side.curve !== undefined || triangle.side?.curve !== undefined) return false;
  return dot(side.normal, triangle.square) > 0 && gapTo(triangle, side) <= near;
}

/** A triangle without width goes to the face across its longest side. */
function adoptNeedles(triangles: readonly Triangle[]): void {
  let waiting = triangles.filter((t) => t.needle);
  while (waiting.length > 0) {
    const left = waiting.filter((t) => {
      t.face = triangles[t.across[t.longest]]?.face ?? -1;
      return t.face < 0;
    });
    if (left.length === waiting.length) {
      // needles that only point at each other: any neighbour that has a face will do
      for (const t of left) t.face = Math.max(...t.across.map((n) => triangles[n]?.face ?? -1));
      if (left.every((t) => t.face < 0)) throw new Error("a solid of needles only");
    }
    waiting = waiting.filter((t) => t.face < 0);
  }
}

function bodyOf(mesh: Mesh, triangles: readonly Triangle[], sides: readonly Side[]): Body {
  const flat = mesh.triangles;
  const count = mesh.points.length;
  const halves = new Map<number, number>();
  for (let h = 0; h < flat.length; h++) halves.set(halfEdge(flat, count, h), h);
  const back = (h: number): number => halves.get(halfEdgeBack(flat, count, h)) ?? h;
  const faceAt = (h: number): number => triangles[Math.floor(h / 3)]?.face ?? -1;
  const isBorder = (h: number): boolean => faceAt(h) !== faceAt(back(h));

  // a corner where just two faces meet lies on a straight edge between them
  const borders = new Map<number, number>();
  for (let h = 0; h < flat.length; h++) {
    if (isBorder(h)) borders.set(flat[h] ?? 0, (borders.get(flat[h] ?? 0) ?? 0) + 1);
  }
  const loops: number[][][] = sides.map(() => []);
  const seen = new Set<number>();
  for (let h = 0; h < flat.length; h++) {
    if (seen.has(h) || !isBorder(h)) continue;
    const loop: number[] = [];
    for (let at = h; !seen.has(at); ) {
      seen.add(at);
      const from = flat[at] ?? 0;
      if (borders.get(from) !== 2) loop.push(from);
      at = nextInTriangle(at);
      while (!isBorder(at)) at = nextInTriangle(back(at));
    }
    if (loop.length >= 3) loops[faceAt(h)]?.push(loop);
  }
  return { points: mesh.points, faces: sides.map((side, i) => ({ side, loops: loops[i] ?? [] })) };
}

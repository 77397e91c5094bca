// The solid kernel, awaited once: prisms in, and the mesh of what is left after trims and removals out.
import loadKernel, { type Manifold, type Mat4 } from "manifold-3d";
import { prismSides } from "./body.ts";
import { type Cutter, overrun } from "./overrun.ts";
import type { Profile } from "./profile.ts";
import type { Frame, Prism, Shape, Vec2, Vec3 } from "./shape.ts";
import { dot, frameZ, placed } from "./vector.ts";

const kernel = await loadKernel();
kernel.setup();

/** The kernel's own mesh with its corners in full precision. `sources` tells which prism each triangle came from. */
export type Mesh = {
  readonly points: readonly Vec3[];
  /** Three corner numbers a triangle, counter-clockwise from outside. */
  readonly triangles: Uint32Array;
  /** A triangle's prism: 0 the board's own, 1 and on the removals, -1 a trim. */
  readonly sources: Int32Array;
};

/** Calls `use` with the body two shapes have in common, where they stand, then gives the memory back. */
export function withCommonSolid<T>(a: Shape, b: Shape, chordError: number, use: (common: Manifold) => T): T {
  const made: Manifold[] = [];
  try {
    const standing = [a, b].map((shape) => {
      const { solid, release } = kernelSolid(shape, chordError, "together");
      const moved = solid.transform(matrixOf(shape.frame));
      made.push(moved);
      moved.numTri(); // moved now, while the solid it comes from is there
      release();
      return moved;
    });
    const common = kernel.Manifold.intersection(standing);
    made.push(common);
    return use(common);
  } finally {
    for (const m of made) m.delete();
  }
}

function matrixOf(frame: Frame): Mat4 {
  const [x, y, z, o] = [frame.x, frame.y, frameZ(frame), frame.origin];
  return [...x, 0, ...y, 0, ...z, 0, ...o, 1];
}

/** Removals taken off all at once, or one after the other from either end of their list. */
export type CutOrder = "together" | "forward" | "backward";

/** The mesh of a shape in its own frame. */
export function meshOf(shape: Shape, chordError: number, order: CutOrder): Mesh {
  const { solid, prismIds, release } = kernelSolid(shape, chordError, order);
  try {
    return readMesh(solid, prismIds);
  } finally {
    release();
  }
}

function kernelSolid(shape: Shape, chordError: number, order: CutOrder) {
  const made: Manifold[] = [];
  const kept = (m: Manifold): Manifold => {
    made.push(m);
    return m;
  };
  const release = () => {
    for (const m of made) m.delete();
  };
  try {
    const { profiles } = prismSides(shape, "", chordError);
    const board = profiles.flatMap((profile) => profile.points);
    const base = kept(prismSolid(profiles, { points: board, bottom: 0, top: shape.depth }, (p) => p));
    const levels: Levels = [[], [], []];
    addLevels(levels, shape, (p) => p);
    const cutters = shape.removals.map((removal) => {
      const move = (p: Vec3) => flushWith(levels, placed(removal.frame, p));
      const [outline, ...holes] = prismSides(removal, "", chordError).profiles;
      if (outline === undefined) throw new Error("a removal has no outline");
      const cutter = overrun(removal, outline, shape, board);
      const points = [...cutter.points, ...holes.flatMap((hole) => hole.points)];
      const spread = ((removal.taper ?? 1) - 1) / removal.depth;
      const solid = kept(prismSolid([outline, ...holes], { ...cutter, points }, move, spread));
      addLevels(levels, removal, move);
      return solid;
    });
    const ids = [base, ...cutters].map((prism) => prism.originalID());
    let solid = base;
    for (const { point, normal } of shape.trims) {
      solid = kept(solid.trimByPlane([-normal[0], -normal[1], -normal[2]], -dot(normal, point)));
    }
    const groups = order === "together" ? [cutters] : cutters.map((cutter) => [cutter]);
    if (order === "backward") groups.reverse();
    for (const group of groups) {
      if (group.length > 0) solid = kept(kernel.Manifold.difference([solid, ...group]));
    }
    return { solid, prismIds: ids, release };
  } catch (error) {
    release();
    throw error;
  }
}

/**
 * The prism of some profiles with its corners where `exact` has them, then moved. The kernel rounds outlines to a grid
 * before it extrudes them, so every corner is first put back on the point of the outline it came from. `spread` is how much a cone
 * grows for each unit of its depth.
 */
function prismSolid(profiles: readonly Profile[], exact: Cutter, move: (p: Vec3) => Vec3, spread = 0): Manifold {
  const rings = profiles.map((profile, k) => {
    const ring = profile.points.map(([x, y]): [number, number] => [x, y]);
    return k === 0 ? ring : ring.reverse();
  });
  const given = profiles.flatMap((profile) => profile.points);
  const section = new kernel.CrossSection(rings, "Positive");
  const rounded = section.extrude(1);
  const moved = rounded.warpBatch((flat, count) => {
    for (let i = 0; i < 3 * count; i += 3) {
      const at: Vec2 = [flat[i] ?? 0, flat[i + 1] ?? 0];
      const [x, y] = exact.points[nearestOf(given, at)] ?? at;
      const z = (flat[i + 2] ?? 0) > 0.5 ? exact.top : exact.bottom;
      const grown = 1 + spread * z;
      flat.set(move([x * grown, y * grown, z]), i);
    }
  });
  const original = moved.asOriginal();
  for (const step of [section, rounded, moved]) step.delete();
  return original;
}

/** The place of the given point a rounded one came from; -1 where loops cross and the kernel makes points of its own. */
function nearestOf(given: readonly Vec2[], [x, y]: Vec2): number {
  let nearest = -1;
  let gap = kernelGrid;
  given.forEach(([gx, gy], i) => {
    const far = Math.max(Math.abs(gx - x), Math.abs(gy - y));
    if (far < gap) [nearest, gap] = [i, far];
  });
  return nearest;
}

/** Wider than the steps the kernel rounds outlines to (about 6e-9 was seen), finer than any outline. */
const kernelGrid = 1e-7;

/** Coordinates along each axis of the board where a face already stands. */
type Levels = [number[], number[], number[]];

/** Adds where a prism's own corners stand; points round a curve are no place for a face to be flush with. */
function addLevels(levels: Levels, prism: Prism, move: (p: Vec3) => Vec3): void {
  const corners = [prism.outline, ...prism.holes].flatMap((loop): Vec2[] =>
    loop.kind === "path" ? loop.items.map((item) => ("to" in item ? item.to : item)) : [loop.centre],
  );
  for (const [x, y] of corners) {
    for (const z of [0, prism.depth]) {
      const p = move([x, y, z]);
      for (const k of [0, 1, 2] as const) levels[k].push(p[k]);
    }
  }
}

/**
 * A point with each coordinate that is as good as that of a face made exactly that: the kernel would leave a skin of
 * no thickness between a cut and a face, or two cuts, that miss each other by a rounding error.
 */
function flushWith(levels: Levels, p: Vec3): Vec3 {
  const near = 1e-10 * (1 + Math.abs(p[0]) + Math.abs(p[1]) + Math.abs(p[2]));
  const flush = (k: 0 | 1 | 2) => levels[k].find((level) => Math.abs(level - p[k]) < near) ?? p[k];
  return [flush(0), flush(1), flush(2)];
}

/** The kernel's mesh with true corners. */
export function readMesh(solid: Manifold, prismIds: readonly number[]): Mesh {
  const mesh = solid.getMesh();
  const sources = new Int32Array(mesh.numTri);
  for (let run = 0; run < mesh.numRun; run++) {
    const source = prismIds.indexOf(mesh.runOriginalID[run] ?? -1);
    sources.fill(source, (mesh.runIndex[run] ?? 0) / 3, (mesh.runIndex[run + 1] ?? 0) / 3);
  }
  const points = exactPoints(solid);
  points.forEach((p, i) => {
    if (!p.every((value, k) => Math.fround(value) === mesh.vertProperties[i * mesh.numProp + k])) {
      throw new Error(`corner ${i} of the mesh is not corner ${i} of the solid`);
    }
  });
  return { points, triangles: mesh.triVerts, sources };
}

/** The mesh the kernel hands out is rounded to single precision; a warp that moves nothing shows the true corners. */
function exactPoints(solid: Manifold): Vec3[] {
  const points: Vec3[] = [];
  const copy = solid.warpBatch((flat, count) => {
    for (let i = 0; i < count; i++) points.push([flat[3 * i] ?? 0, flat[3 * i + 1] ?? 0, flat[3 * i + 2] ?? 0]);
  });
  copy.numVert();
  copy.delete();
  return points;
}

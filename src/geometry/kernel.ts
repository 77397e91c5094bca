// The solid kernel, awaited once: prisms in, and the mesh of what is left after trims and removals out.
import loadKernel, { type Manifold, type Mat4 } from "manifold-3d";
import { type PrismSides, prismSides } from "./body.ts";
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
      const { solid, release } = kernelSolid(shape, chordError);
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

/** The mesh of a shape in its own frame. */
export function meshOf(shape: Shape, chordError: number): Mesh {
  const { solid, prismIds, release } = kernelSolid(shape, chordError);
  try {
    return readMesh(solid, prismIds);
  } finally {
    release();
  }
}

function kernelSolid(shape: Shape, chordError: number) {
  const made: Manifold[] = [];
  const kept = (m: Manifold): Manifold => {
    made.push(m);
    return m;
  };
  const release = () => {
    for (const m of made) m.delete();
  };
  try {
    const base = kept(extruded(prismSides(shape, "0", chordError), shape.depth));
    const ids = [base.originalID()];
    const levels = levelsOf(shape);
    const cutters = shape.removals.map((removal) => {
      const upright = kept(extruded(prismSides(removal, "", chordError), removal.depth));
      const cutter = kept(kept(upright.warp((p) => moveInto(p, removal, levels))).asOriginal());
      ids.push(cutter.originalID());
      return cutter;
    });
    let solid = base;
    for (const { point, normal } of shape.trims) {
      solid = kept(solid.trimByPlane([-normal[0], -normal[1], -normal[2]], -dot(normal, point)));
    }
    if (cutters.length > 0) solid = kept(kernel.Manifold.difference([solid, ...cutters]));
    return { solid, prismIds: ids, release };
  } catch (error) {
    release();
    throw error;
  }
}

function extruded(sides: PrismSides, depth: number): Manifold {
  const rings = sides.profiles.map((profile, k) => {
    const ring = profile.points.map(([x, y]): [number, number] => [x, y]);
    return k === 0 ? ring : ring.reverse();
  });
  return kernel.Manifold.extrude(rings, depth);
}

type Levels = readonly [readonly number[], readonly number[], readonly number[]];

/** The coordinates of the board's own faces that stand square to its axes. */
function levelsOf(shape: Shape): Levels {
  const corners = [shape.outline, ...shape.holes].flatMap((loop) =>
    loop.kind === "path" ? loop.items.map((item): Vec2 => ("to" in item ? item.to : item)) : [],
  );
  return [corners.map((c) => c[0]), corners.map((c) => c[1]), [0, shape.depth]];
}

/** Moves a corner of a removal into the board's frame; what should be flush with the board is made exactly flush. */
function moveInto(p: [number, number, number], removal: Prism, levels: Levels): void {
  const moved = placed(removal.frame, p);
  const near = 1e-10 * (1 + Math.abs(moved[0]) + Math.abs(moved[1]) + Math.abs(moved[2]));
  for (const i of [0, 1, 2] as const) {
    p[i] = levels[i].find((level) => Math.abs(level - moved[i]) < near) ?? moved[i];
  }
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

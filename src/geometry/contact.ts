// Two solids -> where they touch flat on flat: the patches, their areas, and which way they press.
import { commonRegion, type Region } from "./common-region.ts";
import type { Vec2, Vec3 } from "./shape.ts";
import type { Face, Solid } from "./solid.ts";
import { inInches, type Tolerances } from "./tolerance.ts";
import { add, cross, dot, length, subtract, times, unit } from "./vector.ts";

/** One flat patch; `normal` points from a into b, loops run counter-clockwise seen against it, then holes. */
export type Patch = {
  readonly normal: Vec3;
  readonly area: number;
  readonly loops: readonly (readonly Vec3[])[];
  /** The faces that touch, by their places in `a.faces` and `b.faces`. */
  readonly faces: readonly [number, number];
};

/** All patches of two solids. */
export type Contact = { readonly area: number; readonly patches: readonly Patch[] };

/**
 * Where faces of `a` and `b` look at each other in one plane. Boxes and other square work come out exact; slanted and
 * curved outlines to the clip grid. A line or a point of contact has no area and is left out.
 */
export function contactOf(a: Solid, b: Solid, tolerances: Tolerances = inInches): Contact {
  const near = tolerances.touch;
  const within = ([0, 1, 2] as const).every(
    (k) => a.box.min[k] <= b.box.max[k] + near && b.box.min[k] <= a.box.max[k] + near,
  );
  if (!within) return { area: 0, patches: [] };
  const patches: Patch[] = [];
  a.faces.forEach((face, i) => {
    if (!reaches(face, b, near)) return;
    b.faces.forEach((other, j) => {
      const patch = patchOf(face, other, tolerances);
      if (patch !== undefined) patches.push({ ...patch, faces: [i, j] });
    });
  });
  return { area: patches.reduce((sum, patch) => sum + patch.area, 0), patches };
}

/** Whether two flat faces of one solid look at each other in one plane. */
export function touchesItself(faces: readonly Face[], tolerances: Tolerances): boolean {
  const flat = faces.filter((face) => face.wall === undefined);
  return flat.some((face, i) =>
    flat
      .slice(i + 1)
      .some(
        (other) =>
          Math.abs(face.offset + other.offset) <= tolerances.touch && patchOf(face, other, tolerances) !== undefined,
      ),
  );
}

/** Whether the box of a face comes to the box of a solid. */
function reaches(face: Face, { box }: Solid, near: number): boolean {
  const outer = face.loops[0] ?? [];
  return ([0, 1, 2] as const).every(
    (k) => outer.some((p) => p[k] <= box.max[k] + near) && outer.some((p) => p[k] >= box.min[k] - near),
  );
}

/** Faces that look at each other more than a thousandth of a radian askew (cosine 1 - 1e-6 / 2) don't lie on each other. */
const leastOpposed = 1 - 5e-7;

function patchOf(face: Face, other: Face, tolerances: Tolerances): Omit<Patch, "faces"> | undefined {
  const near = tolerances.touch;
  if (-dot(face.normal, other.normal) < leastOpposed) return undefined;
  const map = mapOf(face);
  if (!near2(map.flat(face), map.flat(other), near)) return undefined;
  const region = commonRegion(map.flat(face), map.flat(other).map(backwards), tolerances);
  const loops = region.loops.map((loop) => loop.map(map.lift));
  const touching = loops.every((loop) => loop.every((p) => Math.abs(dot(other.normal, p) - other.offset) <= near));
  // a sliver narrower than the touch tolerance is a line of contact
  if (!touching || region.area <= near * region.perimeter) return undefined;
  return { normal: face.normal, area: region.area, loops };
}

const backwards = (loop: readonly Vec2[]): Vec2[] => [...loop].reverse();

/** A face's own plane as a sheet of paper: its longest edge runs along the sheet, so square faces lie square on it. */
function mapOf(face: Face) {
  const outer = face.loops[0] ?? [];
  const origin = outer[0] ?? [0, 0, 0];
  let along: Vec3 = [0, 0, 0];
  outer.forEach((p, i) => {
    const edge = subtract(outer[(i + 1) % outer.length] ?? p, p);
    if (length(edge) > length(along)) along = edge;
  });
  const u = unit(along);
  const v = cross(face.normal, u);
  const lay = (p: Vec3): Vec2 => [dot(subtract(p, origin), u), dot(subtract(p, origin), v)];
  return {
    flat: (f: Face): Region => f.loops.map((loop) => loop.map(lay)),
    lift: ([x, y]: Vec2): Vec3 => add(origin, add(times(u, x), times(v, y))),
  };
}

/** Whether the boxes of two regions meet. */
function near2(a: Region, b: Region, near: number): boolean {
  return ([0, 1] as const).every((k) => {
    const [p, q] = [(a[0] ?? []).map((at) => at[k]), (b[0] ?? []).map((at) => at[k])];
    return Math.min(...p) < Math.max(...q) - near && Math.min(...q) < Math.max(...p) - near;
  });
}

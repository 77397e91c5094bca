// A box in any place and turn -> a solid, written down corner by corner, so that tests of drawings need no cutting of solids.
import type { Frame, Vec3 } from "../../src/geometry/shape.ts";
import type { Edge, Face, Solid } from "../../src/geometry/solid.ts";
import { cross, dot, placed, times } from "../../src/geometry/vector.ts";

export type BoxInFrame = { readonly frame: Frame; readonly size: Vec3 };

/** Corners are counted in binary: 1 along x, 2 along y, 4 along z. */
const quads = [
  [0, 2, 3, 1],
  [4, 5, 7, 6],
  [0, 1, 5, 4],
  [2, 6, 7, 3],
  [0, 4, 6, 2],
  [1, 3, 7, 5],
] as const;

export function boxSolid({ frame, size }: BoxInFrame): Solid {
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((k) =>
    placed(frame, [k & 1 ? size[0] : 0, k & 2 ? size[1] : 0, k & 4 ? size[2] : 0]),
  );
  const corner = (k: number) => corners[k] as Vec3;
  const z = cross(frame.x, frame.y);
  const normals = [times(z, -1), z, times(frame.y, -1), frame.y, times(frame.x, -1), frame.x];
  const areas = [size[0] * size[1], size[0] * size[1], size[0] * size[2], size[0] * size[2]];
  areas.push(size[1] * size[2], size[1] * size[2]);
  const faces = quads.map((quad, i): Face => {
    const normal = normals[i] as Vec3;
    return { normal, offset: dot(normal, corner(quad[0])), loops: [quad.map(corner)], area: areas[i] as number };
  });
  const edges: Edge[] = [];
  quads.forEach((quad, i) => {
    quad.forEach((from, k) => {
      const to = quad[(k + 1) % 4] as number;
      const other = quads.findIndex((q, j) => j !== i && q.some((a, n) => a === to && q[(n + 1) % 4] === from));
      if (other > i) edges.push({ a: corner(from), b: corner(to), faces: [i, other], smooth: false });
    });
  });
  const at = (axis: 0 | 1 | 2) => corners.map((p) => p[axis]);
  const least = (axis: 0 | 1 | 2) => Math.min(...at(axis));
  const most = (axis: 0 | 1 | 2) => Math.max(...at(axis));
  const outline = {
    kind: "path",
    items: [
      [0, 0],
      [size[0], 0],
      [size[0], size[1]],
      [0, size[1]],
    ],
  } as const;
  return {
    shape: { frame, outline, holes: [], depth: size[2], trims: [], removals: [] },
    faces,
    edges,
    volume: size[0] * size[1] * size[2],
    area: areas.reduce((sum, area) => sum + area, 0),
    centroid: placed(frame, times(size, 0.5)),
    box: { min: [least(0), least(1), least(2)], max: [most(0), most(1), most(2)] },
  };
}

// Counts of a solid's corners, edges, faces and holes in faces, as Euler's formula takes them.
import type { Solid } from "../../src/geometry/solid.ts";

/** V - E + F - H: 2 for a solid without a through hole, 2 less for each one. */
export function eulerSum(solid: Solid): number {
  const corners = new Set(solid.edges.flatMap((edge) => [edge.a, edge.b])).size;
  const holes = solid.faces.reduce((sum, face) => sum + face.loops.length - 1, 0);
  return corners - solid.edges.length + solid.faces.length - holes;
}

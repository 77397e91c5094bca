// A solid and a way -> the same solid there.
import type { Vec3 } from "../geometry/shape.ts";
import type { Solid } from "../geometry/solid.ts";
import { add, dot } from "../geometry/vector.ts";

/** Moved without being turned. */
export function movedSolid(solid: Solid, by: Vec3): Solid {
  if (by.every((step) => step === 0)) return solid;
  const move = (p: Vec3): Vec3 => add(p, by);
  return {
    ...solid,
    shape: { ...solid.shape, frame: { ...solid.shape.frame, origin: move(solid.shape.frame.origin) } },
    faces: solid.faces.map((face) => ({
      ...face,
      offset: face.offset + dot(face.normal, by),
      loops: face.loops.map((loop) => loop.map(move)),
    })),
    edges: solid.edges.map((edge) => ({ ...edge, a: move(edge.a), b: move(edge.b) })),
    centroid: move(solid.centroid),
    box: { min: move(solid.box.min), max: move(solid.box.max) },
  };
}

// Scenes by what is in them: variants and drawings of one item ask for the same view of the same boards again and again.

import type { Scene } from "../geometry/scene.ts";
import type { Vec3 } from "../geometry/shape.ts";
import type { Solid } from "../geometry/solid.ts";
import type { View } from "../geometry/view.ts";

/** One body of a scene: its solid where it stands, and how far it is moved from there. */
export type Placed = { readonly solid: Solid; readonly by: Vec3 };

/** Enough for the drawings of one item in all its variants; the oldest goes first. */
const most = 256;
const scenes = new Map<string, Scene>();

/** The scene of these bodies in this view; `make` is asked only where it isn't known. */
export function rememberScene(bodies: readonly Placed[], view: View, make: () => Scene): Scene {
  const key = JSON.stringify([view, bodies.map(({ solid, by }) => [solid.shape, by])]);
  const known = scenes.get(key);
  const scene = known ?? make();
  // Put last again, so that what is asked for stays.
  scenes.delete(key);
  scenes.set(key, scene);
  const oldest = scenes.size > most ? scenes.keys().next().value : undefined;
  if (oldest !== undefined) scenes.delete(oldest);
  return scene;
}

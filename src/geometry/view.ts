// A direction to look from -> a view: where every point of standing space falls on the picture, and how near it is.
import type { Vec2, Vec3 } from "./shape.ts";
import { cross, dot, unit } from "./vector.ts";

/** Unit vectors at right angles, right x up = toViewer. */
export type View = { readonly toViewer: Vec3; readonly right: Vec3; readonly up: Vec3 };

export type Corner = "front-right" | "front-left" | "back-right" | "back-left";

/** A view with z drawn upright, from the side that `direction` points to; straight down or up it keeps x to the right. */
export function viewFrom(direction: Vec3): View {
  const toViewer = plain(unit(direction));
  const [x, y] = toViewer;
  const right = Math.hypot(x, y) < 1e-9 ? ([1, 0, 0] as const) : plain(unit([-y, x, 0]));
  return { toViewer, right, up: plain(cross(toViewer, right)) };
}

/** A pictorial view with three equally foreshortened axes, from a corner of the standing item, from above or below. */
export function pictorialView(corner: Corner, from: "above" | "below"): View {
  const across = corner === "front-right" || corner === "back-right" ? 1 : -1;
  const along = corner === "front-right" || corner === "front-left" ? -1 : 1;
  return viewFrom([across, along, from === "above" ? 1 : -1]);
}

/** The views that have a name; `iso` looks from front right above, `general` from a place where nothing lines up. */
export const namedViews = {
  front: viewFrom([0, -1, 0]),
  right: viewFrom([1, 0, 0]),
  back: viewFrom([0, 1, 0]),
  left: viewFrom([-1, 0, 0]),
  top: viewFrom([0, 0, 1]),
  underside: viewFrom([0, 0, -1]),
  iso: pictorialView("front-right", "above"),
  general: viewFrom([1, -1.6, 0.9]),
} as const satisfies Record<string, View>;

export type ViewName = keyof typeof namedViews;

/** Where a point falls on the picture: right and up. */
export function project(view: View, p: Vec3): Vec2 {
  return [dot(p, view.right), dot(p, view.up)];
}

/** How near the viewer a point is; larger is nearer. */
export function nearness(view: View, p: Vec3): number {
  return dot(p, view.toViewer);
}

/** The same vector without negative zeros. */
function plain(v: Vec3): Vec3 {
  return [v[0] + 0, v[1] + 0, v[2] + 0];
}

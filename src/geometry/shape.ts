// A solid as it is made: an outline pushed through a depth, then cut. Pure numbers: no wood, no unit of its own.

export type Vec2 = readonly [number, number];
export type Vec3 = readonly [number, number, number];

/** A right-handed frame: unit x and y at right angles, z = x cross y. */
export type Frame = { readonly origin: Vec3; readonly x: Vec3; readonly y: Vec3 };

/**
 * A side of a path from the point before: a line to a point, an arc through `mid` to `to`, or a cubic curve that leaves
 * toward `leave` and reaches `to` from `reach` (its two control points).
 */
export type PathItem =
  | Vec2
  | { readonly mid: Vec2; readonly to: Vec2 }
  | { readonly leave: Vec2; readonly reach: Vec2; readonly to: Vec2 };

/** A closed loop in a frame's x, y: a path that starts where its last item ends, or a circle. */
export type Loop =
  | { readonly kind: "path"; readonly items: readonly PathItem[] }
  | { readonly kind: "circle"; readonly centre: Vec2; readonly radius: number };

/** An outline with holes, pushed `depth` along the frame's z. */
export type Prism = {
  readonly frame: Frame;
  readonly outline: Loop;
  readonly holes: readonly Loop[];
  readonly depth: number;
};

/** Its far end is the outline grown or shrunk by `taper` about the frame's origin, and straight between: a cone. 1 where it isn't said. */
export type Removal = Prism & { readonly taper?: number };

/** The side a trim's normal points to is cut away. */
export type Trim = { readonly point: Vec3; readonly normal: Vec3 };

/** A prism; trims and removals are given in the prism's own frame. */
export type Shape = Prism & { readonly trims: readonly Trim[]; readonly removals: readonly Removal[] };

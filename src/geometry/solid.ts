// Shape -> closed solid: flat faces, edges, volume, area, centroid. (Contract; written out by the geometry stage.)
import type { Shape, Vec3 } from "./shape.ts";

export type Box = { readonly min: Vec3; readonly max: Vec3 };

/** One flat face. Loops: outer first, counter-clockwise seen from outside, then holes clockwise. */
export type Face = {
  readonly normal: Vec3;
  /** normal . p = offset for every point p of the face. */
  readonly offset: number;
  readonly loops: readonly (readonly Vec3[])[];
  readonly area: number;
  /** Facets of one curved wall share a number; flat faces have none. */
  readonly wall?: number;
};

/** An edge between two faces (indices); smooth where the two facets belong to one curved wall or meet in a tangent. */
export type Edge = {
  readonly a: Vec3;
  readonly b: Vec3;
  readonly faces: readonly [number, number];
  readonly smooth: boolean;
};

export type Solid = {
  readonly faces: readonly Face[];
  readonly edges: readonly Edge[];
  readonly volume: number;
  readonly area: number;
  readonly centroid: Vec3;
  readonly box: Box;
};

export declare function solidOf(shape: Shape): Solid;

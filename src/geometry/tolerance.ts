// The one table of epsilons of the geometry stage, in the unit the solids are in.

export type Tolerances = {
  /** Points nearer than this are one point. */
  readonly solid: number;
  /** Vertices within this of a plane lie in it. */
  readonly plane: number;
  /** Faces that stand nearer than this to each other touch. */
  readonly touch: number;
  /** A face nearer to the viewer by less than this doesn't cover. */
  readonly depth: number;
  /** How far inside its face an edge is tested. */
  readonly edgeShift: number;
  /** Lines that run within this of each other are drawn once. */
  readonly lineUnion: number;
  /** The grid that fills are clipped on; at 0.0001 mm a metre is 1e7 steps and products stay below 2^53. */
  readonly clipGrid: number;
  /** Regions thinner than this are left out. */
  readonly thinRegion: number;
  /** How far a chord may lie off its arc. */
  readonly chord: number;
  /** Two solids clash from this volume and this depth on. */
  readonly clashVolume: number;
  readonly clashDepth: number;
};

export const inMillimetres: Tolerances = {
  solid: 1e-6,
  plane: 1e-5,
  touch: 1e-3,
  depth: 1e-5,
  edgeShift: 0.01,
  lineUnion: 0.02,
  clipGrid: 1e-4,
  thinRegion: 2e-3,
  chord: 0.02,
  clashVolume: 1,
  clashDepth: 0.05,
};

const millimetresPerInch = 25.4;

export const inInches: Tolerances = {
  solid: inMillimetres.solid / millimetresPerInch,
  plane: inMillimetres.plane / millimetresPerInch,
  touch: inMillimetres.touch / millimetresPerInch,
  depth: inMillimetres.depth / millimetresPerInch,
  edgeShift: inMillimetres.edgeShift / millimetresPerInch,
  lineUnion: inMillimetres.lineUnion / millimetresPerInch,
  clipGrid: inMillimetres.clipGrid / millimetresPerInch,
  thinRegion: inMillimetres.thinRegion / millimetresPerInch,
  chord: inMillimetres.chord / millimetresPerInch,
  clashVolume: inMillimetres.clashVolume / millimetresPerInch ** 3,
  clashDepth: inMillimetres.clashDepth / millimetresPerInch,
};

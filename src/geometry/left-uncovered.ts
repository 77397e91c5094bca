// A face on the clip grid and what covers it -> the pieces of it left over. Every answer is checked by its area, since a
// sweep over edges that nearly lie on each other now and then (about one in 7,000) closes a loop the wrong way.
import {
  Clipper64,
  ClipperOffset,
  ClipType,
  EndType,
  FillRule,
  JoinType,
  type Path64,
  type Paths64,
  type PolyPath64,
  PolyTree64,
} from "clipper2-ts";

/** A connected piece in grid steps: the outer loop counter-clockwise, holes clockwise. */
export type Piece = { readonly outer: Path64; readonly holes: readonly Path64[] };

/** The pieces of `subject` outside all `covers`; loops wind counter-clockwise around what they fill. */
export function leftUncovered(subject: Paths64, covers: Paths64): readonly Piece[] {
  if (covers.length === 0) return piecesOf(subject, [], ClipType.Union);
  const whole = areaOf(subject);
  let best: readonly Piece[] = [];
  let least = Infinity;
  for (const degrees of turns) {
    const face = laid(subject, degrees);
    const over = laid(covers, degrees);
    const left = piecesOf(face.paths, over.paths, ClipType.Difference);
    const taken = new Clipper64();
    taken.addSubject(face.paths);
    taken.addClip(over.paths);
    const covered: Paths64 = [];
    taken.execute(ClipType.Intersection, FillRule.NonZero, covered);
    const loops = left.flatMap(loopsOf);
    const error = Math.abs(areaOf(loops) + areaOf(covered) - whole);
    if (error >= least) continue;
    least = error;
    best = left.map((piece) => laidBack(piece, face.back));
    // Rounding moves a border by up to a step.
    if (error <= lengthOf(subject) + lengthOf(loops)) return best;
  }
  return best;
}

/** The pieces that neighbouring facets make together, hairlines from rounding between them closed. */
export function joinedPieces(pieces: readonly Piece[]): readonly Piece[] {
  const loops = pieces.flatMap(loopsOf);
  for (const degrees of turns) {
    const { paths, back } = laid(loops, degrees);
    const letOut: Paths64 = [];
    const wider = new ClipperOffset();
    wider.addPaths(paths, JoinType.Miter, EndType.Polygon);
    wider.execute(closing, letOut);
    const tree = new PolyTree64();
    const narrower = new ClipperOffset();
    narrower.addPaths(letOut, JoinType.Miter, EndType.Polygon);
    narrower.execute(-closing, tree);
    const joined = outersOf(tree);
    const error = Math.abs(areaOf(joined.flatMap(loopsOf)) - areaOf(loops));
    if (error <= closing * lengthOf(loops)) return joined.map((piece) => laidBack(piece, back));
  }
  return pieces;
}

/** In grid steps squared; counter-clockwise loops count, clockwise ones take away. */
export function areaOf(loops: readonly Path64[]): number {
  let twice = 0;
  for (const loop of loops) {
    const first = loop[0] ?? { x: 0, y: 0 };
    let p = first;
    for (const q of loop) {
      twice += (p.x - first.x) * (q.y - first.y) - (p.y - first.y) * (q.x - first.x);
      p = q;
    }
  }
  return twice / 2;
}

/** In grid steps. */
export function lengthOf(loops: readonly Path64[]): number {
  let length = 0;
  for (const loop of loops) {
    let p = loop.at(-1) ?? { x: 0, y: 0 };
    for (const q of loop) {
      length += Math.hypot(q.x - p.x, q.y - p.y);
      p = q;
    }
  }
  return length;
}

export function loopsOf({ outer, holes }: Piece): readonly Path64[] {
  return [outer, ...holes];
}

/** Grid steps by which facets are let out and taken in again. */
const closing = 2;

/** Degrees to turn the paths by before a sweep: as they are, and if that fails, ways in which other edges meet. */
const turns = [0, 90, 23, 51, 77, 139];

/** Paths to sweep, and the way back of a path that comes out. */
type Laid = { readonly paths: Paths64; readonly back: (path: Path64) => Path64 };

function laid(paths: Paths64, degrees: number): Laid {
  if (degrees === 0) return { paths, back: (path) => path };
  return { paths: paths.map((path) => turned(path, degrees)), back: (path) => turned(path, -degrees) };
}

/** Turned about the origin and back on the grid. */
function turned(path: Path64, degrees: number): Path64 {
  const c = Math.cos((degrees * Math.PI) / 180);
  const s = Math.sin((degrees * Math.PI) / 180);
  return path.map(({ x, y }) => ({ x: Math.round(c * x - s * y), y: Math.round(s * x + c * y) }));
}

function laidBack({ outer, holes }: Piece, back: Laid["back"]): Piece {
  return { outer: back(outer), holes: holes.map(back) };
}

function piecesOf(subject: Paths64, clip: Paths64, how: ClipType): readonly Piece[] {
  const clipper = new Clipper64();
  clipper.addSubject(subject);
  if (clip.length > 0) clipper.addClip(clip);
  const tree = new PolyTree64();
  clipper.execute(how, FillRule.NonZero, tree);
  return outersOf(tree);
}

/** Outer loops with the holes right inside them; what lies in a hole is an outer loop again. */
function outersOf(tree: PolyPath64): Piece[] {
  const pieces: Piece[] = [];
  const take = (outer: PolyPath64) => {
    const holes: Path64[] = [];
    for (let i = 0; i < outer.count; i++) {
      const hole = outer.child(i);
      if (hole.polygon !== null) holes.push(hole.polygon);
      for (let j = 0; j < hole.count; j++) take(hole.child(j));
    }
    if (outer.polygon !== null) pieces.push({ outer: outer.polygon, holes });
  };
  for (let i = 0; i < tree.count; i++) take(tree.child(i));
  return pieces;
}

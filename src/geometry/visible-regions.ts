// Front faces -> a map of the picture: for every face the regions where it is what the viewer sees.
// A face's region is its outline less, for every other face, the part of that face which is nearer; being cut along the
// line where the two planes cross, this holds for hollow boards and for boards that hide each other in a ring.
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
import type { FrontFace, FrontFaces, Part } from "./front-faces.ts";
import type { Vec2, Vec3 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";

/** One connected piece of what is seen of a flat face, or of a curved wall. */
export type Region = {
  readonly owner: number;
  /** The face of the solid; for a curved wall its first facet that is turned to the viewer. */
  readonly face: number;
  /** Of the face; for a curved wall the mean over what is seen of it. */
  readonly normal: Vec3;
  /** Counter-clockwise. */
  readonly outer: readonly Vec2[];
  /** Clockwise. */
  readonly holes: readonly (readonly Vec2[])[];
  readonly area: number;
};

/** Every region of the picture, part by part and face by face; they don't overlap, and together make the silhouette. */
export function visibleRegions(parts: readonly Part[], fronts: FrontFaces, tolerances: Tolerances): Region[] {
  const regions: Region[] = [];
  for (const surface of surfacesOf(parts, fronts)) {
    const seen = surface.facets.map((facet) => seenOf(facet, fronts, tolerances));
    const normal = surface.facets.length === 1 ? surface.normal(0) : meanNormal(surface, seen);
    for (const { outer, holes } of outersOf(unionOf(seen))) {
      const area = (pathArea(outer) + holes.reduce((sum, hole) => sum + pathArea(hole), 0)) * tolerances.clipGrid ** 2;
      const perimeter = [outer, ...holes].reduce((sum, path) => sum + pathLength(path), 0) * tolerances.clipGrid;
      if (area < (tolerances.thinRegion * perimeter) / 2) continue;
      const point = ({ x, y }: { readonly x: number; readonly y: number }): Vec2 => [
        x * tolerances.clipGrid,
        y * tolerances.clipGrid,
      ];
      regions.push({
        owner: surface.owner,
        face: surface.face,
        normal,
        outer: outer.map(point),
        holes: holes.map((hole) => hole.map(point)),
        area,
      });
    }
  }
  return regions;
}

/** The area of the whole picture, as seen against the light. */
export function silhouetteArea(fronts: FrontFaces, tolerances: Tolerances): number {
  const clipper = new Clipper64();
  for (const face of fronts.faces) clipper.addSubject(onGrid(face, tolerances));
  const union: Paths64 = [];
  clipper.execute(ClipType.Union, FillRule.NonZero, union);
  return union.reduce((sum, path) => sum + pathArea(path), 0) * tolerances.clipGrid ** 2;
}

/** Grid steps by which facets of one wall are let out and taken in again, to close the hairlines that rounding leaves. */
const closing = 2;

function unionOf(seen: readonly Paths64[]): PolyTree64 {
  const tree = new PolyTree64();
  if (seen.length === 1) {
    const clipper = new Clipper64();
    clipper.addSubject(seen[0] ?? []);
    clipper.execute(ClipType.Union, FillRule.NonZero, tree);
    return tree;
  }
  const letOut: Paths64 = [];
  const wider = new ClipperOffset();
  for (const paths of seen) wider.addPaths(paths, JoinType.Miter, EndType.Polygon);
  wider.execute(closing, letOut);
  const back = new ClipperOffset();
  back.addPaths(letOut, JoinType.Miter, EndType.Polygon);
  back.execute(-closing, tree);
  return tree;
}

/** A flat face by itself, or all front facets of one curved wall. */
type Surface = {
  readonly owner: number;
  readonly face: number;
  readonly facets: readonly FrontFace[];
  normal(facet: number): Vec3;
};

function surfacesOf(parts: readonly Part[], fronts: FrontFaces): Surface[] {
  const groups = new Map<string, FrontFace[]>();
  for (const front of fronts.faces) {
    const wall = parts[front.owner]?.solid.faces[front.face]?.wall;
    const key = wall === undefined ? `${front.owner} face ${front.face}` : `${front.owner} wall ${wall}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [front]);
    else group.push(front);
  }
  return [...groups.values()].map((facets) => {
    const { owner, face } = facets[0] as FrontFace;
    return {
      owner,
      face,
      facets,
      normal: (facet) => {
        const normal = parts[owner]?.solid.faces[(facets[facet] as FrontFace).face]?.normal;
        if (normal === undefined) throw new Error(`no normal for a face of part ${owner}`);
        return normal;
      },
    };
  });
}

/** What is seen of one face, on the clip grid. */
function seenOf(face: FrontFace, fronts: FrontFaces, tolerances: Tolerances): Paths64 {
  const subject = onGrid(face, tolerances);
  const covers: Paths64 = [];
  for (const index of fronts.inBox(face.minX, face.minY, face.maxX, face.maxY)) {
    const cover = fronts.faces[index] as FrontFace;
    if (cover !== face) covers.push(...nearerPart(cover, face, tolerances));
  }
  if (covers.length === 0) return subject;
  const clipper = new Clipper64();
  clipper.addSubject(subject);
  clipper.addClip(covers);
  const seen: Paths64 = [];
  clipper.execute(ClipType.Difference, FillRule.NonZero, seen);
  return seen;
}

/** The part of `cover` that lies nearer to the viewer than the plane of `face`, on the clip grid. */
function nearerPart(cover: FrontFace, face: FrontFace, tolerances: Tolerances): Paths64 {
  const slopeX = cover.slopeX - face.slopeX;
  const slopeY = cover.slopeY - face.slopeY;
  const level = cover.level - face.level - tolerances.depth;
  // Only the ground both boxes share matters: often the cover is nearer, or farther, over all of it.
  const left = Math.max(cover.minX, face.minX);
  const right = Math.min(cover.maxX, face.maxX);
  const bottom = Math.max(cover.minY, face.minY);
  const top = Math.min(cover.maxY, face.maxY);
  if (left >= right || bottom >= top) return [];
  const most = level + slopeX * (slopeX > 0 ? right : left) + slopeY * (slopeY > 0 ? top : bottom);
  if (most <= 0) return [];
  const least = level + slopeX * (slopeX > 0 ? left : right) + slopeY * (slopeY > 0 ? bottom : top);
  if (least > 0) return onGrid(cover, tolerances);
  const paths: Paths64 = [];
  for (const loop of cover.loops) {
    const path: Path64 = [];
    let px = loop[loop.length - 2] as number;
    let py = loop[loop.length - 1] as number;
    let overP = level + slopeX * px + slopeY * py;
    for (let i = 0; i < loop.length; i += 2) {
      const qx = loop[i] as number;
      const qy = loop[i + 1] as number;
      const overQ = level + slopeX * qx + slopeY * qy;
      if (overP > 0 !== overQ > 0) {
        const share = overP / (overP - overQ);
        path.push(gridPoint(px + (qx - px) * share, py + (qy - py) * share, tolerances));
      }
      if (overQ > 0) path.push(gridPoint(qx, qy, tolerances));
      px = qx;
      py = qy;
      overP = overQ;
    }
    if (path.length > 2) paths.push(path);
  }
  return paths;
}

function onGrid(face: FrontFace, tolerances: Tolerances): Paths64 {
  return face.loops.map((loop) => {
    const path: Path64 = [];
    for (let i = 0; i < loop.length; i += 2) path.push(gridPoint(loop[i] as number, loop[i + 1] as number, tolerances));
    return path;
  });
}

function gridPoint(x: number, y: number, tolerances: Tolerances) {
  return { x: Math.round(x / tolerances.clipGrid), y: Math.round(y / tolerances.clipGrid) };
}

/** The facets' normals, weighed by how much of each is seen. */
function meanNormal(surface: Surface, seen: readonly Paths64[]): Vec3 {
  let [x, y, z] = [0, 0, 0];
  seen.forEach((paths, facet) => {
    const weight = paths.reduce((sum, path) => sum + pathArea(path), 0);
    const normal = surface.normal(facet);
    x += normal[0] * weight;
    y += normal[1] * weight;
    z += normal[2] * weight;
  });
  const length = Math.hypot(x, y, z);
  return length > 0 ? [x / length, y / length, z / length] : surface.normal(0);
}

type Piece = { readonly outer: Path64; readonly holes: readonly Path64[] };

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

/** In grid steps squared; positive counter-clockwise. */
function pathArea(path: Path64): number {
  const [first] = path;
  if (first === undefined) return 0;
  let twice = 0;
  for (let i = 1; i + 1 < path.length; i++) {
    const p = path[i] as { x: number; y: number };
    const q = path[i + 1] as { x: number; y: number };
    twice += (p.x - first.x) * (q.y - first.y) - (p.y - first.y) * (q.x - first.x);
  }
  return twice / 2;
}

function pathLength(path: Path64): number {
  let length = 0;
  let p = path.at(-1);
  for (const q of path) {
    if (p !== undefined) length += Math.hypot(q.x - p.x, q.y - p.y);
    p = q;
  }
  return length;
}

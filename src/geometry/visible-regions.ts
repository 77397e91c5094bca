// Front faces -> a map of the picture: for every face the regions where it is what the viewer sees.
// A face's region is its outline less, for every other face, the part of that face which is nearer; being cut along the
// line where the two planes cross, this holds for hollow boards and for boards that hide each other in a ring.
import type { Path64, Paths64 } from "clipper2-ts";
import type { FrontFace, FrontFaces, Part } from "./front-faces.ts";
import { areaOf, joinedPieces, leftUncovered, lengthOf, loopsOf, type Piece } from "./left-uncovered.ts";
import type { Vec2, Vec3 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";
import { add, length, times, unit } from "./vector.ts";

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
  const step = tolerances.clipGrid;
  const unscaled = (path: Path64) => path.map(({ x, y }): Vec2 => [x * step, y * step]);
  return surfacesOf(parts, fronts).flatMap((surface) => {
    const seen = surface.facets.map((facet) => seenOf(facet, fronts, tolerances));
    const flat = surface.facets.length === 1;
    const normal = flat ? surface.normal(0) : meanNormal(surface, seen);
    const pieces = flat ? seen.flat() : joinedPieces(seen.flat());
    return pieces.flatMap((piece): readonly Region[] => {
      const area = areaOf(loopsOf(piece)) * step ** 2;
      const thickness = (2 * area) / (lengthOf(loopsOf(piece)) * step);
      if (!(thickness > tolerances.thinRegion)) return [];
      const { owner, face } = surface;
      return [{ owner, face, normal, outer: unscaled(piece.outer), holes: piece.holes.map(unscaled), area }];
    });
  });
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
function seenOf(face: FrontFace, fronts: FrontFaces, tolerances: Tolerances): readonly Piece[] {
  const covers: Paths64 = [];
  for (const index of fronts.inBox(face.minX, face.minY, face.maxX, face.maxY)) {
    const cover = fronts.faces[index] as FrontFace;
    if (cover === face) continue;
    const lie = lieOver(cover, face, tolerances);
    if (lie === "apart") continue;
    const nearer = nearerPart(cover, face, tolerances);
    if (nearer === "all" && lie === "over") return [];
    covers.push(...(nearer === "all" ? onGrid(cover, tolerances) : nearer));
  }
  return leftUncovered(onGrid(face, tolerances), covers);
}

/**
 * How a cover lies on the picture to the box around a face: clear of it, over all of it, or with a border across it.
 * Most covers of a small facet are clear of it or over it, which spares a sweep.
 */
function lieOver(cover: FrontFace, face: FrontFace, tolerances: Tolerances): "apart" | "over" | "across" {
  const left = face.minX - tolerances.clipGrid;
  const right = face.maxX + tolerances.clipGrid;
  const bottom = face.minY - tolerances.clipGrid;
  const top = face.maxY + tolerances.clipGrid;
  let inside = false;
  for (const loop of cover.loops) {
    let px = loop[loop.length - 2] as number;
    let py = loop[loop.length - 1] as number;
    for (let i = 0; i < loop.length; i += 2) {
      const qx = loop[i] as number;
      const qy = loop[i + 1] as number;
      const beside = (px < left && qx < left) || (px > right && qx > right);
      if (!(beside || (py < bottom && qy < bottom) || (py > top && qy > top))) {
        const side = (x: number, y: number) => (qx - px) * (y - py) - (qy - py) * (x - px);
        const [a, b, c, d] = [side(left, bottom), side(right, bottom), side(right, top), side(left, top)];
        if (Math.min(a, b, c, d) <= 0 && Math.max(a, b, c, d) >= 0) return "across";
      }
      // A ray from the lower left corner to the right: no border meets the box, so any point of it will do.
      if (py > bottom !== qy > bottom && left < px + ((bottom - py) / (qy - py)) * (qx - px)) inside = !inside;
      px = qx;
      py = qy;
    }
  }
  return inside ? "over" : "apart";
}

/** The part of `cover` that lies nearer to the viewer than the plane of `face`, on the clip grid; or that all of it does. */
function nearerPart(cover: FrontFace, face: FrontFace, tolerances: Tolerances): Paths64 | "all" {
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
  if (least > 0) return "all";
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
function meanNormal(surface: Surface, seen: readonly (readonly Piece[])[]): Vec3 {
  let sum: Vec3 = [0, 0, 0];
  seen.forEach((pieces, facet) => {
    sum = add(sum, times(surface.normal(facet), areaOf(pieces.flatMap(loopsOf))));
  });
  return length(sum) > 0 ? unit(sum) : surface.normal(0);
}

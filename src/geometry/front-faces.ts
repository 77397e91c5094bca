// Solids and a view -> the faces turned to the viewer, flat on the picture, each with its nearness as a plane over the picture.
import type { Solid } from "./solid.ts";
import type { Tolerances } from "./tolerance.ts";
import { dot } from "./vector.ts";
import { nearness, project, type View } from "./view.ts";

export type Part = { readonly id: string; readonly solid: Solid };

export type FrontFace = {
  /** Index of the part, and of the face in its solid. */
  readonly owner: number;
  readonly face: number;
  /** x and y by turns, closed; the inside is on the left. */
  readonly loops: readonly Float64Array[];
  /** Nearness of the face's plane at a point of the picture: slopeX x + slopeY y + level. */
  readonly slopeX: number;
  readonly slopeY: number;
  readonly level: number;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly nearest: number;
  readonly area: number;
  /** Wide enough on the picture to hold a point edgeShift inside an edge; a face that isn't counts as seen on edge. */
  readonly wide: boolean;
};

export type FrontFaces = {
  readonly faces: readonly FrontFace[];
  /** For a part and a face of its solid: its index in `faces`, or -1 where it isn't turned to the viewer. */
  readonly indexOf: readonly Int32Array[];
  /** Indices of the faces whose boxes meet this box on the picture, ascending. */
  inBox(minX: number, minY: number, maxX: number, maxY: number): readonly number[];
};

export function frontFacesOf(parts: readonly Part[], view: View, tolerances: Tolerances): FrontFaces {
  const faces: FrontFace[] = [];
  const indexOf = parts.map(({ solid }, owner) => {
    const indices = new Int32Array(solid.faces.length).fill(-1);
    for (let face = 0; face < solid.faces.length; face++) {
      const front = frontFace(solid, { owner, face }, view, tolerances);
      if (front === undefined) continue;
      indices[face] = faces.length;
      faces.push(front);
    }
    return indices;
  });
  return { faces, indexOf, inBox: boxIndex(faces) };
}

type At = { readonly owner: number; readonly face: number };

function frontFace(solid: Solid, at: At, view: View, tolerances: Tolerances): FrontFace | undefined {
  const face = solid.faces[at.face];
  if (face === undefined) throw new Error(`no face ${at.face} in the solid`);
  const towards = dot(face.normal, view.toViewer);
  if (towards <= 0) return undefined;
  const slopeX = -dot(face.normal, view.right) / towards;
  const slopeY = -dot(face.normal, view.up) / towards;
  const level = face.offset / towards;
  let [minX, minY, maxX, maxY, nearest] = [Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  const loops = face.loops.map((loop) => {
    const flat = new Float64Array(loop.length * 2);
    loop.forEach((p, i) => {
      const [x, y] = project(view, p);
      flat[2 * i] = x;
      flat[2 * i + 1] = y;
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxX = Math.max(maxX, x);
      maxY = Math.max(maxY, y);
      nearest = Math.max(nearest, nearness(view, p));
    });
    return flat;
  });
  const area = loops.reduce((sum, loop) => sum + loopArea(loop), 0);
  const width = area / Math.hypot(maxX - minX, maxY - minY);
  if (!(width > tolerances.thinRegion)) return undefined;
  const wide = width > 2 * tolerances.edgeShift;
  return { ...at, loops, slopeX, slopeY, level, minX, minY, maxX, maxY, nearest, area, wide };
}

/** Area of a loop of x and y by turns, positive counter-clockwise. */
function loopArea(loop: Float64Array): number {
  const x0 = loop[0] as number;
  const y0 = loop[1] as number;
  let twice = 0;
  for (let i = 2; i + 3 < loop.length; i += 2) {
    const [ax, ay] = [(loop[i] as number) - x0, (loop[i + 1] as number) - y0];
    const [bx, by] = [(loop[i + 2] as number) - x0, (loop[i + 3] as number) - y0];
    twice += ax * by - bx * ay;
  }
  return twice / 2;
}

const mostCells = 48;

/** A square grid over the picture; each cell lists the faces whose boxes touch it. */
function boxIndex(faces: readonly FrontFace[]): FrontFaces["inBox"] {
  const minX = faces.reduce((least, f) => Math.min(least, f.minX), Infinity);
  const minY = faces.reduce((least, f) => Math.min(least, f.minY), Infinity);
  const maxX = faces.reduce((most, f) => Math.max(most, f.maxX), -Infinity);
  const maxY = faces.reduce((most, f) => Math.max(most, f.maxY), -Infinity);
  const count = Math.max(1, Math.min(mostCells, Math.round(Math.sqrt(faces.length))));
  const stepX = (maxX - minX) / count || 1;
  const stepY = (maxY - minY) / count || 1;
  const column = (x: number) => Math.max(0, Math.min(count - 1, Math.floor((x - minX) / stepX)));
  const row = (y: number) => Math.max(0, Math.min(count - 1, Math.floor((y - minY) / stepY)));
  const cells: number[][] = Array.from({ length: count * count }, () => []);
  faces.forEach((f, index) => {
    for (let j = row(f.minY); j <= row(f.maxY); j++)
      for (let i = column(f.minX); i <= column(f.maxX); i++) cells[j * count + i]?.push(index);
  });
  const seen = new Int32Array(faces.length).fill(-1);
  let query = 0;
  return (left, bottom, right, top) => {
    query++;
    const found: number[] = [];
    const [lastRow, firstColumn, lastColumn] = [row(top), column(left), column(right)];
    for (let j = row(bottom); j <= lastRow; j++) {
      for (let i = firstColumn; i <= lastColumn; i++) {
        for (const index of cells[j * count + i] ?? []) {
          if (seen[index] === query) continue;
          seen[index] = query;
          const f = faces[index] as FrontFace;
          if (f.minX <= right && f.maxX >= left && f.minY <= top && f.maxY >= bottom) found.push(index);
        }
      }
    }
    return found.sort((a, b) => a - b);
  };
}

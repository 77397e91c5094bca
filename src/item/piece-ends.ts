// The planes that trim a piece -> how its two ends are sawn, and how long its two edges come out.

import { type SawAngles, sawAngles } from "../geometry/saw-settings.ts";
import type { Vec3 } from "../geometry/shape.ts";
import type { Length } from "../units/length.ts";
import type { Piece } from "./item.ts";
import type { OwnTrim } from "./piece-form.ts";

/** A plane this far along the board cuts its end; one that runs along it bevels an edge. */
export const crossing = 0.1;
/** The two ends, low end of the length first, and the edges at the low and high side of the width, each over its longer arris. */
export function endsOf(trims: readonly OwnTrim[], size: Vec3, length: Length): Pick<Piece, "ends" | "edges"> {
  const square: SawAngles = { mitre: 0, bevel: 0 };
  const low = trims.filter((trim) => trim.normal[0] < -crossing);
  const high = trims.filter((trim) => trim.normal[0] > crossing);
  const ends: Piece["ends"] = [
    low[0] ? sawAngles(low[0].normal) : square,
    high[0] ? sawAngles(high[0].normal) : square,
  ];
  if (low.length + high.length === 0) return { ends, edges: [length, length] };
  const at = (list: readonly OwnTrim[], w: number, t: number) =>
    list.map(({ normal, offset }) => (offset - normal[1] * w - normal[2] * t) / normal[0]);
  const arris = (w: number, t: number) => Math.min(size[0], ...at(high, w, t)) - Math.max(0, ...at(low, w, t));
  const edge = (w: number) => Math.max(arris(w, 0), arris(w, size[2]));
  return { ends, edges: [edge(0), edge(size[1])] };
}

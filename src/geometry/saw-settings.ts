// The plane that cuts a board's end -> the two angles a saw is set to, and how the board is turned for its other end.
import type { Vec3 } from "./shape.ts";

/**
 * Degrees off square: `mitre` is measured in the wide face, `bevel` is the blade's tilt. Both are 0 for a square cut, which is
 * where most mitre scales read 0 (common practice, no source); an angle to the face itself is 90 less this.
 */
export type SawAngles = { readonly mitre: number; readonly bevel: number };

const degrees = (radians: number): number => (radians * 180) / Math.PI + 0;

/**
 * The settings for a plane told by its normal in the board's own frame (length, width, thickness). A table turned by M under a
 * blade tilted by B cuts a plane with the normal (cos B cos M, cos B sin M, sin B), so tan M = w / l and sin B = t. For n walls at
 * a pitch p from level that is tan M = cos p tan(180 / n) and sin B = sin p sin(180 / n), as the tables of saw manuals have it.
 * Planes are told from their far side: those of parallel cuts have equal signs.
 */
export function sawAngles([l, w, t]: Vec3): SawAngles {
  return { mitre: degrees(Math.atan(w / l)), bevel: degrees(Math.asin(l < 0 ? 0 - t : t)) };
}

/**
 * How the second end follows from the first: `slide` keeps every setting and the board as it lies; `turn over` keeps the settings,
 * the other face comes up, the same edge stays at the fence; `turn round` keeps the settings and the face, the other edge comes to
 * the fence; `swing` is that with the mitre set to the other side; `anew` keeps nothing.
 */
export type SecondEnd = "slide" | "turn over" | "turn round" | "swing" | "anew";

const alike = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** Half a turn about the board's width changes the mitre's sign, half a turn about its thickness the bevel's. */
export function secondEnd(one: SawAngles, other: SawAngles): SecondEnd {
  const [sameMitre, sameBevel] = [alike(one.mitre, other.mitre), alike(one.bevel, other.bevel)];
  const [counterMitre, counterBevel] = [alike(one.mitre, -other.mitre), alike(one.bevel, -other.bevel)];
  if (sameMitre && sameBevel) return "slide";
  if (counterMitre && sameBevel) return "turn over";
  if (sameMitre && counterBevel) return "turn round";
  return counterMitre && counterBevel ? "swing" : "anew";
}

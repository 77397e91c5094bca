// A piece cut to an outline -> the places where its grain runs out across a narrow part, so that it may split there.
import { shortGrainSections } from "../../geometry/grain-sections.ts";
import { profileOf } from "../../geometry/profile.ts";
import { ownSize } from "../frame.ts";
import type { ShortGrain } from "../item.ts";
import type { PlacedMember } from "../placed.ts";

/** Chords lie off their curves by this at most (inches). */
const chord = 0.001;

/** Wood this many thicknesses wide along the grain is told, or warned of; common practice, no source. */
const told = 4;
const warned = 2;

/**
 * Strength across the grain over that along it, and the power of the sine: the middle of what the Wood Handbook (FPL-GTR-282, chapter 5)
 * gives for bending in Hankinson's formula, 0.04 to 0.1 and 1.5 to 2; from memory.
 */
const acrossOverAlong = 0.07;
const power = 2;

/** A part that keeps more than this share of the strength along its grain runs with it. */
const mostKept = 0.5;

/** Hankinson's formula: what is left of the strength along the grain at an angle to it. */
export function shareKept(degrees: number): number {
  const [sine, cosine] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  return acrossOverAlong / (sine ** power + acrossOverAlong * cosine ** power);
}

/** Shortest first. None of a piece whose plies are crossed: through every part of it some grain runs on. */
export function shortGrainOf(member: PlacedMember): ShortGrain[] {
  const { outline, blanks } = member;
  if (!outline || blanks?.some(({ grain }) => grain === "across")) return [];
  const [length, width, thickness] = ownSize(member);
  const loops = [outline.edge, ...outline.holes].map((loop) => profileOf(loop, chord).points);
  const sections = shortGrainSections(loops, told * thickness).filter(
    ({ degrees, width: wide }) => shareKept(degrees) <= mostKept && wide < Math.max(length, width),
  );
  return sections
    .map(
      ({ from, to, width: wide, degrees }): ShortGrain => ({
        from,
        to,
        width: wide,
        degrees,
        kept: shareKept(degrees),
        level: wide < warned * thickness ? "warn" : "note",
      }),
    )
    .sort((a, b) => a.width - b.width);
}

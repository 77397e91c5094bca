// The clauses of slanted work: leaning, mirrored pairs, mitres, bevelled edges, slopes.
import type { ClauseForm } from "./clause-forms.ts";
import { readSide } from "./read-side.ts";
import type { Slope } from "./recipe.ts";
import { readReference } from "./reference.ts";
import type { Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

/** `H at SIDE to H at SIDE`. */
export function readSlope(scan: Scan): Slope {
  const from = readSum(scan);
  scan.must("at");
  const fromSide = readSide(scan, ["left", "right", "front", "back"]);
  scan.must("to");
  const to = readSum(scan);
  scan.must("at");
  return { from, fromSide, to, toSide: readSide(scan, ["left", "right", "front", "back"]) };
}

export const slantForms: readonly ClauseForm[] = [
  {
    form: "leaning A left|right|front|back|inward|outward",
    means:
      "It stands out of plumb by this angle, its top toward that side; a pair leans toward or away from each other.",
    example: "2 stud, leaning 14 deg inward, mirrored",
    fits: (words) => words[0] === "leaning",
    read: (scan) => {
      scan.must("leaning");
      const angle = readSum(scan);
      if (scan.skip("inward")) return { kind: "leaning", angle, toward: "inward" };
      if (scan.skip("outward")) return { kind: "leaning", angle, toward: "outward" };
      return { kind: "leaning", angle, toward: readSide(scan, ["left", "right", "front", "back"]) };
    },
  },
  {
    form: "touching at top|bottom",
    means: "The two of a mirrored pair meet there with their points.",
    example: "2 stud, mirrored, leaning splay inward, from bottom to top, touching at top",
    fits: (words) => words[0] === "touching",
    read: (scan) => {
      scan.must("touching", "at");
      return { kind: "meeting", where: readSide(scan, ["top", "bottom"]) };
    },
  },
  {
    form: "mitred with X and Y",
    means: "Its ends are cut in the planes in which it meets these two boards, corner to corner.",
    example: "on edge, leaning 12 deg front, mitred with left-wall and right-wall",
    fits: (words) => words[0] === "mitred",
    read: (scan) => {
      scan.must("mitred", "with");
      const a = readReference(scan, "the end");
      scan.must("and");
      return { kind: "mitred", a, b: readReference(scan, "the end") };
    },
  },
  {
    form: "edges level",
    means: "The long edges of a leaning board are bevelled so that they lie level.",
    example: "on edge, leaning 12 deg front, edges level",
    fits: (words) => words[0] === "edges",
    read: (scan) => {
      scan.must("edges", "level");
      return { kind: "edges level" };
    },
  },
  {
    form: "sloping H at SIDE to H at SIDE [over X]",
    means:
      "A flat panel is tipped so that its underside runs straight from the one height to the other, at these sides of its space or of X.",
    example: "flat, sloping front-height at front to back-height at back over box",
    fits: (words) => words[0] === "sloping",
    read: (scan) => {
      scan.must("sloping");
      const slope = readSlope(scan);
      return { kind: "sloping", slope: scan.skip("over") ? { ...slope, of: readReference(scan, "the end") } : slope };
    },
  },
  {
    form: "in PANEL",
    means: "A fitting takes its place in that panel; its other clauses are read there.",
    example: "clear panel, in lid, level, flat, at left, at bottom, on front of rails",
    fits: (words) => words[0] === "in" && words.length > 1,
    read: (scan) => {
      scan.must("in");
      return { kind: "in panel", of: readReference(scan, "the end") };
    },
  },
];

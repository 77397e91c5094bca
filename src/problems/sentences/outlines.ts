// The sentences of cuts that shape a board, of outlines and of boards glued up.
import type { Side } from "../../units/side.ts";
import { sayLength as said } from "../say-length.ts";
import type { Sentence } from "../sentences.ts";

export const outlineSentences = {
  "cut-part-idle": (f: { found: string; cut: string; form: string }) => ({
    says: `"${f.found}" says nothing about "${f.cut}".`,
    found: f.found,
    expected: `"${f.form}"`,
    mend: "Take it away, or choose the kind of cut that has it.",
  }),
  "rabbet-sides": (f: { cut: string; member: string; into: Side; along: Side }) => ({
    says: `the ${f.into} and the ${f.along} of ${f.member} meet in no arris that "${f.cut}" could take away.`,
    expected: "two sides that meet",
    mend: "Name the face it is cut into, then the edge or end it runs along.",
  }),
  "sink-side-missing": (f: { cut: string; member: string }) => ({
    says: `nothing says at which side of ${f.member} "${f.cut}" is widened.`,
    expected: "`in front`, `in back`, `in top` or another side",
    mend: "Name the side the screw's head is on.",
  }),
  "sink-narrow": (f: { cut: string; across: number; hole: number }) => ({
    says: `"${f.cut}" is ${said(f.across)} wide at the top, no wider than its hole of ${said(f.hole)}.`,
    found: said(f.across),
    expected: `more than ${said(f.hole)}`,
    mend: "Measure the head of the screw.",
  }),
  "holes-touch": (f: { cut: string; pitch: number; hole: number }) => ({
    says: `the holes of "${f.cut}" run into each other: ${said(f.hole)} wide, ${said(f.pitch)} from middle to middle.`,
    found: said(f.pitch),
    expected: `more than ${said(f.hole)}`,
    mend: "Space them further apart, or bore them smaller.",
  }),
  "corners-too-round": (f: { cut: string; radius: number; most: number }) => ({
    says: `"${f.cut}" has corners of ${said(f.radius)}; ${said(f.most)} is the most that fits twice.`,
    found: said(f.radius),
    expected: `at most ${said(f.most)}`,
    mend: "Make the corners smaller.",
  }),
  "corners-where": (f: { cut: string; member: string; why: "slanted" | "outlined" | "face" }) => ({
    says: {
      slanted: `${f.member} has slanted ends, so "${f.cut}" has no square corners to round.`,
      outlined: `the corners of ${f.member} are drawn in its outline, so "${f.cut}" has nothing to round.`,
      face: `the side that "${f.cut}" names is a face of ${f.member}; its corners are at its ends and edges.`,
    }[f.why],
    mend: f.why === "face" ? "Name an end or an edge." : "Take it away, or draw the corners into an outline.",
  }),
  "ease-too-round": (f: { cut: string; member: string; radius: number; thickness: number }) => ({
    says: `"${f.cut}" takes more than half of the ${said(f.thickness)} that ${f.member} is thick.`,
    found: said(f.radius),
    expected: `at most ${said(f.thickness / 2)}`,
    mend: "Ease the arrises less.",
  }),
  "slope-sides": (f: { cut: string; fromSide: Side; toSide: Side }) => ({
    says: `"${f.cut}" can't run from ${f.fromSide} to ${f.toSide}: those are no two opposite sides.`,
    expected: "front and back, or left and right",
    mend: "Give one height at each of two opposite sides.",
  }),
  "slope-above": (f: { cut: string; member: string; by: number }) => ({
    says: `${f.member} stands wholly above "${f.cut}": its lowest point is ${said(f.by)} over the line.`,
    found: "no wood left",
    mend: "Take that board away, lower it, or raise the line.",
  }),
  "slope-misses": (f: { cut: string; what: string; by: number }) => ({
    says: `"${f.cut}" cuts nothing: "${f.what}" stays ${said(f.by)} under the line.`,
    mend: "Lower the line, or take the cut away.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;

// The sentences of leaning, mitred and slanted work.
import { formatLength } from "../../units/format-length.ts";
import { inches, type Length } from "../../units/length.ts";
import type { Sentence } from "../sentences.ts";

const near = (inches: number): string => formatLength(inches, { unit: "in", per: 32 });

type Readings = readonly { datum: "edge" | "over all"; edge: number; overAll: number; height: number; foot: number }[];

export const slantSentences = {
  "length-of-what": (f: { name: string; typed: number; readings: Readings }) => ({
    says: `${near(f.typed)} long could mean two things for the slanted "${f.name}": ${f.readings
      .map(
        (r) =>
          `as ${r.datum === "edge" ? "its edge" : "its length over all"}, edge ${near(r.edge)}, over all ${near(r.overAll)}, height ${near(r.height)}, foot ${near(r.foot)}`,
      )
      .join("; ")}.`,
    expected: "`… long edge`, `… long over all` or `… long centre`",
    mend: "Say which length it is, or give it two levels with `from … to …` and let the length follow.",
  }),
  "leans-nowhere": (f: { name: string; toward: string }) => ({
    says: `"${f.name}" can't lean ${f.toward} here.`,
    expected: "inward or outward for a pair side by side; for a level board a side across its length",
    mend: "Name the side its top leans to.",
  }),
  "leans-too-far": (f: { name: string; degrees: number }) => ({
    says: `"${f.name}" would lean ${f.degrees} degrees out of plumb; that is as good as lying down.`,
    expected: "less than 80 degrees",
    mend: "Measure the angle from plumb, or let the board run level.",
  }),
  "wants-an-angle": () => ({
    says: "this comes to a length or a number, where an angle is needed.",
    expected: "an angle: `14 deg` or `3 in 12`",
    mend: "Write an angle, or the name of one.",
  }),
  "ends-cross": (f: { name: string; along: string; over: number }) => ({
    says: `the slanted ends of "${f.name}" cross each other ${f.along}: they are ${near(f.over)} past meeting.`,
    mend: "Move it to where its neighbours stand further apart.",
  }),
  "mitred-with": (f: { name: string; what: string }) => ({
    says: `"${f.name}" can't be mitred with "${f.what}".`,
    expected: "one board of the same panel (or of the stand) that runs across its end",
    mend: "Name the two boards it meets at its corners.",
  }),
  "which-side-out": (f: { name: string }) => ({
    says: `nothing says which side of "${f.name}" is the outside of the mitred corner.`,
    expected: "`at left`, `at top`, `leaning … front`, `facing …`",
    mend: "Put it at a side, or say which way it leans.",
  }),
  "mirrored-pair": (f: { name: string; count: number | "follows" }) => ({
    says: `"${f.name}" can't be mirrored: that takes two boards that lean${f.count === 2 ? "" : `, not ${f.count === "follows" ? "an open number" : f.count}`}.`,
    expected: "`2 …, leaning … inward, mirrored`",
    mend: "Write two that lean inward or outward, or take `mirrored` away.",
  }),
  "meets-alone": (f: { name: string }) => ({
    says: `the boards of "${f.name}" can only meet if they are a mirrored pair.`,
    mend: "Add `mirrored`, or say where each of them stands.",
  }),
  "meets-nowhere": (f: { name: string; where: string; inward: boolean }) => ({
    says: `two boards that lean ${f.inward ? "inward" : "outward"} come together at the ${f.inward ? "top" : "bottom"}, not at the ${f.where}.`,
    expected: f.inward ? "`touching at top`" : "`touching at bottom`",
    mend: "Turn the lean round or name the other end.",
  }),
  "blank-over-board": (f: { name: string; width: Length; board: string; whole: Length; short: Length }) => ({
    says: `the bevelled edges of "${f.name}" take a blank ${near(inches(f.width))} wide, but a ${f.board} is only ${near(inches(f.whole))}: ${near(inches(f.short))} short.`,
    expected: `at most ${near(inches(f.whole))}`,
    mend: "Rip it narrower, use a wider board, or leave its edges square.",
  }),
  "slopes-nowhere": (f: { name: string; fromSide: string; toSide: string; isFlat: boolean }) => ({
    says: f.isFlat
      ? `"${f.name}" can't slope from ${f.fromSide} to ${f.toSide}: those are no two opposite sides.`
      : `"${f.name}" stands up, so it can't lie on a slope.`,
    expected: f.isFlat ? "front and back, or left and right" : "`flat`",
    mend: "Give one height at each of two opposite sides, and lay the panel flat.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;

// The sentences of placing: what a maker is told when a thing has no place, two places, or no room.
import { formatLength } from "../../units/format-length.ts";
import { inches, type Length } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import type { Sentence } from "../sentences.ts";

/** A length in a sentence: to 1/32 in, with `about` before it where that is not exact. */
function said(length: Length): string {
  const printed = formatLength(length, { unit: "in", per: 32 });
  const off = Math.abs(inches(length) * 32 - Math.round(inches(length) * 32)) > 1e-6;
  return off ? `about ${printed}` : printed;
}
const list = (names: readonly string[]): string => (names.length > 0 ? names.join(", ") : "nothing yet");
const near = (name: string | undefined) => (name === undefined ? {} : { nearest: name });

const placeAlong: Readonly<Record<Axis, string>> = {
  x: "`at left`, `2 from left`, `centred`, `spread left to right` or `left at …`",
  y: "`at front`, `on back of …`, `centred` or `spread front to back`",
  z: "`bottom at …`, `top at …`, `on …`, `under …` or `from bottom to top`",
};
const whatWords = { lo: "its near side", hi: "its far side", mid: "its middle", size: "its size" } as const;

export const itemSentences = {
  circle: (f: { circle: readonly string[] }) => ({
    says:
      f.circle.length === 1
        ? `${f.circle[0]} waits for itself.`
        : `these wait for each other: ${f.circle.join(", which needs ")}, and so round again.`,
    mend: "Settle one of them by a size or by something that doesn't depend on the others.",
  }),
  "size-needs-place": () => ({
    says: "this size would have to be known before anything is placed, but it asks for something placed.",
    expected: "lengths and names under sizes",
    mend: "Give the width or thickness of a piece by sizes alone.",
  }),
  "mixed-sum": (f: { left: string; right: string; sign: string }) => ({
    says: `${f.left} and ${f.right} can't be ${f.sign === "plus" ? "added" : "taken from each other"}.`,
    mend: "Use two lengths, or two plain numbers.",
  }),
  "wants-a-length": (f: { is: string }) => ({
    says: `this comes to ${f.is}, where a length is needed.`,
    expected: "a length",
    mend: "Write a length or the name of one.",
  }),
  "runs-nowhere": (f: { name: string; inPanel: boolean }) => ({
    says: `nothing says which way the boards of "${f.name}" run.`,
    expected: f.inPanel
      ? "`upright` or `level`"
      : "`upright`, `from left to right`, `from front to back` or `running …`",
    mend: `Say it on the line of ${f.name}.`,
  }),
  "faces-its-length": (f: { name: string }) => ({
    says: `the wide side of "${f.name}" can't look the way its boards run.`,
    mend: "Name another side, or let the boards run another way.",
  }),
  "faces-two-ways": (f: { name: string; lie: string; side: string }) => ({
    says: `"${f.name}" is to lie ${f.lie} and to face ${f.side}; it can't do both.`,
    mend: "Keep one of the two clauses.",
  }),
  "which-way-wide": (f: { name: string }) => ({
    says: `nothing says which way the wide side of the upright "${f.name}" looks.`,
    expected: "`facing front`, `facing back`, `facing left` or `facing right`",
    mend: `Say it on the line of ${f.name}.`,
  }),
  "flat-or-on-edge": (f: { name: string }) => ({
    says: `nothing says whether "${f.name}" lies flat or stands on edge.`,
    expected: "`flat` or `on edge`",
    mend: `Say it on the line of ${f.name}.`,
  }),
  "unknown-board": (f: { what: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `the yard has no board called "${f.what}".`,
    found: f.what,
    expected: `one of ${list(f.known)}`,
    ...near(f.nearest),
    mend: `${f.nearest === undefined ? "Use a board of the yard" : `Write "${f.nearest}"`}, or add this one to the yard's boards with its true size.`,
  }),
  "unknown-fitting": (f: { what: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `the yard has no fitting called "${f.what}".`,
    found: f.what,
    expected: `one of ${list(f.known)}`,
    ...near(f.nearest),
    mend: "Use a fitting of the yard, or add this one to the yard's fittings.",
  }),
  "fitting-has-no-size": (f: { name: string; fitting: string }) => ({
    says: `"${f.name}" is to be put in a place, but the yard gives "${f.fitting}" no size.`,
    mend: "Add its size in the yard, or write `loose` if it only goes along with the item.",
  }),
  "no-such-size": (f: { name: string; way: string; size: Length }) => ({
    says: `"${f.name}" can't be ${f.way} to ${said(f.size)}.`,
    expected: "a length above 0",
    mend: "Give the finished size.",
  }),
  "piece-over-board": (f: {
    name: string;
    way: string;
    size: Length;
    board: string;
    whole: Length;
    short: Length;
  }) => ({
    says: `"${f.name}" is ${f.way} to ${said(f.size)}, but a ${f.board} is only ${said(f.whole)} ${f.way === "ripped" ? "wide" : "thick"}: ${said(f.short)} short.`,
    found: said(f.size),
    expected: `at most ${said(f.whole)}`,
    mend: `Use a ${f.way === "ripped" ? "wider" : "thicker"} board or a smaller size.`,
  }),
  "clause-not-here": (f: { clause: string; kind: string }) => ({
    says: `"${f.clause}" means nothing for a ${f.kind}.`,
    mend: `Take it away: ${f.kind === "panel" ? "a panel's size and direction come from the panel and from the side it faces" : "only a panel can be mirrored"}.`,
  }),
  "not-spread": (f: { name: string; count: number | "follows" }) => ({
    says:
      f.count === "follows"
        ? `nothing says over which room the "${f.name}" are spread, so their number can't follow.`
        : `there are ${f.count} of "${f.name}", but nothing says how they stand side by side.`,
    expected: "`spread left to right`, `spread between …`, `gap …` or `top every … up from …`",
    mend: `Say it on the line of ${f.name}.`,
  }),
  "panel-faces": (f: { name: string; sides: readonly string[] }) => ({
    says:
      f.sides.length > 1
        ? `the panel "${f.name}" is put at ${f.sides.join(" and ")}, so its good side could look either way.`
        : `nothing says which way the good side of the panel "${f.name}" looks.`,
    expected: "`at front`, `at back`, `at left`, `at right`, `flat` or `facing …`",
    mend: `Say it on the line of ${f.name}.`,
  }),
  "panel-count": (f: { name: string }) => ({
    says: `the panels "${f.name}" need a number of their own; it can't follow from a gap or from "each".`,
    mend: "Write how many panels there are.",
  }),
  "below-nothing": (f: { length: Length }) => ({
    says: `this comes to ${said(f.length)}; a length can't be below 0.`,
    mend: "Turn the sum round, or change a size in it.",
  }),
  "middle-of-what": () => ({
    says: "`middle` needs to know along which way.",
    mend: "Use it to place a side or an end: `from middle of legs 1`, `top at middle of …`.",
  }),
  "line-lies-across": (f: { side: string; wanted: string }) => ({
    says: `"${f.side}" doesn't lie ${f.wanted}, where this place is needed.`,
    mend: `Name a side or a length ${f.wanted}.`,
  }),
  "nothing-called": (f: {
    what: string;
    where: string | undefined;
    known: readonly string[];
    nearest: string | undefined;
  }) => ({
    says: `nothing ${f.where === undefined ? "here" : `in "${f.where}"`} is called "${f.what}".`,
    found: f.what,
    expected: `one of ${list(f.known)}`,
    ...near(f.nearest),
    mend: "Use a name that is there.",
  }),
  "no-such-number": (f: { name: string; number: number; count: number }) => ({
    says: `there is no "${f.name} ${f.number}": there ${f.count === 1 ? "is only one" : `are ${f.count}`}, counted from 1.`,
    mend: "Use a number that is there, or change the count.",
  }),
  "empty-panel": (f: { name: string | undefined }) => ({
    says: `${f.name === undefined ? "the recipe" : `the panel "${f.name}"`} has nothing in it that could be placed.`,
    mend: "Give it a line such as `rails: 2 strip, level, …`.",
  }),
  "each-differs": (f: { a: string; b: string; countA: number; countB: number }) => ({
    says: `"${f.a}" means ${f.countA}, but "${f.b}" means ${f.countB}; a line can only stand once for each of both.`,
    mend: "Make the two numbers equal, or drop one `each`.",
  }),
  "row-end-to-end": (f: { name: string }) => ({
    says: `the boards of "${f.name}" would stand in a row end to end, but nothing says how long each is.`,
    mend: "Give them a length: `12 long`.",
  }),
  "one-in-a-row": (f: { name: string; room: Length; size: Length }) => ({
    says: `a single "${f.name}" of ${said(f.size)} can't be spread over ${said(f.room)}.`,
    mend: "Write `centred`, add `end gaps`, or use two or more.",
  }),
  "row-too-tight": (f: { name: string; count: number; size: Length; need: Length; room: Length; short: Length }) => ({
    says: `${f.count} of "${f.name}" at ${said(f.size)} need ${said(f.need)}, but the room is ${said(f.room)}: ${said(f.short)} short.`,
    found: said(f.need),
    expected: `at most ${said(f.room)}`,
    mend: "Use fewer, rip them narrower, or widen the room.",
  }),
  "no-count-fits": (f: {
    name: string;
    room: Length;
    size: Length;
    widest: Length;
    fit: number;
    gap: Length | undefined;
  }) => ({
    says:
      f.fit < 1
        ? `not even one of "${f.name}" at ${said(f.size)} fits into ${said(f.room)}.`
        : `no number of "${f.name}" at ${said(f.size)} keeps the gaps at ${said(f.widest)} in ${said(f.room)}: ${f.fit} ${f.gap === undefined ? "leave the room open" : `leave gaps of ${said(f.gap)}`}, and ${f.fit + 1} don't fit.`,
    mend: "Allow a wider gap, or rip them to another width.",
  }),
  "gap-over-limit": (f: { name: string; count: number; gap: Length; widest: Length }) => ({
    says: `${f.count} of "${f.name}" leave gaps of ${said(f.gap)}, but at most ${said(f.widest)} is allowed.`,
    found: said(f.gap),
    expected: `at most ${said(f.widest)}`,
    mend: "Leave the count out and let it follow, use more, or allow a wider gap.",
  }),
  "said-twice": (f: {
    name: string;
    along: string;
    what: "lo" | "hi" | "mid" | "size";
    first: string;
    second: string;
    due: Length;
    said: Length;
  }) => ({
    says: `"${f.name}" is settled twice ${f.along}: by "${f.second}" ${whatWords[f.what]} would be ${said(f.said)}, but the rest ("${f.first}") makes it ${said(f.due)}.`,
    found: said(f.said),
    expected: said(f.due),
    mend: "Take one of the clauses away, or change a size so that both come to the same.",
  }),
  "not-settled": (f: {
    name: string;
    along: string;
    axis: Axis;
    has: readonly string[];
    isLength: boolean;
    isThrough: boolean;
  }) => ({
    says: f.isLength
      ? `nothing says how long "${f.name}" is and where its ends lie ${f.along}${f.has.length > 0 ? ` (only "${f.has.join('", "')}")` : ""}.`
      : `nothing says where "${f.name}" stands ${f.along}.`,
    expected: f.isLength ? "`from … to …`, `between …`, or `… long` with a place" : placeAlong[f.axis],
    mend: `Say it on the line of ${f.name}.`,
  }),
  "no-room": (f: { name: string; along: string; size: Length; first: string; second: string }) => ({
    says: `"${f.name}" would be ${said(f.size)} ${f.along}: "${f.first}" and "${f.second}" leave no room.`,
    mend: "Change one of the two, or a size they use.",
  }),
  "nothing-between": (f: { name: string; a: string; b: string | undefined; along: string; over: Length }) => ({
    says: `there is no room for "${f.name}" between ${f.b === undefined ? `the two of "${f.a}"` : `"${f.a}" and "${f.b}"`} ${f.along}: they overlap by ${said(f.over)}.`,
    mend: "Move them apart, or stand it between others.",
  }),
  "between-how-many": (f: { name: string; what: string; count: number }) => ({
    says: `"${f.name}" is to stand between the two of "${f.what}", but ${f.count === 1 ? "that is one" : `those are ${f.count}`}.`,
    mend: "Name two: `between legs 1 and legs 2`.",
  }),
  "no-such-measure": (f: { measure: string; what: string; may: readonly string[] }) => ({
    says: `"${f.what}" has no ${f.measure} that could be worked out here.`,
    expected: `one of ${list(f.may)}`,
    mend: "Ask for one of these.",
  }),
  "measures-differ": (f: { measure: string; what: string; first: Length; second: Length }) => ({
    says: `the ${f.measure} of "${f.what}" isn't one figure: ${said(f.first)} here, ${said(f.second)} there.`,
    mend: "Name one of them: by its panel, or by its number.",
  }),
  "overall-false": (f: { name: string; said: Length; come: Length; from: string; to: string }) => ({
    says: `the ${f.name} is said to be ${said(f.said)}, but from ${f.from} to ${f.to} it comes to ${said(f.come)}.`,
    found: said(f.said),
    expected: said(f.come),
    mend: "Correct the size, or write `fit` to let the pieces decide.",
  }),
  "piece-too-long": (f: { name: string; length: Length; board: string; longest: Length; short: Length }) => ({
    says: `"${f.name}" is ${said(f.length)} long, but the longest ${f.board} has ${said(f.longest)} to use: ${said(f.short)} short.`,
    found: said(f.length),
    expected: `at most ${said(f.longest)}`,
    mend: "Make it shorter, or add a longer board to the yard.",
  }),
  "panels-differ": (f: { kind: string; a: string; b: string; side: string; sizeA: Length; sizeB: Length }) => ({
    says: `"${f.a}" and "${f.b}" are both a "${f.kind}", but their ${f.side} comes to ${said(f.sizeA)} and ${said(f.sizeB)}.`,
    mend: "Give them the same room, or make two kinds of panel.",
  }),
  "panel-over-size": (f: { kind: string; side: string; said: Length; lo: Length; hi: Length }) => ({
    says: `the ${f.side} of "${f.kind}" is said to be ${said(f.said)}, but its pieces reach from ${said(f.lo)} to ${said(f.hi)}.`,
    mend: "Correct the size, or bring the pieces inside it.",
  }),
  "panel-unused": (f: { name: string; stands: readonly string[] }) => ({
    says: `the panel "${f.name}" stands nowhere.`,
    expected: `a line under stand; there ${f.stands.length > 0 ? `are ${list(f.stands)}` : "is none yet"}`,
    mend: `Put it in place under stand, or take the panel away.`,
  }),
} satisfies Record<string, (facts: never) => Sentence>;

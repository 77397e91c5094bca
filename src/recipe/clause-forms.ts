import type { Axis, Side } from "../units/side.ts";
import { readSide } from "./read-side.ts";
import type { Clause, Datum, Sum } from "./recipe.ts";
import { readReference } from "./reference.ts";
import type { Form, Scan } from "./scan.ts";
import { slantForms } from "./slant-forms.ts";
import { isSide, readSum } from "./sum.ts";

type Without<T> = T extends unknown ? Omit<T, "at" | "text"> : never;
export type ClauseBody = Without<Clause>;

export type ClauseForm = Form & {
  /** Whether a clause of these words is meant as one of this form. */
  readonly fits: (words: readonly string[]) => boolean;
  readonly read: (scan: Scan) => ClauseBody;
};

const starts =
  (...texts: readonly string[]) =>
  (words: readonly string[]): boolean =>
    texts.every((text, i) => words[i] === text);

/** Whether these words stand somewhere after the first word. */
const has = (words: readonly string[], ...texts: readonly string[]): boolean =>
  words.some((_, i) => i > 0 && texts.every((text, k) => words[i + k] === text));

/** The three level or upright directions in words, with the axis each runs along. */
export const directions: readonly { readonly words: readonly [string, string, string]; readonly axis: Axis }[] = [
  { words: ["left", "to", "right"], axis: "x" },
  { words: ["front", "to", "back"], axis: "y" },
  { words: ["bottom", "to", "top"], axis: "z" },
];
const directionWords = '"left to right", "front to back" or "bottom to top"';

/** The direction that stands next, if one does. */
export function readDirection(scan: Scan): Axis | undefined {
  return directions.find((d) => scan.skip(...d.words))?.axis;
}

/** Reads a clause that is always the same words. */
const fixed =
  (body: ClauseBody, ...texts: readonly string[]) =>
  (scan: Scan): ClauseBody => {
    scan.must(...texts);
    return body;
  };

const readPair = (scan: Scan) => {
  const a = readReference(scan, "the end");
  return scan.skip("and") ? { a, b: readReference(scan, "the end") } : { a };
};

const readCentred = (scan: Scan): ClauseBody => {
  scan.must("centred");
  const axis = readDirection(scan);
  const on = scan.skip("on") ? readReference(scan, "the end") : undefined;
  if (!scan.done && !axis && !on) scan.wants(`${directionWords}, or "on" and a name`);
  return { kind: "centred", ...(axis ? { axis } : {}), ...(on ? { on } : {}) };
};

/** `2 above`: which side of the other thing that is. */
const beside: readonly { readonly words: readonly string[]; readonly side: Side }[] = [
  { words: ["above"], side: "top" },
  { words: ["below"], side: "bottom" },
  { words: ["behind"], side: "back" },
  { words: ["in", "front", "of"], side: "front" },
  { words: ["left", "of"], side: "left" },
  { words: ["right", "of"], side: "right" },
];

const readBeside = (scan: Scan): ClauseBody => {
  if (beside.some((b) => scan.is(...b.words))) scan.wants("a distance first (to touch it, write on, under or against)");
  const off = readSum(scan);
  const there = beside.find((b) => scan.skip(...b.words));
  if (!there) return scan.wants('"above", "below", "behind", "in front of", "left of" or "right of"');
  return { kind: "touching", side: there.side, of: readReference(scan, "the end"), off };
};

/** The side word after "on" or "against" with its "of", or none. */
const readSideOf = (scan: Scan): Side | undefined => {
  if (!isSide(scan.peek()) || scan.peek(1) !== "of") return undefined;
  const side = readSide(scan);
  scan.must("of");
  return side;
};

const readLevelWith = (scan: Scan): ClauseBody => {
  const out = scan.skip("overhang");
  const inward = !out && scan.skip("inset");
  const by = out || inward ? readSum(scan) : undefined;
  if (by) scan.must("from");
  else scan.must("level", "with");
  const side = readSide(scan);
  scan.must("of");
  const of = readReference(scan, "the end");
  return { kind: "level with", side, of, ...(by && out ? { out: by } : {}), ...(by && inward ? { in: by } : {}) };
};

const towards: Readonly<Record<string, Side>> = {
  up: "top",
  down: "bottom",
  left: "left",
  right: "right",
  back: "back",
  forward: "front",
};

const readEvery = (scan: Scan): ClauseBody => {
  const side = readSide(scan);
  scan.must("every");
  const pitch = readSum(scan);
  const word = scan.peek() ?? "";
  const toward = Object.hasOwn(towards, word) ? towards[word] : undefined;
  if (!toward) return scan.wants('"up", "down", "left", "right", "back" or "forward"');
  scan.take();
  scan.must("from");
  return { kind: "every", side, pitch, toward, from: readSum(scan) };
};

const datums: readonly Datum[] = ["long edge", "short edge", "edge", "over all", "centre"];

const readMore = (scan: Scan): { more?: Sum } => {
  if (!scan.skip("plus")) return {};
  const more = readSum(scan);
  scan.must("each");
  return { more };
};

/** The first form that fits a clause's words reads it. */
export const clauseForms: readonly ClauseForm[] = [
  ...slantForms,
  {
    form: "upright",
    means: "The board's length runs from bottom to top.",
    example: "2 strip, upright, from bottom to top",
    fits: starts("upright"),
    read: fixed({ kind: "run", run: "upright" }, "upright"),
  },
  {
    form: "level with SIDE of X",
    means: "That side lies in one plane with the same side of X.",
    example: "level with front of legs",
    fits: starts("level", "with"),
    read: readLevelWith,
  },
  {
    form: "level",
    means: "The board's length lies level; in a panel it runs from left to right.",
    example: "6 strip, level, between legs",
    fits: starts("level"),
    read: fixed({ kind: "run", run: "level" }, "level"),
  },
  {
    form: "running left to right|front to back",
    means: "The board's length runs that way.",
    example: "3 strip, running front to back",
    fits: starts("running"),
    read: (scan) => {
      scan.must("running");
      if (scan.skip("left", "to", "right")) return { kind: "run", run: "left to right" };
      if (scan.skip("front", "to", "back")) return { kind: "run", run: "front to back" };
      return scan.wants('"left to right" or "front to back"');
    },
  },
  {
    form: "flat",
    means: "The wide side lies level; a panel lies with its good side up.",
    example: "9 strip, flat, from front to back",
    fits: starts("flat"),
    read: fixed({ kind: "lie", lie: "flat" }, "flat"),
  },
  {
    form: "on edge",
    means: "The board stands on its narrow side; in a panel its narrow side is up to the good side.",
    example: "2 strip, on edge",
    fits: starts("on", "edge"),
    read: fixed({ kind: "lie", lie: "on edge" }, "on", "edge"),
  },
  {
    form: "facing front|back|left|right",
    means: "The wide side of an upright board, or the good side of a panel, looks that way.",
    example: "facing left",
    fits: starts("facing"),
    read: (scan) => {
      scan.must("facing");
      return { kind: "facing", side: readSide(scan, ["front", "back", "left", "right"]) };
    },
  },
  {
    form: "good side up|down",
    means: "The panel lies flat with its good side that way.",
    example: "good side up",
    fits: starts("good"),
    read: (scan) => {
      scan.must("good", "side");
      if (scan.skip("up")) return { kind: "facing", side: "top" };
      scan.must("down");
      return { kind: "facing", side: "bottom" };
    },
  },
  {
    form: "from A to B",
    means: "Its two ends reach these two lines.",
    example: "from bottom to top",
    fits: starts("from"),
    read: (scan) => {
      scan.must("from");
      const from = readSum(scan, "to");
      scan.must("to");
      return { kind: "from to", from, to: readSum(scan, "to") };
    },
  },
  {
    form: "between X [and Y]",
    means: "It fills the room between the two of X, or between X and Y.",
    example: "between front-face and back-face",
    fits: starts("between"),
    read: (scan) => {
      scan.must("between");
      return { kind: "between", ...readPair(scan) };
    },
  },
  {
    form: "lapping L|half",
    means: "What stands between others runs on over them by this much at both ends; half is half their width.",
    example: "between legs, lapping half",
    fits: starts("lapping"),
    read: (scan) => {
      scan.must("lapping");
      if (scan.is("half") && scan.words.length === 2) {
        scan.take();
        return { kind: "lapping", by: "half" };
      }
      return { kind: "lapping", by: readSum(scan) };
    },
  },
  {
    form: "spread between X [and Y]",
    means: "A row with even gaps; the outer ones touch the inner sides of the two of X, or of X and Y.",
    example: "spread between front-face legs",
    fits: starts("spread", "between"),
    read: (scan) => {
      scan.must("spread", "between");
      return { kind: "spread between", ...readPair(scan) };
    },
  },
  {
    form: "spread over L",
    means: "A row with even gaps that measures L over its outer sides.",
    example: "4 plank, spread over top-depth, centred",
    fits: starts("spread", "over"),
    read: (scan) => {
      scan.must("spread", "over");
      return { kind: "spread over", length: readSum(scan) };
    },
  },
  {
    form: "spread A to B",
    means: "A row with even gaps; the outer ones are level with the two lines.",
    example: "spread clear to top",
    fits: starts("spread"),
    read: (scan) => {
      scan.must("spread");
      const from = readSum(scan, "to");
      scan.must("to");
      return { kind: "spread", from, to: readSum(scan, "to") };
    },
  },
  {
    form: "end gaps",
    means: "The even gap of a spread row stands outside its outer ones too.",
    example: "spread between legs, end gaps",
    fits: starts("end"),
    read: fixed({ kind: "end gaps" }, "end", "gaps"),
  },
  {
    form: "gaps at most L",
    means: "There are as many as keep the gaps at or under L; the line then gives no count.",
    example: "strip, spread between legs, gaps at most 1 1/4",
    fits: starts("gaps"),
    read: (scan) => {
      scan.must("gaps", "at", "most");
      return { kind: "gaps at most", gap: readSum(scan) };
    },
  },
  {
    form: "gap L [left to right|front to back|bottom to top]",
    means: "Neighbours stand this far apart, and the row is placed as one.",
    example: "5 plank, level, gap 2",
    fits: starts("gap"),
    read: (scan) => {
      scan.must("gap");
      const gap = readSum(scan);
      const axis = readDirection(scan);
      if (!scan.done) scan.wants(directionWords);
      return { kind: "gap", gap, ...(axis ? { axis } : {}) };
    },
  },
  {
    form: "SIDE every P up|down|left|right|back|forward from A",
    means: "That side of the first stands at A, of each next one a step P further that way.",
    example: "top every pitch down from height - 1",
    fits: (words) => has(words, "every"),
    read: readEvery,
  },
  {
    form: "centred [left to right|front to back|bottom to top] [on X]",
    means: "Its middle is on the middle of its space, or of X.",
    example: "centred left to right",
    fits: starts("centred"),
    read: readCentred,
  },
  {
    form: "at SIDE",
    means: "That side touches the same side of its space.",
    example: "at front",
    fits: starts("at"),
    read: (scan) => {
      scan.must("at");
      const at = scan.here;
      const side = readSide(scan);
      return { kind: "side at", side, line: { kind: "line", at, side } };
    },
  },
  {
    form: "SIDE at A",
    means: "That side stands at this line; heights count from the bottom of its space.",
    example: "bottom at clear",
    fits: (words) => isSide(words[0]) && words[1] !== "of",
    read: (scan) => {
      const side = readSide(scan);
      scan.must("at");
      return { kind: "side at", side, line: readSum(scan) };
    },
  },
  {
    form: "overhang L from SIDE of X",
    means: "That side stands out L past the same side of X.",
    example: "overhang 1 from front of legs",
    fits: starts("overhang"),
    read: readLevelWith,
  },
  {
    form: "inset L from SIDE of X",
    means: "That side stands back L within the same side of X.",
    example: "inset 1/2 from front of legs",
    fits: starts("inset"),
    read: readLevelWith,
  },
  {
    form: "under X",
    means: "Its top touches the bottom of X.",
    example: "under front-face rails",
    fits: starts("under"),
    read: (scan) => {
      scan.must("under");
      return { kind: "touching", side: "bottom", of: readReference(scan, "the end") };
    },
  },
  {
    form: "against SIDE of X",
    means: "It stands beside X and touches that side.",
    example: "against right of left-end",
    fits: starts("against"),
    read: (scan) => {
      scan.must("against");
      const side = readSideOf(scan) ?? scan.wants('a side and "of", as in "against left of"');
      return { kind: "touching", side, of: readReference(scan, "the end") };
    },
  },
  {
    form: "on [SIDE of] X",
    means: "It lies on top of X, or touches the named side of X.",
    example: "on back of legs",
    fits: starts("on"),
    read: (scan) => {
      scan.must("on");
      const side = readSideOf(scan) ?? "top";
      return { kind: "touching", side, of: readReference(scan, "the end") };
    },
  },
  {
    form: "L above|below|behind|in front of|left of|right of X",
    means: "It stands that far off that side of X.",
    example: "2 above rails 3",
    fits: (words) => beside.some((b) => has(words, ...b.words) || starts(...b.words)(words)),
    read: readBeside,
  },
  {
    form: "L long [plus D each]",
    means: "Its length is chosen; each next one may be D longer.",
    example: "14 long plus 2 each",
    fits: (words) => has(words, "long") && !has(words, "long", "edge"),
    read: (scan) => {
      const length = readSum(scan);
      scan.must("long");
      return { kind: "long", length, ...readMore(scan) };
    },
  },
  {
    form: "L edge|long edge|short edge|over all|centre [plus D each]",
    means:
      "The chosen length of a slanted board: of its edge, its longer or shorter edge, its square blank, its middle line.",
    example: "28 3/4 edge",
    fits: (words) => datums.some((datum) => has(words, ...datum.split(" "))),
    read: (scan) => {
      const length = readSum(scan);
      const datum = datums.find((d) => scan.skip(...d.split(" ")));
      if (!datum) return scan.wants(datums.map((d) => `"${d}"`).join(", "));
      return { kind: "long", length, datum, ...readMore(scan) };
    },
  },
  {
    form: "L from SIDE",
    means: "That side stands L inside the same side of its space.",
    example: "setback from left",
    fits: (words) => has(words, "from"),
    read: (scan) => {
      const distance = readSum(scan);
      scan.must("from");
      return { kind: "in from", distance, side: readSide(scan) };
    },
  },
  {
    form: "mirrored",
    means: "The panel is turned over from left to right.",
    example: "right-side: side-frame, mirrored, at right",
    fits: starts("mirrored"),
    read: fixed({ kind: "mirrored" }, "mirrored"),
  },
  {
    form: "loose",
    means: "No join holds it: it lies or hangs there.",
    example: "anchor kit, loose",
    fits: starts("loose"),
    read: fixed({ kind: "loose" }, "loose"),
  },
];

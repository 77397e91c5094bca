// `fence board, ripped to 1 11/16`, `1x10, outline arm, 2 plies, grain crossed` -> what is cut from which board.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { PieceKind, Sum } from "./recipe.ts";
import { attempt, type Form, type Gathered, Scan, split } from "./scan.ts";
import { readSum } from "./sum.ts";

type Working = Omit<PieceKind, "name" | "board" | "at" | "own">;
type PieceForm = Form & {
  /** The field it gives, and how its text begins or ends. */
  readonly does: keyof Working;
  readonly fits: RegExp;
  readonly read: (scan: Scan) => Working;
};

/** More layers than this are no piece of furniture. */
const mostPlies = 12;

const sumAfter =
  (does: "ripped" | "planed" | "leastWood" | "leastTurn", ...words: readonly string[]) =>
  (scan: Scan): Working => {
    scan.must(...words);
    const sum: Sum = readSum(scan);
    return { [does]: sum };
  };

export const pieceForms: readonly PieceForm[] = [
  {
    does: "ripped",
    fits: /^ripped\b/,
    form: "BOARD, ripped to W",
    means: "The board is ripped to this width.",
    example: "fence board, ripped to 1 11/16",
    read: sumAfter("ripped", "ripped", "to"),
  },
  {
    does: "planed",
    fits: /^planed\b/,
    form: "BOARD, planed to T",
    means: "The board is planed to this thickness.",
    example: "1x6, planed to 5/8",
    read: sumAfter("planed", "planed", "to"),
  },
  {
    does: "outline",
    fits: /^outline\b/,
    form: "BOARD, outline NAME[.svg][ mirrored]",
    means: "It is cut to this true-size shape, as it is seen on its good side; mirrored is turned over left to right.",
    example: "1x10, outline arm.svg",
    read: (scan) => {
      const at = scan.here;
      scan.must("outline");
      if (scan.done) scan.wants("the name of an outline, or of an .svg file beside the recipe");
      const name = scan.take();
      return { outline: { at, name, mirrored: scan.skip("mirrored") } };
    },
  },
  {
    does: "crossed",
    fits: /^grain crossed\b/,
    form: "BOARD, N plies, grain crossed",
    means: "The grain of every other ply runs across that of the first.",
    example: "1x10, outline arm, 2 plies, grain crossed",
    read: (scan) => {
      const at = scan.here;
      scan.must("grain", "crossed");
      return { crossed: { at } };
    },
  },
  {
    does: "grain",
    fits: /^grain\b/,
    form: "BOARD, outline NAME, grain up|across",
    means: "The grain runs up the drawing or across it; without a word it runs across.",
    example: "1x10, outline arm, grain up",
    read: (scan) => {
      const at = scan.here;
      scan.must("grain");
      if (scan.skip("up")) return { grain: { at, up: true } };
      if (!scan.skip("across")) scan.wants('"up", "across" or "crossed"');
      return { grain: { at, up: false } };
    },
  },
  {
    does: "plies",
    fits: /\b(plies|ply)$/,
    form: "BOARD, N plies",
    means: "So many layers are glued face to face and then cut as one.",
    example: "1x10, outline arm, 2 plies",
    read: (scan) => {
      const at = scan.here;
      const count = Number(scan.peek());
      if (!Number.isInteger(count) || count < 2 || count > mostPlies)
        scan.wants(`a whole number from 2 to ${mostPlies}`);
      scan.take();
      if (!scan.skip("plies")) scan.wants('"plies"');
      return { plies: { at, count } };
    },
  },
  {
    does: "glued",
    fits: /^glued\b/,
    form: "BOARD, glued edge to edge to W wide",
    means: "As many boards as it takes, all of one width, are glued edge to edge.",
    example: "1x6, glued edge to edge to 14 wide",
    read: (scan) => {
      const at = scan.here;
      scan.must("glued", "edge", "to", "edge", "to");
      const to = readSum(scan);
      scan.must("wide");
      return { glued: { at, to } };
    },
  },
  {
    does: "leastWood",
    fits: /^wood\b/,
    form: "BOARD, outline NAME, wood at least L",
    means: "Nowhere is the wood between two parts of the outline narrower; without it half the thickness is asked for.",
    example: "1x10, outline arm, wood at least 1 1/4",
    read: sumAfter("leastWood", "wood", "at", "least"),
  },
  {
    does: "leastTurn",
    fits: /^turns\b/,
    form: "BOARD, outline NAME, turns at least R",
    means:
      "No inside turn is tighter, sharp corners among them; without it curves of 1/8 and corners sawn from both sides pass.",
    example: "1x10, outline arm, turns at least 1/4",
    read: sumAfter("leastTurn", "turns", "at", "least"),
  },
  {
    does: "matched",
    fits: /^from one board$/,
    form: "BOARD, from one board",
    means: "All pieces of this kind in one thing are cut from one board, so that their grain matches.",
    example: "1x6, from one board",
    read: (scan) => {
      const at = scan.here;
      scan.must("from", "one", "board");
      return { matched: { at } };
    },
  },
];

/** The piece, with what can be read of how it is worked. */
export function readPiece(name: Written, value: Written, into: Gathered): PieceKind {
  const [board = value, ...parts] = split(value, ",");
  if (board.text === "") into.problems.push(problem("piece-of-nothing", board.at, { name: name.text }));
  let piece: PieceKind = { name, board, at: value.at };
  const seen = new Map<keyof Working, Written>();
  for (const part of parts) {
    const form = pieceForms.find((f) => f.fits.test(part.text));
    if (!form) {
      into.problems.push(problem("unknown-working", part.at, { found: part.text }));
      continue;
    }
    const working = attempt(into.problems, () => {
      const scan = new Scan(part, form, into);
      const read = form.read(scan);
      scan.end();
      return read;
    });
    const first = seen.get(form.does);
    if (working && first) {
      const facts = {
        found: part.text,
        first: form.does === "ripped" || form.does === "planed" ? form.does : first.text,
      };
      into.problems.push(problem("clause-twice", part.at, facts, piece[form.does] && placeOf(piece, form.does, first)));
    } else if (working) {
      seen.set(form.does, part);
      piece = { ...piece, ...working };
    }
  }
  return checkWorkings(piece, into);
}

const placeOf = (piece: PieceKind, does: keyof Working, first: Written) => piece[does]?.at ?? first.at;

/** What only has a meaning beside something else. */
function checkWorkings(piece: PieceKind, into: Gathered): PieceKind {
  const needs = (at: { readonly at: PieceKind["at"] } | undefined, what: string, wants: string, there: boolean) => {
    if (at && !there) into.problems.push(problem("working-alone", at.at, { what, wants }));
  };
  needs(piece.crossed, "grain crossed", "2 plies", piece.plies !== undefined);
  needs(piece.grain, "the grain of the drawing", "outline NAME", piece.outline !== undefined);
  needs(piece.leastWood, "the least wood", "outline NAME", piece.outline !== undefined);
  needs(piece.leastTurn, "the least turn", "outline NAME", piece.outline !== undefined);
  return piece;
}

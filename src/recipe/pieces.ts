// `fence board, ripped to 1 11/16` -> what is cut from which board.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { PieceKind, Sum } from "./recipe.ts";
import { attempt, type Form, type Gathered, Scan, split } from "./scan.ts";
import { readSum } from "./sum.ts";

export const pieceForms: readonly (Form & { readonly does: "ripped" | "planed" })[] = [
  {
    does: "ripped",
    form: "BOARD, ripped to W",
    means: "The board is ripped to this width.",
    example: "fence board, ripped to 1 11/16",
  },
  {
    does: "planed",
    form: "BOARD, planed to T",
    means: "The board is planed to this thickness.",
    example: "1x6, planed to 5/8",
  },
];

/** The piece, with what can be read of how it is worked. */
export function readPiece(name: Written, value: Written, into: Gathered): PieceKind {
  const [board = value, ...parts] = split(value, ",");
  if (board.text === "") into.problems.push(problem("piece-of-nothing", board.at, { name: name.text }));
  let piece: PieceKind = { name, board, at: value.at };
  for (const part of parts) {
    const form = pieceForms.find((f) => part.text.split(/\s+/)[0] === f.does);
    if (!form) {
      into.problems.push(problem("unknown-working", part.at, { found: part.text }));
      continue;
    }
    const sum = attempt(into.problems, () => readWorking(new Scan(part, form, into), form.does));
    if (sum && piece[form.does])
      into.problems.push(
        problem("clause-twice", part.at, { found: part.text, first: form.does }, piece[form.does]?.at),
      );
    else if (sum) piece = { ...piece, [form.does]: sum };
  }
  return piece;
}

function readWorking(scan: Scan, does: string): Sum {
  scan.must(does, "to");
  const sum = readSum(scan);
  scan.end();
  return sum;
}

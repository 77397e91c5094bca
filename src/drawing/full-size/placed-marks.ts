// Marks of a pattern -> the same at another place on paper, or a quarter turned.
import type { Mark, Paper } from "../drawing.ts";

export const movedMarks = (marks: readonly Mark[], [right, down]: Paper): Mark[] =>
  marks.map((mark) => placed(mark, ([u, v]) => [u + right, v + down], 0));

/** Turned anti-clockwise, so that a long pattern lies along the page; `width` is that of the pattern before. */
export const turnedMarks = (marks: readonly Mark[], width: number): Mark[] =>
  marks.map((mark) => placed(mark, ([u, v]) => [v, width - u], 90));

function placed(mark: Mark, move: (at: Paper) => Paper, degrees: number): Mark {
  switch (mark.kind) {
    case "lines":
      return { ...mark, chains: mark.chains.map((chain) => chain.map(move)) };
    case "region":
      return { ...mark, loops: mark.loops.map((loop) => loop.map(move)) };
    case "text":
      return { ...mark, at: move(mark.at), turn: (mark.turn ?? 0) + degrees };
    case "arrowhead":
      return { ...mark, tip: move(mark.tip), way: degrees === 0 ? mark.way : [mark.way[1], -mark.way[0]] };
    case "dot":
    case "balloon":
      return { ...mark, at: move(mark.at) };
  }
}

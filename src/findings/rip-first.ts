// A board that is crosscut first -> the same pieces of the same board ripped first, where its lengths have the same strips.
import type { CutProblem, PlacedPiece, PlannedCuts } from "../cutting/cut-problem.ts";

/** Ripping a long board takes one cut where its lengths would take one each, and leaves no short piece to be pushed along the fence. */
export function rippedFirst({ pieces, kerf }: CutProblem, board: PlannedCuts): PlannedCuts {
  if (board.order === "rip" || !isTwoWay(board)) return board;
  const widthOf = (mark: string): number => pieces.find((piece) => piece.mark === mark)?.width.valueOf() ?? 0;
  const lengths = [...new Set(board.pieces.map(({ at }) => at))].map((at) =>
    board.pieces
      .filter((placed) => placed.at === at)
      .sort((a, b) => widthOf(a.mark) - widthOf(b.mark) || (a.mark < b.mark ? -1 : 1)),
  );
  const rows = Math.max(...lengths.map((one) => one.length));
  const ripped: PlacedPiece[] = [];
  let across = 0;
  for (let row = 0; row < rows; row++) {
    const strip = lengths.flatMap((one) => one[row] ?? []);
    const [first] = strip;
    const width = widthOf(first?.mark ?? "");
    if (strip.some(({ mark }) => Math.abs(widthOf(mark) - width) > 1e-9)) return board;
    ripped.push(...strip.map((placed) => ({ ...placed, across })));
    across += width + kerf.valueOf();
  }
  return { ...board, order: "rip", pieces: ripped };
}

/** Whether any pieces lie beside each other, all of them as long boards lie. */
export const isTwoWay = ({ pieces }: PlannedCuts): boolean =>
  pieces.some(({ across }) => across !== 0) && pieces.every(({ quarter }) => quarter === undefined);

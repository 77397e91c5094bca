// Planned boards -> the cutting part of the build sheet: each board with its strips and pieces, drawn and told.
import { drawBoard } from "../drawing/board-layout.ts";
import { binderSheet } from "../drawing/sheet.ts";
import type { PlannedBoard, PlannedStrip } from "../findings/board-plan.ts";
import { sawCutsOf } from "../findings/saw-cuts.ts";
import { compareLengths, type Exact, type Length, zero } from "../units/length.ts";
import type { BinderEdition } from "./edition.ts";
import type { Picture } from "./leaf.ts";
import { pictureOn } from "./picture.ts";

export type CuttingSheet = {
  readonly boards: readonly CutBoard[];
  readonly kerf: string;
};

export type CutBoard = {
  readonly name: string;
  readonly stock: string;
  readonly picture: Picture;
  /** What is cut away before anything else. */
  readonly first?: string;
  /** Whether the board is first ripped into strips or crosscut into lengths. */
  readonly order: string;
  readonly strips: readonly string[];
};

export const cuttingSheet = (
  itemSlug: string,
  plan: readonly PlannedBoard[],
  kerf: Exact,
  { bare, length }: BinderEdition,
): CuttingSheet => ({
  kerf: length(kerf),
  boards: plan.map((planned) => ({
    name: `Board ${planned.number}`,
    stock: `${planned.board.name}, ${length(planned.stock.length)}`,
    ...(compareLengths(planned.endLoss, zero) > 0
      ? { first: `Trim ${bare(planned.endLoss)} off the end first, saw cut included.` }
      : {}),
    order: orderWords(planned),
    picture: pictureOn(binderSheet, (sheet) => drawBoard(itemSlug, planned, sawCutsOf(planned, kerf), bare, sheet)),
    strips: planned.strips.map((strip) => stripText(planned, strip, bare)),
  })),
});

function orderWords({ order, strips }: PlannedBoard): string {
  if (order === "crosscut") return "Crosscut it into lengths first, then rip these.";
  return strips.some(({ parted }) => parted)
    ? "Rip it first, then crosscut the strips."
    : "Crosscut it; nothing is ripped first.";
}

function stripText({ order }: PlannedBoard, strip: PlannedStrip, length: (inches: Length) => string): string {
  const size = length(strip.size);
  const pieces = runs(strip).map(({ piece, count }) => {
    const narrower = order === "rip" && compareLengths(piece.width, strip.size) < 0;
    const shorter = order === "crosscut" && compareLengths(piece.length, strip.size) < 0;
    const also = [
      ...(narrower ? [`ripped to ${length(piece.width)}`] : []),
      ...(shorter ? [`cut to ${length(piece.length)}`] : []),
      ...(piece.planedTo === undefined ? [] : [`planed to ${length(piece.planedTo)}`]),
    ];
    const at = length(order === "rip" ? piece.length : piece.width);
    return `${count} × ${piece.mark} at ${at}${also.map((word) => `, ${word}`).join("")}`;
  });
  const left = `${length(strip.left)} left`;
  if (order === "crosscut") return `Crosscut ${size}; rip ${pieces.join(", ")}; ${left}.`;
  return `${strip.parted ? `Rip to ${size}` : `Full width, ${size}`}; crosscut ${pieces.join(", ")}; ${left}.`;
}

/** Like neighbours along the strip together. */
function runs(strip: PlannedStrip): { piece: PlannedStrip["pieces"][number]; count: number }[] {
  const found: { piece: PlannedStrip["pieces"][number]; count: number }[] = [];
  for (const piece of strip.pieces) {
    const last = found.at(-1);
    if (last?.piece.mark === piece.mark) last.count += 1;
    else found.push({ piece, count: 1 });
  }
  return found;
}

// Planned boards -> the cutting part of the build sheet: each board with its strips and pieces, drawn and told.
import { drawBoard } from "../drawing/board-layout.ts";
import type { PlannedBoard, PlannedStrip } from "../findings/board-plan.ts";
import { compareLengths, type Exact, type Length, zero } from "../units/length.ts";
import type { BinderEdition } from "./edition.ts";
import type { Picture } from "./leaf.ts";
import { pictureOf } from "./picture.ts";

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
    picture: pictureOf(drawBoard(itemSlug, planned, kerf, bare)),
    strips: planned.strips.map((strip) => stripText(strip, bare)),
  })),
});

function stripText(strip: PlannedStrip, length: (inches: Length) => string): string {
  const how = strip.ripped ? `Rip to ${length(strip.size)}` : `Full width, ${length(strip.size)}`;
  const planed = strip.planedTo === undefined ? "" : `, plane to ${length(strip.planedTo)}`;
  const pieces = runs(strip).map(({ mark, count, size }) => `${count} × ${mark} at ${length(size)}`);
  return `${how}${planed}; crosscut ${pieces.join(", ")}; ${length(strip.leftLength)} left.`;
}

/** Like neighbours along the strip together. */
function runs(strip: PlannedStrip): { mark: string; count: number; size: Length }[] {
  const found: { mark: string; count: number; size: Length }[] = [];
  for (const { mark, size } of strip.pieces) {
    const last = found.at(-1);
    if (last?.mark === mark) last.count += 1;
    else found.push({ mark, count: 1, size });
  }
  return found;
}

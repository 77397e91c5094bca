// Planned boards -> the cutting part of the build sheet: each board with its strips and pieces, drawn and told.
import { drawBoard } from "../drawing/board-layout.ts";
import { binderSheet } from "../drawing/sheet.ts";
import type { PlannedBoard, PlannedStrip } from "../findings/board-plan.ts";
import { shortHolds } from "../findings/hand-safety.ts";
import { type Offcut, offcutsOf } from "../findings/offcuts.ts";
import { sawCutsOf, stopOf } from "../findings/saw-cuts.ts";
import { sawRunsOf } from "../findings/saw-runs.ts";
import type { YardList } from "../findings/yard-list.ts";
import { compareLengths, inches, type Length, plus, zero } from "../units/length.ts";
import { sawsOf } from "../yard/saws.ts";
import type { Shop } from "../yard/yard.ts";
import type { BinderEdition } from "./edition.ts";
import type { Picture, Table } from "./leaf.ts";
import { pictureOn } from "./picture.ts";
import { boardWords, holdWords, safeOrder, settingsTable, turnOver } from "./saw-settings.ts";
import { proofWords } from "./yard-sheet.ts";

export type CuttingSheet = {
  /** Whether the boards are known to be the cheapest. */
  readonly proof: string;
  readonly boards: readonly CutBoard[];
  readonly kerf: string;
  /** One row for each setting of a saw, in the order of the work, with an empty box. */
  readonly settings: Table;
  /** How the order keeps the hands safe, and what to do where it can't. */
  readonly safety: readonly string[];
  readonly offcuts: Table;
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

export function cuttingSheet(
  itemSlug: string,
  { plan, proof }: Pick<YardList, "plan" | "proof">,
  shop: Pick<Shop, "kerf" | "saws">,
  edition: BinderEdition,
): CuttingSheet {
  const { bare, length } = edition;
  const saws = sawsOf(shop);
  const cuts = plan.map((planned) => sawCutsOf(planned, shop.kerf));
  return {
    proof: proofWords(proof),
    kerf: length(shop.kerf),
    boards: alike(plan).map(([planned, ...others]) => ({
      name: boardNames([planned, ...others]),
      stock: stockWords(planned, edition),
      ...(compareLengths(planned.endLoss, zero) > 0
        ? { first: `Trim ${bare(planned.endLoss)} off the end first, saw cut included.` }
        : {}),
      order: orderWords(planned),
      picture: pictureOn(binderSheet, (sheet) =>
        drawBoard(itemSlug, planned, cuts[planned.number - 1] ?? [], bare, sheet),
      ),
      strips: planned.strips.map((strip) => stripText(planned, strip, bare)),
    })),
    settings: settingsTable(sawRunsOf(cuts.flat()), bare),
    safety: [
      safeOrder,
      ...(cuts.flat().some(({ mitre }) => mitre !== 0) ? [turnOver] : []),
      ...shortHolds(cuts.flat(), saws).map((hold) => holdWords(hold, length)),
    ],
    offcuts: {
      caption: `Offcuts worth keeping, from ${bare(saws.keep.length)} × ${bare(saws.keep.width)}, in inches`,
      heads: ["Board", "Length", "Width", "Number", "Left of"],
      rows: offcutRows(offcutsOf(plan, saws), bare),
    },
  };
}

/** Like ones together. */
function offcutRows(offcuts: readonly Offcut[], length: (inches: Length) => string): string[][] {
  const rows = new Map<string, { readonly cells: string[]; readonly boards: number[] }>();
  for (const offcut of offcuts) {
    const cells = [offcut.board.name, length(offcut.length), length(offcut.width)];
    const row = rows.get(cells.join()) ?? { cells, boards: [] };
    row.boards.push(offcut.number);
    rows.set(cells.join(), row);
  }
  return [...rows.values()].map(({ cells, boards }) => [
    ...cells,
    String(boards.length),
    boardWords([...new Set(boards)].sort((a, b) => a - b)),
  ]);
}

/** Boards that are cut alike stand together, where the first of them stands. */
function alike(plan: readonly PlannedBoard[]): [PlannedBoard, ...PlannedBoard[]][] {
  const groups = new Map<string, [PlannedBoard, ...PlannedBoard[]]>();
  for (const planned of plan) {
    const { board, stock, own, order, strips } = planned;
    const laid = strips.map(({ size, pieces }) => [
      inches(size),
      ...pieces.map(({ mark, at, turned, flipped }) => [mark, inches(at), turned, flipped]),
    ]);
    const key = JSON.stringify([board.name, inches(stock.length), own, order, laid]);
    const group = groups.get(key);
    if (group) group.push(planned);
    else groups.set(key, [planned]);
  }
  return [...groups.values()];
}

const boardNames = (boards: readonly PlannedBoard[]): string => {
  const words = boardWords(boards.map(({ number }) => number));
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${boards.length > 1 ? `, ${boards.length} alike` : ""}`;
};

const stockWords = ({ board, stock, own, width }: PlannedBoard, { length }: BinderEdition): string =>
  own
    ? `${board.name} of the shop's own, ${length(stock.length)} × ${length(width)}`
    : `${board.name}, ${length(stock.length)}`;

function orderWords({ order, strips }: PlannedBoard): string {
  if (order === "crosscut") return "Crosscut it into lengths first, then rip these.";
  return strips.some(({ parted }) => parted)
    ? "Rip it first, then crosscut the strips."
    : "Crosscut it; nothing is ripped first.";
}

/** Of a strip whose pieces and saw cuts take the whole usable length. */
function isAllThereIs({ usable }: PlannedBoard["stock"], { pieces }: PlannedStrip): boolean {
  return pieces.some(({ at, length }) => compareLengths(plus(at, length), usable) === 0);
}

function stripText({ order, stock }: PlannedBoard, strip: PlannedStrip, length: (inches: Length) => string): string {
  const size = length(strip.size);
  const pieces = runs(strip).map(({ piece, count }) => {
    const narrower = order === "rip" && compareLengths(piece.width, strip.size) < 0;
    const shorter = order === "crosscut" && compareLengths(piece.length, strip.size) < 0;
    const also = [
      ...(narrower ? [`ripped to ${length(piece.width)}`] : []),
      ...(shorter ? [`cut to ${length(stopOf(piece))}`] : []),
      ...(piece.planedTo === undefined ? [] : [`planed to ${length(piece.planedTo)}`]),
    ];
    const at = length(order === "rip" ? stopOf(piece) : piece.width);
    return `${count} × ${piece.mark} at ${at}${also.map((word) => `, ${word}`).join("")}`;
  });
  const left = `${length(strip.left)} left${isAllThereIs(stock, strip) ? ": the last is what is left of the board, so measure it first" : ""}`;
  if (order === "crosscut") return `Crosscut ${size}; rip ${pieces.join(", ")}; ${length(strip.left)} left.`;
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

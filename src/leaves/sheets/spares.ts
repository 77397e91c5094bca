// The yard list of a form -> what is worth taking along beside it: a board for knots and splits, screws that snap or drop.
import type { YardList } from "../../findings/yard-list.ts";
import { inches } from "../../units/length.ts";
import { setFractions } from "../edition.ts";
import type { Table } from "../leaf.ts";
import type { SheetSource } from "./sheet-source.ts";

/** One board in ten is lost to knots and splits, one fastener in twenty to the floor, at least two. Common practice, no source. */
const boardsLost = 10;
const fastenersLost = 20;

export function sparesTable({ bought: [{ list }], edition }: SheetSource): Table {
  return {
    caption: "Spares to take along; not counted in the costs",
    heads: ["What", "Spare", "Why"],
    rows: [...boardRows(list, edition.length), ...fastenerRows(list)],
  };
}

/** Of each sort of board, by its longest. */
function boardRows({ boards }: YardList, length: (inches: number) => string): string[][] {
  const names = [...new Set(boards.map(({ board }) => board.name))];
  return names.flatMap((name) => {
    const own = boards.filter(({ board }) => board.name === name);
    const [longest] = [...own].sort((a, b) => inches(b.stock.length) - inches(a.stock.length));
    const spare = Math.ceil(own.reduce((sum, { count }) => sum + count, 0) / boardsLost);
    return longest ? [[name, `${spare} of ${length(inches(longest.stock.length))}`, "knots, splits, a wrong cut"]] : [];
  });
}

/** In the pack where it holds them. */
const fastenerRows = ({ fasteners }: YardList): string[][] =>
  fasteners.map(({ fastener, count, packs }) => {
    const spare = Math.max(2, Math.ceil(count / fastenersLost));
    const left = packs * fastener.pack.count - count;
    const where = left >= spare ? "in the pack" : `one more pack of ${fastener.pack.count}: ${left} are left over`;
    return [setFractions(fastener.name), String(spare), where];
  });

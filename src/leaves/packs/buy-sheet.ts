// What a plan takes -> the list to buy by, in generic words with inch and metric fasteners side by side, without a price.
import type { YardList } from "../../findings/yard-list.ts";
import { yardList } from "../../findings/yard-list.ts";
import type { BinderEdition } from "../edition.ts";
import type { Table } from "../leaf.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { sheetOf, tableOf, words } from "../sheets/blocks.ts";
import { fluidOunces } from "../yard-sheet.ts";
import { fastenerSpec } from "./generic-names.ts";
import type { PackForm } from "./pack-item.ts";
import type { PackShop } from "./pack-shop.ts";

/** One fastener in twenty is lost, at least two. Common practice, no source. */
const fastenersLost = 20;

export function buySheet(form: PackForm, shop: PackShop, edition: BinderEdition): readonly PaperSheet[] {
  const [{ cords }] = form;
  const lists = form.map((item) => ({ name: item.variant.name, list: yardList(item, shop.kerf) }));
  const list = lists[0]?.list;
  if (!list) return [];
  return sheetOf("yard", "What to buy", "Yard", [
    ...tableOf(boardsTable(list, edition), true),
    ...words("One board more than the list says allows for knots, splits and a wrong cut."),
    ...tableOf(fastenersTable(list), true),
    ...(list.fasteners.length === 0 ? [] : words(fastenerNote, true)),
    ...tableOf(fittingsTable(list), true),
    ...tableOf(cords.length > 0 ? ropesTable(list, edition) : undefined, true),
    ...tableOf(finishesTable(lists), true),
    ...(list.glues.length === 0 ? [] : words(`Also ${list.glues.join(", ")}.`)),
  ]);
}

const boardsTable = (list: YardList, { bare, length }: BinderEdition): Table => ({
  caption: "Boards, whole; the cutting plan gives all pieces from them",
  heads: ["Number", "Board", "True section", "Length", "Wood"],
  rows: list.boards.map(({ board, stock, count }) => [
    String(count),
    board.name,
    `${bare(board.thickness)}\u00a0×\u00a0${length(board.width)}`,
    length(stock.length),
    board.words,
  ]),
});

const fastenersTable = (list: YardList): Table => ({
  caption: "Fasteners, with some to spare",
  heads: ["Number", "What", "Inch", "Metric", "Of"],
  rows: list.fasteners.map(({ fastener, count }) => {
    const { inch, metric } = fastenerSpec(fastener);
    const spare = Math.max(2, Math.ceil(count / fastenersLost));
    return [`${count} + ${spare}`, fastener.kind, inch, metric, fastener.material];
  }),
});

const fastenerNote =
  "Any maker's will do. Never take a longer one: its point may come through. A metric one is the next shorter that is sold, so that the point stays inside; steps call them by their inch names.";

const fittingsTable = (list: YardList): Table => ({
  caption: "Fittings",
  heads: ["Number", "What"],
  rows: list.fittings.map(({ fitting, count }) => [String(count), fitting.words]),
});

const ropesTable = (list: YardList, { length }: BinderEdition): Table => ({
  caption: "Rope",
  heads: ["Length", "What"],
  rows: list.ropes.map(({ rope, buy }) => [length(buy), rope.words]),
});

/** 1 US fluid ounce is 29.5735 ml (NIST SP 811); up to the next 10 ml. */
const millilitres = (gallons: number): string => `${Math.ceil((gallons * 128 * 29.5735) / 10) * 10} ml`;

const finishesTable = (lists: readonly { readonly name: string; readonly list: YardList }[]): Table => ({
  caption: "Finish, of one of these kinds",
  heads: ["For", "What", "Coats", "Takes"],
  rows: lists.flatMap(({ name, list }) =>
    list.finishes.map(({ finish, coats, gallons }) => [
      name,
      finish.words,
      String(coats),
      `${fluidOunces(gallons)} (${millilitres(gallons)})`,
    ]),
  ),
});

// The things of one line -> the sheets of a batch: what one costs at each number, what is saved together, what to buy and to cut. Private.
import type { Line, LineBatch } from "../findings/batch.ts";
import { lineBatch } from "../findings/batch.ts";
import { givesOf, offcutsOf } from "../findings/offcuts.ts";
import { isPriced, type Pricing, plansOf, pricingOf } from "../findings/pricing.ts";
import type { Item } from "../item/item.ts";
import type { Exact } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import { slug } from "../units/slug.ts";
import { sawsOf } from "../yard/saws.ts";
import { batches } from "../yard/shop-rates.ts";
import type { Shop } from "../yard/yard.ts";
import { cuttingSheet } from "./cutting-sheet.ts";
import { binderEdition } from "./edition.ts";
import type { Table } from "./leaf.ts";
import { batchPath, buildSheetPath, indexPath } from "./paths.ts";
import type { PaperSheet } from "./sheet-set.ts";
import { plain, sheetOf, tableOf, words } from "./sheets/blocks.ts";
import { boardBlocks } from "./sheets/cut-sheet.ts";
import type { SheetsPage } from "./sheets-page.ts";
import { formatMinutes } from "./work-table.ts";
import { boughtTables, fluidOunces, proofWords } from "./yard-sheet.ts";

/** Things of the same line together, in the order they come; a thing without a line is one by itself. */
export function linesOf(items: readonly Item[]): { readonly name: string; readonly line: Line }[] {
  const lines = new Map<string, [Item, ...Item[]]>();
  for (const item of items) {
    const name = item.line ?? item.title;
    const line = lines.get(name);
    if (line) line.push(item);
    else lines.set(name, [item]);
  }
  return [...lines].map(([name, line]) => ({ name, line }));
}

/** By the standard variant of each thing. The yard list and the cutting are those of the batch that prices are made for. */
export function batchSheetLeaf(name: string, line: Line, shop: Shop): SheetsPage {
  const units = shop.selling?.batch ?? 1;
  const asked = line.length === 1 ? [units] : [...new Set([1, units])];
  const together = asked.map((each) => lineBatch(line, each, shop));
  const batch = together.at(-1) as LineBatch;
  const [first, ...others] = [
    ...oneByOne(name, line, shop),
    ...sheetOf("together", "All together", "Batch", togetherBlocks(line, together, shop)),
    ...sheetOf("yard", `Yard list for ${units} of each`, "Yard", yardBlocks(batch, shop)),
    ...sheetOf("cutting", `Cutting ${units} of each`, "Cut", cuttingBlocks(name, line, batch, shop)),
    ...sheetOf("offcuts", "Offcuts for each other", "Cut", tableOf(offeredTable(line, shop))),
  ];
  if (!first) throw new Error(`no sheet for the line ${name}`);
  return {
    title: `${name}: batches`,
    description: `What each thing of the ${name.toLowerCase()} takes and costs in batches, and what to buy and to cut for them together.`,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    path: batchPath(name),
    things: line.map((item) => ({ path: buildSheetPath(item.slug), text: item.title })),
    set: {
      ...{ slug: `batch-${slug(name)}`, title: name, variant: "", revision: "", date: "", shopName: shop.name },
      foot: "Prices are the shop's own, dated; ask again before you buy.",
      sheets: [first, ...others],
    },
  };
}

const titleOf = (item: Item, i: number, all: readonly unknown[]): string =>
  all.length === 1 ? item.title : `${i + 1}: ${item.title}`;

function oneByOne(name: string, line: Line, shop: Shop): PaperSheet[] {
  return sheetOf("batches", `${name}: batches`, "Batch", [
    ...words(
      "Boards, setting up and packs are planned anew for every number, not multiplied. Each thing stands in its standard variant; a batch cuts all its boards before it goes on.",
    ),
    ...line.flatMap((item, i) => tableOf(ownTable(item, titleOf(item, i, line), shop))),
  ]);
}

/** Dollars and time for one, made so many at once. */
function ownTable(item: Item, title: string, shop: Shop): Table {
  const pricing = isPriced(shop) ? pricingOf(item, shop) : undefined;
  const plans = plansOf(item, shop.kerf);
  return {
    caption: item.soldAs ? `${title}, sold as a ${item.soldAs.words}` : title,
    heads: [
      "Made at once",
      "Boards",
      "Boards for one",
      ...(pricing ? ["Material for one", "Time for one", "Cost of one"] : []),
    ],
    rows: batches.map((units) => {
      const boards = plans.get(units) ?? [];
      const cost = boards.reduce((sum, { stock }) => sum.add(stock.price), shop.kerf.mul(0));
      return [String(units), String(boards.length), formatDollars(cost.div(units)), ...pricedCells(pricing, units)];
    }),
  };
}

function pricedCells(pricing: Pricing | undefined, units: number): string[] {
  const costs = pricing?.costs.find((one) => one.units === units);
  const hours = pricing?.hours.find((one) => one.units === units);
  return costs && hours
    ? [formatDollars(costs.material), formatMinutes(hours.perUnit), formatDollars(costs.whole)]
    : [];
}

function togetherBlocks(line: Line, batches: readonly LineBatch[], shop: Shop): PaperSheet["blocks"] {
  if (line.length === 1) return [];
  const dollars = ({ alone }: LineBatch): Exact =>
    alone.reduce((sum, { proof }) => sum.add(proof.cost), shop.kerf.mul(0));
  const timed = batches.some(({ minutes }) => minutes !== undefined);
  return [
    { kind: "list", mark: "dot", items: line.map((item, i) => plain(titleOf(item, i, line))) },
    ...tableOf({
      caption: "Each by itself, and all together",
      heads: [
        ...["Of each", "Boards apart", "Boards together", "Boards saved"],
        ...(timed ? ["Time apart", "Time together", "Time saved"] : []),
      ],
      rows: batches.map((batch) => {
        const { cost } = batch.list.proof;
        const { minutes } = batch;
        return [
          String(batch.units),
          formatDollars(dollars(batch)),
          formatDollars(cost),
          formatDollars(dollars(batch).sub(cost)),
          ...(minutes
            ? [
                formatMinutes(minutes.apart),
                formatMinutes(minutes.together),
                savedTime(minutes.apart.sub(minutes.together)),
              ]
            : []),
        ];
      }),
    }),
    ...words(
      "Together, boards are fetched once and each saw is set once for all things. Their boards are planned together where that costs less, the work at the saws counted with them. The number before a mark says whose piece it is.",
      true,
    ),
  ];
}

const savedTime = (minutes: Exact): string =>
  minutes.compare(0) < 0 ? `${formatMinutes(minutes.neg())} more` : formatMinutes(minutes);

function yardBlocks({ list }: LineBatch, shop: Shop): PaperSheet["blocks"] {
  const tables = boughtTables(list, binderEdition(shop.division).bare);
  return [
    ...tableOf(tables.boards, true),
    ...tableOf(tables.fasteners, true),
    ...tableOf(tables.fittings, true),
    ...tableOf(tables.ropes, true),
    ...tableOf(
      {
        caption: "Finish of the standard variants, whole tins",
        heads: ["Finish", "Takes", "Buy", "Together", "Price seen"],
        rows: list.finishes.map(({ finish, gallons, tins, cost }) => [
          finish.name,
          fluidOunces(gallons),
          `${tins} of ${finish.tin.size}`,
          formatDollars(cost),
          finish.tin.priced,
        ]),
      },
      true,
    ),
    ...(list.glues.length === 0 ? [] : words(`Also, without a price in the yard: ${list.glues.join(", ")}.`)),
    ...words(`All of this as bought: ${formatDollars(list.cost)}. What lies in the shop is not counted on.`),
    ...words(proofWords(list.proof), true),
  ];
}

function cuttingBlocks(name: string, line: Line, { list }: LineBatch, shop: Shop): PaperSheet["blocks"] {
  const cutting = cuttingSheet(`batch-${slug(name)}`, list, shop, binderEdition(shop.division));
  return [
    ...(line.length === 1
      ? []
      : words(`The number before a mark: ${line.map((item, i) => titleOf(item, i, line)).join("; ")}.`)),
    ...cutting.safety.flatMap((text) => words(text)),
    ...tableOf(cutting.settings, true),
    ...cutting.boards.flatMap(boardBlocks),
    ...tableOf(cutting.offcuts),
  ];
}

/** What one of each thing leaves over, and the pieces of the others that come out of it. */
function offeredTable(line: Line, shop: Shop): Table {
  const { bare } = binderEdition(shop.division);
  const saws = sawsOf(shop);
  const rows = line.flatMap((item) =>
    offcutsOf(plansOf(item, shop.kerf).get(1) ?? [], saws).map((offcut) => {
      const gives = line
        .filter((other) => other !== item)
        .flatMap((other) =>
          other.pieces.flatMap((piece) => {
            const count = Math.min(piece.count, givesOf(offcut, piece, shop.kerf));
            return count > 0 ? [`${count} × ${piece.mark} of ${other.title}`] : [];
          }),
        );
      const size = `${bare(offcut.length)} × ${bare(offcut.width)}`;
      return [item.title, offcut.board.name, size, gives.length > 0 ? `one of: ${gives.join(", ")}` : "none"];
    }),
  );
  return {
    caption: "Offcuts of one of each, in inches",
    heads: ["Of", "Board", "Offcut", "Gives"],
    rows: line.length === 1 ? [] : rows,
  };
}

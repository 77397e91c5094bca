// Other lengths and other boards for a thing -> the sheet that weighs them against what is planned. Private.
import { type OtherBoard, type OtherLength, otherBoards, otherLengths } from "../findings/other-boards.ts";
import type { YardList } from "../findings/yard-list.ts";
import type { Item } from "../item/item.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { compareLengths, type Exact, inches, type Length, zero } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import type { Board, Shop, Yard } from "../yard/yard.ts";
import { binderEdition } from "./edition.ts";
import type { Table } from "./leaf.ts";
import { boardsPath, buildSheetPath, indexPath } from "./paths.ts";
import { sheetOf, tableOf, words } from "./sheets/blocks.ts";
import type { SheetsPage } from "./sheets-page.ts";

type Said = (length: Length) => string;

/** By the standard variant; `list` is what one of it takes. */
export function boardsSheetLeaf(recipe: Recipe, item: Item, list: YardList, yard: Yard, shop: Shop): SheetsPage {
  const { bare } = binderEdition(shop.division);
  const [first, ...others] = sheetOf("boards", `${item.title}: other boards`, "Yard", [
    ...words(
      "What is planned is on the yard list. These are weighed against it: all pieces of a board out of one length of it, and out of another board. They are planned a little less thoroughly, so they cost no more than is said here.",
    ),
    ...tableOf(lengthsTable(otherLengths(item, shop.kerf), list, bare)),
    ...tableOf(boardsTable(otherBoards(recipe, item, yard, shop.kerf), list, bare)),
    ...words(
      "A board of another thickness asks for other screws where the recipe says which; the recipe's own problems tell so when it is written in. Strength is another matter: what bears a load is worked out anew before a weaker wood is taken.",
      true,
    ),
  ]);
  if (!first) throw new Error(`no sheet of boards for ${item.title}`);
  return {
    path: boardsPath(item.slug),
    title: `${item.title}: other boards`,
    description: `Other lengths and other boards for the ${item.title.toLowerCase()}, what they would cost and what they change.`,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    things: [{ path: buildSheetPath(item.slug), text: item.title }],
    set: {
      ...{ slug: `${item.slug}-boards`, title: item.title, variant: "", revision: "", date: "", shopName: shop.name },
      foot: "Prices are the shop's own, dated; ask again before you buy.",
      sheets: [first, ...others],
    },
  };
}

/** Dollars now laid out for one kind of board. */
const spentNow = ({ boards }: YardList, { name }: Board): Exact =>
  boards.filter(({ board }) => board.name === name).reduce((sum, { cost }) => sum.add(cost), zero);

const against = (cost: Exact, now: Exact): string => {
  const more = cost.sub(now);
  if (more.equals(0)) return "the same";
  return `${formatDollars(more.abs())} ${more.compare(0) > 0 ? "more" : "less"}`;
};

const lengthsTable = (lengths: readonly OtherLength[], list: YardList, length: Said): Table => ({
  caption: "All out of one length",
  heads: ["Board", "Length", "Boards", "Together", "Than planned", "Vehicle"],
  rows: lengths.map(({ board, stock, fits, spent }) => [
    board.name,
    length(stock.length),
    String(spent.boards),
    formatDollars(spent.cost),
    against(spent.cost, spentNow(list, board)),
    fits ? "fits" : "too long: have it brought",
  ]),
});

const boardsTable = (others: readonly OtherBoard[], list: YardList, length: Said): Table => ({
  caption: "Out of another board",
  heads: ["Instead of", "Board", "Wood", "Boards", "Together", "Than planned", "What changes"],
  rows: others.map((other) => [
    other.from.name,
    other.to.name,
    other.to.species.name,
    String(other.spent.boards),
    formatDollars(other.spent.cost),
    against(other.spent.cost, spentNow(list, other.from)),
    changesOf(other, length),
  ]),
});

function changesOf({ from, to, ripped, grows }: OtherBoard, length: Said): string {
  const sides = ["wide", "deep", "high"];
  const sizes = grows.flatMap((more, i) =>
    compareLengths(more, zero) === 0
      ? []
      : [`${length(Math.abs(inches(more)))} ${inches(more) > 0 ? "more" : "less"} ${sides[i]}`],
  );
  const thick = to.thickness.equals(from.thickness) ? [] : [`pieces ${length(to.thickness)} thick`];
  const rip = ripped.length === 0 ? [] : [`rip ${ripped.join(", ")} to ${length(from.width)}`];
  const all = [...thick, ...sizes, ...rip];
  return all.length === 0 ? "nothing" : all.join("; ");
}

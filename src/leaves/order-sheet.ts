// An order and what is made for it -> its work sheet in the binder: what to cut, letter, coat and pack, and what is agreed. Private.
import { madeForOne } from "../findings/hours.ts";
import { pricesTogether } from "../findings/order-book.ts";
import { type OrderStart, orderStart } from "../findings/order-start.ts";
import type { Ordered } from "../findings/ordered.ts";
import type { Pricing } from "../findings/pricing.ts";
import type { Item } from "../item/item.ts";
import { sayingWidth } from "../item/text-fields/letter-widths.ts";
import { formatDollars } from "../units/money.ts";
import { usualBenchHours } from "../yard/bench-hours.ts";
import type { Shop } from "../yard/yard.ts";
import { type BinderEdition, binderEdition } from "./edition.ts";
import type { Fact, Link, Table } from "./leaf.ts";
import { formSheetPath, indexPath, orderBookPath, proofPath } from "./paths.ts";
import { channelWords } from "./price-columns.ts";
import { spelled } from "./spelled.ts";
import { formatMinutes } from "./work-table.ts";

export type OrderSheet = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  readonly book: Link;
  readonly buildSheet: Link;
  readonly proof?: Link;
  /** What stands in the way. */
  readonly warnings: readonly string[];
  readonly facts: readonly Fact[];
  readonly notes?: string;
  readonly pieces: Table;
  /** The rows of letters, and words that stand on no row. */
  readonly letters?: Table;
  readonly coats?: Table;
  /** To be ticked. */
  readonly done: readonly string[];
};

export const hasWords = ({ words }: Ordered): boolean => words.length > 0;

/** `pricing` is that of the variant that is ordered. */
export function orderSheetLeaf(ordered: Ordered, shop: Shop, pricing: Pricing | undefined): OrderSheet {
  const { order, item } = ordered;
  const edition = binderEdition(shop.division);
  const made = order.count * madeForOne(item);
  const begun = pricing && orderStart(ordered, pricing.hours, shop.benchHours ?? usualBenchHours);
  return {
    title: `Order ${order.mark}`,
    description: `Work sheet of an order: ${item.title.toLowerCase()}, ${item.variant.name}.`,
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    book: { path: orderBookPath, text: "Order book" },
    buildSheet: { path: formSheetPath(item.slug, item.variant.form), text: "Build sheet" },
    ...(hasWords(ordered) ? { proof: { path: proofPath(order.slug), text: "Proof to send" } } : {}),
    warnings: warningsOf(ordered, pricing),
    facts: factsOf(ordered, pricing, made, begun && beginText(begun)),
    ...(order.notes === undefined ? {} : { notes: order.notes }),
    pieces: piecesFor(item, made, edition),
    ...(hasWords(ordered) ? { letters: lettersTable(ordered, edition) } : {}),
    ...(item.variant.finish.length > 0 ? { coats: coatsTable(item) } : {}),
    done: doneList(ordered),
  };
}

function warningsOf(ordered: Ordered, pricing: Pricing | undefined): string[] {
  const { order } = ordered;
  const floors = pricing ? [...pricing.channels].sort((a, b) => a.floor.compare(b.floor)) : [];
  const [least] = floors;
  return [
    ...(hasWords(ordered) && !order.approved
      ? ["The buyer hasn't said yes to the proof: put on no letter before that."]
      : []),
    ...(least && order.price.compare(least.floor) < 0
      ? [
          `Agreed for ${formatDollars(order.price)}, under every floor; the lowest is ${formatDollars(least.floor)} (${channelWords[least.channel.name].toLowerCase()}).`,
        ]
      : []),
  ];
}

function factsOf(ordered: Ordered, pricing: Pricing | undefined, made: number, start: string | undefined): Fact[] {
  const { order, item } = ordered;
  const one = pricing?.hours.find(({ units }) => units === 1);
  return [
    { name: "Due", value: order.due },
    ...(start ? [{ name: "Begin at the latest", value: start }] : []),
    { name: "What", value: item.title },
    { name: "Variant", value: item.variant.name },
    {
      name: "How many",
      value: item.soldAs ? `${order.count} × ${item.soldAs.words}: make ${made}` : String(order.count),
    },
    { name: "Agreed for one", value: formatDollars(order.price) },
    ...(order.count > 1 ? [{ name: "Together", value: formatDollars(pricesTogether([order])) }] : []),
    { name: "Proof", value: proofText(ordered) },
    ...(one ? [{ name: "Work, made one at a time", value: formatMinutes(one.perUnit.mul(order.count)) }] : []),
  ];
}

/** `2026-10-30: 3 days at the bench, 2 for the finish, 1 to pack`. */
function beginText({ day, lead }: OrderStart): string {
  const days = (count: number) => (count === 1 ? "1 day" : `${count} days`);
  const finish = lead.finish === 0 ? "" : `, ${lead.finish} for the finish`;
  return `${day}: ${days(lead.work)} at the bench${finish}, ${lead.packing} to pack`;
}

export const proofText = (ordered: Ordered): string =>
  hasWords(ordered) ? (ordered.order.approved ? "approved" : "not yet approved") : "no words on it";

const piecesFor = (item: Item, made: number, { bare }: BinderEdition): Table => ({
  caption: made === 1 ? "To cut, sizes in inches" : `To cut for ${made}, sizes in inches`,
  heads: ["Mark", "Number", "Length", "Width", "Thickness", "Piece", "Board"],
  rows: item.pieces.map((piece) => [
    piece.mark,
    String(piece.count * made),
    bare(piece.length),
    bare(piece.width),
    bare(piece.thickness),
    piece.name,
    piece.board.name,
  ]),
});

function lettersTable({ item, words }: Ordered, { bare }: BinderEdition): Table {
  const marks = new Map(item.members.map(({ id, mark }) => [id, mark]));
  const inRows = item.textFields.length > 0;
  return {
    caption: inRows ? "To letter, from the top down, sizes in inches" : "Words on it",
    heads: inRows
      ? ["Row", "Says", "Letter by letter", "Piece", "High", "Takes", "Room"]
      : ["Row", "Says", "Letter by letter"],
    rows: words.map((text, i) => {
      const field = item.textFields[i];
      const own = field
        ? [
            marks.get(field.member) ?? "",
            bare(field.height),
            sayingWidth(text, field.height).toFixed(1),
            bare(field.width),
          ]
        : [];
      return [String(i + 1), text, spelled(text), ...own];
    }),
  };
}

function coatsTable({ variant, members }: Item): Table {
  const marks = new Map(members.map(({ id, mark }) => [id, mark]));
  return {
    caption: "To coat",
    heads: ["Finish", "Coats", "On"],
    rows: variant.finish.map(({ finish, coats, members: on }) => [
      finish.name,
      String(coats),
      on.length === members.length ? "all" : [...new Set(on.map((id) => marks.get(id) ?? ""))].join(", "),
    ]),
  };
}

const doneList = (ordered: Ordered): string[] => [
  ...(hasWords(ordered) ? ["Proof sent", "Yes to the proof, on the day"] : []),
  "Boards cut and marked with the order's number",
  ...(hasWords(ordered) ? ["Letters on, read against the proof backwards, letter by letter"] : []),
  "Put together and checked",
  ...(ordered.item.variant.unfinished ? [] : ["Finish dry"]),
  "Packed, with care card and packing slip",
  "Paid",
];

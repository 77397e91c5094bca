// An order and the worked-out recipes -> what is made for it: the variant with the buyer's words on it, or why it can't be.

import type { Item, TextField } from "../item/item.ts";
import { sayingWidth, unknownLetters } from "../item/text-fields/letter-widths.ts";
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { isCalled } from "../recipe/choices-variants.ts";
import { slug } from "../units/slug.ts";
import type { Order } from "../yard/order.ts";

export type Ordered = {
  readonly order: Order;
  /** The variant that is ordered; its rows of letters say what the buyer wants. */
  readonly item: Item;
  /** The buyer's words one by one: those of the rows from the top down, else those that the recipe offers. */
  readonly words: readonly string[];
};

/** `goods` are all recipes, each with all its variants, the standard one first. */
export function orderedOf(
  order: Order,
  goods: readonly (readonly Item[])[],
): { readonly ordered?: Ordered; readonly problems: readonly Problem[] } {
  const variants = goods.find(([first]) => first?.slug === slug(order.item.text));
  if (!variants) {
    const titles = goods.flatMap(([first]) => (first ? [first.title] : []));
    const facts = { found: order.item.text, known: titles, nearest: nearest(order.item.text, titles) };
    return { problems: [problem("order-item", order.item.at, facts)] };
  }
  const { variant } = order;
  const item = variant ? variants.find((one) => isCalled(variant.text, one.variant)) : variants[0];
  if (!item) {
    const known = variants.map((one) => one.variant.slug);
    const what = variant?.text ?? "";
    const facts = { what, known, nearest: nearest(slug(what), known) };
    return { problems: [problem("order-variant", variant?.at ?? order.at, facts)] };
  }
  const problems = wordProblems(order, item);
  if (problems.length > 0) return { problems };
  const words = placesOf(item).map(({ standard }, i) => textFor(order, i)?.text ?? standard);
  const textFields = item.textFields.map((field, i) => ({ ...field, says: words[i] ?? field.says }));
  return { ordered: { order, item: { ...item, textFields }, words }, problems };
}

/** Where words may stand: the rows of letters, else what the recipe offers without a row. */
type Spot = { readonly standard: string; readonly most?: number; readonly field?: TextField };

function placesOf({ textFields, sayings }: Item): readonly Spot[] {
  if (textFields.length === 0) return sayings.map(({ standard, most }) => ({ standard, most }));
  return textFields.map((field, i) => {
    const offered = sayings.length > 1 ? sayings[i] : sayings[0];
    return { standard: field.says, field, ...(offered ? { most: offered.most } : {}) };
  });
}

const textFor = ({ sayings }: Order, row: number): Written | undefined => sayings[sayings.length > 1 ? row : 0];

function wordProblems(order: Order, item: Item): Problem[] {
  const { sayings } = order;
  const [first] = sayings;
  const spots = placesOf(item);
  if (!first) {
    const rows = spots.length;
    return item.sayings.length > 0 ? [problem("order-says-nothing", order.item.at, { rows })] : [];
  }
  if (spots.length === 0) return [problem("order-no-letters", first.at, { title: item.title })];
  if (sayings.length > 1 && sayings.length !== spots.length)
    return [problem("order-rows", first.at, { texts: sayings.length, rows: spots.length })];
  const each = spots.map((spot, i) => tooLong(textFor(order, i) ?? first, spot, i));
  // The same words on many rows are told once, by the first that they are too long for.
  return sayings.length > 1 ? each.flat() : (each.find((found) => found.length > 0) ?? []);
}

function tooLong({ text, at }: Written, { most, field }: Spot, row: number): Problem[] {
  const letters = [...text].length;
  if (text === "") return [problem("order-empty-row", at, { row: row + 1 })];
  if (most !== undefined && letters > most) return [problem("order-letters", at, { found: text, letters, most })];
  if (!field) return [];
  const unknown = unknownLetters(text);
  if (unknown.length > 0) return [problem("text-letters", at, { saying: text, unknown })];
  const width = sayingWidth(text, field.height);
  return width > field.width
    ? [
        problem("order-too-wide", at, {
          found: text,
          width,
          room: field.width,
          high: field.height,
          fits: (field.height * field.width) / width,
        }),
      ]
    : [];
}

// What is put on the thing, whom it is for, how it is sold, which words the buyer may choose -> facts for sheet and store.
import type { Item } from "../item/item.ts";
import type { Fact } from "./leaf.ts";

/** So many of this weight; on which boards is the binder's own. */
export type CarriedLoad = { readonly name: string; readonly pounds: number; readonly count: number };

export const carriedBy = ({ loads }: Pick<Item, "loads">): CarriedLoad[] =>
  loads.map(({ name, pounds, places }) => ({ name, pounds, count: places.length }));

type Used = Pick<Item, "madeFor" | "soldAs" | "sayings"> & { readonly loads: readonly CarriedLoad[] };

/** "a pair, 7.3 lb together". */
const soldText = ({ words, weight }: NonNullable<Item["soldAs"]>, pounds: (weight: number) => string): string =>
  `a ${words}, ${pounds(weight)} together`;

/** "pots: 6 of 8 lb". */
const loadText = ({ name, pounds, count }: CarriedLoad, weight: (pounds: number) => string): string =>
  `${name.replaceAll("-", " ")}: ${count === 1 ? "" : `${count} of `}${weight(pounds)}`;

export const useFacts = ({ loads, madeFor, soldAs, sayings }: Used, weight: (pounds: number) => string): Fact[] => [
  ...(soldAs ? [{ name: "Sold as", value: soldText(soldAs, weight) }] : []),
  ...(madeFor.length > 0 ? [{ name: "For", value: madeFor.join(", ") }] : []),
  ...(loads.length > 0
    ? [{ name: "Meant to carry", value: loads.map((load) => loadText(load, weight)).join("; ") }]
    : []),
  ...sayings.map(({ name, most, standard }) => ({
    name: `Your ${name.replaceAll("-", " ")}`,
    value: `at most ${most} letters; “${standard}” if you don't say`,
  })),
];

// What has to be shown before an item is sold -> the sheet of it in the binder, with what is there and what is missing. Private.
import { isForSale, missingForSale, saleNeeds } from "../findings/sale.ts";
import type { Item } from "../item/item.ts";
import type { Link, Table } from "./leaf.ts";
import { cardsPath } from "./paths.ts";

export type SaleSheet = {
  readonly title: string;
  /** Whether it is in the store, and the rule that decides it. */
  readonly says: string;
  readonly needs: Table;
  readonly duties: readonly string[];
};

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

/** "Not in the store: no evidence of finish and tip."; undefined where nothing is missing. */
export function barredText(item: Item): string | undefined {
  const missing = missingForSale(item).map(({ kind }) => kind);
  return missing.length === 0 ? undefined : `Not in the store: no evidence of ${listed(missing)}.`;
}

/** The page of its cards, where it is for sale. */
export const cardsLink = (item: Item): { readonly cards?: Link } =>
  isForSale(item) ? { cards: { path: cardsPath(item.slug), text: "Cards" } } : {};

/** Undefined where nothing has to be shown. */
export function saleSheet(item: Item): SaleSheet | undefined {
  const needs = saleNeeds(item);
  if (needs.length === 0) return undefined;
  const barred = barredText(item);
  const isChild = item.classes.includes("C");
  const whom = isChild ? "It is for children." : "It is tall for its depth.";
  return {
    title: "Before it is sold",
    says:
      barred === undefined
        ? `${whom} There is evidence of all that is asked for: it is in the store. Keep the papers; this list is no legal advice.`
        : `${barred} ${whom} What is missing is a note here, where you build it, and keeps it out of the store, where a buyer can't know. Write each under "evidence" in the recipe once it is done; this list is no legal advice.`,
    needs: {
      caption: "What has to be shown",
      heads: ["evidence", "what it must show", "why", "source", "yours"],
      rows: needs.map(({ kind, needs, why, source, evidence }) => [kind, needs, why, source, evidence ?? "missing"]),
    },
    duties: isChild ? childDuties : [],
  };
}

const childDuties: readonly string[] = [
  "Fix the label to each one so that it lasts: maker, place, date and lot. The care card has the same lines.",
  "Give the certificate with it to a shop that sells it on; keep it with the test reports.",
  "Fill in the lot on the care card; write in the shop's book which boards and which tin went into it.",
];

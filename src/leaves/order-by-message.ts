// Store item and shop -> how a buyer orders without a form: a text to send, and for each variant a letter that is already written.
import { formatDollars } from "../units/money.ts";
import { availabilityWords } from "./availability-words.ts";
import type { StoreItem, StoreOffer, StoreShop } from "./store-item.ts";
import { priceText, priceWords } from "./store-price.ts";

export type OrderByMessage = {
  /** How it goes, one sentence each. */
  readonly says: readonly string[];
  /** The text for the standard variant, to copy; absent where nothing is left of it. */
  readonly text?: string;
};

/** Letters, digits and the few signs that mean nothing else in an address. */
const mailAddress = /[A-Za-z0-9._+-]+@[A-Za-z0-9-]+(?:\.[A-Za-z0-9-]+)+/;

/** "mailto:…" with subject and text; undefined where the shop names no address for mail. */
export function letterTo(shop: Pick<StoreShop, "contact">, subject: string, text: string): string | undefined {
  const address = mailAddress.exec(shop.contact)?.[0];
  if (address === undefined) return undefined;
  // RFC 6068: lines of the text end in CR LF, and everything that isn't a plain letter is a number.
  const encoded = (words: string) =>
    encodeURIComponent(words.replace(/\p{Surrogate}/gu, "\ufffd").replace(/\r?\n/g, "\r\n"));
  return `mailto:${address}?subject=${encoded(subject)}&body=${encoded(text)}`;
}

/** One line for each saying, and what own words cost. */
function sayingLines({ sayings, rows }: StoreItem, { price }: StoreOffer): string[] {
  const more = price?.ownWords ? [`Words of my own cost ${formatDollars(price.ownWords)} more.`] : [];
  if (rows && sayings.length === 0) {
    const numbers = Array.from({ length: rows.count }, (_, i) => `  ${i + 1}: `);
    return [...more, "Words on it, a row each, spelled as they are to stand:", ...numbers];
  }
  const lines = sayings.flatMap(({ name, most, standard }) => [
    `${capital(name.replaceAll("-", " "))}, at most ${most} letters, spelled as it is to stand (“${standard}” if you leave it):`,
    "",
  ]);
  return lines.length === 0 ? [] : [...more, ...lines];
}

const inBrackets = (words: string): string => (words === "" ? "" : ` (${words})`);

export function orderText(item: StoreItem, offer: StoreOffer): string {
  const price = offer.price ? [`Price shown: ${priceText(offer.price)}${inBrackets(priceWords(offer.price))}`] : [];
  return [
    `I would like to order: ${item.title}, ${offer.name}${item.soldAs ? `, a ${item.soldAs.words}` : ""}`,
    `Number in the shop: ${item.slug}/${offer.slug}`,
    ...price,
    `When: ${availabilityWords(offer.availability).toLowerCase()}`,
    "How many: 1",
    ...sayingLines(item, offer),
    "Fetched by me, or sent to (town and postal code):",
    "",
    "Name:",
    "",
  ].join("\n");
}

export const orderLetter = (item: StoreItem, offer: StoreOffer, shop: StoreShop): string | undefined =>
  offer.availability.kind === "sold"
    ? undefined
    : letterTo(shop, `Order: ${item.title}, ${offer.name}`, orderText(item, offer));

export function orderByMessage(item: StoreItem, shop: StoreShop): OrderByMessage {
  const offer = item.offers.find(({ availability }) => availability.kind !== "sold");
  if (!offer) return { says: ["It is sold. Write to us if you would like another one like it."] };
  const byMail = mailAddress.test(shop.contact);
  return {
    says: [
      byMail
        ? "Each “order by mail” above opens a letter that is already written; or copy these lines into a message."
        : "Copy these lines into a message to us.",
      "Nothing is sold until we answer: we write back what we will make, by when, and what it comes to.",
      ...(item.sayings.length > 0 || item.rows
        ? [
            "Your own words come back to you letter by letter, and nothing is cut before you have said that they are right.",
          ]
        : []),
    ],
    text: orderText(item, offer),
  };
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

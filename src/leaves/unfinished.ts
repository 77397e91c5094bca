// What is due on everything that is sold or built without a finish, or with a part left bare: product page, care card and build sheet.
import type { Item, Variant } from "../item/item.ts";
import type { Notice } from "./leaf.ts";

export const unfinishedNotice: Notice = {
  title: "Unfinished",
  says: "Bare wood: nothing is on it to keep water or dirt out. Outdoors it turns grey, roughens and decays sooner than coated wood. Coat it before its first season, or take it as it weathers.",
};

/** Whether a finish is put on a part of it only. */
export const isPartlyBare = ({ unfinished, bare }: Variant): boolean => !unfinished && bare.length > 0;

/**
 * What of a variant is left bare in public words: its wood where nothing of that wood is coated, else "part of it"; undefined
 * where nothing is, or everything.
 */
export function bareWords(item: Item): string | undefined {
  if (!isPartlyBare(item.variant)) return undefined;
  const bare = new Set(item.variant.bare);
  const woods = (which: (id: string) => boolean) =>
    new Set(item.members.filter(({ id }) => which(id)).map(({ board }) => board.words));
  const left = woods((id) => bare.has(id));
  const coated = woods((id) => !bare.has(id));
  return [...left].some((wood) => coated.has(wood)) ? "part of it" : [...left].join("; ");
}

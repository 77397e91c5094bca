// All variants of one recipe -> by form: variants of one form have the same boards and differ in their finish alone.
import type { Item } from "../item.ts";

/** The variants of one form, the one with the first finish first. */
export type Form = readonly [Item, ...Item[]];

/** The standard form first, the others in the order of the variants. */
export function formsOf(variants: readonly [Item, ...Item[]]): readonly [Form, ...Form[]] {
  const names = [...new Set(variants.map(({ variant }) => variant.form))];
  const forms = names.flatMap((form): Form[] => {
    const [first, ...others] = variants.filter(({ variant }) => variant.form === form);
    return first ? [[first, ...others]] : [];
  });
  return forms as [Form, ...Form[]];
}

/** One form beside the others: what a buyer or a maker tells them apart by. */
export type FormFacts = {
  readonly name: string;
  readonly slug: string;
  readonly overall: Item["overall"];
  readonly weight: number;
  readonly pieces: number;
  readonly boards: readonly string[];
  /** Public words of the boards. */
  readonly woods: readonly string[];
};

export const formFacts = ([item]: Form): FormFacts => ({
  name: item.variant.formName,
  slug: item.variant.form,
  overall: item.overall,
  weight: item.weight,
  pieces: item.members.length,
  boards: [...new Set(item.pieces.map(({ board }) => board.name))],
  woods: [...new Set(item.pieces.map(({ board }) => board.words))],
});

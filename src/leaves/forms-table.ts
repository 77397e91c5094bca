// Forms of one recipe side by side -> a table of what differs between them.
import type { Item } from "../item/item.ts";
import type { FormFacts } from "../item/variants/forms.ts";
import type { Length } from "../units/length.ts";
import type { Table } from "./leaf.ts";

type Column = { readonly head: string; readonly cell: (form: FormFacts) => string };

/** For the bench: sizes, weight, pieces and boards as far as they differ. */
export const formsForBinder = (
  forms: readonly FormFacts[],
  sizes: (overall: Item["overall"]) => string,
  weight: (pounds: number) => string,
): Table =>
  tableOf("What differs between the variants", forms, [
    { head: "Width × depth × height", cell: ({ overall }) => sizes(overall) },
    { head: "Weight", cell: (form) => weight(form.weight) },
    { head: "Pieces", cell: ({ pieces }) => String(pieces) },
    { head: "Boards", cell: ({ boards }) => boards.join(", ") },
  ]);

type StoreForm = Pick<FormFacts, "name" | "overall" | "weight" | "woods">;

/** For the buyer, who learns nothing of boards and pieces but the wood. */
export const formsForStore = (
  forms: readonly StoreForm[],
  length: (inches: Length) => string,
  weight: (pounds: number) => string,
): Table =>
  tableOf(
    "Each as it is made",
    forms.map((form) => ({ ...form, slug: "", pieces: 0, boards: [] })),
    [
      { head: "Width", cell: ({ overall }) => together(length(overall.width)) },
      { head: "Depth", cell: ({ overall }) => together(length(overall.depth)) },
      { head: "Height", cell: ({ overall }) => together(length(overall.height)) },
      { head: "Weight", cell: (form) => `about ${together(weight(form.weight))}` },
      { head: "Wood", cell: ({ woods }) => woods.join("; ") },
    ],
  );

/** `12 in (305 mm)` breaks before the bracket and nowhere else. */
const together = (text: string): string => text.replaceAll(" ", "\u00a0").replace("\u00a0(", " (");

/** A column that says the same of all is left out. */
function tableOf(caption: string, forms: readonly FormFacts[], columns: readonly Column[]): Table {
  const telling = columns.filter(({ cell }) => new Set(forms.map(cell)).size > 1);
  return {
    caption,
    heads: ["Choice", ...telling.map(({ head }) => head)],
    rows: forms.map((form) => [form.name, ...telling.map(({ cell }) => cell(form))]),
  };
}

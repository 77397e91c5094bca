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
    "What you can choose",
    forms.map((form) => ({ ...form, slug: "", pieces: 0, boards: [] })),
    [
      { head: "Width", cell: ({ overall }) => length(overall.width) },
      { head: "Depth", cell: ({ overall }) => length(overall.depth) },
      { head: "Height", cell: ({ overall }) => length(overall.height) },
      { head: "Weight", cell: (form) => `about ${weight(form.weight)}` },
      { head: "Wood", cell: ({ woods }) => woods.join("; ") },
    ],
  );

/** A column that says the same of all is left out. */
function tableOf(caption: string, forms: readonly FormFacts[], columns: readonly Column[]): Table {
  const telling = columns.filter(({ cell }) => new Set(forms.map(cell)).size > 1);
  return {
    caption,
    heads: ["Choice", ...telling.map(({ head }) => head)],
    rows: forms.map((form) => [form.name, ...telling.map(({ cell }) => cell(form))]),
  };
}

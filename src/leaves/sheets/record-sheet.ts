// A form -> the sheet that is filled in while it is built: what went into it, how long it took, what was done otherwise.
import { type Offcut, offcutsOf } from "../../findings/offcuts.ts";
import { recordLine } from "../../recipe/record.ts";
import type { Division } from "../../units/division.ts";
import { formatLength } from "../../units/format-length.ts";
import { sawsOf } from "../../yard/saws.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";
import { heading, sheetOf, together } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

const rules = (name: string, count: number) => ({ kind: "rules", name, count }) as const;

export function recordSheet(source: SheetSource): readonly PaperSheet[] {
  const {
    variants,
    bought: [{ list }],
    readers,
  } = source;
  if (readers === "stranger") return [];
  const boards = [...new Set(list.boards.map(({ board }) => board.name))];
  const finishes = [...new Set(variants.flatMap(({ variant }) => variant.finish.map(({ finish }) => finish.name)))];
  return sheetOf("record", "Record", "Record", [
    ...together([
      heading("This one"),
      rules("Lot", 1),
      rules("Built by, from, to", 1),
      ...(variants.length > 1 ? [rules(`Variant: ${variants.map((one) => one.variant.name).join(" / ")}`, 1)] : []),
    ]),
    ...together([
      heading("Boards and finish"),
      ...boards.map((name) => rules(`${name}: true section, moisture, bought on`, 1)),
      ...finishes.map((name) => rules(`${name}: tin, its number`, 1)),
    ]),
    ...together([
      heading("Changes and what is left"),
      rules("Changed against these sheets, and why", 3),
      rules("Offcuts kept, by board and length", 2),
    ]),
    ...linesBlocks(source),
  ]);
}

/** Lines of the recipe and of the yard file, to be copied with the blanks filled in; nothing of them is set as on paper. */
function linesBlocks({ pricings, variants, bought: [{ list }], shop }: SheetSource): SheetBlock[] {
  const batches = variants.flatMap(({ variant: { slug } }) => {
    const hours = pricings.find(({ item }) => item.variant.slug === slug)?.hours.find(({ units }) => units === 1);
    return hours ? [`  ${recordLine(1, slug, ["fetch", ...hours.lines.map(({ work }) => work)])}`] : [];
  });
  const offcuts = offcutsOf(list.plan, sawsOf(shop));
  return [
    ...pasteBlocks("For the recipe: minutes of a batch, with their setting up", ["record:", ...batches]),
    ...pasteBlocks("For the yard file: offcuts that were kept, one line each", stockLines(offcuts, shop.division)),
  ];
}

/** Nothing where only the head of the lines is there. */
const pasteBlocks = (head: string, lines: readonly string[]): SheetBlock[] =>
  lines.length < 2 ? [] : together([heading(head), { kind: "paste", text: lines.join("\n") }]);

/** `41 1/4 x 5 1/2: 1` under its board. */
function stockLines(offcuts: readonly Offcut[], division: Division): string[] {
  const boards = [...new Set(offcuts.map(({ board }) => board.name))];
  const sizes = (name: string) =>
    offcuts
      .filter(({ board }) => board.name === name)
      .map(({ length, width }) => `${formatLength(length, division)} x ${formatLength(width, division)}`);
  return [
    "boards:",
    ...boards.flatMap((name) => {
      const all = sizes(name);
      const lines = [...new Set(all)].map((size) => `      ${size}: ${all.filter((one) => one === size).length}`);
      return [`  ${name}:`, "    in-stock:", ...lines];
    }),
  ];
}

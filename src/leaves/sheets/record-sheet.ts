// A form -> the sheet that is filled in while it is built: what went into it, how long it took, what was done otherwise.
import type { PaperSheet } from "../sheet-set.ts";
import { heading, sheetOf, together, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

const rules = (name: string, count: number) => ({ kind: "rules", name, count }) as const;

export function recordSheet({ item, variants, bought: [{ list }], shop, readers }: SheetSource): readonly PaperSheet[] {
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
    ...(shop.minutes ? minutesBlocks(item) : []),
  ]);
}

/** Lines of the shop file, to be copied with the numbers filled in. */
const minutesBlocks = (item: SheetSource["item"]) => [
  ...together([
    heading("Minutes, for the shop file"),
    ...words("Time each kind of work without its set-up. Add what you found to the line of that name under “timed”."),
    { kind: "paste", text: timedLines(item) } as const,
  ]),
];

function timedLines(item: SheetSource["item"]): string {
  const screws = item.joins.reduce((sum, { driven }) => sum + driven.length, 0);
  const holes = item.pieces.reduce(
    (sum, { count, cuts }) => sum + count * cuts.filter(({ kind }) => kind === "hole").length,
    0,
  );
  const glued = item.joins.filter(({ ways }) => ways.includes("glue")).length;
  const lines: readonly (readonly [string, number])[] = [
    ["crosscut", item.members.length],
    ["hole", holes],
    ["glue", glued],
    ["screw", screws],
  ];
  return [
    "timed:",
    ...lines.filter(([, count]) => count > 0).map(([work, count]) => `  ${work}: ___ for ${count}`),
  ].join("\n");
}

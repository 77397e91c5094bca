// Texts, tables and pictures -> blocks of a sheet.
import type { CautionText, Fact, Markup, Picture, Table } from "../leaf.ts";
import { escapeText } from "../prose.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";

export type FigureBlock = Extract<SheetBlock, { kind: "figure" }>;

export const plain = (text: string): Markup => ({ html: escapeText(text) });

/** A paragraph; empty where there is no text. */
export const words = (text: string | undefined, small = false): SheetBlock[] =>
  text === undefined || text === ""
    ? []
    : [{ kind: "text", markup: { html: `<p>${escapeText(text)}</p>` }, ...(small ? { small } : {}) }];

export const markups = (all: readonly Markup[], small = false): SheetBlock[] =>
  all.map((markup) => ({ kind: "text", markup, ...(small ? { small } : {}) }));

export const heading = (text: string, level: 3 | 4 = 3): SheetBlock => ({ kind: "heading", text, level });

export const factsOf = (facts: readonly Fact[]): SheetBlock[] => (facts.length === 0 ? [] : [{ kind: "facts", facts }]);

/** Left out where it has no row. */
export const tableOf = (table: Table | undefined, ticks = false): SheetBlock[] =>
  table === undefined || table.rows.length === 0 ? [] : [{ kind: "table", table, ...(ticks ? { ticks } : {}) }];

export const listOf = (texts: readonly string[], mark: "dot" | "number" | "tick" = "dot"): SheetBlock[] =>
  texts.length === 0 ? [] : [{ kind: "list", items: texts.map(plain), mark }];

export const cautionsOf = (cautions: readonly CautionText[], sources = true): SheetBlock[] =>
  cautions.length === 0 ? [] : [{ kind: "cautions", cautions, sources }];

export const figure = (picture: Picture, name: string, share = 1): FigureBlock => ({
  kind: "figure",
  picture,
  name,
  share,
});

/** Side by side, so many in a row. */
export function rowsOf(figures: readonly FigureBlock[], each: number): SheetBlock[] {
  const rows: SheetBlock[] = [];
  for (let i = 0; i < figures.length; i += each) rows.push({ kind: "row", figures: figures.slice(i, i + each) });
  return rows;
}

export const together = (blocks: readonly SheetBlock[]): SheetBlock[] =>
  blocks.length === 0 ? [] : [{ kind: "together", blocks }];

/** A sheet, or none where it would have nothing on it. */
export const sheetOf = (id: string, title: string, tab: string, blocks: readonly SheetBlock[]): PaperSheet[] =>
  blocks.length === 0 ? [] : [{ id, title, tab, blocks }];

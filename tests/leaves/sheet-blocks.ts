// A set of sheets -> its blocks of one kind, for tests that ask for what is told and not where it stands.
import type { Fact, Table } from "../../src/leaves/leaf.ts";
import type { SheetBlock, SheetSet, SheetStep } from "../../src/leaves/sheet-set.ts";

type Kind = SheetBlock["kind"];

const inside = (block: SheetBlock): SheetBlock[] => {
  if (block.kind === "together") return [block, ...block.blocks.flatMap(inside)];
  return block.kind === "row" ? [block, ...block.figures] : [block];
};

/** All blocks of a sheet, those that are kept together one by one; without an id those of all sheets. */
export const blocksOf = (set: SheetSet, id?: string): SheetBlock[] =>
  set.sheets.filter((sheet) => id === undefined || sheet.id === id).flatMap(({ blocks }) => blocks.flatMap(inside));

export const ofKind = <K extends Kind>(blocks: readonly SheetBlock[], kind: K): Extract<SheetBlock, { kind: K }>[] =>
  blocks.filter((block): block is Extract<SheetBlock, { kind: K }> => block.kind === kind);

export const tablesOn = (set: SheetSet, id?: string): Table[] =>
  ofKind(blocksOf(set, id), "table").map(({ table }) => table);

export function tableOn(set: SheetSet, id: string, caption: string): Table {
  const found = tablesOn(set, id).find((table) => table.caption.startsWith(caption));
  if (!found) throw new Error(`no table "${caption}" on ${id}`);
  return found;
}

export const factsOn = (set: SheetSet, id?: string): Fact[] =>
  ofKind(blocksOf(set, id), "facts").flatMap(({ facts }) => facts);

export const factOn = (set: SheetSet, id: string, name: string): string | undefined =>
  factsOn(set, id).find((fact) => fact.name.startsWith(name))?.value;

export const stepsOn = (set: SheetSet): SheetStep[] => ofKind(blocksOf(set, "steps"), "step").map(({ step }) => step);

export const listsOn = (set: SheetSet, id: string): string[] =>
  ofKind(blocksOf(set, id), "list").flatMap(({ items }) => items.map(({ html }) => html));

export const noticesOn = (set: SheetSet, id?: string) => ofKind(blocksOf(set, id), "notice");

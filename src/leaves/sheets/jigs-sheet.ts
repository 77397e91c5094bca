// A form's gaps and lengths -> the jigs to make before the first step: spacer blocks, stops, a square to lay against.

import { formatDegrees, isSlanted } from "../../drawing/end-angle.ts";
import { differentPanels, spacedRows } from "../../drawing/panel-space.ts";
import type { Item, Piece } from "../../item/item.ts";
import { inches, type Length, most } from "../../units/length.ts";
import { setFractions } from "../edition.ts";
import type { Table } from "../leaf.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { sheetOf, tableOf, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export function jigsSheet({ item, edition }: SheetSource): readonly PaperSheet[] {
  const tables = [
    ...tableOf(spacersTable(item, edition.gap), true),
    ...tableOf(stopsTable(item, edition.bare), true),
    ...tableOf(fencesTable(item, edition.bare), true),
  ];
  return tables.length === 0 ? [] : sheetOf("jigs", "Jigs and stops", "Cut", [...tables, ...words(advice, true)]);
}

const advice =
  "Cut a stop's first piece, measure it, then cut the rest. Write the size on every block; keep it with these sheets.";

/** Two of each: one for either end of what they part. */
function spacersTable(item: Item, gap: (length: Length) => string): Table {
  const inPanels = differentPanels(item).flatMap((panel) => spacedRows(item, panel));
  const loose = item.gaps.filter((one) => one.panelKind === undefined && inches(one.gap) > 0);
  const rows = [...inPanels, ...loose].map((one) => [
    "2",
    gap(one.gap),
    `between ${one.group.replaceAll("-", " ")}${one.atEnds ? ", also at the ends" : ""}`,
    one.panelKind ?? "standing up",
  ]);
  const once = rows.filter((row, i) => rows.findIndex((other) => other.join("|") === row.join("|")) === i);
  return { caption: "Spacer blocks", heads: ["Make", "Thick", "Goes", "Used for"], rows: once };
}

const angleWords = ({ ends }: Piece): string => {
  const all = ends.flatMap(({ mitre, bevel }) => [
    ...(isSlanted(mitre) ? [`mitre ${formatDegrees(Math.abs(mitre))}`] : []),
    ...(isSlanted(bevel) ? [`bevel ${formatDegrees(Math.abs(bevel))}`] : []),
  ]);
  return all.length === 0 ? "square" : [...new Set(all)].join(", ");
};

/** From blade to stop along the edge at the fence: the longer one, or either where the ends are parallel. */
const stopOf = ({ edges }: Piece): Length => most(...edges);

/** One stop for each length; pieces of one length are cut against the same. */
function stopsTable({ pieces }: Item, bare: (length: Length) => string): Table {
  const cut = pieces.filter(({ blanks }) => blanks === undefined);
  const lengths = [...new Set(cut.map((piece) => `${bare(stopOf(piece))}|${angleWords(piece)}`))];
  return {
    caption: "Stops at the crosscut saw, along the longer edge where the edges differ, in inches",
    heads: ["Stop", "Ends", "Pieces", "Cuts against it"],
    rows: lengths.map((key) => {
      const own = cut.filter((piece) => `${bare(stopOf(piece))}|${angleWords(piece)}` === key);
      const [length = "", angles = ""] = key.split("|");
      return [
        length,
        angles,
        own.map(({ mark }) => mark).join(", "),
        String(own.reduce((sum, { count }) => sum + count, 0)),
      ];
    }),
  };
}

/** The fence of the table saw: one setting for each width. */
function fencesTable({ pieces }: Item, bare: (length: Length) => string): Table {
  const ripped = pieces.filter((piece) => piece.ripped);
  const widths = [...new Set(ripped.map(({ width }) => bare(width)))];
  return {
    caption: "Fence of the table saw, in inches",
    heads: ["Fence", "Pieces", "Of"],
    rows: widths.map((width) => {
      const own = ripped.filter((piece) => bare(piece.width) === width);
      return [
        width,
        own.map(({ mark }) => mark).join(", "),
        [...new Set(own.map(({ board }) => setFractions(board.name)))].join(", "),
      ];
    }),
  };
}

// Pieces cut to an outline -> their edges as tables of measures, so that no page at full size is needed to draw them.
import { boardFrame } from "../../drawing/board-frame.ts";
import { outlineOffsets } from "../../drawing/outline-offsets.ts";
import type { Item, Piece } from "../../item/item.ts";
import type { BinderEdition } from "../edition.ts";
import type { Table } from "../leaf.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { sheetOf, tableOf, words } from "../sheets/blocks.ts";

/** So that a table stands on one page. */
const mostRows = 37;

export function curvesSheet(item: Item, edition: BinderEdition): readonly PaperSheet[] {
  const tables = item.pieces.flatMap((piece) => curveTable(item, piece, edition));
  if (tables.length === 0) return [];
  return sheetOf("curves", "Curves by measure", "Cut", [
    ...words(
      "For whoever can't print at full size. Draw a line along the lower edge of the blank, mark it off as the left column says, square up at each mark, set off the heights, and bend a thin strip of wood through the points. Where there are two stretches, the wood between them is sawn out.",
    ),
    ...tables.flatMap((table) => tableOf(table)),
  ]);
}

function curveTable(item: Item, piece: Piece, { bare }: BinderEdition): Table[] {
  const member = item.members.find(({ id }) => id === piece.members[0]);
  if (!member || piece.outline === undefined) return [];
  const offsets = outlineOffsets(member, boardFrame(member), mostRows);
  const most = Math.max(0, ...offsets.map(({ wood }) => wood.length));
  if (most === 0) return [];
  const stretches = Array.from({ length: most }, (_, i) =>
    most === 1 ? "Wood from … to" : `Stretch ${i + 1}, from … to`,
  );
  return [
    {
      caption: `Piece ${piece.mark}, ${piece.name}: blank ${bare(piece.length)} × ${bare(piece.width)}, good side up, measured from its left end and up from its lower edge`,
      heads: ["Along", ...stretches],
      rows: offsets.map(({ at, wood }) => [
        bare(at),
        ...stretches.map((_, i) => {
          const stretch = wood[i];
          if (!stretch) return "";
          const [low, high] = stretch.map(bare);
          return low === high ? `${low}` : `${low} … ${high}`;
        }),
      ]),
    },
  ];
}

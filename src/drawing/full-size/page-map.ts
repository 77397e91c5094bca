// The tiles of one pattern and the pages they lie on -> a small map: how the pages join, this page's own tiles ruled through.
import type { Mark, Paper } from "../drawing.ts";
import { closedChain, rectangle, templateType } from "./template.ts";

export type MapTile = { readonly column: number; readonly row: number; readonly page: number };

const cell = 9;
const cellHeight = 6;

export const mapWidth = (columns: number): number => columns * cell;
export const mapHeight = (rows: number): number => rows * cellHeight;

/** Every cell carries its page's number, counted from 1; a part without lines has no page and no number. */
export function pageMap(tiles: readonly MapTile[], page: number, [left, top]: Paper): Mark[] {
  const corner = (tile: MapTile): Paper => [left + tile.column * cell, top + tile.row * cellHeight];
  const here = tiles.filter((tile) => tile.page === page);
  const inner = 0.8;
  return [
    {
      kind: "lines",
      line: "dimension",
      chains: [
        ...tiles.map((tile) => closedChain(rectangle(...corner(tile), cell, cellHeight))),
        ...here.map((tile) => {
          const [u, v] = corner(tile);
          return closedChain(rectangle(u + inner, v + inner, cell - 2 * inner, cellHeight - 2 * inner));
        }),
      ],
    },
    ...tiles.map((tile): Mark => {
      const [u, v] = corner(tile);
      return {
        kind: "text",
        at: [u + cell / 2, v + cellHeight / 2 + 1.1],
        text: String(tile.page + 1),
        size: templateType,
        anchor: "middle",
        strong: tile.page === page,
      };
    }),
  ];
}

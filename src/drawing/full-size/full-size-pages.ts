// Patterns and the room of a paper -> pages at true size: tiles with their names, check bars and a map on each.
import type { Drawing, Mark } from "../drawing.ts";
import { textWidth, wrapText } from "../text-width.ts";
import { barsHeight, checkBars, fourInches } from "./check-bars.ts";
import { packPages } from "./pack-pages.ts";
import { mapHeight, mapWidth, pageMap } from "./page-map.ts";
import { movedMarks } from "./placed-marks.ts";
import { type Template, templateType } from "./template.ts";
import { type Room, type Tile, tilesOf } from "./tiles.ts";

/** For the name over each tile, and for what stands at the foot of each page, mm. */
const nameHeight = 5;
const footHeight = 26;
const gap = 5;

const proof = "Print at 100 %, never fitted to the page; measure both bars first.";

export type FullSizeDrawing = { readonly drawing: Drawing; readonly tiles: readonly Tile[] };

/** `area` is what a page leaves free. Every page is a drawing of just that size. */
export function fullSizePages(
  item: { readonly slug: string; readonly title: string },
  templates: readonly Template[],
  area: Room,
  paper: string,
): readonly FullSizeDrawing[] {
  const room: Room = { width: area.width, height: area.height - footHeight - nameHeight };
  const packed = layOut(templates, room, { width: area.width, height: area.height - footHeight });
  const count = pagesIn(packed);
  const places = packed.map(({ of: { tile }, page }) => ({ ...tile, page }));
  return Array.from({ length: count }, (_, page): FullSizeDrawing => {
    const here = packed.filter((one) => one.page === page);
    const names = [...new Set(here.map(({ of: { tile } }) => tile.template.title))];
    return {
      tiles: here.map(({ of: { tile } }) => tile),
      drawing: {
        id: `${item.slug}-full-size-${paper}-${page + 1}`,
        title: `${item.title}: full size, page ${page + 1} of ${count}`,
        description: `At true size: ${names.join("; ")}. At its foot two bars, 4 inches and 100 millimetres long, prove the print.`,
        width: area.width,
        height: area.height,
        scale: 25.4,
        pen: 0.35,
        marks: [
          ...here.flatMap(({ of: { tile }, left, top }): Mark[] => [
            name(nameOf(tile), left, top),
            ...movedMarks(tile.marks, [left, top + nameHeight]),
          ]),
          ...foot(places, page, count, area),
        ],
      },
    };
  });
}

const pagesIn = (packed: readonly { readonly page: number }[]): number =>
  Math.max(0, ...packed.map(({ page }) => page + 1));

/** Patterns lie in the way that takes fewer tiles, or all upright, or all turned: whichever takes the fewest pages. */
function layOut(templates: readonly Template[], room: Room, page: Room) {
  const ways = (["either", "upright", "turned"] as const).map((way) => {
    const tiles = templates.flatMap((template) => tilesOf(template, room, way));
    const named = tiles.map((tile) => ({
      tile,
      width: Math.max(tile.window.width, Math.min(page.width, textWidth(nameOf(tile), templateType, true))),
      height: tile.window.height + nameHeight,
    }));
    return packPages(named, page, gap);
  });
  return ways.reduce((fewest, way) => (pagesIn(way) < pagesIn(fewest) ? way : fewest));
}

const nameOf = ({ template, columns, rows, column, row }: Tile): string =>
  columns * rows === 1
    ? template.title
    : `${template.title}: ${columns > 1 ? `column ${column + 1}` : ""}${columns > 1 && rows > 1 ? ", " : ""}${rows > 1 ? `row ${row + 1}` : ""}`;

const name = (text: string, left: number, top: number): Mark => ({
  kind: "text",
  at: [left, top + nameHeight - 1.5],
  text,
  size: templateType,
  anchor: "start",
  strong: true,
});

type Placed = Tile & { readonly page: number };

function foot(tiles: readonly Placed[], page: number, count: number, area: Room): Mark[] {
  const top = area.height - footHeight + 4;
  const words = wrapText(proof, templateType, fourInches + 16);
  const tiled = [
    ...new Set(tiles.filter((one) => one.page === page && one.columns * one.rows > 1).map(({ template }) => template)),
  ];
  const lines = words.map(
    (text, i): Mark => ({
      kind: "text",
      at: [0, top + barsHeight + 5 + i * 4],
      text,
      size: templateType,
      anchor: "start",
    }),
  );
  const number: Mark = {
    kind: "text",
    at: [area.width, area.height - 1],
    text: `full size ${page + 1} of ${count}`,
    size: templateType,
    anchor: "end",
    strong: true,
  };
  return [...checkBars([0, top]), ...lines, number, ...maps(tiles, tiled, page, { ...area, top })];
}

/** As many maps as find room beside the bars; the others stand on their patterns' other pages. */
function maps(
  tiles: readonly Placed[],
  tiled: readonly Template[],
  page: number,
  { width, top }: Room & { readonly top: number },
): Mark[] {
  const marks: Mark[] = [];
  let left = fourInches + 22;
  for (const template of tiled) {
    const own = tiles.filter((tile) => tile.template === template);
    const { columns, rows } = own[0] as Placed;
    if (left + mapWidth(columns) > width || mapHeight(rows) > footHeight - 9) continue;
    marks.push(...pageMap(own, page, [left, top]));
    left += mapWidth(columns) + 4;
  }
  return marks;
}

// Worked-out items -> the contact sheet: every drawing of every recipe in all its sizes, to be looked over; changed ones before and after.
import { drawBoard } from "../drawing/board-layout.ts";
import { drawCoatedView } from "../drawing/coated-view.ts";
import type { Drawing } from "../drawing/drawing.ts";
import { drawExploded } from "../drawing/exploded-view.ts";
import { drawMeasuredView } from "../drawing/measured-view.ts";
import { drawPanel } from "../drawing/panel-drawing.ts";
import { differentPanels } from "../drawing/panel-space.ts";
import { drawPiece } from "../drawing/piece-drawing.ts";
import { binderSheet, phoneSheet, storeSheet } from "../drawing/sheet.ts";
import { hasPicture } from "../drawing/step-extras.ts";
import { drawStep } from "../drawing/step-picture.ts";
import { sawCutsOf } from "../findings/saw-cuts.ts";
import { yardList } from "../findings/yard-list.ts";
import type { Item } from "../item/item.ts";
import type { Shop } from "../yard/yard.ts";
import { binderEdition } from "./edition.ts";
import type { Link, Markup, Picture } from "./leaf.ts";
import { buildSheetPath, indexPath } from "./paths.ts";
import { pictureOf } from "./picture.ts";

export type DrawingsSheet = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  /** Kept drawings that came out otherwise; none in a binder. */
  readonly changed: readonly { readonly name: string; readonly before: Markup; readonly after: Markup }[];
  readonly items: readonly ItemDrawings[];
};

export type ItemDrawings = { readonly link: Link; readonly count: string; readonly pictures: readonly Picture[] };

/** A kept drawing's file name and its texts: as it was when it was looked at, and as it is now. */
export type ChangedDrawing = { readonly name: string; readonly before: string; readonly after: string };

function drawingsOf([item, ...others]: readonly [Item, ...Item[]], shop: Shop): readonly Drawing[] {
  const { bare } = binderEdition(shop.division);
  const flat = [binderSheet, phoneSheet].flatMap((sheet) => [
    drawExploded(item, sheet),
    ...differentPanels(item).map((panel) => drawPanel(item, panel, shop.division, sheet)),
    ...item.pieces.map((piece) => drawPiece(item, piece, shop.division, sheet)),
  ]);
  const steps = item.sections.flatMap((section) =>
    section.steps.filter((step) => hasPicture(item, step)).map((step) => drawStep(item, step)),
  );
  return [
    ...flat,
    ...yardList(item, shop.kerf).plan.flatMap((board) =>
      [binderSheet, phoneSheet].map((sheet) => drawBoard(item.slug, board, sawCutsOf(board, shop.kerf), bare, sheet)),
    ),
    ...steps,
    ...[storeSheet, phoneSheet].map((sheet) => drawMeasuredView(item, shop.division, sheet)),
    ...[item, ...others].map((variant) => drawCoatedView(variant)),
  ];
}

/** One recipe's part of the sheet, from its variants, the standard one first. */
export function itemDrawings(variants: readonly [Item, ...Item[]], shop: Shop): ItemDrawings {
  const [{ slug, title }] = variants;
  const drawings = drawingsOf(variants, shop);
  return {
    link: { path: buildSheetPath(slug), text: title },
    count: `${drawings.length} drawings`,
    pictures: drawings.map((drawing) => {
      const picture = pictureOf(drawing);
      return { ...picture, caption: `${picture.caption} (${drawing.id})` };
    }),
  };
}

/** Both stand on one page, so each takes names of its own. */
const renamed = (svg: string, id: string, more: string): Markup => ({
  html: svg
    .replaceAll(`"${id}"`, `"${id}${more}"`)
    .replaceAll(`${id}-t`, `${id}${more}-t`)
    .replaceAll(`${id}-d`, `${id}${more}-d`),
});

export function drawingsSheetLeaf(
  items: readonly ItemDrawings[],
  changed: readonly ChangedDrawing[],
  shop: Shop,
): DrawingsSheet {
  return {
    title: "All drawings",
    description: `Every drawing of ${shop.name}, to be looked over.`,
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    changed: changed.map(({ name, before, after }) => ({
      name,
      before: renamed(before, name, "-before"),
      after: renamed(after, name, "-after"),
    })),
    items,
  };
}

// One form of a recipe, worked out -> its sheets: all of them for the shop's binder, or those a stranger builds from.
import type { Pricing } from "../../findings/pricing.ts";
import type { Form } from "../../item/variants/forms.ts";
import type { Shop } from "../../yard/yard.ts";
import type { PaperSheet, SheetSet } from "../sheet-set.ts";
import { coverSheet } from "./cover-sheet.ts";
import { cutSheet } from "./cut-sheet.ts";
import { finishSheets } from "./finish-sheets.ts";
import { fullSizeSheet } from "./full-size-sheet.ts";
import { jigsSheet } from "./jigs-sheet.ts";
import { cordsSheet, panelSheets } from "./panel-sheets.ts";
import { pieceDrawings } from "./piece-drawings.ts";
import { kitSheet, piecesSheet } from "./pieces-sheet.ts";
import { beforeSaleSheet, placeSheet } from "./place-sheet.ts";
import { priceSheets } from "./price-sheets.ts";
import { recordSheet } from "./record-sheet.ts";
import { type SheetSource, sheetSource } from "./sheet-source.ts";
import { stepSheets } from "./step-sheets.ts";
import { stickersSheet } from "./stickers-sheet.ts";
import { variantsSheet } from "./variants-sheet.ts";
import { yardListSheet } from "./yard-list-sheet.ts";

/** In the order of the binder: what it is, what to buy, what to cut, how it goes together, what it costs, what was done. */
const kinds: readonly ((source: SheetSource) => readonly PaperSheet[])[] = [
  coverSheet,
  variantsSheet,
  yardListSheet,
  piecesSheet,
  cutSheet,
  jigsSheet,
  pieceDrawings,
  panelSheets,
  cordsSheet,
  kitSheet,
  fullSizeSheet,
  stepSheets,
  finishSheets,
  placeSheet,
  beforeSaleSheet,
  priceSheets,
  recordSheet,
  stickersSheet,
];

/** The binder's sheets of one form. `pricings` are those of all variants; without them nothing is told of hours and prices. */
export const sheetSetOf = (
  form: Form,
  shop: Shop,
  forms: readonly Form[] = [],
  pricings: readonly Pricing[] = [],
): SheetSet => setOf(sheetSource(form, shop, forms, pricings, "shop"));

/** The same sheets for a stranger who builds from them: no price, hours, record, bar to selling, note or method of the shop. */
export const plainSheetSetOf = (form: Form, shop: Shop, forms: readonly Form[] = []): SheetSet =>
  setOf(sheetSource(form, shop, forms, [], "stranger"));

function setOf(source: SheetSource): SheetSet {
  const { item, shop, title, forms } = source;
  return {
    slug: item.slug,
    title: item.title,
    variant: forms.length > 1 ? item.variant.formName : "",
    ...revisionOf(item),
    shopName: shop.name,
    foot: footOf(shop),
    sheets: named(
      title,
      kinds.flatMap((kind) => kind(source)),
    ),
  };
}

/** The last of its revisions by its number in the log and its day; a recipe that keeps no log has neither. */
function revisionOf({ revisions }: SheetSource["item"]): Pick<SheetSet, "revision" | "date"> {
  const last = revisions.at(-1);
  return last === undefined ? { revision: "", date: "" } : { revision: `Revision ${revisions.length}`, date: last.day };
}

const footOf = ({ contact, address }: Shop): string =>
  address === undefined ? `Questions: ${contact}` : `Questions: ${contact}. The latest revision: ${address}`;

function named(title: string, [first, ...others]: readonly PaperSheet[]): SheetSet["sheets"] {
  if (!first) throw new Error(`no sheet of ${title}`);
  return [first, ...others];
}

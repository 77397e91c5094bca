// One recipe worked out -> its plan pack: sheets for both papers, patterns, pieces, licence and a word on all of them.
import { isForSale } from "../findings/sale.ts";
import { formsOf } from "../item/variants/forms.ts";
import { fullSizeOf, patternFiles } from "../leaves/full-size.ts";
import { type BoardEffect, boardEffects } from "../leaves/packs/board-effects.ts";
import { type PackEntry, packEntry } from "../leaves/packs/pack-index.ts";
import { type PackForm, packForm } from "../leaves/packs/pack-item.ts";
import { packSheetSet } from "../leaves/packs/pack-sheets.ts";
import type { PackShop } from "../leaves/packs/pack-shop.ts";
import { licenceText, type PackedFile, readmeText } from "../leaves/packs/pack-texts.ts";
import { piecesCsv } from "../leaves/packs/pieces-csv.ts";
import { fullSizeAreas } from "../paper/paper.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Yard } from "../yard/yard.ts";
import { signFont } from "./letter-font.ts";
import type { Variants } from "./shelf-pages.tsx";
import type { Asset, Pack } from "./site.ts";

export type PackPart = { readonly pack: Pack; readonly entry: PackEntry };

/** Whether a plan of it is sold: its recipe says so, and nothing bars the thing itself from being sold. */
export const hasPack = ({ hasPlan }: Recipe, [standard]: Variants): boolean => hasPlan && isForSale(standard);

export function packOf(recipe: Recipe, variants: Variants, yard: Yard, shop: PackShop): PackPart {
  const forms = formsOf(variants);
  const clean = forms.map((form) => packForm(form, shop.division, yard.glues)) as [PackForm, ...PackForm[]];
  const files = clean.flatMap((form, i) => {
    const [own] = forms[i] ?? forms[0];
    return filesOf(form, clean, shop, effectsOf(boardEffects(recipe, yard, own, shop.division), own.pieces, form));
  });
  const [[item]] = clean;
  const { slug } = item;
  const named = [...files, licence].map(({ path, says }) => ({ path, says }));
  const all = [
    ...files.map(({ asset }) => asset),
    { path: licence.path, text: licenceText(item, shop) },
    { path: "README.txt", text: readmeText(item, shop, named) },
  ];
  return {
    pack: { path: `packs/${slug}`, files: all },
    entry: packEntry(
      item,
      shop,
      `${slug}/${slug}-plan.zip`,
      named.map(({ path, says }) => ({ path: `${slug}/${path}`, says })),
    ),
  };
}

const licence: PackedFile = { path: "LICENCE.txt", says: "what you may do with the plan" };

type File = PackedFile & { readonly asset: Asset };

/** Of one form: the edition is in the names, so that others can stand beside it. */
function filesOf(form: PackForm, forms: readonly PackForm[], shop: PackShop, effects: readonly BoardEffect[]): File[] {
  const [item] = form;
  const stem = [item.slug, item.variant.form].filter((part) => part !== "").join("-");
  const edition = shop.division.unit === "in" ? "inch" : "metric";
  const font = signFont();
  const set = {
    ...packSheetSet(form, shop, forms, effects),
    fullSize: fullSizeOf(item, shop.division, font, fullSizeAreas),
  };
  const of = forms.length > 1 ? `, ${item.variant.formName}` : "";
  const printed = (["letter", "a4"] as const).map((size): File => {
    const path = `${stem}-${edition}-${size}.pdf`;
    const says = `the plan on ${size === "a4" ? "A4" : "Letter"} paper${of}`;
    return { path, says, asset: { path, printed: set, paper: { size, type: "normal" } } };
  });
  const csv = `${stem}-${edition}-pieces.csv`;
  const patterns = patternFiles(item, shop.division, font).map(({ name, svg }): File => {
    const path = `patterns/${item.variant.form === "" ? "" : `${item.variant.form}/`}${name}`;
    return { path, says: `a pattern at full size${of}`, asset: { path, text: svg } };
  });
  return [
    ...printed,
    { path: csv, says: `the pieces as a table${of}`, asset: { path: csv, text: piecesCsv(item, shop.division) } },
    ...patterns,
  ];
}

/** The shop's names of its boards exchanged for those that the plan has. */
function effectsOf(
  effects: readonly BoardEffect[],
  own: Variants[0]["pieces"],
  [{ pieces }]: PackForm,
): readonly BoardEffect[] {
  const names = new Map(own.map((piece, i) => [piece.board.name, pieces[i]?.board.name ?? ""]));
  return effects.map((effect) => ({ ...effect, board: names.get(effect.board) ?? "" }));
}

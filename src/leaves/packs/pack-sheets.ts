// A plan's items -> its set of sheets: those of the binder that a stranger builds from, and what only a stranger needs.
import { toolsOf } from "../../findings/tools.ts";
import { binderEdition } from "../edition.ts";
import type { PaperSheet, SheetSet } from "../sheet-set.ts";
import { plainSheetSetOf } from "../sheets/sheet-set-of.ts";
import { beforeSheet } from "./before-sheet.ts";
import type { BoardEffect } from "./board-effects.ts";
import { buySheet } from "./buy-sheet.ts";
import { curvesSheet } from "./curves-sheet.ts";
import type { PackForm } from "./pack-item.ts";
import type { PackShop } from "./pack-shop.ts";
import { latestLine, termsSheet } from "./terms-sheet.ts";

/** Short ones follow on, to spare paper. */
const sharing: ReadonlySet<string> = new Set(["variants", "piece-drawings", "curves", "full-size", "jigs", "place"]);

/** `forms` are all of the recipe, cleaned alike; `effects` are those of the form's boards, under their generic names. */
export function packSheetSet(
  form: PackForm,
  shop: PackShop,
  forms: readonly PackForm[],
  effects: readonly BoardEffect[],
): SheetSet {
  const [item] = form;
  const edition = binderEdition(shop.division);
  const plain = plainSheetSetOf(form, shop, forms);
  const [cover, ...others] = plain.sheets;
  const drawn = others.filter(({ id }) => id === "piece-drawings");
  const sheets = others.flatMap((sheet): readonly PaperSheet[] => {
    if (sheet.id === "yard") return buySheet(form, shop, edition);
    if (sheet.id === "piece-drawings") return [];
    return sheet.id === "pieces" ? [sheet, ...drawn, ...curvesSheet(item, edition)] : [sheet];
  });
  const all = [
    withNeeds(cover, form),
    ...beforeSheet({ item, shop, edition, effects }),
    ...sheets,
    ...termsSheet(item, shop),
  ];
  const [first = cover, ...rest] = all.map((sheet) => (sharing.has(sheet.id) ? { ...sheet, sharesPage: true } : sheet));
  return {
    ...plain,
    foot: latestLine(item, shop),
    sheets: [first, ...rest],
  };
}

/** Whoever has a hammer, a drill and a saw has these; all else is named on the first page. */
const common = [
  "tape and pencil",
  "square",
  "safety glasses",
  "ear muffs",
  "dust mask",
  "clamps",
  "hammer",
  "push stick",
  "file",
  "brushes or rags",
  "drill with lead-hole bits",
  "sanding block or sander",
  "sandpaper, 80 to 180 grit",
  "water to rinse with",
  "goggles",
  "waterproof gloves",
  "lidded metal can for rags",
];

const needsOf = (form: PackForm): string[] => toolsOf(form).names.filter((tool) => !common.includes(tool));

/** Right below the words on what it is. */
function withNeeds(cover: PaperSheet, form: PackForm): PaperSheet {
  const needs = needsOf(form);
  const first = cover.blocks.findIndex(({ kind }) => kind !== "text");
  const says =
    needs.length === 0
      ? "hand tools and a drill; every tool is listed below."
      : `a ${needs.join(", a ")}; every other tool is listed below.`;
  const notice = { kind: "notice", title: "Needs", says } as const;
  return { ...cover, blocks: [...cover.blocks.slice(0, first), notice, ...cover.blocks.slice(first)] };
}

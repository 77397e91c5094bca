// All variants of one item, worked out -> the build sheet of the binder, every figure already text. Private.
import { drawExploded } from "../drawing/exploded-view.ts";
import { drawPiece } from "../drawing/piece-drawing.ts";
import { binderSheet, phoneSheet, type Sheet } from "../drawing/sheet.ts";
import { cautionsFor, cautionsForUse } from "../findings/cautions.ts";
import { cuttingOperations, placingOperations } from "../findings/operations.ts";
import { isPriced } from "../findings/pricing.ts";
import { toolsOf } from "../findings/tools.ts";
import { useOf } from "../findings/use.ts";
import { yardList } from "../findings/yard-list.ts";
import type { Item } from "../item/item.ts";
import { type Form, formFacts } from "../item/variants/forms.ts";
import type { Shop } from "../yard/yard.ts";
import { type CordSheet, cordSheet } from "./cord-sheet.ts";
import { type CuttingSheet, cuttingSheet } from "./cutting-sheet.ts";
import { binderEdition, setFractions, threeSizes } from "./edition.ts";
import { finishName } from "./finish-name.ts";
import { type FinishSheet, finishSheet } from "./finish-sheet.ts";
import { formsForBinder } from "./forms-table.ts";
import type { CautionText, Fact, Link, Markup, Notice, Picture, Table } from "./leaf.ts";
import { looseGaps, type PanelSheet, panelsSheet } from "./panels-sheet.ts";
import { formSheetPath, indexPath, priceSheetPath } from "./paths.ts";
import { pictureOf, pictureOn } from "./picture.ts";
import { piecesTable } from "./pieces-table.ts";
import { proseBlock } from "./prose.ts";
import { readingNotes } from "./reading-notes.ts";
import { barredText, type SaleSheet, saleSheet } from "./sale-sheet.ts";
import { type StepSection, stepsSheet } from "./steps-sheet.ts";
import { unfinishedNotice } from "./unfinished.ts";
import { carriedBy, useFacts } from "./use-facts.ts";
import { classNames } from "./uses.ts";
import { type Bought, type YardSheet, yardSheet } from "./yard-sheet.ts";

export type BuildSheet = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly line?: string;
  readonly home: Link;
  /** Where the shop has said what its time and its selling are worth. */
  readonly prices?: Link;
  readonly facts: readonly Fact[];
  /** Where there are other choices than finishes: what differs, and the sheets of the others. */
  readonly forms?: { readonly table: Table; readonly sheets: readonly Link[] };
  readonly intro: readonly Markup[];
  readonly unfinished?: Notice;
  readonly useCautions: readonly CautionText[];
  readonly exploded: Picture;
  readonly pieces: Table;
  readonly tools: readonly string[];
  readonly yard: YardSheet;
  readonly cutting: CuttingSheet;
  readonly cuttingCautions: readonly CautionText[];
  readonly pieceDrawings: readonly Picture[];
  readonly panels: readonly PanelSheet[];
  readonly cords?: CordSheet;
  /** Gaps to keep while it is stood up. */
  readonly gaps: readonly Fact[];
  /** How numbers, full and scant are to be read. */
  readonly reading: readonly string[];
  readonly sections: readonly StepSection[];
  readonly finish: FinishSheet;
  readonly placingCautions: readonly CautionText[];
  readonly notes?: string;
  /** What keeps it out of the store, on the cover; what has to be shown before it is sold. */
  readonly barred?: string;
  readonly sale?: SaleSheet;
};

/** The exploded view shares its page with the title and the facts: as wide as any, but lower. */
const coverSheet: Sheet = { ...binderSheet, height: 100 };

/** The sheet of one form; `forms` are all there are, where there is more than one. */
export function buildSheetLeaf(form: Form, shop: Shop, forms: readonly Form[] = []): BuildSheet {
  const variants = forms.length > 1 ? byFinish(form) : form;
  const [item] = variants;
  const title = forms.length > 1 ? `${item.title}, ${item.variant.formName}` : item.title;
  const edition = binderEdition(shop.division);
  const cords = cordSheet(item, edition);
  const panels = panelsSheet(item, shop.division, edition);
  const gaps = looseGaps(item, edition.gap);
  const sections = stepsSheet(item, edition);
  const sale = saleSheet(item);
  const barred = barredText(item);
  const bought = variants.map((one): Bought => ({ item: one, list: yardList(one, shop.kerf) })) as [
    Bought,
    ...Bought[],
  ];
  const bare = variants.filter((one) => one.variant.unfinished).map((one) => one.variant.name);
  return {
    title,
    description: `Build sheet of the ${title.toLowerCase()}: pieces, yard list, cutting, panels, steps and finish.`,
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    ...(item.line === undefined ? {} : { line: item.line }),
    home: { path: indexPath, text: "Binder" },
    ...(isPriced(shop) ? { prices: { path: priceSheetPath(item.slug), text: "Prices" } } : {}),
    facts: factsOf(variants, shop),
    ...(forms.length > 1 ? { forms: formsPart(item, forms, shop) } : {}),
    intro: item.intro.map((prose) => proseBlock(prose, edition.figure)),
    ...(bare.length === 0
      ? {}
      : { unfinished: { ...unfinishedNotice, title: `${unfinishedNotice.title}: ${bare.join(", ")}` } }),
    useCautions: cautionsForUse(useOf(item), edition.weight),
    exploded: pictureOn(coverSheet, (sheet) => drawExploded(item, sheet)),
    pieces: piecesTable(item, edition.bare),
    tools: toolTexts(variants, edition.length),
    yard: yardSheet(bought, edition.bare),
    cutting: cuttingSheet(item.slug, bought[0].list.plan, shop.kerf, edition),
    cuttingCautions: cautionsFor(cuttingOperations(item)),
    pieceDrawings: item.pieces.map((piece) => pictureOf(drawPiece(item, piece, shop.division, phoneSheet))),
    panels,
    ...(cords ? { cords } : {}),
    gaps,
    reading: readingNotes(item, JSON.stringify([panels.map(({ facts }) => facts), gaps, sections]), shop.division),
    sections,
    finish: finishSheet(variants, edition),
    placingCautions: cautionsFor(placingOperations(item)),
    ...(item.notes === undefined ? {} : { notes: item.notes }),
    ...(barred === undefined ? {} : { barred }),
    ...(sale ? { sale } : {}),
  };
}

/** Called by their finish alone, as the sheet's title says the rest. */
function byFinish([first, ...others]: Form): Form {
  const named = (item: Item): Item => ({ ...item, variant: { ...item.variant, name: finishName(item.variant) } });
  return [named(first), ...others.map(named)];
}

function formsPart(item: Item, forms: readonly Form[], shop: Shop): NonNullable<BuildSheet["forms"]> {
  const facts = forms.map(formFacts);
  const sizes = ({ width, depth, height }: Item["overall"]) => threeSizes([width, depth, height], shop.division);
  return {
    table: formsForBinder(facts, sizes, binderEdition(shop.division).weight),
    sheets: facts
      .filter(({ slug }) => slug !== item.variant.form)
      .map(({ slug, name }) => ({ path: formSheetPath(item.slug, slug), text: name })),
  };
}

function factsOf(variants: Form, shop: Shop): Fact[] {
  const [item] = variants;
  const { width, depth, height } = item.overall;
  const edition = binderEdition(shop.division);
  return [
    { name: "Width × depth × height", value: threeSizes([width, depth, height], shop.division) },
    { name: "Weight", value: `${edition.weight(item.weight)}, of it wood ${edition.weight(item.woodWeight)}` },
    { name: "Pieces", value: `${item.members.length}, of ${item.pieces.length} kinds` },
    { name: "Variants", value: variants.map((one) => one.variant.name).join(", ") },
    ...useFacts({ ...item, loads: carriedBy(item) }, edition.weight),
    ...(item.soldAs ? [{ name: "To build", value: `${item.soldAs.count} of what this sheet shows` }] : []),
    { name: "Use", value: classNames(useOf(item)) || "not stated" },
  ];
}

function toolTexts(variants: readonly [Item, ...Item[]], length: (inches: number) => string): string[] {
  const tools = toolsOf(variants);
  return [
    ...tools.names,
    ...tools.drivers.map((driver) => `driver, ${driver}`),
    ...tools.bores.map((across) => setFractions(`bit ${length(across)}`)),
  ];
}

// One form of an item, worked out -> its page of the binder: the set of its sheets, and where else to look. Private.
import { isPriced, type Pricing } from "../findings/pricing.ts";
import { type Form, formFacts } from "../item/variants/forms.ts";
import type { Paper } from "../yard/papers.ts";
import type { Shop } from "../yard/yard.ts";
import type { Link, Markup } from "./leaf.ts";
import { pageStyle } from "./page-style.ts";
import { boardsPath, formSheetPath, indexPath, priceSheetPath, printedPath } from "./paths.ts";
import { linesSince, withChanges } from "./revised/since-printed.ts";
import { type Summary, summaryOf } from "./revised/summary.ts";
import type { SheetSet } from "./sheet-set.ts";
import { sheetSetOf } from "./sheets/sheet-set-of.ts";

export type BuildSheet = {
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly notice?: string;
  readonly line?: string;
  readonly home: Link;
  readonly set: SheetSet;
  /** What stands on each of its printed pages. */
  readonly style: Markup;
  /** What moved since the sheets were printed last. */
  readonly changes?: readonly string[];
  /** The sheets of the other forms; the prices, where the shop has said what its time and its selling are worth. */
  readonly others: readonly Link[];
  readonly prices?: Link;
  /** Other lengths and other boards, weighed against what is planned. */
  readonly boards: Link;
  /** The same sheets as PDFs, ready for the printer. */
  readonly printed: readonly { readonly link: Link; readonly paper: Paper }[];
};

const paperNames = { letter: "Letter", a4: "A4" } as const;
const paperName = ({ size, type }: Paper): string => `${paperNames[size]}${type === "large" ? ", large type" : ""}`;

/** The sheets of one form; `forms` are all there are, where there is more than one, `pricings` those of all variants. */
export function buildSheetLeaf(
  form: Form,
  shop: Shop,
  forms: readonly Form[] = [],
  pricings: readonly Pricing[] = [],
  before?: Summary,
): BuildSheet {
  const [item] = form;
  const plain = sheetSetOf(form, shop, forms, pricings);
  // Only the standard form was kept when it was printed.
  const printed = forms.length > 1 && item.variant.form !== forms[0]?.[0].variant.form ? undefined : before;
  const changes = printed && linesSince(printed, summaryOf(item, plain, pricings), shop.division);
  const set = printed && changes ? withChanges(plain, printed, changes) : plain;
  const title = set.variant === "" ? item.title : `${item.title}, ${set.variant}`;
  return {
    path: formSheetPath(item.slug, item.variant.form),
    title,
    description: `Build sheet of the ${title.toLowerCase()}: pieces, yard list, cutting, panels, steps and finish.`,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    ...(item.line === undefined ? {} : { line: item.line }),
    home: { path: indexPath, text: "Binder" },
    set,
    style: pageStyle(set),
    ...(changes ? { changes } : {}),
    others: forms.length > 1 ? otherForms(item.slug, item.variant.form, forms) : [],
    printed: shop.papers.map((paper) => ({
      link: { path: printedPath(item.slug, item.variant.form, paper), text: `PDF, ${paperName(paper)}` },
      paper,
    })),
    boards: { path: boardsPath(item.slug), text: "Other boards" },
    ...(isPriced(shop) ? { prices: { path: priceSheetPath(item.slug), text: "Prices" } } : {}),
  };
}

const otherForms = (slug: string, own: string, forms: readonly Form[]): Link[] =>
  forms
    .map(formFacts)
    .filter((form) => form.slug !== own)
    .map((form) => ({ path: formSheetPath(slug, form.slug), text: form.name }));

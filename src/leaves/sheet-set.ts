// The contract of all paper: a set of sheets made of a few kinds of block, which the browser's page and the PDF set alike.
import type { CautionText, Fact, Markup, Picture, Table } from "./leaf.ts";

/** A set that belongs together: the binder's sheets of one form of a recipe, or a plan pack. */
export type SheetSet = {
  readonly slug: string;
  readonly title: string;
  /** The form or variant; "" where there is only one. */
  readonly variant: string;
  /** "Revision 3" and its date as the recipe tells them; the clock is never asked. */
  readonly revision: string;
  readonly date: string;
  readonly shopName: string;
  /** Where to ask, and where the latest revision is told: in the foot of every sheet. */
  readonly foot: string;
  readonly sheets: readonly [PaperSheet, ...PaperSheet[]];
  /** Pages at true size, tiled for each paper; they stand behind the sheets and are never fitted to the page. */
  readonly fullSize?: Readonly<Record<PaperSize, readonly FullSizePage[]>>;
};

export type PaperSize = "letter" | "a4";

/** One page at true size. Width and height are exact millimetres, at most those of `fullSizeArea` in src/paper/paper.ts. */
export type FullSizePage = {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly picture: Picture;
};

/** One sheet, complete on its own: the set's title, variant, revision and date and "page x of y" are set on each of its pages. */
export type PaperSheet = {
  /** Unique in the set, kebab case: the page's anchor and the bookmark's target. */
  readonly id: string;
  readonly title: string;
  /** Which tab of the binder it stands behind: "Build", "Cut", "Price" … */
  readonly tab: string;
  /** It may begin on the page that the sheet before it ends on; else it starts one of its own. */
  readonly sharesPage?: boolean;
  readonly blocks: readonly SheetBlock[];
};

export type SheetBlock =
  | { readonly kind: "heading"; readonly text: string; readonly level: 3 | 4 }
  | { readonly kind: "text"; readonly markup: Markup; readonly small?: boolean }
  | { readonly kind: "notice"; readonly title: string; readonly says: string }
  | { readonly kind: "facts"; readonly facts: readonly Fact[] }
  /** `ticks` adds an empty box before each row, to be ticked on paper. */
  | { readonly kind: "table"; readonly table: Table; readonly ticks?: boolean }
  | { readonly kind: "list"; readonly items: readonly Markup[]; readonly mark: "dot" | "number" | "tick" }
  | { readonly kind: "cautions"; readonly cautions: readonly CautionText[]; readonly sources?: boolean }
  /** `share` of the text's width on paper, 1 where it fills it; figures in one `row` stand side by side while there is room. */
  | { readonly kind: "figure"; readonly picture: Picture; readonly name: string; readonly share?: number }
  | { readonly kind: "row"; readonly figures: readonly Extract<SheetBlock, { kind: "figure" }>[] }
  /** A step is never parted: its caution before its words, its picture beside them. */
  | { readonly kind: "step"; readonly step: SheetStep }
  /** Lines to be filled in by hand: a name and as many rules. */
  | { readonly kind: "rules"; readonly name: string; readonly count: number }
  /** Words to be copied as they stand into a file. */
  | { readonly kind: "paste"; readonly text: string }
  /** Blocks that may not be parted by a page's end. */
  | { readonly kind: "together"; readonly blocks: readonly SheetBlock[] };

export type SheetStep = {
  readonly number: string;
  readonly cautions: readonly CautionText[];
  readonly text: Markup;
  /** "2 × A", "24 × pocket screw No. 6 x 1", where they go. */
  readonly pieces: readonly string[];
  readonly fasteners: readonly string[];
  readonly places: readonly string[];
  /** The maker's own words of care. */
  readonly words: readonly Markup[];
  readonly picture?: Picture;
  /** The figure that proves the step, each with its tape drawn where it is set off. */
  readonly checks: readonly Markup[];
  readonly tape?: Picture;
};

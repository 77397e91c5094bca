// A set of sheets and a paper -> what the page setter needs: everything as data, every picture as a file. Pure.
import type { CautionText, Picture, Table } from "../leaves/leaf.ts";
import type { FullSizePage, PaperSheet, SheetBlock, SheetSet, SheetStep } from "../leaves/sheet-set.ts";
import type { Paper } from "../yard/papers.ts";
import { type MarkupPart, markupParts, markupRuns, type Run } from "./markup-runs.ts";
import { fullSizeArea, fullSizeMargins, margins, paperSizes, textHeight, textWidth } from "./paper.ts";
import { svgFacts } from "./svg-facts.ts";

/** `data` is JSON for layouts/paper/sheets.typ; `pictures` are SVG texts by the path the data calls them by. */
export type PrintJob = {
  readonly data: string;
  readonly pictures: ReadonlyMap<string, string>;
  /** Whether any page is at full size, and the print dialogue is to leave its size alone. */
  readonly isFullSize: boolean;
};

/** A picture as it is set, millimetres. */
type SetFigure = {
  readonly path: string;
  readonly alt: string;
  readonly caption: string;
  readonly width: number;
};

type SetBlock =
  | { readonly kind: "heading"; readonly text: string; readonly level: number }
  | { readonly kind: "text"; readonly parts: readonly MarkupPart[]; readonly small: boolean }
  | { readonly kind: "notice"; readonly title: string; readonly says: string }
  | { readonly kind: "facts"; readonly facts: readonly { readonly name: string; readonly value: string }[] }
  | { readonly kind: "table"; readonly table: Table; readonly ticks: boolean }
  | { readonly kind: "list"; readonly items: readonly (readonly Run[])[]; readonly mark: "dot" | "number" | "tick" }
  | { readonly kind: "cautions"; readonly cautions: readonly SetCaution[] }
  /** Figures side by side, as many as the page is wide for. */
  | { readonly kind: "row"; readonly figures: readonly SetFigure[] }
  | { readonly kind: "step"; readonly step: SetStep }
  | { readonly kind: "rules"; readonly name: string; readonly count: number }
  | { readonly kind: "paste"; readonly lines: readonly string[] }
  | { readonly kind: "together"; readonly blocks: readonly SetBlock[] };

type SetCaution = { readonly signal: string; readonly says: readonly Run[]; readonly source: string };

type SetStep = {
  readonly number: string;
  readonly cautions: readonly SetCaution[];
  readonly text: readonly Run[];
  readonly needs: readonly { readonly name: string; readonly says: string }[];
  readonly checks: readonly (readonly Run[])[];
  readonly picture?: SetFigure;
  readonly tape?: SetFigure;
};

/** How far a drawing may be enlarged to fill its place: in normal type only as far as the text is wide. */
const mostEnlarged = { normal: 1.06, large: 1.4 } as const;
/** Beside a step's words, and between figures in a row, mm. */
const stepPicture = 80;
const gutter = 5;
/** A step's number, and the two gaps beside its words. */
const besideWords = 17;
/** For a heading, a caption and the rest that shares a page with a tall drawing. */
const besideTall = 32;

export function printJob(set: SheetSet, paper: Paper): PrintJob {
  const pictures = new Map<string, string>();
  const known = new Map<string, string>();
  const pathOf = (svg: string): string => {
    const path = known.get(svg) ?? `/pictures/${known.size + 1}.svg`;
    known.set(svg, path);
    pictures.set(path, svg);
    return path;
  };
  const setter = new Setter(paper, pathOf);
  const fullSize = (set.fullSize?.[paper.size] ?? []).map((page) => fullSizePage(page, paper, pathOf));
  const data = {
    title: set.title,
    variant: set.variant,
    revision: set.revision,
    date: set.date,
    shopName: set.shopName,
    foot: set.foot,
    large: paper.type === "large",
    page: paperSizes[paper.size],
    margins,
    fullSizeMargins,
    gutter,
    stepPicture,
    sheets: set.sheets.map((sheet) => setter.sheet(sheet)),
    fullSize,
  };
  return { data: JSON.stringify(data), pictures, isFullSize: fullSize.length > 0 };
}

function fullSizePage(page: FullSizePage, { size }: Paper, pathOf: (svg: string) => string) {
  const area = fullSizeArea(size);
  if (page.width > area.width + 1e-6 || page.height > area.height + 1e-6)
    throw new Error(`"${page.title}" is ${page.width} x ${page.height} mm, more than a page of ${size} holds`);
  const svg = page.picture.svg.html;
  return { title: page.title, path: pathOf(svg), alt: svgFacts(svg).alt, width: page.width, height: page.height };
}

/** Widths and captions of one paper. */
class Setter {
  readonly #paper: Paper;
  readonly #pathOf: (svg: string) => string;

  constructor(paper: Paper, pathOf: (svg: string) => string) {
    this.#paper = paper;
    this.#pathOf = pathOf;
  }

  sheet({ id, title, tab, sharesPage = false, blocks }: PaperSheet) {
    return { id, title, tab, sharesPage, blocks: levelled(blocks.flatMap((block) => this.#block(block))) };
  }

  #block(block: SheetBlock): SetBlock[] {
    switch (block.kind) {
      case "heading":
        return [{ ...block, level: block.level - 1 }];
      case "text":
        return [{ kind: "text", parts: markupParts(block.markup), small: block.small ?? false }];
      case "notice":
      case "facts":
      case "rules":
        return [block];
      case "table":
        return [{ kind: "table", table: block.table, ticks: block.ticks ?? false }];
      case "list":
        return [{ kind: "list", items: block.items.map(markupRuns), mark: block.mark }];
      case "cautions":
        return [{ kind: "cautions", cautions: block.cautions.map((one) => cautionOf(one, block.sources ?? false)) }];
      case "figure":
        return [{ kind: "row", figures: [this.#figure(block)] }];
      case "row":
        return this.#rows(block.figures);
      case "step":
        return [{ kind: "step", step: this.#step(block.step) }];
      case "paste":
        return [{ kind: "paste", lines: block.text.replace(/\n$/, "").split("\n").map(keepIndent) }];
      case "together":
        return [{ kind: "together", blocks: block.blocks.flatMap((inner) => this.#block(inner)) }];
    }
  }

  /** Never smaller than drawn where the page is wide enough, since its type is set for that size. */
  #figure({ picture, share }: Extract<SheetBlock, { kind: "figure" }>): SetFigure {
    const { size, type } = this.#paper;
    const { width, height } = svgFacts(picture.svg.html);
    const room = textWidth(size);
    const wanted = share === undefined ? room : Math.max(width, share * room);
    const most = Math.min(room, width * mostEnlarged[type], ((textHeight(size) - besideTall) * width) / height);
    return this.#placed(picture, Math.min(wanted, most));
  }

  #placed(picture: Picture, width: number): SetFigure {
    const svg = picture.svg.html;
    return {
      path: this.#pathOf(svg),
      alt: svgFacts(svg).alt,
      caption: picture.caption,
      width: Math.round(width * 100) / 100,
    };
  }

  /** Among the words of a step, as wide as they are at most. */
  #tape(picture: Picture): SetFigure {
    const room = textWidth(this.#paper.size) - besideWords - stepPicture;
    return this.#placed(withoutCaption(picture), Math.min(svgFacts(picture.svg.html).width, room));
  }

  /** As many side by side as stand there unshrunk, each taking its own width. */
  #rows(figures: readonly Extract<SheetBlock, { kind: "figure" }>[]): SetBlock[] {
    const rows: SetFigure[][] = [];
    let left = 0;
    for (const figure of figures) {
      const { width } = svgFacts(figure.picture.svg.html);
      const set = this.#placed(named(figure), Math.min(width, textWidth(this.#paper.size)));
      const row = rows.at(-1);
      if (row && left >= gutter + set.width) {
        row.push(set);
        left -= gutter + set.width;
      } else {
        rows.push([set]);
        left = textWidth(this.#paper.size) - set.width;
      }
    }
    return rows.map((row) => ({ kind: "row", figures: row }));
  }

  #step(step: SheetStep): SetStep {
    const needs = [
      ...(step.pieces.length === 0 ? [] : [{ name: "Pieces", says: step.pieces.join(", ") }]),
      ...(step.fasteners.length === 0 ? [] : [{ name: "Fasteners", says: step.fasteners.join(", ") }]),
      ...step.places.map((says) => ({ name: "", says })),
    ];
    return {
      number: step.number,
      cautions: [
        ...step.words.map((word): SetCaution => ({ signal: "CAUTION", says: strong(markupRuns(word)), source: "" })),
        ...step.cautions.map((one) => cautionOf(one, false)),
      ],
      text: markupRuns(step.text),
      needs,
      checks: step.checks.map(markupRuns),
      ...(step.picture ? { picture: this.#placed(withoutCaption(step.picture), stepPicture) } : {}),
      ...(step.tape ? { tape: this.#tape(step.tape) } : {}),
    };
  }
}

/** A sticker says itself what it is. */
const named = ({ picture, name }: Extract<SheetBlock, { kind: "figure" }>): Picture =>
  name === "sticker" ? withoutCaption(picture) : picture;

/** What stands beside its words needs no line below that says which it is; its text for those who can't see it does. */
const withoutCaption = (picture: Picture): Picture => ({ ...picture, caption: "" });

const plain = (text: string): Run => ({ text, looks: [] });
const strong = (runs: readonly Run[]): Run[] =>
  runs.map((run) => (run === "break" ? run : { ...run, looks: [...run.looks, "strong"] }));

function cautionOf({ signal, hazard, consequence, avoidance, source }: CautionText, sources: boolean): SetCaution {
  const danger = [hazard, consequence].filter((text) => text !== "").join(" ");
  return { signal, says: [plain(`${danger} `), ...strong([plain(avoidance)])], source: sources ? source : "" };
}

/** Blanks at the start of a line stay when it is set. */
const keepIndent = (line: string): string => line.replace(/^ +/, (blanks) => "\u00a0".repeat(blanks.length));

/** A heading is at most one deeper than the one before it, below the sheet's own. */
function levelled(blocks: readonly SetBlock[]): SetBlock[] {
  let last = 1;
  const walk = (all: readonly SetBlock[]): SetBlock[] =>
    all.map((block) => {
      if (block.kind === "together") return { ...block, blocks: walk(block.blocks) };
      if (block.kind !== "heading") return block;
      last = Math.min(block.level, last + 1);
      return { ...block, level: last };
    });
  return walk(blocks);
}

// A set of every kind of block there is, and sets of demo items, for tests of paper.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { drawExploded } from "../../src/drawing/exploded-view.ts";
import type { Form } from "../../src/item/variants/forms.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { pictureOf } from "../../src/leaves/picture.ts";
import type { SheetSet } from "../../src/leaves/sheet-set.ts";
import { stepsSheet } from "../../src/leaves/steps-sheet.ts";
import { readShop } from "../../src/yard/read-shop.ts";
import type { Shop } from "../../src/yard/yard.ts";
import { corral, sixteenths } from "../drawing/demo.ts";

const file = join(import.meta.dirname, "../../content/shop/shop.yaml");
export const demoShop = (): Shop => {
  const { shop } = readShop(file, readFileSync(file, "utf8"));
  if (!shop) throw new Error("the demo's shop can't be read");
  return shop;
};

const caution = {
  signal: "WARNING",
  hazard: "The blade cuts.",
  consequence: "It maims.",
  avoidance: "Guard on.",
  source: "29 CFR 1910.213",
} as const;

/** The corral's own picture and second step among invented words. */
export function everyBlock(): SheetSet {
  const exploded = pictureOf(drawExploded(corral));
  const figure = { kind: "figure", picture: exploded, name: "exploded", share: 1 } as const;
  const step = stepsSheet(corral, binderEdition(sixteenths))[0]?.steps[1];
  if (!step) throw new Error("the corral has no second step");
  return {
    slug: "corral",
    title: "Every block",
    variant: "tall",
    revision: "Revision 3",
    date: "2026-10-05",
    shopName: "Quillow Yard",
    foot: "Questions: ask@shop.example",
    sheets: [
      { id: "cover", title: "Cover", tab: "Build", blocks: [figure] },
      {
        id: "all",
        title: "All",
        tab: "Build",
        blocks: [
          { kind: "heading", text: "Deep heading", level: 4 },
          {
            kind: "text",
            markup: { html: "<p>Plain <strong>strong</strong> 17\u00a09⁄16 in.</p><ul><li>one</li></ul>" },
          },
          { kind: "text", markup: { html: "<p>Small.</p>" }, small: true },
          { kind: "notice", title: "Mind", says: "what is said." },
          { kind: "facts", facts: [{ name: "Weight", value: "12 lb" }] },
          { kind: "table", table: { caption: "Pieces", heads: ["Mark", "Number"], rows: [["A", "12"]] }, ticks: true },
          { kind: "list", items: [{ html: "a tick" }], mark: "tick" },
          { kind: "list", items: [{ html: "a number" }], mark: "number" },
          { kind: "cautions", cautions: [caution], sources: true },
          { kind: "step", step },
          { kind: "rules", name: "Boards", count: 2 },
          { kind: "paste", text: "timed:\n  rip: 4" },
          { kind: "together", blocks: [{ kind: "heading", text: "Kept", level: 3 }] },
        ],
      },
      { id: "row", title: "Row", tab: "Build", sharesPage: true, blocks: [{ kind: "row", figures: [figure, figure] }] },
    ],
  };
}

export const formOf = (items: readonly Form[0][]): Form => items as unknown as Form;

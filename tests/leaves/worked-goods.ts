// Corral and rack worked out from the demo's recipes, with prices, finishes and prose of their own for the tests; private
// fields carry words to look for.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Figure, Item, Variant, WorkedProse } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { exact } from "../../src/units/length.ts";
import { usualPapers } from "../../src/yard/papers.ts";
import { readYard } from "../../src/yard/read-yard.ts";
import type { Board, Finish, Fitting, Shop, Yard } from "../../src/yard/yard.ts";
import { fenceBoard, inch } from "../findings/timber.ts";

const content = join(import.meta.dirname, "../../content");
const { yard } = readYard(
  readdirSync(join(content, "yard")).map((file) => ({ file, text: readFileSync(join(content, "yard", file), "utf8") })),
);

export const demoRecipe = (slug: string): Recipe => {
  const { recipe } = readRecipe(slug, readFileSync(join(content, "recipes", `${slug}.md`), "utf8"));
  if (!recipe) throw new Error(`${slug} can't be read`);
  return recipe;
};

export function demoYard(): Yard {
  if (!yard) throw new Error("the demo's yard can't be read");
  return yard;
}

function demoItem(slug: string): Item {
  const { item } = workOut(demoRecipe(slug), demoYard());
  if (!item) throw new Error(`${slug} can't be worked out`);
  return item;
}

const corralBoards = demoItem("hose-and-pot-corral");
const rackBoards = demoItem("seedling-hardening-rack");

const at = { file: "content/recipes/goods.md", line: 1, column: 1 };

/** Every private text field of the fixtures holds one of these, and no public one does. */
export const privateWords = ["Xnotes", "Xmethod", "Xshopnote", "Xitemnote", "Xfastener", "Xfitting"] as const;

export const shop: Shop = {
  name: "Quillow Yard",
  tagline: "Goods for kitchen gardeners",
  notice: "Quillow Yard is invented, with all its goods and figures.",
  place: "Quillow",
  contact: "yard@example.com",
  division: { unit: "in", per: 16 },
  kerf: inch("1/8"),
  ordering: "Write to us; made within three weeks, for pickup.",
  careNote: "Tighten the screws once a year.",
  papers: usualPapers,
  wage: exact(22),
  notes: "Xnotes",
};

const finish = (name: string, words: string, colour: string, oilyRags: boolean): Finish => ({
  name,
  kind: oilyRags ? "oil" : "paint",
  words,
  colour,
  clear: oilyRags ? 0.7 : 0,
  coverage: 200,
  tin: { size: "1 qt", gallons: exact(1, 4), price: exact(18), priced: "2026-02-03" },
  recoatHours: 8,
  cureHours: 72,
  oilyRags,
  method: `Xmethod of ${name}`,
  care: `Wash off with water; ${name} again when it looks dull.`,
  at,
});

export const white = finish("white", "white water-based paint", "#f4f1e8", false);
export const oil = finish("oil", "raw linseed oil", "#c98a4b", true);

export const prose = (markdown: string, figures: readonly Figure[] = []): WorkedProse => ({ markdown, figures, at });

/** The same out of the fence board of the tests, its screws at $9 a hundred. */
const priced = (item: Item, board: Board): Item => ({
  ...item,
  pieces: item.pieces.map((piece) => ({ ...piece, board })),
  members: item.members.map((member) => ({ ...member, board })),
  joins: item.joins.map((join) => ({
    ...join,
    driven: join.driven.map((driven) => ({
      ...driven,
      fastener: {
        ...driven.fastener,
        name: `${driven.fastener.name} Xfastener`,
        pack: { count: 100, price: exact(9), priced: "2025-01-01" },
      },
    })),
  })),
});

const variantOf = (item: Item, slug: string, finishes: Variant["finish"]): Item => ({
  ...item,
  members: item.members.map((member) => ({
    ...member,
    coats: finishes
      .filter(({ members }) => members.includes(member.id))
      .map(({ finish, coats }) => ({ finish, coats })),
  })),
  variant: {
    slug,
    name: slug,
    standard: slug === "plain",
    values: [{ choice: "finish", value: slug }],
    form: "",
    formName: "",
    unfinished: finishes.length === 0,
    bare: item.members.map(({ id }) => id).filter((id) => !finishes.some(({ members }) => members.includes(id))),
    finish: finishes,
  },
});

const coatsOf = (what: Finish, members: readonly string[]): Variant["finish"][number] => ({
  finish: what,
  coats: 2,
  members,
  area: 288 * members.length,
  // 2 sq ft a member, two coats, 200 sq ft to the gallon.
  gallons: (2 * 2 * members.length) / 200,
});

const dressed = (item: Item, own: Partial<Item>): [Item, Item, Item] => {
  const whole: Item = {
    ...priced(item, fenceBoard),
    availability: { kind: "made" },
    ...own,
    variants: ["plain", "white", "oil"].map((slug) => ({ slug, name: slug, form: "" })),
  };
  const all = whole.members.map(({ id }) => id);
  return [
    variantOf(whole, "plain", []),
    variantOf(whole, "white", [coatsOf(white, all.slice(0, 20)), coatsOf(oil, all.slice(20))]),
    variantOf(whole, "oil", [coatsOf(oil, all)]),
  ];
};

const withWords = (item: Item): Item["sections"] =>
  item.sections.map((section, i) => ({
    ...section,
    notes: i === 0 ? [prose("Xshopnote: keep the *long* offcuts.")] : [],
    steps: section.steps.map((step) => ({
      ...step,
      text: prose("Lay the **legs** good side down, ⟦0⟧ over all, and set the rails.", [
        { kind: "length", value: item.overall.width },
      ]),
      checks:
        step.number % 2 === 1
          ? [prose("corner to corner reads ⟦0⟧ both ways.", [{ kind: "length", value: Math.hypot(30, 26) }])]
          : [],
      cautions:
        step.number === 2
          ? [prose("drill every hole first; an edge of ⟦0⟧ splits.", [{ kind: "length", value: exact(5, 8) }])]
          : [],
    })),
  }));

export const corral: readonly [Item, Item, Item] = dressed(corralBoards, {
  classes: ["S", "X"],
  line: "Garden line",
  purpose: "A rack for a hose, six pots and the things that roll away.",
  notes: "Xitemnote: sells best in May.",
  weight: 21.4,
  woodWeight: 20.6,
  intro: [
    prose("⟦0⟧ wide, ⟦1⟧ deep; it weighs ⟦2⟧.", [
      { kind: "length", value: exact(30) },
      { kind: "length", value: exact(18) },
      { kind: "weight", pounds: 21.4 },
    ]),
  ],
  sections: withWords(corralBoards),
  gaps: [
    { group: "rails", panelKind: "face", axis: "z", gap: exact(103, 40), atEnds: false },
    { group: "slats", axis: "x", gap: exact(183, 160), atEnds: true },
  ],
});

export const anchorKit: Fitting = {
  name: "anchor kit Xfitting",
  words: "anchor kit for a wall",
  weight: 0.2,
  price: exact(6),
  priced: "2026-02-03",
  at,
};

export const rack: readonly [Item, Item, Item] = dressed(rackBoards, {
  classes: ["S", "T", "X"],
  line: "Garden line",
  weight: 38.2,
  woodWeight: 37,
  intro: [prose("Four decks for trays, ⟦0⟧ high.", [{ kind: "length", value: exact(60) }])],
  sections: withWords(rackBoards),
  fittings: [{ id: "anchor", fitting: anchorKit, count: 1, at }],
});

import { describe, expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { careCardLeaf } from "../../src/leaves/care-card.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { finishSheet } from "../../src/leaves/finish-sheet.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { usualBenchHours } from "../../src/yard/bench-hours.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { shop } from "./worked-goods.ts";

/** A lid of fence board on two posts of 2x4; only what `coats` names is coated. */
function item(coats: string, post = "2x4"): Item {
  const text = `---
title: A stool
overall: 20 x fit x fit
pieces:
  lid: fence board
  post: ${post}
stand:
  posts: 2 post, upright, facing left, from bottom to 10, at front, spread left to right
  lid: lid, flat, from left to right, on posts, at front
joins:
  lid to posts: 2 screw No. 8 x 2
finish:
  plain: ${coats}
---
A stool.

## Build it

1. Screw the **lid** to the **posts**.
`;
  const { recipe } = readRecipe("stool.md", text);
  const { item, problems } = workOut(recipe ?? fail(), demoYard());
  if (!item || problems.length > 0) throw new Error(problems.map((p) => p.says).join("\n"));
  return item;
}

function fail(): never {
  throw new Error("the recipe can't be read");
}

const division = { unit: "in", per: 16 } as const;
const leaves = (one: Item) => {
  const goods = storeItem([one], division);
  const [variant] = goods.variants;
  return {
    schedule: finishSheet([one], binderEdition(division), usualBenchHours).schemes[0],
    page: productPageLeaf(goods, storeShop(shop)).finishes[0],
    card: careCardLeaf(goods, variant, storeShop(shop)),
  };
};

describe("a finish that leaves a part bare", () => {
  it("says which pieces on the finish schedule: both posts, A, when the lid alone is oiled", () => {
    const one = item("2 coats oil on lid");
    expect(one.variant.bare).toEqual(["posts/1", "posts/2"]);
    expect(leaves(one).schedule?.bare).toBe(`Left bare: all ${one.pieces.find((p) => p.name === "posts")?.mark}.`);
  });

  it("tells the buyer the wood where none of that wood is coated, and no name of a line", () => {
    const one = item("2 coats oil on lid");
    const words = one.members.find(({ id }) => id === "posts/1")?.board.words;
    const { page, card } = leaves(one);
    expect(page?.coats.at(-1)).toBe(`left bare: ${words}`);
    expect(card.facts).toContainEqual({ name: "Left bare", value: words });
    expect(JSON.stringify([page?.coats, card.facts])).not.toMatch(/posts/);
  });

  it("says only that it is a part where the same wood is coated elsewhere: one post of two", () => {
    const { page, card, schedule } = leaves(item("2 coats oil on lid and posts 1"));
    expect(page?.coats.at(-1)).toBe("left bare: part of it");
    expect(card.facts).toContainEqual({ name: "Left bare", value: "part of it" });
    expect(schedule?.bare).toMatch(/^Left bare: 1 of 2 [A-Z] \(post [12]\)\.$/);
  });

  it("is silent where all is coated, and where nothing is", () => {
    for (const coats of ["2 coats oil on all", "none"]) {
      const { page, card, schedule } = leaves(item(coats));
      expect(schedule?.bare).toBeUndefined();
      expect(page?.coats.join()).not.toMatch(/bare/);
      expect(card.facts.map(({ name }) => name)).not.toContain("Left bare");
    }
  });
});

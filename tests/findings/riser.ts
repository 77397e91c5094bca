// A stall riser of three boards in round figures, and a shop that prices it, for sums that are worked by hand.

import type { PricedShop } from "../../src/findings/pricing.ts";
import { isPriced } from "../../src/findings/pricing.ts";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { readShop } from "../../src/yard/read-shop.ts";
import { readYard } from "../../src/yard/read-yard.ts";

export const riserYard = (lengths = "96: 9.60"): string => `priced: 2026-10-03
boards:
  plank:
    species: eastern white pine
    size: 3/4 x 5 1/2
    moisture: 12
    words: pine
    lengths:
      ${lengths}
fasteners:
  screw No. 8 x 2:
    material: steel
    driver: star
    pack: 100 for 10.00
    priced: 2026-09-01
finishes:
  oil:
    kind: oil
    words: oil
    colour: b9814f
    clear: 0.8
    coverage: 300
    tin: 1 quart
    price: 24.00
    recoat: 24
    cure: 72
    oily-rags: yes
    method: wipe
    care: wipe
`;

export const riserRecipe = `---
title: Stall riser
overall: 24 x 5 1/2 x fit
pieces:
  plank: plank
stand:
  legs: 2 plank, upright, facing left, from bottom to 8, spread left to right, at front
  shelf: 1 plank, flat, from left to right, on legs, at front
joins:
  shelf to legs: 3 screw No. 8 x 2
finish:
  oiled: 2 coats oil on all
  plain: none
choices:
  finish: oiled, plain
---
A riser.

## Build it

1. Stand the **legs** up and screw the **shelf** down on them.
`;

export const shopText = `name: Test shop
tagline: Plain goods
place: Lower Test
contact: hello@shop.example
ordering: two weeks
care-note: keep it dry
division: 1/16
kerf: 1/8
wage: 30.00
notes: none
minutes:
  fetch: 20
  rip: 1.5, 4 to set up
  plane: 2, 5 to set up
  crosscut: 1, 2 to set up
  hole: 0.75, 3 to set up
  shape: 3, 6 to set up
  outline: 18, 12 to set up
  glue: 2, 5 to set up
  sand: 2
  screw: .5, 5 to set up
  fit: 4, 3 to set up
  tie: 6, 2 to set up
  letter: 9, 5 to set up
  coat: 1, 6 to set up
selling:
  batch: 1
  overhead: 10
  profit: 25
  profit-as: margin
  sales-tax: 5
  abrasives: 0.10
  glue: 0.08
  sundries: 0.50
  packing:
    material: 3.00
    minutes: 6
    weight: 2 lb
    room: 1
  postage:
    divisor: 139
    base: 5.00
    pound: 0.50
    most: 100 lb
  local:
    fee: 0
    fixed: 0.00
    sale: 0.00
    tax: out
    step: 1.00
  stall:
    fee: 3 %
    fixed: 0.10
    sale: 4.00
    tax: in
    step: 0.50
  posted:
    fee: 6.5
    fixed: 0.45
    sale: 0.20
    tax: out
    step: 1.00
`;

export function pricedShop(text: string = shopText): PricedShop {
  const { shop, problems } = readShop("shop.yaml", text);
  if (!shop || !isPriced(shop)) throw new Error(problems.map(({ says }) => says).join(" "));
  return shop;
}

/** The riser with these lines more in its front-matter. */
export const riserWith = (lines: string): string => riserRecipe.replace("finish:\n", `${lines}\nfinish:\n`);

/** Of the first variant, oiled, unless another is named. */
export function workItem(recipeText: string, yardText: string = riserYard(), variant?: string): Item {
  const { recipe, problems } = readRecipe("riser.md", recipeText);
  const { yard, problems: yardProblems } = readYard([{ file: "yard.yaml", text: yardText }]);
  const worked = recipe && yard && workOut(recipe, yard, variant);
  const all = [...problems, ...yardProblems, ...(worked?.problems ?? [])];
  if (!worked?.item || all.length > 0) throw new Error(all.map(({ says }) => says).join(" "));
  return worked.item;
}

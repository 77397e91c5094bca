// The demo's recipes with all their variants and its shop, as the site works them out.

import { join } from "node:path";
import type { Item } from "../../src/item/item.ts";
import { readContent } from "../../src/site/content-files.ts";
import { workContent } from "../../src/site/work-content.ts";
import type { Shop } from "../../src/yard/yard.ts";

const { recipes, shop } = workContent(readContent(join(import.meta.dirname, "../../content")).content);
if (!shop) throw new Error("the demo's shop can't be read");
export const demoShop: Shop = shop;

export const demoVariants = (): [string, readonly [Item, ...Item[]]][] =>
  recipes.map(({ file, items: [first, ...others] }) => {
    if (!first) throw new Error(`${file} can't be worked out`);
    return [first.title, [first, ...others]];
  });

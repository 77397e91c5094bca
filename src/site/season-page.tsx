// Prices of all recipes -> the season planner's page, where any of them has a season.
import { SeasonPlannerPage } from "../../layouts/season-planner.tsx";
import { isPriced, type Pricing } from "../findings/pricing.ts";
import { seasonPath } from "../leaves/paths.ts";
import { seasonPlannerLeaf } from "../leaves/season-planner.ts";
import type { Shop } from "../yard/yard.ts";
import { pageHtml } from "./page-html.ts";
import type { Page } from "./site.ts";

export function seasonPages(goods: readonly (readonly Pricing[])[], shop: Shop): readonly Page[] {
  if (!isPriced(shop) || goods.every(([first]) => first?.item.season === undefined)) return [];
  const leaf = seasonPlannerLeaf(goods, shop);
  return [{ path: `binder/${seasonPath}`, html: pageHtml(<SeasonPlannerPage leaf={leaf} root="" />) }];
}

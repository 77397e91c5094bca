// Things with a season, and their hours -> the season planner of the binder: the last day to begin a batch of each. Private.
import { benchMinutes, leadOf, startByOfYear } from "../findings/last-start.ts";
import type { PricedShop, Pricing } from "../findings/pricing.ts";
import type { Season } from "../recipe/recipe.ts";
import { usualBenchHours } from "../yard/bench-hours.ts";
import type { Link, LinkedTable } from "./leaf.ts";
import { indexPath, priceSheetPath } from "./paths.ts";
import { formatMinutes } from "./work-table.ts";

export type SeasonPlanner = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  readonly table: LinkedTable;
  readonly notes: readonly string[];
};

/** Every recipe with a season by its prices, all variants; the variant that takes longest is planned for. By the day of the year to begin. */
export function seasonPlannerLeaf(goods: readonly (readonly Pricing[])[], shop: PricedShop): SeasonPlanner {
  const rows = goods.flatMap((pricings) => {
    const season = pricings[0]?.item.season;
    return season ? [planned(pricings, season, shop)] : [];
  });
  return {
    title: "Season planner",
    description: "The last day to begin a batch of each, so that it is there when it sells.",
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    table: {
      heads: [
        "Batch of",
        "Begin by",
        "Sells from",
        "to",
        "Not after",
        "Made at once",
        "Slowest finish",
        "Work",
        "Days",
      ],
      rows: rows.sort((a, b) => (a.begin < b.begin ? -1 : a.begin > b.begin ? 1 : 0)).map(({ row }) => row),
    },
    notes: [
      "Begin by: then the batch is packed on the first day of its season. Not after: begun later it isn't ready on the last day.",
      "Days are those at the bench at the shop's hours, two days off in every seven, the coats by the clock until the thing may be used, and one day to pack. Common practice, no source: wood that has to come or to dry, and other work, come on top.",
    ],
  };
}

function planned(pricings: readonly Pricing[], { from, to }: Season, shop: PricedShop) {
  const bench = shop.benchHours ?? usualBenchHours;
  const leads = pricings.map(({ item, batchHours }) => ({
    item,
    minutes: batchHours.minutes,
    lead: leadOf(item, benchMinutes(batchHours), bench),
  }));
  const [first, ...others] = leads;
  if (!first) throw new Error("a season of nothing");
  const slowest = others.reduce((a, b) => (b.lead.days > a.lead.days ? b : a), first);
  const { item, lead, minutes } = slowest;
  const begin = startByOfYear(from, lead);
  return {
    begin,
    row: {
      link: { path: priceSheetPath(item.slug), text: item.title },
      cells: [
        begin,
        from,
        to,
        startByOfYear(to, lead),
        String(shop.selling.batch),
        item.variant.name,
        formatMinutes(minutes),
        `${lead.work} + ${lead.finish} + ${lead.packing} = ${lead.days}`,
      ],
    },
  };
}

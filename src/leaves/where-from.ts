// A product page's figures -> where each comes from: what it was worked out from, and whose rule it is.
import type { Fact } from "./leaf.ts";
import type { StoreItem } from "./store-item.ts";

/** `id` is what the figures on the page point at; `to` leads on to where it stands on the page. */
export type Origin = Fact & { readonly id: string; readonly to?: { readonly id: string; readonly text: string } };

export function originsOf(item: StoreItem, cautions: readonly string[]): Origin[] {
  const some = (is: boolean, origin: Origin): Origin[] => (is ? [origin] : []);
  return [
    {
      id: "from-sizes",
      name: "Sizes",
      value:
        "Added up from its boards as they are placed in the drawing; inches and millimetres are each the nearest to that same figure.",
      to: { id: "measured", text: "the measured drawing" },
    },
    {
      id: "from-weight",
      name: "Weight",
      value:
        "The volume of every board by the density of its wood as it is bought, with screws and fittings. Wood differs: reckon with a tenth more or less.",
      to: { id: "wood", text: "the wood" },
    },
    ...some(item.packed !== undefined, {
      id: "from-packed",
      name: "Packed",
      value: item.soldAs
        ? "Its sizes, all of what is sold as one side by side, and padding on every side, up to the next whole inch."
        : "Its sizes and padding on every side, up to the next whole inch.",
      to: { id: "sizes", text: "its sizes" },
    }),
    ...some(item.packed !== undefined, {
      id: "from-fit",
      name: "Door and car",
      value: "What doors and cars usually leave: common practice, no standard. Yours may leave less.",
    }),
    ...some(item.loads.length > 0, {
      id: "from-load",
      name: "What it carries",
      value: "What it is meant to carry, as its maker lays it out; more than that is not promised.",
    }),
    ...some(item.heights.seat !== undefined || item.heights.top !== undefined, {
      id: "from-whom",
      name: "Whom it suits",
      value: "Size marks 1 to 6 of EN 1729-1, chairs and tables for schools, as suppliers' guides print them.",
    }),
    ...some(
      item.offers.some(({ price }) => price !== undefined),
      {
        id: "from-price",
        name: "Prices",
        value:
          "Each is worked out for its own variant, from its boards, its finish and the time they take. The price that counts is the one that we confirm.",
        to: { id: "choices", text: "the prices" },
      },
    ),
    ...some(item.swell !== undefined, {
      id: "from-movement",
      name: "Movement of the wood",
      value:
        "Wood Handbook (FPL-GTR-282), equation 13-1, flat-sawn boards, from 9 % to 14 % moisture, which table 13-1 has for wood outdoors in most of the USA.",
      to: { id: "over-time", text: "what you will see over time" },
    }),
    ...some(cautions.length > 0, { id: "from-cautions", name: "Cautions", value: [...new Set(cautions)].join("; ") }),
  ];
}

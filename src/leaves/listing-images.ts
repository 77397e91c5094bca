// Store item -> the pictures of a listing as drawings, in each size that is asked for: hero, measured, choices, what is included.
import type { Drawing } from "../drawing/drawing.ts";
import { drawAlone, drawSeveral, drawWithList, type PixelSize } from "../drawing/listing-views.ts";
import { setFractions, threeSizes } from "./edition.ts";
import { includedOf } from "./included.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";

export const imageKinds = ["hero", "measured", "choices", "included"] as const;
export type ImageKind = (typeof imageKinds)[number];

export type ListingImage = { readonly kind: ImageKind; readonly size: PixelSize; readonly drawing: Drawing };

/** "hero-2000x2000". */
export const imageName = ({ kind, size }: Pick<ListingImage, "kind" | "size">): string =>
  `${kind}-${size.width}x${size.height}`;

const notPhoto = "A drawing, not a photograph";

export const listingImages = (item: StoreItem, shop: StoreShop, sizes: readonly PixelSize[]): ListingImage[] =>
  sizes.flatMap((size) => imageKinds.map((kind) => ({ kind, size, drawing: imageOf(item, shop, kind, size) })));

export function imageOf(item: StoreItem, shop: StoreShop, kind: ImageKind, size: PixelSize): Drawing {
  const [standard] = item.variants;
  const named = (says: string) => ({
    id: `${item.slug}-${imageName({ kind, size })}`,
    title: `${item.title}: ${says}`,
    description: `${item.title}: ${says}. ${notPhoto}.`,
  });
  switch (kind) {
    case "hero":
      return drawAlone(
        named(`in the finish ${standard.name}`),
        standard.view,
        `${item.title}, ${standard.name}. ${notPhoto}.`,
        size,
      );
    case "measured":
      return drawAlone(
        named("how big it is"),
        size.width > size.height * 1.5 ? item.measuredLow : item.measured,
        `${item.title}${item.soldAs ? `, one of a ${item.soldAs.words}` : ""}. ${notPhoto}.`,
        size,
      );
    case "choices": {
      const several = item.variants.map(({ view, name }) => ({ drawing: view, name }));
      return drawSeveral(named("what you can choose"), several, formLines(item, shop), size);
    }
    case "included":
      return drawWithList(
        named("what you get"),
        standard.view,
        { head: "What you get", items: includedOf(item) },
        size,
      );
  }
}

/** "small: 12 x 12 x 7 1/4 in (305 x 305 x 184 mm)" of each form, where there are several. */
function formLines({ forms }: StoreItem, shop: StoreShop): string[] {
  const inch = shop.division.unit === "in" ? shop.division : ({ unit: "in", per: 16 } as const);
  return forms.map(({ name, overall: { width, depth, height } }) => {
    const sizes = [width, depth, height];
    return `${name}: ${setFractions(threeSizes(sizes, inch))} (${threeSizes(sizes, { unit: "mm" })})`.replaceAll(
      "\u00a0",
      " ",
    );
  });
}

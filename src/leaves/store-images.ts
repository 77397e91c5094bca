// Drawings of a store item -> picture files of the store that stand beside its pages: name, size and words of each.
import type { Drawing } from "../drawing/drawing.ts";
import { lighten } from "../drawing/lighten.ts";
import { formatSvg } from "../drawing/svg.ts";
import { contentHash } from "./content-hash.ts";
import type { Image } from "./leaf.ts";
import type { StoreItem, StorePiece, StoreVariant } from "./store-item.ts";

/** A file of the store by its path, and what is in it. */
export type DrawnFile = { readonly path: string; readonly text: string };

type Drawn = { readonly image: Image; readonly file: DrawnFile };

/** One drawing is formatted once; its page and its file ask for it apart. */
const drawn = new WeakMap<Drawing, Drawn>();

/** CSS pixels for a millimetre of paper. */
const perMm = 96 / 25.4;

function drawnAs(name: string, drawing: Drawing): Drawn {
  const known = drawn.get(drawing);
  if (known) return known;
  // Without its white ground it stands on any page.
  const text = formatSvg(lighten(drawing)).replace(/<rect class="d-ground"[^>]*>(?:<\/rect>)?/, "");
  const path = `drawings/${name}-${contentHash(text)}.svg`;
  const image: Image = {
    path,
    width: String(Math.round(drawing.width * perMm)),
    height: String(Math.round(drawing.height * perMm)),
    alt: `${drawing.title}. ${drawing.description}`,
  };
  const one = { image, file: { path, text } };
  drawn.set(drawing, one);
  return one;
}

const look = ({ slug }: Pick<StoreItem, "slug">, variant: StoreVariant): Drawn =>
  drawnAs(`${slug}-${variant.slug}`, variant.view);

const spare = ({ slug }: Pick<StoreItem, "slug">, { mark, view }: StorePiece): Drawn =>
  drawnAs(`${slug}-piece-${mark.toLowerCase().replaceAll(" ", "-")}`, view);

export const lookImage = (item: Pick<StoreItem, "slug">, variant: StoreVariant): Image => look(item, variant).image;
export const spareImage = (item: Pick<StoreItem, "slug">, piece: StorePiece): Image => spare(item, piece).image;

/** Every file that the pages of this item show. */
export const drawnFiles = (item: StoreItem): readonly DrawnFile[] => [
  ...item.variants.map((variant) => look(item, variant).file),
  ...item.spares.map((piece) => spare(item, piece).file),
];

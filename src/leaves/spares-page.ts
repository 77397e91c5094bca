// Store item -> the page for somebody who has to replace a piece: which one it is, its size and its wood. How it is made isn't told.
import { storeEdition } from "./edition.ts";
import type { Fact, Image, Link } from "./leaf.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { letterTo } from "./order-by-message.ts";
import { indexPath, productPagePath, sparesPath } from "./paths.ts";
import { spareImage } from "./store-images.ts";
import type { StoreItem, StorePiece, StoreShop } from "./store-item.ts";

export type SparesPage = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly pieces: readonly SparePiece[];
  readonly notes: readonly string[];
  readonly product: Link;
  readonly home: Link;
  readonly web?: OnTheWeb;
};

type SparePiece = {
  readonly name: string;
  readonly picture: Image;
  readonly facts: readonly Fact[];
  readonly letter?: string;
  readonly letterText: string;
};

export function sparesPageLeaf(item: StoreItem, shop: StoreShop, feed = false): SparesPage {
  const web = onTheWeb(shop, { path: sparesPath(item.slug), kind: "website", hasFeed: feed });
  const several = item.forms.length > 1;
  return {
    title: `${item.title}: pieces`,
    description: `Which piece of the ${item.title.toLowerCase()} broke: its size and its wood, to ask for another one.`,
    shop,
    pieces: item.spares.map((piece) => spareOf(item, piece, shop)),
    notes: [
      ...(several
        ? [`Sizes are those of ${item.offers[0].form}; of the others, ask us with the lot on your care card.`]
        : []),
      "Look up the lot on your care card and name it: wood and finish are then the same as yours.",
      "What is screwed or glued to carry a load is mended by somebody who knows how; ask us first.",
    ],
    product: { path: productPagePath(item.slug), text: item.title },
    home: { path: indexPath, text: shop.name },
    ...(web ? { web } : {}),
  };
}

function spareOf(item: StoreItem, piece: StorePiece, shop: StoreShop): SparePiece {
  const { length, weight } = storeEdition(shop.division);
  const name = `Piece ${piece.mark}`;
  const letter = letterTo(
    shop,
    `${name} of the ${item.title.toLowerCase()}`,
    [
      `I need ${name.toLowerCase()} of: ${item.title} (${item.slug})`,
      `It is ${[piece.length, piece.width, piece.thickness].map(length).join(" by ")}, of ${piece.words}.`,
      "Lot on the care card:",
      "Finish:",
      "How many: 1",
      "Name:",
      "",
    ].join("\n"),
  );
  return {
    name,
    picture: spareImage(item, piece),
    facts: [
      { name: "In each", value: String(piece.count) },
      { name: "Long", value: length(piece.length) },
      { name: "Wide", value: length(piece.width) },
      { name: "Thick", value: length(piece.thickness) },
      { name: "Wood", value: piece.words },
      { name: "Weight", value: `about ${weight(piece.weight)}` },
      {
        name: "Shape",
        value: piece.shaped ? "worked: it is cut to fit its place, measured over all" : "straight, square ends",
      },
    ],
    ...(letter === undefined ? {} : { letter }),
    letterText: `${name} of the ${item.title.toLowerCase()}`,
  };
}

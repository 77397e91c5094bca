// Photographs of a store item -> pictures for its page: what each shows, in words, and which file a browser may take.
import type { Photo } from "./leaf.ts";
import type { StoreItem, StorePhoto } from "./store-item.ts";

/** In the order of their numbers. */
export const photosOf = (item: Pick<StoreItem, "title" | "photos" | "photoWords">): Photo[] =>
  [...item.photos].sort((a, b) => a.number - b.number).flatMap((photo) => photoOf(item, photo));

function photoOf({ title, photoWords }: Pick<StoreItem, "title" | "photoWords">, photo: StorePhoto): Photo[] {
  const [largest] = [...photo.sizes].sort((a, b) => b.width - a.width);
  if (!largest) return [];
  const words = photoWords.find(({ number }) => number === photo.number)?.words ?? photo.words;
  const files = (kind: "webp" | "jpeg") => photo.sizes.map((size) => ({ path: size[kind], width: String(size.width) }));
  return [
    {
      image: {
        path: largest.jpeg,
        width: String(largest.width),
        height: String(largest.height),
        alt: `${title}: ${words}`,
      },
      caption: words.slice(0, 1).toUpperCase() + words.slice(1),
      sources: [
        { type: "image/webp", files: files("webp") },
        { type: "image/jpeg", files: files("jpeg") },
      ],
    },
  ];
}

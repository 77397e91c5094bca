// Store item -> which photographs to take, and two scripts for staging them. Every figure is the model's; nothing is staged against a caution.
import { inches } from "../units/length.ts";
import { storeEdition } from "./edition.ts";
import type { ProductPage } from "./product-page.ts";
import type { StoreItem } from "./store-item.ts";

export type StagingScript = { readonly title: string; readonly steps: readonly string[] };

const sizes = (item: StoreItem, page: ProductPage) => {
  const { length } = storeEdition(page.shop.division);
  const { width, depth, height } = item.overall;
  return { width: length(width), depth: length(depth), height: length(height), half: length(inches(height) / 2) };
};

const has = (item: StoreItem, letter: StoreItem["classes"][number]): boolean => item.classes.includes(letter);

const carried = (page: ProductPage): string | undefined =>
  page.sizes.find(({ name }) => name === "Meant to carry")?.value;

/** Photographs in the order they are shown. */
export function shotsOf(item: StoreItem, page: ProductPage): string[] {
  const { width, depth, height } = sizes(item, page);
  const [standard, ...others] = page.finishes;
  const load = carried(page);
  return [
    `The whole ${item.title.toLowerCase()}${standard ? `, ${standard.name},` : ""} from the front right and a little above, as it is drawn; nothing cut off.`,
    `Square to the front, a tape along it that reads ${width}, another up its side that reads ${height}.`,
    `Square to its right side, a tape that reads ${depth}.`,
    ...others.map(({ name }) => `The same in the finish ${name}: same place, same light.`),
    `The wood close up, so that its grain and the marks of the tools are seen: ${page.wood.join("; ")}.`,
    ...(standard?.unfinished ? ["The bare surface in side light: it is sold without a finish, and shows it."] : []),
    ...(page.choices ? ["All sizes side by side from one place, the smallest in front."] : []),
    ...(item.sayings.length > 0
      ? ["The words on it close up, square to the camera, with those that are written where nothing else is asked for."]
      : []),
    ...(page.included.length > 0 ? [`All that comes with it, laid out: ${page.included.join("; ")}.`] : []),
    ...(load === undefined ? [] : [`In use, with what it carries: ${load}.`]),
    ...(has(item, "T") ? ["How it is fastened to the wall, close up."] : []),
    ...(has(item, "H") ? ["What it hangs from, close up."] : []),
    "From behind or below, as the buyer will find it.",
    "Packed as it leaves the shop.",
  ];
}

/** One where it is used, one that shows its size. */
export function stagingOf(item: StoreItem, page: ProductPage): readonly [StagingScript, StagingScript] {
  const { width, depth, height, half } = sizes(item, page);
  const load = carried(page);
  const weight = page.sizes.find(({ name }) => name === "Weight")?.value;
  const place = has(item, "H")
    ? "Hang it as its buyer has to: from solid wood or masonry, by a fixing made for the weight."
    : has(item, "T")
      ? "Stand it against a wall and fasten it before anything is put on it."
      : has(item, "X")
        ? "Stand it outdoors on gravel, stone or its feet, on a dry day with a bright overcast sky."
        : "Stand it level where it would be used, in daylight from one side.";
  return [
    {
      title: "Where it is used",
      steps: [
        place,
        load === undefined
          ? "Put with it only what its page says it is for; nothing heavy, since no load is stated."
          : `Put on it what it is made to carry and no more: ${load}.`,
        ...page.notMadeFor.map((not) => `Nothing in the picture shows it used this way: ${not}.`),
        ...(has(item, "C") ? ["A child is in the picture only with a grown-up within reach."] : []),
        ...(has(item, "F") ? ["Unpacked food lies on a clean liner, not on the wood."] : []),
        "Take it as it is sold: no other hardware, no other colour, knots and all.",
        page.purpose === undefined ? "Say what it is for in one sentence." : `Say with it: ${page.purpose}`,
      ],
    },
    {
      title: "What size it is",
      steps: [
        `Plain ground and background, the camera level with its middle, ${half} up from its lowest edge, far enough away that its sides look upright.`,
        `A tape along the front: ${width}. One along the side: ${depth}. One up a corner: ${height}. Each is read in the picture.`,
        "Beside it something that everybody knows the size of, such as a bucket or a garden fork.",
        ...(weight === undefined ? [] : [`Lift it as it has to be lifted, ${weight}, so that its weight is seen.`]),
        "Change the finish, not the camera: one picture each from the same spot.",
      ],
    },
  ];
}

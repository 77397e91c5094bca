// How wood moves and weathers -> what a buyer will see over time, in plain words.
import { smallChange, tenth } from "./edition.ts";
import type { StoreItem } from "./store-item.ts";

export function overTime(item: StoreItem): string[] {
  const swelling =
    item.swell === undefined
      ? []
      : [
          `Wood swells when it is wet and shrinks when it is dry: over a year outdoors a board's width changes by up to ${smallChange(item.swell)}.`,
        ];
  const gaps = item.gapMovements.map(({ made, driest, wettest }) => {
    const text = `Gaps that are ${tenth(made)} when it is made are about ${tenth(wettest)} at their wettest and ${tenth(driest)} at their driest.`;
    return text;
  });
  const bare = item.variants.filter((variant) => variant.unfinished || variant.bare !== undefined);
  const grey =
    bare.length > 0
      ? ["Bare wood in the open turns silver grey, sooner on the side that gets the sun and the rain."]
      : [];
  const isOutdoors = item.classes.includes("X");
  const coated = item.variants.filter(({ coats }) => coats.length > 0);
  const wears =
    isOutdoors && coated.length > 0
      ? ["A finish wears first on edges and on what looks up: the care card says what to do then."]
      : [];
  const knots = ["Knots and small cracks at the ends are of the wood, and no two boards have the same colour."];
  return [...swelling, ...gaps, ...grey, ...wears, ...knots];
}

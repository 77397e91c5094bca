// Whether a buyer finds it ready -> the words for it, and what machines are told.
import type { StoreOffer } from "./store-item.ts";

type Availability = StoreOffer["availability"];

/** "Ready now: 2", "Made to order in 3 weeks", "Sold". */
export function availabilityWords(availability: Availability): string {
  switch (availability.kind) {
    case "ready":
      return availability.count === 1 ? "Ready now: one" : `Ready now: ${availability.count}`;
    case "made": {
      const { time } = availability;
      return time ? `Made to order in ${time.count} ${time.unit}${time.count === 1 ? "" : "s"}` : "Made to order";
    }
    case "sold":
      return "Sold";
  }
}

/** What holds for all of them, or the best of them with how many differ. */
export function availabilityOfAll(offers: readonly Pick<StoreOffer, "availability">[]): string {
  const words = [...new Set(offers.map(({ availability }) => availabilityWords(availability)))];
  const [only = ""] = words;
  if (words.length < 2) return only;
  const ready = offers.flatMap(({ availability }) => (availability.kind === "ready" ? [availability.count] : []));
  if (ready.length > 0) return `Ready now: ${ready.reduce((a, b) => a + b, 0)}, others made to order`;
  return "Made to order, not every choice any more";
}

/** The ItemAvailability of schema.org. */
export const schemaAvailability = {
  ready: "https://schema.org/InStock",
  made: "https://schema.org/MadeToOrder",
  sold: "https://schema.org/SoldOut",
} as const satisfies Record<Availability["kind"], string>;

/** Units of time by their codes of UN/CEFACT Recommendation 20. */
export const timeCodes = { day: "DAY", week: "WEE", month: "MON" } as const;

// What a shop file says under "listing" -> how long the parts of a listing may be where they are pasted.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Problems } from "./parse-values.ts";

export const limitNames = ["title", "short", "long", "alt-text", "keywords", "keyword"] as const;
type LimitName = (typeof limitNames)[number];

/** Letters, blanks with them; `keywords` counts words, `keyword` the letters of one. */
export type ListingLimits = Readonly<Record<LimitName, number>>;

/** Short enough for most places that goods are listed in: common practice, no source. */
export const usualLimits: ListingLimits = {
  title: 80,
  short: 160,
  long: 3000,
  "alt-text": 140,
  keywords: 12,
  keyword: 24,
};

const least: ListingLimits = { title: 20, short: 40, long: 500, "alt-text": 40, keywords: 1, keyword: 5 };
const most = 20_000;

/** A limit that isn't written is the usual one; of one that can't be read a problem is told. */
export function readLimits(
  written: Readonly<Partial<Record<LimitName, Written | undefined>>>,
  problems: Problems,
): ListingLimits {
  const limits: Record<LimitName, number> = { ...usualLimits };
  for (const name of limitNames) {
    const w = written[name];
    if (!w) continue;
    const count = /^\d{1,5}$/.test(w.text) ? Number(w.text) : 0;
    if (count >= least[name] && count <= most) limits[name] = count;
    else {
      const expected = `a whole number from ${least[name]} to ${most}`;
      problems.push(problem("yard-number", w.at, { key: name, found: w.text, expected }));
    }
  }
  return limits;
}

// `8:00 to 18:00` -> the hours of the day at which somebody is at the bench.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Problems } from "./parse-values.ts";
import type { BenchHours } from "./yard.ts";

/** Where the shop says nothing of it. */
export const usualBenchHours: BenchHours = { from: 8 * 60, to: 18 * 60 };

/** At least this long, so that a coat can be put on, minutes. */
const shortest = 120;

export function readBenchHours({ text, at }: Written, problems: Problems): BenchHours | undefined {
  const [, ...clock] = /^(\d{1,2}):([0-5]\d) to (\d{1,2}):([0-5]\d)$/.exec(text) ?? [];
  const [fromHour = 24, fromMinute = 0, toHour = 24, toMinute = 0] = clock.map(Number);
  const hours = { from: fromHour * 60 + fromMinute, to: toHour * 60 + toMinute };
  if (fromHour < 24 && toHour < 24 && hours.to - hours.from >= shortest) return hours;
  const expected = "when you are at the bench, two hours or more, like 8:00 to 18:00";
  problems.push(problem("bad-value", at, { key: "bench-hours", found: text, expected }));
  return undefined;
}

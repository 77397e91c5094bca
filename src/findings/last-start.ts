// Hours, coats and the hours of the bench -> how many days a batch takes until it can be sold, and the last day to begin it.
import type { Item } from "../item/item.ts";
import { daysAfter } from "../units/day.ts";
import { type Exact, zero } from "../units/length.ts";
import type { BenchHours } from "../yard/yard.ts";
import { finishTimes } from "./finish-times.ts";
import type { Hours } from "./hours.ts";

/** Days of the calendar. */
export type Lead = {
  /** At the bench, days off with them. */
  readonly work: number;
  /** Coats, and drying until it may be used. */
  readonly finish: number;
  readonly packing: number;
  readonly days: number;
};

/** Days at the bench in every seven, and days to pack. Common practice, no source. */
const benchDaysInWeek = 5;
const packingDays = 1;

/** Without the coats, whose days are those of their drying. */
export const benchMinutes = ({ minutes, lines }: Hours): Exact =>
  minutes.sub(lines.find(({ work }) => work === "coat")?.minutes ?? zero);

/** `minutes` at the bench for all that is made; the first coat goes on the day after the last of them. */
export function leadOf({ variant }: Pick<Item, "variant">, minutes: Exact, bench: BenchHours): Lead {
  const atBench = Math.ceil(minutes.valueOf() / (bench.to - bench.from) - 1e-9);
  const off = Math.floor((Math.max(1, atBench) - 1) / benchDaysInWeek) * (7 - benchDaysInWeek);
  const work = Math.max(1, atBench) + off;
  const finish = finishTimes(variant, bench).ready?.day ?? 0;
  return { work, finish, packing: packingDays, days: work + finish + packingDays };
}

/** The last day on which it may be begun and is still there on the day it is due. */
export const startBy = (due: string, { days }: Lead): string => daysAfter(due, -days);

/** The same for a day of any year, `04-15`; counted in a year of 365 days. */
export const startByOfYear = (monthDay: string, lead: Lead): string => startBy(`2027-${monthDay}`, lead).slice(5);

// The coats of a variant and the hours of the bench -> when each coat goes on by the clock, and when the thing may be used.
import type { Variant } from "../item/item.ts";
import type { BenchHours } from "../yard/yard.ts";

/** A point of the schedule: the day counted from 1, minutes after midnight. */
export type ClockTime = { readonly day: number; readonly minute: number };

export type CoatTime = ClockTime & {
  readonly finish: string;
  readonly coat: number;
  readonly coats: number;
};

export type FinishTimes = { readonly coats: readonly CoatTime[]; readonly ready?: ClockTime };

/** The last coat of a day is begun an hour before the bench is left. Common practice, no source. */
const lastStart = 60;
const day = 24 * 60;

/**
 * Drying times are those of the finish: the next coat after its hours between coats, use after its hours to cure. Coats that
 * fall outside the hours of the bench wait for the next morning. Finishes on different members go on one after the other
 * at the same time; one that goes over another waits for it.
 */
export function finishTimes({ finish }: Variant, hours: BenchHours): FinishTimes {
  const coats: (CoatTime & { readonly at: number })[] = [];
  const free = new Map<string, number>();
  let ready = 0;
  for (const { finish: what, coats: count, members } of finish) {
    let earliest = Math.max(hours.from, ...members.map((id) => free.get(id) ?? 0));
    let at = earliest;
    for (let coat = 1; coat <= count; coat++) {
      at = atBench(earliest, hours);
      coats.push({ at, ...clock(at), finish: what.name, coat, coats: count });
      earliest = at + what.recoatHours * 60;
    }
    for (const id of members) free.set(id, earliest);
    ready = Math.max(ready, at + what.cureHours * 60);
  }
  const inOrder = coats.sort((a, b) => a.at - b.at).map(({ at: _, ...coat }) => coat);
  return { coats: inOrder, ...(inOrder.length > 0 ? { ready: clock(ready) } : {}) };
}

/** The first minute from this one on at which a coat can be begun. */
function atBench(minute: number, { from, to }: BenchHours): number {
  const midnight = Math.floor(minute / day) * day;
  const inDay = minute - midnight;
  if (inDay < from) return midnight + from;
  return inDay > Math.max(from, to - lastStart) ? midnight + day + from : minute;
}

const clock = (minute: number): ClockTime => ({ day: Math.floor(minute / day) + 1, minute: minute % day });

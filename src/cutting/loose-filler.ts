// A way of filling that may waste what nesting would save -> the same with a bound that holds for nested pieces too.
import type { Filler } from "./fill.ts";
import type { Job } from "./job.ts";
import { middleOf } from "./mitre-filler.ts";

export const isMitred = ({ ends }: { readonly ends: readonly number[] }): boolean => ends.some((end) => end !== 0);

/** The same job with every piece no longer than along its middle: whatever nests fits this one too. */
export const looseJob = (job: Job): Job => ({
  ...job,
  kinds: job.kinds.map((kind) =>
    isMitred(kind) ? { ...kind, length: Math.max(1, Math.floor(middleOf(kind))) } : kind,
  ),
});

/** Fillings of square blanks, worths of the loose job; what every filling is, it can't tell. */
export function looseFiller(blanks: Filler, loose: Filler): Filler {
  return {
    best: (profits, demand, ranges) => ({
      worths: loose.best(profits, demand, ranges).worths,
      fills: blanks.best(profits, demand, ranges).fills,
    }),
    whole: blanks.whole,
    every: () => undefined,
  };
}

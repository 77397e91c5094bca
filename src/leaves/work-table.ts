// The hours of a batch -> its table of work: how many of each, how long one takes, and how that is known.
import type { WorkLine } from "../findings/hours.ts";
import type { Pricing } from "../findings/pricing.ts";
import type { Exact } from "../units/length.ts";
import type { Work } from "../yard/shop-rates.ts";
import type { Table } from "./leaf.ts";

export const number = (value: Exact, places = 2): string => String(Number(value.valueOf().toFixed(places)));

/** `3 h 25 min`, to the nearest minute. */
export function formatMinutes(minutes: Exact): string {
  const whole = Math.round(minutes.valueOf());
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole}\u00a0min` : `${hours}\u00a0h ${whole % 60}\u00a0min`;
}

export const workWords: Readonly<Record<Work, string>> = {
  rip: "rips",
  plane: "strips planed",
  crosscut: "crosscuts",
  hole: "holes",
  shape: "notches, laps, slopes, openings",
  outline: "outlines sawn",
  glue: "joins glued",
  sand: "sq ft sanded",
  screw: "fasteners driven",
  fit: "fittings fitted",
  tie: "cords tied",
  letter: "rows of letters",
  coat: "sq ft coated",
};

export const workTable = ({ batchHours: { lines, fetch, units } }: Pricing): Table => ({
  caption: `Work on a batch of ${units}`,
  heads: [
    "Work",
    "Number",
    "Minutes for one",
    "Set-ups",
    "Together",
    "Timed",
    ...(isOwn(lines) ? ["This recipe's batches"] : []),
  ],
  rows: [
    ["fetch and lay out", "", "", "", formatMinutes(fetch), "", ...(isOwn(lines) ? [""] : [])],
    ...lines.map((line) => [
      workWords[line.work],
      number(line.count),
      number(line.rate.each),
      line.setUps === 0 ? "" : `${line.setUps} × ${number(line.rate.setUp)} min`,
      formatMinutes(line.minutes),
      timedText(line),
      ...(isOwn(lines) ? [ownText(line)] : []),
    ]),
  ],
});

/** How many times were taken, and between what they lie: `3 times, 0.46 to 0.54`. */
function timedText({ taken }: WorkLine): string {
  if (!taken) return "no, the shop's guess";
  const { n, least, most } = taken;
  return n === 1 ? "once" : `${n} times, ${number(least)} to ${number(most)}`;
}

const isOwn = (lines: readonly WorkLine[]): boolean => lines.some(({ own }) => own !== undefined);

/** How this recipe's own batches differ from that: `× 1.07 by 2 of them, 0.9 to 1.5`. */
function ownText({ own }: WorkLine): string {
  if (!own) return "not noted";
  const { n, share, least, most } = own;
  return `× ${number(share)} by ${n === 1 ? "one" : `${n}, ${number(least)} to ${number(most)}`}`;
}

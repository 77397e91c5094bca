// The minutes of a shop file, and the times that were taken -> minutes and set-up for each kind of work.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { type Exact, exact, zero } from "../units/length.ts";
import type { Problems } from "./parse-values.ts";
import { type Rate, type ShopMinutes, type Timed, type Work, works } from "./shop-rates.ts";

type WrittenMinutes = Readonly<Record<Work | "fetch", Written>>;

/** Undefined, with every problem told, where a line can't be read. */
export function readMinutes(
  written: WrittenMinutes,
  timed: { readonly [W in Work]?: Written | undefined } | undefined,
  problems: Problems,
): ShopMinutes | undefined {
  const fetch = readRate("fetch", written.fetch, problems);
  const rates = works.map((work) => [work, readRate(work, written[work], problems)] as const);
  const times = works.flatMap((work) => {
    const line = timed?.[work];
    return line ? [[work, readTimed(work, line, problems)] as const] : [];
  });
  if (!fetch || rates.some(([, rate]) => !rate) || times.some(([, all]) => !all)) return undefined;
  if (fetch.setUp.compare(0) > 0) {
    problems.push(problem("shop-minutes", written.fetch.at, { key: "fetch", found: written.fetch.text, timed: false }));
    return undefined;
  }
  return {
    fetch: fetch.each,
    rates: Object.fromEntries(rates) as Record<Work, Rate>,
    timed: Object.fromEntries(times) as Partial<Record<Work, readonly Timed[]>>,
  };
}

const number = String.raw`(\d+(?:\.\d+)?|\.\d+)`;
const rateForm = new RegExp(`^${number}(?:\\s*,\\s*${number} to set up)?$`);
const timedForm = new RegExp(`^${number} for ${number}$`);

const plain = (text: string): Exact => exact(text.startsWith(".") ? `0${text}` : text);

/** `1.5` or `1.5, 4 to set up`. */
function readRate(key: string, line: Written, problems: Problems): Rate | undefined {
  const [, each, setUp] = rateForm.exec(line.text) ?? [];
  if (each !== undefined) return { each: plain(each), setUp: setUp === undefined ? zero : plain(setUp) };
  problems.push(problem("shop-minutes", line.at, { key, found: line.text, timed: false }));
  return undefined;
}

/** `40 for 32; 36 for 30`. */
function readTimed(key: string, line: Written, problems: Problems): readonly Timed[] | undefined {
  const times = line.text.split(/\s*;\s*/).map((text) => {
    const [, minutes, done] = timedForm.exec(text) ?? [];
    return minutes === undefined || done === undefined || plain(done).compare(0) === 0
      ? undefined
      : { minutes: plain(minutes), done: plain(done) };
  });
  if (times.every((one) => one !== undefined)) return times;
  problems.push(problem("shop-minutes", line.at, { key, found: line.text, timed: true }));
  return undefined;
}

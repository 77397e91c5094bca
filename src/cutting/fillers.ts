// A job -> its ways of sawing: for each set of stocks that take the same pieces, who finds their fillings.
import { ClearLine } from "./clear-line.ts";
import type { Filler } from "./fill.ts";
import type { Job, Kind, Stock } from "./job.ts";
import { lineFiller } from "./line-filler.ts";
import { isMitred, MitreLine, middleOf } from "./mitre-line.ts";
import { boundOnly, singleStripFiller } from "./single-strip-filler.ts";
import {
  boundedContents,
  everyFitting,
  type Line,
  type LineItem,
  listedContents,
  type StripContents,
} from "./strip-contents.ts";
import { stripFiller } from "./strip-filler.ts";

/** Fillings of one sort of strip that are looked at before their list is given up. */
const mostLooks = 40_000;

/** `rows`: those of the kinds of pieces, then those of the sorts of strips. */
export function fillersFor(job: Job): { readonly fillers: readonly Filler[]; readonly rows: number } {
  const groups = new Map<string, number[]>();
  job.stocks.forEach((stock, i) => {
    const line = isLine(job, stock, i);
    // Too long never goes in, nor too wide a strip; along a line nobody asks for the width.
    const takes = job.kinds.map(
      ({ fits, length, width }) => fits[i] || (width > stock.width ? !line : length > stock.length),
    );
    const key = `${line}:${stock.clear ? i : "all"}:${takes.join()}`;
    groups.set(key, [...(groups.get(key) ?? []), i]);
  });
  const fillers: Filler[] = [];
  let rows = job.kinds.length;
  const strips = (stocks: readonly number[], order: "rip" | "crosscut", ...more: [Special?]): Filler => {
    const filler = stripFiller(job, stocks, order, rows, ...more);
    rows += filler.rows;
    return filler;
  };
  for (const stocks of groups.values()) {
    const first = stocks[0] as number;
    const { clear, width } = job.stocks[first] as Stock;
    const taken = job.kinds.flatMap(({ fits }, kind) => (stocks.some((stock) => fits[stock]) ? [kind] : []));
    const line = isLine(job, job.stocks[first] as Stock, first);
    const mitred = taken.some((kind) => isMitred(job.kinds[kind] as Kind));
    const ripped = job.orders.includes("rip");
    if (clear) {
      const { length } = job.stocks[first] as Stock;
      const contents = (run: number, size: number): StripContents =>
        clearContents(job, itemsUpTo(job, taken, size), clear, run);
      if (line || !ripped) {
        const order = job.orders[0] ?? "crosscut";
        fillers.push(singleStripFiller(new Map([[first, contents(length, width)]]), width, order));
      } else fillers.push(strips(stocks, "rip", contents));
      if (!line && job.orders.includes("crosscut")) fillers.push(boundOnly(strips(stocks, "crosscut")));
      continue;
    }
    const nested = (run: number, size: number): StripContents | undefined =>
      nestedContents(job, itemsUpTo(job, taken, size), size, run);
    const allFull = taken.every((kind) => job.kinds[kind]?.width === width);
    if (mitred && ((line && !ripped) || (allFull && stocks.every((i) => job.stocks[i]?.width === width)))) {
      const contents = stocks.map((i) => {
        const stock = job.stocks[i] as Stock;
        return [
          i,
          nested(stock.length, stock.width) ??
            nestedContents(job, itemsUpTo(job, taken, stock.width), stock.width, stock.length, true),
        ] as const;
      });
      fillers.push(singleStripFiller(new Map(contents as [number, StripContents][]), width, job.orders[0] ?? "rip"));
    } else if (line) {
      fillers.push(mitred ? strips(stocks, "rip", nested) : lineFiller(job, stocks));
    } else {
      for (const order of job.orders)
        fillers.push(strips(stocks, order, ...(order === "rip" && mitred ? [nested] : [])));
      // Crosscut first at slants, with nothing side by side.
      if (mitred && !ripped) {
        const contents = stocks.flatMap((i) => {
          const stock = job.stocks[i] as Stock;
          const own = nested(stock.length, stock.width);
          return own ? [[i, own] as const] : [];
        });
        fillers.push(singleStripFiller(new Map(contents), width, "crosscut"));
      }
    }
  }
  return { fillers, rows };
}

type Special = (run: number, size: number) => StripContents | undefined;

function itemsUpTo(job: Job, kinds: readonly number[], size: number): LineItem[] {
  const items = kinds.flatMap((kind): LineItem[] => {
    const { length, width, turns } = job.kinds[kind] as Kind;
    const upright = { kind, long: length, wide: width, quarter: false };
    return turns ? [upright, { kind, long: width, wide: length, quarter: true }] : [upright];
  });
  return items.filter(({ wide }) => wide <= size);
}

/** Undefined where nothing nests, unless `anyway`. */
function nestedContents(
  job: Job,
  items: readonly LineItem[],
  size: number,
  run: number,
  anyway = false,
): StripContents | undefined {
  const nests = items.some(({ kind, wide }) => isMitred(job.kinds[kind] as Kind) && wide === size);
  if (!nests && !anyway) return undefined;
  const line = new MitreLine(job, items, size, run);
  return contentsOf(job, line, line.leastSizes, run);
}

/** Slanted ends aren't nested around bad stretches: such pieces are laid as blanks and bounded by their middle length. */
function clearContents(
  job: Job,
  items: readonly LineItem[],
  clear: readonly (readonly [number, number])[],
  run: number,
): StripContents {
  const line = new ClearLine(job, items, clear, run);
  const kindOf = ({ kind }: LineItem): Kind => job.kinds[kind] as Kind;
  const nests = items.some((item) => isMitred(kindOf(item)));
  const sizes = items.map((item) =>
    isMitred(kindOf(item)) ? Math.max(1, Math.floor(middleOf(kindOf(item)))) + job.kerf : item.long + job.kerf,
  );
  return nests ? boundedContents(line, sizes, run + job.kerf) : contentsOf(job, line, sizes, run);
}

function contentsOf(job: Job, line: Line, leastSizes: readonly number[], run: number): StripContents {
  const most = Int32Array.from(line.kinds, (kind) => (job.kinds[kind] as Kind).count);
  const listed = everyFitting(line, most, mostLooks);
  return listed ? listedContents(line, listed) : boundedContents(line, leastSizes, run + job.kerf);
}

/** Whether no two of the pieces a board takes go side by side. */
function isLine(job: Job, { width }: Stock, stock: number): boolean {
  const taken = job.kinds.filter(({ fits }) => fits[stock]);
  return taken.every((each) => !each.turns && 2 * each.width + job.kerf > width);
}

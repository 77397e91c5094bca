// What a shop file says under "selling" -> overhead, packing, postage and the ways of selling, all exact.
import type { z } from "zod";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Placed } from "../problems/tree-shape.ts";
import { type Exact, exact } from "../units/length.ts";
import { parsePounds } from "../units/mass.ts";
import { type Problems, parsePrice, parseYardLength } from "./parse-values.ts";
import { type Batch, batches, type Channel, type ChannelName, channelNames, type Selling } from "./shop-rates.ts";
import type { shopSchema } from "./shop-schema.ts";

type WrittenSelling = NonNullable<Placed<z.output<typeof shopSchema>>["selling"]>;
type WrittenChannel = NonNullable<WrittenSelling[ChannelName]>;

/** Undefined, with every problem told, where something can't be read or no price could come of it. */
export function readSelling(written: WrittenSelling, problems: Problems): Selling | undefined {
  const before = problems.length;
  const share = (key: string, w: Written) => parseShare(key, w, problems);
  const money = (w: Written) => parsePrice(w, problems) ?? none;
  const { packing, postage } = written;
  const salesTax = share("sales-tax", written["sales-tax"]);
  const selling: Selling = {
    batch: readBatch(written.batch, problems),
    overhead: share("overhead", written.overhead),
    profit: share("profit", written.profit),
    profitAs: written["profit-as"].text as Selling["profitAs"],
    salesTax,
    abrasives: money(written.abrasives),
    glue: money(written.glue),
    sundries: money(written.sundries),
    packing: {
      material: money(packing.material),
      minutes: parseExact("minutes", packing.minutes, "minutes as a plain number", problems),
      weight: parsePoundsAt("weight", packing.weight, problems),
      room: parseYardLength("room", packing.room, problems) ?? none,
    },
    postage: {
      divisor: parseOverNothing("divisor", postage.divisor, problems),
      base: money(postage.base),
      pound: money(postage.pound),
      most: parsePoundsAt("most", postage.most, problems),
    },
    ...(written.personalising
      ? {
          personalising: {
            material: money(written.personalising.material),
            minutes: parseExact("minutes", written.personalising.minutes, "minutes as a plain number", problems),
          },
        }
      : {}),
    channels: channelNames.flatMap((name) => {
      const channel = written[name];
      return channel ? [readChannel(name, channel, salesTax, problems)] : [];
    }),
  };
  if (selling.channels.length === 0) problems.push(problem("selling-nowhere", written.batch.at, {}));
  return problems.length > before ? undefined : selling;
}

/** Stands where a problem was told, so that the rest is read as well; it never gets out. */
const none = exact(0);

function readChannel(name: ChannelName, written: WrittenChannel, salesTax: Exact, problems: Problems): Channel {
  const fee = parseShare("fee", written.fee, problems);
  const taken = fee.mul(salesTax.add(1));
  if (taken.compare(1) >= 0)
    problems.push(problem("fees-too-high", written.fee.at, { where: name, percent: String(taken.mul(100).valueOf()) }));
  return {
    name,
    fee,
    fixed: parsePrice(written.fixed, problems) ?? none,
    sale: parsePrice(written.sale, problems) ?? none,
    ...(written.day ? { day: parsePrice(written.day, problems) ?? none } : {}),
    tax: written.tax.text as Channel["tax"],
    step: parseOverNothing("step", written.step, problems),
  };
}

function readBatch(w: Written, problems: Problems): Batch {
  const batch = batches.find((units) => String(units) === w.text);
  if (batch !== undefined) return batch;
  const allowed = batches.map(String);
  problems.push(problem("not-one-of", w.at, { key: "batch", found: w.text, allowed, nearest: undefined }));
  return batches[0];
}

/** `6.5` or `6.5 %` as 13/200; under 100. */
function parseShare(key: string, w: Written, problems: Problems): Exact {
  const share = parseExact(key, { text: w.text.replace(/\s*%$/, ""), at: w.at }, share100, problems).div(100);
  if (share.compare(1) < 0) return share;
  problems.push(problem("yard-number", w.at, { key, found: w.text, expected: share100 }));
  return none;
}
const share100 = "a share in %, from 0 to under 100";

function parseExact(key: string, w: Written, expected: string, problems: Problems): Exact {
  if (/^\d+(\.\d+)?$/.test(w.text)) return exact(w.text);
  problems.push(problem("yard-number", w.at, { key, found: w.text, expected }));
  return none;
}

function parseOverNothing(key: string, w: Written, problems: Problems): Exact {
  const value = parseExact(key, w, "a plain number over 0", problems);
  if (value.compare(0) > 0 || problems.at(-1)?.at === w.at) return value;
  problems.push(problem("yard-number", w.at, { key, found: w.text, expected: "a plain number over 0" }));
  return none;
}

function parsePoundsAt(key: string, w: Written, problems: Problems): Exact {
  const pounds = parsePounds(w.text);
  if (!pounds)
    problems.push(
      problem("yard-number", w.at, { key, found: w.text, expected: 'a weight with its unit, like "2 lb"' }),
    );
  return pounds ?? none;
}

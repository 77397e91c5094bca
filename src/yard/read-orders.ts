// The texts of the files of orders -> every order, or every problem in them at its line.

import type { z } from "zod";
import { further, type Written } from "../problems/place.ts";
import { inReadingOrder, type Problem, problem } from "../problems/problem.ts";
import { checkShape, type Placed } from "../problems/tree-shape.ts";
import { readYamlTree, type TreeEntry } from "../problems/yaml-tree.ts";
import { isDay } from "../units/day.ts";
import { slug } from "../units/slug.ts";
import type { Order } from "./order.ts";
import { orderSchema } from "./order-schema.ts";
import { type Problems, parsePrice } from "./parse-values.ts";

/** A mark is no longer than this, in letters: its pages are called by it. */
const longestMark = 40;
/** No order is for more than this. */
const mostOrdered = 99;

/** Orders without a problem, in the order of their files; a mark may stand only once. */
export function readOrders(files: readonly { readonly file: string; readonly text: string }[]): {
  readonly orders: readonly Order[];
  readonly problems: readonly Problem[];
} {
  const problems: Problems = [];
  const orders: Order[] = [];
  for (const { file, text } of files) {
    const { tree, problems: found } = readYamlTree(file, text, 1);
    problems.push(...found);
    for (const entry of tree.entries) {
      const order = readOrder(entry, problems);
      const twin = order && orders.find((one) => one.slug === order.slug);
      if (twin) problems.push(problem("order-twice", entry.key.at, { mark: entry.key.text }, twin.at));
      else if (order) orders.push(order);
    }
  }
  return { orders, problems: inReadingOrder(problems) };
}

function readOrder({ key, value }: TreeEntry, problems: Problems): Order | undefined {
  const before = problems.length;
  const { placed: f, problems: found } = checkShape(value, orderSchema, `of "${key.text}"`, key.at);
  problems.push(...found);
  if (slug(key.text) === "" || key.text.length > longestMark)
    problems.push(problem("order-mark", key.at, { found: key.text, most: longestMark }));
  if (!f) return undefined;
  const price = parsePrice(f.price, problems);
  const count = readCount(f.count, problems);
  if (!isDay(f.due.text)) problems.push(problem("order-date", f.due.at, { found: f.due.text }));
  if (!price || problems.length > before) return undefined;
  return {
    mark: key.text,
    slug: slug(key.text),
    at: key.at,
    item: f.item,
    ...(f.variant ? { variant: f.variant } : {}),
    count,
    sayings: f.saying ? sayingsIn(f.saying) : [],
    due: f.due.text,
    approved: f.approved.text === "yes",
    price,
    ...(f.notes ? { notes: f.notes.text } : {}),
  };
}

function readCount(w: Placed<z.output<typeof orderSchema>>["count"], problems: Problems): number {
  const count = w === undefined ? 1 : /^\d{1,3}$/.test(w.text) ? Number(w.text) : 0;
  if (w && (count < 1 || count > mostOrdered))
    problems.push(
      problem("yard-number", w.at, { key: "count", found: w.text, expected: `a number from 1 to ${mostOrdered}` }),
    );
  return count;
}

/** `Tomatoes / Beans` as two texts, each at its place. */
function sayingsIn(saying: Written): Written[] {
  const texts: Written[] = [];
  let start = 0;
  for (const part of saying.text.split(/(?<=\s)\/(?=\s)/)) {
    const lead = part.length - part.trimStart().length;
    texts.push({ text: part.trim(), at: further(saying.at, start + lead) });
    start += part.length + 1;
  }
  return texts;
}

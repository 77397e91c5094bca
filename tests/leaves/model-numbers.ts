// Every number the model holds, as a sheet may print it: a printed number that is not among them was made up.
import type { YardList } from "../../src/findings/yard-list.ts";
import type { Item, WorkedProse } from "../../src/item/item.ts";
import type { Division } from "../../src/units/division.ts";
import { formatLength } from "../../src/units/format-length.ts";
import { inches, type Length } from "../../src/units/length.ts";
import type { Shop } from "../../src/yard/yard.ts";

const figuresOf = (prose: readonly WorkedProse[]): Length[] =>
  prose.flatMap(({ figures }) => figures.flatMap((figure) => (figure.kind === "length" ? [figure.value] : [])));

/** Lengths of the item itself, of its boards as bought and cut, and of the saw. */
export function modelLengths(item: Item, list: YardList, shop: Shop): Length[] {
  const steps = item.sections.flatMap((section) => section.steps);
  return [
    ...Object.values(item.overall),
    ...item.pieces.flatMap(({ length, width, thickness }) => [length, width, thickness]),
    ...item.gaps.map(({ gap }) => gap),
    ...item.panels.flatMap(({ width, height }) => [width, height, Math.hypot(inches(width), inches(height))]),
    ...list.plan.flatMap(({ stock, left, strips }) => [
      stock.length,
      left,
      ...strips.flatMap((strip) => [strip.size, strip.left]),
    ]),
    ...figuresOf(item.intro),
    ...steps.flatMap(({ text, checks, cautions }) => figuresOf([text, ...checks, ...cautions])),
    shop.kerf,
  ];
}

/** `17 9/16` however it is set: fraction slashes and spaces that do not break are made plain. */
export const plainNumber = (text: string): string => text.replaceAll("\u2044", "/").replaceAll("\u00a0", " ");

export const lengthsAsPrinted = (lengths: readonly Length[], division: Division): Set<string> =>
  new Set(lengths.map((length) => formatLength(length, division)));

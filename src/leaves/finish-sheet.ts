// Variants -> the finish schedule: what goes on what, how much of it, and how long it dries.

import { cautionsFor } from "../findings/cautions.ts";
import { coatFirst } from "../findings/coat-first.ts";
import { type ClockTime, finishTimes } from "../findings/finish-times.ts";
import { finishingOperations, type Operation } from "../findings/operations.ts";
import type { Item, Variant } from "../item/item.ts";
import type { BenchHours } from "../yard/yard.ts";
import type { Edition } from "./edition.ts";
import type { CautionText, Notice, Table } from "./leaf.ts";
import { isPartlyBare, unfinishedNotice } from "./unfinished.ts";
import { whichMembers } from "./which-members.ts";
import { fluidOunces } from "./yard-sheet.ts";

export type FinishSheet = {
  readonly schemes: readonly {
    readonly name: string;
    readonly table?: Table;
    readonly methods: readonly string[];
    readonly unfinished?: Notice;
    /** "Left bare: all B, 2 of 4 C." */
    readonly bare?: string;
    /** Those that this finish calls for and others don't: lime, oily rags. */
    readonly cautions: readonly CautionText[];
    /** By the clock, from the first hour at the bench on. */
    readonly times?: Table;
    /** What is coated before it is put together, and which faces of its joints stay bare. */
    readonly first?: Table;
  }[];
  readonly cautions: readonly CautionText[];
};

/** What every finishing takes. */
const common: readonly Operation[] = ["sand", "coat"];

const cautionsOf = (variants: readonly Item[], isCommon: boolean): CautionText[] =>
  cautionsFor(finishingOperations(variants).filter((operation) => common.includes(operation) === isCommon));

export const finishSheet = (variants: readonly Item[], edition: Edition, hours: BenchHours): FinishSheet => ({
  schemes: variants.map((item) => ({
    cautions: cautionsOf([item], false),
    name: item.variant.name,
    ...(item.variant.finish.length === 0 ? {} : { table: coatsTable(item, edition) }),
    methods: [...new Set(item.variant.finish.map(({ finish }) => `${capital(finish.name)}: ${finish.method}`))],
    ...timesOf(item, hours),
    ...firstOf(item),
    ...(item.variant.unfinished ? { unfinished: unfinishedNotice } : {}),
    ...(isPartlyBare(item.variant) ? { bare: `Left bare: ${marksOf(item, item.variant.bare)}.` } : {}),
  })),
  cautions: cautionsOf(variants, true),
});

const coatsTable = (item: Item, edition: Edition): Table => ({
  caption: `Coats, ${item.variant.name}`,
  heads: ["Finish", "Coats", "On", "Area", "Takes", "Between coats", "Before use"],
  rows: item.variant.finish.map((coat) => [
    coat.finish.name,
    String(coat.coats),
    coatedText(item, coat),
    edition.area(coat.area),
    fluidOunces(coat.gallons),
    `${coat.finish.recoatHours} h`,
    `${coat.finish.cureHours} h`,
  ]),
});

function timesOf(item: Item, hours: BenchHours): { readonly times?: Table } {
  const { coats, ready } = finishTimes(item.variant, hours);
  if (ready === undefined) return {};
  const caption = `When, ${item.variant.name}: sanded and free of dust by ${clockText(hours.from)} on day 1`;
  const done = ["ready to be used", "", dayText(ready), clockText(ready.minute)];
  const rows = coats.map((one) => [
    one.finish,
    `coat ${one.coat} of ${one.coats}`,
    dayText(one),
    clockText(one.minute),
  ]);
  return { times: { caption, heads: ["Finish", "Coat", "Day", "From"], rows: [...rows, done] } };
}

const dayText = ({ day }: ClockTime): string => `day ${day}`;

/** "8:00 am", "12:30 pm". */
function clockText(minute: number): string {
  const hour = Math.floor(minute / 60);
  return `${((hour + 11) % 12) + 1}:${String(minute % 60).padStart(2, "0")} ${hour < 12 ? "am" : "pm"}`;
}

const whyWords = { "another coat": "next to another coat", "narrow gap": "narrow gap beside it" } as const;

function firstOf(item: Item): { readonly first?: Table } {
  const rows = coatFirst(item).map(({ piece, why, mask }) => [
    piece.mark,
    piece.name,
    why.map((one) => whyWords[one]).join(", "),
    mask.map(({ face, marks }) => `${face} (${marks.join(", ")})`).join("; ") || "nothing",
  ]);
  const caption = `Coat before it is put together, ${item.variant.name}`;
  return rows.length === 0
    ? {}
    : { first: { caption, heads: ["Piece", "Name", "Why", "Mask, where these meet it"], rows } };
}

/** "everything", or the marks and how many of each. */
const coatedText = (item: Item, { members }: Variant["finish"][number]): string =>
  members.length === item.members.length ? "everything" : marksOf(item, members);

/** "all A, 2 of 4 B (boards 1 and 3)". */
function marksOf(item: Item, members: readonly string[]): string {
  const meant = new Set(members);
  return item.pieces
    .map((piece) => ({ piece, ids: piece.members.filter((id) => meant.has(id)) }))
    .filter(({ ids }) => ids.length > 0)
    .map(({ piece, ids }) =>
      ids.length === piece.count
        ? `all ${piece.mark}`
        : `${ids.length} of ${piece.count} ${piece.mark} (${whichMembers(item, ids)})`,
    )
    .join(", ");
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

// What a step adds and what is there -> how far each added member stands off its seat in the picture, along a free way.

import { fillsHull, hullOf, isClear } from "../geometry/clear-way.ts";
import { isClash, overlapOf } from "../geometry/overlap.ts";
import type { Vec3 } from "../geometry/shape.ts";
import type { Solid } from "../geometry/solid.ts";
import { add, length, times } from "../geometry/vector.ts";
import type { Contact, Member } from "../item/item.ts";
import { explode, singly, type Unit } from "./explode.ts";
import { movedSolid } from "./moved-solid.ts";

/** What goes in: a board, or a fitting. */
export type Going = Pick<Member, "id" | "solid" | "shape">;

/** What goes in together, and the way it came from; still where nothing is there to go into. */
export type Entry = {
  readonly members: readonly Going[];
  readonly by: ReadonlyMap<string, Vec3>;
  readonly goesIn: boolean;
  /** How far the seat itself stands from its place, where that moves in the same step. */
  readonly onto?: Vec3;
};

const still: Vec3 = [0, 0, 0];

/** Members of one row, or that touch each other, go in together. */
function together(added: readonly Member[], contacts: readonly Contact[]): readonly (readonly Member[])[] {
  const lead = new Map(added.map((member) => [member.id, member.id]));
  const leadOf = (id: string): string => {
    const next = lead.get(id) as string;
    return next === id ? id : leadOf(next);
  };
  const join = (a: string, b: string): void => {
    lead.set(leadOf(b), leadOf(a));
  };
  const rows = new Map<string, string>();
  for (const member of added) {
    const row = `${member.panel ?? ""}/${member.group}`;
    const first = rows.get(row);
    if (first === undefined) rows.set(row, member.id);
    else join(first, member.id);
  }
  for (const { a, b } of contacts) if (lead.has(a) && lead.has(b)) join(a, b);
  const sets = new Map<string, Member[]>();
  for (const member of added) sets.set(leadOf(member.id), [...(sets.get(leadOf(member.id)) ?? []), member]);
  return [...sets.values()];
}

/** Inches: how far off its seat stands what goes in, and how wide seats are opened of what is put together all at once. */
export type Reach = { readonly distance: number; readonly apart: number };

/** A board that doesn't fill its hull is looked at every so many inches of the way, at most so often. */
const lookEvery = 0.25;
const mostLooks = 24;

/** Whether a grooved or notched board lets another one past, or is let past. */
function slidesPast(solid: Solid, by: Vec3, other: Solid): boolean {
  if (fillsHull(solid) && fillsHull(other)) return false;
  const looks = Math.min(mostLooks, Math.ceil(length(by) / lookEvery));
  return Array.from({ length: looks }, (_, i) => times(by, (i + 1) / looks)).every(
    (step) => !isClash(overlapOf(movedSolid(solid, step), other)),
  );
}

/** Whether a board can come to its place from `by` without running into another; touching is free. */
export const comesPast = (solid: Solid, by: Vec3, other: Solid): boolean =>
  isClear(hullOf(solid), by, still, hullOf(other)) || slidesPast(solid, by, other);

const isFree = (members: readonly Member[], by: Vec3, there: readonly Member[]): boolean =>
  members.every(({ solid }) => there.every((other) => comesPast(solid, by, other.solid)));

/** Units of what is added: panels whole, the rest singly. */
function unitsIn(members: readonly Member[]): readonly Unit[] {
  const panels = [...new Set(members.flatMap((member) => (member.panel === undefined ? [] : [member.panel])))];
  return [
    ...panels.map(
      (name): Unit => ({
        name,
        members: members.filter((member) => member.panel === name).map((member) => member.id),
        inner: new Map(),
      }),
    ),
    ...singly(members.filter((member) => member.panel === undefined).map((member) => member.id)),
  ];
}

/**
 * Directions in the order they are liked: away from the seats, then `liked` (from above, then the others). Members that
 * touch nothing there stay in place; several units among them are opened at their seats, where that is free.
 */
export function findEntries(
  added: readonly Member[],
  there: readonly Member[],
  contacts: readonly Contact[],
  liked: readonly Vec3[],
  { distance, apart }: Reach,
): readonly Entry[] {
  const already = new Set(there.map((member) => member.id));
  return together(added, contacts).map((members) => {
    const own = new Set(members.map((member) => member.id));
    const away = contacts.flatMap(({ a, b, normal }) =>
      already.has(a) && own.has(b) ? [normal] : already.has(b) && own.has(a) ? [times(normal, -1)] : [],
    );
    if (away.length === 0) {
      const inside = contacts.filter(({ a, b }) => own.has(a) && own.has(b));
      const units = unitsIn(members);
      const steps = units.length > 1 ? explode(inside, units, apart) : new Map<string, Vec3>();
      const isOpen = members.every((member) => isFree([member], steps.get(member.id) ?? still, there));
      const by = isOpen ? steps : new Map<string, Vec3>();
      return { members, by, goesIn: false };
    }
    const sum = away.reduce((total, normal) => add(total, normal), still);
    const size = Math.hypot(...sum);
    // Square to slanted seats comes last.
    const square = size < 1e-6 ? [] : [times(sum, 1 / size)];
    const ways = [...liked, ...square].sort((a, b) => seatsLeft(b, sum) - seatsLeft(a, sum));
    for (const part of [1, 0.6, 0.35]) {
      const way = ways.find((one) => isFree(members, times(one, distance * part), there));
      if (way === undefined) continue;
      return { members, by: new Map(members.map(({ id }) => [id, times(way, distance * part)])), goesIn: true };
    }
    return { members, by: new Map(), goesIn: false };
  });
}

/** 1 where a way leads away from most seats, else 0: the order of the liked ways then decides. */
const seatsLeft = (way: Vec3, sum: Vec3): number => (way[0] * sum[0] + way[1] * sum[1] + way[2] * sum[2] > 0.5 ? 1 : 0);

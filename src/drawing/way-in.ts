// What a step adds and what is there -> how far each added member stands off its seat in the picture, along a free way.

import { hullOf, isClear } from "../geometry/clear-way.ts";
import type { Vec3 } from "../geometry/shape.ts";
import { add, times } from "../geometry/vector.ts";
import type { Contact, Member } from "../item/item.ts";
import { explode, singly, type Unit } from "./explode.ts";

/** Added members that go in together, and the way they came from; still where nothing is there to go into. */
export type Entry = {
  readonly members: readonly Member[];
  readonly by: ReadonlyMap<string, Vec3>;
  readonly goesIn: boolean;
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

/** Whether members can come in from `by` without running into what is there; touching is free. */
const isFree = (members: readonly Member[], by: Vec3, there: readonly Member[]): boolean =>
  members.every(({ solid }) => there.every((other) => isClear(hullOf(solid), by, still, hullOf(other.solid))));

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
 * touch nothing there stay in place; several units among them are opened at their seats.
 */
export function findEntries(
  added: readonly Member[],
  there: readonly Member[],
  contacts: readonly Contact[],
  liked: readonly Vec3[],
  distance: number,
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
      const opened = there.length === 0 && units.length < members.length;
      const by = opened ? explode(inside, units, distance) : new Map<string, Vec3>();
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

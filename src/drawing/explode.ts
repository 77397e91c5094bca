// Contacts between units -> how far each moves so that every seat opens along its own normal, in the order things touch.
import type { Vec3 } from "../geometry/shape.ts";
import { add } from "../geometry/vector.ts";
import type { Contact, Item } from "../item/item.ts";

/** Members that move as one; what opens inside one is told by `inner`, by member. */
export type Unit = {
  readonly name: string;
  readonly members: readonly string[];
  readonly inner: ReadonlyMap<string, Vec3>;
};

type Seat = { readonly a: number; readonly b: number; readonly axis: number };

/** A normal's other parts count as ways to open when they are this much of its largest. */
const alsoOpens = 0.6;

/** Contacts between different units, by the axes their normals run along, slanted ones by each; a lies before b on it. */
function seatsOf(contacts: readonly Contact[], units: readonly Unit[]): readonly Seat[] {
  const unitOf = new Map(units.flatMap((unit, i) => unit.members.map((id) => [id, i] as const)));
  const all = contacts.flatMap(({ a, b, normal }) => {
    const [from, to] = [unitOf.get(a), unitOf.get(b)];
    if (from === undefined || to === undefined || from === to) return [];
    const most = Math.max(...normal.map(Math.abs));
    return normal.flatMap((part, axis): Seat[] => {
      if (Math.abs(part) < most * alsoOpens) return [];
      return [part > 0 ? { a: from, b: to, axis } : { a: to, b: from, axis }];
    });
  });
  // A board in a housing is held from both sides along an axis: it doesn't open that way.
  const known = new Set(all.map(({ a, b, axis }) => `${a} ${b} ${axis}`));
  return all.filter(({ a, b, axis }) => !known.has(`${b} ${a} ${axis}`));
}

/**
 * Steps along one axis: b comes at least `gap` after a for every seat, whatever opens inside them included; what is
 * free stays with the most. Seats that would close a ring along the axis stay closed.
 */
function stepsAlong(axis: number, seats: readonly Seat[], units: readonly Unit[], gap: number): readonly number[] {
  const reach = units.map((unit) => [...unit.inner.values()].map((by) => by[axis] as number));
  const ahead = reach.map((parts) => Math.max(0, ...parts));
  const behind = reach.map((parts) => -Math.min(0, ...parts));
  const weight = (a: number, b: number): number => gap + (ahead[a] as number) + (behind[b] as number);
  const after = units.map((): number[] => []);
  for (const seat of seats) if (seat.axis === axis && !after[seat.a]?.includes(seat.b)) after[seat.a]?.push(seat.b);
  const order = inOrder(after);
  const rank = new Map(order.map((unit, i) => [unit, i]));
  const forward = (a: number): number[] => (after[a] ?? []).filter((b) => (rank.get(b) ?? 0) > (rank.get(a) ?? 0));
  const earliest = units.map(() => 0);
  for (const a of order) {
    for (const b of forward(a)) earliest[b] = Math.max(earliest[b] as number, (earliest[a] as number) + weight(a, b));
  }
  const left = units.map(() => 0);
  for (const a of [...order].reverse()) {
    for (const b of forward(a)) left[a] = Math.max(left[a] as number, (left[b] as number) + weight(a, b));
  }
  const whole = Math.max(0, ...units.map((_, i) => (earliest[i] as number) + (left[i] as number)));
  const still = mostAt(units, earliest, left, whole);
  const place = units.map((_, i) => Math.max(earliest[i] as number, Math.min(whole - (left[i] as number), still)));
  for (const a of order) {
    for (const b of forward(a)) place[b] = Math.max(place[b] as number, (place[a] as number) + weight(a, b));
  }
  return place.map((at) => at - still);
}

/** The place where most members stand of those that have no slack: it stays where it is, and so does all that is free. */
function mostAt(units: readonly Unit[], earliest: readonly number[], left: readonly number[], whole: number): number {
  const counts = new Map<number, number>();
  units.forEach((unit, i) => {
    const at = earliest[i] as number;
    if (at + (left[i] as number) < whole - 1e-9) return;
    const known = [...counts.keys()].find((place) => Math.abs(place - at) < 1e-9) ?? at;
    counts.set(known, (counts.get(known) ?? 0) + unit.members.length);
  });
  // Of equals the middle one, then the lower.
  const far = (place: number): number => Math.abs(place - whole / 2);
  return [...counts].sort(([a, n], [b, m]) => m - n || far(a) - far(b) || a - b)[0]?.[0] ?? 0;
}

/** Units so that each comes before those after it, as far as rings allow. */
function inOrder(after: readonly (readonly number[])[]): readonly number[] {
  const done = new Set<number>();
  const order: number[] = [];
  const visit = (unit: number): void => {
    if (done.has(unit)) return;
    done.add(unit);
    for (const next of after[unit] ?? []) visit(next);
    order.push(unit);
  };
  after.forEach((_, unit) => {
    visit(unit);
  });
  return order.reverse();
}

/** For every member how far it moves (inches), with `gap` opened at every seat between units. */
export function explode(contacts: readonly Contact[], units: readonly Unit[], gap: number): ReadonlyMap<string, Vec3> {
  const seats = seatsOf(contacts, units);
  const steps = [0, 1, 2].map((axis) => stepsAlong(axis, seats, units, gap));
  return new Map(
    units.flatMap((unit, i) => {
      const by = steps.map((along) => (along[i] as number) + 0) as unknown as Vec3;
      return unit.members.map((id): [string, Vec3] => [id, add(by, unit.inner.get(id) ?? [0, 0, 0])]);
    }),
  );
}

/** One unit each. */
export const singly = (ids: readonly string[]): readonly Unit[] =>
  ids.map((id) => ({ name: id, members: [id], inner: new Map() }));

/** Panels as units, those in `opened` moved apart inside; members of no panel as units of their own. */
export function unitsOf(item: Item, opened: ReadonlySet<string>, innerGap: number): readonly Unit[] {
  const panels = item.panels.map((panel): Unit => {
    const own = new Set(panel.members);
    const inside = item.contacts.filter(({ a, b }) => own.has(a) && own.has(b));
    const inner = opened.has(panel.name) ? explode(inside, singly(panel.members), innerGap) : new Map<string, Vec3>();
    return { name: panel.name, members: panel.members, inner };
  });
  return [...panels, ...singly(item.members.filter((member) => member.panel === undefined).map((member) => member.id))];
}

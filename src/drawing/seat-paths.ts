// Boards moved apart -> the thin lines from seat to seat that show where they belong.
import type { Vec3 } from "../geometry/shape.ts";
import { add } from "../geometry/vector.ts";
import type { Contact, Item } from "../item/item.ts";
import type { Mark, Paper } from "./drawing.ts";
import { type Picture, type Placement, spotOnPaper } from "./picture.ts";
import { seenStretches } from "./visibility.ts";

/** Thin lines from seat to seat: along the seat's normal first; between slanted seats straight. Members that `by` leaves out have none. */
export function drawSeatPaths(
  seats: readonly Contact[],
  by: ReadonlyMap<string, Vec3>,
  picture: Picture,
  placement: Placement,
): Mark {
  const chains = seats.flatMap(({ a, b, normal, patch }) => {
    const [from, to] = [by.get(a), by.get(b)];
    if (from === undefined || to === undefined || from.every((step, k) => Math.abs(step - (to[k] as number)) < 1e-9)) {
      return [];
    }
    const seat = [0, 1, 2].map((k) => patch.reduce((sum, p) => sum + (p[k] as number), 0) / patch.length);
    const [start, goal] = [from, to].map((step) => add(seat as unknown as Vec3, step)) as [Vec3, Vec3];
    return corners(start, goal, normal)
      .flatMap(([one, other]) => seenStretches(picture, one, other))
      .map((stretch) => stretch.map((spot): Paper => spotOnPaper(picture, placement, spot)));
  });
  return { kind: "lines", line: "path", chains };
}

/** The runs of a path: along the axis that the seat opens on, then along the others. */
function corners(start: Vec3, goal: Vec3, normal: Vec3): readonly (readonly [Vec3, Vec3])[] {
  const axis = normal.findIndex((part) => Math.abs(part) > 0.9);
  if (axis < 0) return [[start, goal]];
  const runs: (readonly [Vec3, Vec3])[] = [];
  let at = start;
  for (const k of [axis, 0, 1, 2]) {
    if (Math.abs((goal[k] as number) - (at[k] as number)) < 1e-9) continue;
    const next = at.map((part, i) => (i === k ? (goal[k] as number) : part)) as unknown as Vec3;
    runs.push([at, next]);
    at = next;
  }
  return runs;
}

/** Contacts that a join holds together; of members that no join holds, all their contacts. */
function fastenedContacts(item: Item): readonly Contact[] {
  const pair = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);
  const joined = new Set(item.joins.map((join) => pair(join.a, join.b)));
  const held = new Set(item.joins.flatMap((join) => [join.a, join.b]));
  return item.contacts.filter(({ a, b }) => joined.has(pair(a, b)) || !held.has(a) || !held.has(b));
}

/** Contacts of the first and the last member of every row with each thing that the row touches. */
export function endSeats(item: Item): readonly Contact[] {
  const row = new Map(item.members.map((member) => [member.id, `${member.panel ?? ""}/${member.group}`]));
  const rows = new Map<string, Contact[]>();
  for (const contact of fastenedContacts(item)) {
    const key = `${row.get(contact.a)} ${row.get(contact.b)} ${contact.normal.map(Math.round).join(" ")}`;
    rows.set(key, [...(rows.get(key) ?? []), contact]);
  }
  return [...rows.values()].flatMap((all) => (all.length <= 4 ? all : [all[0] as Contact, all.at(-1) as Contact]));
}

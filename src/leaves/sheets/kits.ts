// Worked-out item -> what is laid out for each panel and for the rest: pieces, fasteners and fittings, tray by tray.
import type { Item, Member } from "../../item/item.ts";
import type { Length } from "../../units/length.ts";
import { setFractions } from "../edition.ts";
import type { Table } from "../leaf.ts";

type Tray = { readonly name: string; readonly times: number; readonly members: readonly Member[] };

/** Assemblies and panels that a section makes have a tray of their own; what is left is for putting it together. */
export function traysOf(item: Item): readonly Tray[] {
  const trays: Tray[] = [];
  const laid = new Set<string>();
  for (const { makes } of item.sections) {
    if (!makes) continue;
    const members = item.members.filter(
      (member) =>
        !laid.has(member.id) && makes.panels.some((name) => member.panel === name || member.assembly === name),
    );
    for (const { id } of members) laid.add(id);
    if (members.length > 0) trays.push({ name: makes.kind, times: makes.times, members });
  }
  const rest = item.members.filter(({ id }) => !laid.has(id));
  return rest.length === 0 ? trays : [...trays, { name: "", times: 1, members: rest }];
}

/** One table for each tray; a row is a piece, a fastener or a fitting, its number that of all that are made. */
export function kitTables(item: Item, length: (inches: Length) => string): readonly Table[] {
  const trays = traysOf(item);
  const trayOf = new Map(trays.flatMap((tray) => tray.members.map(({ id }) => [id, tray] as const)));
  return trays.map((tray) => ({
    caption: captionOf(tray, trays.length === 1),
    heads: ["Number", "What", "Size", "Where"],
    rows: [
      ...pieceRows(item, tray, length),
      ...fastenerRows(item, (a, b) => {
        const [one, other] = [trayOf.get(a), trayOf.get(b)];
        return one === other ? one === tray : tray === trays.at(-1);
      }),
      ...(tray === trays.at(-1) ? fittingRows(item) : []),
    ],
  }));
}

function captionOf({ name, times }: Tray, alone: boolean): string {
  if (name === "") return alone ? "Everything" : "Putting it together";
  return times === 1 ? `For the ${name}` : `For ${times} × ${name}, all together`;
}

function pieceRows(item: Item, { members }: Tray, length: (inches: Length) => string): string[][] {
  const own = new Set(members.map(({ id }) => id));
  return item.pieces.flatMap((piece) => {
    const meant = members.filter((member) => piece.members.includes(member.id) && own.has(member.id));
    const where = [...new Set(meant.map(({ group }) => group))].join(", ");
    const size = [piece.length, piece.width, piece.thickness].map(length).join("\u00a0×\u00a0");
    return meant.length === 0 ? [] : [[String(meant.length), piece.mark, size, where]];
  });
}

function fastenerRows({ joins }: Item, isHere: (a: string, b: string) => boolean): string[][] {
  const counts = new Map<string, number>();
  for (const { fastener } of joins.flatMap((join) => (isHere(join.a, join.b) ? join.driven : []))) {
    counts.set(fastener.name, (counts.get(fastener.name) ?? 0) + 1);
  }
  return [...counts].map(([name, count]) => [String(count), setFractions(name), "", ""]);
}

const fittingRows = ({ fittings, cords }: Item): string[][] => [
  ...fittings.map(({ fitting, count }) => [String(count), fitting.name, "", ""]),
  ...cords.map(({ name, rope }) => ["1", name.replaceAll("-", " "), setFractions(rope.name), ""]),
];

// The joins that close in a step -> where their fasteners go, told from the ends and edges of the board they go through.
import type { Vec3 } from "../geometry/shape.ts";
import { dot, frameZ, subtract, times } from "../geometry/vector.ts";
import type { Driven, Item, Join, Member } from "../item/item.ts";
import { headingOf } from "../item/sides.ts";
import { inches } from "../units/length.ts";
import { axes, type Side, sides } from "../units/side.ts";
import type { Fastener, Species } from "../yard/yard.ts";

/** A side of the panel that both boards are in, else of the whole as it stands; outer and inner by its middle. */
export type EdgeName = Side | "outer" | "inner";

/** Inches from the end that the row begins nearest to (0 of pockets), and from the nearer edge; `of` where the other is further. */
export type Spot = { readonly end: number; readonly edge: number; readonly of?: EdgeName };

export type FastenerPlaces = {
  readonly fastener: Fastener;
  /** Marks of the board it goes through and of the one it holds to, and that one's wood. */
  readonly through: string;
  readonly into: string;
  readonly wood: Species;
  /** How many places there are, and fasteners in each. */
  readonly places: number;
  readonly each: number;
  /** Those of one place, the nearest to the end first; alike in all places. */
  readonly spots: readonly Spot[];
  /** Only of a board that stands upright, where all rows begin at the same end of it. */
  readonly from?: "top" | "foot";
};

/** As a row's nearer edges are called by their sides, and by which of them is the outer one, where they have an outer one. */
type Row = { readonly bySide: readonly Spot[]; readonly byMiddle?: readonly Spot[]; readonly from?: "top" | "foot" };

const same = 1 / 64;

/** Like joins are told together: same fastener, same marks, as many in each, at the same places. */
export function fastenerPlaces(item: Pick<Item, "members" | "panels">, joins: readonly Join[]): FastenerPlaces[] {
  const byId = new Map(item.members.map((member) => [member.id, member]));
  const memberOf = (id: string): Member => {
    const member = byId.get(id);
    if (!member) throw new Error(`a fastener is driven into a member that is not there: ${id}`);
    return member;
  };
  const groups = new Map<string, { first: Driven; each: number; rows: Row[] }>();
  for (const join of joins) {
    for (const [key, driven] of alike(join.driven, (one) => [
      one.fastener.name,
      memberOf(one.a).mark,
      memberOf(one.b).mark,
      one.a,
      one.b,
    ])) {
      const [first] = driven;
      if (!first) continue;
      const group = `${key.slice(0, 3).join("|")}|${driven.length}`;
      const known = groups.get(group) ?? { first, each: driven.length, rows: [] };
      known.rows.push(rowOf(item, memberOf(first.a), memberOf(first.b), driven));
      groups.set(group, known);
    }
  }
  return [...groups.values()].flatMap(({ first, each, rows }) =>
    toldAlike(rows).map(({ spots, own }) => ({
      fastener: first.fastener,
      through: memberOf(first.a).mark,
      into: memberOf(first.b).mark,
      wood: memberOf(first.b).board.species,
      places: own.length,
      each,
      spots,
      ...fromOf(own),
    })),
  );
}

function alike<T>(all: readonly T[], keyOf: (one: T) => readonly string[]): (readonly [readonly string[], T[]])[] {
  const found = new Map<string, readonly [readonly string[], T[]]>();
  for (const one of all) {
    const key = keyOf(one);
    const known = found.get(key.join("|"));
    if (known) known[1].push(one);
    else found.set(key.join("|"), [key, [one]]);
  }
  return [...found.values()];
}

type Told = { readonly spots: readonly Spot[]; readonly own: readonly Row[] };

/**
 * By the names that make fewer different rows; sides where both make as many, but not left and right, which change about when
 * the work is turned on the bench.
 */
function toldAlike(rows: readonly Row[]): readonly Told[] {
  const told = (spotsOf: (row: Row) => readonly Spot[]): Told[] =>
    alike(rows, (row) =>
      spotsOf(row).map(({ end, edge, of }) => [sixtyFourths(end), sixtyFourths(edge), of].join(" ")),
    ).map(([, own]) => ({ spots: spotsOf(own[0] as Row), own }));
  const bySide = told(({ bySide }) => bySide);
  const byMiddle = told(({ bySide, byMiddle }) => byMiddle ?? bySide);
  const turns = bySide.some(({ spots }) => spots.some(({ of }) => of === "left" || of === "right"));
  return byMiddle.length < bySide.length || (turns && byMiddle.length === bySide.length) ? byMiddle : bySide;
}

const sixtyFourths = (size: number): number => Math.round(size / same);

function fromOf(rows: readonly Row[]): { readonly from?: "top" | "foot" } {
  const [first] = rows;
  return first?.from !== undefined && rows.every(({ from }) => from === first.from) ? { from: first.from } : {};
}

/** In the board's own frame: along it, all from one end, and across the side that they are driven in at. */
function rowOf(
  { panels, members }: Pick<Item, "members" | "panels">,
  a: Member,
  b: Member,
  driven: readonly Driven[],
): Row {
  const { shape, lie, length, width } = a;
  const { frame } = shape;
  const own = [frame.x, frame.y, frameZ(frame)] as const;
  const size = [inches(length), inches(width), shape.depth] as const;
  const heads = driven.map(({ head }) => own.map((axis) => dot(subtract(head, frame.origin), axis)) as unknown as Vec3);
  const way = driven[0]?.way ?? own[2];
  const across = Math.abs(dot(way, own[1])) > Math.abs(dot(way, own[2])) ? 2 : 1;
  const [low, high] = [Math.min(...heads.map(([l]) => l)), size[0] - Math.max(...heads.map(([l]) => l))];
  const isPocket = driven[0]?.fastener.kind === "pocket screw";
  const isFromHigh = high < low - same;
  const panel = a.panel !== undefined && a.panel === b.panel ? panels.find(({ name }) => name === a.panel) : undefined;
  const sideOf = (out: Vec3): Side =>
    sides.reduce((best, side) => (toward(side, out) > toward(best, out) + 1e-6 ? side : best));
  const toward = (side: Side, out: Vec3): number => {
    const { axis, sign } = headingOf(side, panel);
    return sign * (out[axes.indexOf(axis)] as number);
  };
  const spotsBy = (nameOf: (out: Vec3) => EdgeName): Spot[] =>
    heads
      .map((at): Spot => {
        const [fromLow, fromHigh] = [at[across], size[across] - at[across]];
        const out = times(own[across], fromLow < fromHigh ? -1 : 1);
        return {
          end: isPocket ? 0 : isFromHigh ? size[0] - at[0] : at[0],
          edge: Math.min(fromLow, fromHigh),
          ...(Math.abs(fromLow - fromHigh) < 2 * same ? {} : { of: nameOf(out) }),
        };
      })
      .sort(
        (p, q) =>
          sixtyFourths(p.end) - sixtyFourths(q.end) ||
          sixtyFourths(p.edge) - sixtyFourths(q.edge) ||
          (p.of ?? "").localeCompare(q.of ?? ""),
      );
  const middle = middleOf(panel ? members.filter((one) => one.panel === panel.name) : members);
  const off = dot(subtract(middleOf([a]), middle), own[across]);
  return {
    bySide: spotsBy(sideOf),
    ...(Math.abs(off) < same
      ? {}
      : { byMiddle: spotsBy((out) => (dot(out, own[across]) * off > 0 ? "outer" : "inner")) }),
    ...(lie.length === "z" ? { from: frame.x[2] > 0 === isFromHigh ? ("top" as const) : ("foot" as const) } : {}),
  };
}

/** Of the box round all of them. */
function middleOf(members: readonly Member[]): Vec3 {
  const at = (axis: "x" | "y" | "z"): number =>
    (Math.min(...members.map(({ min }) => inches(min[axis]))) +
      Math.max(...members.map(({ max }) => inches(max[axis])))) /
    2;
  return [at("x"), at("y"), at("z")];
}

// The joins that close in a step -> where their fasteners go, told from the ends and edges of the board they go through.
import type { Vec3 } from "../geometry/shape.ts";
import { dot, frameZ, subtract } from "../geometry/vector.ts";
import type { Driven, Item, Join, Member } from "../item/item.ts";
import { inches } from "../units/length.ts";
import type { Fastener, Species } from "../yard/yard.ts";

export type FastenerPlaces = {
  readonly fastener: Fastener;
  /** Marks of the board it goes through and of the one it holds to, and that one's wood. */
  readonly through: string;
  readonly into: string;
  readonly wood: Species;
  /** How many places there are, and fasteners in each. */
  readonly places: number;
  readonly each: number;
  /** Inches from the end that the row begins nearest to, and from the nearer edge, as they differ, least first. */
  readonly ends: readonly number[];
  readonly edges: readonly number[];
  /** Only of a board that stands upright, where all rows begin at the same end of it. */
  readonly from?: "top" | "foot";
  /** Whether those of one place stand in line along the board, so that one edge tells where. */
  readonly inLine: boolean;
};

type Spot = { readonly end: number; readonly edge: number };
type Row = { readonly spots: readonly Spot[]; readonly from?: "top" | "foot"; readonly inLine: boolean };

const same = 1 / 64;

/** Like joins are told together: same fastener, same marks, as many in each. */
export function fastenerPlaces(item: Pick<Item, "members">, joins: readonly Join[]): FastenerPlaces[] {
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
      known.rows.push(rowOf(memberOf(first.a), driven));
      groups.set(group, known);
    }
  }
  return [...groups.values()].map(({ first, each, rows }) => ({
    fastener: first.fastener,
    through: memberOf(first.a).mark,
    into: memberOf(first.b).mark,
    wood: memberOf(first.b).board.species,
    places: rows.length,
    each,
    ends: distinct(rows.flatMap(({ spots }) => spots.map(({ end }) => end))),
    edges: distinct(rows.flatMap(({ spots }) => spots.map(({ edge }) => edge))),
    ...fromOf(rows),
    inLine: rows.every(({ inLine }) => inLine),
  }));
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

function fromOf(rows: readonly Row[]): { readonly from?: "top" | "foot" } {
  const [first] = rows;
  return first?.from !== undefined && rows.every(({ from }) => from === first.from) ? { from: first.from } : {};
}

/** In the board's own frame: along it, all from one end, and across the side that they are driven in at. */
function rowOf({ shape, lie, length, width }: Member, driven: readonly Driven[]): Row {
  const { frame } = shape;
  const axes = [frame.x, frame.y, frameZ(frame)] as const;
  const size = [inches(length), inches(width), shape.depth] as const;
  const own = driven.map(({ head }) => axes.map((axis) => dot(subtract(head, frame.origin), axis)) as unknown as Vec3);
  const way = driven[0]?.way ?? axes[2];
  const across = Math.abs(dot(way, axes[1])) > Math.abs(dot(way, axes[2])) ? 2 : 1;
  const [low, high] = [Math.min(...own.map(([l]) => l)), size[0] - Math.max(...own.map(([l]) => l))];
  const isFromHigh = high < low - same;
  const sides = own.map((at) => at[across]);
  return {
    spots: own.map((at) => ({
      end: isFromHigh ? size[0] - at[0] : at[0],
      edge: Math.min(at[across], size[across] - at[across]),
    })),
    ...(lie.length === "z" ? { from: frame.x[2] > 0 === isFromHigh ? ("top" as const) : ("foot" as const) } : {}),
    inLine: Math.max(...sides) - Math.min(...sides) < same,
  };
}

const distinct = (all: readonly number[]): number[] =>
  [...all].sort((a, b) => a - b).filter((one, i, sorted) => i === 0 || one - (sorted[i - 1] as number) > same);

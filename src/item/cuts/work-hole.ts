// A hole, or a grid of holes, with the widening at its mouth -> round cuts in the member's own frame.
import { problem } from "../../problems/problem.ts";
import type { Cut, Sum } from "../../recipe/recipe.ts";
import { ownEntry, ownSize, sinkDepth } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { type Room, spotsOf } from "./spots.ts";
import { checked, everyPick, othersThan, refused, sizesOf, vectorOf, type Worked } from "./worked.ts";

type Hole = Cut & { readonly kind: "hole" };
type Sizes = { across: number; deep?: number; sink?: number; sinkDeep?: number; pitch: readonly [number, number] };

export function workHole(cut: Hole, member: PlacedMember, placing: Placing): Worked {
  const sizes = holeSizes(cut, placing);
  if ("code" in sizes) return refused(sizes);
  const { across, deep, sink, sinkDeep, pitch } = sizes;
  const facts = { cut: cut.text, member: member.id };
  const into = cut.into && ownSideOf(member, placing.turned(member), cut.into);
  if (deep !== undefined && !into) return refused(problem("cut-side-missing", cut.at, facts));
  if (sink !== undefined && !into) return refused(problem("sink-side-missing", cut.at, facts));
  if (sink !== undefined && sink <= across) {
    return refused(problem("sink-narrow", cut.at, { cut: cut.text, across: sink, hole: across }));
  }
  const axis = into?.own ?? "thickness";
  const full = ownEntry(ownSize(member), axis);
  for (const depth of [deep, sinkDeep]) {
    if (depth !== undefined && cut.into && depth >= full) {
      return refused(problem("cut-too-deep", cut.at, { ...facts, deep: depth, full, into: cut.into }));
    }
  }
  if (sink !== undefined && sinkDeep === undefined) {
    const [depth, room] = [sinkDepth(sink, across), deep ?? full];
    if (depth >= room) return refused(problem("sink-too-deep", cut.at, { ...facts, depth, room }));
  }
  const counts = [cut.grid?.along ?? 1, cut.grid?.across ?? 1] as const;
  const close = pitch.find((p, i) => (counts[i] ?? 1) > 1 && p <= (sink ?? across));
  if (close !== undefined) {
    return refused(problem("holes-touch", cut.at, { cut: cut.text, pitch: close, hole: sink ?? across }));
  }
  const free = othersThan(axis);
  const rooms = free.map((a, i): Room => ({ axis: a, extent: ((counts[i] ?? 1) - 1) * (pitch[i] ?? 0) }));
  const spotted = spotsOf(cut, member, placing, rooms);
  if (!("get" in spotted)) return refused(...spotted);
  const starts = free.map((a, i) =>
    (spotted.get(a) ?? []).flatMap((start) =>
      Array.from({ length: counts[i] ?? 1 }, (_, k) => start + k * (pitch[i] ?? 0)),
    ),
  );
  const from = into?.far ? "high" : "low";
  const bored = (spot: readonly number[], wide: number, depth: number | undefined): WorkedCut & { kind: "hole" } => ({
    kind: "hole",
    why: "cut",
    at: cut.at,
    across: wide,
    axis,
    at3: vectorOf((a) => (a === axis ? 0 : (spot[free.indexOf(a)] as number))),
    ...(depth === undefined ? {} : { deep: depth }),
    from,
  });
  const holes = everyPick(starts).flatMap((spot): WorkedCut[] => {
    const hole = bored(spot, across, deep);
    if (sink === undefined) return [hole];
    return sinkDeep === undefined ? [{ ...hole, countersink: sink }] : [hole, bored(spot, sink, sinkDeep)];
  });
  return checked(cut, member, placing, holes);
}

function holeSizes(cut: Hole, placing: Placing) {
  const { deep, sink, grid } = cut;
  const named: readonly (readonly [string, Sum | undefined])[] = [
    ["across", cut.across],
    ["deep", deep],
    ["sink", sink?.across],
    ["sinkDeep", sink?.deep],
    ["along", grid?.pitch],
    ["over", grid?.pitchAcross],
  ];
  const there = named.flatMap(([name, sum]) => (sum ? [{ name, sum }] : []));
  const sizes = sizesOf(
    cut,
    there.map(({ sum }) => sum),
    placing,
  );
  if ("code" in sizes) return sizes;
  const by = new Map(there.map(({ name }, i) => [name, sizes[i] as number]));
  const along = by.get("along") ?? 0;
  const found: Sizes = { across: by.get("across") ?? 0, pitch: [along, by.get("over") ?? along] };
  for (const name of ["deep", "sink", "sinkDeep"] as const) {
    const size = by.get(name);
    if (size !== undefined) found[name] = size;
  }
  return found;
}

// Members, joins and contacts -> problems of what is held by nothing.
import { type Problem, problem } from "../../problems/problem.ts";
import { sameLength } from "../../units/length.ts";
import { boxOf } from "../frame.ts";
import type { Contact, Join } from "../item.ts";
import type { PlacedMember } from "../placed.ts";

/**
 * Everything is joined to the largest part, or said to be loose. Members of one line that fail alike are told once; a cluster is told at its
 * first member. Members that a broken join rule was to hold are `excused`. What is loose has to lie or hang on something, or stand on the floor.
 */
export function checkHeld(
  members: readonly PlacedMember[],
  joins: readonly Pick<Join, "a" | "b">[],
  contacts: readonly Contact[],
  excused: ReadonlySet<string>,
): Problem[] {
  const byId = new Map(members.map((m) => [m.id, m]));
  const touches = neighboursOf(members, contacts);
  const clusters = clustersOf(members, neighboursOf(members, joins));
  const main = clusters
    .filter((c) => !c.some((m) => m.loose))
    .reduce<readonly PlacedMember[]>((best, c) => (c.length > best.length ? c : best), []);
  const inAir: PlacedMember[] = [];
  const alone: PlacedMember[] = [];
  const problems: Problem[] = [];

  for (const cluster of clusters) {
    const first = cluster[0];
    if (!first || cluster === main || cluster.some((m) => excused.has(m.id))) continue;
    const ids = new Set(cluster.map((m) => m.id));
    const outside = [...new Set(cluster.flatMap((m) => [...(touches.get(m.id) ?? [])]))].filter((id) => !ids.has(id));
    if (cluster.some((m) => m.loose)) {
      const onFloor = cluster.some((m) => boxOf(m).min[2] <= sameLength);
      if (outside.length === 0 && !onFloor) problems.push(problem("loose-in-air", first.at, { members: [...ids] }));
    } else if (cluster.length === 1) {
      (outside.length === 0 ? inAir : alone).push(first);
    } else {
      const touched = outside.map((id) => byId.get(id)).find((m) => m !== undefined);
      const facts = { members: [...ids], touches: outside, others: main.length };
      problems.push(problem("cluster-apart", first.at, facts, touched?.at));
    }
  }
  for (const line of byLine(inAir)) {
    problems.push(problem("touches-nothing", (line[0] as PlacedMember).at, { members: line.map((m) => m.id) }));
  }
  for (const line of byLine(alone)) {
    const first = line[0] as PlacedMember;
    const touched = [...(touches.get(first.id) ?? [])];
    const facts = { members: line.map((m) => m.id), first: first.id, touches: touched };
    problems.push(problem("held-by-nothing", first.at, facts, byId.get(touched[0] ?? "")?.at));
  }
  return problems;
}

function neighboursOf(
  members: readonly PlacedMember[],
  pairs: readonly { readonly a: string; readonly b: string }[],
): ReadonlyMap<string, ReadonlySet<string>> {
  const next = new Map(members.map((m) => [m.id, new Set<string>()]));
  for (const { a, b } of pairs) {
    next.get(a)?.add(b);
    next.get(b)?.add(a);
  }
  return next;
}

/** Members that hang together, in the order of the list. */
function clustersOf(
  members: readonly PlacedMember[],
  next: ReadonlyMap<string, ReadonlySet<string>>,
): readonly (readonly PlacedMember[])[] {
  const of = new Map<string, string>();
  for (const { id } of members) {
    if (of.has(id)) continue;
    const open = [id];
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      if (of.has(at)) continue;
      of.set(at, id);
      open.push(...(next.get(at) ?? []));
    }
  }
  return [...new Set(of.values())].map((first) => members.filter((m) => of.get(m.id) === first));
}

/** Members of one line of the recipe together. */
export function byLine<T extends Pick<PlacedMember, "at">>(members: readonly T[]): T[][] {
  const lines = new Map<string, T[]>();
  for (const m of members) {
    const key = `${m.at.file}:${m.at.line}:${m.at.column}`;
    lines.set(key, [...(lines.get(key) ?? []), m]);
  }
  return [...lines.values()];
}

// The steps in their order -> pieces that can't get to their places past what is there, and fasteners no driver gets behind.
import type { Vec3 } from "../geometry/shape.ts";
import type { Solid } from "../geometry/solid.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { blockerOf } from "./driver-room.ts";
import type { Contact, Cord, Panel, WorkedSection, WorkedStep } from "./item.ts";
import type { PlacedMember } from "./placed.ts";
import { blockersOf } from "./way-to-seat.ts";

type Body = { readonly id: string; readonly placed: PlacedMember; readonly solid: Solid };

export type Standing = {
  readonly bodies: readonly Body[];
  readonly contacts: readonly Contact[];
  readonly cords: readonly Cord[];
  readonly panels: readonly Panel[];
  readonly assemblies: readonly Panel[];
};

/** What goes in as one: a panel or an assembly that was made before, or a single board. */
type Unit = { readonly name: string; readonly bodies: readonly Body[] };

/** One problem of a kind for each step. What is put in by one step may go in in any order, so it never blocks itself. */
export function checkOrder(sections: readonly WorkedSection[], standing: Standing): Problem[] {
  const byId = new Map(standing.bodies.map((body) => [body.id, body]));
  const roped = new Set(standing.cords.flatMap((cord) => cord.members));
  const bodiesOf = (ids: readonly string[]): Body[] => ids.flatMap((id) => byId.get(id) ?? []);
  return sections.flatMap((section) => {
    const kits = madeBefore(section, sections, standing);
    return section.steps.flatMap((step) => {
      // What is loose can be lifted out of the way, and goes in as it likes; on a rope everything gives way.
      const fixed = bodiesOf(step.there).filter(({ id, placed }) => !placed.loose && !roped.has(id));
      const units = unitsOf(bodiesOf(step.shown), kits);
      const free = units.filter(({ bodies }) => !bodies.some(({ id, placed }) => placed.loose || roped.has(id)));
      return [...wayProblem(step, free, fixed, standing.contacts), ...driverProblem(step, units, fixed, byId)];
    });
  });
}

/** Panels and assemblies that another section makes: they are one thing when they are stood. */
const madeBefore = (
  section: WorkedSection,
  sections: readonly WorkedSection[],
  { panels, assemblies }: Standing,
): readonly Panel[] => {
  const kinds = new Set(sections.flatMap(({ makes }) => (makes && makes !== section.makes ? [makes.kind] : [])));
  const own = section.makes?.kind;
  return [...assemblies, ...panels].filter(({ kind }) => kinds.has(kind) && kind !== own);
};

function unitsOf(shown: readonly Body[], kits: readonly Panel[]): readonly Unit[] {
  const units = new Map<string, Body[]>();
  for (const body of shown) {
    const kit = kits.find(
      ({ members }) => members.includes(body.id) && members.every((id) => shown.some((m) => m.id === id)),
    );
    const name = kit?.name ?? body.id;
    units.set(name, [...(units.get(name) ?? []), body]);
  }
  return [...units].map(([name, bodies]) => ({ name, bodies }));
}

function wayProblem(
  step: WorkedStep,
  units: readonly Unit[],
  there: readonly Body[],
  contacts: readonly Contact[],
): Problem[] {
  if (there.length === 0) return [];
  for (const { name, bodies } of units) {
    const own = new Set(bodies.map(({ id }) => id));
    const normals = contacts.flatMap(({ a, b, normal }): Vec3[] => (own.has(a) !== own.has(b) ? [normal] : []));
    const { all, last } = blockersOf(bodies, there, normals);
    if (all.length === 0) continue;
    const facts = { step: step.number, piece: name, blockers: all.map(({ id }) => id), last: last?.id };
    return [problem("no-way-in", step.at, facts)];
  }
  return [];
}

function driverProblem(
  step: WorkedStep,
  units: readonly Unit[],
  there: readonly Body[],
  byId: ReadonlyMap<string, Body>,
): Problem[] {
  for (const join of step.joins) {
    // What comes with either board stands round it whatever the order within the step.
    const along = units.filter(({ bodies }) => bodies.some(({ id }) => id === join.a || id === join.b));
    const round = [...there, ...along.flatMap(({ bodies }) => bodies)].filter(({ placed }) => !placed.loose);
    const stopped = join.driven.flatMap((driven) => {
      const board = byId.get(driven.a);
      const others = round.filter(({ id }) => id !== driven.a && id !== driven.b);
      const blocker = board && blockerOf(driven, board.solid, others);
      return blocker ? [{ driven, blocker }] : [];
    });
    const [first] = stopped;
    if (first === undefined) continue;
    const { a, b, fastener } = first.driven;
    const facts = {
      step: step.number,
      fastener: fastener.name,
      count: stopped.length,
      a,
      b,
      blocker: first.blocker.id,
    };
    return [problem("no-driver-room", step.at, facts, join.at)];
  }
  return [];
}

// The sections of the body -> steps with what each adds, what is there already and which joins close; each member once.
import { type Problem, problem } from "../problems/problem.ts";
import type { BodySection, BodyStep, Recipe, Reference } from "../recipe/recipe.ts";
import { type Measured, workProse } from "./figures.ts";
import type { Join, Panel, WorkedSection, WorkedStep } from "./item.ts";
import { byLine } from "./joins/held-together.ts";
import type { PlacedMember, Placing, Within } from "./placed.ts";

/** A panel or an assembly that a section makes. */
type Kit = Pick<Panel, "name" | "kind" | "members" | "at">;

/** What has been put in place so far, by the reference that did it. */
type Put = Map<string, Reference>;

/** Of each kind made on the bench, and of the item. A member of a panel in an assembly is put in place on each level. */
type Log = { readonly made: Map<string, Put>; readonly item: Put };

/** Sections in order. Every member is named once; those of a panel in the section that makes it, the panel where it is stood. */
export function workSections(
  recipe: Recipe,
  joins: readonly Join[],
  measured: Measured,
): { sections: WorkedSection[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const made = kitsMade(recipe, measured, problems);
  const log: Log = { made: new Map([...made.values()].flat().map((kit) => [kit.kind, new Map()])), item: new Map() };
  const closed = new Set<Join>();
  const threaded = new Set<string>();
  const sections = recipe.sections.map((section): WorkedSection => {
    const kits = made.get(section);
    const prose = (p: BodySection["heading"]) => workProse(p, within(section), measured, problems);
    const place = kits ? putInto(log, section) : log.item;
    const own = new Set(kits?.[0]?.members ?? measured.placing.members.map((m) => m.id));
    const steps = section.steps.map((step): WorkedStep => {
      const adds = addsOf(step, kits, section, { measured, log, made, recipe }, problems);
      const shown = adds.filter((id) => own.has(id));
      const there = [...place.keys()].filter((id) => own.has(id) && !adds.includes(id));
      const now = new Set([...there, ...shown]);
      const closing = joins.filter((j) => !closed.has(j) && now.has(j.a) && now.has(j.b));
      for (const join of closing) closed.add(join);
      if (!kits) for (const name of cordsNamed(step, recipe)) threaded.add(name);
      return {
        number: step.number,
        at: step.at,
        text: prose(step.text),
        adds,
        there,
        shown,
        cords: kits ? [] : [...threaded],
        joins: closing,
        checks: step.checks.map(prose),
        cautions: step.cautions.map(prose),
      };
    });
    // The like kits of this section are put together in the same steps; only the first of them is shown.
    for (const kit of kits ?? []) {
      const ids = new Set(kit.members);
      for (const join of joins) if (ids.has(join.a) && ids.has(join.b)) closed.add(join);
    }
    return {
      heading: prose(section.heading),
      ...(section.makes && kits
        ? {
            makes: { kind: section.makes.panel.text, panels: kits.map((p) => p.name), times: section.makes.times },
          }
        : {}),
      steps,
      notes: section.notes.map(prose),
    };
  });
  problems.push(...checkAllNamed(recipe, measured.placing.members, log, made));
  const stepped = recipe.sections.some((section) => section.steps.length > 0);
  for (const { name, at } of stepped ? measured.item.cords : []) {
    if (!threaded.has(name)) problems.push(problem("cord-in-no-step", at, { name }));
  }
  return { sections, problems };
}

const cordsNamed = (step: BodyStep, { cords }: Recipe): string[] =>
  cords
    .map(({ name }) => name.text)
    .filter((name) => step.adds.some(({ names: [only, more] }) => !more && only?.text === name));

const putInto = (log: Log, section: BodySection): Put => log.made.get(section.makes?.panel.text ?? "") ?? new Map();

/** The kinds a member belongs to that a section makes, the innermost first. */
const kindsOf = (member: PlacedMember, log: Log): string[] =>
  [member.panelKind, member.assemblyKind].filter((kind): kind is string => kind !== undefined && log.made.has(kind));

const within = (section: BodySection): Within => section.makes && { panelKind: section.makes.panel.text };

/** The panels and assemblies that each section makes, in the order in which they stand; the counts must come to those that stand. */
function kitsMade(recipe: Recipe, measured: Measured, problems: Problem[]): ReadonlyMap<BodySection, readonly Kit[]> {
  const made = new Map<BodySection, readonly Kit[]>();
  const taken = new Map<string, number>();
  const kits = [...measured.placing.panels, ...measured.placing.assemblies];
  for (const section of recipe.sections) {
    if (!section.makes) continue;
    const { panel, times, at } = section.makes;
    const from = taken.get(panel.text) ?? 0;
    taken.set(panel.text, from + times);
    const stand = kits.filter((p) => p.kind === panel.text);
    made.set(section, stand.slice(from, from + times));
    const later = recipe.sections.slice(recipe.sections.indexOf(section) + 1);
    const isLast = !later.some((s) => s.makes?.panel.text === panel.text);
    if (!isLast || from + times === stand.length) continue;
    const facts = { panel: panel.text, made: from + times, stand: stand.map((p) => p.name) };
    problems.push(problem("made-count", at, facts, stand[0]?.at));
  }
  return made;
}

type Making = {
  readonly measured: Measured;
  readonly log: Log;
  readonly made: ReadonlyMap<BodySection, readonly Kit[]>;
  readonly recipe: Recipe;
};

/** What a step puts in place: members of the kits its section makes, or of the item. */
function addsOf(
  step: BodyStep,
  kits: readonly Kit[] | undefined,
  section: BodySection,
  { measured, log, made, recipe }: Making,
  problems: Problem[],
): string[] {
  const { placing } = measured;
  const mine = kits && new Set(kits.flatMap((p) => p.members));
  const place = kits ? putInto(log, section) : log.item;
  const kind = section.makes?.panel.text;
  const inner = [...made.values()].flat().filter((kit) => kit.kind !== kind);
  return step.adds.flatMap((reference) => {
    // A fitting or a cord may be named too; it is no board, so it adds nothing to the picture's boards.
    const isFitting = [...recipe.fittings, ...recipe.cords].some((line) => line.name.text === reference.names[0]?.text);
    if (!kits && isFitting && reference.names.length === 1) return [];
    const found = placing.find(reference, within(section));
    if ("code" in found) {
      problems.push(found);
      return [];
    }
    const strange = kind === undefined ? [] : found.filter((m) => m.panelKind !== kind && m.assemblyKind !== kind);
    if (kind !== undefined && (strange.length > 0 || found.length === 0)) {
      const facts = { what: reference.text, panel: kind, members: strange.map((m) => m.id) };
      problems.push(problem("not-of-panel", reference.at, facts, strange[0]?.at));
    }
    // What was made in a section of its own is stood as a whole; naming a part of it names that part twice.
    const ids = new Set(found.map((m) => m.id));
    const parts = found.filter((m) => {
      const around = inner.filter((kit) => kit.members.includes(m.id) && !isAround(kit, mine));
      return around.some((kit) => !kit.members.every((id) => ids.has(id)));
    });
    for (const part of parts.slice(0, 1)) {
      const before = kindsOf(part, log)
        .map((k) => log.made.get(k))
        .find((put) => put?.has(part.id));
      problems.push(
        ...twice(parts, reference, before ?? new Map(), section.makes ? undefined : benchOf(part, placing)),
      );
    }
    const named = found.filter((m) => !parts.includes(m) && (!mine || mine.has(m.id)));
    const again = named.find((m) => place.has(m.id));
    const bench = again && !section.makes && kindsOf(again, log).length === 0 ? benchOf(again, placing) : undefined;
    return put(named, reference, place, problems, bench);
  });
}

/** Whether a kit is more than what this section makes: an assembly around the panel that is being made. */
const isAround = (kit: Kit, mine: ReadonlySet<string> | undefined): boolean =>
  mine !== undefined && !kit.members.every((id) => mine.has(id));

type Bench = { readonly panel: string; readonly times: number };

/** The panel that a board belongs to, and how many of it stand. */
const benchOf = ({ panelKind }: PlacedMember, { panels }: Placing): Bench | undefined =>
  panelKind === undefined ? undefined : { panel: panelKind, times: panels.filter((p) => p.kind === panelKind).length };

/** Writes down what is put in place now and tells what already was. */
function put(
  members: readonly PlacedMember[],
  reference: Reference,
  place: Map<string, Reference>,
  problems: Problem[],
  bench: Bench | undefined,
): string[] {
  const before = members.filter((m) => place.has(m.id));
  problems.push(...twice(before, reference, place, bench));
  const fresh = members.filter((m) => !place.has(m.id));
  for (const m of fresh) place.set(m.id, reference);
  return fresh.map((m) => m.id);
}

function twice(
  members: readonly PlacedMember[],
  reference: Reference,
  place: ReadonlyMap<string, Reference>,
  bench: Bench | undefined,
): Problem[] {
  const first = members[0];
  if (!first) return [];
  const ids = members.map((m) => m.id);
  return [problem("named-twice", reference.at, { members: ids, what: reference.text, bench }, place.get(first.id)?.at)];
}

function checkAllNamed(
  recipe: Recipe,
  members: readonly PlacedMember[],
  log: Log,
  made: ReadonlyMap<BodySection, readonly Kit[]>,
): Problem[] {
  if (recipe.sections.every((section) => section.steps.length === 0)) {
    return [problem("no-steps", recipe.overall.at, { count: members.length })];
  }
  const problems: Problem[] = [];
  const makers = [...made];
  // Members of like kits fail together; they are told for the first of them only. In a level around a kit, the whole kit
  // is missing or none of it.
  for (const [kind, done] of log.made) {
    const [section, kits = []] = makers.find(([, all]) => all.some((kit) => kit.kind === kind)) ?? [];
    const own = new Set(kits[0]?.members);
    const unmade = members.filter((m) => own.has(m.id) && !done.has(m.id));
    const innerKits = makers
      .flatMap(([, all]) => all)
      .filter((kit) => kit.kind !== kind && kit.members.every((id) => own.has(id)));
    for (const kit of innerKits) {
      if (!unmade.some((m) => kit.members.includes(m.id))) continue;
      problems.push(problem("panel-not-stood", kit.at, { panel: kit.name, kind: kit.kind }, section?.makes?.at));
    }
    const inKits = new Set(innerKits.flatMap((kit) => kit.members));
    for (const line of byLine(unmade.filter((m) => !inKits.has(m.id)))) {
      const first = line[0] as PlacedMember;
      problems.push(
        problem("in-no-step", first.at, { members: line.map((m) => m.id), makes: kind }, section?.makes?.at),
      );
    }
  }
  const unset = members.filter((m) => !log.item.has(m.id));
  const outer = (m: PlacedMember) => kindsOf(m, log).at(-1);
  for (const [section, kits] of makers) {
    for (const kit of kits) {
      if (!unset.some((m) => outer(m) === kit.kind && kit.members.includes(m.id))) continue;
      problems.push(problem("panel-not-stood", kit.at, { panel: kit.name, kind: kit.kind }, section.makes?.at));
    }
  }
  for (const line of byLine(unset.filter((m) => outer(m) === undefined))) {
    const first = line[0] as PlacedMember;
    problems.push(problem("in-no-step", first.at, { members: line.map((m) => m.id), makes: undefined }));
  }
  return problems;
}

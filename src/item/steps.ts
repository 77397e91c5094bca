// The sections of the body -> steps with what each adds, what is there already and which joins close; each member once.
import { type Problem, problem } from "../problems/problem.ts";
import type { BodySection, BodyStep, Recipe, Reference } from "../recipe/recipe.ts";
import { type Measured, workProse } from "./figures.ts";
import type { Join, Panel, WorkedSection, WorkedStep } from "./item.ts";
import { byLine } from "./joins/held-together.ts";
import type { PlacedMember, Within } from "./placed.ts";

/** What has been put in place so far, by the reference that did it: on the bench, and in the item. */
type Log = { readonly bench: Map<string, Reference>; readonly item: Map<string, Reference> };

/** Sections in order. Every member is named once; those of a panel in the section that makes it, the panel where it is stood. */
export function workSections(
  recipe: Recipe,
  joins: readonly Join[],
  measured: Measured,
): { sections: WorkedSection[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const log: Log = { bench: new Map(), item: new Map() };
  const made = panelsMade(recipe, measured, problems);
  const onBench = new Set([...made.values()].flatMap((panels) => panels.flatMap((p) => p.members)));
  const closed = new Set<Join>();
  const sections = recipe.sections.map((section): WorkedSection => {
    const panels = made.get(section);
    const prose = (p: BodySection["heading"]) => workProse(p, within(section), measured, problems);
    const steps = section.steps.map((step): WorkedStep => {
      const adds = panels
        ? addsOnBench(step, panels, section, measured, log, problems)
        : addsToItem(step, onBench, measured, log, recipe, problems);
      const own = new Set(panels?.[0]?.members ?? measured.placing.members.map((m) => m.id));
      const shown = adds.filter((id) => own.has(id));
      const place = panels ? log.bench : log.item;
      const there = [...place.keys()].filter((id) => own.has(id) && !adds.includes(id));
      const now = new Set([...there, ...shown]);
      const closing = joins.filter((j) => !closed.has(j) && now.has(j.a) && now.has(j.b));
      for (const join of closing) closed.add(join);
      return {
        number: step.number,
        at: step.at,
        text: prose(step.text),
        adds,
        there,
        shown,
        joins: closing,
        checks: step.checks.map(prose),
        cautions: step.cautions.map(prose),
      };
    });
    // The like panels of this section are screwed together in the same steps; only the first of them is shown.
    const built = new Set(panels?.flatMap((p) => p.members));
    for (const join of joins) if (built.has(join.a) && built.has(join.b)) closed.add(join);
    return {
      heading: prose(section.heading),
      ...(section.makes && panels
        ? {
            makes: {
              kind: section.makes.panel.text,
              panels: panels.map((p) => p.name),
              times: section.makes.times,
            },
          }
        : {}),
      steps,
      notes: section.notes.map(prose),
    };
  });
  problems.push(...checkAllNamed(recipe, measured.placing.members, onBench, log, made));
  return { sections, problems };
}

const within = (section: BodySection): Within => section.makes && { panelKind: section.makes.panel.text };

/** The panels that each section makes, in the order in which they stand; the counts must come to those that stand. */
function panelsMade(
  recipe: Recipe,
  measured: Measured,
  problems: Problem[],
): ReadonlyMap<BodySection, readonly Panel[]> {
  const made = new Map<BodySection, readonly Panel[]>();
  const taken = new Map<string, number>();
  const { panels } = measured.placing;
  for (const section of recipe.sections) {
    if (!section.makes) continue;
    const { panel, times, at } = section.makes;
    const from = taken.get(panel.text) ?? 0;
    taken.set(panel.text, from + times);
    made.set(section, panels.filter((p) => p.kind === panel.text).slice(from, from + times));
    const stand = panels.filter((p) => p.kind === panel.text);
    const later = recipe.sections.slice(recipe.sections.indexOf(section) + 1);
    const isLast = !later.some((s) => s.makes?.panel.text === panel.text);
    if (!isLast || from + times === stand.length) continue;
    const facts = { panel: panel.text, made: from + times, stand: stand.map((p) => p.name) };
    problems.push(problem("made-count", at, facts, stand[0]?.at));
  }
  return made;
}

function addsOnBench(
  step: BodyStep,
  panels: readonly Panel[],
  section: BodySection,
  { placing }: Measured,
  { bench }: Log,
  problems: Problem[],
): string[] {
  const mine = new Set(panels.flatMap((p) => p.members));
  return step.adds.flatMap((reference) => {
    const found = placing.find(reference, within(section));
    if ("code" in found) {
      problems.push(found);
      return [];
    }
    const kind = section.makes?.panel.text ?? "";
    const strange = found.filter((m) => m.panelKind !== kind);
    if (strange.length > 0 || found.length === 0) {
      const facts = { what: reference.text, panel: kind, members: strange.map((m) => m.id) };
      problems.push(problem("not-of-panel", reference.at, facts, strange[0]?.at));
    }
    return put(
      found.filter((m) => mine.has(m.id)),
      reference,
      bench,
      problems,
    );
  });
}

function addsToItem(
  step: BodyStep,
  onBench: ReadonlySet<string>,
  { placing }: Measured,
  log: Log,
  recipe: Recipe,
  problems: Problem[],
): string[] {
  return step.adds.flatMap((reference) => {
    // A fitting may be named too; it is no board, so it adds nothing to the picture's boards.
    if (recipe.fittings.some((line) => reference.names.length === 1 && line.name.text === reference.names[0]?.text))
      return [];
    const found = placing.find(reference, undefined);
    if ("code" in found) {
      problems.push(found);
      return [];
    }
    // A panel made on the bench is stood as a whole; naming a part of it names that part twice.
    const parts = found.filter((m) => onBench.has(m.id) && !isWhole(m, found, placing.panels));
    problems.push(...twice(parts, reference, log.bench));
    return put(
      found.filter((m) => !parts.includes(m)),
      reference,
      log.item,
      problems,
    );
  });
}

function isWhole(member: PlacedMember, found: readonly PlacedMember[], panels: readonly Panel[]): boolean {
  const ids = new Set(found.map((m) => m.id));
  const panel = panels.find((p) => p.name === member.panel);
  return panel?.members.every((id) => ids.has(id)) ?? false;
}

/** Writes down what is put in place now and tells what already was. */
function put(
  members: readonly PlacedMember[],
  reference: Reference,
  place: Map<string, Reference>,
  problems: Problem[],
): string[] {
  const before = members.filter((m) => place.has(m.id));
  problems.push(...twice(before, reference, place));
  const fresh = members.filter((m) => !place.has(m.id));
  for (const m of fresh) place.set(m.id, reference);
  return fresh.map((m) => m.id);
}

function twice(
  members: readonly PlacedMember[],
  reference: Reference,
  place: ReadonlyMap<string, Reference>,
): Problem[] {
  const first = members[0];
  if (!first) return [];
  const ids = members.map((m) => m.id);
  return [problem("named-twice", reference.at, { members: ids, what: reference.text }, place.get(first.id)?.at)];
}

function checkAllNamed(
  recipe: Recipe,
  members: readonly PlacedMember[],
  onBench: ReadonlySet<string>,
  log: Log,
  made: ReadonlyMap<BodySection, readonly Panel[]>,
): Problem[] {
  if (recipe.sections.every((section) => section.steps.length === 0)) {
    return [problem("no-steps", recipe.overall.at, { count: members.length })];
  }
  const problems: Problem[] = [];
  // Members of like panels fail together; they are told for the first panel only.
  const unmade = members.filter((m) => onBench.has(m.id) && !log.bench.has(m.id));
  for (const line of byLine(unmade)) {
    const first = line[0] as PlacedMember;
    const ids = line.filter((m) => m.panel === first.panel).map((m) => m.id);
    const section = [...made].find(([, panels]) => panels.some((p) => p.name === first.panel))?.[0];
    problems.push(problem("in-no-step", first.at, { members: ids, makes: first.panelKind }, section?.makes?.at));
  }
  const unset = members.filter((m) => !log.item.has(m.id));
  const panels = new Map<string, PlacedMember[]>();
  for (const m of unset.filter((u) => onBench.has(u.id))) {
    const panel = m.panel ?? "";
    panels.set(panel, [...(panels.get(panel) ?? []), m]);
  }
  for (const [section, of] of made) {
    for (const panel of of) {
      if (panels.has(panel.name)) {
        problems.push(problem("panel-not-stood", panel.at, { panel: panel.name, kind: panel.kind }, section.makes?.at));
      }
    }
  }
  for (const line of byLine(unset.filter((u) => !onBench.has(u.id)))) {
    const first = line[0] as PlacedMember;
    problems.push(problem("in-no-step", first.at, { members: line.map((m) => m.id), makes: undefined }));
  }
  return problems;
}

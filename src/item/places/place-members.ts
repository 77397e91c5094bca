// Recipe + yard -> every member in its exact place, with what later stages ask about names and sums.
import type { Vec3 } from "../../geometry/shape.ts";
import { solidOf } from "../../geometry/solid.ts";
import { subtract } from "../../geometry/vector.ts";
import type { Problem } from "../../problems/problem.ts";
import type { Recipe, Reference } from "../../recipe/recipe.ts";
import { compareLengths, inches, least, minus, most } from "../../units/length.ts";
import { type Axis, axes } from "../../units/side.ts";
import type { Yard } from "../../yard/yard.ts";
import { shapeOf } from "../frame.ts";
import type { Heading, Item, Lie, Panel, PlacedFitting, Point } from "../item.ts";
import { checkBlanks } from "../outlines/check-blanks.ts";
import { blanksOf } from "../outlines/form-piece.ts";
import { lieOutline, type Seen } from "../outlines/lie-outline.ts";
import type { PlacedMember, Placing, Slant, Within } from "../placed.ts";
import { Answers } from "./ask.ts";
import {
  checkBlankWidth,
  checkBoardLength,
  checkOverall,
  checkPanelSizes,
  checkPanelsAlike,
  checkPanelsUsed,
  checkSizes,
} from "./check-places.ts";
import { Fault, orFault, orProblem } from "./fault.ts";
import { findTargets, panelSpaces } from "./find.ts";
import { halfOf, type Interval, middleOf, sizeOf } from "./interval.ts";
import { axisVector } from "./lean.ts";
import { Places } from "./places.ts";
import { sizesBeforePlacing } from "./sizes.ts";
import { movedSlant } from "./slant.ts";
import { sectionNamed, sectionsOf, spacesOf } from "./spaces.ts";
import type { Target } from "./target.ts";
import type { Body, Lay, Space, Thing } from "./thing.ts";
import type { Tipped } from "./tilt.ts";

/** All members placed, or every problem that stands in the way. Never throws for what a maker wrote. */
export function placeMembers(recipe: Recipe, yard: Yard): { placing?: Placing; problems: Problem[] } {
  const problems: Problem[] = [];
  const answers = new Answers();
  const sections = sectionsOf(recipe, yard, sizesBeforePlacing(recipe, answers));
  for (const name of sections.keys()) orProblem(problems, () => sectionNamed(sections, name));
  const item = spacesOf(recipe, yard, sections, problems);
  const places = new Places(recipe, sections, item, answers);
  checkSizes(recipe, places, problems);
  checkPanelsUsed(recipe, item, problems);

  const targets = allTargets(places, problems);
  const boxes = new Map<string, Record<Axis, Interval>>();
  for (const target of targets) {
    const box = boxOf(places, target, problems);
    if (box) boxes.set(memberId(places, target), box);
  }
  // Only a recipe whose every member has a place can be measured as a whole.
  if (problems.length > 0 || boxes.size < targets.length) return { problems };
  const first = boxes.values().next().value;
  if (!first) throw new Error(`${recipe.file} puts nothing in place`);
  const whole = [...boxes.values()].reduce(union, first);
  checkOverall(recipe, places, boxes, whole, problems);

  const origin = { x: whole.x.lo, y: whole.y.lo, z: whole.z.lo };
  const members: PlacedMember[] = [];
  const fittings: PlacedFitting[] = looseFittings(recipe, yard);
  for (const target of targets) {
    const box = shifted(boxes.get(memberId(places, target)) as Record<Axis, Interval>, origin);
    if (target.thing.body.kind === "fitting") fittings.push(placedFitting(places, target, box, origin));
    else members.push(placedMember(places, target, box, whole, origin));
  }
  for (const member of members) {
    checkBoardLength(member, problems);
    checkBlankWidth(member, problems);
  }
  problems.push(...members.flatMap(checkBlanks));
  const kits = panelSpaces(item).map((space) => ({ space, placed: placedPanel(places, space, origin) }));
  const panels = kits.filter(({ space }) => space.kind === "panel").map(({ placed }) => placed);
  const assemblies = kits.filter(({ space }) => space.kind === "assembly").map(({ placed }) => placed);
  checkPanelsAlike([...panels, ...assemblies], problems);
  checkPanelSizes(places, item, problems);
  if (problems.length > 0) return { problems };

  const byId = new Map(members.map((m) => [m.id, m]));
  const kitOf = new Map(kits.map(({ placed }) => [placed.name, placed]));
  const spaceFor = (within: Within): Space =>
    (within && panelSpaces(item).find((s) => s.panel?.name.text === within.panelKind)) ?? item;
  const placing: Placing = {
    members,
    panels,
    assemblies,
    fittings,
    overall: { width: sizeOf(whole.x), depth: sizeOf(whole.y), height: sizeOf(whole.z) },
    gaps: gapsOf(places, item),
    find: (reference: Reference, within: Within) =>
      orTold(() =>
        findTargets(places, reference, within)
          .flatMap((target) => membersOf(places, target))
          .flatMap((target) => byId.get(memberId(places, target)) ?? []),
      ),
    work: (sum, within) =>
      orTold(() => places.value(sum, { space: spaceFor(within), axis: undefined, set: 0, anywhere: { origin } })),
    turned: (member) => kitOf.get(member.panel ?? member.assembly ?? ""),
  };
  return { placing, problems };
}

/** The value, or the maker's problem. */
function orTold<T>(compute: () => T): T | Problem {
  const value = orFault(compute);
  return value instanceof Fault ? value.problem : value;
}

/** "front-face/rails/3"; a line with one member has no number. */
function memberId(places: Places, { thing, index }: Target): string {
  const key = thing.space.key === "" ? thing.key : `${thing.space.key.replaceAll(" ", "/")}/${thing.line.name.text}`;
  return places.count(thing) === 1 ? key : `${key}/${index + 1}`;
}

/** The members of a target: itself, or all members of a panel. */
function membersOf(places: Places, target: Target): Target[] {
  const { thing, index } = target;
  if (thing.body.kind !== "panel") return [target];
  const inner = thing.body.inner[index] as Space;
  return [...inner.things.values()].flatMap((t) => countUp(places.count(t), t)).flatMap((t) => membersOf(places, t));
}

const countUp = (count: number, thing: Thing): Target[] =>
  Array.from({ length: count }, (_, index) => ({ thing, index }));

/** Every single member and placed fitting, in the order of the lines. */
function allTargets(places: Places, problems: Problem[]): Target[] {
  const targets: Target[] = [];
  const add = (thing: Thing) => {
    const found = orProblem(problems, () => countUp(places.count(thing), thing));
    for (const target of found ?? []) targets.push(target);
  };
  const fill = (thing: Thing): void => {
    if (thing.body.kind !== "panel") add(thing);
    else for (const inner of thing.body.inner) for (const t of inner.things.values()) fill(t);
  };
  for (const thing of places.item.things.values()) fill(thing);
  return targets;
}

function boxOf(places: Places, target: Target, problems: Problem[]): Record<Axis, Interval> | undefined {
  const [x, y, z] = axes.map((axis) => orProblem(problems, () => places.extent(target, places.item, axis)));
  return x && y && z && { x, y, z };
}

const union = (a: Record<Axis, Interval>, b: Record<Axis, Interval>): Record<Axis, Interval> => {
  const along = (axis: Axis): Interval => ({ lo: least(a[axis].lo, b[axis].lo), hi: most(a[axis].hi, b[axis].hi) });
  return { x: along("x"), y: along("y"), z: along("z") };
};

function shifted(box: Record<Axis, Interval>, origin: Point): Record<Axis, Interval> {
  const along = (axis: Axis): Interval => ({
    lo: minus(box[axis].lo, origin[axis]),
    hi: minus(box[axis].hi, origin[axis]),
  });
  return { x: along("x"), y: along("y"), z: along("z") };
}

const least3 = (box: Record<Axis, Interval>): Point => ({ x: box.x.lo, y: box.y.lo, z: box.z.lo });
const most3 = (box: Record<Axis, Interval>): Point => ({ x: box.x.hi, y: box.y.hi, z: box.z.hi });

type PieceTarget = Thing & { body: Body & { kind: "piece" } };

function placedMember(
  places: Places,
  target: Target,
  box: Record<Axis, Interval>,
  whole: Record<Axis, Interval>,
  origin: Point,
): PlacedMember {
  const thing = target.thing as PieceTarget;
  const { section } = thing.body;
  const lie = lieOf(thing, box, whole);
  const space = thing.space;
  const at = thing.line.at;
  const own = places.slantIn(thing, target.index, places.item);
  const slant = own && fromOrigin(own, origin);
  const length = slant ? slant.size[0] : sizeOf(box[lie.length]);
  return {
    id: memberId(places, target),
    ...kitsOf(space),
    group: thing.line.name.text,
    number: target.index + 1,
    pieceKind: section.name,
    board: section.board,
    ripped: section.ripped,
    planed: section.planed,
    lie,
    min: least3(box),
    max: most3(box),
    length,
    width: slant ? slant.size[1] : sizeOf(box[lie.width]),
    thickness: slant ? slant.size[2] : sizeOf(box[lie.thickness]),
    loose: [thing, ...hostsOf(space)].some((t) => t.line.clauses.some((c) => c.kind === "loose")),
    ...(slant ? { slant } : {}),
    ...(section.outline ? { outline: lieOutline(section.outline, lie, seenFrom(space)) } : {}),
    ...(section.glue ? { blanks: blanksOf(section.glue, length, section.width) } : {}),
    at,
  };
}

/** The directions an outline is seen by. */
function seenFrom(space: Space): Seen {
  const host = space.host?.thing().body;
  if (host?.kind === "panel") return { up: host.turn.z, through: host.turn.y, mirrored: host.mirrored };
  return { up: { axis: "z", sign: 1 }, through: { axis: "y", sign: 1 }, mirrored: false };
}

/** A slant of the item's space told from the least corner of the whole. */
function fromOrigin(slant: Slant, origin: Point): Slant {
  const by: Vec3 = [inches(origin.x), inches(origin.y), inches(origin.z)];
  return movedSlant(
    slant,
    (v) => v,
    (p) => subtract(p, by),
  );
}

/** How a board lies in the item, and to which side its good face looks. */
function lieOf(thing: PieceTarget, box: Record<Axis, Interval>, whole: Record<Axis, Interval>): Lie {
  const { lay } = thing.body;
  const facing = thing.line.clauses.find((c) => c.kind === "facing");
  if (thing.space.kind === "panel") {
    // Good faces look to the good side; a board on edge shows its upper face.
    const show = outside(thing.space, { axis: lay.thickness, sign: lay.thickness === "y" ? -1 : 1 });
    return { ...outsideLay(thing.space, lay), show };
  }
  const axis = lay.thickness;
  const far = (side: string) => side === "right" || side === "back" || side === "top";
  const lie = outsideLay(thing.space, lay);
  if (facing?.kind === "facing") {
    return { ...lie, show: outside(thing.space, { axis, sign: far(facing.side) ? 1 : -1 }) };
  }
  if (axis === "z") return { ...lie, show: { axis, sign: 1 } };
  // A loose board shows its good face to the outside: away from the middle of the whole, whose box starts at 0.
  const own = lie.thickness;
  const sign = compareLengths(middleOf(box[own]), halfOf(sizeOf(whole[own]))) < 0 ? -1 : 1;
  return { ...lie, show: { axis: own, sign } };
}

/** The panels and assemblies around a space, the nearest first. */
function hostsOf(space: Space): Thing[] {
  const host = space.host?.thing();
  return host ? [host, ...hostsOf(host.space)] : [];
}

/** The names of the panel and of the assembly that a space's members belong to. */
function kitsOf(space: Space): Pick<PlacedMember, "panel" | "panelKind" | "assembly" | "assemblyKind"> {
  if (space.kind === "item") return {};
  const kind = space.panel?.name.text as string;
  if (space.kind === "assembly") return { assembly: space.key, assemblyKind: kind };
  const around = space.host?.thing().space;
  return { ...(around ? kitsOf(around) : {}), panel: space.key, panelKind: kind };
}

/** A heading of a space as the item sees it. */
const outside = (space: Space, heading: Heading): Heading =>
  hostsOf(space).reduce((seen, { body }): Heading => {
    if (body.kind !== "panel") return seen;
    const to = body.turn[seen.axis];
    return { axis: to.axis, sign: to.sign === seen.sign ? 1 : -1 };
  }, heading);

const outsideLay = (space: Space, lay: Lay): Lay => {
  const seen = (axis: Axis): Axis => outside(space, { axis, sign: 1 }).axis;
  return { length: seen(lay.length), width: seen(lay.width), thickness: seen(lay.thickness) };
};

function placedFitting(places: Places, target: Target, box: Record<Axis, Interval>, origin: Point): PlacedFitting {
  const { thing, index } = target;
  if (thing.body.kind !== "fitting") throw new Error(`${thing.key} is no fitting`);
  const own = places.slantIn(thing, index, places.item);
  const lay = outsideLay(thing.space, thing.body.lay);
  const lie: Lie = { ...lay, show: { axis: lay.thickness, sign: 1 } };
  const slant = own && fromOrigin(own, origin);
  const lying = { min: least3(box), max: most3(box), lie, ...(slant ? { slant } : {}) };
  const solid = solidOf(shapeOf(lying, []));
  const placed = { min: lying.min, max: lying.max };
  return { id: memberId(places, target), fitting: thing.body.fitting, count: 1, box: placed, solid, at: thing.line.at };
}

function looseFittings(recipe: Recipe, yard: Yard): PlacedFitting[] {
  return recipe.fittings.flatMap((line): PlacedFitting[] => {
    const fitting = yard.fittings.find((f) => f.name === line.what.text);
    if (!fitting || !line.clauses.some((c) => c.kind === "loose")) return [];
    return [{ id: line.name.text, fitting, count: line.count === "follows" ? 1 : line.count, at: line.at }];
  });
}

function placedPanel(places: Places, space: Space, origin: Point): Panel {
  const host = space.host;
  const thing = host?.thing();
  if (!host || thing?.body.kind !== "panel") throw new Error(`${space.key} is no panel`);
  const { mirrored, panel } = thing.body;
  const along = (axis: Axis) => places.extent({ thing, index: host.index }, places.item, axis);
  const tip = places.tip(space);
  const box = shifted({ x: along("x"), y: along("y"), z: along("z") }, origin);
  return {
    name: space.key,
    kind: panel.name.text,
    mirrored,
    across: outside(space, { axis: "x", sign: 1 }),
    up: outside(space, { axis: "z", sign: 1 }),
    through: outside(space, { axis: "y", sign: 1 }),
    width: sizeOf(places.bodily(space, "x")),
    height: sizeOf(places.bodily(space, "z")),
    thickness: sizeOf(places.bodily(space, "y")),
    min: least3(box),
    max: most3(box),
    ...(tip ? { tipped: tippedFrame(places, thing.space, tip, origin) } : {}),
    members: membersOf(places, { thing, index: host.index })
      .filter((t) => t.thing.body.kind === "piece")
      .map((t) => memberId(places, t)),
    at: thing.line.at,
  };
}

/** A tipped panel's own frame in the item. `around` is the space its line stands in. */
function tippedFrame(places: Places, around: Space, tip: Tipped, origin: Point): NonNullable<Panel["tipped"]> {
  const [length, width, thickness] = (["x", "y", "z"] as const).map((axis) => tip.turn(axisVector(axis))) as [
    Vec3,
    Vec3,
    Vec3,
  ];
  let frame: Slant = { origin: tip.place([0, 0, 0]), length, width, thickness, size: [0, 0, 0], trims: [] };
  for (let space = around; space.host; space = space.host.thing().space) frame = places.slantOutside(space, frame);
  const moved = fromOrigin(frame, origin);
  return { origin: moved.origin, across: moved.length, through: moved.width, up: moved.thickness };
}

/** Every even gap once for each line, as its panel kind sees it. */
function gapsOf(places: Places, item: Space): Item["gaps"] {
  const gaps: Item["gaps"][number][] = [];
  const seen = new Set<string>();
  const add = (space: Space) => {
    for (const thing of space.things.values()) {
      const group = thing.line.name.text;
      const key = `${space.panel?.name.text ?? ""}/${group}`;
      if (thing.rowAxis === undefined || thing.body.kind === "panel" || seen.has(key)) continue;
      if (places.per(thing) < 2) continue;
      seen.add(key);
      const atEnds = thing.line.clauses.some((c) => c.kind === "end gaps");
      const kind = space.panel && { panelKind: space.panel.name.text };
      gaps.push({ group, ...kind, axis: thing.rowAxis, gap: places.gap(thing, 0), atEnds });
    }
  };
  for (const space of panelSpaces(item)) add(space);
  add(item);
  return gaps;
}

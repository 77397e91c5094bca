// An item and one of its steps -> the fittings and ropes that its picture shows: there already, coming with boards, put on now.
import { hullOf, isClear } from "../geometry/clear-way.ts";
import type { Vec3 } from "../geometry/shape.ts";
import { add, length, subtract, times } from "../geometry/vector.ts";
import type { Item, PlacedFitting, WorkedStep } from "../item/item.ts";
import { type Extra, fittingExtras, fittingSeats, lineOf, ropeExtras } from "./extras.ts";
import type { Body } from "./picture.ts";
import type { Entry } from "./way-in.ts";

export type StepExtras = {
  readonly all: readonly Extra[];
  /** Names of those that come in this step, with their boards or by themselves. */
  readonly added: ReadonlySet<string>;
  /** Names of those that this very step puts on. */
  readonly putOn: readonly string[];
  readonly entries: readonly Entry[];
};

const stepsOf = (item: Item): readonly WorkedStep[] => item.sections.flatMap((section) => section.steps);

/** The step that names a fitting by its line, or in the words of the yard; one that no step names is put on in the last. */
export function stepFor(item: Item, fitting: PlacedFitting): WorkedStep | undefined {
  const steps = stepsOf(item);
  const says = (words: string) => steps.find((step) => step.text.markdown.toLowerCase().includes(words.toLowerCase()));
  return says(`**${lineOf(fitting)}**`) ?? says(fitting.fitting.name) ?? steps.at(-1);
}

/** Cords that this step threads: no earlier one has. */
function newCords(item: Item, step: WorkedStep): readonly string[] {
  const steps = stepsOf(item);
  const before = new Set(steps.slice(0, steps.indexOf(step)).flatMap(({ cords }) => cords));
  return step.cords.filter((name) => !before.has(name));
}

/** Whether a step's picture has anything to show that the one before it hasn't. */
export const hasPicture = (item: Item, step: WorkedStep): boolean =>
  step.shown.length > 0 ||
  (step.there.length > 0 &&
    (step.joins.some((join) => join.driven.length > 0) ||
      newCords(item, step).length > 0 ||
      item.fittings.some((fitting) => fitting.solid !== undefined && stepFor(item, fitting) === step)));

const still: Vec3 = [0, 0, 0];

/** Bodies are the step's boards where its picture has them; what is put on stands off its seat by `distance`, where its way is free. */
export function stepExtras(item: Item, step: WorkedStep, bodies: readonly Body[], distance: number): StepExtras {
  const added = new Set<string>();
  const putOn: string[] = newCords(item, step).slice();
  for (const name of putOn) added.add(name);
  const all: Extra[] = item.cords.filter(({ name }) => step.cords.includes(name)).flatMap((cord) => ropeExtras(cord));
  const entries: Entry[] = [];
  const order = stepsOf(item);
  for (const fitting of item.fittings) {
    const seats = fittingSeats(
      [fitting],
      bodies.map(({ member }) => member),
    );
    const [seat] = [...seats].sort((a, b) => b.area - a.area);
    const when = stepFor(item, fitting);
    if (seat === undefined || when === undefined || order.indexOf(when) > order.indexOf(step)) continue;
    const board = bodies.find(({ member }) => member.id === seat.a) as Body;
    const name = lineOf(fitting);
    if (step.shown.includes(seat.a) || when === step) added.add(name);
    if (when !== step) {
      all.push(...fittingExtras(fitting, board.by));
      continue;
    }
    if (!putOn.includes(name)) putOn.push(name);
    const touched = new Set(seats.map(({ a }) => a));
    const others = bodies.filter(({ member }) => !touched.has(member.id));
    const way = freeWay(fitting, seat.normal, board.by, others, distance);
    all.push(...fittingExtras(fitting, add(board.by, way)));
    if (length(way) > 0) entries.push(entryOf(fitting, way, board.by));
  }
  return { all, added, putOn, entries };
}

function entryOf(fitting: PlacedFitting, way: Vec3, onto: Vec3): Entry {
  const members = fittingExtras(fitting).map(({ solid }) => ({ id: fitting.id, solid, shape: solid.shape }));
  return { members, by: new Map([[fitting.id, way]]), goesIn: true, onto };
}

/** Out of its seat, square to it, as far as nothing else stands in the way of it; still where even a third is too far. */
function freeWay(fitting: PlacedFitting, normal: Vec3, by: Vec3, bodies: readonly Body[], distance: number): Vec3 {
  const { solid } = fitting;
  if (solid === undefined) return still;
  for (const part of [1, 0.6, 0.35]) {
    const way = times(normal, distance * part);
    const free = bodies.every(({ member, by: other }) => {
      const seated = subtract(by, other);
      return isClear(hullOf(solid), add(seated, way), seated, hullOf(member.solid));
    });
    if (free) return way;
  }
  return still;
}

// Worked-out item -> when a second pair of hands is needed, from weights and lengths.
import { liftedByTwo, stepOperations } from "../../findings/operations.ts";
import type { Item } from "../../item/item.ts";
import { inches, type Length } from "../../units/length.ts";
import type { Edition } from "../edition.ts";

/** Pieces from this length on sag at the saw and swing while they are fixed. Common practice, no source. */
const longPiece = 72;

export type Hands = {
  /** Numbers of the steps in which what is in hand is too heavy for one. */
  readonly steps: readonly number[];
  /** The longest piece, where it is too long for one. */
  readonly longest?: Length;
  /** The whole is too heavy to be carried by one. */
  readonly heavy: boolean;
};

export function handsOf(item: Item): Hands {
  const steps = item.sections.flatMap((section) =>
    section.steps
      .filter((step) => stepOperations(step, item, section.makes !== undefined).includes("lift"))
      .map(({ number }) => number),
  );
  const [longest] = [...item.pieces].sort((a, b) => inches(b.length) - inches(a.length));
  const isLong = longest !== undefined && inches(longest.length) >= longPiece;
  return { steps, heavy: item.weight >= liftedByTwo, ...(isLong ? { longest: longest.length } : {}) };
}

export function handsWords(item: Item, { weight, length }: Pick<Edition, "weight" | "length">): string {
  const { steps, longest, heavy } = handsOf(item);
  const [first] = steps;
  const reasons = [
    ...(longest === undefined ? [] : [`to cut and fix what is ${length(longest)} long`]),
    ...(first === undefined
      ? []
      : [`${steps.length === 1 ? "in step" : "from step"} ${first} on, to lift what is in hand`]),
    ...(heavy ? [`to carry it: it weighs ${weight(item.weight)}`] : []),
  ];
  return reasons.length === 0
    ? "Not needed: nothing is too long or too heavy for one."
    : `Needed ${reasons.join("; ")}.`;
}

// The contract of patterns at true size: what is drawn for one, before it is laid on pages.
import type { Mark, Paper } from "../drawing.ts";

/** Paper millimetres, 25.4 for an inch of the thing, origin at its upper left. */
export type Template = {
  readonly id: string;
  readonly title: string;
  /** How it is used, in one sentence. */
  readonly how: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
};

/** Type of everything that is read off a pattern: 9 pt. */
export const templateType = 3.2;

export const closedChain = (loop: readonly Paper[]): readonly Paper[] => (loop[0] ? [...loop, loop[0]] : []);

export const rectangle = (left: number, top: number, width: number, height: number): readonly Paper[] => [
  [left, top],
  [left + width, top],
  [left + width, top + height],
  [left, top + height],
];

// What is spoken of: a member of a line, or a whole panel; and where a sum is read.
import type { Length } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import type { Space, Thing } from "./thing.ts";

/** One member of a thing; for a panel line, one panel as a whole. */
export type Target = { readonly thing: Thing; readonly index: number };

/** One member of a thing, and which of which set of an `each` line it is; all counted from 0. */
export type One = Target & { readonly set: number; readonly k: number };

/** Where a sum or a reference is read: the space, the axis it must lie along, and which set of an `each` line. */
export type Reading = {
  readonly space: Space;
  readonly axis: Axis | undefined;
  readonly set: number;
  /** In prose and claims names are read over the whole recipe, and lines count from where the finished thing begins. */
  readonly anywhere?: { readonly origin: Record<Axis, Length> };
};

export const axisWords: Readonly<Record<Axis, string>> = {
  x: "from left to right",
  y: "from front to back",
  z: "in height",
};

// What placing gives: every member in its exact place, before solids, cuts and joins.
import type { Loop, Trim, Vec3 } from "../geometry/shape.ts";
import type { Place } from "../problems/place.ts";
import type { Problem } from "../problems/problem.ts";
import type { Reference, Sum } from "../recipe/recipe.ts";
import type { Length } from "../units/length.ts";
import type { Board } from "../yard/yard.ts";
import type { Blank, Item, Lie, Panel, PlacedFitting, Point } from "./item.ts";

export type PlacedMember = {
  /** Path of names with `/`: "front-face/rails/3". */
  readonly id: string;
  readonly panel?: string;
  readonly panelKind?: string;
  /** The assembly it belongs to, and that assembly's kind. */
  readonly assembly?: string;
  readonly assemblyKind?: string;
  readonly group: string;
  readonly number: number;
  readonly pieceKind: string;
  readonly board: Board;
  readonly ripped: boolean;
  readonly planed: boolean;
  readonly lie: Lie;
  readonly min: Point;
  readonly max: Point;
  /** Along the grain, across it, through it. */
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly loose: boolean;
  /** Only of a board that isn't square to the item or whose ends aren't: its own frame, square blank and end planes. */
  readonly slant?: Slant;
  /** Only of a piece cut to an outline: its edge and its inner cut-outs along its own length (x) and width (y). */
  readonly outline?: { readonly name: string; readonly edge: Loop; readonly holes: readonly Loop[] };
  /** Only of a piece glued up of several boards. */
  readonly blanks?: readonly Blank[];
  /** The line of the recipe that puts it there. */
  readonly at: Place;
};

/**
 * A slanted board in the space it is told in: the least corner of its square blank, unit directions along its length, width
 * and thickness, the blank's size, and the planes that cut it (each trim's normal points to what is cut away).
 */
export type Slant = {
  readonly origin: Vec3;
  readonly length: Vec3;
  readonly width: Vec3;
  readonly thickness: Vec3;
  readonly size: Vec3;
  readonly trims: readonly Trim[];
};

/** Where names are read: in a panel kind (its own groups first), or in the whole recipe. */
export type Within = { readonly panelKind: string } | undefined;

export type Placing = {
  readonly members: readonly PlacedMember[];
  readonly panels: readonly Panel[];
  /** Assemblies in space; their across, through and up are those of the space their lines are written in. */
  readonly assemblies: readonly Panel[];
  readonly fittings: readonly PlacedFitting[];
  readonly overall: Item["overall"];
  readonly gaps: Item["gaps"];
  /** The members a reference means, by any suffix of panel or panel kind and line name; a problem where it means none. */
  find(reference: Reference, within: Within): readonly PlacedMember[] | Problem;
  /** A sum as a length in inches (or a plain number, or degrees for angles); a problem where it can't be worked out. */
  work(sum: Sum, within: Within): { readonly kind: "length" | "number" | "angle"; readonly value: Length } | Problem;
  /** A line or a length along one axis of a member's own space, as cuts need them: `in from`, `at` a side. */
  turned(member: PlacedMember): Panel | undefined;
};

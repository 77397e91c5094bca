// The things a recipe puts in place and the spaces they stand in, before any number is known.
import type { Clause, ClauseKind, Line, PanelKind, Reference, Sum } from "../../recipe/recipe.ts";
import type { Axis, Side } from "../../units/side.ts";
import type { Board, Fitting } from "../../yard/yard.ts";
import type { Heading } from "../item.ts";
import type { Formed } from "../outlines/form-piece.ts";
import type { Fault } from "./fault.ts";

/** A piece as declared: its board and its finished section. */
export type Section = {
  readonly name: string;
  readonly board: Board;
  readonly ripped: boolean;
  readonly planed: boolean;
} & Formed;

/** The board's own axes in the space it is placed in. */
export type Lay = { readonly length: Axis; readonly width: Axis; readonly thickness: Axis };

/** Where a panel's own x (across), y (good side to back) and z (up) run in the space around it. */
export type Turn = { readonly x: Heading; readonly y: Heading; readonly z: Heading };

export type Body =
  | { readonly kind: "piece"; readonly section: Section; readonly lay: Lay }
  | { readonly kind: "fitting"; readonly fitting: Fitting; readonly lay: Lay }
  /** A panel, or an assembly (then `panel` has a depth, and its front is its good side). */
  | {
      readonly kind: "panel";
      readonly panel: PanelKind;
      /** The side of the space around it that its good side looks to. */
      readonly facing: Side;
      readonly mirrored: boolean;
      readonly turn: Turn;
      /** One inner space for each of them. */
      readonly inner: readonly Space[];
    };

/** All that one line puts in place. */
export type Thing = {
  /** "front-face" or "front-face/rails"; unique. */
  readonly key: string;
  readonly line: Line;
  readonly space: Space;
  readonly body: Body;
  /** The axis its members stand side by side along, where there are several to a set. */
  readonly rowAxis: Axis | undefined;
};

/** The item, or one panel or assembly in it. Things by their names. */
export type Space = {
  /** "" for the item, else the panel's name, with a number where one line puts several. */
  readonly key: string;
  readonly kind: "item" | "panel" | "assembly";
  /** The panel or assembly it is the inside of. */
  readonly panel: PanelKind | undefined;
  /** The panel as a thing of the space around it, and which of its line it is; absent for the item. */
  readonly host: { readonly thing: () => Thing; readonly index: number } | undefined;
  readonly things: Map<string, Thing>;
  /** Lines that could not be read as a thing, by name: who speaks of them meets the same fault. */
  readonly faults: Map<string, Fault>;
};

/** The clause of this kind, if the line has one. */
export const clauseOf = <K extends ClauseKind>(line: Line, kind: K): (Clause & { kind: K }) | undefined =>
  line.clauses.find((c): c is Clause & { kind: K } => c.kind === kind);

/** All clauses of these kinds. */
export const clausesOf = <K extends ClauseKind>(line: Line, ...kinds: readonly K[]): (Clause & { kind: K })[] =>
  line.clauses.filter((c): c is Clause & { kind: K } => (kinds as readonly string[]).includes(c.kind));

/** The references a sum makes, in order. */
export function referencesIn(sum: Sum): Reference[] {
  switch (sum.kind) {
    case "line":
    case "measure":
      return sum.of ? [sum.of] : [];
    case "plus":
    case "minus":
      return [...referencesIn(sum.left), ...referencesIn(sum.right)];
    case "times":
    case "over":
      return referencesIn(sum.sum);
    default:
      return [];
  }
}

/** The references of one clause, those inside its sums too. */
export function referencesOf(clause: Clause): Reference[] {
  const sums = (...list: (Sum | undefined | "half")[]) =>
    list.flatMap((s) => (s === undefined || s === "half" ? [] : referencesIn(s)));
  switch (clause.kind) {
    case "from to":
    case "spread":
      return sums(clause.from, clause.to);
    case "between":
    case "spread between":
      return clause.b ? [clause.a, clause.b] : [clause.a];
    case "lapping":
      return sums(clause.by);
    case "long":
      return sums(clause.length, clause.more);
    case "centred":
      return clause.on ? [clause.on] : [];
    case "side at":
      return sums(clause.line);
    case "in from":
      return sums(clause.distance);
    case "touching":
      return [clause.of, ...sums(clause.off)];
    case "level with":
      return [clause.of, ...sums(clause.out, clause.in)];
    case "spread over":
      return sums(clause.length);
    case "gap":
    case "gaps at most":
      return sums(clause.gap);
    case "every":
      return sums(clause.pitch, clause.from);
    case "sloping":
      return [...sums(clause.slope.from, clause.slope.to), ...(clause.slope.of ? [clause.slope.of] : [])];
    case "leaning":
      return sums(clause.angle);
    case "mitred":
      return [clause.a, clause.b];
    default:
      return [];
  }
}

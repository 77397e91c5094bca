// The worked-out item: every board with its size, place, cuts and neighbours. Later stages read this and nothing earlier.
import type { Shape, Vec2, Vec3 } from "../geometry/shape.ts";
import type { Solid } from "../geometry/solid.ts";
import type { Place } from "../problems/place.ts";
import type { Evidence } from "../recipe/evidence.ts";
import type { Availability, BatchRecord, Comparable, HazardClass, Season, TextWay, User } from "../recipe/recipe.ts";
import type { Revision } from "../recipe/revisions.ts";
import type { Exact, Length } from "../units/length.ts";
import type { Axis, Side } from "../units/side.ts";
import type { Board, Fastener, Finish, Fitting, Rope } from "../yard/yard.ts";

export type Point = { readonly x: Length; readonly y: Length; readonly z: Length };

/** An axis of a space with a direction: +1 toward right, back, top. */
export type Heading = { readonly axis: Axis; readonly sign: 1 | -1 };

/** Where the board's own length, width and thickness run in item space; `show` is the side its good face looks to. */
export type Lie = { readonly length: Axis; readonly width: Axis; readonly thickness: Axis; readonly show: Heading };

/** A side of a board by its own axis: at its low or its high end. */
export type OwnSide = { readonly axis: "length" | "width" | "thickness"; readonly far: boolean };

/** A worked-out cut of one member, in the member's own frame (length, width, thickness from its least corner). */
export type WorkedCut = {
  readonly at: Place;
  readonly why: "cut" | "join";
} /** `axis` is the member's own axis that the hole runs along; `from` its mouth: the low or the high end of that axis. */ & (
  | {
      readonly kind: "hole";
      readonly across: number;
      readonly axis: "length" | "width" | "thickness";
      readonly at3: Vec3;
      readonly deep?: number;
      readonly from: "low" | "high";
      /** A cone this wide at its mouth for a screw's head. */
      readonly countersink?: number;
    }
  /** A box taken out: notches, laps, half-laps, housings. */
  | {
      readonly kind: "box";
      readonly name: "notch" | "lap" | "half-lap" | "housing" | "rabbet" | "dado" | "groove" | "recess";
      readonly min: Vec3;
      readonly max: Vec3;
    }
  /** A figure through a part of the depth: what a board that crosses on the slant takes out. Its points run along the two other axes, in order. */
  | {
      readonly kind: "prism";
      readonly name: "half-lap" | "housing";
      readonly axis: "length" | "width" | "thickness";
      readonly outline: readonly Vec2[];
      readonly low: number;
      readonly high: number;
    }
  /** A box with round corners as seen along `axis`. */
  | {
      readonly kind: "pocket";
      readonly name: "slot" | "opening";
      readonly axis: "length" | "width" | "thickness";
      readonly min: Vec3;
      readonly max: Vec3;
      readonly radius: number;
    }
  /** Corners of the wide side rounded: each at the low (0) or high (1) end of the length and of the width; seen along `axis`. */
  | {
      readonly kind: "corners";
      readonly axis: "width" | "thickness";
      readonly radius: number;
      readonly corners: readonly (readonly [0 | 1, 0 | 1])[];
    }
  /**
   * One arris rounded, between two sides of the blank. Without `arris` all of them are broken by hand: under a thousandth of the wood, so it is
   * told but not taken off the solid.
   */
  | { readonly kind: "eased"; readonly radius: number; readonly arris?: readonly [OwnSide, OwnSide] }
  /** What lies on the normal's side of this plane is sawn off: normal . p = offset. */
  | { readonly kind: "slope"; readonly normal: Vec3; readonly offset: number }
);

/** Like boards that a glued-up piece is made of; `grain` is how theirs runs to that of the piece. */
export type Blank = {
  readonly board: Board;
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly count: number;
  readonly grain: "along" | "across";
  readonly ripped: boolean;
  readonly planed: boolean;
};

/**
 * Where the wood is narrow along its grain and runs on across it, in the piece's own length and width: a line along the grain from edge to
 * edge, its width, the degrees between the grain and the way the wood runs, and the share of its strength along the grain that it keeps
 * there. `warn` where it is narrow for its thickness.
 */
export type ShortGrain = {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly width: number;
  readonly degrees: number;
  readonly kept: number;
  readonly level: "note" | "warn";
};

/** A kind of part cut from a board: like members share one mark; mirrored ones have the same letter, told apart by hand. */
export type Piece = {
  /** "A", or "A left" and "A right" where the two are mirrored. */
  readonly mark: string;
  readonly letter: string;
  readonly hand?: "left" | "right";
  /** Names of the lines it is used under, in order: "front-face rails". */
  readonly name: string;
  readonly count: number;
  readonly board: Board;
  /** Over all along the board; finished width and thickness. */
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly ripped: boolean;
  readonly planed: boolean;
  /** The two long edges' lengths; for square ends both equal the length. */
  readonly edges: readonly [Length, Length];
  /** Degrees off square at each end; equal signs are parallel cuts. */
  readonly ends: readonly [
    { readonly mitre: number; readonly bevel: number },
    { readonly mitre: number; readonly bevel: number },
  ];
  readonly cuts: readonly WorkedCut[];
  /** Only of a piece glued up of several boards: what is sawn for each, before it is cut as one. */
  readonly blanks?: readonly Blank[];
  /** Only where all pieces of a kind come from one board: that kind's name; `members` are those of one thing. */
  readonly matched?: string;
  /** Only of a piece cut to an outline: its name. */
  readonly outline?: string;
  /** Only of a piece cut to an outline: where it may split, as its first member lies; empty where it is sound. */
  readonly shortGrain?: readonly ShortGrain[];
  /** Cubic inches, after cuts. */
  readonly volume: number;
  /** Pounds each. */
  readonly weight: number;
  readonly members: readonly string[];
};

export type Member = {
  /** Path of names with `/`: "front-face/rails/3". */
  readonly id: string;
  /** The panel instance it belongs to ("front-face"), its panel kind ("face"), its line's name and its number. */
  readonly panel?: string;
  readonly panelKind?: string;
  /** The assembly it belongs to, and that assembly's kind. */
  readonly assembly?: string;
  readonly assemblyKind?: string;
  readonly group: string;
  readonly number: number;
  /** Name under `pieces:`. */
  readonly pieceKind: string;
  readonly mark: string;
  readonly board: Board;
  readonly lie: Lie;
  readonly min: Point;
  readonly max: Point;
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly cuts: readonly WorkedCut[];
  readonly shape: Shape;
  readonly solid: Solid;
  readonly weight: number;
  /** Coats on it, in order; empty is bare wood. */
  readonly coats: readonly { readonly finish: Finish; readonly coats: number }[];
  readonly loose: boolean;
  readonly at: Place;
};

/** A bought body in its place; `box` is absent for a loose kit. */
export type PlacedFitting = {
  readonly id: string;
  readonly fitting: Fitting;
  readonly count: number;
  readonly box?: { readonly min: Point; readonly max: Point };
  /** Its body in item space, where it has a place. */
  readonly solid?: Solid;
  readonly at: Place;
};

/** A panel in the item. `across`, `up` and `through` are its own axes in item space (through points from good side to back). */
export type Panel = {
  readonly name: string;
  readonly kind: string;
  readonly mirrored: boolean;
  readonly across: Heading;
  readonly up: Heading;
  readonly through: Heading;
  /** Only of a panel on a slope: where its own 0 lies and its own directions run in the item; the headings are the nearest. */
  readonly tipped?: { readonly origin: Vec3; readonly across: Vec3; readonly through: Vec3; readonly up: Vec3 };
  /** Its own sizes: width across, height up, thickness through, and its box in item space. */
  readonly width: Length;
  readonly height: Length;
  readonly thickness: Length;
  readonly min: Point;
  readonly max: Point;
  readonly members: readonly string[];
  readonly at: Place;
};

/** Where two members touch flat on flat. `normal` points from a into b. */
export type Contact = {
  readonly a: string;
  readonly b: string;
  readonly area: number;
  readonly normal: Vec3;
  /** Corners of the common patch, item space. */
  readonly patch: readonly Vec3[];
};

export type Overlap = { readonly a: string; readonly b: string; readonly volume: number; readonly depth: number };

/** One fastener in its place: the head's spot, the way it is driven (unit), how far its tip gets, and the two it holds. */
export type Driven = {
  readonly fastener: Fastener;
  readonly a: string;
  readonly b: string;
  readonly head: Vec3;
  readonly way: Vec3;
  readonly tip: Vec3;
  /** Inches through a, and into b. */
  readonly through: number;
  readonly into: number;
};

export type Join = {
  readonly a: string;
  readonly b: string;
  readonly ways: readonly ("fastener" | "glue" | "half-lap" | "let in")[];
  readonly glue?: string;
  readonly driven: readonly Driven[];
  readonly at: Place;
};

/** A rope in its place. Lengths are inches, worked from middle to middle of its holes along the faces it lies on. */
export type Cord = {
  readonly name: string;
  readonly rope: Rope;
  readonly at: Place;
  /** The members it goes through, in its order: it holds them to each other. */
  readonly members: readonly string[];
  /** Its way from end to end: the middles of the holes' mouths, and the hangers. Item space. */
  readonly points: readonly Vec3[];
  /** Inside the wood, along it and across the gaps, and hanging free. */
  readonly through: number;
  readonly between: number;
  readonly hanging: number;
  readonly knots: number;
  readonly perKnot: number;
  readonly slack: number;
  /** All of it, as it is cut. */
  readonly length: number;
  readonly weight: number;
  /** A closed solid for each stretch, lying on the wood, then the knots; for drawings only. */
  readonly tube: readonly Shape[];
  readonly legs: readonly CordLeg[];
  /** Pounds when the whole item hangs from all legs alike: what this cord carries, and the pull in its flattest leg. */
  readonly load?: {
    readonly share: number;
    readonly legs: number;
    readonly degrees: number;
    readonly tension: number;
    /** How many times that pull would have to grow to break the rope, its knots counted. */
    readonly designFactor: number;
  };
};
/** The stretch from the wood up to a hanger or a loop (`at`): its length and its degrees above level. */
export type CordLeg = {
  readonly at: Vec3;
  readonly length: number;
  readonly degrees: number;
  /** How it is tied there; absent where the rope runs on over the hanger. */
  readonly tiedAs?: "hanger" | "loop";
  readonly part: string;
  readonly said: Place;
};

/** A row of letters on a board: a rectangle from its lower left corner as one looks at that side. Item space, inches. */
export type TextField = {
  readonly name: string;
  readonly member: string;
  readonly side: Side;
  readonly corner: Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
  readonly width: number;
  readonly height: number;
  /** The room between the holes, or the whole width of the side. */
  readonly free: number;
  /** What stands there unless the buyer asks for something else. */
  readonly says: string;
  /** The ways it is offered in, the standard one first. */
  readonly ways: readonly TextWay[];
  readonly at: Place;
};

/** A worked-out figure: what it is and its value; printed later in the units of the edition. */
export type Figure =
  /** `gap`: asked for as the gap of a row, so a spacer block is cut to it. */
  | { readonly kind: "length"; readonly value: Length; readonly gap?: true }
  | { readonly kind: "angle"; readonly degrees: number }
  | { readonly kind: "weight"; readonly pounds: number }
  | { readonly kind: "area"; readonly squareInches: number }
  | { readonly kind: "number"; readonly value: number };

/** Prose with its figures worked out: ⟦n⟧ in the Markdown stands for figures[n]. */
export type WorkedProse = { readonly markdown: string; readonly figures: readonly Figure[]; readonly at: Place };

export type WorkedStep = {
  readonly number: number;
  readonly at: Place;
  readonly text: WorkedProse;
  /** Members put in place now. In a section that makes a panel twice these are those of every one of them. */
  readonly adds: readonly string[];
  /** Members already there in the same assembly, for the picture (of the first panel made, or of the item). */
  readonly there: readonly string[];
  /** The members of `adds` that the picture shows (of the first panel made). */
  readonly shown: readonly string[];
  /** Names of the cords that are threaded once this step is done, of the item only. */
  readonly cords: readonly string[];
  /** Joins that close in this step (both members there now), of the shown assembly only. */
  readonly joins: readonly Join[];
  readonly checks: readonly WorkedProse[];
  readonly cautions: readonly WorkedProse[];
};

export type WorkedSection = {
  readonly heading: WorkedProse;
  /** The panel kind and the names of the panels built, and how many. */
  readonly makes?: { readonly kind: string; readonly panels: readonly string[]; readonly times: number };
  readonly steps: readonly WorkedStep[];
  readonly notes: readonly WorkedProse[];
};

export type Variant = {
  readonly slug: string;
  readonly name: string;
  readonly standard: boolean;
  /** What is chosen, in the order of the choices. */
  readonly values: readonly { readonly choice: string; readonly value: string }[];
  /** Variants that differ in their finish alone are of one form: its slug (empty for the standard one) and its name. */
  readonly form: string;
  readonly formName: string;
  /** No finish at all: the notice for unfinished goods is due. */
  readonly unfinished: boolean;
  /** Members that get no coat, in their order; all of them where there is no finish. */
  readonly bare: readonly string[];
  /** What is coated with what: square inches and members by finish, in order of coating. */
  readonly finish: readonly {
    readonly finish: Finish;
    readonly coats: number;
    readonly members: readonly string[];
    readonly area: number;
    /** Gallons for all coats at the finish's coverage. */
    readonly gallons: number;
  }[];
};

/** What is put on the thing: so many of this weight, each with its middle over one of these places. */
export type WorkedLoad = {
  readonly name: string;
  /** Pounds of one, and of all. */
  readonly pounds: number;
  readonly total: number;
  readonly places: readonly { readonly at: Vec3; readonly on: readonly string[] }[];
};

/** Words of the buyer's own, and those that stand there as standard. */
export type OfferedSaying = { readonly name: string; readonly most: number; readonly standard: string };

export type Item = {
  readonly title: string;
  readonly slug: string;
  readonly file: string;
  readonly classes: readonly HazardClass[];
  /** The day it came into the store; public. */
  readonly listed?: string;
  /** Whether a plan pack of it is sold; and what changed when, oldest first: for paper alone. */
  readonly hasPlan: boolean;
  readonly revisions: readonly Revision[];
  /** Whether a buyer finds this variant ready; public. */
  readonly availability: Availability;
  /** What its photographs show, by their numbers; public. */
  readonly photoWords: readonly { readonly number: number; readonly words: string }[];
  /** What lets it be sold to those it is for; private. */
  readonly evidence?: Evidence;
  readonly line?: string;
  readonly notes?: string;
  readonly purpose?: string;
  readonly variant: Variant;
  /** All variants offered, the standard one first. */
  readonly variants: readonly { readonly slug: string; readonly name: string; readonly form: string }[];
  readonly sayings: readonly OfferedSaying[];
  readonly loads: readonly WorkedLoad[];
  readonly madeFor: readonly User[];
  /** How many of it are one sold thing ("pair"), and what that weighs; absent where it is sold one by one. */
  readonly soldAs?: { readonly count: number; readonly words: string; readonly weight: number };
  /** Batches that were made, as far as their minutes hold for this variant; private. `sameFinish`: also those of its finish. */
  readonly record?: readonly (Pick<BatchRecord, "day" | "units" | "minutes"> & { readonly sameFinish: boolean })[];
  /** The heading of the section that whoever buys it does; private but for the card that goes with the parts. */
  readonly leftToBuyer?: string;
  readonly season?: Season;
  readonly comparables?: readonly Omit<Comparable, "at">[];
  /** Dollars asked of the buyer for this variant: in the store, and elsewhere where that is said. Public. */
  readonly asked?: { readonly shown: Exact; readonly stall?: Exact; readonly local?: Exact };
  readonly overall: { readonly width: Length; readonly depth: Length; readonly height: Length };
  /** Pounds, wood, fasteners and fittings together; and of the wood alone. */
  readonly weight: number;
  readonly woodWeight: number;
  readonly centreOfMass: Vec3;
  readonly pieces: readonly Piece[];
  readonly members: readonly Member[];
  readonly panels: readonly Panel[];
  readonly fittings: readonly PlacedFitting[];
  readonly contacts: readonly Contact[];
  readonly overlaps: readonly Overlap[];
  readonly joins: readonly Join[];
  readonly cords: readonly Cord[];
  readonly textFields: readonly TextField[];
  readonly intro: readonly WorkedProse[];
  readonly sections: readonly WorkedSection[];
  /** Even gaps by line, for spacer blocks: the clear distance between neighbours and where it is used. */
  readonly gaps: readonly {
    readonly group: string;
    readonly panelKind?: string;
    readonly axis: Axis;
    readonly gap: Length;
    readonly atEnds: boolean;
  }[];
};

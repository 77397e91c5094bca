// What a recipe says, read and checked word by word, before any size is worked out.
import type { Loop } from "../geometry/shape.ts";
import type { Place, Written } from "../problems/place.ts";
import type { Exact } from "../units/length.ts";
import type { Axis, Side } from "../units/side.ts";
import type { Evidence } from "./evidence.ts";
import type { Recordable } from "./record.ts";
import type { Revision } from "./revisions.ts";

/**
 * Points at things by the path of their names: `rails`, `face rails`, `front-face rails 2 to 5`, `odd rails`.
 * `each` says that the line stands once for each member meant. Numbers count from the left, the front or the bottom.
 */
export type Reference = {
  readonly at: Place;
  readonly text: string;
  readonly names: readonly Written[];
  readonly pick: Pick;
  readonly each: boolean;
};
export type Pick =
  | { readonly kind: "all" | "odd" | "even" | "last" }
  | { readonly kind: "numbers"; readonly ranges: readonly { readonly from: number; readonly to: number }[] };

/** What can be asked of a thing in a sum or a figure. */
export type Measure =
  | "length"
  | "width"
  | "thickness"
  | "height"
  | "depth"
  | "gap"
  | "diagonal"
  | "count"
  | "weight"
  | "area";

/** A sum as written. Lengths, angles and plain numbers are told apart when it is worked out. */
export type Sum =
  | { readonly kind: "length"; readonly at: Place; readonly value: Exact; readonly bare: boolean }
  | { readonly kind: "angle"; readonly at: Place; readonly degrees: number }
  /** A size by name: `width`, `depth`, `height` of the whole (in a panel: of the recipe's box), or a name under `sizes:`. */
  | { readonly kind: "size"; readonly at: Place; readonly name: string }
  /** A line across the space: `top`, `middle of legs 1`, `back of front-face`; `middle` needs `of`. */
  | { readonly kind: "line"; readonly at: Place; readonly side: Side | "middle"; readonly of?: Reference }
  /** `gap of face rails`; without `of` it is asked of the whole item (`{weight}`). */
  | { readonly kind: "measure"; readonly at: Place; readonly measure: Measure; readonly of?: Reference }
  | { readonly kind: "plus" | "minus"; readonly at: Place; readonly left: Sum; readonly right: Sum }
  /** Times or divided by a plain number. `half of …` is divided by 2. */
  | { readonly kind: "times" | "over"; readonly at: Place; readonly sum: Sum; readonly by: Exact };

/** Where a row of like members runs along, in words. */
export type Clause = {
  readonly at: Place;
  readonly text: string;
} /** Which way the board's length runs. `level` is left to right in a panel. */ & (
  | { readonly kind: "run"; readonly run: "upright" | "level" | "left to right" | "front to back" }
  /** Wide side level, or standing on its narrow side (in a panel: narrow side up to the good side). */
  | { readonly kind: "lie"; readonly lie: "flat" | "on edge" }
  /** Which way an upright board's wide side, or a panel's good side, looks. */
  | { readonly kind: "facing"; readonly side: Side }
  /** The two lines its ends reach. */
  | { readonly kind: "from to"; readonly from: Sum; readonly to: Sum }
  /** It fills the room between the two of a, or between a and b. */
  | { readonly kind: "between"; readonly a: Reference; readonly b?: Reference }
  /** What stands between others runs on over them by this much at both ends. */
  | { readonly kind: "lapping"; readonly by: Sum | "half" }
  /** A chosen length; each next member is `more` longer. A slanted board's length needs to say from where to where. */
  | { readonly kind: "long"; readonly length: Sum; readonly more?: Sum; readonly datum?: Datum }
  /** Its middle on the middle of its space or of another thing; without a direction: in every level direction nothing else settles. */
  | { readonly kind: "centred"; readonly axis?: Axis; readonly on?: Reference }
  /** One side put on a line: `bottom at clear`, `top at top of legs`, `at left` (= left at left). */
  | { readonly kind: "side at"; readonly side: Side; readonly line: Sum }
  /** `L from left`: that side stands L inside the space's. */
  | { readonly kind: "in from"; readonly distance: Sum; readonly side: Side }
  /** Touching X's side: `on X` (its top), `under X` (its bottom), `on back of X`, `against left of X`; with a distance, that far off it (`2 above X`). */
  | { readonly kind: "touching"; readonly side: Side; readonly of: Reference; readonly off?: Sum }
  /** My side of that name against X's: `level with front of X`, `overhang 1 from front of X`, `inset 1/2 from front of X`. */
  | { readonly kind: "level with"; readonly side: Side; readonly of: Reference; readonly out?: Sum; readonly in?: Sum }
  /** A row with even gaps, the outer ones level with the two lines. */
  | { readonly kind: "spread"; readonly from: Sum; readonly to: Sum }
  | { readonly kind: "spread between"; readonly a: Reference; readonly b?: Reference }
  | { readonly kind: "spread over"; readonly length: Sum }
  /** The same gap outside the outer ones too. */
  | { readonly kind: "end gaps" }
  /** Neighbours this far apart; the row is then placed as one. */
  | { readonly kind: "gap"; readonly gap: Sum; readonly axis?: Axis }
  /** As many as keep the gaps at or under this. */
  | { readonly kind: "gaps at most"; readonly gap: Sum }
  /** `top every pitch down from L`: that side at L, then a pitch on, and so on. */
  | { readonly kind: "every"; readonly side: Side; readonly pitch: Sum; readonly toward: Side; readonly from: Sum }
  /** Out of plumb by an angle, its top toward that side; in a pair `inward` is toward each other. */
  | { readonly kind: "leaning"; readonly angle: Sum; readonly toward: Side | "inward" | "outward" }
  /** The two of a mirrored pair meet at their tops or at their feet. */
  | { readonly kind: "meeting"; readonly where: Side }
  /** Its ends are mitred with these neighbours, the nearer one and the farther one. */
  | { readonly kind: "mitred"; readonly a: Reference; readonly b: Reference }
  /** A leaning board's long edges are bevelled level. */
  | { readonly kind: "edges level" }
  /** A flat panel tipped so that its underside runs through these two heights. */
  | { readonly kind: "sloping"; readonly slope: SlopeOver }
  /** A panel turned over left to right; a pair of pieces, each the other's mirror. */
  | { readonly kind: "mirrored" }
  /** A fitting placed in a panel: its other clauses are read in that panel. */
  | { readonly kind: "in panel"; readonly of: Reference }
  /** Held by no join: it lies or hangs there. */
  | { readonly kind: "loose" }
);
export type ClauseKind = Clause["kind"];

/**
 * What a typed length of a board with slanted ends measures: one of its two equal edges (parallel cuts), its longer or
 * shorter edge, the square blank, or its middle line.
 */
export type Datum = "edge" | "long edge" | "short edge" | "over all" | "centre";

/** A straight slope through two heights, each at a side of the space. */
export type Slope = { readonly from: Sum; readonly fromSide: Side; readonly to: Sum; readonly toSide: Side };

/** The same with the sides of the thing `of` instead of the space's, where it is given. */
export type SlopeOver = Slope & { readonly of?: Reference };

/** Stands only where the choice has one of these values: `only with lid`, `only for size M or L`. */
export type Only = { readonly at: Place; readonly choice: Written; readonly values: readonly Written[] };

/** One line of a panel, of `stand:` or of `fittings:`: like things put in place under one name. */
export type Line = {
  readonly at: Place;
  readonly text: string;
  readonly name: Written;
  /** Absent where the count is to follow from `gaps at most`; a line that gives none has one. */
  readonly count: number | "follows";
  /** A piece, a panel or a fitting by name. */
  readonly what: Written;
  readonly clauses: readonly Clause[];
  readonly only?: Only;
};

/** A point of an outline, from its 0, 0 to the right and up. */
export type OutlinePoint = { readonly at: Place; readonly x: Sum; readonly y: Sum };
/** The direction of a curve at one of its ends. */
export type CurveWay = { readonly at: Place } & (
  | { readonly kind: "left" | "right" | "up" | "down" }
  | { readonly kind: "point"; readonly point: OutlinePoint }
);
/** One stroke of an outline. */
export type Stroke = { readonly at: Place; readonly text: string } & (
  | { readonly kind: "start" | "line"; readonly to: OutlinePoint }
  | { readonly kind: "arc"; readonly through: OutlinePoint; readonly to: OutlinePoint }
  /** A smooth curve; `smooth` leaves without a kink from the stroke before. `round` runs on to where it starts. */
  | {
      readonly kind: "curve" | "round";
      readonly points: readonly OutlinePoint[];
      readonly smooth: boolean;
      readonly leaving?: CurveWay;
      readonly arriving?: CurveWay;
    }
  /** A straight line back to the start. */
  | { readonly kind: "close" }
  /** The strokes so far once more, turned over on the line from the last point to the start. */
  | { readonly kind: "mirrored" }
  | { readonly kind: "circle"; readonly across: Sum; readonly centre: OutlinePoint }
  | {
      readonly kind: "rectangle";
      readonly width: Sum;
      readonly height: Sum;
      readonly corner: OutlinePoint;
      readonly corners?: Sum;
    }
);
/** A closed line: in words, or as it was drawn, in inches. */
export type OutlineLoop = { readonly name: string; readonly at: Place } & (
  | { readonly kind: "words"; readonly strokes: readonly Stroke[] }
  | { readonly kind: "drawn"; readonly loop: Loop }
);
/** A true-size shape: the first loop is the edge, the others are cut out of it. */
export type Outline = { readonly name: string; readonly at: Place; readonly loops: readonly OutlineLoop[] };

/** What is cut from which board. `ripped` and `planed` are the finished width and thickness. */
export type PieceKind = {
  readonly name: Written;
  readonly board: Written;
  readonly ripped?: Sum;
  readonly planed?: Sum;
  /** Cut to an outline, `mirrored` or as drawn; the grain runs across the drawing or up it. */
  readonly outline?: { readonly at: Place; readonly name: Written; readonly mirrored: boolean };
  readonly grain?: { readonly at: Place; readonly up: boolean };
  /** Boards glued edge to edge to this width. */
  readonly glued?: { readonly at: Place; readonly to: Sum };
  /** Layers glued face to face; in crossed ones the grain of every other one runs across. */
  readonly plies?: { readonly at: Place; readonly count: number };
  readonly crossed?: { readonly at: Place };
  /** The least wood between two parts of the outline, and the tightest turn its blade can follow. */
  readonly leastWood?: Sum;
  readonly leastTurn?: Sum;
  /** All of them in one thing come from one board. */
  readonly matched?: { readonly at: Place };
  /** Written in the one line that uses it, and without a name that could be said elsewhere. */
  readonly own?: true;
  readonly at: Place;
};

export type Extent = Sum | { readonly kind: "fit"; readonly at: Place };

export type PanelKind = {
  readonly name: Written;
  readonly at: Place;
  readonly width: Extent;
  readonly height: Extent;
  /** Only of an assembly, which stands in space and isn't flat. */
  readonly depth?: Extent;
  readonly lines: readonly Line[];
};

/** Panels and pieces put together in space and used again: a lid, a four-legged trestle. Its lines are like those of `stand:`. */
export type AssemblyKind = PanelKind & { readonly depth: Extent };

/** At every place where an `a` meets a `b`, these ways of holding; the number is per place. */
export type JoinRule = {
  readonly at: Place;
  readonly text: string;
  readonly a: Reference;
  readonly b: Reference;
  readonly ways: readonly JoinWay[];
  readonly only?: Only;
};
export type JoinWay = { readonly at: Place } & (
  | { readonly kind: "fastener"; readonly count: number; readonly fastener: Written; readonly from?: Side }
  | { readonly kind: "glue"; readonly glue?: Written }
  /** Where the two cross, each loses half of the shared thickness; `a` keeps the front or upper half. */
  | { readonly kind: "half-lap" }
  /** b is cut away where a stands in it. */
  | { readonly kind: "let in" }
);

/** What is taken out of members. Sides and ends are those of the space the member was placed in. */
export type CutRule = {
  readonly at: Place;
  readonly text: string;
  readonly of: Reference;
  readonly cuts: readonly Cut[];
  readonly only?: Only;
};
export type Cut = {
  readonly at: Place;
  readonly text: string;
} /** A round hole square to the wide side, or to `into`; without `deep` it goes through. */ & (
  | {
      readonly kind: "hole";
      readonly across: Sum;
      readonly spots: readonly Spot[];
      readonly deep?: Sum;
      readonly into?: Side;
      readonly grid?: HoleGrid;
      /** A cone for a screw's head, or a wider flat-bottomed hole, at the side it is drilled from. */
      readonly sink?: Sink;
    }
  /** A rectangle `along` the grain by `across` it, taken out right through the thickness. */
  | { readonly kind: "notch"; readonly along: Sum; readonly across: Sum; readonly spots: readonly Spot[] }
  /** Over the whole width, `along` the grain, `deep` into the face `into`. */
  | {
      readonly kind: "lap";
      readonly along: Sum;
      readonly deep: Sum;
      readonly into: Side;
      readonly spots: readonly Spot[];
    }
  /** A channel right across the grain, or right along it, as far as its stops let it. */
  | {
      readonly kind: "dado" | "groove";
      readonly wide: Sum;
      readonly deep: Sum;
      readonly into: Side;
      readonly spots: readonly Spot[];
      readonly stops: readonly Stop[];
    }
  /** The arris between two sides cut away: `wide` from `along`, `deep` into `into`. */
  | {
      readonly kind: "rabbet";
      readonly wide: Sum;
      readonly deep: Sum;
      readonly into: Side;
      readonly along: Side;
      readonly stops: readonly Stop[];
    }
  /** A rectangle let into a side; a slot has round ends and goes through where it isn't said how deep. */
  | {
      readonly kind: "recess" | "slot";
      readonly along: Sum;
      readonly across: Sum;
      readonly deep?: Sum;
      readonly into?: Side;
      readonly spots: readonly Spot[];
    }
  /** A rectangle right through the board, its corners round by this radius. */
  | {
      readonly kind: "opening";
      readonly along: Sum;
      readonly across: Sum;
      readonly corners?: Sum;
      readonly spots: readonly Spot[];
    }
  /** The corners of the wide side, all four or those at one side. */
  | { readonly kind: "rounded corners"; readonly radius: Sum; readonly along?: Side }
  /** All of them by hand, or the one between two sides rounded to this radius. */
  | { readonly kind: "eased arrises"; readonly radius: Sum }
  | { readonly kind: "rounded arris"; readonly radius: Sum; readonly into: Side; readonly along: Side }
  /** All that stands above this straight line is cut away. */
  | { readonly kind: "slope"; readonly slope: Slope }
);
export type CutKind = Cut["kind"];
/** So many along the board by so many across it, this far from middle to middle. */
export type HoleGrid = {
  readonly along: number;
  readonly across: number;
  readonly pitch: Sum;
  readonly pitchAcross?: Sum;
};
export type Sink = { readonly kind: "countersink" | "counterbore"; readonly across: Sum; readonly deep?: Sum };
/** A channel or a rabbet ends this far short of a side that it would run out of. */
export type Stop = {
  readonly at: Place;
  readonly text: string;
  readonly distance: Sum;
  readonly from: Side | "both ends" | "both edges";
};
export type Spot = {
  readonly at: Place;
} /** Centre of a hole, near side of a notch or lap, this far from a side; `both ends` and `both edges` make two. */ & (
  | {
      readonly kind: "in from";
      readonly distance: Sum;
      readonly from: Side | "both ends" | "both edges" | "both ends and both edges";
    }
  | { readonly kind: "at"; readonly side: Side | "both ends" | "both edges" }
  | { readonly kind: "centred"; readonly axis?: Axis }
);

/**
 * Rope through holes. It passes its `way` in the order written, goes in first from the side `from`, and changes sides at every
 * hole unless the holes run the way it goes.
 */
export type CordRule = {
  readonly at: Place;
  readonly text: string;
  readonly name: Written;
  readonly rope: Written;
  readonly way: readonly CordPart[];
  readonly from: Side;
  /** Whether the maker said from which side it goes in. */
  readonly fromSaid: boolean;
  readonly knots: { readonly start: boolean; readonly end: boolean };
  /** Rope that each knot takes; slack in the whole of it. */
  readonly perKnot?: Sum;
  readonly slack?: Sum;
  readonly only?: Only;
};
export type CordPart = { readonly at: Place; readonly text: string } & (
  | { readonly kind: "holes"; readonly toward: Side; readonly side?: Side; readonly of: Reference }
  /** A nail, hook or ring above the middle of X: it runs over it, or is tied to it where this is its start or end. */
  | { readonly kind: "hanger"; readonly above: Sum; readonly of: Reference }
  /** Its end is tied to a loop straight above its last hole. */
  | { readonly kind: "loop"; readonly above: Sum; readonly of: Reference }
);

/** Letters on members: a row of this height along the middle of a side, as wide as the room there. */
export type TextRule = {
  readonly at: Place;
  readonly text: string;
  readonly name: Written;
  readonly of: Reference;
  readonly height: Sum;
  /** The side the letters stand on; where it isn't said, the good side. */
  readonly side?: Side;
  /** Only as wide as the room between the holes nearest to its middle. */
  readonly betweenHoles: boolean;
  /** Left free at both ends of the row. */
  readonly inside?: Sum;
  readonly ways: readonly TextWay[];
  readonly only?: Only;
  /** One for all fields, or one a field in the order they are read in: from the top down, then from the left. */
  readonly sayings: readonly Written[];
};
export const textWays = ["stencil", "film", "engraving"] as const;
export type TextWay = (typeof textWays)[number];

/** Coats by scheme; no coats means unfinished. */
export type FinishScheme = { readonly name: Written; readonly at: Place; readonly coats: readonly Coat[] };
export type Coat = {
  readonly at: Place;
  readonly coats: number;
  readonly finish: Written;
  readonly on: { readonly kind: "all" | "rest" } | { readonly kind: "some"; readonly of: readonly Reference[] };
};

/** A stated figure that must be true as printed. */
export type Claim = {
  readonly at: Place;
  readonly text: string;
  readonly what: Sum;
  readonly value: Sum | { readonly kind: "pounds"; readonly at: Place; readonly value: Exact };
  /** It may come to more, or to less. */
  readonly bound?: "at least" | "at most";
  readonly only?: Only;
};

/** What the maker offers; the first value is the standard one. The finishes offered are the choice called "finish". */
export type Choice = { readonly name: Written; readonly at: Place; readonly values: readonly ChoiceValue[] };
export type ChoiceValue = { readonly name: Written; readonly changes: readonly Change[] };
/** What a value changes in the recipe as it is written. */
export type Change = { readonly at: Place; readonly text: string } & (
  | { readonly kind: "size"; readonly name: Written; readonly to: Extent }
  /** `from` is a name under `pieces:` or a board that pieces are cut from. */
  | { readonly kind: "board"; readonly from: Written; readonly to: Written }
);
/** Words of the buyer's own, at most so many letters; as standard these. */
export type Saying = {
  readonly name: Written;
  readonly at: Place;
  readonly most: number;
  readonly standard: string;
};

/** What is put on the finished thing: so many of this weight, on these members. */
export type Load = {
  readonly name: Written;
  readonly at: Place;
  readonly count: number;
  readonly pounds: Exact;
  readonly on: Reference;
  /** Where it is heaviest to bear: all on the middle, or all at one side; without it each has an equal share of the length. */
  readonly where?: "centred" | Side;
  readonly only?: Only;
};
/** How many of the item make one sold thing: "pair" of 2, "set of 4". */
export type SoldAs = { readonly at: Place; readonly count: number; readonly words: string };
/** What the maker asks, in dollars as the buyer is shown it: in the store, and elsewhere where that is said. Public. */
export type AskedPrice = {
  readonly at: Place;
  /** The variant it is for; absent where it is for all. */
  readonly variant?: Written;
  readonly shown: Exact;
  readonly stall?: Exact;
  readonly local?: Exact;
};
/** A batch that was made: minutes with their setting up, by kind of work, or all together. Private. */
export type BatchRecord = {
  readonly at: Place;
  readonly day: string;
  /** Things as they are sold: two pairs are 2. */
  readonly units: number;
  /** In which variant; absent where any is meant. */
  readonly variant?: Written;
  readonly minutes: Readonly<Partial<Record<Recordable, Exact>>>;
};
/** Days of the year, `04-15`, between which it sells. Private. */
export type Season = { readonly from: string; readonly to: string };
/** What is asked elsewhere for the like, in the maker's words; dollars, and the day it was seen. Private. */
export type Comparable = {
  readonly at: Place;
  readonly where: string;
  readonly price: Exact;
  readonly seen: string;
  /** Its sizes as the maker wrote them. */
  readonly size?: string;
};
/** Whether a buyer finds it ready, and how many; in what time it is made; or that there will be no more. */
export type Availability =
  | { readonly kind: "ready"; readonly count: number }
  | {
      readonly kind: "made";
      readonly time?: { readonly count: number; readonly unit: "day" | "week" | "month" };
    }
  | { readonly kind: "sold" };
/** Who or what it is for, in a few fixed words. */
export const usersKnown = ["adults", "children", "animals", "plants", "goods"] as const;
export type User = (typeof usersKnown)[number];

export const hazardClasses = {
  D: "decor",
  S: "static use",
  L: "load-bearing, sat or stood on",
  C: "child",
  F: "food contact",
  A: "animals",
  H: "hung overhead or on a wall",
  T: "tip risk",
  G: "glazing",
  X: "soil or wet",
} as const;
export type HazardClass = keyof typeof hazardClasses;

/**
 * Prose in Markdown. Each figure stands in `markdown` as ⟦n⟧ (n counts from 0 into `figures`).
 * Nothing else of the maker's text is changed; it is escaped when it is printed.
 */
export type Prose = {
  readonly at: Place;
  readonly markdown: string;
  readonly figures: readonly Sum[];
  readonly only?: Only;
};

export type BodySection = {
  readonly at: Place;
  readonly heading: Prose;
  /** The panel built on the bench in this section; absent where the item itself is built. */
  readonly makes?: { readonly panel: Written; readonly times: number; readonly at: Place };
  readonly steps: readonly BodyStep[];
  /** Paragraphs that belong to no step: notes for the shop, private. */
  readonly notes: readonly Prose[];
  readonly only?: Only;
};
export type BodyStep = {
  readonly at: Place;
  /** Counted on through the whole body from 1. */
  readonly number: number;
  readonly text: Prose;
  /** The names in bold: what this step puts in place. */
  readonly adds: readonly Reference[];
  readonly checks: readonly Prose[];
  readonly cautions: readonly Prose[];
  readonly only?: Only;
};

export type Recipe = {
  readonly file: string;
  readonly title: string;
  /** The title in kebab case. */
  readonly slug: string;
  readonly format: number;
  readonly draft: boolean;
  readonly classes: readonly HazardClass[];
  /** The day it came into the store, as in 2026-10-03; public. */
  readonly listed?: string;
  /** Whether a plan pack of it is sold; and its revisions, oldest first. */
  readonly hasPlan: boolean;
  readonly revisions: readonly Revision[];
  /** Whether a buyer finds it ready: for all variants, or by their slugs; made to order where nothing is said. */
  readonly availability: readonly { readonly variant?: string; readonly is: Availability }[];
  /** What photographs show, by the number their file's name starts with: "1" of 01-by-the-door.jpg. */
  readonly photoWords: readonly { readonly number: Written; readonly words: Written }[];
  /** The line of goods it belongs to, and the shop's own notes, if any. */
  readonly line?: string;
  readonly notes?: string;
  /** Who and what it is for, in the maker's words; public. */
  readonly purpose?: string;
  readonly overall: { readonly at: Place; readonly width: Extent; readonly depth: Extent; readonly height: Extent };
  readonly sizes: readonly { readonly name: Written; readonly at: Place; readonly sum: Sum }[];
  readonly pieces: readonly PieceKind[];
  readonly outlines: readonly Outline[];
  readonly panels: readonly PanelKind[];
  readonly assemblies: readonly AssemblyKind[];
  readonly stand: readonly Line[];
  readonly fittings: readonly Line[];
  readonly joins: readonly JoinRule[];
  readonly cuts: readonly CutRule[];
  readonly cords: readonly CordRule[];
  readonly texts: readonly TextRule[];
  readonly finishes: readonly FinishScheme[];
  /** Names of finish schemes offered, the standard one first; all of them in order where `choices:` is silent. */
  readonly offered: readonly Written[];
  /** All choices in the order written, the finishes among them (last where only `finish:` has them). */
  readonly choices: readonly Choice[];
  readonly sayings: readonly Saying[];
  readonly loads: readonly Load[];
  readonly soldAs?: SoldAs;
  readonly prices: readonly AskedPrice[];
  readonly madeFor: readonly User[];
  readonly claims: readonly Claim[];
  /** Names of sizes, pieces and lines whose sizes are never nudged to save wood. */
  readonly fixed: readonly Written[];
  readonly record: readonly BatchRecord[];
  readonly comparables: readonly Comparable[];
  readonly season?: Season;
  /** The heading of the section that whoever buys it does. */
  readonly leftToBuyer?: Written;
  /** What lets it be sold to those it is for; private. */
  readonly evidence: Evidence;
  /** Text before the first heading: what the buyer is told. Public. */
  readonly intro: readonly Prose[];
  readonly sections: readonly BodySection[];
};

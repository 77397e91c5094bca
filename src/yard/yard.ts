// The yard and the shop as the rest of the project uses them: checked, sizes exact, money exact.
import type { Place } from "../problems/place.ts";
import type { Division } from "../units/division.ts";
import type { Exact } from "../units/length.ts";
import type { ImageSize } from "./image-sizes.ts";
import type { ListingLimits } from "./listing-limits.ts";
import type { Paper } from "./papers.ts";
import type { Saws } from "./saws.ts";
import type { Selling, ShopMinutes } from "./shop-rates.ts";

/** Clear-wood averages at 12 % moisture (Wood Handbook); not design values. */
export type Species = {
  readonly name: string;
  /** Specific gravity: oven-dry mass over volume at 12 % moisture. */
  readonly specificGravity: number;
  /** Modulus of elasticity, psi; modulus of rupture, psi. */
  readonly stiffness: number;
  readonly rupture: number;
  /** Fractional change of width per 1 % moisture, quartersawn and flatsawn, 6 to 14 %. */
  readonly radial: number;
  readonly tangential: number;
  /** Moisture at which shrinking starts, %. */
  readonly saturation: number;
  /** Oven-dry specific gravity for fasteners, where known. */
  readonly fastenerGravity?: number;
  readonly decay: "resistant" | "moderate" | "slight or none";
  readonly source: string;
};

export type BoardLength = {
  /** As bought, and what is left of it after the end loss. */
  readonly length: Exact;
  readonly usable: Exact;
  /** Exact dollars for one board. */
  readonly price: Exact;
  /** ISO date the price was seen. */
  readonly priced: string;
  /** How many the seller has, where that is known. */
  readonly most?: number;
};

/** Boards and offcuts that lie in the shop already and cost nothing more, all of one length and width. */
export type OwnBoard = {
  readonly length: Exact;
  /** What is left of it after a fresh end. */
  readonly usable: Exact;
  readonly width: Exact;
  readonly count: number;
};

export type Board = {
  readonly name: string;
  /** Nominal section as the yard says it ("2x4"), where it has one. */
  readonly nominal?: string;
  /** True size: measured of the batch in hand, else the table's. */
  readonly thickness: Exact;
  readonly width: Exact;
  readonly sizeFrom: "measured" | "table" | "stated";
  readonly species: Species;
  readonly treatment: "none" | "preservative";
  /** Faces good enough to show: both, or one (the other is rough). */
  readonly showSides: 1 | 2;
  /** Moisture in hand, %. */
  readonly moisture: number;
  /** Weight, lb per cubic inch at this moisture. */
  readonly density: number;
  readonly lengths: readonly BoardLength[];
  /** Sold too, but longer than what the shop's vehicle takes. */
  readonly tooLong?: readonly BoardLength[];
  readonly own?: readonly OwnBoard[];
  /** What the buyer reads: "western redcedar, not treated". Public. */
  readonly words: string;
  readonly at: Place;
};

export type Fastener = {
  /** As recipes call it: "pocket screw No. 6 x 1". */
  readonly name: string;
  readonly kind: "screw" | "pocket screw" | "nail" | "dowel" | "bolt";
  /** Shank diameter in inches; length in inches. */
  readonly diameter: number;
  readonly length: Exact;
  /** Pounds each; 0 where not stated is not allowed: it is worked out from the shank in steel or wood. */
  readonly weight: number;
  readonly material: string;
  readonly driver: string;
  readonly pack: { readonly count: number; readonly price: Exact; readonly priced: string };
  readonly at: Place;
};

export type Finish = {
  readonly name: string;
  readonly kind: "oil" | "stain" | "paint" | "limewash" | "wax";
  /** Public words: "white water-based paint". */
  readonly words: string;
  /** Shown colour, #rrggbb, and how much of the grain shows through (0 hides it, 1 clear). */
  readonly colour: string;
  readonly clear: number;
  /** Square feet one gallon covers in one coat. */
  readonly coverage: number;
  readonly tin: { readonly size: string; readonly gallons: Exact; readonly price: Exact; readonly priced: string };
  /** Hours between coats, and until it may be used. */
  readonly recoatHours: number;
  readonly cureHours: number;
  /** Whether its rags can catch fire by themselves. */
  readonly oilyRags: boolean;
  /** How the maker puts it on; private. How the buyer looks after it; public. */
  readonly method: string;
  readonly care: string;
  readonly at: Place;
};

/** A bought body that isn't wood. */
export type Fitting = {
  readonly name: string;
  readonly words: string;
  /** Along, across and through, inches; absent for a loose kit. */
  readonly size?: { readonly length: Exact; readonly width: Exact; readonly thickness: Exact };
  readonly weight: number;
  readonly price: Exact;
  readonly priced: string;
  readonly at: Place;
};

/** Rope by the foot. */
export type Rope = {
  readonly name: string;
  /** Public words: "natural-coloured polypropylene rope, 1/4 thick". */
  readonly words: string;
  readonly material: string;
  readonly diameter: Exact;
  /** Pounds that break it when it is new and has no knot, and who says so. */
  readonly strength: number;
  readonly strengthSource: string;
  readonly weightPerFoot: number;
  /** Inches that it is sold by: a whole foot, a hank. */
  readonly sold: Exact;
  readonly pricePerFoot: Exact;
  readonly priced: string;
  readonly at: Place;
};

export type Yard = {
  readonly boards: readonly Board[];
  readonly fasteners: readonly Fastener[];
  readonly finishes: readonly Finish[];
  readonly fittings: readonly Fitting[];
  readonly ropes: readonly Rope[];
  readonly glues: readonly { readonly name: string; readonly words: string; readonly at: Place }[];
};

/** When somebody is at the bench, minutes after midnight. */
export type BenchHours = { readonly from: number; readonly to: number };

export type Shop = {
  readonly name: string;
  readonly tagline: string;
  /** Says that the shop and all its figures are invented, if they are; printed on every shelf. */
  readonly notice?: string;
  readonly place: string;
  readonly contact: string;
  readonly division: Division;
  /** Saw kerf, inches. */
  readonly kerf: Exact;
  /** Those that the binder's sheets are written for, as PDF. */
  readonly papers: readonly Paper[];
  readonly saws?: Saws;
  /** Store words: lead time, pickup, returns. Public. */
  readonly ordering: string;
  readonly careNote: string;
  /** Who makes it and how; how it is fetched, sent and given back. Public, each a line of its own in the store. */
  readonly about?: string;
  readonly pickup?: string;
  readonly delivery?: string;
  readonly returns?: string;
  /** Where the store is published, with a slash at its end. Public. */
  readonly address?: string;
  /** Private: when coats are put on. */
  readonly benchHours?: BenchHours;
  /** Private. */
  readonly wage: Exact;
  readonly notes: string;
  /** What goes with a plan that is sold; without it none is. Public. */
  readonly plans?: { readonly licence: string; readonly ask: string; readonly latest: string };
  readonly listing?: ListingLimits;
  /** Sizes of the pictures for listings elsewhere, pixels; absent where none are wanted. */
  readonly images?: readonly ImageSize[];
  /** Without minutes there are no hours; without selling, no prices. */
  readonly minutes?: ShopMinutes;
  readonly selling?: Selling;
};

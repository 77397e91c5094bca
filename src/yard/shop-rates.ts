// What a shop's time and selling are worth, as read from its file: minutes, overhead, packing, postage and ways of selling.
import type { Exact } from "../units/length.ts";

/** What takes time at the bench, in the order of the work. */
export const works = [
  "rip",
  "plane",
  "crosscut",
  "hole",
  "shape",
  "outline",
  "glue",
  "sand",
  "screw",
  "fit",
  "tie",
  "letter",
  "coat",
] as const;
export type Work = (typeof works)[number];

/** Minutes for one, and to set up for it; one of sanding and of coating is a square foot (of one coat). */
export type Rate = { readonly each: Exact; readonly setUp: Exact };

/** One time at the bench that was timed: minutes without the set-up, and how many were done in them. */
export type Timed = { readonly minutes: Exact; readonly done: Exact };

export type ShopMinutes = {
  /** To fetch the boards of a batch and lay them out. */
  readonly fetch: Exact;
  readonly rates: Readonly<Record<Work, Rate>>;
  readonly timed: Readonly<Partial<Record<Work, readonly Timed[]>>>;
};

export const channelNames = ["local", "stall", "posted"] as const;
export type ChannelName = (typeof channelNames)[number];

/** One way to sell. Shares are fractions: 3 % is 3/100. */
export type Channel = {
  readonly name: ChannelName;
  /** Of all that the buyer pays, sales tax with it; and dollars a sale. */
  readonly fee: Exact;
  readonly fixed: Exact;
  /** Dollars that one sale costs there: its share of a pitch, a bag. */
  readonly sale: Exact;
  /** Dollars that a day there costs, whatever is sold: the pitch, the way. */
  readonly day?: Exact;
  /** Whether the price that is shown holds the sales tax. */
  readonly tax: "in" | "out";
  /** Prices are whole multiples of this, dollars over 0. */
  readonly step: Exact;
};

/** How many of a thing a batch may hold. */
export const batches = [1, 2, 5, 10] as const;
export type Batch = (typeof batches)[number];

export type Selling = {
  /** The batch that prices are made for. */
  readonly batch: Batch;
  /** Shares: of material and labour; of cost (markup) or of the price before fees (margin); of the price before tax. */
  readonly overhead: Exact;
  readonly profit: Exact;
  readonly profitAs: "markup" | "margin";
  readonly salesTax: Exact;
  /** Dollars a sanded square foot, a glued join, a thing sold. */
  readonly abrasives: Exact;
  readonly glue: Exact;
  readonly sundries: Exact;
  readonly packing: {
    readonly material: Exact;
    readonly minutes: Exact;
    /** Pounds of box and padding; inches of room at every side. */
    readonly weight: Exact;
    readonly room: Exact;
  };
  readonly postage: {
    /** Cubic inches that count as a pound. */
    readonly divisor: Exact;
    readonly base: Exact;
    readonly pound: Exact;
    /** Pounds, billed, above which nothing is posted. */
    readonly most: Exact;
  };
  /** A row of the buyer's own letters: dollars and minutes more than the standard words. */
  readonly personalising?: { readonly material: Exact; readonly minutes: Exact };
  readonly channels: readonly Channel[];
};

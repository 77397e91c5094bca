// One order as its file has it: what is wanted, checked word by word, before it is looked up among the recipes. Private.
import type { Place, Written } from "../problems/place.ts";
import type { Exact } from "../units/length.ts";

export type Order = {
  /** The number or the buyer's initials, as the maker wrote them; `slug` is unique among all orders. */
  readonly mark: string;
  readonly slug: string;
  readonly at: Place;
  readonly item: Written;
  readonly variant?: Written;
  readonly count: number;
  /** One text for all rows of letters, or one a row from the top down. */
  readonly sayings: readonly Written[];
  readonly due: string;
  /** Whether the buyer has said yes to the proof. */
  readonly approved: boolean;
  /** Dollars agreed for one as it is sold. */
  readonly price: Exact;
  readonly notes?: string;
};

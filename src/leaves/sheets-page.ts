// A set of sheets with a page of its own in the binder.
import type { Link } from "./leaf.ts";
import type { SheetSet } from "./sheet-set.ts";

export type SheetsPage = {
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly notice?: string;
  readonly home: Link;
  readonly set: SheetSet;
  /** Build sheets that it belongs to. */
  readonly things: readonly Link[];
};

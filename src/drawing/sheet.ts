// The papers a drawing is made for: how wide it may be, how high, and how big its type is set (all mm).

export type Sheet = {
  /** Ends the drawing's id, so that two sizes of one drawing can stand on one page. */
  readonly name: "binder" | "store" | "phone";
  readonly width: number;
  readonly height: number;
  /** Type size (9 pt = 3.175 mm), never under 2.5 mm on paper. */
  readonly type: number;
};

export const binderSheet: Sheet = { name: "binder", width: 170, height: 190, type: 3.2 };
export const storeSheet: Sheet = { name: "store", width: 150, height: 150, type: 3.2 };

/** Shown 320 px wide, its type stands 11.4 px high. */
export const phoneSheet: Sheet = { name: "phone", width: 90, height: 130, type: 3.2 };

/** Line widths on paper, mm, 2:1 of one row of ISO 128-2. */
export const wide = 0.5;
export const narrow = 0.25;

export const mmPerInch = 25.4;

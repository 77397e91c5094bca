// The papers a drawing is made for: how wide it may be, how high, and how big its type is set (all mm).

export type Sheet = {
  /** Ends the drawing's id, so that two sizes of one drawing can stand on one page. */
  readonly name: "binder" | "store" | "phone" | "step";
  readonly width: number;
  readonly height: number;
  /** Type size (9 pt = 3.175 mm), never under 2.5 mm on paper. */
  readonly type: number;
};

export const binderSheet: Sheet = { name: "binder", width: 170, height: 190, type: 3.2 };
export const storeSheet: Sheet = { name: "store", width: 150, height: 150, type: 3.2 };

/** Shown 275 px wide, which leaves a phone of 320 px its margins, its type stands 11 px high. */
export const phoneSheet: Sheet = { name: "phone", width: 80, height: 180, type: 3.2 };

/** Narrow enough to stand beside its words on paper, and to fill a phone. */
export const stepSheet: Sheet = { name: "step", width: 80, height: 70, type: 3.2 };

/** Wide lines on paper, mm; narrow ones are half as wide (rows of ISO 128-2: 0.5 and 0.25, 0.35 and 0.18, 0.25 and 0.13). */
export const wide = 0.5;
export const flatPen = (sheet: Sheet): number => (sheet.name === "phone" ? 0.35 : wide);
export const pictorialPen = (sheet: Sheet): number => (sheet.name === "phone" ? 0.25 : 0.35);

export const mmPerInch = 25.4;

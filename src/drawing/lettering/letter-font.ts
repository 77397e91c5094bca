// The contract of a font that signs are lettered in: outlines in units of the font, read from its file by whoever may read files.

/** A contour's next point: straight, or bent toward `by` (a quadratic curve, as TrueType fonts have them). */
export type Stroke = { readonly to: readonly [number, number]; readonly by?: readonly [number, number] };

/** Starts at `from`, ends there again. */
export type Contour = { readonly from: readonly [number, number]; readonly strokes: readonly Stroke[] };

export type LetterFont = {
  readonly name: string;
  /** Height of the capitals, units. */
  readonly capHeight: number;
  /** The letters of a text side by side, pairs set closer where the font says so: outlines moved into place, x from 0, y up. */
  readonly contoursOf: (text: string) => readonly Contour[];
};

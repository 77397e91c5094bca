// A drawing as plain shapes in paper millimetres, origin top left, v down. svg.ts alone turns it into SVG.

export type Paper = readonly [number, number];

/** Line kinds by ISO 128: wide and narrow are 2:1. */
export type LineKind =
  | "visible" // continuous wide: edges and outlines
  | "strong" // visible, of what a step adds
  | "light" // continuous narrow: what is already there
  | "pale" // visible, on coats so dark that ink is lost on them
  | "dimension" // continuous narrow: dimension, extension and leader lines
  | "path" // long-dashed dotted narrow: the way a part moves, centre lines
  | "hidden"; // dashed narrow

/** Tints of a filled region; the page's style sheet and svg.ts know their colours, readable in grey. */
export type Tone =
  | { readonly kind: "wood" | "added" | "there" | "end grain" | "figure" | "fitting" | "paper" }
  /** Seen through. */
  | { readonly kind: "pane" }
  | { readonly kind: "coat"; readonly colour: string; readonly shade: number };

export type Mark =
  | {
      readonly kind: "region";
      readonly tone: Tone;
      readonly shade: number;
      readonly loops: readonly (readonly Paper[])[];
    }
  | { readonly kind: "lines"; readonly line: LineKind; readonly chains: readonly (readonly Paper[])[] }
  /** A filled triangle with its tip at `tip`, pointing along `way` (unit). */
  | { readonly kind: "arrowhead"; readonly tip: Paper; readonly way: Paper; readonly size: number }
  | { readonly kind: "dot"; readonly at: Paper; readonly radius: number }
  /** `size` is the height of the type in mm; `turn` in degrees, anti-clockwise positive. */
  | {
      readonly kind: "text";
      readonly at: Paper;
      readonly text: string;
      readonly size: number;
      readonly anchor: "start" | "middle" | "end";
      readonly turn?: number;
      readonly strong?: boolean;
    }
  /** An item reference: its letters in a circle. */
  | { readonly kind: "balloon"; readonly at: Paper; readonly text: string; readonly radius: number };

export type Drawing = {
  /** Stable, from what it shows: "hose-and-pot-corral-face-panel". */
  readonly id: string;
  /** Accessible name and description. */
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** Paper mm for one inch of the thing; absent where several scales meet. */
  readonly scale?: number;
  /** Width of wide lines, mm, 0.5 where absent; narrow ones are half as wide. */
  readonly pen?: number;
  readonly marks: readonly Mark[];
};

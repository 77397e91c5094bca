// How large a thing is -> an outline that everybody knows the size of, to stand beside it: a hand, a person or a door.
import type { Mark, Paper } from "./drawing.ts";

/** Inches: its whole height as stated; points are across from its middle and up from its foot. */
export type ScaleFigure = {
  readonly name: string;
  readonly words: string;
  readonly height: number;
  readonly outline: readonly Paper[];
  /** Lines inside the outline. */
  readonly strokes: readonly (readonly Paper[])[];
};

/** One side of a person from the crown to the crotch, as parts of the height: across from the middle, up from the floor. */
const personSide: readonly Paper[] = [
  [0, 1],
  [0.028, 0.995],
  [0.046, 0.97],
  [0.05, 0.935],
  [0.042, 0.895],
  [0.028, 0.872],
  [0.028, 0.85],
  [0.06, 0.832],
  [0.108, 0.82],
  [0.13, 0.795],
  [0.14, 0.74],
  [0.148, 0.63],
  [0.158, 0.52],
  [0.158, 0.45],
  [0.146, 0.42],
  [0.126, 0.425],
  [0.108, 0.445],
  [0.1, 0.36],
  [0.084, 0.27],
  [0.082, 0.2],
  [0.062, 0.06],
  [0.086, 0.015],
  [0.084, 0],
  [0.022, 0],
  [0.02, 0.06],
  [0.016, 0.26],
  [0, 0.45],
];

const personHeight = 66;
const person: ScaleFigure = {
  name: "person",
  words: "the outline of a person",
  height: personHeight,
  outline: [
    ...personSide,
    ...personSide
      .slice(1, -1)
      .reverse()
      .map(([x, z]): Paper => [-x, z]),
  ].map(([x, z]): Paper => [x * personHeight, z * personHeight]),
  strokes: [],
};

/** Fingers from the first to the little one: where each begins and ends across, and how far up it reaches, inches. */
const fingers = [
  { from: -1.5, to: -0.75, tip: 6.75 },
  { from: -0.75, to: 0, tip: 7.25 },
  { from: 0, to: 0.72, tip: 6.85 },
  { from: 0.72, to: 1.35, tip: 5.7 },
] as const;
const knuckles = 3.9;

const fingertip = ({ from, to, tip }: (typeof fingers)[number]): readonly Paper[] =>
  Array.from({ length: 9 }, (_, i): Paper => {
    const angle = Math.PI * (1 - i / 8);
    const half = (to - from) / 2;
    return [(from + to) / 2 + half * Math.cos(angle), tip - half + half * Math.sin(angle)];
  });

/** The back of a right hand, from the wrist up. */
const hand: ScaleFigure = {
  name: "hand",
  words: "the outline of a hand",
  height: 7.25,
  outline: [
    [1.1, 0],
    [-1.1, 0],
    [-1.25, 1],
    [-1.7, 1.8],
    [-2.35, 2.7],
    [-2.8, 3.5],
    [-2.85, 3.95],
    [-2.55, 4.15],
    [-2.25, 3.9],
    [-1.85, 3.25],
    [-1.5, 3],
    ...fingers.flatMap(fingertip),
    [1.4, 3.2],
    [1.35, 1.4],
  ],
  strokes: fingers.slice(1).map(({ from, to, tip }, i): readonly Paper[] => {
    const before = fingers[i] as (typeof fingers)[number];
    const notch = Math.min(tip - (to - from) / 2, before.tip - (before.to - before.from) / 2);
    return [
      [from, knuckles],
      [from, notch],
    ];
  }),
};

const door: ScaleFigure = {
  name: "door",
  words: "the outline of a door",
  height: 80,
  outline: [
    [-16, 0],
    [16, 0],
    [16, 80],
    [-16, 80],
  ],
  strokes: [
    [
      [10, 36],
      [13.5, 36],
    ],
  ],
};

/** From this size on a person stands beside a thing, from this height on a door; beside a smaller one a hand. Inches. */
const asPerson = 28;
const asDoor = 66;

export const figureFor = (width: number, depth: number, height: number): ScaleFigure =>
  height >= asDoor ? door : Math.max(width, depth, height) >= asPerson ? person : hand;

export const halfWidth = ({ outline }: ScaleFigure): number => Math.max(...outline.map(([x]) => Math.abs(x)));

/** Cut out and turned to the viewer: `across` and `up` are paper mm for one of its inches. */
export function drawFigure(figure: ScaleFigure, foot: Paper, across: number, up: number): Mark[] {
  const at = ([x, z]: Paper): Paper => [foot[0] + x * across, foot[1] - z * up];
  const outline = figure.outline.map(at);
  return [
    { kind: "region", tone: { kind: "figure" }, shade: 0, loops: [outline] },
    {
      kind: "lines",
      line: "light",
      chains: [[...outline, outline[0] as Paper], ...figure.strokes.map((stroke) => stroke.map(at))],
    },
  ];
}

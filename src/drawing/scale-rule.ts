// A place under a standing view -> a rule as long as a maker's own, lying along the item's width, for the eye to measure with.
import type { Mark, Paper } from "./drawing.ts";
import { withFractions } from "./paper-text.ts";
import { type Picture, type Placement, spotOnPaper } from "./picture.ts";
import { baseline } from "./text-width.ts";

/** Lengths of rules, inches, and the width of their blades. */
const lengths = [12, 6, 3] as const;
const blade = 1.25;
/** Parallel lines stand at least this far apart on paper (ISO 128-2, 0.7 mm); ticks get a little more. */
const leastTick = 0.9;
const tickSteps = [1, 2, 3, 6] as const;

export type Rule = { readonly marks: readonly Mark[]; readonly inches: number };

/** The longest rule that takes no more than `most` mm across; undefined where even the shortest is too long. */
export function drawRule(
  picture: Picture,
  placement: Placement,
  room: { readonly left: number; readonly top: number; readonly most: number },
  words: (inches: number) => string,
  size: number,
): Rule | undefined {
  const zero = spotOnPaper(picture, placement, [0, 0, 0]);
  const way = (spot: readonly [number, number, number]): Paper => {
    const at = spotOnPaper(picture, placement, spot);
    return [at[0] - zero[0], at[1] - zero[1]];
  };
  const inch = way([1, 0, 0]);
  const across = broadEnough(way([0, blade, 0]), inch);
  const whole = lengths.find((length) => inch[0] * length + across[0] <= room.most);
  if (whole === undefined) return undefined;
  const foot: Paper = [room.left, room.top - across[1]];
  const at = (along: number, up: number): Paper => [
    foot[0] + inch[0] * along + across[0] * up,
    foot[1] + inch[1] * along + across[1] * up,
  ];
  const outline = [at(0, 0), at(whole, 0), at(whole, 1), at(0, 1)];
  const step = tickSteps.find((one) => inch[0] * one >= leastTick) ?? whole;
  const ticks = Array.from({ length: Math.ceil(whole / step) - 1 }, (_, i) => [
    at((i + 1) * step, 0),
    at((i + 1) * step, 0.5),
  ]);
  const [u, v] = at(whole, 0.5);
  return {
    inches: whole,
    marks: [
      { kind: "region", tone: { kind: "figure" }, shade: 0, loops: [outline] },
      { kind: "lines", line: "dimension", chains: [[...outline, outline[0] as Paper], ...ticks] },
      {
        kind: "text",
        at: [u + across[0] / 2 + 1.5, v + baseline(size)],
        text: withFractions(words(whole)),
        size,
        anchor: "start",
      },
    ],
  };
}

/** On small drawings the blade is drawn broader, so that its edges stand apart. */
function broadEnough(across: Paper, inch: Paper): Paper {
  const apart = Math.abs(across[0] * inch[1] - across[1] * inch[0]) / Math.hypot(...inch);
  const more = Math.max(1, leastTick / apart);
  return [across[0] * more, across[1] * more];
}

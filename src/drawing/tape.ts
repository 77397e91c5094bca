// Figures that a step sets off -> the tape as it lies there, at full size: a stretch of the blade round each, and where it is read.
import type { Division } from "../units/division.ts";
import { asPrinted, formatLength, fullOrScant } from "../units/format-length.ts";
import { inches, type Length } from "../units/length.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { paperLength } from "./paper-text.ts";
import { mmPerInch, stepSheet } from "./sheet.ts";

/** mm: the blade's width, the strip with its reading over it, and what lies between two strips. */
const blade = 10.5;
const over = 9;
const apart = 3;
const edge = 3;
const shown = stepSheet.width - 2 * edge;

/** How long a tick is: the coarsest division it falls on, in parts of what is numbered. */
const ticksIn = [
  { every: 1, long: 5.2 },
  { every: 1 / 2, long: 4 },
  { every: 1 / 4, long: 3.1 },
  { every: 1 / 8, long: 2.3 },
  { every: 1 / 16, long: 1.6 },
  { every: 1 / 32, long: 1.1 },
] as const;
const ticksMm = [
  { every: 10, long: 5.2 },
  { every: 5, long: 3.6 },
  { every: 1, long: 2.2 },
] as const;

/** Each reading has a strip of its own. `reads` are lengths from the tape's hook. Errors: none to read is our bug. */
export function drawTape(id: string, step: string, reads: readonly Length[], division: Division): Drawing {
  if (reads.length === 0) throw new Error(`tape ${id} has nothing to read`);
  const strips = reads.map((length, i) => stripMarks(length, division, i * (over + blade + apart)));
  const says = reads.map((length) => describe(length, division));
  return {
    id,
    title: `${step}: the tape`,
    description: `A tape measure at full size, hooked on at the left. ${says.join(" ")}`,
    width: stepSheet.width,
    height: strips.length * (over + blade) + (strips.length - 1) * apart + 1.5,
    scale: mmPerInch,
    pen: 0.35,
    marks: strips.flat(),
  };
}

/** "Read at 17 9/16 inches, a little more: 9 sixteenths past 17." */
function describe(length: Length, division: Division): string {
  const word = { "": "", " full": ", and a little more", " scant": ", and a little less" }[
    fullOrScant(length, division)
  ];
  const printed = asPrinted(length, division).valueOf();
  const whole = Math.floor(printed + 1e-9);
  const parts = division.unit === "in" ? Math.round((printed - whole) * division.per) : 0;
  const past = parts === 0 || division.unit === "mm" ? "" : `: ${parts} of ${division.per} marks past ${whole}`;
  return `Read at ${formatLength(length, division)} ${division.unit}${word}${past}.`;
}

function stripMarks(length: Length, division: Division, top: number): Mark[] {
  const unit = division.unit === "in" ? mmPerInch : 1;
  const finest = division.unit === "in" ? 1 / division.per : 1;
  const read = asPrinted(length, division).valueOf() * (division.unit === "in" ? 1 : mmPerInch);
  const room = shown / unit;
  // The reading stands in the middle, or nearer to the hook where the tape begins before that.
  const from = Math.max(0, Math.round((read - room / 2) / finest) * finest);
  const to = from + Math.floor(room / finest) * finest;
  const at = (value: number): number => edge + (value - from) * unit;
  const bladeTop = top + over;
  const ticks: (readonly Paper[])[] = [];
  const numbers: Mark[] = [];
  const count = Math.round((to - from) / finest);
  for (let i = 0; i <= count; i++) {
    const value = from + i * finest;
    if (isClear(at(value), from < 1e-6)) {
      ticks.push([
        [at(value), bladeTop],
        [at(value), bladeTop + tickLong(value, division)],
      ]);
    }
    const isNumbered = Math.abs(value / coarsest(division) - Math.round(value / coarsest(division))) < 1e-6;
    if (isNumbered && value > 1e-6 && at(value) > edge + 5.5 && at(value) < edge + shown - 5.5) {
      numbers.push({
        kind: "text",
        at: [at(value), bladeTop + 9.4],
        text: String(Math.round(value)),
        size: 3.6,
        anchor: "middle",
        strong: true,
      });
    }
  }
  return [
    ...bladeOutline(at(from), at(to), bladeTop, from < 1e-6),
    { kind: "lines", line: "dimension", chains: ticks },
    ...numbers,
    ...arrow(at(read), bladeTop, readingText(length, division)),
  ];
}

/** Clear of the ends where the tape is broken off. */
const isClear = (u: number, hooked: boolean): boolean => u < edge + shown - 1.6 && (hooked || u > edge + 1.6);

/** "39 11/16 in full". */
const readingText = (length: Length, division: Division): string =>
  `${paperLength(length, division)} ${division.unit}${fullOrScant(length, division)}`;

const coarsest = ({ unit }: Division): number => (unit === "in" ? 1 : 10);

function tickLong(value: number, { unit }: Division): number {
  const found = (unit === "in" ? ticksIn : ticksMm).find(
    ({ every }) => Math.abs(value / every - Math.round(value / every)) < 1e-6,
  );
  return found?.long ?? 1;
}

/** Broken off in a zigzag where the tape goes on; a hook where it begins. */
function bladeOutline(left: number, right: number, top: number, hooked: boolean): Mark[] {
  const down = top + blade;
  const broken = (u: number): Paper[] =>
    [1, 2, 3, 4].map((k) => [u + (k % 2 === 1 ? 0.9 : -0.9), top + (blade * k) / 5]);
  const start: Paper[] = hooked ? [[left, top]] : [[left, top], ...broken(left)];
  const loop: Paper[] = [...start, [left, down], [right, down], ...broken(right).reverse(), [right, top]];
  const hook: Mark[] = hooked
    ? [
        {
          kind: "lines",
          line: "visible",
          chains: [
            [
              [left, top],
              [left, down + 1],
            ],
          ],
        },
      ]
    : [];
  return [
    { kind: "region", tone: { kind: "figure" }, shade: 0, loops: [loop] },
    { kind: "lines", line: "dimension", chains: [[...loop, loop[0] as Paper]] },
    ...hook,
  ];
}

/** Its words lie beside its shaft, on the side that has more room. */
function arrow(u: number, top: number, text: string): Mark[] {
  const isLeft = u > edge + shown / 2 + 1;
  return [
    {
      kind: "lines",
      line: "visible",
      chains: [
        [
          [u, top - over + 0.8],
          [u, top - 2],
        ],
      ],
    },
    { kind: "arrowhead", tip: [u, top], way: [0, 1], size: 3 },
    {
      kind: "text",
      at: [isLeft ? u - 2.2 : u + 2.2, top - 4],
      text,
      size: 4.2,
      anchor: isLeft ? "end" : "start",
      strong: true,
    },
  ];
}

/** The figures that a tape is laid out for: from an inch on, as blocks, bits and rules do for what is less; each once. */
export function tapeReadings(lengths: readonly Length[], most: number): readonly Length[] {
  const found: Length[] = [];
  for (const length of lengths) {
    const isKnown = found.some((one) => Math.abs(inches(one) - inches(length)) < 1e-9);
    if (inches(length) >= 1 && !isKnown) found.push(length);
  }
  return found.slice(0, most);
}

// Boards and fasteners of the shop's yard -> what a stranger asks for: sizes and sorts, no name of the shop's own.
import type { Division } from "../../units/division.ts";
import { formatLength } from "../../units/format-length.ts";
import { inches } from "../../units/length.ts";
import type { Board, Fastener } from "../../yard/yard.ts";
import { setFractions } from "../edition.ts";

const firstWords = (words: string): string => words.split(",")[0]?.trim() ?? words;

const sectionOf = ({ thickness, width }: Board, division: Division): string =>
  `${setFractions(formatLength(thickness, division))}\u00a0×\u00a0${setFractions(formatLength(width, division))}`;

/** "1x8 western redcedar"; where the trade has no name for the section, its true sizes: "5/8 × 5 1/2 western redcedar". */
export const boardName = (board: Board, division: Division): string =>
  `${board.nominal ?? sectionOf(board, division)} ${firstWords(board.words)}`;

/** Inch screws are numbered: shank 0.060 in and 0.013 in more for each number (ASME B18.6.1, table of basic diameters). */
const gaugeOf = (diameter: number): number => Math.round((diameter - 0.06) / 0.013);

/** Metric wood screws are sold by the half millimetre of their thread (common practice, no source). */
const metricShank = (diameter: number): number => Math.round(diameter * 25.4 * 2) / 2;
/** The next shorter that is sold, in steps of 5 mm, so that no point comes through where the inch screw's does not. */
const metricLength = (length: number): number => Math.floor((length * 25.4 + 0.5) / 5) * 5;

const isScrew = ({ kind }: Fastener): boolean => kind === "screw" || kind === "pocket screw";
const longWords = (fastener: Fastener): string => setFractions(fastener.length.toFraction(true));

/** As steps and drawings call it: "pocket screw No. 6 x 1", "nail 0.09 x 1 1/2". */
export function fastenerName(fastener: Fastener): string {
  const across = isScrew(fastener) ? `No. ${gaugeOf(fastener.diameter)}` : thickness(fastener.diameter);
  return `${fastener.kind} ${across} x ${fastener.length.toFraction(true)}`;
}

/** Dowels and bolts by the fraction, nails by the hundredth. */
function thickness(diameter: number): string {
  const sixteenths = diameter * 16;
  if (Math.abs(sixteenths - Math.round(sixteenths)) > 1e-6) return diameter.toFixed(2);
  const whole = Math.round(sixteenths);
  const part = [16, 8, 4, 2, 1].find((one) => whole % one === 0) ?? 1;
  return part === 16 ? String(whole / 16) : `${whole / part}/${16 / part}`;
}

export type FastenerSpec = { readonly inch: string; readonly metric: string };

/** What to ask for where inches are sold, and where millimetres are. */
export function fastenerSpec(fastener: Fastener): FastenerSpec {
  const shank = isScrew(fastener)
    ? metricShank(fastener.diameter)
    : Number((fastener.diameter * 25.4).toFixed(fastener.kind === "nail" ? 1 : 0));
  const across = isScrew(fastener) ? `No. ${gaugeOf(fastener.diameter)}` : setFractions(thickness(fastener.diameter));
  return {
    inch: `${across} × ${longWords(fastener)} in`,
    metric: `${shank} × ${metricLength(inches(fastener.length))} mm`,
  };
}

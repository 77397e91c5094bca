// A place on paper -> two bars of known length, by which a reader proves that a page was printed at its true size.
import type { Mark, Paper } from "../drawing.ts";
import { mmPerInch } from "../sheet.ts";
import { templateType } from "./template.ts";

export const fourInches = 4 * mmPerInch;
export const hundredMillimetres = 100;
/** From the top of the upper bar to the foot of the lower one, mm. */
export const barsHeight = 12;

export function checkBars([left, top]: Paper): Mark[] {
  return [
    ...bar([left, top + 5], fourInches, mmPerInch, "4 in"),
    ...bar([left, top + barsHeight], hundredMillimetres, 10, "100 mm"),
  ];
}

const tick = 4;

/** The ends' ticks are whole, those between half as high. */
function bar([left, foot]: Paper, length: number, step: number, words: string): Mark[] {
  const count = Math.round(length / step);
  const ticks = Array.from({ length: count + 1 }, (_, i): Paper[] => {
    const at = left + (i === count ? length : i * step);
    return [
      [at, foot],
      [at, foot - (i === 0 || i === count ? tick : tick / 2)],
    ];
  });
  const line: Paper[] = [
    [left, foot],
    [left + length, foot],
  ];
  return [
    { kind: "lines", line: "dimension", chains: [line, ...ticks] },
    { kind: "text", at: [left + length + 2, foot], text: words, size: templateType, anchor: "start", strong: true },
  ];
}

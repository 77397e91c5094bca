// Text -> the room it takes on paper: advance widths of Source Sans 3, thousandths of the type size, by width.
// Taken from the font's own tables (Source Sans 3 release 3.052, SIL Open Font License); a test compares them.
import type { Paper } from "./drawing.ts";

const regular: readonly (readonly [number, string])[] = [
  [86, "\u2044"],
  [100, "\u2009"],
  [200, " \u00a0"],
  [241, "|"],
  [246, "i"],
  [247, "j"],
  [249, "',.:;′·’‘"],
  [255, "l"],
  [263, "I"],
  [289, "!"],
  [292, "f"],
  [303, "()[]{}"],
  [311, "-"],
  [331, "°"],
  [338, "t"],
  [347, "r"],
  [350, "/\\"],
  [418, "*"],
  [419, "s"],
  [425, "?z"],
  [426, '"″“”'],
  [446, "x"],
  [456, "c"],
  [467, "vy"],
  [476, "Y"],
  [480, "J–"],
  [486, "L"],
  [494, "F"],
  [495, "k"],
  [496, "e"],
  [497, "#$+0123456789<=>^~×≈−"],
  [500, "_"],
  [504, "ag"],
  [513, "X"],
  [515, "V"],
  [527, "E"],
  [534, "S"],
  [536, "T"],
  [539, "Z"],
  [542, "`o"],
  [544, "Ahu"],
  [547, "n"],
  [553, "b"],
  [555, "dpq"],
  [566, "P"],
  [569, "R"],
  [571, "C"],
  [579, "K"],
  [588, "B"],
  [609, "&"],
  [615, "D"],
  [617, "G"],
  [645, "U"],
  [647, "N"],
  [652, "H"],
  [664, "OQ"],
  [719, "w"],
  [727, "M"],
  [781, "¼"],
  [786, "W"],
  [796, "¾"],
  [800, "—"],
  [801, "⅞"],
  [804, "⅛"],
  [808, "½"],
  [821, "⅜⅝"],
  [824, "%"],
  [829, "m"],
  [847, "@"],
  [948, "…"],
];
const semibold: readonly (readonly [number, string])[] = [
  [91, "\u2044"],
  [100, "\u2009"],
  [200, " \u00a0"],
  [255, "|"],
  [262, "i"],
  [263, "j"],
  [271, "l"],
  [275, "',.:;′·’‘"],
  [282, "I"],
  [315, "!"],
  [317, "f"],
  [322, "-"],
  [324, "()[]{}"],
  [344, "/\\"],
  [348, "°"],
  [361, "t"],
  [373, "r"],
  [431, "s"],
  [438, "*"],
  [443, "z"],
  [444, "?"],
  [462, "c"],
  [480, "–"],
  [481, "x"],
  [482, '"″“”'],
  [494, "J"],
  [495, "vy"],
  [500, "_"],
  [501, "Y"],
  [502, "L"],
  [507, "e"],
  [510, "F"],
  [513, "#$+0123456789<=>^~×≈−"],
  [516, "a"],
  [520, "g"],
  [522, "k"],
  [536, "V"],
  [538, "E"],
  [540, "Z"],
  [541, "X"],
  [545, "S"],
  [546, "T"],
  [549, "`o"],
  [556, "u"],
  [558, "Ah"],
  [560, "n"],
  [563, "b"],
  [564, "dpq"],
  [576, "C"],
  [582, "P"],
  [592, "R"],
  [597, "BK"],
  [625, "D"],
  [628, "G"],
  [639, "&"],
  [655, "U"],
  [657, "N"],
  [663, "H"],
  [674, "OQ"],
  [745, "M"],
  [748, "w"],
  [795, "¼"],
  [800, "W—"],
  [807, "¾"],
  [815, "⅞"],
  [821, "⅛"],
  [827, "½"],
  [835, "⅜⅝"],
  [841, "%"],
  [843, "m"],
  [875, "@"],
  [964, "…"],
];

/** A digit beside U+2044 is set small by the font's own "frac" feature. */
const fractionDigit = { regular: 367, semibold: 372 };

const tableOf = (rows: readonly (readonly [number, string])[]): ReadonlyMap<string, number> =>
  new Map(rows.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)));

const widths = { regular: tableOf(regular), semibold: tableOf(semibold) };

/** Letters the table lacks are taken to be as wide as the widest. */
const widest = 1000;

/** Width of one line of text in the unit of `size`. */
export function textWidth(text: string, size: number, strong: boolean): number {
  const face = strong ? "semibold" : "regular";
  const table = widths[face];
  let sum = 0;
  for (const run of text.split(/(\d+\u2044\d+)/)) {
    const set = run.includes("\u2044");
    for (const letter of run) sum += set && letter !== "\u2044" ? fractionDigit[face] : (table.get(letter) ?? widest);
  }
  return (sum * size) / 1000;
}

/** Heights over and depths under the base line, as parts of the type size: capitals and figures; descenders. */
export const capHeight = 0.66;
export const descent = 0.21;

/** Down from the middle of a line of figures to its base line. */
export const baseline = (size: number): number => (size * capHeight) / 2;

/** Breaks text between words into lines no wider than `room`; one word alone may be wider. */
export function wrapText(text: string, size: number, room: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && textWidth(longer, size, false) > room) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === "" ? lines : [...lines, line];
}

/** Letters that reach under the base line. */
const hangs = /[gjpqyQJ,;()]/;

/** The four corners a text covers on paper, turned with it. */
export function textBox(text: {
  readonly at: Paper;
  readonly text: string;
  readonly size: number;
  readonly anchor: "start" | "middle" | "end";
  readonly turn?: number;
  readonly strong?: boolean;
}): readonly Paper[] {
  const width = textWidth(text.text, text.size, text.strong ?? false);
  const left = text.anchor === "start" ? 0 : text.anchor === "middle" ? -width / 2 : -width;
  const top = -text.size * capHeight;
  const bottom = hangs.test(text.text) ? text.size * descent : 0;
  const angle = ((text.turn ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turned = (u: number, v: number): Paper => [text.at[0] + u * cos + v * sin, text.at[1] - u * sin + v * cos];
  return [turned(left, top), turned(left + width, top), turned(left + width, bottom), turned(left, bottom)];
}

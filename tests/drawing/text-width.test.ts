// The width table against the font files themselves: advance widths from their cmap and hmtx tables (OpenType 1.9, chapters cmap and hmtx).
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { textBox, textWidth, wrapText } from "../../src/drawing/text-width.ts";

const { resolve } = createRequire(import.meta.url);

/** Reads one font: the glyph of a letter (cmap format 4) and its advance (hmtx). */
function advances(file: string): (letter: string) => number {
  const data = readFileSync(file);
  const table = (tag: string): number => {
    for (let i = 0; i < data.readUInt16BE(4); i++) {
      const at = 12 + 16 * i;
      if (data.toString("latin1", at, at + 4) === tag) return data.readUInt32BE(at + 8);
    }
    throw new Error(`no table ${tag}`);
  };
  const cmap = table("cmap");
  const subtable = Array.from(
    { length: data.readUInt16BE(cmap + 2) },
    (_, i) => cmap + data.readUInt32BE(cmap + 8 + 8 * i),
  ).find((at) => data.readUInt16BE(at) === 4) as number;
  const twice = data.readUInt16BE(subtable + 6);
  const glyphOf = (code: number): number => {
    for (let i = 0; i < twice; i += 2) {
      if (data.readUInt16BE(subtable + 14 + i) < code) continue;
      const start = data.readUInt16BE(subtable + 16 + twice + i);
      if (start > code) return 0;
      const delta = data.readUInt16BE(subtable + 16 + 2 * twice + i);
      const place = subtable + 16 + 3 * twice + i;
      const range = data.readUInt16BE(place);
      if (range === 0) return (code + delta) % 65536;
      const glyph = data.readUInt16BE(place + range + 2 * (code - start));
      return glyph === 0 ? 0 : (glyph + delta) % 65536;
    }
    return 0;
  };
  const many = data.readUInt16BE(table("hhea") + 34);
  const hmtx = table("hmtx");
  return (letter) => data.readUInt16BE(hmtx + 4 * Math.min(glyphOf(letter.codePointAt(0) as number), many - 1));
}

const letters = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i)).concat([
  ..."×°″′½¼¾⅛⅜⅝⅞·–—’‘“”…≈−\u2044\u00a0",
]);

test.each([
  ["Regular", false],
  ["Semibold", true],
] as const)("%s: the table gives every letter the width the font gives it", (style, strong) => {
  const advance = advances(resolve(`source-sans/TTF/SourceSans3-${style}.ttf`));
  for (const letter of letters)
    expect([letter, Math.round(textWidth(letter, 1000, strong))]).toEqual([letter, advance(letter)]);
});

test("17 9/16 set as a fraction: 2 x 497 + 200 + 3 x 367 + 86 = 2381 thousandths of the type size", () => {
  expect(textWidth("17 9\u204416", 1000, false)).toBeCloseTo(2381, 9);
});

test("a text turned by 90 degrees takes its length upward from its start", () => {
  const box = textBox({ at: [10, 50], text: "30", size: 10, anchor: "start", turn: 90 });
  const vs = box.map((p) => p[1]);
  expect(Math.max(...vs)).toBeCloseTo(50, 6);
  expect(Math.min(...vs)).toBeCloseTo(50 - 9.94, 6);
});

test("words are broken between words and none is lost", () => {
  const text = "Spacer block between rails, measured once and cut from scrap";
  const lines = wrapText(text, 3, 30);
  expect(lines.length).toBeGreaterThan(2);
  expect(lines.join(" ")).toBe(text);
  for (const line of lines) expect(textWidth(line, 3, false)).toBeLessThanOrEqual(30);
});

// Letters of signs: set in the bundled font, bridged for a stencil, mirrored for film.
import { describe, expect, test } from "vitest";
import type { Paper } from "../../../src/drawing/drawing.ts";
import { rowTemplate } from "../../../src/drawing/lettering/lettering-templates.ts";
import { setRow } from "../../../src/drawing/lettering/set-row.ts";
import { bridged, type Letters } from "../../../src/geometry/letter-shapes.ts";
import type { Vec2 } from "../../../src/geometry/shape.ts";
import { letterCap, sayingWidth, unknownLetters } from "../../../src/item/text-fields/letter-widths.ts";
import { signFont } from "../../../src/site/letter-font.ts";

const font = signFont();
const areaOf = (loop: readonly Vec2[]): number =>
  loop.reduce((sum, [x, y], i) => {
    const [nx, ny] = loop[(i + 1) % loop.length] as Vec2;
    return sum + (x * ny - nx * y) / 2;
  }, 0);
const inkOf = (letters: Letters): number =>
  letters.flatMap((s) => [s.outer, ...s.counters]).reduce((a, l) => a + areaOf(l), 0);
const countersIn = (letters: Letters): number => letters.reduce((sum, { counters }) => sum + counters.length, 0);
const everything = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&@%$?!ÄÖÜäöüßÅåØøéèñçŁł€½";

describe("letters", () => {
  test("capitals asked for 38.1 mm (1 1/2 in) high are that: H from the line to 38.1", () => {
    const vs = setRow(font, "H", 38.1).letters.flatMap(({ outer }) => outer.map(([, v]) => v));
    // The font's capitals are 660 thousandths by its table; an H's own outline is within 8 of that.
    expect(Math.min(...vs)).toBeCloseTo(0, 6);
    expect(Math.abs(Math.max(...vs) - 38.1)).toBeLessThan((38.1 * 8) / 660);
  });

  test("every letter has the width in the table that the font gives it, and the capitals their height", () => {
    expect(font.capHeight).toBe(letterCap);
    for (const letter of everything) {
      const twice = font.contoursOf(`${letter}|${letter}`);
      // The same outline comes again after its own width and that of the bar between.
      const shift =
        (twice.at(-1)?.from[0] ?? 0) - (twice[twice.length - font.contoursOf(`|${letter}`).length - 1]?.from[0] ?? 0);
      expect([letter, Math.round(sayingWidth(`${letter}|`, letterCap))]).toEqual([letter, Math.round(shift)]);
    }
  });

  test("A and V stand closer side by side than apart, so a row is never wider than its table says", () => {
    for (const saying of ["AV", "Tomatoes", "Typewriter Way", "LYTTON 1/2"]) {
      expect(setRow(font, saying, 660).width).toBeLessThan(sayingWidth(saying, 660));
    }
  });

  test("a smile and a letter of another script are not in the font", () => {
    expect(unknownLetters("Eggs ☺ да")).toEqual(["☺", "д", "а"]);
  });
});

describe("a stencil", () => {
  test("no letter keeps a counter closed: B has two, o has one, with bridges none has any", () => {
    expect(countersIn(setRow(font, "Bo", 40).letters)).toBe(3);
    expect(countersIn(setRow(font, everything, 40).letters)).toBeGreaterThan(20);
    expect(countersIn(bridged(setRow(font, everything, 40).letters, 2))).toBe(0);
  });

  test("letters without counters are left as they are, others lose a little ink and gain none", () => {
    const [plain, closed] = [setRow(font, "HILM", 40).letters, setRow(font, "Beans", 40).letters];
    expect(inkOf(bridged(plain, 2))).toBeCloseTo(inkOf(plain), 6);
    const left = inkOf(bridged(closed, 2));
    expect(left).toBeLessThan(inkOf(closed));
    expect(left).toBeGreaterThan(inkOf(closed) * 0.85);
  });

  test("the bridge through an o is 2 mm of its upper and lower stroke: ink falls by about 2 x 2 x the stroke", () => {
    const letters = setRow(font, "o", 40).letters;
    const vs = (loop: readonly Vec2[]) => loop.map(([, v]) => v);
    const { outer, counters } = letters[0] as Letters[number];
    const strokes =
      Math.max(...vs(outer)) -
      Math.min(...vs(outer)) -
      (Math.max(...vs(counters[0] ?? [])) - Math.min(...vs(counters[0] ?? [])));
    const lost = inkOf(letters) - inkOf(bridged(letters, 2));
    expect(lost / (2 * strokes)).toBeCloseTo(1, 1);
  });
});

describe("rows at true size", () => {
  const field = { width: 9, height: 1.5 };
  const inkAt = (way: "film" | "engraving"): readonly Paper[] => {
    const { marks } = rowTemplate({ slug: "sign" }, field, "Eggs", way, "A", font);
    return marks.flatMap((mark) => (mark.kind === "lines" && mark.line === "visible" ? mark.chains.flat() : []));
  };

  test("film is the mirror image of engraving about the row's middle", () => {
    const { width } = rowTemplate({ slug: "sign" }, field, "Eggs", "film", "A", font);
    const key = ([u, v]: Paper): string => `${u.toFixed(3)} ${v.toFixed(3)}`;
    const mirrored = inkAt("engraving").map(([u, v]): Paper => [width - u, v]);
    expect(new Set(inkAt("film").map(key))).toEqual(new Set(mirrored.map(key)));
  });

  test("letters stand in the middle of their row", () => {
    const us = inkAt("engraving").map(([u]) => u);
    const { width } = rowTemplate({ slug: "sign" }, field, "Eggs", "engraving", "A", font);
    expect(Math.min(...us)).toBeCloseTo(width - Math.max(...us), 4);
  });
});

// Lengths as the trade says them, and what is told when they are said wrongly.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Division } from "../../src/units/division.ts";
import { asPrinted, formatLength, formatMarked, formatWithUnit } from "../../src/units/format-length.ts";
import { exact } from "../../src/units/length.ts";
import { parseLength } from "../../src/units/parse-length.ts";

const value = (text: string) => {
  const read = parseLength(text);
  return read.ok ? read.value.toFraction(true) : `${read.fault}${read.suggestion ? `: ${read.suggestion}` : ""}`;
};

describe("a length is read exactly", () => {
  test.each([
    ["17", "17"],
    ["17 9/16", "17 9/16"],
    ["17-9/16", "17 9/16"],
    ["28-7/8", "28 7/8"],
    ["28⅞", "28 7/8"],
    ["28 ⅞", "28 7/8"],
    ["½", "1/2"],
    ["11⁄16", "11/16"],
    ["27/16", "1 11/16"],
    ["28.875", "28 7/8"],
    [".5", "1/2"],
    ["1' 6 1/2\"", "18 1/2"],
    ["2' 4 7/8\"", "28 7/8"],
    ["2'-4 7/8\"", "28 7/8"],
    ["2′ 4⅞″", "28 7/8"],
    ["2' 4 7/8", "28 7/8"],
    ["2 ft 4 in", "28"],
    ["6'", "72"],
    ["8 ft", "96"],
    ["3 feet", "36"],
    ["18 in", "18"],
    ['18"', "18"],
    ["18 inches", "18"],
    ["450 mm", "17 91/127"],
    ["25.4mm", "1"],
    ["45 cm", "17 91/127"],
    ["0", "0"],
  ])("%s is %s in", (text, inches) => expect(value(text)).toBe(inches));

  test("733 mm are 733 / 25.4 in, and print as 733 mm again", () => {
    const read = parseLength("733 mm");
    expect(read.ok && formatWithUnit(read.value, { unit: "mm" })).toBe("733 mm");
  });
  test("only a number without a unit is bare", () => {
    const bare = (text: string) => {
      const read = parseLength(text);
      return read.ok && read.bare;
    };
    expect(["18", "17 9/16", "28⅞"].map(bare)).toEqual([true, true, true]);
    expect(['18"', "18 in", "450 mm", "1' 6\"", "6'"].map(bare)).toEqual([false, false, false, false, false]);
  });
});

describe("what is no length is told with what was meant", () => {
  test.each([
    ["17 9 16", "no bar: 17 9/16"],
    ["17 9 16 in", "no bar: 17 9/16 in"],
    ["3/0", "divided by 0"],
    ["17 9/0", "divided by 0"],
    ["-3", "below 0: 3"],
    ["-3 1/2 in", "below 0: 3 1/2 in"],
    ["2x4", "board name"],
    ["2 x 4", "board name"],
    ["9/16 17", "turned round: 17 9/16"],
    ["17 19/16", "big fraction: 18 3/16"],
    ["17,5", "comma: 17.5"],
    ["1' 14\"", "past a foot: 2' 2\""],
    ["1' 6 1 2\"", "no bar: 1' 6 1/2\""],
    ["12 yd", "no unit known"],
    ["clear", "no number"],
    ["", "no number"],
    ["17 9/16 1/2", "no number"],
    ["1e3", "no number"],
  ])("%j: %s", (text, told) => expect(value(text)).toBe(told));

  test("no text, however odd, is thrown at", () => {
    fc.assert(fc.property(fc.string(), (text) => void parseLength(text)));
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."0123456789 /-.'\"infmx½⅞") }), (text) => {
        const read = parseLength(text);
        expect(read.ok ? read.value.compare(0) : 0).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe("printing and reading again", () => {
  const division = fc.constantFrom<Division>(
    { unit: "in", per: 8 },
    { unit: "in", per: 16 },
    { unit: "in", per: 32 },
    { unit: "mm" },
  );
  const length = fc
    .tuple(fc.integer({ min: 0, max: 100000 }), fc.integer({ min: 1, max: 640 }))
    .map(([n, d]) => exact(n, d));

  test("what is printed reads as exactly the length it stands for", () => {
    fc.assert(
      fc.property(length, division, (l, d) => {
        for (const text of [formatMarked(l, d), formatWithUnit(l, d)]) {
          const read = parseLength(text);
          expect(read.ok && read.value.equals(asPrinted(l, d))).toBe(true);
        }
      }),
    );
  });
  test("what is printed is never more than half a division off", () => {
    fc.assert(
      fc.property(length, division, (l, d) => {
        const half = d.unit === "mm" ? exact(5, 254) : exact(1, d.per * 2);
        expect(asPrinted(l, d).sub(l).abs().compare(half)).toBeLessThanOrEqual(0);
      }),
    );
  });
  test("a length and the double it equals print alike", () => {
    fc.assert(
      fc.property(length, division, (l, d) => {
        expect(formatLength(l.valueOf(), d)).toBe(formatLength(l, d));
      }),
    );
  });
});

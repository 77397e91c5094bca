// Angles, weights, money, areas and slugs.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatArea, formatAreaMetric, formatVolume } from "../../src/units/area.ts";
import { exact } from "../../src/units/length.ts";
import {
  formatKilograms,
  formatPounds,
  formatPoundsAndKilograms,
  parsePounds,
  poundsAsPrinted,
} from "../../src/units/mass.ts";
import { formatDollars, formatMoney, parseMoney } from "../../src/units/money.ts";
import { parseAngle } from "../../src/units/parse-angle.ts";
import { slug } from "../../src/units/slug.ts";

describe("angles", () => {
  test.each([
    ["14 deg", 14],
    ["22 1/2°", 22.5],
    ["0 degrees", 0],
    ["3 in 12", 14.036243],
    ["12 in 12", 45],
  ])("%s is %d degrees", (text, degrees) => {
    const read = parseAngle(text);
    expect(read.ok && read.degrees).toBeCloseTo(degrees, 6);
  });
  test.each([
    ["14", "no angle", "14 deg"],
    ["3 in 0", "flat run", undefined],
    ["180 deg", "too wide", undefined],
    ["steep", "no angle", undefined],
    ["3 in", "no angle", undefined],
  ])("%s is refused", (text, fault, suggestion) => {
    expect(parseAngle(text)).toEqual({ ok: false, fault, ...(suggestion ? { suggestion } : {}) });
  });
});

describe("weights", () => {
  test.each([
    ["12 lb", "12"],
    ["3 oz", "3/16"],
    ["1 lb 4 oz", "1 1/4"],
    ["14.2 lb", "14 1/5"],
  ])("%s is %s lb", (text, pounds) => expect(parsePounds(text)?.toFraction(true)).toBe(pounds));
  test("a kilogram is 1 / 0.45359237 lb", () => {
    expect(parsePounds("1 kg")?.mul("0.45359237").equals(1)).toBe(true);
    expect(parsePounds("250 g")?.valueOf()).toBeCloseTo(0.5511557, 7);
  });
  test("a weight needs its unit", () =>
    expect(["12", "lb", "-1 lb", "1 stone"].map(parsePounds)).toEqual(Array(4).fill(undefined)));
  test("ounces under a pound, tenths under twenty, whole pounds above", () => {
    expect([0.0043, 0.05, 0.5625, 0.99, 3.203, 14.24, 19.97, 41.4].map(formatPounds)).toEqual([
      "0.1 oz",
      "0.8 oz",
      "9 oz",
      "1 lb",
      "3.2 lb",
      "14.2 lb",
      "20 lb",
      "41 lb",
    ]);
  });
  test("grams under a kilogram, tenths under ten", () => {
    expect([0.05, 2.2, 14.24, 41.4].map(formatKilograms)).toEqual(["23 g", "998 g", "6.5 kg", "19 kg"]);
  });
  test("both for the buyer", () => expect(formatPoundsAndKilograms(14.24)).toBe("14.2 lb (6.5 kg)"));
  test("what is printed prints as itself", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 500, noNaN: true }), (w) => {
        expect(formatPounds(poundsAsPrinted(w))).toBe(formatPounds(w));
      }),
    );
  });
});

describe("money", () => {
  test("3.25, $3.25 and 12 are read exactly", () => {
    expect(["3.25", "$3.25", "12"].map((t) => parseMoney(t)?.toFraction())).toEqual(["13/4", "13/4", "12"]);
  });
  test("parts of a cent, commas and amounts below 0 are not", () => {
    expect(["3.255", "3,25", "-3", "", "3 dollars"].map(parseMoney)).toEqual(Array(5).fill(undefined));
  });
  test("printed to the cent, halves up: 16.4 is 16.40, 1/3 is 0.33, 0.005 is 0.01", () => {
    expect([exact("16.4"), exact(1, 3), exact("0.005"), exact(-1, 2)].map(formatMoney)).toEqual([
      "16.40",
      "0.33",
      "0.01",
      "-0.50",
    ]);
    expect(formatDollars(exact(-1, 2))).toBe("-$0.50");
  });
  test("every amount of whole cents comes back from its print", () => {
    fc.assert(
      fc.property(fc.nat(10 ** 9), (cents) => {
        expect(parseMoney(formatMoney(exact(cents, 100)))?.equals(exact(cents, 100))).toBe(true);
      }),
    );
  });
});

test("areas: 1786 sq in are 12.4 sq ft and 1.15 m²; 86 stay square inches", () => {
  expect([formatArea(1786), formatAreaMetric(1786), formatArea(86)]).toEqual(["12.4 sq ft", "1.15 m²", "86 sq in"]);
});
test("volumes: 726 cu in are 0.42 cu ft", () =>
  expect([formatVolume(726), formatVolume(90)]).toEqual(["0.42 cu ft", "90 cu in"]));

describe("slugs", () => {
  test.each([
    ["Hose-and-pot corral", "hose-and-pot-corral"],
    ["Sprout table (a child's potting table)", "sprout-table-a-childs-potting-table"],
    ["Größe  ½ / Crème", "grosse-1-2-creme"],
    ["../../etc", "etc"],
    ["木", ""],
  ])("%s is %j", (title, name) => expect(slug(title)).toBe(name));
  test("a slug can't leave its folder, and is its own slug", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (title) => {
        expect(slug(title)).toMatch(/^$|^[a-z0-9]+(-[a-z0-9]+)*$/);
        expect(slug(slug(title))).toBe(slug(title));
      }),
    );
  });
});

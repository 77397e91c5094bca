// A yard file becomes boards with true sizes and dated prices; each mistake is told at its line.
import { describe, expect, test } from "vitest";
import { readYard } from "../../src/yard/read-yard.ts";
import { smallYard } from "./yard-file.ts";

const read = (text: string) => readYard([{ file: "yard.yaml", text }]);

/** The problems after one text in the small yard is replaced by another. */
function changed(from: string, to: string): string[] {
  if (!smallYard.includes(from)) throw new Error(`the small yard has no "${from}"`);
  const { yard, problems } = read(smallYard.replace(from, to));
  expect(yard === undefined).toBe(problems.length > 0);
  return problems.map((p) => `${p.at.line}:${p.at.column} ${p.code}${p.nearest ? ` ${p.nearest}` : ""}`);
}

describe("a yard that reads", () => {
  const { yard, problems } = read(smallYard);
  const board = (name: string) => yard?.boards.find((b) => b.name === name);

  test("has no problems", () => expect(problems).toEqual([]));
  test("a fence board is as big as its seller says, and 72 - 1 1/2 = 70 1/2 of it is usable", () => {
    const fence = board("fence board");
    expect([fence?.thickness, fence?.width].map((s) => s?.toFraction(true))).toEqual(["5/8", "5 1/2"]);
    expect(fence?.lengths[0]?.usable.toFraction(true)).toBe("70 1/2");
    expect(fence).toMatchObject({ sizeFrom: "stated", showSides: 1, treatment: "none" });
  });
  test("a 2x4 is 1 1/2 x 3 1/2 by the table (PS 20, dry)", () => {
    const stud = board("2x4");
    expect([stud?.thickness, stud?.width].map((s) => s?.toFraction(true))).toEqual(["1 1/2", "3 1/2"]);
    expect(stud).toMatchObject({ sizeFrom: "table", showSides: 2, nominal: "2x4" });
  });
  test("lengths stand from short to long, each price with its day", () => {
    expect(board("2x4")?.lengths.map((l) => [l.length.valueOf(), l.price.toFraction(), l.priced])).toEqual([
      [96, "77/20", "2026-10-03"],
      [120, "28/5", "2026-09-12"],
    ]);
  });
  test("redcedar at 15 %: 62.4 x 0.32 x 1.15 = 22.96 lb/cu ft (Wood Handbook ch. 4)", () => {
    expect((board("fence board")?.density ?? 0) * 1728).toBeCloseTo(22.963, 3);
  });
  test("a No. 6 screw is 0.060 + 6 x 0.013 = 0.138 thick (ASME B18.6.1, from memory) and weighs its shank in steel", () => {
    const screw = yard?.fasteners[0];
    expect(screw).toMatchObject({ kind: "screw", diameter: 0.138, pack: { count: 100, priced: "2026-10-03" } });
    expect(screw?.weight).toBeCloseTo((Math.PI / 4) * 0.138 ** 2 * 1.625 * 0.289, 12);
  });
  test("a colour gets its # and a quart is a quarter of a gallon", () => {
    expect(yard?.finishes[0]).toMatchObject({ colour: "#8a5a34", oilyRags: false });
    expect(yard?.finishes[0]?.tin.gallons.toFraction()).toBe("1/4");
  });
  test("a hanger plate is 1 3/8 x 5/8 x 1/16 and weighs 0.4 / 16 lb", () => {
    expect(yard?.fittings[0]?.weight).toBeCloseTo(0.025, 12);
    expect(yard?.fittings[0]?.size?.thickness.toFraction()).toBe("1/16");
  });
  test("what lies in the shop has length, width and number, less 1/2 for a fresh end: 40 - 1/2 = 39 1/2", () => {
    const { yard: own, problems: none } = read(
      smallYard
        .replace("boards:", "fresh-end: 1/2\nboards:")
        .replace("72: 3.98", "72: 3.98, 4 there\n    in-stock:\n      72: 2\n      40 x 1 11/16: 3"),
    );
    expect(none).toEqual([]);
    const [fence] = own?.boards ?? [];
    expect(fence?.lengths[0]?.most).toBe(4);
    expect(fence?.own?.map((one) => [one.usable.valueOf(), one.width.valueOf(), one.count])).toEqual([
      [71.5, 5.5, 2],
      [39.5, 1.6875, 3],
    ]);
    const whole = smallYard.replace("boards:", "fresh-end: 40\nboards:");
    const gone = read(whole.replace("72: 3.98", "72: 3.98\n    in-stock:\n      40: 1"));
    expect(gone.problems.map(({ code }) => code)).toEqual(["yard-nothing-left"]);
  });
  test("a vehicle of 8 ft leaves the 10 ft board at the yard, and says so", () => {
    const { yard: own } = read(smallYard.replace("boards:", "vehicle: 8 ft\nboards:"));
    const stud = own?.boards.find(({ name }) => name === "2x4");
    expect(stud?.lengths.map(({ length }) => length.valueOf())).toEqual([96]);
    expect(stud?.tooLong?.map(({ length }) => length.valueOf())).toEqual([120]);
  });
  test("a line for all files stands in one of them", () => {
    const two = readYard([
      { file: "a.yaml", text: `vehicle: 8 ft\n${smallYard}` },
      { file: "b.yaml", text: "vehicle: 10 ft\n" },
    ]);
    expect(two.problems.map(({ code, at }) => [code, at.file])).toEqual([["yard-line-twice", "b.yaml"]]);
  });
  test("a measured batch wins over the table", () => {
    const { yard: own } = read(
      smallYard.replace(
        "    moisture: 15\n    words: pine",
        "    measured: 1 15/32 x 3 7/16\n    moisture: 15\n    words: pine",
      ),
    );
    const stud = own?.boards.find((b) => b.name === "2x4");
    expect([stud?.thickness.toFraction(true), stud?.width.toFraction(true), stud?.sizeFrom]).toEqual([
      "1 15/32",
      "3 7/16",
      "measured",
    ]);
  });
  test("a green 2x4 is 1 9/16 x 3 9/16 (PS 20, from memory)", () => {
    const { yard: own } = read(
      smallYard.replace("    species: lodgepole pine", "    species: lodgepole pine\n    sawn: green"),
    );
    expect(own?.boards[1]?.width.toFraction(true)).toBe("3 9/16");
  });
  test("a wood may be added and used in another file", () => {
    const woods = `species:\n  larch:\n    gravity: 0.52\n    stiffness: 1870000\n    rupture: 13000\n    radial: 0.00155\n    tangential: 0.00323\n    saturation: 28\n    decay: moderate\n    source: common practice, no source\n`;
    const { yard: own, problems: found } = readYard([
      { file: "boards.yaml", text: smallYard.replace("species: lodgepole pine", "species: larch") },
      { file: "woods.yaml", text: woods },
    ]);
    expect(found).toEqual([]);
    expect(own?.boards[1]?.species).toMatchObject({ name: "larch", stiffness: 1870000 });
  });
});

describe("each mistake at its line", () => {
  test.each([
    [
      "an unknown wood, with the nearest",
      "species: western redcedar",
      "species: western red cedar",
      "4:14 yard-species western redcedar",
    ],
    ["a price without any date", "priced: 2026-10-03\n", "", "2:3 yard-no-date"],
    ["a day that is none", "on 2026-09-12", "on 2026-02-30", "17:14 yard-date"],
    ["a date the wrong way round", "on 2026-09-12", "on 12.9.2026", "17:14 yard-date"],
    ["a price below 0", "72: 3.98", "72: -3.98", "11:11 yard-price"],
    ["a price with a comma", "72: 3.98", "72: 3,98", "11:11 yard-price"],
    ["a section the table lacks", "  2x4:", "  2x7:", "12:3 yard-nominal 2x6"],
    ["a green section the green table lacks", "  2x4:\n", "  6/4x4:\n    sawn: green\n", "12:3 yard-nominal 5/4x4"],
    [
      "neither dry nor green",
      "    species: lodgepole pine",
      "    species: lodgepole pine\n    sawn: gren",
      "14:11 not-one-of green",
    ],
    [
      "a dry board that is wet",
      "    moisture: 15\n    words: pine",
      "    moisture: 24\n    words: pine",
      "14:15 yard-not-dry",
    ],
    ["one side only", "size: 5/8 x 5 1/2\n", "measured: 5/8\n", "5:15 yard-sides"],
    ["half a size", "size: 5/8 x 5 1/2\n", "size: 5/8 x\n", "5:11 yard-sides"],
    ["a size of 0", "size: 5/8 x 5 1/2\n", "size: 0 x 5 1/2\n", "5:11 yard-number"],
    ["no bar in a fraction", "size: 5/8 x 5 1/2\n", "size: 5/8 x 5 1 2\n", "5:11 yard-length 5 1/2"],
    ["a board without a size", "    size: 5/8 x 5 1/2\n", "", "3:3 yard-no-size"],
    ["an unknown key, with the nearest", "end-loss", "end-los", "8:5 unknown-key end-loss"],
    ["a missing key", "    words: pine, not treated\n", "", "12:3 missing-key"],
    ["an end loss as long as the board", "end-loss: 1 1/2", "end-loss: 6 ft", "11:7 yard-nothing-left"],
    [
      "a board that is one text",
      "  2x4:\n    species: lodgepole pine\n",
      "  2x3: pine\n  2x4:\n    species: lodgepole pine\n",
      "12:8 wrong-kind",
    ],
    ["no lengths", "    lengths:\n      72: 3.98\n", "    lengths:\n", "10:13 wrong-kind"],
    ["a length twice in two ways", "8 ft: 3.85", "120: 3.85", "12:3 yard-length-twice"],
    ["a name twice", "  2x4:", "  fence board:", "12:3 duplicate-key"],
    ["an unknown section, with the nearest", "finishes:", "finshes:", "24:1 unknown-key finishes"],
    ["a section that is one text", "glues:\n  wood glue: waterproof glue", "glues: wood glue", "44:8 wrong-kind"],
    ["a fastener whose name says no size", "screw No. 6 x 1 5/8", "long screw", "20:3 yard-fastener-name"],
    ["a material of unknown weight", "material: stainless steel", "material: bronze", "21:15 yard-material"],
    ["a pack without a count", "100 for 9.80", "9.80", "23:11 yard-number"],
    ["a colour lost behind #", "colour: 8A5A34", "colour: #8A5A34", "28:13 bad-value"],
    ["a colour by name", "colour: 8A5A34", "colour: brown", "28:13 yard-colour"],
    ["clearer than clear", "clear: 0.45", "clear: 1.45", "29:12 yard-number"],
    ["a tin without a measure", "tin: 1 quart", "tin: large", "31:10 yard-number"],
    ["no board that fits the vehicle", "boards:", "vehicle: 5 ft\nboards:", "4:3 yard-vehicle"],
    ["a vehicle of no length", "boards:", "vehicle: 0\nboards:", "2:10 yard-number"],
    ["a vehicle with lines of its own", "boards:", "vehicle:\n  van: 8 ft\nboards:", "3:3 wrong-kind"],
    ["a number of boards that is none", "72: 3.98", "72: 3.98, some there", "11:11 yard-price"],
    ["an offcut wider than its board", "72: 3.98", "72: 3.98\n    in-stock:\n      30 x 6: 1", "13:7 yard-own-wide"],
    ["half an offcut", "72: 3.98", "72: 3.98\n    in-stock:\n      30: 1/2", "13:11 yard-number"],
    ["a weight without a unit", "weight: 0.4 oz", "weight: 0.4", "42:13 yard-number"],
  ])("%s", (_, from, to, told) => expect(changed(from, to)).toContain(told));

  test("all problems are told at once, in reading order", () => {
    const text = smallYard
      .replace("72: 3.98", "72: free")
      .replace("moisture: 15", "moisture: wet")
      .replace("tin: 1 quart", "tin: big");
    expect(read(text).problems.map((p) => p.at.line)).toEqual([7, 11, 31]);
  });
  test("a name in two files is told with both places", () => {
    const { problems } = readYard([
      { file: "a.yaml", text: smallYard },
      { file: "b.yaml", text: "glues:\n  wood glue: another\n" },
    ]);
    expect(problems).toMatchObject([
      { code: "yard-name-twice", at: { file: "b.yaml", line: 2 }, also: { file: "a.yaml", line: 45 } },
    ]);
  });
});

// Sums as makers write them, and that a sum printed in the language reads back as itself.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { measures } from "../../src/recipe/sum.ts";
import { exact } from "../../src/units/length.ts";
import { sides } from "../../src/units/side.ts";
import { bareOf, referenceOf, sumOf } from "./parse.ts";

describe("sums", () => {
  const cases: readonly (readonly [string, unknown])[] = [
    ["17 9/16", { kind: "length", value: "281/16", bare: true }],
    ["17-9/16", { kind: "length", value: "281/16", bare: true }],
    ["28⅞", { kind: "length", value: "231/8", bare: true }],
    ["1' 6 1/2\"", { kind: "length", value: "37/2", bare: false }],
    ["2 ft 4 in", { kind: "length", value: "28", bare: false }],
    ["450 mm", { kind: "length", value: "2250/127", bare: false }],
    ["14 deg", { kind: "angle", degrees: 14 }],
    ["12 in 12", { kind: "angle", degrees: 45 }],
    ["top-depth", { kind: "size", name: "top-depth" }],
    ["floor", { kind: "line", side: "bottom" }],
    ["weight", { kind: "measure", measure: "weight" }],
    ["height", { kind: "size", name: "height" }],
    ["half pitch", { kind: "over", sum: { kind: "size", name: "pitch" }, by: "2" }],
    ["half of pitch", { kind: "over", sum: { kind: "size", name: "pitch" }, by: "2" }],
    ["2 * pitch", { kind: "times", sum: { kind: "size", name: "pitch" }, by: "2" }],
    ["pitch * 2", { kind: "times", sum: { kind: "size", name: "pitch" }, by: "2" }],
  ];
  for (const [text, sum] of cases)
    it(`${text}`, () => {
      expect(bareOf(sumOf(text))).toEqual(sum);
    });

  it("height - 2 - 1 takes both away: minus reads from the left", () => {
    const sum = sumOf("height - 2 - 1");
    expect(sum.kind === "minus" && sum.left.kind).toBe("minus");
  });

  it("a - b * 2 takes twice b away; (a - b) * 2 doubles what is left", () => {
    expect(sumOf("a - b * 2").kind).toBe("minus");
    expect(sumOf("(a - b) * 2").kind).toBe("times");
  });

  it("in `2 in + clear` the in is a unit", () => {
    expect(bareOf(sumOf("2 in + clear"))).toEqual({
      kind: "plus",
      left: { kind: "length", value: "2", bare: false },
      right: { kind: "size", name: "clear" },
    });
  });

  it("every term has the column of its first letter: clear in `height - clear` stands in column 10", () => {
    const sum = sumOf("height - clear");
    expect(sum.kind === "minus" && sum.right.at.column).toBe(10);
  });

  it("a thousand brackets are refused, not followed", () => {
    expect(() => sumOf(`${"(".repeat(1000)}1${")".repeat(1000)}`)).toThrow("more than 80 words");
  });
});

describe("references", () => {
  const cases: readonly (readonly [string, unknown])[] = [
    ["rails", { names: ["rails"], pick: { kind: "all" }, each: false }],
    [
      "front-face rails 6",
      { names: ["front-face", "rails"], pick: { kind: "numbers", ranges: [{ from: 6, to: 6 }] }, each: false },
    ],
    ["rails 2 to 5", { names: ["rails"], pick: { kind: "numbers", ranges: [{ from: 2, to: 5 }] }, each: false }],
    [
      "planks 2 and 3",
      {
        names: ["planks"],
        pick: {
          kind: "numbers",
          ranges: [
            { from: 2, to: 2 },
            { from: 3, to: 3 },
          ],
        },
        each: false,
      },
    ],
    ["rails last", { names: ["rails"], pick: { kind: "last" }, each: false }],
    ["odd rails", { names: ["rails"], pick: { kind: "odd" }, each: false }],
    ["each even face rails", { names: ["face", "rails"], pick: { kind: "even" }, each: true }],
  ];
  for (const [text, expected] of cases)
    it(text, () => {
      const { names, pick, each } = referenceOf(text);
      expect({ names: names.map((name) => name.text), pick, each }).toEqual(expected);
    });
});

/** A sum in the language, with every part that needs them in brackets. */
type Printed = { readonly text: string; readonly bare: unknown };

const names = fc.constantFrom("clear", "pitch", "top-depth", "height");
const references = fc.constantFrom("rails", "face rails", "front-face rails 2", "each legs", "odd rails");
const numbers = fc.tuple(fc.nat(200), fc.integer({ min: 1, max: 15 })).map(([whole, part]) => ({
  text: `${whole} ${part}/16`,
  value: exact(whole).add(exact(part, 16)),
}));
const reference = (text: string): unknown => bareOf(referenceOf(text));

const terms: fc.Arbitrary<Printed> = fc.oneof(
  numbers.map(({ text, value }) => ({ text, bare: { kind: "length", value: value.toFraction(), bare: true } })),
  names.map((name) => ({ text: name, bare: { kind: "size", name } })),
  fc.tuple(fc.constantFrom(...sides, "middle"), references).map(([side, of]) => ({
    text: `${side} of ${of}`,
    bare: { kind: "line", side, of: reference(of) },
  })),
  fc.tuple(fc.constantFrom(...measures), references).map(([measure, of]) => ({
    text: `${measure} of ${of}`,
    bare: { kind: "measure", measure, of: reference(of) },
  })),
);

const { sum } = fc.letrec<{ sum: Printed }>((tie) => ({
  sum: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    terms,
    fc.tuple(tie("sum"), terms, fc.constantFrom(["+", "plus"], ["-", "minus"])).map(([left, right, [sign, kind]]) => ({
      text: `${left.text} ${sign} ${right.text}`,
      bare: { kind, left: left.bare, right: right.bare },
    })),
    fc
      .tuple(tie("sum"), fc.integer({ min: 1, max: 9 }), fc.constantFrom(["*", "times"], ["/", "over"]))
      .map(([inner, by, [sign, kind]]) => ({
        text: `(${inner.text}) ${sign} ${by}`,
        bare: { kind, sum: inner.bare, by: String(by) },
      })),
  ),
}));

it("a sum printed in the language reads back as itself", () => {
  fc.assert(
    fc.property(sum, ({ text, bare }) => {
      expect(bareOf(sumOf(text))).toEqual(bare);
    }),
    { numRuns: 500, seed: 20261103 },
  );
});

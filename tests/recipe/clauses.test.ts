// Each clause has one meaning, and their order does not matter.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isClause } from "../../src/recipe/clause.ts";
import { clauseForms } from "../../src/recipe/clause-forms.ts";
import { bareOf, clauseOf, lineOf, start } from "./parse.ts";

const size = (name: string) => ({ kind: "size", name });
const length = (value: string) => ({ kind: "length", value, bare: true });
const named = (text: string) => ({ names: [{ text, at: undefined }], pick: { kind: "all" }, each: false });
const whole = (...names: string[]) => ({ ...named(""), names: names.map((text) => ({ text })) });

describe("clauses", () => {
  const cases: readonly (readonly [string, unknown])[] = [
    ["upright", { kind: "run", run: "upright" }],
    ["level", { kind: "run", run: "level" }],
    ["running front to back", { kind: "run", run: "front to back" }],
    ["flat", { kind: "lie", lie: "flat" }],
    ["on edge", { kind: "lie", lie: "on edge" }],
    ["facing left", { kind: "facing", side: "left" }],
    ["good side up", { kind: "facing", side: "top" }],
    ["good side down", { kind: "facing", side: "bottom" }],
    ["from clear to top", { kind: "from to", from: size("clear"), to: { kind: "line", side: "top" } }],
    ["between legs", { kind: "between", a: whole("legs") }],
    [
      "between legs 1 and 2",
      {
        kind: "between",
        a: {
          ...whole("legs"),
          pick: {
            kind: "numbers",
            ranges: [
              { from: 1, to: 1 },
              { from: 2, to: 2 },
            ],
          },
        },
      },
    ],
    [
      "between front-face legs and back-face legs",
      { kind: "between", a: whole("front-face", "legs"), b: whole("back-face", "legs") },
    ],
    ["lapping half", { kind: "lapping", by: "half" }],
    [
      "lapping half thickness of strip",
      {
        kind: "lapping",
        by: { kind: "over", sum: { kind: "measure", measure: "thickness", of: whole("strip") }, by: "2" },
      },
    ],
    ["14 long plus 2 each", { kind: "long", length: length("14"), more: length("2") }],
    ["centred", { kind: "centred" }],
    ["centred bottom to top", { kind: "centred", axis: "z" }],
    ["centred on legs", { kind: "centred", on: whole("legs") }],
    ["bottom at clear", { kind: "side at", side: "bottom", line: size("clear") }],
    ["at floor", { kind: "side at", side: "bottom", line: { kind: "line", side: "bottom" } }],
    [
      "top at top of each front-face strips",
      {
        kind: "side at",
        side: "top",
        line: { kind: "line", side: "top", of: { ...whole("front-face", "strips"), each: true } },
      },
    ],
    ["setback from left", { kind: "in from", distance: size("setback"), side: "left" }],
    ["on rails", { kind: "touching", side: "top", of: whole("rails") }],
    ["under front-face rails", { kind: "touching", side: "bottom", of: whole("front-face", "rails") }],
    ["on back of legs", { kind: "touching", side: "back", of: whole("legs") }],
    ["against left of crate", { kind: "touching", side: "left", of: whole("crate") }],
    [
      "2 in in front of crate",
      { kind: "touching", side: "front", of: whole("crate"), off: { kind: "length", value: "2", bare: false } },
    ],
    ["2 in front of crate", { kind: "touching", side: "front", of: whole("crate"), off: length("2") }],
    ["2 left of crate", { kind: "touching", side: "left", of: whole("crate"), off: length("2") }],
    ["level with front of legs", { kind: "level with", side: "front", of: whole("legs") }],
    ["overhang 1 from front of legs", { kind: "level with", side: "front", of: whole("legs"), out: length("1") }],
    ["inset 1/2 from front of legs", { kind: "level with", side: "front", of: whole("legs"), in: length("1/2") }],
    [
      "spread left to right",
      { kind: "spread", from: { kind: "line", side: "left" }, to: { kind: "line", side: "right" } },
    ],
    ["spread between legs", { kind: "spread between", a: whole("legs") }],
    ["spread over 24", { kind: "spread over", length: length("24") }],
    ["end gaps", { kind: "end gaps" }],
    ["gap 2", { kind: "gap", gap: length("2") }],
    ["gap 2 left to right", { kind: "gap", gap: length("2"), axis: "x" }],
    ["gaps at most 1 1/4", { kind: "gaps at most", gap: length("5/4") }],
    [
      "top every pitch down from height - 1",
      {
        kind: "every",
        side: "top",
        pitch: size("pitch"),
        toward: "bottom",
        from: { kind: "minus", left: size("height"), right: length("1") },
      },
    ],
    ["mirrored", { kind: "mirrored" }],
    ["loose", { kind: "loose" }],
  ];
  for (const [text, clause] of cases)
    it(text, () => {
      expect(bareOf(clauseOf(text))).toEqual(clause);
    });

  it("every form of the table is read from its own example", () => {
    for (const form of clauseForms) {
      const parts = form.example.split(", ").filter((part) => isClause({ text: part, at: start }));
      const heard = parts.map((part) => clauseForms.find((each) => each.fits(part.split(" ")))?.form);
      expect(heard).toContain(form.form);
    }
  });
});

describe("a line", () => {
  it("without a count is of one; with gaps at most the count follows; a count stands", () => {
    expect(lineOf("strip, upright").line.count).toBe(1);
    expect(lineOf("strip, gaps at most 1").line.count).toBe("follows");
    expect(lineOf("6 strip, level").line.count).toBe(6);
  });

  const clauses = [
    "level",
    "between legs",
    "lapping half",
    "on back of legs",
    "top every pitch down from height - 1",
    "end gaps",
  ];
  it("means the same in every order of its clauses", () => {
    const sorted = (text: string) => {
      const { line, problems } = lineOf(text);
      expect(problems).toEqual([]);
      return new Set(line.clauses.map((clause) => JSON.stringify(bareOf(clause))));
    };
    const meant = sorted(`4 strip, ${clauses.join(", ")}`);
    fc.assert(
      fc.property(fc.shuffledSubarray(clauses, { minLength: clauses.length }), (shuffled) => {
        expect(sorted(`4 strip, ${shuffled.join(", ")}`)).toEqual(meant);
      }),
      { numRuns: 100, seed: 20261103 },
    );
  });
});

import { describe, expect, test } from "vitest";
import { readCord } from "../../src/recipe/cord.ts";
import { readText } from "../../src/recipe/lettering.ts";
import { gathered } from "../../src/recipe/scan.ts";

const at = { file: "test.md", line: 1, column: 1 };
const name = { text: "one", at };

function cord(text: string) {
  const into = gathered();
  return { rule: readCord(name, { text, at }, into), problems: into.problems.map((p) => `${p.at.column} ${p.code}`) };
}

describe("a cord in words", () => {
  test("keeps the parts of its way in order: left holes up, a hanger, right holes down", () => {
    const { rule, problems } = cord(
      "rope 1/4, up through the left holes of planks, hanger 10 above planks 5, down through the right holes of planks, back and front, knots at both ends, 4 for each knot, slack 1 1/2",
    );
    expect(problems).toEqual([]);
    expect(rule.rope.text).toBe("rope 1/4");
    expect(rule.way.map((part) => [part.kind, part.of.text])).toEqual([
      ["holes", "planks"],
      ["hanger", "planks 5"],
      ["holes", "planks"],
    ]);
    expect(rule.way[0]).toMatchObject({ toward: "top", side: "left" });
    expect(rule).toMatchObject({ from: "back", fromSaid: true, knots: { start: true, end: true } });
    expect(rule.slack).toMatchObject({ kind: "length" });
  });

  test("that says little starts at the front and has no knot", () => {
    const { rule } = cord("rope 3/8, back through the holes of rails");
    expect(rule).toMatchObject({ from: "front", fromSaid: false, knots: { start: false, end: false } });
    expect(rule.way[0]).toMatchObject({ toward: "back" });
  });

  test("whose clauses go wrong is told about each of them at its column", () => {
    expect(cord("rope 1/4, up through the holes, slack, knots at end").problems).toEqual([
      "31 form-broken",
      "38 form-broken",
      "49 form-broken",
    ]);
  });
});

describe("letters in words", () => {
  const text = (value: string) => {
    const into = gathered();
    return {
      rule: readText(name, { text: value, at }, into),
      problems: into.problems.map((p) => `${p.at.column} ${p.code}`),
    };
  };

  test("take all that follows saying, commas too; / with blanks parts texts, without blanks it doesn't", () => {
    const { rule } = text("planks, 1 high, saying Eggs, 1/2 dozen / Honey");
    expect(rule?.sayings.map((said) => [said.text, said.at.column])).toEqual([
      ["Eggs, 1/2 dozen", 24],
      ["Honey", 42],
    ]);
  });

  test("stand by stencil where no way is named", () => {
    expect(text("planks, 1 high, saying Eggs").rule?.ways).toEqual(["stencil"]);
  });
});

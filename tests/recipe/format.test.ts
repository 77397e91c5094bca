// Formats: the one that is read, newer ones refused, older ones led here step by step.
import { describe, expect, it } from "vitest";
import { type Migration, migrated, migrationPath } from "../../src/recipe/format-migrations.ts";
import { checkFormat } from "../../src/recipe/head.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { start } from "./parse.ts";

const title = "---\ntitle: Peg rail\n";
const rest = `overall: 20 x fit x fit
pieces:
  strip: fence board
stand:
  rail: 1 strip, flat, from left to right, at front
---
A rail.
`;

/** A format that never was: format 0 wrote "boards" for pieces. */
const madeUp: readonly Migration[] = [
  {
    from: 0,
    to: 1,
    says: '"boards" becomes "pieces"',
    rewrite: (text) => text.replace(/^boards:/m, "pieces:"),
  },
];
const chain: readonly Migration[] = [
  { from: 1, to: 2, says: "one", rewrite: (text) => `${text}1` },
  { from: 2, to: 3, says: "two", rewrite: (text) => `${text}2` },
  { from: 3, to: 4, says: "three", rewrite: (text) => `${text}3` },
  { from: 1, to: 3, says: "one and two", rewrite: (text) => `${text}12` },
];

describe("a recipe's format", () => {
  it("is 1 where it says nothing, and where it says 1", () => {
    expect(readRecipe("x.md", `${title}${rest}`).problems).toEqual([]);
    expect(readRecipe("x.md", `${title}format: 1\n${rest}`).problems).toEqual([]);
  });

  it("that is newer is refused, with what to do", () => {
    const [told, ...more] = readRecipe("x.md", `${title}format: 2\n${rest}`).problems;
    expect(more).toEqual([]);
    expect(told).toMatchObject({ code: "unknown-format", at: { line: 3, column: 9 } });
    expect(told?.mend).toContain("newer release");
  });

  it("that is older is told with the migration to run", () => {
    const [told] = checkFormat({ text: "0", at: start }, madeUp);
    expect(told).toMatchObject({ code: "old-format", found: "0", expected: "format 1" });
    expect(told?.mend).toBe('Run "shopleaf migrate" on this file: "boards" becomes "pieces".');
  });

  it("that never was, or that no migration leads from, is told as unknown", () => {
    for (const text of ["0", "first", "1.5", "-1"])
      expect(checkFormat({ text, at: start }, [])).toMatchObject([{ code: "unknown-format" }]);
  });
});

describe("migrations", () => {
  it("make an old recipe one that is read: boards become pieces, and the format line says 1", () => {
    const old = `${title}format: 0   # as it was\n${rest.replace("pieces:", "boards:")}`;
    expect(readRecipe("x.md", old).recipe).toBeUndefined();
    const now = migrated(old, migrationPath(0, 1, madeUp) ?? []);
    expect(now).toBe(`${title}format: 1   # as it was\n${rest}`);
    expect(readRecipe("x.md", now).problems).toEqual([]);
  });

  it("write the format line where there is none, and no other line that looks like one", () => {
    const old = `---\ntitle: format: of old\n---\nformat: 9\n`;
    expect(migrated(old, madeUp)).toBe("---\nformat: 1\ntitle: format: of old\n---\nformat: 9\n");
  });

  it("go the shortest way: 1 to 4 is 1 to 3, then 3 to 4", () => {
    expect(migrationPath(1, 4, chain)?.map(({ says }) => says)).toEqual(["one and two", "three"]);
    expect(migrationPath(2, 4, chain)?.map(({ says }) => says)).toEqual(["two", "three"]);
    expect(migrationPath(4, 4, chain)).toEqual([]);
  });

  it("never lead back or nowhere", () => {
    expect(migrationPath(4, 1, chain)).toBeUndefined();
    expect(migrationPath(1, 5, chain)).toBeUndefined();
  });
});

// Keys and values as a maker writes them, read with places, and told in plain words where they go wrong.
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { nearest } from "../../src/problems/nearest.ts";
import { checkShape, entryAt } from "../../src/problems/tree-shape.ts";
import { entriesUnder, readYamlTree, textUnder } from "../../src/problems/yaml-tree.ts";

const read = (text: string) => readYamlTree("bin.md", text, 2);
const told = (text: string) => read(text).problems.map((p) => `${p.at.line}:${p.at.column} ${p.code}`);

describe("a tree of texts", () => {
  test("a value keeps its text, line and column: 17 9/16 stands at 3:10", () => {
    const { tree, problems } = read("sizes:\n  clear:  17 9/16   # floor to rail\n");
    expect(problems).toEqual([]);
    expect(entriesUnder(tree, "sizes")[0]).toMatchObject({
      key: { text: "clear", at: { line: 3, column: 3 } },
      value: { kind: "text", text: "17 9/16", at: { file: "bin.md", line: 3, column: 11 } },
    });
  });
  test("yes, no, 007 and dates stay as they were written", () => {
    const { tree } = read('draft: yes\ncode: 007\nday: 2026-11-01\nmark: 18"\n');
    expect(["draft", "code", "day", "mark"].map((k) => textUnder(tree, k)?.text)).toEqual([
      "yes",
      "007",
      "2026-11-01",
      '18"',
    ]);
  });
  test("inside quotes the place is that of the first letter", () => {
    expect(textUnder(read('a: "x: y"\n').tree, "a")).toMatchObject({ text: "x: y", at: { line: 2, column: 5 } });
  });
  test("an empty text is an empty map", () => expect(read("").tree.entries).toEqual([]));
});

describe("what goes wrong is told at its line", () => {
  test.each([
    ["title: x\nclass S\n", "3:1 yaml-no-colon"],
    ["a: b: c\n", "2:4 yaml-second-colon"],
    ["a: 1\n  b: 2\n", "3:3 yaml-indent"],
    ["a:\n\tb: 1\n", "3:1 yaml-tab"],
    ["x:\n  y: 1\n z: 2\n", "4:1 yaml-indent"],
    ['a: 1\nb: "open\nc: 2\n', "3:4 yaml-open-quote"],
    ["a: @b\n", "2:4 yaml-bad-start"],
    ["a: 1\na: 2\n", "3:1 duplicate-key"],
    ["a: *x\n", "2:4 yaml-shorthand"],
    ["a: &x 1\n", "2:7 yaml-shorthand"],
    ["a: !big 1\n", "2:9 yaml-shorthand"],
    ["a: {b: 1}\n", "2:4 yaml-flow"],
    ["a: [1, 2]\n", "2:4 yaml-flow"],
    ["s: 2 screw #8 x 1\n", "2:4 yaml-hash"],
    ["- 1\n", "2:1 yaml-no-keys"],
    ["hello\n", "2:1 yaml-no-keys"],
    ["a: 1\n---\nb: 2\n", "3:1 yaml-unreadable"],
  ])("%j", (text, code) => expect(told(text)).toEqual([code]));
});

describe("a schema's findings come with places", () => {
  const schema = z.strictObject({
    title: z.string().min(1, "a title"),
    width: z.string(),
    decay: z.enum(["resistant", "moderate"]).optional(),
    panels: z.record(z.string(), z.strictObject({ size: z.string() })).optional(),
  });
  const check = (text: string) => checkShape(read(text).tree, schema, "in the front-matter");

  test("good data comes back with places", () => {
    const { placed } = check("title: Bin\nwidth: 30\npanels:\n  face:\n    size: 3 x 4\n");
    expect(placed?.panels?.face?.size).toEqual({ text: "3 x 4", at: { file: "bin.md", line: 6, column: 11 } });
  });
  test("all problems at once: unknown key with the nearest, missing key, wrong kind, word not allowed", () => {
    const { problems } = check("titel: Bin\nwidth:\n  a: 1\ndecay: resistent\npanels:\n  face:\n    sise: 1\n");
    expect(problems.map((p) => [p.code, p.at.line, p.nearest])).toEqual(
      expect.arrayContaining([
        ["unknown-key", 2, "title"],
        ["missing-key", 2, undefined],
        ["wrong-kind", 4, undefined],
        ["not-one-of", 5, "resistant"],
        ["unknown-key", 8, "size"],
        ["missing-key", 7, undefined],
      ]),
    );
    expect(problems).toHaveLength(6);
  });
  test("an empty value is told as one", () => {
    expect(check("title:\nwidth: 3\n").problems.map((p) => p.says)).toEqual(['"title" has no value.']);
  });
  test("an entry can be asked for by its path", () => {
    const { tree } = read("panels:\n  face:\n    size: 1\n");
    expect(entryAt(tree, ["panels", "face", "size"])?.key.at.line).toBe(4);
  });
});

describe("the nearest name", () => {
  test("one letter off is near, another word is not", () => {
    expect(nearest("fence bord", ["2x4", "fence board"])).toBe("fence board");
    expect(nearest("Raisl", ["rails", "legs"])).toBe("rails");
    expect(nearest("tabletop", ["rails", "legs"])).toBeUndefined();
  });
});

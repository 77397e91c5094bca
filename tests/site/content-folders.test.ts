// What a maker is told of folders and files, before a word of a recipe is read.
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readContent } from "../../src/site/content-files.ts";
import { workContent } from "../../src/site/work-content.ts";
import { root, shopleaf } from "../whole/demo.ts";

const folder = (): string => mkdtempSync(join(tmpdir(), "shopleaf-folders-"));
const codes = (problems: readonly { readonly code: string }[]): string[] => problems.map((p) => p.code).sort();

function contentWith(...files: readonly string[]): string {
  const content = folder();
  for (const name of files) {
    mkdirSync(join(content, name, ".."), { recursive: true });
    writeFileSync(join(content, name), "x\n");
  }
  return content;
}

describe("a content folder", () => {
  test("that isn't there is one problem: no-folder", () => {
    expect(codes(readContent(join(folder(), "nowhere")).problems)).toEqual(["no-folder"]);
  });

  test("that is empty lacks its three folders: no-folder three times", () => {
    expect(codes(readContent(folder()).problems)).toEqual(["no-folder", "no-folder", "no-folder"]);
  });

  test("with two shops is told shop-files; with an empty folder of recipes, no-recipes", () => {
    const content = contentWith("yard/boards.yaml", "shop/one.yaml", "shop/two.yaml");
    mkdirSync(join(content, "recipes"));
    const { problems } = readContent(content);
    expect(codes(problems)).toEqual(["no-recipes", "shop-files"]);
    expect(problems.find((p) => p.code === "shop-files")?.says).toContain("2");
  });
});

test("two recipes of one title are each told same-slug, naming the other", () => {
  const recipe =
    "---\ntitle: Peg rail\noverall: 20 x fit x fit\npieces:\n  strip: 1x3\nstand:\n  strips: 1 strip, flat, from left to right, at front, bottom at bottom\n---\nA rail.\n\n## Cut it\n\n1. Cut **strips**.\n";
  const { content } = readContent("content");
  const twins = ["a.md", "b.md"].map((file) => ({ file, text: recipe }));
  const told = workContent({ ...content, recipes: twins, guide: [], orders: [] }).problems;
  expect(codes(told)).toEqual(["same-slug", "same-slug"]);
  expect(told[0]?.says).toContain("b.md");
});

describe("problems on standard output", () => {
  const told = (...words: readonly string[]): string[] => {
    const { out, code } = shopleaf(words);
    expect(code).toBe(1);
    return codes(JSON.parse(out).problems);
  };

  test("of a folder without a recipe: no-recipes", () => {
    expect(told("problems", folder())).toEqual(["no-recipes"]);
  });

  test("of a recipe with no yard in any folder above it: no-yard-near", () => {
    const alone = join(contentWith("alone.md"), "alone.md");
    expect(told("problems", alone)).toContain("no-yard-near");
  });
});

describe("a model of solids", () => {
  const lines = (text: string) => {
    const model = join(folder(), "model.json");
    writeFileSync(model, text);
    return shopleaf(["lines", model, "--view", "front"]);
  };

  // Codes not-json and model-fault are not printed: `lines` prints lines or, of what is wrong, only the sentences.
  test("that is not JSON is told so", () => {
    const { code, out, err } = lines("{");
    expect([code, out]).toEqual([1, ""]);
    expect(err).toContain("This is not JSON");
  });

  test("without parts is told so", () => {
    const { code, out, err } = lines('{"model": {}}');
    expect([code, out]).toEqual([1, ""]);
    expect(err).toContain("In this model");
  });
});

describe("paper", () => {
  const recipe = (title: string, more = ""): string => `---
title: ${title}
overall: fit x fit x 18
pieces:
  strip: fence board, ripped to 2 1/2
stand:
  stake: 1 strip, upright, facing front, from bottom to top, at left, at front
${more}---
A marker.

## Stand it up

1. Stand the **stake** up.
`;
  const told = (recipes: readonly string[], shop: string) =>
    workContent({
      folder: "c",
      recipes: recipes.map((text, i) => ({ file: `${i}.md`, text })),
      yard: demoFiles("yard"),
      shop: [{ file: "shop.yaml", text: shop }],
      guide: [],
      orders: [],
      printed: [],
    }).problems.map(({ code, at }) => `${at.file}:${at.line}:${at.column} ${code}`);
  const demoFiles = (name: string) =>
    readdirSync(join(root, "content", name)).map((file) => ({
      file: `${name}/${file}`,
      text: readFileSync(join(root, "content", name, file), "utf8"),
    }));
  const shop = demoFiles("shop")[0]?.text ?? "";

  test("a letter that its font lacks is told where it stands, each line's first; behind a # it is no matter", () => {
    const recipes = [recipe("Marker ⌀ 3 ⚠"), recipe("Other marker", "# ⌀ is no letter here\n")];
    expect(told(recipes, shop)).toEqual(["0.md:2:15 letter-not-on-paper"]);
  });
  test("a plan is sold only where the shop says on what terms", () => {
    const bare = shop.replace(/^# Goes with every plan[\s\S]*?\n\n/m, "");
    expect(bare).not.toBe(shop);
    expect(told([recipe("Marker", "plan: yes\n"), recipe("Other marker", "plan: no\n")], bare)).toEqual([
      "0.md:8:7 plan-without-terms",
    ]);
    expect(told([recipe("Marker", "plan: yes\n")], shop)).toEqual([]);
  });
});

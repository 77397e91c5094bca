// The editors' schemas, as they stand in the site, checked by a validator of their own standard (JSON Schema 2020-12).
import { readdirSync, readFileSync } from "node:fs";
import { basename, dirname, join, relative, resolve } from "node:path";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { frontMatterSchema } from "../../src/recipe/front-matter.ts";
import { recipeWords, schemaFiles } from "../../src/site/schema-files.ts";
import { root } from "./demo.ts";

const validators = new Map(
  schemaFiles().map(({ path, text }): [string, ValidateFunction] => {
    const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true });
    return [path, ajv.compile(JSON.parse(text))];
  }),
);

function faults(path: string, value: unknown): string[] {
  const validate = validators.get(path);
  if (!validate) throw new Error(`no schema ${path}`);
  validate(value);
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

const filesOf = (folder: string, ending: string): string[] =>
  readdirSync(join(root, "content", folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => join(root, "content", folder, name));

/** As an editor reads YAML: by the core schema, where 3.98 is a number and a title a text. */
const frontMatter = (file: string): unknown => parse(readFileSync(file, "utf8").split(/^---$/m)[1] ?? "");

describe("the demo's own files keep to the published schemas", () => {
  it.each(filesOf("recipes", ".md"))("%s", (file) =>
    expect(faults("schema/recipe.json", frontMatter(file))).toEqual([]),
  );
  it.each(filesOf("yard", ".yaml"))("%s", (file) =>
    expect(faults("schema/yard.json", parse(readFileSync(file, "utf8")))).toEqual([]),
  );
  it.each(filesOf("orders", ".yaml"))("%s", (file) =>
    expect(faults("schema/orders.json", parse(readFileSync(file, "utf8")))).toEqual([]),
  );
  it.each(filesOf("shop", ".yaml"))("%s", (file) =>
    expect(faults("schema/shop.json", parse(readFileSync(file, "utf8")))).toEqual([]),
  );
});

describe("a recipe's schema tells what can be seen from its shape", () => {
  const good = {
    title: "Peg rail",
    overall: "20 x fit x 4",
    pieces: { rail: "fence board" },
    stand: { rail: "1 rail" },
  };

  it.each<[string, object, string]>([
    ["no title", { ...good, title: undefined }, " must have required property 'title'"],
    ["a key that isn't one", { ...good, piecs: {} }, " must NOT have additional properties"],
    [
      "a panel without a size",
      { ...good, panels: { face: { legs: "2 strip" } } },
      "/panels/face must have required property 'size'",
    ],
    ["pieces on one line", { ...good, pieces: "rail" }, "/pieces must be object"],
    ["a list of claims", { ...good, claims: ["height: 4"] }, "/claims must be object"],
  ])("%s", (_, recipe, told) => {
    expect(faults("schema/recipe.json", JSON.parse(JSON.stringify(recipe)))).toContain(told);
  });

  it("takes a number where a text is meant, as editors read it", () => {
    expect(faults("schema/recipe.json", { ...good, format: 1, sizes: { clear: 3 } })).toEqual([]);
  });

  it("takes choices in both forms", () => {
    const choices = { finish: "oil, bare", lid: "with, without", size: { S: "as written", M: "width 24" } };
    expect(faults("schema/recipe.json", { ...good, choices })).toEqual([]);
  });

  it("has words for every part of a recipe, and for none that isn't one", () => {
    expect(Object.keys(recipeWords).sort()).toEqual(Object.keys(frontMatterSchema.shape).sort());
  });

  it("says nothing of shelves", () => {
    for (const { text } of schemaFiles()) expect(text).not.toContain('"shelf"');
  });
});

describe("the line for editors", () => {
  const lineIn = (file: string): string | undefined =>
    /^# yaml-language-server: \$schema=(\S+)$/m.exec(readFileSync(file, "utf8"))?.[1];

  it("stands in every file of yard and shop, and in recipes", () => {
    const without = [...filesOf("yard", ".yaml"), ...filesOf("shop", ".yaml")].filter((file) => !lineIn(file));
    expect(without).toEqual([]);
    expect(filesOf("recipes", ".md").filter(lineIn).length).toBeGreaterThan(0);
  });

  it.each([...filesOf("yard", ".yaml"), ...filesOf("shop", ".yaml"), ...filesOf("recipes", ".md").filter(lineIn)])(
    "of %s leads to its schema where the site is built",
    (file) => {
      const target = relative(join(root, "_site"), resolve(dirname(file), lineIn(file) ?? ""));
      const folder = basename(dirname(file));
      expect(target).toBe(`schema/${folder === "recipes" ? "recipe" : folder}.json`);
      expect([...validators.keys()]).toContain(target);
    },
  );
});

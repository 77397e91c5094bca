// `shopleaf new`: every kind of construction gives a recipe that builds, and no file is written over.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { workVariants } from "../../src/item/variants/work-variants.ts";
import { printProblem } from "../../src/problems/print.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { startKinds, startText } from "../../src/site/starts.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { buildInto, copyContent, filesIn, newFolder, shopleaf } from "./demo.ts";

const yard = demoYard();
const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

/** A content folder with the demo's yard and shop and no recipe. */
function emptyContent(): string {
  const content = copyContent();
  made.push(join(content, ".."));
  rmSync(join(content, "recipes"), { recursive: true });
  for (const folder of ["guide", "orders"]) rmSync(join(content, folder), { recursive: true, force: true });
  mkdirSync(join(content, "recipes"));
  return content;
}

const linesOfFrontMatter = (text: string): number => (text.split(/^---\n/m)[1] ?? "").trimEnd().split("\n").length;

describe.each(startKinds())("a new %s", (kind) => {
  const text = startText(kind, "Potting corner");

  it("builds without a problem in every variant", () => {
    const { recipe, problems } = readRecipe("potting-corner.md", text);
    expect(problems.map(printProblem)).toEqual([]);
    expect(recipe?.title).toBe("Potting corner");
    const worked = recipe && workVariants(recipe, yard);
    expect(worked?.problems.map(printProblem)).toEqual([]);
    expect(worked?.items.length).toBeGreaterThan(0);
  });

  it("has a front-matter of at most ten lines", () => {
    expect(linesOfFrontMatter(text)).toBeLessThanOrEqual(10);
  });
});

describe("shopleaf new", () => {
  it("writes one recipe of each kind, from which a whole site builds", () => {
    const content = emptyContent();
    for (const kind of startKinds()) {
      const told = shopleaf(["new", `My ${kind}`, "--kind", kind, "--content", content]);
      expect(told).toEqual({ code: 0, out: `${join(content, "recipes", `my-${kind}.md`)}\n`, err: "" });
    }
    const out = join(newFolder(), "_site");
    made.push(join(out, ".."));
    buildInto(out, content);
    expect(filesIn(join(out, "binder/items"))).toEqual(startKinds().map((kind) => `my-${kind}.html`));
  }, 60_000);

  it("names the file after the title, and takes titles that YAML would misread", () => {
    const content = emptyContent();
    const title = `Baker's rack: "the #2"`;
    const told = shopleaf(["new", title, "--kind", "open-rack", "--content", content]);
    const path = join(content, "recipes/bakers-rack-the-2.md");
    expect(told.out).toBe(`${path}\n`);
    expect(readRecipe(path, readFileSync(path, "utf8")).recipe?.title).toBe(title);
  });

  it("never writes over a file", () => {
    const content = emptyContent();
    const path = join(content, "recipes/bench.md");
    writeFileSync(path, "mine");
    const told = shopleaf(["new", "Bench", "--content", content]);
    expect(told.code).toBe(2);
    expect(told.err).toContain("is there already");
    expect(readFileSync(path, "utf8")).toBe("mine");
  });

  it("lists the kinds where one is wrong, and says where it looked for the folder", () => {
    const told = shopleaf(["new", "Bench", "--kind", "bench"]);
    expect(told.code).toBe(2);
    expect(told.err).toContain(`there is no kind "bench", only ${startKinds().join(", ")}`);
    expect(shopleaf(["new", "Bench", "--content", "nowhere"]).err).toContain("nowhere/recipes");
    expect(shopleaf(["new"]).code).toBe(2);
    expect(shopleaf(["new", "two", "names"]).code).toBe(2);
  });

  it("a title without a letter is a problem, told with exit code 1", () => {
    const told = shopleaf(["new", "…", "--content", emptyContent()]);
    expect(told.code).toBe(1);
    expect(told.err).toContain("no letter or digit");
  });
});

describe("shopleaf migrate", () => {
  it("leaves a recipe of the present format as it is, byte for byte", () => {
    const content = emptyContent();
    const path = join(content, "recipes/rack.md");
    const text = startText("open-rack", "Rack");
    writeFileSync(path, text);
    const told = shopleaf(["migrate", path]);
    expect(told.code).toBe(0);
    expect(JSON.parse(told.out)).toEqual({ migrated: [{ file: path, from: 1, to: 1, steps: [] }] });
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  it("tells of a format that it can't lead here, and of a file that isn't there", () => {
    const content = emptyContent();
    const path = join(content, "recipes/rack.md");
    writeFileSync(path, startText("open-rack", "Rack").replace("---\n", "---\nformat: 9\n"));
    const told = shopleaf(["migrate", path, join(content, "recipes/gone.md")]);
    expect(told.code).toBe(1);
    expect(told.err).toContain("format 9");
    expect(told.err).toContain("there is no such file");
    expect(shopleaf(["migrate"]).code).toBe(2);
  });
});

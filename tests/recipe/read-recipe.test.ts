// Whole recipes: what is read from the demo, and what hostile text can't do.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findBareFigures } from "../../src/recipe/bare-figures.ts";
import { storeFields } from "../../src/recipe/front-matter.ts";
import { groupsOf } from "../../src/recipe/groups.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoTexts } from "./demo-texts.ts";
import { recipeOf } from "./parse.ts";

const textOf = (name: string): string => demoTexts.find(({ file }) => file.startsWith(name))?.text ?? "";
const corral = textOf("hose-and-pot-corral");
const rack = textOf("seedling-hardening-rack");

describe("the corral", () => {
  const recipe = recipeOf(corral);

  it("is called hose-and-pot-corral, class S X, and offers plain first of three finishes", () => {
    expect([recipe.slug, recipe.classes.join(" ")]).toEqual(["hose-and-pot-corral", "S X"]);
    expect(recipe.offered.map((name) => name.text)).toEqual(["plain", "stained", "two-colour"]);
  });

  it("has two panels, and five lines that stand", () => {
    expect(recipe.panels.map((panel) => panel.name.text)).toEqual(["face", "end"]);
    expect(recipe.stand.map((line) => `${line.count} ${line.what.text}`)).toEqual([
      "1 face",
      "1 face",
      "1 end",
      "1 end",
      "9 strip",
    ]);
  });

  it("knows the rails by panel and by kind of panel: rails, face rails, front-face rails", () => {
    const paths = groupsOf(recipe).map((group) => group.path.join(" "));
    expect(paths).toEqual(
      expect.arrayContaining(["face rails", "end rails", "front-face rails", "right-end rails", "slats"]),
    );
  });

  it("numbers its steps on through all sections: 4 + 3 + 6 = 13", () => {
    const numbers = recipe.sections.flatMap((section) => section.steps.map((step) => step.number));
    expect(numbers).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13]);
  });

  it("makes the face twice and the end twice, then stands them up", () => {
    const made = recipe.sections.map(({ makes }) => makes && `${makes.panel.text} x ${makes.times}`);
    expect(made).toEqual(["face x 2", "end x 2", undefined]);
  });

  it("takes its figures out of the prose: 4 in the first paragraph", () => {
    expect(recipe.intro[0]?.figures.length).toBe(4);
    expect(recipe.intro[0]?.markdown).toContain("It is ⟦0⟧ wide, ⟦1⟧ deep and ⟦2⟧ high, and weighs ⟦3⟧.");
  });

  it("keeps its checks and cautions with their steps, without their first word", () => {
    const [, second, third] = recipe.sections[0]?.steps ?? [];
    expect(second?.cautions.map((prose) => prose.markdown)).toEqual([
      "clamp the work before you drive a pocket screw.",
    ]);
    expect(third?.checks.map((prose) => prose.markdown)).toEqual(["corner to corner reads ⟦0⟧ both ways."]);
  });

  it("gives every word its place: `clear` in the rails' spread stands where the file has it", () => {
    const lines = corral.split("\n");
    const spread = recipe.panels[0]?.lines[1]?.clauses.find((clause) => clause.kind === "spread");
    const at = spread?.kind === "spread" ? spread.from.at : undefined;
    expect(lines[(at?.line ?? 0) - 1]?.slice((at?.column ?? 0) - 1)).toBe("clear to top");
  });
});

describe("both demo recipes", () => {
  const steps = [corral, rack].flatMap((text) => recipeOf(text).sections.flatMap((section) => section.steps));

  it("take less than forty lines of front-matter each for what is built; what is said of selling them comes on top", () => {
    const built = "title class overall sizes pieces panels stand fittings joins cuts finish choices".split(" ");
    for (const text of [corral, rack]) {
      const front = text.split(/^---\n/m)[1] ?? "";
      const blocks = front.split(/^(?=[a-z])/m).filter((block) => built.includes(block.split(":")[0] ?? ""));
      expect(blocks.length).toBeGreaterThan(8);
      expect(blocks.join("").trimEnd().split("\n").length).toBeLessThan(40);
    }
  });

  it("and every recipe of the demo takes less than seventy in all", () => {
    for (const { file, text } of demoTexts) expect(text.split("\n").indexOf("---", 1) - 1, file).toBeLessThan(70);
  });

  it("say each step in under 25 words", () => {
    for (const step of steps) expect(step.text.markdown.split(/\s+/).length, step.text.markdown).toBeLessThan(25);
  });

  it("read the same with line ends of carriage return and line feed", () => {
    for (const text of [corral, rack])
      expect(readRecipe("a.md", text.replaceAll("\n", "\r\n"))).toEqual(readRecipe("a.md", text));
  });
});

describe("hostile text", () => {
  const titled = (title: string) => corral.replace("Hose-and-pot corral", () => title);

  it("a path in a title gives a slug without dots or slashes", () => {
    for (const title of ["../../etc/passwd", "..\\..\\bin", "a/b/c", "bin%2e%2e%2fbin", "bin\u0301"])
      expect(recipeOf(titled(title)).slug).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it("markup in a title stays text", () => {
    expect(recipeOf(titled("Bin <img src=x onerror=alert(1)>")).title).toBe("Bin <img src=x onerror=alert(1)>");
  });

  it("names that objects have from birth are only names", () => {
    const text = corral
      .replace("  clear: 3 ", "  constructor: 3\n  clear: 3 ")
      .replace("spread clear to top", "spread toString to top");
    const { problems } = readRecipe("a.md", text);
    expect(problems.map((p) => p.code)).toEqual(["no-size-called"]);
  });

  it("__proto__ is no name", () => {
    const { problems } = readRecipe("a.md", corral.replace("  clear: 3 ", "  __proto__: 3\n  clear: 3 "));
    expect(problems.map((p) => p.code)).toEqual(["bad-name"]);
  });

  it("every control and direction mark is told at its place", () => {
    for (const code of [
      0, 7, 27, 0x7f, 0x85, 0x200b, 0x200e, 0x202e, 0x2028, 0x2066, 0xfeff, 0xfffd, 0xd800, 0xe0041,
    ]) {
      const { recipe, problems } = readRecipe("a.md", titled(`Bin ${String.fromCodePoint(code)}b`));
      expect(recipe).toBeUndefined();
      expect(problems.map((p) => [p.code, p.at.line, p.at.column])).toContainEqual(["hidden-character", 3, 12]);
    }
  });

  it("a recipe of more than 200,000 letters is not read", () => {
    expect(readRecipe("a.md", corral + " ".repeat(200_000)).problems.map((p) => p.code)).toEqual(["recipe-too-long"]);
  });

  it("more than 200 sizes are too many: the two hundred and first is told", () => {
    const sizes = Array.from({ length: 200 }, (_, i) => `  a${i}: 1\n`).join("");
    const { problems } = readRecipe("a.md", corral.replace("  clear: 3 ", `${sizes}  clear: 3 `));
    const first = corral.split("\n").indexOf("sizes:") + 2;
    expect(problems.map((p) => [p.code, p.at.line])).toEqual([["too-many-lines", first + 200]]);
  });

  const deep: readonly (readonly [string, string])[] = [
    ["brackets in a value", `---\ntitle: ${"[".repeat(50_000)}\n---\n`],
    ["braces in a value", `---\ntitle: ${"{a: ".repeat(40_000)}\n---\n`],
    ["lists in lists", `---\ntitle:\n${"- ".repeat(60_000)}a\n---\n`],
    [
      "round brackets in a sum",
      corral.replace("clear: 3 ", () => `clear: ${"(".repeat(50_000)}3${")".repeat(50_000)} `),
    ],
    ["quotations in quotations", `${corral}\n${">".repeat(50_000)} a\n`],
    ["stars in a step", `${corral}\n6. ${"*".repeat(50_000)}a\n`],
    ["brackets in prose", `${corral}\n${"![".repeat(50_000)}a\n`],
    ["digits in prose", `${corral}\n${"1 ".repeat(80_000)}a\n`],
    ["one word of digits", `${corral}\n${"1".repeat(150_000)}in\n`],
    [
      "sizes that follow from each other",
      corral.replace(
        "  clear: 3 ",
        () => `${Array.from({ length: 8000 }, (_, i) => `  a${i}: a${i + 1}\n`).join("")}  clear: 3 `,
      ),
    ],
  ];
  for (const [what, text] of deep)
    it(`fifty thousand ${what} are told, not followed`, () => {
      const begun = performance.now();
      const { recipe, problems } = readRecipe("a.md", text);
      expect(recipe === undefined || problems.length === 0).toBe(true);
      expect(performance.now() - begun).toBeLessThan(5000);
    });

  it("no text at all makes the reader fall", () => {
    const shaped = fc.array(
      fc.constantFrom(
        "---\n",
        "\n",
        "  ",
        "a: ",
        "- ",
        "1. ",
        "## ",
        "{",
        "}",
        "**",
        "3 ",
        "x ",
        "to ",
        "of ",
        ", ",
        "'",
        '"',
        "|",
        "&a ",
        "*a ",
        "!t ",
        "#",
        "<b>",
        "\t",
        "\r",
        "Check: ",
      ),
      { maxLength: 60 },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary" }),
          shaped.map((parts) => `---\n${parts.join("")}`),
        ),
        (text) => {
          expect(readRecipe("a.md", text).problems.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 2000, seed: 20261103 },
    );
  });
});

describe("figures typed in", () => {
  const found = (text: string) => findBareFigures(text).map((each) => each.text);

  it("numbers with a unit are found", () => {
    expect(found('18 in, 18" or 18-inch, 450mm and 45 cm, 6 lb, 30°.')).toEqual([
      "18 in",
      '18"',
      "18-inch",
      "450mm",
      "45 cm",
      "6 lb",
      "30°",
    ]);
    expect(found("17 9/16 in wide")).toEqual(["9/16 in"]);
  });

  it("counts, sizes of screws and places are not", () => {
    expect(found("Screw 2 in the middle, 1 in 3, No. 6 x 1, 6 pots, 2 to 5, in 2026, step 4.")).toEqual([]);
  });
});

it("of the front-matter the store may show these fields and no other", () => {
  expect(storeFields.map(({ key, names }) => (names ? `names of ${key}` : key))).toEqual([
    "title",
    "class",
    "line",
    "listed",
    "availability",
    "photos",
    "purpose",
    "overall",
    "names of finish",
    "names of choices",
    "names of loads",
    "for",
    "sold as",
    "price",
  ]);
});

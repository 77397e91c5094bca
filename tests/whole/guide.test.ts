// The authoring guide: every whole recipe in it builds, its figures are those worked by hand, its problems are those told.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { printProblem } from "../../src/problems/print.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { changeForms, choiceForm, sayingForm } from "../../src/recipe/choices-list.ts";
import { onlyForm } from "../../src/recipe/choices-only.ts";
import { claimForm } from "../../src/recipe/claims.ts";
import { clauseForms } from "../../src/recipe/clause-forms.ts";
import { comparableForm } from "../../src/recipe/comparables.ts";
import { cordForms } from "../../src/recipe/cord.ts";
import { ropeHoleForm } from "../../src/recipe/cord-hole.ts";
import { cutForms } from "../../src/recipe/cut-forms.ts";
import { spotForms, stopForm } from "../../src/recipe/cut-spots.ts";
import { cutsForm } from "../../src/recipe/cuts.ts";
import { assemblySizeForm, overallForm, panelSizeForm } from "../../src/recipe/extents.ts";
import { coatForm } from "../../src/recipe/finish.ts";
import { fixedForm } from "../../src/recipe/fixed.ts";
import { frontMatterSchema } from "../../src/recipe/front-matter.ts";
import { joinForm, joinWayForms } from "../../src/recipe/joins.ts";
import { textForms } from "../../src/recipe/lettering.ts";
import { loadForm, soldAsForm } from "../../src/recipe/loads.ts";
import { makesForm } from "../../src/recipe/makes.ts";
import { strokeForms } from "../../src/recipe/outline-strokes.ts";
import { ownPieceForm } from "../../src/recipe/own-piece.ts";
import { pieceForms } from "../../src/recipe/pieces.ts";
import { priceForm } from "../../src/recipe/price.ts";
import { figureForm } from "../../src/recipe/prose.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { hazardClasses } from "../../src/recipe/recipe.ts";
import { recordForm } from "../../src/recipe/record.ts";
import type { Form } from "../../src/recipe/scan.ts";
import { seasonForm } from "../../src/recipe/season.ts";
import { sizeForm } from "../../src/recipe/sizes.ts";
import { boldForm } from "../../src/recipe/step.ts";
import { inches } from "../../src/units/length.ts";
import { parseLength } from "../../src/units/parse-length.ts";
import { demoYard } from "../cases/demo-yard.ts";

const folder = join(import.meta.dirname, "../../content/guide");
const files = readdirSync(folder).filter((name) => name.endsWith(".md"));
const pages = files.map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));
const yard = demoYard();

type Row = { readonly figure: string; readonly sum: string; readonly comesTo: string };
type Example = { readonly title: string; readonly recipe: string; readonly rows: readonly Row[] };

/** Fenced blocks of one mark, each with the text that follows it up to the next block or heading. */
function blocksIn(markdown: string, mark: string): { readonly block: string; readonly after: string }[] {
  return [...markdown.matchAll(new RegExp(`^\`\`\`${mark}\\n([\\s\\S]*?)^\`\`\`$`, "gm"))].map((match) => {
    const rest = markdown.slice(match.index + match[0].length);
    return { block: match[1] ?? "", after: rest.split(/^(?:```recipe|## )/m)[0] ?? "" };
  });
}

const examplesIn = (markdown: string): Example[] =>
  blocksIn(markdown, "recipe").map(({ block, after }) => ({
    title: /^title: (.*)$/m.exec(block)?.[1] ?? "",
    recipe: block,
    rows: [...after.matchAll(/^\| `([^`]+)` \| `([^`]+)` \| ([^|]+) \|$/gm)].map(
      ([, figure = "", sum = "", comesTo = ""]) => ({ figure, sum, comesTo: comesTo.trim() }),
    ),
  }));

function told(file: string, recipe: string, variant?: string): { item?: Item; problems: readonly Problem[] } {
  const read = readRecipe(file, recipe);
  return read.recipe ? workOut(read.recipe, yard, variant) : read;
}

/** The recipe with every figure and sum of the table asked for in a paragraph of its own, in the order of the rows. */
const asking = (recipe: string, rows: readonly Row[]): string =>
  recipe.replace(/^---\n([\s\S]*?)^---\n/m, (front) =>
    [front, ...rows.flatMap(({ figure, sum }) => [`{${figure}}\n\n`, `{${sum}}\n\n`])].join(""),
  );

/** Inches, or a plain number, of each figure asked for. */
const answers = (item: Item | undefined, count: number): number[] =>
  (item?.intro ?? []).slice(0, count).flatMap(({ figures }) =>
    figures.map((figure) => {
      if (figure.kind === "length") return inches(figure.value);
      if (figure.kind === "number") return figure.value;
      throw new Error(`a ${figure.kind} can't be worked by hand here`);
    }),
  );

function statedAs(text: string): number {
  const length = parseLength(text);
  if (!length.ok) throw new Error(`"${text}" in the guide is no figure`);
  return inches(length.value);
}

/** Decimals a stated figure holds for: as many as are written, or to the last bit where it is a fraction. */
const digitsOf = (text: string): number => /\.(\d+)/.exec(text)?.[1]?.length ?? 9;

describe.each(pages)("guide page $name", ({ name, text }) => {
  const examples = examplesIn(text);

  it("starts with its title", () => {
    expect(text).toMatch(/^# \S.*\n/);
  });

  it(name === "index.md" ? "leaves the worked examples to the others" : "has a whole worked example", () => {
    expect(examples.length > 0).toBe(name !== "index.md");
  });

  for (const { title, recipe, rows } of examples) {
    it(`${title} builds in every finish without a problem`, () => {
      const { item, problems } = told(name, recipe);
      expect(problems.map(printProblem)).toEqual([]);
      for (const { slug } of item?.variants ?? []) expect(told(name, recipe, slug).problems).toEqual([]);
    });

    it(`${title}: ${rows.map((row) => `${row.figure} = ${row.sum} = ${row.comesTo}`).join("; ")}`, () => {
      expect(rows.length).toBeGreaterThan(0);
      const { item, problems } = told(name, asking(recipe, rows));
      expect(problems.map(printProblem)).toEqual([]);
      const worked = answers(item, rows.length * 2);
      expect(worked).toHaveLength(rows.length * 2);
      for (const [i, { comesTo }] of rows.entries()) {
        expect(worked[2 * i]).toBeCloseTo(statedAs(comesTo), digitsOf(comesTo));
        expect(worked[2 * i + 1]).toBeCloseTo(statedAs(comesTo), digitsOf(comesTo));
      }
    });
  }

  for (const { block, after } of blocksIn(text, "broken")) {
    const [say] = blocksIn(after, "told");
    it(`tells what the page says it tells: ${say?.block.split("\n")[0]}`, () => {
      const { problems } = told("recipe.md", block);
      expect(problems.map(printProblem).join("\n\n")).toBe(say?.block.trimEnd());
    });
  }
});

describe("the guide as a whole", () => {
  const text = (name: string) => pages.find((page) => page.name === name)?.text ?? "";

  const forms: readonly Form[] = [
    ...[
      overallForm,
      panelSizeForm,
      assemblySizeForm,
      sizeForm,
      ...pieceForms,
      ownPieceForm,
      ...strokeForms,
      ...clauseForms,
    ],
    ...[
      joinForm,
      ...joinWayForms,
      ...cutForms,
      cutsForm,
      ...spotForms,
      stopForm,
      coatForm,
      claimForm,
      fixedForm,
      makesForm,
      boldForm,
      figureForm,
    ],
    ...[ropeHoleForm, ...cordForms, ...textForms],
    ...[choiceForm, ...changeForms, sayingForm, onlyForm, loadForm, soldAsForm],
    ...[priceForm, recordForm, comparableForm, seasonForm],
  ];
  const inTable = (words: string) => `\`${words.replaceAll("|", "\\|")}\``;

  it("names every element of the language with its sentence", () => {
    const page = text("16-every-element.md");
    const rows = forms.map(({ form, means, example }) => `| ${inTable(form)} | ${means} | ${inTable(example)} |`);
    expect(rows.filter((row) => !page.includes(row))).toEqual([]);
  });

  it("names no clause that isn't in the language", () => {
    const sections = text("16-every-element.md").split("\n## ");
    const clauses = sections.filter((section) => section.startsWith("Clauses")).join("\n");
    const written = [...clauses.matchAll(/^\| `([^`]+)` \|/gm)].map(([, form = ""]) => form.replaceAll("\\|", "|"));
    const known = clauseForms.map(({ form }) => form);
    expect(written.filter((form) => !known.includes(form))).toEqual([]);
  });

  it("names every key that a recipe may hold and every hazard class", () => {
    const page = text("index.md");
    for (const key of Object.keys(frontMatterSchema.shape)) expect(page).toContain(`\`${key}`);
    for (const letter of Object.keys(hazardClasses)) expect(page).toMatch(new RegExp(`\\b${letter} [a-z]`));
  });

  it("leads from its index to every page, in the order of their names", () => {
    const links = [...text("index.md").matchAll(/\]\(([^)]+)\)/g)].map(([, to]) => to);
    const others = files.filter((name) => name !== "index.md").sort();
    expect(links).toEqual(others.map((name) => name.replace(/md$/, "html")));
  });
});

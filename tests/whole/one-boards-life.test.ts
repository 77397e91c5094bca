// One board's life: the recipe in DEVELOPERS.md goes through every stage, and each row of its table must say what comes out.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { drawBoard } from "../../src/drawing/board-layout.ts";
import { binderSheet } from "../../src/drawing/sheet.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { planBoards } from "../../src/findings/board-plan.ts";
import { sawCutsOf } from "../../src/findings/saw-cuts.ts";
import { placeMembers } from "../../src/item/places/place-members.ts";
import { workJson } from "../../src/item/work-json.ts";
import { workOut } from "../../src/item/work-out.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { piecesTable } from "../../src/leaves/pieces-table.ts";
import { printProblem } from "../../src/problems/print.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { exact, inches, type Length } from "../../src/units/length.ts";
import { demoYard } from "../cases/demo-yard.ts";

const text = readFileSync(join(import.meta.dirname, "../../DEVELOPERS.md"), "utf8");
const life = text.split("## 3. One board's life")[1]?.split(/^## \d/m)[0] ?? "";
const written = /^```recipe\n([\s\S]*?)^```$/m.exec(life)?.[1] ?? "";
const yard = demoYard();
const { recipe, problems: reading } = readRecipe("row-marker.md", written);
if (!recipe) throw new Error(`the recipe in DEVELOPERS.md can't be read: ${reading.map(printProblem).join("; ")}`);
const { placing } = placeMembers(recipe, yard);
const { item, problems } = workOut(recipe, yard);
const placed = placing?.members.find(({ id }) => id === "stake");
const stake = item?.members.find(({ id }) => id === "stake");
if (!item || !placed || !stake) throw new Error(`there is no stake: ${problems.map(printProblem).join("; ")}`);

const kerf = exact(1, 8);
const edition = binderEdition({ unit: "in", per: 16 });
const said = (length: Length): string => edition.bare(length).replaceAll("\u2044", "/").replaceAll("\u00a0", " ");
const number = (value: number): string => String(Number(value.toFixed(6)));
const rowOf = (stage: string): string =>
  life
    .split("\n")
    .find((line) => line.startsWith(`| ${stage} |`))
    ?.split("|")[3]
    ?.trim() ?? "";

describe("one board's life, as DEVELOPERS.md tells it", () => {
  it("has no problem", () => {
    expect(problems.map(printProblem)).toEqual([]);
  });

  it("is a line of text that the recipe reader makes a line of clauses", () => {
    const line = recipe.stand.find(({ name }) => name.text === "stake");
    expect(rowOf("text")).toBe(`\`stake: ${line?.text}\``);
    const kinds = line?.clauses.map(({ kind }) => `\`${kind}\``).join(", ");
    expect(rowOf("recipe")).toBe(
      `line ${line?.at.line}, column ${line?.at.column}: ${line?.count} of \`${line?.what.text}\`, clauses ${kinds}`,
    );
  });

  it("stands from (12 - 2 1/2) / 2 = 4 3/4 to 7 1/4, behind 5/8, from the floor to 17", () => {
    const { min, max } = placed;
    expect([min.x, max.x, min.y, max.y, min.z, max.z].map(inches)).toEqual([4.75, 7.25, 0.625, 1.25, 0, 17]);
    const spans = (["x", "y", "z"] as const).map((axis) => `${axis} ${said(min[axis])} to ${said(max[axis])}`);
    expect(rowOf("place")).toBe(`${spans.join(", ")}; length along ${placed.lie.length}`);
  });

  it("is a solid of 17 x 2 1/2 x 5/8 = 26.5625 cubic inches", () => {
    expect(stake.solid.volume).toBeCloseTo(26.5625, 9);
    expect(rowOf("solid")).toBe(`${stake.solid.faces.length} faces, ${number(stake.solid.volume)} in3`);
  });

  it("touches the sign over (17 - 15 1/2) x 2 1/2 = 3.75 square inches", () => {
    const [contact, ...more] = item.contacts;
    expect(more).toEqual([]);
    expect(contact?.area).toBeCloseTo(3.75, 9);
    expect(rowOf("contact")).toBe(`${number(contact?.area ?? 0)} in2 with \`sign\``);
  });

  it("is held by two screws of 1 in: 5/8 through the stake, so 3/8 into the sign", () => {
    const driven = item.joins.flatMap((join) => join.driven);
    expect(driven.map(({ through, into }) => [through, into])).toEqual([
      [0.625, 0.375],
      [0.625, 0.375],
    ]);
    const heads = driven.map(({ head }) => `(${head.map(number).join(", ")})`).join(" and ");
    expect(rowOf("join")).toBe(`${driven.length} screws, heads at ${heads}, 5/8 through and 3/8 into \`sign\``);
  });

  it("is piece A, the longer of the two", () => {
    const piece = item.pieces.find(({ mark }) => mark === stake.mark);
    expect(piece && rowOf("piece")).toBe(
      piece &&
        `${piece.mark}: ${piece.count} of ${said(piece.length)} x ${said(piece.width)} x ${said(piece.thickness)}`,
    );
  });

  it("comes out of one 72 in board: 70 1/2 - 17 - 12 - 2 x 1/8 = 41 1/4 is left behind the sign", () => {
    const [board, ...more] = planBoards(item.pieces, kerf);
    const [strip, ...others] = board?.strips ?? [];
    expect([more, others]).toEqual([[], []]);
    expect(strip && inches(strip.left)).toBe(41.25);
    const cut = strip?.pieces.map((piece) => `${piece.mark} ${said(piece.length)}`).join(", ");
    expect(board && strip && rowOf("finding")).toBe(
      board &&
        strip &&
        `one ${board.board.name} of ${said(board.stock.length)}: strip ${said(strip.size)}, ${cut}; ${said(strip.left)} left`,
    );
  });

  it("is drawn on that board with its mark and its length", () => {
    const [board] = planBoards(item.pieces, kerf);
    if (!board) throw new Error("no board is planned");
    const drawing = drawBoard(item.slug, board, sawCutsOf(board, kerf), said, binderSheet);
    const words = drawing.marks.flatMap((mark) => (mark.kind === "text" && mark.strong ? [mark.text] : []));
    expect(formatSvg(drawing)).toContain("A  17");
    expect(rowOf("drawing")).toBe(
      `\`${drawing.id}\` says ${words.map((word) => word.replace(/ +/g, " ")).join(" and ")}`,
    );
  });

  it("is a row of the build sheet", () => {
    const row = piecesTable(item, said).rows.find(([mark]) => mark === stake.mark);
    expect(rowOf("leaf")).toBe(row?.join(" · "));
  });

  it("is a member in the JSON of `work`", () => {
    const member = workJson(item).members.find(({ id }) => id === "stake");
    expect(rowOf("JSON")).toBe(`\`${JSON.stringify(member)}\``);
  });
});

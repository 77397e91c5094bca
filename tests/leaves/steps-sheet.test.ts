import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { stepsSheet } from "../../src/leaves/steps-sheet.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { plainNumber } from "./model-numbers.ts";

const edition = binderEdition({ unit: "in", per: 16 });

function worked(file: string, text: string): Item {
  const { recipe } = readRecipe(file, text);
  const item = recipe && workOut(recipe, demoYard()).item;
  if (!item) throw new Error(`${file} can't be worked out`);
  return item;
}

const demoItem = (slug: string): Item =>
  worked(slug, readFileSync(join(import.meta.dirname, `../../content/recipes/${slug}.md`), "utf8"));

it("a panel made on the bench is stood as a panel: each end and each face of the corral once, its pieces not again", () => {
  const corral = demoItem("hose-and-pot-corral");
  const sections = stepsSheet(corral, edition);
  const standing = sections.filter((_, i) => corral.sections[i]?.makes === undefined);
  const listed = standing.flatMap(({ steps }) => steps.flatMap(({ pieces }) => pieces));
  const count = (what: string) =>
    listed.filter((line) => line.endsWith(` × ${what}`)).reduce((sum, line) => sum + Number(line.split(" ")[0]), 0);
  expect([count("face"), count("end")]).toEqual([2, 2]);
  // What stands outside the panels is listed by its mark, as often as there is of it; nothing else is.
  const loose = corral.members.filter(({ panel }) => panel === undefined);
  expect(listed.reduce((sum, line) => sum + Number(line.split(" ")[0]), 0)).toBe(4 + loose.length);
});

it("on the bench the panel's own pieces are listed: 2 legs and 6 rails of a face", () => {
  const corral = demoItem("hose-and-pot-corral");
  const face = stepsSheet(corral, edition).find((_, i) => corral.sections[i]?.makes?.kind === "face");
  const pieces = face?.steps.flatMap(({ pieces }) => pieces) ?? [];
  expect(pieces.reduce((sum, line) => sum + Number(line.split(" ")[0]), 0)).toBe(2 + 6);
});

it("an assembly takes its panels as panels and is stood as a whole: 2 flanks and a ledge to a horse, then 2 horses", () => {
  const guide = readFileSync(join(import.meta.dirname, "../../content/guide/17-assemblies.md"), "utf8");
  const counter = worked("counter.md", guide.split("```recipe\n")[1]?.split("\n```")[0] ?? "");
  const sections = stepsSheet(counter, edition).map(({ steps }) => steps.flatMap(({ pieces }) => pieces));
  const ledge = counter.pieces.find(({ members }) => members.includes("left-horse/ledge"))?.mark;
  expect(sections[1]).toEqual(["2 × flank", `1 × ${ledge}`]);
  expect(sections[2]?.[0]).toBe("2 × horse");
  expect(sections[2]).toHaveLength(2);
});

it("a step says where its screws go: 3 in each leg of the corral from its top, 26 - 1 3/8 = 24 5/8 up, 5/16 from its edge", () => {
  const places = stepsSheet(demoItem("hose-and-pot-corral"), edition).flatMap(({ steps }) =>
    steps.flatMap(({ places }) => places.map(plainNumber)),
  );
  const legs = places.filter((line) => line.startsWith("B to C"));
  expect(legs).toHaveLength(3);
  expect(legs[0]).toBe(
    "B to C, 3 × screw No. 6 x 1 5/8: 1 3/8 in, 11 1/2 in and 21 5/8 in from the top of B, 5/16 in from its outer edge; drill 9/64 in through B, 5/64 in in C.",
  );
  // 9 slats of 1 11/16, a screw at each end.
  expect(places.at(-1)).toMatch(/^D to A, 18 places, 1 × screw No. 6 x 1 5\/8 in each: 5\/16 in from the end of D/);
});

it("a caution stands in full in the first step of its section, then by that step with how to keep clear: 2, then 3 and 4", () => {
  const [faces, ends] = stepsSheet(demoItem("hose-and-pot-corral"), edition);
  const jig = faces?.steps.map(({ cautions }) => cautions[0]);
  expect(jig?.[0]).toBeUndefined();
  expect(jig?.[1]?.hazard).toMatch(/^The stepped bit/);
  for (const again of jig?.slice(2) ?? []) {
    expect([again?.hazard, again?.consequence]).toEqual(["As in step 2:", ""]);
    expect(again?.avoidance).toBe(jig?.[1]?.avoidance);
  }
  expect(jig).toHaveLength(4);
  // A section may be worked by somebody else: it starts again in full.
  expect(ends?.steps.flatMap(({ cautions }) => cautions)[0]?.hazard).toMatch(/^The stepped bit/);
});

const placesOf = (slug: string): string[] =>
  stepsSheet(demoItem(slug), edition).flatMap(({ steps }) => steps.flatMap((step) => step.places.map(plainNumber)));

it("screws are told by the edge they are nearer to: the cold frame's 5 1/2 board 1 1/16 from the bottom, 2 1/16 from the top", () => {
  expect(placesOf("raked-cold-frame").find((line) => line.startsWith("B to G"))).toContain(
    "1 1/4 in from the end of B, 1 1/16 in from its bottom edge and 2 1/16 in from its top edge",
  );
});

it("the trestle's bearer has its three screws as pairs, 4 x 0.19 = 3/4 along the slanted leg from its ends, and the planks theirs alike", () => {
  const places = placesOf("trestle-pair-with-plank-top");
  // The leg leans 14 degrees: 1 in higher is 1 x tan 14 = 1/4 further in.
  expect(places.find((line) => line.startsWith("B to A"))).toContain(
    "9 1/2 in from the end of B at 3/4 in from its bottom edge, 9 3/4 in in the middle of its width and 10 in at 3/4 in from its top edge",
  );
  const planks = places.filter((line) => /^[DE] to B/.test(line));
  expect(planks).toHaveLength(3);
  for (const line of planks)
    expect(line).toContain(`12 1/4 in from the end of ${line.charAt(0)}, 1 3/8 in from each edge`);
});

it("the corral's legs have their screws by the outer edge, both alike; a slat's one screw stands in the middle of its width", () => {
  const places = stepsSheet(demoItem("hose-and-pot-corral"), edition).flatMap(({ steps }) =>
    steps.flatMap((step) => step.places.map(plainNumber)),
  );
  const legs = places.filter((line) => line.startsWith("B to C"));
  expect(legs).toHaveLength(3);
  for (const line of legs) expect(line).toContain("5/16 in from its outer edge");
  expect(places.find((line) => line.startsWith("D to A"))).toContain("from the end of D, in the middle of its width");
  expect(places.filter((line) => line.startsWith("A to B")).at(-1)).toContain("in pockets 7/16 in from each edge");
});

import { expect, it } from "vitest";
import { coatFirst } from "../../src/findings/coat-first.ts";
import { exact } from "../../src/units/length.ts";
import { demoItem } from "../drawing/demo.ts";

const marks = (slug: string, variant?: string) => coatFirst(demoItem(slug, variant)).map(({ piece }) => piece.mark);

it("of the two-colour corral all pieces are coated loose: white and slate rails meet stained legs, posts and slats", () => {
  const corral = demoItem("hose-and-pot-corral", "two-colour");
  const found = coatFirst(corral);
  expect(found.map(({ piece }) => piece.mark)).toEqual(corral.pieces.map(({ mark }) => mark));
  // A face's rail runs between two legs: its ends meet them. The slats lie under the lowest rails' edges.
  const rails = found.find(({ piece }) => piece.name === "face rails");
  const [legs, slats] = ["face legs", "slats"].map((name) => corral.pieces.find((piece) => piece.name === name)?.mark);
  expect(rails?.mask).toEqual([
    { face: "edges", marks: [slats] },
    { face: "ends", marks: [legs] },
  ]);
});

it("under one stain nothing has to be coated loose: 1 1/8 and 2 9/16 let a brush in", () => {
  expect(marks("hose-and-pot-corral", "stained")).toEqual([]);
  expect(marks("hose-and-pot-corral", "plain")).toEqual([]);
});

it("deck boards 3/8 apart are coated loose, as no brush gets in between; 11/12 apart, or bare, they are not", () => {
  const oiled = demoItem("seedling-hardening-rack", "oil");
  const narrow = {
    ...oiled,
    gaps: oiled.gaps.map((one) => (one.group === "boards" ? { ...one, gap: exact(3, 8) } : one)),
  };
  expect(coatFirst(narrow).map(({ piece, why }) => [piece.name, why])).toEqual([["boards", ["narrow gap"]]]);
  expect(coatFirst(oiled)).toEqual([]);
  expect(marks("seedling-hardening-rack", "plain")).toEqual([]);
});

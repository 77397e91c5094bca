// Strength of rope, the pull in a V of cord, holes for rope and weights of signs against published figures.
import { describe, expect, test } from "vitest";
import { ropeHoleWood } from "../../src/item/cord/rope-holes.ts";
import { knotLoss, legTension, workingLoad } from "../../src/item/cord/rope-load.ts";
import { ropeHolePlay } from "../../src/recipe/cord-hole.ts";
import { exact } from "../../src/units/length.ts";
import { woodDensity } from "../../src/yard/density.ts";
import { findRopeStrength, ropeStrengths } from "../../src/yard/rope-strength.ts";
import { type Answer, given, type Published, published, testPublished } from "./published.ts";

function answer(row: Published): Answer {
  if (row.id === "rope.knot") return knotLoss;
  if (row.id === "rope.hole.edge") return ropeHoleWood;
  if (row.id === "rope.hole.ex") return exact(given(row, "rope")).add(ropeHolePlay).valueOf();
  if (row.id.startsWith("rope.wll")) return workingLoad(given(row, "mbs"), given(row, "loss"), given(row, "df"));
  if (row.id.startsWith("rope.sling")) return legTension(given(row, "W"), given(row, "angle"));
  if (row.id.startsWith("hang.sign"))
    return given(row, "l") * given(row, "w") * given(row, "t") * woodDensity(given(row, "G12"), given(row, "MC"));
  const diameter = exact(row.id.replace("rope.mbs.", "").replace("-", "/"));
  return Object.fromEntries(
    Object.keys(ropeStrengths).map((material) => [material, findRopeStrength(material, diameter) ?? Number.NaN]),
  );
}

describe("rope", () => testPublished(published("rope"), answer));

test("at 30 degrees each leg of a V carries the whole weight: 10 / (2 sin 30) = 10 (statics)", () => {
  expect(legTension(10, 30)).toBeCloseTo(10, 12);
});

// Other lengths and other boards for a riser of a shelf of 24 and two legs of 8, by hand.
import { describe, expect, it } from "vitest";
import { otherBoards, otherLengths } from "../../src/findings/other-boards.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { readYard } from "../../src/yard/read-yard.ts";
import { riserRecipe, riserYard } from "./riser.ts";
import { kerf } from "./timber.ts";

const more = `  thick plank:
    species: eastern white pine
    size: 7/8 x 7 1/4
    moisture: 12
    words: pine
    lengths:
      48: 7.00
  wide plank:
    species: western redcedar
    size: 3/4 x 7 1/4
    moisture: 12
    words: cedar
    lengths:
      48: 6.00
  narrow plank:
    species: western redcedar
    size: 3/4 x 3 1/2
    moisture: 12
    words: cedar
    lengths:
      96: 1.00
  beam:
    species: western redcedar
    size: 1 1/2 x 7 1/4
    moisture: 12
    words: cedar
    lengths:
      96: 1.00
fasteners:`;

function worked(lengths: string) {
  const { yard, problems } = readYard([
    { file: "yard.yaml", text: `vehicle: 8 ft\n${riserYard(lengths).replace("fasteners:", more)}` },
  ]);
  const { recipe } = readRecipe("riser.md", riserRecipe);
  const item = yard && recipe ? workOut(recipe, yard).item : undefined;
  if (!yard || !recipe || !item) throw new Error(problems.map(({ says }) => says).join("\n"));
  return { yard, recipe, item };
}

describe("other lengths", () => {
  it("24 + 8 + 8 + 2 x 1/8 = 40 1/4: one of 48 or one of 96; of 25 one for the shelf and one for both legs; 120 is too long for the vehicle", () => {
    const { item } = worked("25: 3.00\n      48: 5.00\n      96: 9.60\n      120: 9.00");
    expect(
      otherLengths(item, kerf).map(({ stock, fits, spent }) => [
        stock.length.valueOf(),
        fits,
        spent.boards,
        spent.cost.valueOf(),
      ]),
    ).toEqual([
      [25, true, 2, 6],
      [48, true, 1, 5],
      [96, true, 1, 9.6],
      [120, false, 1, 9],
    ]);
  });

  it("a length too short for the shelf is left out, and where there is one length only there is no other", () => {
    expect(
      otherLengths(worked("23: 3.00\n      48: 5.00").item, kerf).map(({ stock }) => stock.length.valueOf()),
    ).toEqual([48]);
    expect(otherLengths(worked("48: 5.00").item, kerf)).toEqual([]);
  });
});

describe("other boards", () => {
  const { recipe, item, yard } = worked("48: 5.00");
  const others = otherBoards(recipe, item, yard, kerf);

  it("as thick and wider: nothing changes but that both pieces are ripped to 5 1/2; narrower ones and a beam don't do", () => {
    expect(others.map(({ to }) => to.name)).toEqual(["wide plank", "thick plank"]);
    const [wide] = others;
    expect([wide?.spent.cost.valueOf(), wide?.ripped, wide?.grows.map((one) => one.valueOf())]).toEqual([
      6,
      ["A", "B"],
      [0, 0, 0],
    ]);
  });

  it("7/8 thick instead of 3/4 on legs of 8: 1/8 higher", () => {
    expect(others[1]?.grows.map((one) => one.valueOf())).toEqual([0, 0, 1 / 8]);
  });
});

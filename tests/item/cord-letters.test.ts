import { describe, expect, test } from "vitest";
import type { TextField } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";

function fieldsOn(stand: string, text: string, cuts = ""): readonly TextField[] {
  const front = `title: Board\noverall: fit x fit x fit\npieces:\n  plank: 1x6\nstand:\n  board: ${stand}\n${cuts}text:\n  words: ${text}\n`;
  const read = readRecipe("board.md", `---\n${front}---\nA board.\n\n## Build it\n\n1. Lay down the **board**.\n`);
  const out = read.recipe ? workOut(read.recipe, demoYard()) : { item: undefined, problems: read.problems };
  if (!out.item || out.problems.length > 0) throw new Error(out.problems.map((p) => p.says).join("\n"));
  return out.item.textFields;
}

const standing = "1 plank, on edge, facing front, running left to right, 20 long, at left, at front, bottom at bottom";

describe("a row of letters", () => {
  test("on the front of a board 20 x 5 1/2 is 20 - 2 x 1 = 18 wide, (5 1/2 - 2) / 2 = 1 3/4 up", () => {
    const [field] = fieldsOn(standing, "board, 2 high, 1 inside, saying Open");
    expect(field).toMatchObject({ side: "front", corner: [1, 0, 1.75], width: 18, height: 2, free: 20, says: "Open" });
  });

  test("on the back starts at the board's right end and runs to the left, as one stands behind it", () => {
    const [field] = fieldsOn(standing, "board, 2 high, 1 inside, on back, saying Closed");
    expect(field).toMatchObject({ side: "back", corner: [19, 0.75, 1.75], across: [-1, 0, 0], up: [0, 0, 1] });
  });

  test("on a board that lies flat is read from the front: up is to the back, (5 1/2 - 1) / 2 = 2 1/4 from the front", () => {
    const flat = "1 plank, flat, running left to right, 20 long, at left, front at front, bottom at bottom";
    const [field] = fieldsOn(flat, "board, 1 high, saying Gate, left, as the track forks");
    expect(field).toMatchObject({ side: "top", across: [1, 0, 0], up: [0, 1, 0], corner: [0, 2.25, 0.75] });
    expect(field?.says).toBe("Gate, left, as the track forks");
  });

  test("on an upright board is as wide as the board: 5 1/2", () => {
    const [field] = fieldsOn(
      "1 plank, upright, facing front, 20 long, at left, at front, bottom at bottom",
      "board, 2 high, by engraving, saying 12",
    );
    expect(field).toMatchObject({ width: 5.5, corner: [0, 0, 9], ways: ["engraving"] });
  });

  test("between holes of 1/2, 3 in from the ends, has 20 - 2 x (3 + 1/4) = 13 1/2", () => {
    const cuts = "cuts:\n  board: hole 1/2, 3 from both ends, centred\n";
    const [field] = fieldsOn(standing, "board, 2 high, between holes, saying Open", cuts);
    expect([field?.width, field?.corner[0]]).toEqual([13.5, 3.25]);
  });
});

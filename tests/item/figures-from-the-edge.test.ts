// Lines in figures count from where the finished thing begins, wherever its own lines put the first board.
import { describe, expect, test } from "vitest";
import { inches } from "../../src/units/length.ts";
import { worked } from "./bench-yard.ts";

describe("a rail 10 long whose left is at 2, and feet whose lefts are at 4 and 10: nothing stands between 0 and 2", () => {
  const item = worked(
    `
overall: fit x fit x 10
pieces:
  stud: 2x4
stand:
  feet: 2 stud, upright, facing front, from bottom to top, at front, left every 6 right from 4
  rail: stud, on edge, running left to right, 10 long, left at 2, on back of feet, top at top
joins:
  rail to feet: glue
`,
    "## Build it\n\n1. Lay the **rail** from {left of rail} to {right of rail} on the **feet**, {left of feet 1} in.",
  );
  const figures = (item.sections[0]?.steps[0]?.text.figures ?? []).map((figure) =>
    figure.kind === "length" ? inches(figure.value) : undefined,
  );

  test("the rail begins the thing, so the first foot stands 4 - 2 in, and the rail ends at 10", () => {
    expect(figures).toEqual([0, 10, 2]);
  });
});

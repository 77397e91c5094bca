// What is told of slanted ends: which pieces have a hand and which may be turned over.
import { expect, it } from "vitest";
import { hardestOf } from "../../src/leaves/sheets/hardest.ts";
import { demoItem } from "../drawing/demo.ts";

it("four legs with parallel ends serve left and right, turned over; the brace, with pockets in one face, isn't named", () => {
  const slanted = hardestOf(demoItem("trestle-pair-with-plank-top")).find(({ says }) =>
    says.startsWith("Slanted ends"),
  );
  expect(slanted?.says).toBe(
    "Slanted ends on A, C: 14°. Cut one of each and lay it on its drawing first. A may be turned over: either face may show, left and right.",
  );
});

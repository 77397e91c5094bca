import { expect, it } from "vitest";
import { whichMembers } from "../../src/leaves/which-members.ts";
import { corral, demoItem } from "../drawing/demo.ts";

it("every other rail of both faces is said by its numbers, once for both", () => {
  const ids = corral.members.filter((m) => m.panelKind === "face" && m.group === "rails" && m.number % 2 === 1);
  expect(ids).toHaveLength(6);
  expect(
    whichMembers(
      corral,
      ids.map(({ id }) => id),
    ),
  ).toBe("rails 1, 3 and 5 of each face");
});

it("the rails of one face alone are said by that face", () => {
  const ids = corral.members.filter((m) => m.panel === "front-face" && m.group === "rails" && m.number < 3);
  expect(
    whichMembers(
      corral,
      ids.map(({ id }) => id),
    ),
  ).toBe("rails 1 and 2 of the front face");
});

it("boards outside of panels are said by their line", () => {
  const trestle = demoItem("trestle-pair-with-plank-top");
  const ids = trestle.members.filter((m) => m.group === "planks" && m.number > 2);
  expect(
    whichMembers(
      trestle,
      ids.map(({ id }) => id),
    ),
  ).toBe("planks 3 and 4");
});

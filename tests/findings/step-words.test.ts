import { expect, it } from "vitest";
import { allStepFaults, stepFaults } from "../../src/findings/step-words.ts";
import type { WorkedStep } from "../../src/item/item.ts";
import { demoItems } from "../drawing/demo.ts";

const at = { file: "a.md", line: 1, column: 1 };
const step = (markdown: string): WorkedStep => ({
  number: 3,
  at,
  text: { markdown, figures: [], at },
  adds: [],
  there: [],
  shown: [],
  cords: [],
  joins: [],
  checks: [],
  cautions: [],
});
const faults = (markdown: string) => stepFaults(step(markdown)).map(({ kind }) => kind);

it.each(demoItems.map((item) => [item.slug, item] as const))(
  "%s: every step starts with a verb, has at most two and under 25 words (IEC/IEEE 82079-1, statements 6 and 7)",
  (_, item) => {
    expect(allStepFaults(item)).toEqual([]);
  },
);

it("a step of 25 words is too long, of 24 is not; a figure counts as one", () => {
  const words = (count: number) => `Lay ⟦0⟧ ${Array.from({ length: count - 2 }, () => "rails").join(" ")}.`;
  expect(faults(words(24))).toEqual([]);
  expect(faults(words(25))).toEqual(["long"]);
});

it("three things to do are too many in one step, two pass; what is said of the work is none of them", () => {
  expect(faults("Lay the rails, set the block and screw them.")).toEqual(["many"]);
  expect(faults("Lay the **rails** good side down, level with the tops; screw them.")).toEqual([]);
});

it("a step that starts with anything but a verb is told with its word", () => {
  expect(stepFaults(step("The rails are laid down."))).toEqual([{ step: 3, kind: "no verb", word: "The" }]);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { type Use, useOf } from "../../src/findings/use.ts";
import { careWords, classNames, madeFor, notMadeFor } from "../../src/leaves/uses.ts";
import { type HazardClass, hazardClasses } from "../../src/recipe/recipe.ts";
import { corral, rack } from "./worked-goods.ts";

const plain: Use = {
  classes: [],
  loads: [],
  carriesPeople: false,
  anchored: false,
  hasGaps: false,
  hasRope: false,
  hasLid: false,
};
const pounds = (weight: number): string => `${weight} lb`;
const sentence = (own: Partial<Use>): string => `Made ${madeFor({ ...plain, ...own }, pounds).join(", ")}.`;

it('any combination of classes reads as one sentence: no class twice, one "and", no word on soil', () => {
  const classes = fc.uniqueArray(fc.constantFrom(...(Object.keys(hazardClasses) as HazardClass[])), { minLength: 1 });
  fc.assert(
    fc.property(classes, fc.boolean(), fc.boolean(), (classes, anchored, hasRope) => {
      const text = sentence({ classes, anchored, hasRope });
      expect(text).toMatch(/^Made (?:to|for) [a-z ,-]+[.]$/);
      expect(text.match(/ and (?:to|for) /g)?.length ?? 0).toBe(classes.length > 1 ? 1 : 0);
      expect(text.split(/, | and (?=to|for)/)).toHaveLength(classes.length);
      expect(text).not.toMatch(/soil/);
      const not = notMadeFor({ ...plain, classes, anchored, hasRope });
      expect(new Set(not).size).toBe(not.length);
    }),
  );
});

it("the rack holds things and is fastened to a wall; a table of class L T S is not", () => {
  expect(sentence(useOf(rack[0]))).toBe(
    "Made to hold things where it stands, to stand fastened to a wall and to be out in the rain.",
  );
  expect(sentence({ classes: ["L", "T", "S"] })).toBe(
    "Made to carry weight, to stand on firm level ground and to hold things where it stands.",
  );
});

it("2 baskets of 15 lb are said as 2 × 15 lb", () => {
  const loads = [{ name: "basket", pounds: 15, count: 2 }];
  expect(sentence({ classes: ["H", "L"], loads })).toBe("Made to hang on a wall and to carry 2 × 15 lb.");
});

it("a pair that is meant for a basket of 15 lb each carries 2 of them", () => {
  const basket = { name: "basket", pounds: 15, total: 15, places: [{ at: [0, 0, 0] as const, on: [] }] };
  const pair = { ...corral[0], loads: [basket], soldAs: { count: 2, words: "pair", weight: 7 } };
  expect(useOf(pair).loads).toEqual([{ name: "basket", pounds: 15, count: 2 }]);
});

it("load-bearing is sat or stood on only where a load is a person", () => {
  expect(classNames({ ...plain, classes: ["L"] })).toBe("load-bearing");
  expect(classNames({ ...plain, classes: ["L"], carriesPeople: true })).toBe("load-bearing, sat or stood on");
});

it("deck boards less than 1 in apart close their gaps as they swell; gaps of over 1 in, as the corral's, stay open", () => {
  expect(useOf(rack[0]).hasGaps).toBe(true);
  expect(useOf(corral[0]).hasGaps).toBe(false);
});

it("what hangs is not kept off wet ground; rope and clear panel have words of their own", () => {
  expect(careWords({ ...plain, classes: ["H"] }).join(" ")).not.toMatch(/ground/);
  expect(careWords({ ...plain, classes: ["D"], hasRope: true })[1]).toMatch(/rope/);
  expect(careWords({ ...plain, classes: ["G"] })[1]).toMatch(/soft cloth/);
});

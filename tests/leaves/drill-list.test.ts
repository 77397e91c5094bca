import { describe, expect, it } from "vitest";
import { drillList } from "../../src/leaves/drill-list.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { demoItem, sixteenths } from "../drawing/demo.ts";

const rowsOf = (slug: string) => drillList(demoItem(slug), binderEdition(sixteenths))?.rows;

describe("what is drilled before anything is put together", () => {
  it("the corral: 12 + 12 rails with 2 pockets at each end, where the good faces don't show them", () => {
    const where = "2 at each end, in the face behind the good one";
    expect(rowsOf("hose-and-pot-corral")).toEqual([
      ["A", "12", "4 × pocket for No. 6 x 1", where],
      ["E", "12", "4 × pocket for No. 6 x 1", where],
    ]);
  });
  it("the trestles: two braces, and 1 1/2 + 1/8 = 1 5/8 through the plank of the pole", () => {
    expect(rowsOf("trestle-pair-with-plank-top")).toEqual([
      ["C", "2", "4 × pocket for No. 8 x 2\u00a01⁄2", "2 at each end, all in one face"],
      ["E", "1", "1 × 1\u00a05⁄8 in", "as drawn, right through"],
    ]);
  });
  it("the rack has neither holes nor pockets", () => {
    expect(rowsOf("seedling-hardening-rack")).toBeUndefined();
  });
});

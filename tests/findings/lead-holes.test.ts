import { describe, expect, it } from "vitest";
import { leadHolesFor } from "../../src/findings/lead-holes.ts";
import { exact } from "../../src/units/length.ts";
import type { Fastener, Species } from "../../src/yard/yard.ts";
import { board, inch } from "./timber.ts";

const at = { file: "content/yard/fasteners.yaml", line: 1, column: 1 };
const fastener = (kind: Fastener["kind"], diameter: number): Fastener => ({
  name: kind,
  kind,
  diameter,
  length: inch("2"),
  weight: 0.01,
  material: "stainless steel",
  driver: "T20",
  pack: { count: 100, price: exact(9), priced: "2026-01-10" },
  at,
});
const cedar = board("fence board", "5/8", "5 1/2", []).species;
const oak: Species = { ...cedar, name: "white oak", specificGravity: 0.68, fastenerGravity: 0.73 };

/** Shanks 0.060 + 0.013 x gauge: ASME B18.6.1. Roots .113, .131, .152: NDS, appendix L3. */
describe("lead holes", () => {
  it.each([
    [6, 0.138, "5/64", "9/64"],
    [8, 0.164, "3/32", "11/64"],
    [10, 0.19, "7/64", "3/16"],
  ])(
    "No. %i in cedar: the shank is %f, 70 % of its root is told as %s, and %s clears the shank",
    (_, shank, into, through) => {
      const holes = leadHolesFor(fastener("screw", shank), cedar);
      expect([holes?.into, holes?.through]).toEqual([inch(into).valueOf(), inch(through).valueOf()]);
    },
  );

  it("No. 8 in white oak of 0.73: 90 % of 0.131 is 0.1179, 7.55 64ths, told as 8 of them: 1/8", () => {
    expect(leadHolesFor(fastener("screw", 0.164), oak)?.into).toBe(0.125);
  });

  it("a nail of 0.131: 75 % in cedar is at most 0.098, 90 % in oak at most 0.118 (NDS 12.1.6)", () => {
    expect(leadHolesFor(fastener("nail", 0.131), cedar)?.into).toBe(6 / 64);
    expect(leadHolesFor(fastener("nail", 0.131), oak)?.into).toBe(7 / 64);
  });

  it("a bolt of 3/8 gets a hole between 1/32 and 1/16 wider; a pocket screw gets none", () => {
    const hole = leadHolesFor(fastener("bolt", 0.375), cedar)?.into ?? 0;
    expect(hole - 0.375).toBeGreaterThanOrEqual(1 / 32);
    expect(hole - 0.375).toBeLessThanOrEqual(1 / 16);
    expect(leadHolesFor(fastener("pocket screw", 0.138), cedar)).toBeUndefined();
  });
});

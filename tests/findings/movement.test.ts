import { describe, expect, it } from "vitest";
import { movementOf } from "../../src/findings/movement.ts";
import { corral } from "../leaves/worked-goods.ts";

describe("movement (Wood Handbook, equation 13-1 and table 13-1)", () => {
  it("a redcedar strip of 1 11/16 between 9 and 14 %: 1.6875 x 0.00234 x 5 = 0.0197 in", () => {
    expect(movementOf(corral[0])?.change).toBeCloseTo(1.6875 * 0.00234 * 5, 12);
  });

  it("without pieces there is nothing to say", () => {
    expect(movementOf({ ...corral[0], pieces: [] })).toBeUndefined();
  });
});

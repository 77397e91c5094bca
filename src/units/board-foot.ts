// Nominal sizes -> board feet, the measure lumber is sold by.
import { type Exact, exact } from "./length.ts";

/**
 * Board feet of `count` boards: nominal thickness by nominal width in inches by length in feet, over 12; a nominal
 * thickness under 1 counts as 1. Source: Wood Handbook (FPL-GTR-282) ch. 6.
 */
export function boardFeet(thickness: Exact, width: Exact, lengthInches: Exact, count = 1): Exact {
  const counted = thickness.compare(1) < 0 ? exact(1) : thickness;
  return counted.mul(width).mul(lengthInches).div(144).mul(count);
}

// How high one sits or works -> whom that suits, with the standard it is taken from.
import { findSizeBand, standingFrom } from "../findings/heights.ts";
import type { Fact } from "./leaf.ts";
import type { StoreItem } from "./store-item.ts";

const feet = (mm: number): string => {
  const inches = Math.round(mm / 25.4);
  return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
};

function whom(kind: "seat" | "top", height: number): string {
  const band = findSizeBand(kind, height);
  if (band)
    return `for people of ${feet(band.stature[0])} to ${feet(band.stature[1])} (${band.stature[0]} to ${band.stature[1]} mm), about ${band.ages} years old`;
  if (kind === "top" && height > standingFrom) return "for those who stand at it; too high to sit at on a chair";
  return "between the usual sizes: try the height at home";
}

/** Empty where nobody sits on it or works at it. */
export const whomFacts = ({ heights: { seat, top } }: StoreItem, length: (inches: number) => string): Fact[] => [
  ...(seat === undefined
    ? []
    : [{ name: "Seat height", value: `${length(seat)}, ${whom("seat", seat)}`, from: "from-whom" }]),
  ...(top === undefined
    ? []
    : [{ name: "Height of its top", value: `${length(top)}, ${whom("top", top)}`, from: "from-whom" }]),
];

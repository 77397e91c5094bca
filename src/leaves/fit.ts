// Packed sizes -> whether it goes through a door and into a car.
import { threeSizes } from "./edition.ts";
import type { Fact } from "./leaf.ts";

type Packed = readonly [number, number, number];

/** What an inside door leaves when it is open, inches: a door of 32 in less its own thickness and the stop. Common practice, no source. */
const door = 30;

/** The boot of a small family car with its seats up, inches, longest first. Common practice, no source. */
const boot: Packed = [38, 26, 18];

const both = (sizes: readonly number[]): string =>
  // Three sizes on one line are too wide for the smallest phone.
  `${threeSizes(sizes, { unit: "in", per: 8 })} (${threeSizes(sizes, { unit: "mm" })})`.replaceAll("\u00a0×", " ×");

/** `packed` is longest first. */
export function fitFacts(packed: Packed): Fact[] {
  const [long, middle, short] = packed;
  const inBoot = packed.every((size, i) => size <= (boot[i] ?? 0));
  return [
    { name: "Packed size", value: both(packed), from: "from-packed" },
    { name: "Smallest opening", value: `${both([middle, short])}, the long way first`, from: "from-packed" },
    {
      name: "Through a door",
      value:
        middle <= door || short <= door
          ? `yes: an inside door leaves about ${both([door])}`
          : `not one that leaves only ${both([door])}`,
      from: "from-fit",
    },
    {
      name: "Into a small car",
      value: inBoot
        ? `yes, into a boot of ${both(boot)}; measure yours`
        : `not into a boot of ${both(boot)}; ${both([long])} of length with the seats down; measure yours`,
      from: "from-fit",
    },
  ];
}

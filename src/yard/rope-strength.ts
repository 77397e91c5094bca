// What a rope is made of and how thick it is -> the load that breaks it when it is new.
import type { Exact } from "../units/length.ts";

/** Printed beside strengths that come from this table. */
export const ropeStrengthSource =
  "a rope maker's table of new-rope tensile strength, three-strand, in the laboratory and without knots (read in a reprint)";

/** Pounds that break a new three-strand rope, by material and by thickness in inches. */
export const ropeStrengths: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  manila: { "3/16": 405, "1/4": 540, "3/8": 1215, "1/2": 2385 },
  polypropylene: { "3/16": 800, "1/4": 1250, "3/8": 2700, "1/2": 4200 },
  nylon: { "3/16": 1000, "1/4": 1650, "3/8": 3700, "1/2": 6400 },
};

/** Undefined where the table has no such rope. */
export function findRopeStrength(material: string, diameter: Exact): number | undefined {
  const words = Object.keys(ropeStrengths);
  const word = words.find((known) => material.toLowerCase().includes(known));
  return word === undefined ? undefined : ropeStrengths[word]?.[diameter.toFraction(true)];
}

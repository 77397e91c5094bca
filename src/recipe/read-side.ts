// The next word of a text as one of the six sides; `floor` is the bottom.
import { nearest } from "../problems/nearest.ts";
import { type Side, sides } from "../units/side.ts";
import type { Scan } from "./scan.ts";
import { isSide } from "./sum.ts";

export function readSide(scan: Scan, among: readonly Side[] = sides): Side {
  const word = scan.peek();
  if (word === "floor" && among.includes("bottom")) {
    scan.take();
    return "bottom";
  }
  if (!isSide(word) || !among.includes(word)) {
    const last = among.at(-1);
    scan.wants(`a side (${among.slice(0, -1).join(", ")} or ${last})`, nearest(word ?? "", among));
  }
  scan.take();
  return word;
}

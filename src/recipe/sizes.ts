// `pole: 1 1/2` -> a size by name.
import type { Written } from "../problems/place.ts";
import type { Tree } from "../problems/yaml-tree.ts";
import { exact } from "../units/length.ts";
import type { Recipe, Sum } from "./recipe.ts";
import { attempt, type Form, type Gathered, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

export const sizeForm: Form = {
  form: "NAME: SUM",
  means: "A size that is chosen, written once and used by its name.",
  example: "pitch: 18",
};

/** The size; it stands as 0 where its sum can't be read, so that its name is known. */
export function readSize(name: Written, value: Tree, into: Gathered): Recipe["sizes"][number] {
  const sum = attempt(into.problems, () => {
    if (value.kind !== "text") return undefined;
    const scan = new Scan(value, sizeForm, into);
    const read = readSum(scan);
    scan.end();
    return read;
  });
  const unread: Sum = { kind: "length", at: value.at, value: exact(0), bare: true };
  return { name, at: name.at, sum: sum ?? unread };
}

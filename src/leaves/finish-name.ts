// A variant -> what its finish is called, where its other choices are said elsewhere.
import type { Variant } from "../item/item.ts";

export const finishName = ({ values }: Variant): string =>
  values.find(({ choice }) => choice === "finish")?.value ?? "unfinished";

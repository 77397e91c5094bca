// A recipe anywhere on disk -> the yard it is cut from: the named content folder's, else that of the nearest folder above it.
import { problem } from "../problems/problem.ts";
import { findContentFolder, readYardFiles, startOf } from "./content-files.ts";
import { readYardAndShop, type YardAndShop } from "./yard-of.ts";

export function yardFor(recipePath: string, contentFolder: string | undefined): YardAndShop {
  const folder = contentFolder ?? findContentFolder(recipePath);
  if (folder === undefined) {
    const nowhere = problem("no-yard-near", startOf(recipePath), {});
    return { yard: undefined, shop: undefined, problems: [nowhere], hash: "" };
  }
  const files = readYardFiles(folder);
  const read = readYardAndShop(files.yard, files.shop);
  return { ...read, problems: [...files.problems, ...read.problems] };
}

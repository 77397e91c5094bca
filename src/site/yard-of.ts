// The texts of a yard and a shop -> both checked, once for the same texts.
import type { Problem } from "../problems/problem.ts";
import { readYamlTree } from "../problems/yaml-tree.ts";
import { checkHiddenCharacters, checkHiddenValues } from "../recipe/hidden-characters.ts";
import { readShop } from "../yard/read-shop.ts";
import { readYard } from "../yard/read-yard.ts";
import type { Shop, Yard } from "../yard/yard.ts";
import type { SourceFile } from "./content-files.ts";
import { hashOf, Remembered } from "./remember.ts";

export type YardAndShop = {
  readonly yard: Yard | undefined;
  readonly shop: Shop | undefined;
  readonly problems: readonly Problem[];
  /** Changes with every change of the texts. */
  readonly hash: string;
};

const known = new Remembered<YardAndShop>();

export const hashOfFiles = (files: readonly SourceFile[]): string =>
  hashOf(...files.flatMap(({ file, text }) => [file, text]));

export function readYardAndShop(yardFiles: readonly SourceFile[], shopFiles: readonly SourceFile[]): YardAndShop {
  const hash = hashOf(hashOfFiles(yardFiles), hashOfFiles(shopFiles));
  return known.answer(hash, () => {
    // Buyers read their words: nothing in them may be hidden or turn the reading direction.
    const hidden = [...yardFiles, ...shopFiles].flatMap(hiddenIn);
    const { yard, problems: yardProblems } = readYard(yardFiles);
    const { shop, problems: shopProblems } = readOneShop(shopFiles);
    return { yard, shop, problems: [...hidden, ...yardProblems, ...shopProblems], hash };
  });
}

function hiddenIn({ file, text }: SourceFile): readonly Problem[] {
  const seen = checkHiddenCharacters(file, text);
  return seen.length > 0 ? seen : checkHiddenValues(readYamlTree(file, text, 1).tree);
}

/** Whether there is just one file was asked when the folder was read. */
function readOneShop(files: readonly SourceFile[]): { readonly shop?: Shop; readonly problems: readonly Problem[] } {
  const [file] = files;
  return file && files.length === 1 ? readShop(file.file, file.text) : { problems: [] };
}

// A plan -> the plain texts that go with it: what is in the pack and how to print it, and the licence.
import type { PackItem } from "./pack-item.ts";
import type { PackShop } from "./pack-shop.ts";
import { revisionWords, safetyWords } from "./terms-sheet.ts";

export type PackedFile = { readonly path: string; readonly says: string };

const ruled = (text: string): string => `${text}\n${"=".repeat(text.length)}\n`;

/** Lines of at most so many letters, since plain texts are read anywhere. */
function wrapped(text: string, most = 78): string {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.join("\n");
}

export function readmeText(item: PackItem, shop: PackShop, files: readonly PackedFile[]): string {
  const own = revisionWords(item);
  const longest = Math.max(...files.map(({ path }) => path.length));
  return [
    ruled(`${item.title}: a plan of ${shop.name}`),
    ...(own === "" ? [] : [`${own}.`, ""]),
    ...(item.purpose === undefined ? [] : [wrapped(item.purpose), ""]),
    "What is in this pack:",
    "",
    ...files.map(({ path, says }) => `  ${path.padEnd(longest)}  ${says}`),
    "",
    wrapped(
      "Print the PDF of your paper. All of it builds without the pages at full size; where you use those, print them at 100 %, never fitted to the page, and measure the two bars on each page before you use it.",
    ),
    "",
    wrapped(
      "SHA256SUMS proves that no file was harmed on its way: run sha256sum -c SHA256SUMS where you find that command.",
    ),
    "",
    wrapped(safetyWords),
    "",
    `Latest revision: ${shop.plans.latest}`,
    `Questions: ${shop.plans.ask}`,
    ...(shop.notice === undefined ? [] : ["", wrapped(shop.notice)]),
    "",
  ].join("\n");
}

export const licenceText = (item: PackItem, shop: PackShop): string =>
  [
    ruled(`Licence of the plan "${item.title}"`),
    wrapped(shop.plans.licence),
    "",
    `${shop.name}, ${shop.place}. ${shop.plans.ask}`,
    "",
    wrapped(
      "The PDFs carry letters of Source Sans 3, which is under the SIL Open Font License 1.1 (https://openfontlicense.org).",
    ),
    "",
  ].join("\n");

// A print job -> the letters in it that the font of all paper has no shape for, each once.
import { readFileSync } from "node:fs";
import * as fontkit from "fontkit";
import type { PrintJob } from "../../paper/print-job.ts";

export class Letters {
  readonly #known: ReadonlySet<number>;

  constructor(fontFile: string) {
    const font = fontkit.create(readFileSync(fontFile));
    if (!("characterSet" in font)) throw new Error("the font file holds several fonts");
    this.#known = new Set(font.characterSet);
  }

  has(letter: string): boolean {
    return letter === "\n" || this.#known.has(letter.codePointAt(0) ?? 0);
  }

  lackingIn({ data, pictures }: PrintJob): readonly string[] {
    const texts = [textsIn(JSON.parse(data)), ...[...pictures.values()].map(lettersOfSvg)].join("");
    return [...new Set(texts)].filter((letter) => !this.has(letter));
  }
}

/** Every text of the data, whatever it is called. */
function textsIn(value: unknown): string {
  if (typeof value === "string") return value;
  if (typeof value !== "object" || value === null) return "";
  return Object.values(value).map(textsIn).join("");
}

const lettersOfSvg = (svg: string): string =>
  [...svg.matchAll(/<text\b[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text).join("");

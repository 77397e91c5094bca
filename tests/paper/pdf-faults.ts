// The bytes of a PDF -> everything that would make it worse than a printed page: what is clipped, small, untagged, foreign or pixels.
import {
  PDFArray,
  PDFBool,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  type PDFObject,
  PDFRawStream,
  PDFString,
} from "pdf-lib";
import { type ReadPage, readPdf } from "./read-pdf.ts";

/** Points: US Letter; A4 of ISO 216. */
export const letter = [612, 792] as const;
export const a4 = [595.276, 841.89] as const;

const name = (of: PDFObject | undefined): string => (of instanceof PDFName ? of.decodeText() : "");

export type Looked = {
  readonly pages: readonly ReadPage[];
  readonly faults: readonly string[];
  readonly tags: ReadonlyMap<string, number>;
};

export async function lookAtPdf(bytes: Uint8Array, [width, height]: readonly [number, number]): Promise<Looked> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const { context, catalog } = document;
  const pages = await readPdf(bytes);
  const faults: string[] = [];
  const wants = (ok: boolean, says: string) => ok || faults.push(says);

  const dicts = context
    .enumerateIndirectObjects()
    .map(([, object]) => (object instanceof PDFRawStream ? object.dict : object))
    .filter((object) => object instanceof PDFDict);
  const tags = new Map<string, number>();
  for (const dict of dicts) {
    const tag = name(dict.lookup(PDFName.of("S")));
    if (dict.has(PDFName.of("P")) && tag !== "") tags.set(tag, (tags.get(tag) ?? 0) + 1);
    if (tag === "Figure")
      wants(textOf(dict.lookup(PDFName.of("Alt"))).length > 20, "a figure without words for those who can't see it");
    wants(name(dict.lookup(PDFName.of("Subtype"))) !== "Image", "a picture of pixels");
    if (name(dict.lookup(PDFName.of("Type"))) === "FontDescriptor") {
      const font = name(dict.lookup(PDFName.of("FontName")));
      wants(/^[A-Z]{6}\+SourceSans3-/.test(font), `a foreign font, ${font}`);
      wants(
        ["FontFile2", "FontFile3"].some((key) => dict.has(PDFName.of(key))),
        `${font} is not embedded`,
      );
    }
  }
  const marked = catalog.lookupMaybe(PDFName.of("MarkInfo"), PDFDict)?.lookup(PDFName.of("Marked"));
  wants(marked === PDFBool.True, "not marked as tagged");
  wants(catalog.has(PDFName.of("StructTreeRoot")), "no tags");
  wants(catalog.has(PDFName.of("Outlines")), "no outline");
  wants(textOf(catalog.lookup(PDFName.of("Lang"))).startsWith("en"), "no language");
  const wishes = catalog.lookupMaybe(PDFName.of("ViewerPreferences"), PDFDict);
  wants(wishes?.lookup(PDFName.of("DisplayDocTitle")) === PDFBool.True, "its title isn't shown");
  wants((document.getTitle() ?? "") !== "", "no title");
  const dates = [document.getCreationDate(), document.getModificationDate()];
  wants(
    dates.every((date) => date === undefined),
    "a date of the clock",
  );

  pages.forEach((page, i) => {
    const here = `page ${i + 1}`;
    wants(
      Math.abs(page.width - width) < 0.6 && Math.abs(page.height - height) < 0.6,
      `${here} is ${page.width} x ${page.height}`,
    );
    wants(page.text.includes(`page ${i + 1} of ${pages.length}`), `${here} isn't numbered`);
    for (const one of page.letters) {
      if (one.text.trim() === "" || one.right <= one.left) continue;
      const inside = one.left > 14 && one.right < page.width - 14 && one.bottom > 14 && one.top < page.height - 14;
      wants(inside, `${here}: "${one.text}" at ${one.left.toFixed(0)}, ${one.bottom.toFixed(0)} runs to the edge`);
      wants(one.size >= 8.99, `${here}: "${one.text}" of ${one.size.toFixed(2)} pt`);
    }
  });
  return { pages, faults: [...new Set(faults)], tags };
}

const textOf = (of: PDFObject | undefined): string =>
  of instanceof PDFString || of instanceof PDFHexString ? of.decodeText() : "";

/** Every text in a PDF beside those on its pages: what pictures show, names in its outline, title and author. */
export async function textsInPdf(bytes: Uint8Array): Promise<readonly string[]> {
  const { context } = await PDFDocument.load(bytes, { updateMetadata: false });
  return context.enumerateIndirectObjects().flatMap(([, object]) => textsUnder(object));
}

function textsUnder(object: PDFObject): readonly string[] {
  if (object instanceof PDFRawStream) return textsUnder(object.dict);
  if (object instanceof PDFDict) return object.values().flatMap(textsUnder);
  if (object instanceof PDFArray) return object.asArray().flatMap(textsUnder);
  const text = textOf(object);
  return text === "" ? [] : [text];
}

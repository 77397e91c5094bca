// The bytes of a PDF -> what another program than ours finds in it: letters with their sizes and places, through PDFium.
import { PDFiumLibrary } from "@hyzyla/pdfium";

/** Points, from the page's lower left. `size` is as it is seen, all scaling done. */
export type Letter = {
  readonly text: string;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
};
export type ReadPage = {
  readonly width: number;
  readonly height: number;
  readonly letters: readonly Letter[];
  readonly text: string;
};

/** What the wrapper's types leave out of the module that it wraps. */
type Module = {
  readonly wasmExports: { malloc(bytes: number): number; free(at: number): void };
  readonly HEAPU8: Uint8Array;
  _FPDFText_LoadPage(page: number): number;
  _FPDFText_ClosePage(text: number): void;
  _FPDFText_CountChars(text: number): number;
  _FPDFText_GetUnicode(text: number, index: number): number;
  _FPDFText_IsGenerated(text: number, index: number): number;
  _FPDFText_GetFontSize(text: number, index: number): number;
  _FPDFText_GetMatrix(text: number, index: number, matrix: number): number;
  _FPDFText_GetCharBox(text: number, index: number, left: number, right: number, bottom: number, top: number): number;
};

export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const library = await PDFiumLibrary.init();
  const module = (library as unknown as { readonly module: Module }).module;
  const document = await library.loadDocument(bytes);
  const room = module.wasmExports.malloc(64);
  try {
    return [...document.pages()].map((page): ReadPage => {
      const { originalWidth: width, originalHeight: height } = page.getOriginalSize();
      const text = module._FPDFText_LoadPage((page as unknown as { readonly pageIdx: number }).pageIdx);
      const letters = Array.from({ length: module._FPDFText_CountChars(text) }, (_, i) => i)
        .filter((i) => module._FPDFText_IsGenerated(text, i) !== 1)
        .map((i) => letterAt(module, text, i, room));
      module._FPDFText_ClosePage(text);
      return { width, height, letters, text: page.getText() };
    });
  } finally {
    module.wasmExports.free(room);
    document.destroy();
    library.destroy();
  }
}

function letterAt(module: Module, text: number, i: number, room: number): Letter {
  module._FPDFText_GetMatrix(text, i, room);
  const [, , c = 0, d = 0] = new Float32Array(module.HEAPU8.buffer, room, 6);
  const scale = Math.hypot(c, d);
  module._FPDFText_GetCharBox(text, i, room, room + 8, room + 16, room + 24);
  const [left = 0, right = 0, bottom = 0, top = 0] = new Float64Array(module.HEAPU8.buffer, room, 4);
  return {
    text: String.fromCodePoint(module._FPDFText_GetUnicode(text, i)),
    size: module._FPDFText_GetFontSize(text, i) * scale,
    ...{ left, right, bottom, top },
  };
}

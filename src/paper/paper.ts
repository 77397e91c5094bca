// The papers that sheets are printed on, in millimetres: one place for sizes and margins.
import type { PaperSize } from "../leaves/sheet-set.ts";

/** ISO 216 A4; ANSI A, 8 1/2 by 11 in. */
export const paperSizes: Readonly<Record<PaperSize, { readonly width: number; readonly height: number }>> = {
  letter: { width: 215.9, height: 279.4 },
  a4: { width: 210, height: 297 },
};

/** ISO 838 holes lie 12 mm in and are 6 wide: the binding side keeps clear of them, of US three-hole punches too. */
export const margins = { left: 25, right: 13, top: 21, bottom: 19 } as const;

/** Of a page at full size: it is cut up or kept flat, so only the printer's own edge is left free. */
export const fullSizeMargins = { left: 10, right: 10, top: 18, bottom: 13 } as const;

export const textWidth = (size: PaperSize): number => round(paperSizes[size].width - margins.left - margins.right);
export const textHeight = (size: PaperSize): number => round(paperSizes[size].height - margins.top - margins.bottom);

/** What a drawing at full size may take of a page. */
export const fullSizeArea = (size: PaperSize): { readonly width: number; readonly height: number } => ({
  width: round(paperSizes[size].width - fullSizeMargins.left - fullSizeMargins.right),
  height: round(paperSizes[size].height - fullSizeMargins.top - fullSizeMargins.bottom),
});

const round = (mm: number): number => Math.round(mm * 100) / 100;

export const fullSizeAreas = { letter: fullSizeArea("letter"), a4: fullSizeArea("a4") } as const;

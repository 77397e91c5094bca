// Tiles with their sizes -> which page each lies on and where: shelves filled from the highest down.

export type Packed<T> = { readonly of: T; readonly page: number; readonly left: number; readonly top: number };

type Size = { readonly width: number; readonly height: number };

/**
 * First fit by falling height; two lie at least `gap` apart. Errors: something larger than a page is our bug. The fewest pages are
 * not proven: with patterns as few as these it has the least area's count nearly always.
 */
export function packPages<T extends Size>(all: readonly T[], page: Size, gap: number): readonly Packed<T>[] {
  type Shelf = { readonly top: number; readonly height: number; used: number };
  const pages: { used: number; readonly shelves: Shelf[] }[] = [];
  const tallestFirst = all
    .map((of, order) => ({ of, order }))
    .sort((a, b) => b.of.height - a.of.height || b.of.width - a.of.width || a.order - b.order);
  const packed = tallestFirst.map(({ of, order }) => {
    if (of.width > page.width + 1e-6 || of.height > page.height + 1e-6)
      throw new Error("a tile is larger than its page");
    for (const [number, sheet] of pages.entries()) {
      const shelf = sheet.shelves.find((one) => of.height <= one.height && one.used + of.width <= page.width + 1e-6);
      if (shelf) {
        const left = shelf.used;
        shelf.used += of.width + gap;
        return { order, of, page: number, left, top: shelf.top };
      }
      if (sheet.used + of.height <= page.height + 1e-6) {
        const top = sheet.used;
        sheet.shelves.push({ top, height: of.height, used: of.width + gap });
        sheet.used += of.height + gap;
        return { order, of, page: number, left: 0, top };
      }
    }
    pages.push({ used: of.height + gap, shelves: [{ top: 0, height: of.height, used: of.width + gap }] });
    return { order, of, page: pages.length - 1, left: 0, top: 0 };
  });
  return packed.sort((a, b) => a.order - b.order).map(({ of, page, left, top }) => ({ of, page, left, top }));
}

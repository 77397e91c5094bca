// Preview pictures: their size, the same bytes twice, nothing in the file but pixels, and the drawing's own colours in them.
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { drawPreview } from "../../src/site/draw-previews.ts";
import { storeFiles } from "../../src/site/store-files.ts";
import { corral, shop } from "../leaves/worked-goods.ts";

const online = { ...storeShop(shop), address: "https://yard.example/" };
const { listed: _listed, ...goods } = storeItem(corral, shop.division);
const files = storeFiles([goods], online);
const svg = files.flatMap((file) => ("drawn" in file ? [file.drawn] : []))[0] ?? "";

/** Names of the parts of a PNG file (ISO/IEC 15948): length, name, bytes, sum. */
function partsOf(png: Buffer): string[] {
  const names: string[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at)) names.push(png.toString("latin1", at + 4, at + 8));
  return names;
}

describe("a preview", () => {
  it("is drawn without a letter", () => {
    expect(svg).toContain("<path");
    expect(svg).not.toContain("<text");
  });
  it("is 1200 x 630, white at its edge, wooden inside", async () => {
    const png = await drawPreview(svg);
    const { data, info } = await sharp(png).raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height, info.channels]).toEqual([1200, 630, 3]);
    const pixel = (x: number, y: number) => [...data.subarray((y * 1200 + x) * 3, (y * 1200 + x) * 3 + 3)];
    expect([pixel(0, 0), pixel(1199, 629)]).toEqual([
      [255, 255, 255],
      [255, 255, 255],
    ]);
    const coloured = Array.from({ length: 1200 * 630 }, (_, n) => data[3 * n] !== data[3 * n + 2]).filter(
      Boolean,
    ).length;
    expect(coloured).toBeGreaterThan(0.05 * 1200 * 630);
  });
  it("holds nothing but pixels: head, size of a pixel, data, end", async () => {
    const png = await drawPreview(svg);
    expect(partsOf(png).filter((name) => !["IHDR", "pHYs", "IDAT", "IEND"].includes(name))).toEqual([]);
    const { exif, icc, iptc, xmp, comments } = await sharp(png).metadata();
    expect([exif, icc, iptc, xmp, comments]).toEqual([undefined, undefined, undefined, undefined, undefined]);
  });
  it("is the same bytes twice", async () => {
    expect((await drawPreview(svg)).equals(await drawPreview(svg))).toBe(true);
  });
  it("is made only where the shop has an address", () => {
    expect(storeFiles([goods], storeShop(shop))).toEqual([]);
    expect(files.map(({ path }) => path)).toEqual(["store/sitemap.xml", "store/pictures/hose-and-pot-corral.png"]);
  });
});

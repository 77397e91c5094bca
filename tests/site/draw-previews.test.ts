// Pictures for listings and previews: their size, the same bytes twice, nothing in the file but pixels, the same pixels without any font.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { drawSeveral } from "../../src/drawing/listing-views.ts";
import { outlined } from "../../src/drawing/outlined.ts";
import { textWidth } from "../../src/drawing/text-width.ts";
import { textLoops } from "../../src/drawing/type-face.ts";
import { imageKinds, imageName, listingImages } from "../../src/leaves/listing-images.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { drawPreview, framePhoto } from "../../src/site/draw-previews.ts";
import { listingFiles, storeFiles } from "../../src/site/store-files.ts";
import { typeFaces } from "../../src/site/type-faces.ts";
import { corral, shop } from "../leaves/worked-goods.ts";

const online = { ...storeShop(shop), address: "https://yard.example/" };
const { listed: _listed, ...goods } = storeItem(corral, shop.division);
const files = storeFiles([goods], online);
const preview = files.flatMap((file) => ("drawn" in file ? [file] : []))[0];
if (!preview) throw new Error("no preview is made");
const svg = preview.drawn();
const root = join(import.meta.dirname, "../..");

/** Names of the parts of a PNG file (ISO/IEC 15948): length, name, bytes, sum. */
function partsOf(png: Buffer): string[] {
  const names: string[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at)) names.push(png.toString("latin1", at + 4, at + 8));
  return names;
}

describe("a preview", () => {
  it("has no text that a font would have to draw", () => {
    expect(svg).toContain("<path");
    expect(svg).not.toContain("<text");
  });
  it("is 1200 x 630, white at its edge, wooden inside", async () => {
    const png = await drawPreview(svg, preview.size);
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
    const png = await drawPreview(svg, preview.size);
    expect(partsOf(png).filter((name) => !["IHDR", "pHYs", "IDAT", "IEND"].includes(name))).toEqual([]);
    const { exif, icc, iptc, xmp, comments } = await sharp(png).metadata();
    expect([exif, icc, iptc, xmp, comments]).toEqual([undefined, undefined, undefined, undefined, undefined]);
  });
  it("is the same bytes twice", async () => {
    expect((await drawPreview(svg, preview.size)).equals(await drawPreview(svg, preview.size))).toBe(true);
  });
  it("is made only where the shop has an address", () => {
    expect(storeFiles([goods], storeShop(shop)).map(({ path }) => path)).toEqual(["store/robots.txt"]);
    expect(files.map(({ path }) => path)).toEqual([
      "store/robots.txt",
      "store/sitemap.xml",
      "store/pictures/hose-and-pot-corral.png",
    ]);
  });
});

const sizes = [
  { width: 2000, height: 2000 },
  { width: 1200, height: 630 },
  { width: 1080, height: 1350 },
];

describe("pictures for a listing", () => {
  it("4 kinds in 3 sizes are 12, in the binder's folder of the listing; none where the shop asks for none", () => {
    const made = listingFiles(goods, { ...shop, images: sizes }, []);
    expect(made).toHaveLength(12);
    expect(made[0]?.path).toBe("binder/listings/hose-and-pot-corral/hero-2000x2000.png");
    expect(listingFiles(goods, shop, [])).toEqual([]);
  });
  it("each is of the shape asked for, within 1 in 1000, and all its marks lie on it", () => {
    for (const { kind, size, drawing } of listingImages(goods, online, sizes)) {
      const name = imageName({ kind, size });
      expect(Math.abs(drawing.width / drawing.height / (size.width / size.height) - 1), name).toBeLessThan(0.001);
      const { marks, width, height } = outlined(drawing, typeFaces());
      const points = marks.flatMap((mark) =>
        mark.kind === "region" ? mark.loops.flat() : mark.kind === "lines" ? mark.chains.flat() : [],
      );
      const out = points.filter(([u, v]) => u < 0 || v < 0 || u > width || v > height);
      expect(out, name).toEqual([]);
    }
  });
  it("is just as many pixels as it says", async () => {
    const [made] = listingFiles(goods, { ...shop, images: [{ width: 540, height: 675 }] }, []);
    if (!made || !("drawn" in made)) throw new Error("none is made");
    const { width, height } = await sharp(await drawPreview(made.drawn(), made.size)).metadata();
    expect([width, height]).toEqual([540, 675]);
  });
  it("a photograph stands whole in it, white at its sides", async () => {
    const photo = await sharp({ create: { width: 600, height: 900, channels: 3, background: "#0a0a0a" } })
      .png()
      .toBuffer();
    const framed = await framePhoto(photo, { width: 300, height: 300 });
    const { data, info } = await sharp(framed).raw().toBuffer({ resolveWithObject: true });
    const at = (x: number, y: number) => data[(y * info.width + x) * info.channels] ?? 0;
    // 600 x 900 in 300 x 300 is 200 x 300: 50 white at each side.
    expect([at(20, 150) > 240, at(150, 5) < 30, at(150, 295) < 30, at(280, 150) > 240]).toEqual([
      true,
      true,
      true,
      true,
    ]);
  });
  it.each(imageKinds)(
    "%s has the same pixels with the machine's fonts and without any; a text left to fonts has not",
    (kind) => {
      const folder = mkdtempSync(join(tmpdir(), "shopleaf-test-"));
      const none = join(folder, "none.conf");
      const some = join(folder, "some.conf");
      const conf = (inside: string) =>
        `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>${inside}<cachedir>${folder}/cache</cachedir></fontconfig>`;
      writeFileSync(none, conf(""));
      writeFileSync(some, conf(`<dir>${join(root, "node_modules/source-sans/TTF")}</dir>`));
      const run = (FONTCONFIG_FILE: string) =>
        JSON.parse(
          execFileSync(process.execPath, ["--import", "tsx", join(import.meta.dirname, "one-picture.ts"), kind], {
            cwd: root,
            encoding: "utf8",
            env: { ...process.env, FONTCONFIG_FILE },
          }),
        ) as { pixels: string; text: string };
      const [without, withFonts] = [run(none), run(some)];
      expect(without.pixels).toBe(withFonts.pixels);
      expect(without.text).not.toBe(withFonts.text);
      rmSync(folder, { recursive: true });
    },
    120_000,
  );
});

describe("letters as outlines", () => {
  it("run as far as the font's own table of widths says, fractions too", () => {
    for (const text of ["Hose-and-pot corral", "7 3\u20444 in (197 mm)", "AVATAR, To"]) {
      const us = textLoops({ at: [0, 0], text, size: 100, anchor: "start" }, typeFaces().regular)
        .flat()
        .map(([u]) => u);
      // Pairs such as AV are set closer than the table says; side bearings are free.
      expect(Math.abs(Math.max(...us) - textWidth(text, 100, false))).toBeLessThan(30);
    }
  });
  it("an o has two loops, one inside the other; turned a quarter to the left it stands upright", () => {
    const face = typeFaces().regular;
    expect(textLoops({ at: [0, 0], text: "o", size: 10, anchor: "start" }, face)).toHaveLength(2);
    const turned = textLoops({ at: [0, 0], text: "III", size: 10, anchor: "start", turn: 90 }, face).flat();
    expect(Math.max(...turned.map(([u]) => u))).toBeLessThanOrEqual(0.01);
    expect(Math.min(...turned.map(([, v]) => v))).toBeLessThan(-6);
  });
});

it("three drawings in a square stand 2 and 1, in a strip of 4 to 1 beside each other", () => {
  const [one] = goods.variants;
  const several = ["a", "b", "c"].map((name) => ({ name, drawing: one.view }));
  const lefts = (width: number, height: number) =>
    drawSeveral({ id: "x", title: "x", description: "x" }, several, [], { width, height })
      .marks.filter((mark) => mark.kind === "text")
      .map(({ at }) => Math.round(at[1]));
  expect(new Set(lefts(1000, 1000)).size).toBe(2);
  expect(new Set(lefts(2000, 500)).size).toBe(1);
});

// Drawn and photographed assets -> picture files of just the size asked for, nothing in them but pixels.
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import sharp from "sharp";
import type { ImageSize } from "../yard/image-sizes.ts";
import type { Asset } from "./site.ts";

const ground = "#ffffff";

/** Pixels of an SVG that is 1 mm wide at a density of 1. */
const perMm = 1 / 25.4;

/** The same bytes for the same drawing: no palette is searched for, no time or place is written. `svg` says its width in mm. */
export async function drawPreview(svg: string, size: ImageSize): Promise<Buffer> {
  const millimetres = Number(/ width="([\d.]+)mm"/.exec(svg)?.[1] ?? 150);
  const density = Math.min(2400, Math.max(20, size.width / (millimetres * perMm)));
  const drawing = await sharp(Buffer.from(svg), { density })
    .resize({ ...size, fit: "contain", background: ground })
    .flatten({ background: ground })
    .toColourspace("srgb")
    .raw()
    .toBuffer({ resolveWithObject: true });
  return sharp(drawing.data, { raw: drawing.info }).png({ compressionLevel: 6, adaptiveFiltering: false }).toBuffer();
}

/** The photograph whole on white: nothing that is sold is cut off. */
export const framePhoto = (photo: Uint8Array, size: ImageSize): Promise<Buffer> =>
  sharp(photo)
    .resize({ ...size, fit: "contain", background: ground })
    .flatten({ background: ground })
    .jpeg({ quality: 85, mozjpeg: true })
    .toBuffer();

export async function drawPreviews(assets: readonly Asset[], out: string): Promise<void> {
  for (const asset of assets) {
    if (!("size" in asset)) continue;
    const to = join(out, asset.path);
    mkdirSync(dirname(to), { recursive: true });
    const { size } = asset;
    writeFileSync(to, "drawn" in asset ? await drawPreview(asset.drawn(), size) : await framePhoto(asset.photo, size));
  }
}

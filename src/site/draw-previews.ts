// Drawn assets -> PNG files: white ground, the drawing whole in the middle, nothing in the file but pixels.
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import sharp from "sharp";
import { previewSize } from "../leaves/on-the-web.ts";
import type { Asset } from "./site.ts";

const ground = "#ffffff";
/** Left free on every side, pixels. */
const margin = 30;

/** The same bytes for the same drawing: no palette is searched for, no time or place is written. */
export async function drawPreview(svg: string): Promise<Buffer> {
  const inside = { width: previewSize.width - 2 * margin, height: previewSize.height - 2 * margin };
  const drawing = await sharp(Buffer.from(svg), { density: 288 })
    .resize({ ...inside, fit: "contain", background: ground })
    .flatten({ background: ground })
    .toColourspace("srgb")
    .raw()
    .toBuffer({ resolveWithObject: true });
  return sharp(drawing.data, { raw: drawing.info })
    .extend({ top: margin, bottom: margin, left: margin, right: margin, background: ground })
    .png({ compressionLevel: 9, adaptiveFiltering: false })
    .toBuffer();
}

export async function drawPreviews(assets: readonly Asset[], out: string): Promise<void> {
  for (const asset of assets) {
    if (!("drawn" in asset)) continue;
    const to = join(out, asset.path);
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, await drawPreview(asset.drawn));
  }
}

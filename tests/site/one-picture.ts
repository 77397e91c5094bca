// Draws one picture of the test's corral and prints what its pixels come to: run as a program of its own, with the fonts of its surroundings.
import { createHash } from "node:crypto";
import sharp from "sharp";
import type { ImageKind } from "../../src/leaves/listing-images.ts";
import { storeItem } from "../../src/leaves/store-item.ts";
import { drawPreview } from "../../src/site/draw-previews.ts";
import { listingFiles } from "../../src/site/store-files.ts";
import { corral, shop } from "../leaves/worked-goods.ts";

const kind = (process.argv[2] ?? "hero") as ImageKind;
const files = listingFiles(storeItem(corral, shop.division), { ...shop, images: [{ width: 600, height: 600 }] }, []);
const file = files.find(({ path }) => path.includes(`/${kind}-`));
if (!file || !("drawn" in file)) throw new Error(`no picture ${kind}`);
const pixels = await sharp(await drawPreview(file.drawn(), file.size))
  .raw()
  .toBuffer();
// What a text that is left to the machine's fonts comes to, to see that they do differ.
const letters = `<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm"><text y="40" font-size="30" font-family="sans-serif">Agf</text></svg>`;
const text = await sharp(await drawPreview(letters, file.size))
  .raw()
  .toBuffer();
const sum = (bytes: Buffer): string => createHash("sha256").update(bytes).digest("hex");
process.stdout.write(JSON.stringify({ pixels: sum(pixels), text: sum(text) }));

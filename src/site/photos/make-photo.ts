// The bytes of a photograph -> its files for the store: upright, in sRGB, in several sizes and two formats, nothing in them but pixels.
import sharp from "sharp";
import { contentHash } from "../../leaves/content-hash.ts";
import type { StorePhoto } from "../../leaves/store-item.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import { startOf } from "../content-files.ts";
import type { PhotoSource } from "./find-photos.ts";
import { sniff } from "./sniff.ts";

/** A photograph ready for its page, its files, and itself as it is worked on further: upright, sRGB, without anything else. */
export type MadePhoto = {
  readonly slug: string;
  readonly photo: StorePhoto;
  readonly files: readonly { readonly path: string; readonly bytes: Uint8Array }[];
  readonly whole: Uint8Array;
};

/** CSS pixels that a phone, a wide page, and a wide page on a fine screen ask for. */
const widths = [480, 960, 1600];
const least = 480;
const mostPixels = 100_000_000;

/** Never throws for what a file holds: then it is a problem. */
export async function makePhoto(source: PhotoSource): Promise<MadePhoto | Problem> {
  const at = startOf(source.file);
  const kind = sniff(source.bytes);
  if ("other" in kind) return problem("photo-not-one", at, { found: kind.other });
  try {
    const { width, height, format } = await sharp(source.bytes, { limitInputPixels: false }).metadata();
    const isAsNamed = format === kind.kind || (format === "heif" && kind.kind === "avif");
    if (!isAsNamed) return problem("photo-not-one", at, { found: `a ${format} file in a ${kind.kind} file's clothes` });
    if (width * height > mostPixels) {
      const found = `${Math.round((width * height) / 1e6)} million pixels`;
      return problem("photo-too-big", at, { found, most: `${mostPixels / 1e6} million` });
    }
    if (Math.min(width, height) < least) return problem("photo-too-small", at, { width, height, least });
    return await made(source);
  } catch (error) {
    const why = error instanceof Error ? (error.message.split("\n")[0] ?? "") : String(error);
    return problem("photo-broken", at, { why: why.replace(/^.*?: /, "").replace(/\.$/, "") });
  }
}

async function made({ slug, number, words, bytes }: PhotoSource): Promise<MadePhoto> {
  // Turned as the camera held it, its own colour profile worked into the pixels; sharp writes none of the rest on.
  const { data: whole, info } = await sharp(bytes, { failOn: "warning", limitInputPixels: mostPixels })
    .autoOrient()
    .flatten({ background: "#ffffff" })
    .toColourspace("srgb")
    .png({ compressionLevel: 1 })
    .toBuffer({ resolveWithObject: true });
  const hash = contentHash(bytes);
  const wanted = [...widths.filter((width) => width < info.width), Math.min(info.width, widths.at(-1) ?? info.width)];
  const sizes: StorePhoto["sizes"][number][] = [];
  const files: MadePhoto["files"][number][] = [];
  for (const width of [...new Set(wanted)]) {
    const sized = await sharp(whole).resize({ width }).raw().toBuffer({ resolveWithObject: true });
    const raw = { raw: { width: sized.info.width, height: sized.info.height, channels: sized.info.channels } };
    const name = `photos/${slug}-${number}-${hash}-${width}`;
    files.push(
      { path: `${name}.webp`, bytes: await sharp(sized.data, raw).webp({ quality: 78, effort: 4 }).toBuffer() },
      { path: `${name}.jpg`, bytes: await sharp(sized.data, raw).jpeg({ quality: 80, mozjpeg: true }).toBuffer() },
    );
    sizes.push({ width: sized.info.width, height: sized.info.height, webp: `${name}.webp`, jpeg: `${name}.jpg` });
  }
  return { slug, photo: { number, words, sizes }, files, whole };
}

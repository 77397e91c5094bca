// The first bytes of a file -> what kind of file it is, whatever its name says.

/** Kinds that a photograph may come in. */
export const photoKinds = ["jpeg", "png", "webp", "tiff", "avif"] as const;
export type PhotoKind = (typeof photoKinds)[number];

export type Sniffed = { readonly kind: PhotoKind } | { readonly other: string };

const startsWith = (bytes: Uint8Array, sign: readonly number[], at = 0): boolean =>
  sign.every((byte, i) => bytes[at + i] === byte);

const ascii = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));

/** Signatures: JFIF/Exif, PNG (ISO/IEC 15948), RIFF WebP, TIFF 6.0, ISO base media `ftyp` with its brand. */
export function sniff(bytes: Uint8Array): Sniffed {
  if (bytes.length === 0) return { other: "empty" };
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return { kind: "jpeg" };
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return { kind: "png" };
  if (ascii(bytes, 0, 4) === "RIFF" && ascii(bytes, 8, 12) === "WEBP") return { kind: "webp" };
  if (startsWith(bytes, [0x49, 0x49, 0x2a, 0]) || startsWith(bytes, [0x4d, 0x4d, 0, 0x2a])) return { kind: "tiff" };
  if (ascii(bytes, 4, 8) === "ftyp") {
    const brand = ascii(bytes, 8, 12);
    if (brand === "avif" || brand === "avis") return { kind: "avif" };
    return { other: /^(hei|hev|mif|msf)/.test(brand) ? "a HEIC file, as some telephones save them" : "a film" };
  }
  return { other: otherKind(bytes) };
}

function otherKind(bytes: Uint8Array): string {
  if (ascii(bytes, 0, 4) === "GIF8") return "a GIF file";
  if (ascii(bytes, 0, 5) === "%PDF-") return "a PDF file";
  const start = new TextDecoder("utf-8")
    .decode(bytes.subarray(0, 4096))
    .replace(/^\ufeff/, "")
    .trimStart();
  if (/<svg[\s>]/i.test(start)) return "a drawing in SVG";
  if (/^<(!doctype|html|\?xml)/i.test(start)) return "a page of text with markup";
  return "something else";
}

// Packs -> their folders: every file, the checksums of all, and one archive that is the same bytes for the same files.
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { strToU8, type Zippable, zipSync } from "fflate";
import type { Printer } from "./pdf/printer.ts";
import { isPrinted, printAsset } from "./print-assets.ts";
import type { Asset, Pack } from "./site.ts";

export async function writePacks(printer: Printer, packs: readonly Pack[], out: string): Promise<void> {
  for (const pack of packs) await writePack(printer, pack, out);
}

export async function writePack(printer: Printer, { path, files }: Pack, out: string): Promise<void> {
  const bytes = new Map<string, Uint8Array>();
  for (const file of files) bytes.set(safePath(file.path), await bytesOf(printer, file));
  bytes.set("SHA256SUMS", strToU8(checksums(bytes)));
  const name = `${basename(path)}-plan`;
  for (const [file, content] of [...bytes, [`${name}.zip`, archive(name, bytes)] as const]) {
    const to = join(out, path, file);
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, content);
  }
}

async function bytesOf(printer: Printer, file: Asset): Promise<Uint8Array> {
  if (isPrinted(file)) return printAsset(printer, file);
  if ("text" in file) return strToU8(file.text);
  if ("from" in file) return readFileSync(file.from);
  throw new Error(`a pack can't hold ${file.path}`);
}

/** No path leads out of the folder that an archive is unpacked into. */
function safePath(path: string): string {
  if (!/^[a-zA-Z0-9][\w.-]*(\/[a-zA-Z0-9][\w.-]*)*$/.test(path))
    throw new Error(`a pack can't hold a file named ${path}`);
  return path;
}

const byPath = (files: ReadonlyMap<string, Uint8Array>) => [...files].sort(([a], [b]) => (a < b ? -1 : 1));

/** Two blanks part sum and path, as `sha256sum` reads them. */
const checksums = (files: ReadonlyMap<string, Uint8Array>): string =>
  byPath(files)
    .map(([path, content]) => `${createHash("sha256").update(content).digest("hex")}  ${path}\n`)
    .join("");

/** The first day that an archive can name; which day it was made is nobody's business. */
const noDay = new Date(1980, 0, 1);

export const archive = (folder: string, files: ReadonlyMap<string, Uint8Array>): Uint8Array =>
  zipSync(Object.fromEntries(byPath(files).map(([path, content]) => [`${folder}/${path}`, content])) as Zippable, {
    level: 9,
    mtime: noDay,
    os: 3,
  });

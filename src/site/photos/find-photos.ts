// A content folder -> the photographs in it, by recipe, and what is wrong with their names and places. Nothing of a picture is read yet.
import { lstatSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { nearest } from "../../problems/nearest.ts";
import type { Problem } from "../../problems/problem.ts";
import { problem } from "../../problems/problem.ts";
import { findUnprovable } from "../../yard/unprovable.ts";
import { isFolder, startOf, tellWhy } from "../content-files.ts";

/** A photograph as the maker put it there. */
export type PhotoSource = {
  readonly file: string;
  readonly slug: string;
  readonly number: number;
  /** What the name says it shows. */
  readonly words: string;
  readonly bytes: Uint8Array;
};

/** No file of more bytes is read. */
const mostBytes = 60_000_000;

/** Endings by which a file is meant as a photograph; what else lies there is passed over if its name starts with a dot. */
const nameForm = /^(\d{1,2})-([\p{L}\p{N}]+(?:[-_ ][\p{L}\p{N}]+)*)\.(?:jpe?g|png|webp|tiff?|avif)$/iu;

const byName = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** A name as it can be told: signs that hide, turn round or end a line are shown as a question mark. */
export const tellName = (name: string): string => name.replace(/[^\p{L}\p{N} ._,;()+-]/gu, "?").slice(0, 80);

/** `slugs` are those of all recipes, drafts too. */
export function findPhotos(
  content: string,
  slugs: readonly string[],
): { readonly sources: readonly PhotoSource[]; readonly problems: readonly Problem[] } {
  const folder = join(content, "photos");
  const problems: Problem[] = [];
  const sources: PhotoSource[] = [];
  if (!isFolder(folder)) return { sources, problems };
  for (const name of visibleIn(folder)) {
    const path = join(folder, name);
    const at = startOf(join(folder, tellName(name)));
    if (lstatSync(path).isSymbolicLink()) problems.push(problem("photo-link", at, { found: tellName(name) }));
    else if (!isFolder(path)) problems.push(problem("photo-loose", at, { found: tellName(name) }));
    else if (!slugs.includes(name)) {
      const near = nearest(name, slugs);
      problems.push(problem("photo-folder", at, { found: tellName(name), known: slugs, nearest: near }));
    } else sources.push(...photosOf(path, name, problems));
  }
  return { sources, problems };
}

const visibleIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => !name.startsWith(".") && name !== "Thumbs.db")
    .sort(byName);

function photosOf(folder: string, slug: string, problems: Problem[]): PhotoSource[] {
  const found: PhotoSource[] = [];
  for (const name of visibleIn(folder)) {
    const path = join(folder, name);
    const at = startOf(join(folder, tellName(name)));
    const stat = lstatSync(path);
    const [, number = "", words = ""] = nameForm.exec(name.normalize("NFC")) ?? [];
    const other = found.find((one) => one.number === Number(number));
    if (stat.isSymbolicLink()) problems.push(problem("photo-link", at, { found: tellName(name) }));
    else if (!stat.isFile() || number === "") problems.push(problem("photo-name", at, { found: tellName(name) }));
    else if (other) problems.push(problem("photo-twice", at, { number: Number(number), other: other.file }));
    else if (stat.size > mostBytes) {
      const megabytes = `${Math.ceil(stat.size / 1e6)} MB`;
      problems.push(problem("photo-too-big", at, { found: megabytes, most: `${mostBytes / 1e6} MB` }));
    } else {
      const says = words.replace(/[-_ ]+/g, " ");
      for (const { found: claim, instead } of findUnprovable(says, { child: false, food: false }))
        problems.push(problem("unprovable", at, { found: claim, instead }));
      try {
        found.push({ file: at.file, slug, number: Number(number), words: says, bytes: readFileSync(path) });
      } catch (error) {
        problems.push(problem("unreadable-file", at, { why: tellWhy(error) }));
      }
    }
  }
  return found;
}

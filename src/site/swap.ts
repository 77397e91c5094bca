// A folder made beside the site -> the site: the new one takes the old one's place in one step, or nothing changes.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from "node:path";
import { isFolder, tellWhy } from "./content-files.ts";
import { WrongCall } from "./wrong-call.ts";

/** Stands in every site we write, so that no other folder is ever taken for one and replaced. */
const mark = ".shopleaf-site";
const markText = "Made by `shopleaf build`, which replaces this whole folder each time.\n";

/** Refuses an output folder that is not ours to replace. */
export function checkOut(out: string, contentFolder: string): void {
  const within = relative(resolve(out), resolve(contentFolder));
  if (!isAbsolute(within) && within.split(sep)[0] !== "..") {
    throw new WrongCall(`--out ${out} holds the content folder, and the whole output folder is replaced at each build`);
  }
  if (!existsSync(out) || existsSync(join(out, mark))) return;
  if (!isFolder(out)) throw new WrongCall(`--out ${out} is a file`);
  if (readdirSync(out).length > 0) {
    throw new WrongCall(`--out ${out} holds other files, and the whole output folder is replaced at each build`);
  }
}

/** Runs `fill` on a new folder beside `out` and puts that in its place; if `fill` throws, `out` stays as it was. */
export async function swapIn(out: string, fill: (folder: string) => Promise<void>): Promise<void> {
  // Where `out` is a link, what it leads to is replaced and the link stays.
  const target = existsSync(out) ? realpathSync(out) : resolve(out);
  const beside = dirname(target);
  const work = makeBeside(beside, `.${basename(target)}-`, out);
  const next = join(work, "next");
  const onSignal = () => {
    rmSync(work, { recursive: true, force: true });
    process.exit(130);
  };
  process.once("SIGINT", onSignal);
  process.once("SIGTERM", onSignal);
  try {
    mkdirSync(next);
    await fill(next);
    writeFileSync(join(next, mark), markText);
    takePlace(next, target, join(work, "old"));
  } finally {
    process.off("SIGINT", onSignal);
    process.off("SIGTERM", onSignal);
    rmSync(work, { recursive: true, force: true });
  }
}

function makeBeside(folder: string, start: string, out: string): string {
  try {
    mkdirSync(folder, { recursive: true });
    return mkdtempSync(join(folder, start));
  } catch (error) {
    throw new WrongCall(`--out ${out} can't be written: ${tellWhy(error)}`);
  }
}

/** No signal is handled between the renames; where the second fails, the first is taken back. */
function takePlace(next: string, out: string, old: string): void {
  const had = existsSync(out);
  if (had) renameSync(out, old);
  try {
    renameSync(next, out);
  } catch (error) {
    if (had && !existsSync(out)) renameSync(old, out);
    throw error;
  }
}

// Print jobs -> PDFs, each set once: what was printed before lies under a hash of everything it was made from.
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { PrintJob } from "../../paper/print-job.ts";
import { hashOf } from "../remember.ts";
import { fontFiles, PageSetter, templateFile, typesetter } from "./page-setter.ts";

export const printCache = fileURLToPath(new URL("../../../.cache/pdf", import.meta.url));

/** More PDFs than these are not kept; those that were not asked for the longest go first. */
const mostKept = 400;

export class Printer {
  readonly #folder: string;
  #setter: PageSetter | undefined;
  #tools: string | undefined;

  constructor(folder: string = printCache) {
    this.#folder = folder;
  }

  async print(job: PrintJob): Promise<Uint8Array> {
    const kept = join(this.#folder, `${this.#keyOf(job)}.pdf`);
    if (existsSync(kept)) {
      const now = new Date();
      utimesSync(kept, now, now);
      return readFileSync(kept);
    }
    this.#setter ??= new PageSetter();
    const bytes = await this.#setter.set(job);
    this.#keep(kept, bytes);
    return bytes;
  }

  #keyOf({ data, pictures, isFullSize }: PrintJob): string {
    this.#tools ??= hashOf(
      typesetter,
      readFileSync(templateFile, "utf8"),
      ...fontFiles.map((file) => readFileSync(file, "latin1")),
    );
    return hashOf(this.#tools, data, String(isFullSize), ...[...pictures].flat());
  }

  /** Written beside and then moved, so that another build never reads half of one. A folder that can't be written keeps nothing. */
  #keep(path: string, bytes: Uint8Array): void {
    try {
      mkdirSync(this.#folder, { recursive: true });
      const beside = `${path}.${process.pid}`;
      writeFileSync(beside, bytes);
      renameSync(beside, path);
    } catch {
      return;
    }
  }

  /** Lets go of the oldest where there are too many. */
  tidy(): void {
    if (!existsSync(this.#folder)) return;
    const files = readdirSync(this.#folder).map((name) => join(this.#folder, name));
    if (files.length <= mostKept) return;
    const dated = files
      .flatMap((file) => {
        const stat = statSync(file, { throwIfNoEntry: false });
        return stat ? [{ file, at: stat.mtimeMs }] : [];
      })
      .sort((a, b) => b.at - a.at);
    for (const { file } of dated.slice(mostKept)) rmSync(file, { force: true });
  }
}

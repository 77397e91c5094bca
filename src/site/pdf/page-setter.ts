// A print job -> the bytes of a tagged PDF (PDF/UA-1): Typst with the project's own font, and nothing of the machine's or the network's.
import { readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { NodeCompiler, type NodeError } from "@myriaddreamin/typst-ts-node-compiler";
import type { PrintJob } from "../../paper/print-job.ts";
import { Letters } from "./lacking-letters.ts";
import { leaveSize } from "./leave-size.ts";

const fromRoot = (path: string): string => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

/** The looks that sheets and drawings are set in. */
export const fontFiles: readonly string[] = ["Regular", "It", "Semibold", "SemiboldIt"].map((look) =>
  fromRoot(`node_modules/source-sans/TTF/SourceSans3-${look}.ttf`),
);
/** Named with its version, since another may set the same job otherwise. */
export const typesetter = "@myriaddreamin/typst-ts-node-compiler 0.7.0, PDF/UA-1";
export const templateFile = fromRoot("layouts/paper/sheets.typ");

/** Files are given in memory under this name; nothing is read from there. */
const workspace = join(tmpdir(), "shopleaf-paper");

/** Holds the typesetter with its fonts. One job after the other; the same job gives the same bytes. */
export class PageSetter {
  readonly #compiler = NodeCompiler.create({
    workspace,
    fontArgs: [{ fontBlobs: fontFiles.map((file) => readFileSync(file)) }],
  });
  readonly #template = readFileSync(templateFile, "utf8");
  readonly #letters = new Letters(fontFiles[0] ?? "");

  /** Errors: whatever the typesetter finds or doubts in the job is a fault of ours. */
  async set(job: PrintJob): Promise<Uint8Array> {
    const { data, pictures, isFullSize } = job;
    const lacking = this.#letters.lackingIn(job);
    if (lacking.length > 0) throw new Error(`the font of all paper has no ${lacking.join(" ")}`);
    this.#compiler.resetShadow();
    this.#compiler.mapShadow(join(workspace, "set.json"), Buffer.from(data));
    for (const [path, svg] of pictures) this.#compiler.mapShadow(join(workspace, path), Buffer.from(svg));
    const done = this.#compiler.compile({ mainFileContent: this.#template, resetRead: true });
    this.#refuse(done.takeError());
    this.#refuse(done.takeWarnings());
    const { result } = done;
    if (!result) throw new Error("the typesetter gave no pages");
    const bytes = this.#compiler.pdf(result, { pdfStandard: "ua-1" });
    this.#compiler.evictCache(0);
    return isFullSize ? leaveSize(bytes) : bytes;
  }

  #refuse(error: NodeError | null): void {
    if (!error) return;
    const found: readonly { readonly message?: string }[] = this.#compiler.fetchDiagnostics(error);
    if (found.length > 0) throw new Error(`pages can't be set: ${found.map(({ message }) => message).join("; ")}`);
  }
}

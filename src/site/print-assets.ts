// Assets that are sheets of paper -> PDF files in the site's folder.
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { printJob } from "../paper/print-job.ts";
import type { Printer } from "./pdf/printer.ts";
import type { Asset, Printed } from "./site.ts";

export const isPrinted = (asset: Asset): asset is Printed => "printed" in asset;

export const printAsset = (printer: Printer, { printed, paper }: Printed): Promise<Uint8Array> =>
  printer.print(printJob(printed, paper));

/** One after the other: the typesetter has the whole core while it works. */
export async function printAssets(printer: Printer, assets: readonly Asset[], out: string): Promise<void> {
  for (const asset of assets.filter(isPrinted)) {
    const to = join(out, asset.path);
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, await printAsset(printer, asset));
  }
}

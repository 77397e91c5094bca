// A site -> files in a folder, through Eleventy.
import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import Eleventy from "@11ty/eleventy";
import { drawPreviews } from "./draw-previews.ts";
import { addPages } from "./eleventy.ts";
import { Printer } from "./pdf/printer.ts";
import { printAssets } from "./print-assets.ts";
import type { Asset, Site } from "./site.ts";
import { writePacks } from "./write-packs.ts";

/** Writes what goes in as it is; pictures are left to drawPreviews, since drawing them takes its time. */
export function copyAssets(assets: readonly Asset[], out: string): void {
  for (const asset of assets) {
    const to = join(out, asset.path);
    mkdirSync(dirname(to), { recursive: true });
    if ("from" in asset) copyFileSync(asset.from, to);
    else if ("text" in asset) writeFileSync(to, asset.text);
    else if ("bytes" in asset) writeFileSync(to, asset.bytes);
  }
}

/** Writes the whole site into `out`, which is there and empty. */
export async function writeSite(site: Site, contentFolder: string, out: string): Promise<void> {
  // By its way from here: a folder beside this one whose name starts with this one's name would be taken for one inside it.
  const eleventy = new Eleventy(relative(process.cwd(), contentFolder) || ".", out, {
    configPath: "",
    quietMode: true,
    loader: "esm",
    config: (user) => addPages(user, site.pages),
  });
  eleventy.disableLogger();
  await eleventy.write();
  copyAssets(site.assets, out);
  await drawPreviews(site.assets, out);
  const printer = new Printer();
  await printAssets(printer, site.assets, out);
  await writePacks(printer, site.packs, out);
  printer.tidy();
}

// A site -> files in a folder, through Eleventy.
import { copyFileSync, mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import Eleventy from "@11ty/eleventy";
import { addPages } from "./eleventy.ts";
import type { Asset, Site } from "./site.ts";

/** Copies what goes in as it is. */
export function copyAssets(assets: readonly Asset[], out: string): void {
  for (const { path, from } of assets) {
    mkdirSync(dirname(join(out, path)), { recursive: true });
    copyFileSync(from, join(out, path));
  }
}

/** Writes the whole site into `out`, which is there and empty. */
export async function writeSite(site: Site, contentFolder: string, out: string): Promise<void> {
  const eleventy = new Eleventy(contentFolder, out, {
    configPath: "",
    quietMode: true,
    loader: "esm",
    config: (user) => addPages(user, site.pages),
  });
  eleventy.disableLogger();
  await eleventy.write();
  copyAssets(site.assets, out);
}

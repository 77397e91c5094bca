// A content folder -> its pages as they now are, and as they last were good where something is broken.
import { rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { inReadingOrder, type Problem } from "../problems/problem.ts";
import { forgetOldBatches } from "./batch-pages.tsx";
import { findFiles, isFolder, readContent } from "./content-files.ts";
import { guideProblems } from "./guide-examples.ts";
import { makeSite } from "./make-site.tsx";
import { withoutPolicy } from "./page-html.ts";
import { readPhotos } from "./photos/read-photos.ts";
import { tellProblems } from "./print-json.ts";
import { faultPanel, panelPage, problemPanel, withPanel } from "./problem-panel.tsx";
import { forgetOldPages } from "./shelf-pages.tsx";
import { type Page, parts } from "./site.ts";
import { standIn } from "./stand-in.ts";
import { recipesIn, type WorkedContent, workContent } from "./work-content.ts";
import { forgetOldRecipes } from "./work-recipe.ts";
import { copyAssets } from "./write-site.ts";

/** Packs and PDFs are for selling and printing, not for writing: they are made by the build. */
const live = parts.filter((part) => part !== "packs");
const withoutPaper = (worked: WorkedContent): WorkedContent =>
  worked.shop ? { ...worked, shop: { ...worked.shop, papers: [] } } : worked;

/** The pages as they now are; remembers the last good state of each recipe. */
export class LivePages {
  #good: WorkedContent | undefined;
  #pages: readonly Page[] = [];
  #made = "";
  #photos: Awaited<ReturnType<typeof readPhotos>> = { photos: [], problems: [] };
  readonly #folder: string;
  readonly #out: string;

  constructor(folder: string, out: string) {
    this.#folder = folder;
    this.#out = out;
  }

  /** The state of the files that the pages were made from, and the state they are in now. */
  get made(): string {
    return this.#made;
  }
  onDisk(): string {
    return fingerprint(this.#folder);
  }

  /** Photographs take their time: they are looked at before the pages are made. */
  async lookAtPhotos(): Promise<void> {
    const { content } = readContent(this.#folder);
    this.#photos = await readPhotos(this.#folder, recipesIn(content, workContent(content)));
  }

  /** Never throws: a fault of our own is shown like a problem, so that the server lives on. */
  make(): readonly Page[] {
    const started = performance.now();
    this.#made = this.onDisk();
    let panel = "";
    try {
      const problems = this.#work();
      if (problems.length > 0) {
        tellProblems(problems);
        panel = problemPanel(problems);
      } else {
        const seconds = ((performance.now() - started) / 1000).toFixed(2);
        process.stdout.write(`${this.#pages.length} pages made in ${seconds} s\n`);
      }
    } catch (error) {
      const says = error instanceof Error ? error.message : String(error);
      process.stderr.write(`Shopleaf itself failed: ${says}\n`);
      panel = faultPanel(says);
    }
    if (panel === "") return this.#pages;
    if (this.#pages.length === 0) return [{ path: "index.html", html: panelPage(panel) }];
    return this.#pages.map(({ path, html }) => ({ path, html: withPanel(html, panel) }));
  }

  #work(): readonly Problem[] {
    const { content, problems: reading } = readContent(this.#folder);
    const worked = workContent(content);
    forgetOldRecipes();
    forgetOldPages();
    forgetOldBatches();
    const shown = standIn(worked, this.#good);
    if (shown) {
      const site = makeSite(withoutPaper(shown), content.guide, live, this.#photos.photos);
      copyAssets(site.assets, this.#out);
      const kept = new Set(site.pages.map(({ path }) => path));
      for (const { path } of this.#pages) if (!kept.has(path)) rmSync(join(this.#out, path), { force: true });
      this.#good = shown;
      this.#pages = site.pages.map(({ path, html }) => ({ path, html: withoutPolicy(html) }));
    }
    return inReadingOrder([
      ...reading,
      ...worked.problems,
      ...this.#photos.problems,
      ...guideProblems(content.guide, worked),
    ]);
  }
}

const photoEndings = ["jpg", "jpeg", "png", "webp", "tif", "tiff", "avif"].flatMap((end) => [
  `.${end}`,
  `.${end.toUpperCase()}`,
]);

/** Names, sizes and times of all files the site is made from. */
function fingerprint(folder: string): string {
  if (!isFolder(folder)) return "";
  return findFiles(folder, [".md", ".yaml", ".yml", ".svg", ...photoEndings])
    .map((file) => {
      const stat = statSync(file, { throwIfNoEntry: false });
      return `${file} ${stat?.size} ${stat?.mtimeMs}`;
    })
    .join("\n");
}

// A content folder -> live pages in the browser, made again at each change, with the problems on them.
import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Eleventy from "@11ty/eleventy";
import { inReadingOrder, type Problem } from "../problems/problem.ts";
import { findFiles, isFolder, readContent, startOf } from "./content-files.ts";
import { addPages } from "./eleventy.ts";
import { guideProblems } from "./guide-examples.ts";
import { makeSite } from "./make-site.tsx";
import { withoutPolicy } from "./page-html.ts";
import { tellProblems } from "./print-json.ts";
import { faultPanel, panelPage, problemPanel, withPanel } from "./problem-panel.tsx";
import { forgetOldPages } from "./shelf-pages.tsx";
import { type Page, parts } from "./site.ts";
import { standIn } from "./stand-in.ts";
import { type WorkedContent, workContent } from "./work-content.ts";
import { forgetOldRecipes } from "./work-recipe.ts";
import { copyAssets } from "./write-site.ts";
import { WrongCall } from "./wrong-call.ts";

/** The server's own greeting is left out. One object for good: the server starts anew where its options change. */
const serverOptions = { messageOnStart: () => "" };

/** Runs until it is stopped; answers with the exit code. */
export async function watchSite(folder: string, port: number): Promise<number> {
  if (!isFolder(folder)) throw new WrongCall(`there is no content folder ${startOf(folder).file}`);
  const out = mkdtempSync(join(tmpdir(), "shopleaf-"));
  const live = new LivePages(folder, out);
  const eleventy = new Eleventy(folder, out, {
    configPath: "",
    quietMode: true,
    runMode: "serve",
    loader: "esm",
    config: (user) => {
      addPages(user, live.make());
      user.addWatchTarget(folder, { resetConfig: true });
      user.setServerOptions(serverOptions);
    },
  });
  eleventy.disableLogger();
  const stopped = new Promise<number>((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve(0));
  });
  await eleventy.init();
  const buildAgain = await eleventy.watch();
  await eleventy.serve(port);
  await eleventy.eleventyServe.server.ready();
  process.stdout.write(`Live at ${eleventy.eleventyServe.server.getServerUrl("localhost")} (Ctrl+C ends it)\n`);
  // Eleventy hears of no deleted file, and of a file saved while it builds only half; this catches both.
  const look = setInterval(() => {
    if (!eleventy.watchManager.isBuildRunning() && live.isStale()) void buildAgain(join(folder, "recipes"));
  }, 400);
  const code = await stopped;
  clearInterval(look);
  await eleventy.stopWatch();
  rmSync(out, { recursive: true, force: true });
  return code;
}

/** The pages as they now are; remembers the last good state of each recipe. */
class LivePages {
  #good: WorkedContent | undefined;
  #pages: readonly Page[] = [];
  #print = "";
  readonly #folder: string;
  readonly #out: string;

  constructor(folder: string, out: string) {
    this.#folder = folder;
    this.#out = out;
  }

  /** Whether the files have changed since the pages were made. */
  isStale(): boolean {
    return fingerprint(this.#folder) !== this.#print;
  }

  /** Never throws: a fault of our own is shown like a problem, so that the server lives on. */
  make(): readonly Page[] {
    const started = performance.now();
    this.#print = fingerprint(this.#folder);
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
    const shown = standIn(worked, this.#good);
    if (shown) {
      const site = makeSite(shown, content.guide, parts);
      copyAssets(site.assets, this.#out);
      const kept = new Set(site.pages.map(({ path }) => path));
      for (const { path } of this.#pages) if (!kept.has(path)) rmSync(join(this.#out, path), { force: true });
      this.#good = shown;
      this.#pages = site.pages.map(({ path, html }) => ({ path, html: withoutPolicy(html) }));
    }
    return inReadingOrder([...reading, ...worked.problems, ...guideProblems(content.guide, worked)]);
  }
}

/** Names, sizes and times of all files the site is made from. */
function fingerprint(folder: string): string {
  if (!isFolder(folder)) return "";
  return findFiles(folder, [".md", ".yaml", ".yml"])
    .map((file) => {
      const stat = statSync(file, { throwIfNoEntry: false });
      return `${file} ${stat?.size} ${stat?.mtimeMs}`;
    })
    .join("\n");
}

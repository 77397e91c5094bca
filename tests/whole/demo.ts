// The demo, built by the real command into a folder of its own, and what is asked of its pages.
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

export const root = resolve(import.meta.dirname, "../..");

export const newFolder = (): string => mkdtempSync(join(tmpdir(), "shopleaf-test-"));

/** A copy of the demo's content that a test may change. */
export function copyContent(): string {
  const folder = join(newFolder(), "content");
  cpSync(join(root, "content"), folder, { recursive: true });
  return folder;
}

/** The same with two small recipes alone and without orders: where a test is not about the goods themselves. */
export function copySmallContent(): string {
  const folder = copyContent();
  const kept = ["stall-price-ladder.md", "seedling-hardening-rack.md"];
  for (const name of readdirSync(join(folder, "recipes")))
    if (!kept.includes(name)) rmSync(join(folder, "recipes", name), { recursive: true });
  rmSync(join(folder, "orders"), { recursive: true, force: true });
  return folder;
}

export type Told = { readonly code: number | null; readonly out: string; readonly err: string };

/** The command as a maker calls it, from the folder `cwd`. */
export function shopleaf(words: readonly string[], cwd = root): Told {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, "src/shopleaf.js"), ...words], {
    cwd,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  return { code: status, out: stdout, err: stderr };
}

/** Builds a content folder into `out`; a build that fails is a fault of the test. */
export function buildInto(out: string, content: string): string {
  const told = shopleaf(["build", "--content", content, "--out", out]);
  if (told.code !== 0) throw new Error(`the build ended with ${told.code}:\n${told.err}`);
  return out;
}

/** Paths of all files below a folder, sorted, with `/`. */
export const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => name.replaceAll("\\", "/"))
    .sort();

/** Every file with its bytes, to compare two sites. */
export const bytesIn = (folder: string): ReadonlyMap<string, string> =>
  new Map(filesIn(folder).map((name) => [name, readFileSync(join(folder, name)).toString("latin1")]));

/** What a page points at: every href and src in it but its own address. */
export const pointersIn = (html: string): string[] =>
  [
    ...html
      .replace(/<link rel="canonical"[^>]*>/g, "")
      .matchAll(/<[^>]*?\s(?:href|src|xlink:href|srcset|action|data|poster)="([^"]*)"/g),
  ].flatMap(([, to = ""]) => to.split(", ").map((one) => one.replace(/ \d+w$/, "")));

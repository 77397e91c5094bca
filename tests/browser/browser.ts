// A browser for tests: the packaged one on Linux, or the one SHOPLEAF_BROWSER names; nothing of the system is needed.
import { existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { setTimeout } from "node:timers/promises";
import { pathToFileURL } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";

const root = resolve(import.meta.dirname, "../..");
const cache = join(root, ".cache/browser");

/** Without system fonts the packaged browser leaves out all text: it is given the shop's own face. */
function writeFontSettings(): string {
  const file = join(cache, "fonts.conf");
  writeFileSync(
    file,
    `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(root, "node_modules/source-sans/TTF")}</dir>
  <cachedir>${join(cache, "fonts")}</cachedir>
</fontconfig>
`,
  );
  return file;
}

/** One test file at a time unpacks the browser; the others wait, so that none starts half of it. */
async function unpacked(unpack: () => Promise<string>): Promise<string> {
  const [lock, done] = [join(cache, "unpacking"), join(cache, "unpacked")];
  if (existsSync(done)) return unpack();
  try {
    mkdirSync(lock);
  } catch {
    for (let waited = 0; !existsSync(done) && waited < 300; waited++) await setTimeout(200);
    return unpack();
  }
  try {
    return await unpack();
  } finally {
    writeFileSync(done, "");
    rmSync(lock, { recursive: true });
  }
}

/** `more`: words for the browser's own command line. */
export async function openBrowser(more: readonly string[] = []): Promise<Browser> {
  const own = process.env.SHOPLEAF_BROWSER;
  if (own) return chromium.launch({ executablePath: own, args: [...more] });
  mkdirSync(cache, { recursive: true });
  // Read at import: where the browser is unpacked to, and that its own libraries come along.
  process.env.TMPDIR = cache;
  process.env.AWS_EXECUTION_ENV = "AWS_Lambda_nodejs20.x";
  process.env.FONTCONFIG_FILE = writeFontSettings();
  const { default: packaged } = await import("@sparticuz/chromium");
  packaged.setGraphicsMode = false;
  return chromium.launch({
    executablePath: await unpacked(() => packaged.executablePath()),
    // In one process the whole browser ends with the first window that is closed.
    args: [...packaged.args.filter((arg) => arg !== "--single-process" && arg !== "--no-zygote"), ...more],
    env: { ...process.env, FONTCONFIG_FILE: process.env.FONTCONFIG_FILE },
  });
}

export type Opened = { readonly page: Page; readonly complaints: readonly string[] };

/** A file of a site, opened from disk as a reader does; `complaints` are the browser's own errors while it loads. */
export async function openPage(browser: Browser, file: string, width: number, scripts: boolean): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width, height: 900 }, javaScriptEnabled: scripts });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("requestfailed", (request) => complaints.push(`${request.url()}: ${request.failure()?.errorText}`));
  page.on("request", (request) => {
    if (!/^(file|data):/.test(request.url())) complaints.push(`asks the network for ${request.url()}`);
  });
  await page.goto(pathToFileURL(file).href);
  return { page, complaints };
}

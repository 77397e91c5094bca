// The demo's store over HTTP -> Lighthouse's four scores of three pages, phone and slow network as it takes them by itself. Ends with 1 where one is under 95.
import { createReadStream, mkdtempSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { extname, join, normalize } from "node:path";
import { createGzip } from "node:zlib";
import lighthouse from "lighthouse";
import { openBrowser } from "../browser/browser.ts";
import { root, shopleaf } from "../whole/demo.ts";

const least = 0.95;
const pages = ["index.html", "goods/hose-and-pot-corral.html", "lines/fence-board-line.html"];
const categories = ["performance", "accessibility", "best-practices", "seo"] as const;

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".webp": "image/webp",
  ".woff2": "font/woff2",
  ".xml": "application/xml",
  ".txt": "text/plain",
};

const site = join(mkdtempSync(join(tmpdir(), "shopleaf-test-")), "_site");
const built = shopleaf(["build", "--only", "store", "--content", join(root, "content"), "--out", site]);
if (built.code !== 0) throw new Error(`the build ended with ${built.code}:\n${built.err}`);
const store = join(site, "store");

/** As a usual host serves it: compressed text, files that keep for a year. */
const server = createServer((request, answer) => {
  const path = join(store, normalize(decodeURIComponent(new URL(request.url ?? "/", "http://x").pathname)));
  const file = path.endsWith("/") ? `${path}index.html` : path;
  if (!statSync(file, { throwIfNoEntry: false })?.isFile()) {
    answer.writeHead(404).end();
    return;
  }
  const isText = [".html", ".css", ".svg", ".xml", ".txt"].includes(extname(file));
  answer.writeHead(200, {
    "content-type": types[extname(file)] ?? "application/octet-stream",
    "cache-control": extname(file) === ".html" ? "no-cache" : "public, max-age=31536000",
    ...(isText ? { "content-encoding": "gzip" } : {}),
  });
  const from = createReadStream(file);
  if (isText) from.pipe(createGzip()).pipe(answer);
  else from.pipe(answer);
});
await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
const { port } = server.address() as AddressInfo;

const debugging = 9333;
const browser = await openBrowser([`--remote-debugging-port=${debugging}`]);
let bad = 0;
for (const page of pages) {
  const run = await lighthouse(`http://127.0.0.1:${port}/${page}`, {
    port: debugging,
    logLevel: "error",
    output: "json",
  });
  if (!run) throw new Error(`nothing came of ${page}`);
  const scores = categories.map((name) => ({ name, score: run.lhr.categories[name]?.score ?? 0 }));
  process.stdout.write(
    `${page}: ${scores.map(({ name, score }) => `${name} ${Math.round(score * 100)}`).join(", ")}\n`,
  );
  bad += scores.filter(({ score }) => score < least).length;
  for (const { name } of scores.filter(({ score }) => score < 1))
    for (const { id, weight } of run.lhr.categories[name]?.auditRefs ?? []) {
      const audit = run.lhr.audits[id];
      if (weight > 0 && audit && audit.score !== null && audit.score < 0.9)
        process.stdout.write(`  ${name}: ${audit.title} ${audit.displayValue ?? ""}\n`);
    }
}
await browser.close();
server.close();
process.exit(bad === 0 ? 0 : 1);

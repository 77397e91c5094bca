// Every page of the built demo -> pictures for people to look at: phone, desk and paper, in .cache/looks.
import { execFileSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { buildInto, filesIn, root } from "../whole/demo.ts";
import { openBrowser, openPage } from "./browser.ts";
import { papers, pdfOf } from "./paper.ts";

const looks = join(root, ".cache/looks");
const site = join(root, ".cache/looks-site");
const only = process.argv[2] ?? "";

rmSync(looks, { recursive: true, force: true });
mkdirSync(looks, { recursive: true });
buildInto(site, join(root, "content"));
const browser = await openBrowser();
for (const name of filesIn(site).filter((file) => file.endsWith(".html") && file.includes(only))) {
  const base = join(looks, name.replaceAll("/", "--").replace(/\.html$/, ""));
  for (const [size, width] of [
    ["phone", 360],
    ["desk", 1280],
  ] as const) {
    const { page } = await openPage(browser, join(site, name), width, true);
    await page.screenshot({ path: `${base}.${size}.png`, fullPage: true });
    await page.context().close();
  }
  const { page } = await openPage(browser, join(site, name), 1280, true);
  for (const paper of Object.values(papers)) {
    const file = `${base}.${paper.format}`;
    writeFileSync(`${file}.pdf`, await pdfOf(page, paper));
    try {
      execFileSync("pdftoppm", ["-r", "60", "-png", `${file}.pdf`, file]);
    } catch {
      process.stderr.write(`no pdftoppm here: ${file}.pdf stays as it is\n`);
    }
  }
  await page.context().close();
}
await browser.close();
process.stdout.write(`${looks}\n`);

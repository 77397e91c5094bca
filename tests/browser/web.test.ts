// Data for machines in a real browser: nothing of it runs, whatever a maker writes, and the policy has nothing to complain of.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { buildInto, copyContent, filesIn, newFolder } from "../whole/demo.ts";
import { openBrowser, openPage } from "./browser.ts";

const hostile = `</script><script>document.title = "ran"; globalThis.ran = 1</script><img src=x onerror="globalThis.ran = 1">`;
/** A title has at most 80 letters. */
const title = `Peg</script><script>ran=1</script>"><svg onload=ran=1> rail`;

const recipe = `---
title: '${title}'
class: D
line: '${hostile}'
listed: 2026-10-08
purpose: '${hostile}'
overall: 12 x fit x 18
pieces:
  strip: fence board, ripped to 2 1/2
stand:
  sign: 1 strip, on edge, from left to right, at front, top at top
  stake: 1 strip, upright, facing front, from bottom to 17, against back of sign, centred
joins:
  stake to sign: 2 screw No. 6 x 1, back
finish:
  plain: none
---
A marker, {width} wide. ${hostile.replaceAll("x onerror", "y onerror")}

## Put it together

1. Lay the **sign** down.
2. Screw the **stake** across it.
`;

let site: string;
let browser: Awaited<ReturnType<typeof openBrowser>>;
beforeAll(async () => {
  const content = copyContent();
  for (const name of readdirSync(join(content, "recipes"))) rmSync(join(content, "recipes", name), { recursive: true });
  for (const folder of ["guide", "orders"]) rmSync(join(content, folder), { recursive: true });
  mkdirSync(join(content, "recipes"), { recursive: true });
  writeFileSync(join(content, "recipes/peg.md"), recipe);
  const file = join(content, "shop", readdirSync(join(content, "shop"))[0] ?? "");
  const shop = readFileSync(file, "utf8");
  writeFileSync(
    file,
    shop.replace(
      /^(name|tagline|notice|place|contact|ordering|care-note): .*$/gm,
      (_, key: string) => `${key}: '${hostile}'`,
    ),
  );
  site = buildInto(join(newFolder(), "_site"), content);
  browser = await openBrowser();
}, 120_000);
afterAll(async () => {
  await browser.close();
});

it("hostile words in title, line, purpose, intro and shop stay words on every page; nothing runs, nothing is complained of", async () => {
  const pages = filesIn(site).filter((name) => name.endsWith(".html"));
  expect(pages.filter((name) => name.startsWith("store/goods/"))).toHaveLength(1);
  expect(pages.filter((name) => name.startsWith("binder/listings/"))).toHaveLength(1);
  for (const name of pages) {
    const { page, complaints } = await openPage(browser, join(site, name), 1280, true);
    expect(complaints, name).toEqual([]);
    expect(await page.evaluate("typeof globalThis.ran"), name).toBe("undefined");
    expect(await page.evaluate("document.querySelectorAll('img, [onerror], [onload]').length"), name).toBe(0);
    expect(
      await page.evaluate("document.querySelectorAll('script:not([type=\"application/ld+json\"])').length"),
      name,
    ).toBe(0);
    await page.context().close();
  }
}, 120_000);

it("the data of the product page is read back as it was written", async () => {
  const name = filesIn(site).find((file) => file.startsWith("store/goods/")) ?? "";
  const { page } = await openPage(browser, join(site, name), 1280, true);
  const data = JSON.parse((await page.evaluate("document.querySelector('script').textContent")) as string) as Record<
    string,
    unknown
  >;
  expect(data).toMatchObject({ "@type": "Product", name: title, category: hostile, description: hostile });
  expect(data.width).toEqual({ "@type": "QuantitativeValue", value: 12, unitCode: "INH" });
  const meta = await page.evaluate("document.querySelector('meta[property=\"og:title\"]').content");
  expect(meta).toBe(title);
  await page.context().close();
});

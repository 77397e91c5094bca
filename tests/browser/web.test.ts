// Hostile words in every field a maker can write, in a real browser: shown as text or refused; nothing runs, asks the network or leaves the site.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildInto, copyContent, filesIn, newFolder, shopleaf } from "../whole/demo.ts";
import { openBrowser } from "./browser.ts";

/** Ends an element, a script, an attribute of either kind, a style, a comment; loads, runs, leaves. `'` is doubled for YAML. */
const hostile = `</script><script>document.title = "ran"; globalThis.ran = 1; alert(1)</script>"''><img src=x onerror="globalThis.ran=1"><svg onload=ran=1><style>@import url(https://evil.example/)</style><iframe src="https://evil.example"></iframe><a href="javascript:ran=1">x</a><!-- {{7*7}} {% x %} \${7*7} ../../../etc/passwd`;
const shown = hostile.replaceAll("''", "'");
/** A title has at most 80 letters. */
const title = `../../Peg</script><script>ran=1</script>"><svg onload=ran=1> rail`;

const recipe = `---
title: '${title}'
class: D C F X
line: '../${hostile}'
listed: 2026-10-08
availability: ready now 2
for: children
price: 48.00
notes: '${hostile}'
purpose: '${hostile}'
photos:
  1: '${hostile}'
overall: 12 x fit x 18
pieces:
  strip: fence board, ripped to 2 1/2
stand:
  sign: 1 strip, on edge, from left to right, at front, top at top
  stake: 1 strip, upright, facing front, from bottom to 17, against back of sign, centred
fittings:
  kit: 1 anchor kit, loose
text:
  words: sign, 1/2 high, on front, saying <b>A</b>
record:
  2026-01-02: 2 made, all 90
comparables:
  '${hostile.replaceAll("{", "").replaceAll("}", "")}': 40.00, 2026-01-02
joins:
  stake to sign: 2 screw No. 6 x 1, back
evidence:
${["finish", "edges", "small parts", "gaps", "tip", "tracking label", "certificate", "food"]
  .map((kind) => `  ${kind}: '${hostile}'`)
  .join("\n")}
finish:
  plain: none
  oiled: 1 coat oil on all
---
A marker, {width} wide. ${shown.replace(/[{}]/g, "").replaceAll("x onerror", "y onerror")} <b>bold</b>

## Put it together ${shown.slice(0, 60)}

1. Lay the **sign** down. ${shown.slice(0, 90)}
2. Screw the **stake** across it.

   Caution: ${shown.slice(0, 90)}
`;

const orders = `'<img src=x onerror=ran=1> ../7':
  item: '${title}'
  saying: <i onclick=ran=1>B</i>
  due: 2026-12-05
  approved: no
  price: 40.00
  notes: '${hostile}'
`;

/** The words that a yard file shows to buyers, all of them made hostile. */
const hostileYard = (text: string): string =>
  text.replace(
    /^( +)(words|care|method|source): .*$/gm,
    (_, blanks: string, key: string) => `${blanks}${key}: '${hostile}'`,
  );

let content: string;
let site: string;
let browser: Awaited<ReturnType<typeof openBrowser>>;
beforeAll(async () => {
  content = copyContent();
  for (const folder of ["recipes", "guide", "orders"]) rmSync(join(content, folder), { recursive: true, force: true });
  mkdirSync(join(content, "recipes"));
  writeFileSync(join(content, "recipes/peg.md"), recipe);
  mkdirSync(join(content, "orders"));
  writeFileSync(join(content, "orders/peg.yaml"), orders);
  for (const name of readdirSync(join(content, "yard"))) {
    const file = join(content, "yard", name);
    writeFileSync(file, hostileYard(readFileSync(file, "utf8")));
  }
  const file = join(content, "shop", readdirSync(join(content, "shop"))[0] ?? "");
  const keys = "name|tagline|notice|place|contact|ordering|about|pickup|delivery|returns|care-note|notes";
  const shop = readFileSync(file, "utf8");
  writeFileSync(
    file,
    shop.replace(new RegExp(`^(${keys}): .*$`, "gm"), (_, key: string) =>
      key === "contact" ? `${key}: '${hostile} yard@shop.example?bcc=thief@evil.example'` : `${key}: '${hostile}'`,
    ),
  );
  const slug = "peg-script-script-ran-1-script-svg-onload-ran-1-rail";
  mkdirSync(join(content, "photos", slug), { recursive: true });
  const photo = sharp({ create: { width: 600, height: 600, channels: 3, background: "#777777" } });
  const exif = { IFD0: { ImageDescription: shown, Copyright: shown } };
  writeFileSync(join(content, "photos", slug, "01-plain.jpg"), await photo.withExif(exif).jpeg().toBuffer());
  site = buildInto(join(newFolder(), "_site"), content);
  browser = await openBrowser();
}, 240_000);
afterAll(async () => {
  await browser.close();
});

/** Opens a page with its scripts allowed and tells everything that happens on it. */
async function watched(name: string) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  const told: string[] = [];
  const inside = pathToFileURL(`${site}/`).href;
  page.on("console", (message) => told.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => told.push(`error: ${error.message}`));
  page.on("dialog", (dialog) => {
    told.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on("requestfailed", (request) => told.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    if (!request.url().startsWith(inside) && !request.url().startsWith("data:")) told.push(`asks: ${request.url()}`);
  });
  page.on("popup", (popup) => told.push(`opens ${popup.url()}`));
  await page.goto(pathToFileURL(join(site, name)).href);
  // What loads late has to be reached: every picture is scrolled to.
  await page.evaluate("for (const img of document.images) img.scrollIntoView()");
  await page.waitForLoadState("networkidle");
  return { page, told, close: () => context.close() };
}

it("hostile words in every field stay words on every page: nothing runs, asks, opens or is complained of", async () => {
  const pages = filesIn(site).filter((name) => name.endsWith(".html"));
  const storePages = pages.filter((name) => name.startsWith("store/"));
  expect(storePages.map((name) => name.split("/")[1]).sort()).toEqual(
    ["about.html", "care", "care", "care.html", "goods", "index.html", "lines", "spares"].sort(),
  );
  for (const name of pages) {
    const { page, told, close } = await watched(name);
    expect(told, name).toEqual([]);
    expect(await page.evaluate("typeof globalThis.ran"), name).toBe("undefined");
    expect(await page.title(), name).not.toBe("ran");
    const asked = (selector: string) => page.evaluate(`document.querySelectorAll(${JSON.stringify(selector)}).length`);
    expect(await asked("[onerror], [onload], iframe, body style, base, object, embed"), name).toBe(0);
    expect(await asked("a[href^='javascript' i], a[href^='http' i], img[src^='http' i]"), name).toBe(0);
    expect(await asked("script:not([type='application/ld+json'])"), name).toBe(0);
    await close();
  }
}, 240_000);

it("the product page shows the hostile words as they were typed: purpose, wood, finish, care, terms, photograph", async () => {
  const name = filesIn(site).find((file) => file.startsWith("store/goods/")) ?? "";
  const { page, close } = await watched(name);
  const words = ((await page.evaluate("document.body.textContent")) as string).replace(/\s+/g, " ");
  const plain = shown.replace(/\s+/g, " ");
  expect(words.split(plain).length - 1).toBeGreaterThan(8);
  const alts = (await page.evaluate("[...document.images].map((one) => one.alt)")) as string[];
  expect(alts.filter((alt) => alt.includes(shown)).length).toBeGreaterThan(0);
  // The letter goes to the first address that the shop names and to nobody else.
  const letters = (await page.evaluate(
    "[...document.querySelectorAll('a[href^=mailto]')].map((a) => a.href)",
  )) as string[];
  expect(letters).toHaveLength(2);
  for (const letter of letters) {
    expect(letter.split("?")[0]).toBe("mailto:yard@shop.example");
    expect(letter.match(/[?&]/g)).toEqual(["?", "&"]);
    expect(letter).not.toMatch(/thief|[<>"\s]/);
  }
  await close();
});

it("the data of the product page is read back as it was written", async () => {
  const name = filesIn(site).find((file) => file.startsWith("store/goods/")) ?? "";
  const { page, close } = await watched(name);
  const data = JSON.parse((await page.evaluate("document.querySelector('script').textContent")) as string) as Record<
    string,
    unknown
  >;
  expect(data).toMatchObject({ "@type": "Product", name: title, category: `../${shown}`, description: shown });
  expect(data.width).toEqual({ "@type": "QuantitativeValue", value: 12, unitCode: "INH" });
  const meta = await page.evaluate("document.querySelector('meta[property=\"og:title\"]').content");
  expect(meta).toBe(title);
  await close();
});

it("no file's path has anything of the hostile title or line but letters, digits and hyphens; drawings hold no script", () => {
  for (const name of filesIn(site)) {
    expect(name).toMatch(/^[\w./-]+$/);
    expect(name).not.toContain("..");
    if (!name.endsWith(".svg")) continue;
    const tags = readFileSync(join(site, name), "utf8").match(/<[^>]*>/g) ?? [];
    const foreign = tags.filter((tag) => /^<(?!\/?(svg|title|desc|path|rect|g|text)\b)| on\w+=|href=|url\(/i.test(tag));
    expect(foreign, name).toEqual([]);
  }
  for (const name of filesIn(join(site, "store/photos")))
    expect(readFileSync(join(site, "store/photos", name)).toString("latin1"), name).not.toContain("evil.example");
});

describe("what can't be shown is refused, and nothing is built", () => {
  const refused = (file: string, change: (text: string) => string | Buffer): string => {
    const copy = copyContent();
    const path = join(copy, file);
    const text = readFileSync(path, "utf8");
    const changed = change(text);
    expect(changed).not.toBe(text);
    writeFileSync(path, changed);
    const { code, err } = shopleaf(["problems", copy]);
    expect(code).toBe(1);
    return err;
  };
  const corral = "recipes/hose-and-pot-corral.md";
  const bidi = "\u202e";

  it.each([
    [
      "a mark that turns the reading direction in a purpose",
      corral,
      (text: string) => text.replace("Keeps a hose", `Keeps ${bidi}a hose`),
    ],
    [
      "the same in the shop's words",
      "shop/shop.yaml",
      (text: string) => text.replace("tagline: Plain", `tagline: ${bidi}Plain`),
    ],
    ["the same in a finish's care", "yard/finishes.yaml", (text: string) => text.replace(/care: /, `care: ${bidi}`)],
    [
      "the same spelt as a number",
      "shop/shop.yaml",
      (text: string) => text.replace(/tagline: .*/, 'tagline: "Plain \\u202e goods"'),
    ],
  ])("%s", (_, file, change) => expect(refused(file, change)).toMatch(/reading-direction/), 60_000);

  it.each([corral, "shop/shop.yaml", "yard/boards.yaml"])(
    "broken UTF-8 in %s",
    (file) => {
      const broken = (text: string) => Buffer.concat([Buffer.from(text), Buffer.from([0xc3, 0x28, 0xff, 0x0a])]);
      expect(refused(file, broken)).toMatch(/not plain text in UTF-8/);
    },
    60_000,
  );

  it("a title of dots and slashes alone has no address", () => {
    expect(refused(corral, (text) => text.replace(/^title: .*/m, "title: ../../.."))).toMatch(/title/);
  }, 60_000);

  it("a link or a picture from elsewhere in the intro", () => {
    for (const link of ["[here](https://evil.example)", "![there](https://evil.example/x.png)"])
      expect(refused(corral, (text) => text.replace("A low slatted", `${link} A low slatted`))).toMatch(
        /link or a picture/,
      );
  }, 60_000);

  it("an address that runs a script or leads elsewhere is no web address", () => {
    const change = (text: string) => text.replace(/^address: .*/m, "address: javascript:alert(1)//");
    expect(refused("shop/shop.yaml", change)).toMatch(/address/);
  }, 60_000);
});

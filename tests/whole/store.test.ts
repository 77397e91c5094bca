// The store of the demo as it is published, alone: its weight, its pictures, its links within a page, what can be sifted.
import { cpSync, mkdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { beforeAll, expect, it } from "vitest";
import { filesIn, newFolder, root, shopleaf } from "./demo.ts";
import { demoSite } from "./demo-site.ts";

let store: string;
let pages: { readonly name: string; readonly html: string }[];
beforeAll(() => {
  store = join(demoSite(), "store");
  pages = filesIn(store)
    .filter((name) => name.endsWith(".html"))
    .map((name) => ({ name, html: readFileSync(join(store, name), "utf8") }));
}, 240_000);

/** Files that a page shows or is dressed with, each once. */
const filesOf = (name: string, html: string): string[] => [
  ...new Set(
    [...html.matchAll(/<(?:img[^>]* src|link rel="stylesheet" href)="([^"]+)"/g)].map(([, to = ""]) =>
      normalize(join(dirname(name), to)),
    ),
  ),
];
const weightOf = (name: string): number => statSync(join(store, name)).size;

it("every page, with its style sheets and all its drawings, uncompressed, is under 100 kB; the type faces are kept by the browser", () => {
  for (const { name, html } of pages) {
    const kilobytes = [name, ...filesOf(name, html)].reduce((sum, file) => sum + weightOf(file), 0) / 1000;
    expect(kilobytes, name).toBeLessThan(100);
  }
});

it("no drawing lies there that no page shows", () => {
  const shown = new Set(pages.flatMap(({ name, html }) => filesOf(name, html)));
  expect(filesIn(join(store, "drawings")).filter((name) => !shown.has(`drawings/${name}`))).toEqual([]);
});

it("every picture has its size and its words", () => {
  const images = pages.flatMap(({ html }) => html.match(/<img [^>]*>/g) ?? []);
  expect(images.length).toBeGreaterThan(40);
  for (const image of images) expect(image).toMatch(/ width="\d+" height="\d+" alt="[^"]{20,}"/);
});

it("every figure that says how one knows leads to where it is told, and every such place is led to", () => {
  for (const { name, html } of pages) {
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    const asked = [...html.matchAll(/href="#([^"]+)"/g)].map(([, id = ""]) => id);
    expect(new Set(ids).size, name).toBe(ids.length);
    expect(
      asked.filter((id) => !ids.includes(id)),
      name,
    ).toEqual([]);
    const origins = ids.filter((id) => id?.startsWith("from-") && id !== "from-cautions");
    expect(
      origins.filter((id) => !asked.includes(id ?? "")),
      name,
    ).toEqual([]);
    if (name.startsWith("goods/")) expect(origins.length, name).toBeGreaterThan(3);
  }
});

it("each answer on the first page lets through some goods and not all; the style sheet knows a rule for each", () => {
  const html = pages.find(({ name }) => name === "index.html")?.html ?? "";
  const style = readFileSync(join(store, "assets/store.css"), "utf8");
  const goods = [...html.matchAll(/<li class="good ([^"]*)"/g)].map(([, fits = ""]) => fits.split(" "));
  const answers = [...html.matchAll(/<input [^>]*id="([^"]+)"/g)]
    .map(([, id = ""]) => id)
    .filter((id) => !id.endsWith("-0"));
  expect(answers.length).toBeGreaterThan(8);
  for (const id of answers) {
    const through = goods.filter((fits) => fits.includes(id)).length;
    expect([through > 0, through < goods.length], id).toEqual([true, true]);
    expect(style).toContain(`main:has(#${id}:checked) .good:not(.${id})`);
  }
});

it("robots, map and feed stand at its root, and the map has every page but the cards", () => {
  const map = readFileSync(join(store, "sitemap.xml"), "utf8");
  const told = [...map.matchAll(/<loc>https:\/\/[^/]+\/([^<]*)<\/loc>/g)].map(([, path = ""]) => path || "index.html");
  expect(told.sort()).toEqual(
    pages
      .map(({ name }) => name)
      .filter((name) => !name.startsWith("care/"))
      .sort(),
  );
  expect(readFileSync(join(store, "robots.txt"), "utf8")).toMatch(/^User-agent: \*\nAllow: \/\n\nSitemap: https:/);
  expect(statSync(join(store, "feed.xml")).isFile()).toBe(true);
});

it("a content folder beside the folder one stands in, whose name goes on from that one's name, is built too", () => {
  const folder = newFolder();
  mkdirSync(join(folder, "shop"));
  cpSync(join(root, "content"), join(folder, "shop-two"), { recursive: true });
  for (const name of filesIn(join(folder, "shop-two/recipes")))
    if (name !== "tapered-herb-planter.md") rmSync(join(folder, "shop-two/recipes", name));
  rmSync(join(folder, "shop-two/orders"), { recursive: true });
  const words = ["build", "--only", "store", "--content", join(folder, "shop-two"), "--out", join(folder, "out")];
  expect(shopleaf(words, join(folder, "shop")).err).toBe("");
}, 120_000);

// The wall: a word of its own in every private field of recipe, yard and shop, and not one of them on the store's shelf.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { parseDocument } from "yaml";
import type { z } from "zod";
import { elementOf, shapeOf } from "../../src/problems/tree-shape.ts";
import { frontMatterSchema } from "../../src/recipe/front-matter.ts";
import { ordersSchema } from "../../src/yard/order-schema.ts";
import { shopSchema } from "../../src/yard/shop-schema.ts";
import { yardSchema } from "../../src/yard/yard-schema.ts";
import { textsInPdf } from "../paper/pdf-faults.ts";
import { readPdf } from "../paper/read-pdf.ts";
import { buildInto, copyContent, filesIn, newFolder, pointersIn } from "./demo.ts";
import { amountsOn, markShop, shopUnmarked, shopWords, withoutLines } from "./wall-shop.ts";

/**
 * The private fields of a schema by path, `*` for any name. A field is private unless it, or one it stands in, is marked.
 * Of names in a map (boards, pieces, sizes …) the name itself is the field `path.*`.
 */
function privateFields(schema: z.core.$ZodType, path: string): string[] {
  let inner: z.core.$ZodType | undefined = schema;
  while (inner) {
    if ((inner as z.ZodType).meta?.()?.shelf === "store") return [];
    inner = (inner._zod.def as { innerType?: z.core.$ZodType }).innerType;
  }
  const shape = shapeOf(schema);
  const element = elementOf(schema);
  const below = Object.entries(shape ?? {}).flatMap(([key, field]) => privateFields(field, `${path}.${key}`));
  if (element) below.push(`${path}.*`, ...privateFields(element, `${path}.*`));
  return below.length > 0 ? below : [path];
}

/** What stands in each private field, and how a page would print it if it got there. */
const words: Readonly<Record<string, string>> = {
  "shop.wage": "4917.53",
  "shop.notes": "Zanzaquill keeps the till.",
  ...shopWords,
  "yard.species.*": "zelkovoid",
  "yard.species.*.source": "Quiddlewick's tables",
  "yard.boards.*": "zubrowka board",
  "yard.boards.*.species": "zelkovoid",
  "yard.boards.*.priced": "2031-07-19",
  "yard.boards.*.lengths.*": "6817.29",
  "yard.fasteners.*": "screw zygomax",
  "yard.fasteners.*.driver": "bit quaxly",
  "yard.fasteners.*.pack": "777 for 3917.61",
  "yard.fasteners.*.priced": "2032-08-23",
  "yard.finishes.*": "varnaquish",
  "yard.finishes.*.method": "Flumox it on with a rag.",
  "yard.finishes.*.tin": "1 quart",
  "yard.finishes.*.price": "5819.47",
  "yard.finishes.*.priced": "2033-09-21",
  "yard.fittings.*": "zwipple kit",
  "yard.fittings.*.price": "7219.83",
  "yard.fittings.*.priced": "2034-10-27",
  "yard.ropes.*": "kordelquist",
  "yard.ropes.*.source": "Grumbolt's label",
  "yard.ropes.*.price": "9318.61",
  "yard.ropes.*.priced": "2035-11-28",
  "yard.glues.*": "gluquord",
  "recipe.notes": "Wobbegongs like this one.",
  "recipe.revisions.*": "Slats moved by a snibble",
  "recipe.sizes.*": "zedsize",
  "recipe.pieces.*": "kwikstrip",
  "recipe.panels.*": "ozpanel",
  "recipe.panels.*.*": "uxlegs",
  "recipe.assemblies.*": "jumkit",
  "recipe.assemblies.*.*": "hobjox",
  "recipe.stand.*": "vexrail",
  "recipe.fittings.*": "wumpkit",
  "recipe.cords.*": "zwinelash",
  "recipe.text.*": "yexwords",
  "recipe.record.*": "2036-04-17",
  "recipe.comparables.*": "fnordmarket",
  "orders.*": "Wigglesworth 77",
  "orders.*.saying": "Xylograph",
  "orders.*.due": "2041-03-05",
  "orders.*.price": "8765.43",
  "orders.*.notes": "Ring the cowbell twice.",
  "recipe.evidence.finish": "Dripquaxology report",
  "recipe.evidence.edges": "Rounded with flumbittery",
  "recipe.evidence.small parts": "Tried with the snorkbore",
  "recipe.evidence.gaps": "Probed with a wigglegauge",
  "recipe.evidence.tip": "Shoved by Brimblecombe",
  "recipe.evidence.tracking label": "Burnt in by the ironquist",
  "recipe.evidence.certificate": "Filed under jobblewock",
  "recipe.evidence.food": "Tasted by glimfeather",
};

/** Private, and not a word one could look for: a choice of few words, a plain number of the trade, or made of the names above. */
const unmarked: Readonly<Record<string, string>> = {
  "shop.division": "a choice of four",
  "shop.kerf": "a length of the trade",
  "shop.papers": "a choice of four",
  "shop.listing.title": "a number of letters",
  "shop.listing.short": "a number of letters",
  "shop.listing.long": "a number of letters",
  "shop.listing.alt-text": "a number of letters",
  "shop.listing.keywords": "a number of words",
  "shop.listing.keyword": "a number of letters",
  "shop.listing.images": "sizes in pixels",
  ...shopUnmarked,
  "yard.priced": "the date of a whole file; the entries here have their own",
  "yard.species.*.gravity": "a number of the wood",
  "yard.species.*.stiffness": "a number of the wood",
  "yard.species.*.rupture": "a number of the wood",
  "yard.species.*.radial": "a number of the wood",
  "yard.species.*.tangential": "a number of the wood",
  "yard.species.*.saturation": "a number of the wood",
  "yard.species.*.fastener-gravity": "a number of the wood",
  "yard.species.*.decay": "a choice of three",
  "yard.boards.*.nominal": "a name of the trade",
  "yard.boards.*.sawn": "a choice of two",
  "yard.boards.*.size": "the goods' own measure follows from it",
  "yard.boards.*.measured": "the goods' own measure follows from it",
  "yard.boards.*.treatment": "a choice of two",
  "yard.boards.*.show": "a choice of two",
  "yard.boards.*.moisture": "a number of the wood",
  "yard.boards.*.end-loss": "a length of the trade",
  "yard.boards.*.in-stock": "made of the lengths below it",
  "yard.boards.*.in-stock.*": "a length of the trade and a number",
  "yard.vehicle": "a length of the trade",
  "yard.fresh-end": "a length of the trade",
  "yard.fasteners.*.kind": "a choice of five",
  "yard.fasteners.*.diameter": "a number of the trade",
  "yard.fasteners.*.length": "a length of the trade",
  "yard.fasteners.*.weight": "the goods' own weight follows from it",
  "yard.finishes.*.kind": "a choice of five",
  "yard.finishes.*.clear": "a number of the drawing",
  "yard.finishes.*.coverage": "a number of the trade",
  "yard.finishes.*.recoat": "a number of the trade",
  "yard.finishes.*.cure": "a number of the trade",
  "yard.finishes.*.oily-rags": "a choice of two",
  "yard.ropes.*.strength": "a number of the trade",
  "yard.ropes.*.weight": "the goods' own weight follows from it",
  "yard.ropes.*.sold": "a length of the trade",
  "yard.boards.*.lengths": "made of the names below it",
  "orders.*.item": "a public title",
  "orders.*.variant": "a public name",
  "orders.*.count": "a small number",
  "orders.*.approved": "a choice of two",
  "recipe.format": "a number",
  "recipe.draft": "a choice of two",
  "recipe.left to the buyer": "a heading of the body",
  "recipe.season": "two days of the year",
  "recipe.plan": "a choice of two",
  "recipe.outlines.*": "figures of the trade",
  "recipe.outlines.*.edge": "figures of the trade",
  "recipe.panels.*.size": "made of the names above",
  "recipe.assemblies.*.size": "made of the names above",
  "recipe.choices.*": "its names and its values are public, what they change is made of the names above",
  "recipe.loads.*": "its names are public, the rest is made of the names above",
  "recipe.finish.*": "its names are public, the rest is made of the names above",
  "recipe.joins.*": "made of the names above",
  "recipe.cuts.*": "made of the names above",
  "recipe.claims.*": "made of the names above",
  "recipe.fixed": "made of the names above",
};

/** Words in the body, all of it private but the intro. */
const body = {
  heading: "Zumbify the sides",
  note: "Mind the yaffle while it dries.",
  step: "quoggle them snuggishly",
  check: "the plinket reads true",
  caution: "the snagglet bites",
} as const;

const evidence = ["finish", "edges", "small parts", "gaps", "tip", "tracking label", "certificate", "food"]
  .map((kind) => `  ${kind}: ${words[`recipe.evidence.${kind}`]}`)
  .join("\n");

const recipe = `---
title: Plain peg rail
class: C D F
listed: 2026-10-08
for: children
purpose: Holds what hangs.
notes: ${words["recipe.notes"]}
revisions:
  2026-10-08: ${words["recipe.revisions.*"]}
plan: yes
overall: 20 x fit x 12
sizes:
  zedsize: 1
pieces:
  kwikstrip: zubrowka board, ripped to 1 1/2
panels:
  ozpanel:
    size: width x height
    uxlegs: 2 kwikstrip, upright, from bottom to top, spread left to right
    vexlevel: 2 kwikstrip, level, between uxlegs, spread zedsize to top
assemblies:
  jumkit:
    size: width x fit x height
    hobjox: ozpanel, at front
stand:
  vexrail: jumkit, at left, at front
fittings:
  wumpkit: 1 zwipple kit, loose
joins:
  vexlevel to uxlegs: 2 screw zygomax, back; glue
cuts:
  uxlegs: hole for 1/16 rope, 1 from top, centred
cords:
  zwinelash: kordelquist, right through the holes of uxlegs, knots at both ends, 3 for each knot
text:
  yexwords: vexlevel 1, 1/2 high, saying Yexwords
finish:
  bare: none
  coated: 1 coat varnaquish on all
choices:
  height-of-it:
    low: as written
    tall: zedsize 2, height 14
loads:
  coats: 2 of 4 lb, on ozpanel vexlevel 2
record:
  2036-04-17: 2 made, rip 8123.77, all 9214.63
comparables:
  fnordmarket: 5678.31, 2037-06-29, 21 x 7 x 13
evidence:
${evidence}
---
A rail of four boards, {width} wide.

## ${body.heading}

makes ozpanel

${body.note}

1. Lay the **uxlegs** down and put the **vexlevel** between; ${body.step}.

   Check: ${body.check}.

   Caution: ${body.caution}.

## Hang it

1. Set up **vexrail** and thread the **zwinelash**.
`;

const yard = `species:
  zelkovoid:
    gravity: 0.42
    stiffness: 1300000
    rupture: 9400
    radial: 0.00148
    tangential: 0.00261
    saturation: 30
    decay: moderate
    source: ${words["yard.species.*.source"]}
boards:
  zubrowka board:
    species: zelkovoid
    size: 3/4 x 5 1/2
    moisture: 12
    words: plain pale wood
    priced: 2031-07-19
    lengths:
      96: 6817.29
fasteners:
  screw zygomax:
    kind: pocket screw
    diameter: 0.138
    length: 1 1/4
    material: stainless steel
    driver: bit quaxly
    pack: 777 for 3917.61
    priced: 2032-08-23
finishes:
  varnaquish:
    kind: oil
    words: clear oil
    colour: b9814f
    clear: 0.85
    coverage: 300
    tin: 1 quart
    price: 5819.47
    priced: 2033-09-21
    recoat: 24
    cure: 168
    oily-rags: yes
    method: ${words["yard.finishes.*.method"]}
    care: Wash it.
fittings:
  zwipple kit:
    words: a bag of pegs
    weight: 2 oz
    price: 7219.83
    priced: 2034-10-27
ropes:
  kordelquist:
    words: a thin line
    material: hemp
    diameter: 1/16
    strength: 60 lb
    source: ${words["yard.ropes.*.source"]}
    weight: 0.02 oz
    price: 9318.61
    priced: 2035-11-28
glues:
  gluquord: wood glue
`;

const orders = `${words["orders.*"]}:
  item: Plain peg rail
  variant: coated
  saying: ${words["orders.*.saying"]}
  due: ${words["orders.*.due"]}
  approved: no
  price: ${words["orders.*.price"]}
  notes: ${words["orders.*.notes"]}
`;

/** How a date may be printed. */
const printed = (word: string): string[] => {
  const date = /^(\d{4})-(\d\d)-(\d\d)$/.exec(word);
  if (date) return [word, date[1] ?? ""];
  if (word === "1 quart") return ["quart"];
  const pack = /^(\d+) for (.+)$/.exec(word);
  if (pack) return [pack[1] ?? "", pack[2] ?? "", (pack[2] ?? "").split(".")[0] ?? ""];
  // The whole, and its longest word: "zygomax" of "screw zygomax".
  return [word, word.split(/[ .]/).sort((a, b) => b.length - a.length)[0] ?? word];
};
const further = ["8123.77", "9214.63", "5678.31", "2037-06-29", "21 x 7 x 13"];
const canaries = [...[...Object.values(words), ...Object.values(body), "vexlevel"].flatMap(printed), ...further];

/** What a plan is made of: names of its own things, and what changed when. All else stays out of the packs too. */
const plan = [
  "recipe.revisions.*",
  "recipe.pieces.*",
  "recipe.panels.*",
  "recipe.panels.*.*",
  "recipe.assemblies.*",
  "recipe.assemblies.*.*",
  "recipe.stand.*",
  "recipe.cords.*",
  "recipe.text.*",
];

/**
 * Every file under the name it has, an archive's with the archive's before it. Of a PDF what is read on its pages and every text in
 * it that is not; of a drawing its words; sums of bytes are numbers by chance.
 */
async function packedTexts(name: string, bytes: Uint8Array): Promise<(readonly [name: string, text: string])[]> {
  if (name.endsWith(".zip")) {
    const inside = Object.entries(unzipSync(new Uint8Array(bytes)));
    return (await Promise.all(inside.map(([path, content]) => packedTexts(`${name}/${path}`, content)))).flat();
  }
  if (name.endsWith("SHA256SUMS") || name.includes("assets/")) return [];
  if (!name.endsWith(".pdf")) return [[name, withoutLines(Buffer.from(bytes).toString("utf8"))]];
  const pages = await readPdf(new Uint8Array(bytes));
  return [[name, [...pages.map(({ text }) => text), ...(await textsInPdf(bytes))].join("\n")]];
}

let site: string;
const textOf = (name: string): string => readFileSync(join(site, name)).toString("latin1").toLowerCase();

let copy: string;
/** In the camera's own part of a photograph: where it was taken, with what, by whom, and what its file was called before. */
const cameraWords = ["Flibbergast Close 7", "Zwockelcam 3000", "Murgatroyd Quibble"];

async function photograph(): Promise<Buffer> {
  const [place = "", camera = "", person = ""] = cameraWords;
  return sharp({ create: { width: 700, height: 500, channels: 3, background: "#7a6a55" } })
    .withExif({
      IFD0: { ImageDescription: place, Model: camera, Artist: person },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "48/1 12/1 30/1" },
    })
    .jpeg()
    .toBuffer();
}

beforeAll(async () => {
  copy = copyContent();
  // Two of the demo's recipes are company enough, those that are ordered; the others only take time.
  const kept = ["hose-and-pot-corral.md", "stall-price-ladder.md"];
  for (const name of filesIn(join(copy, "recipes"))) if (!kept.includes(name)) rmSync(join(copy, "recipes", name));
  mkdirSync(join(copy, "photos/plain-peg-rail"), { recursive: true });
  writeFileSync(join(copy, "photos/plain-peg-rail/01-on-a-wall.jpg"), await photograph());
  const shopFile = filesIn(join(copy, "shop")).find((name) => name.endsWith(".yaml")) ?? "";
  const shop = parseDocument(readFileSync(join(copy, "shop", shopFile), "utf8"));
  shop.set("wage", words["shop.wage"]);
  shop.set("notes", words["shop.notes"]);
  markShop(shop);
  writeFileSync(join(copy, "shop", shopFile), String(shop));
  writeFileSync(join(copy, "yard/peg.yaml"), yard);
  writeFileSync(join(copy, "recipes/peg-rail.md"), recipe);
  mkdirSync(join(copy, "orders"), { recursive: true });
  writeFileSync(join(copy, "orders/peg.yaml"), orders);
  site = buildInto(join(newFolder(), "_site"), copy);
}, 240_000);

describe("the wall", () => {
  it("every private field of the schemas carries a word of its own, or says why it can't", () => {
    const fields = [
      ...privateFields(frontMatterSchema, "recipe"),
      ...privateFields(yardSchema, "yard"),
      ...privateFields(shopSchema, "shop"),
      ...privateFields(ordersSchema, "orders"),
    ];
    expect(fields.length).toBeGreaterThan(40);
    expect([...new Set(fields)].filter((field) => !(field in words) && !(field in unmarked))).toEqual([]);
  });

  it("no such word is in any file of the store: pages, styles, pictures, names", () => {
    const files = filesIn(join(site, "store"));
    expect(files).toContain("goods/plain-peg-rail.html");
    expect(files).toContain("pictures/plain-peg-rail.png");
    for (const name of ["feed.xml", "sitemap.xml"]) expect(textOf(`store/${name}`)).toContain("plain-peg-rail");
    expect(textOf("store/goods/plain-peg-rail.html")).toContain(`"@type":"product","name":"plain peg rail"`);
    const found = files.flatMap((name) => {
      const text = `${name.toLowerCase()}\n${textOf(`store/${name}`)}`;
      // In pixels and in type three or four signs stand side by side by chance.
      const words = /\.(png|jpg|webp|woff2)$/.test(name) ? canaries.filter((word) => word.length > 6) : canaries;
      return words.filter((word) => text.includes(word.toLowerCase())).map((word) => `${name}: ${word}`);
    });
    expect(found).toEqual([]);
  });

  it("the words are looked for rightly: the binder shows the shop's notes on the recipe, its names, steps, prices and methods", () => {
    const sheet = textOf("binder/items/plain-peg-rail.html");
    for (const word of [
      words["recipe.notes"],
      words["yard.boards.*"],
      words["yard.fasteners.*"],
      words["yard.finishes.*.method"],
      "6817.29",
      body.heading,
      body.note,
      body.step,
      body.check,
      body.caution,
    ]) {
      expect(sheet).toContain(word?.toLowerCase());
    }
  });

  it("photographs are in the store, and nothing that the camera wrote into them", () => {
    const photos = filesIn(join(site, "store/photos"));
    expect(photos).toHaveLength(4);
    for (const name of photos) {
      const text = textOf(`store/photos/${name}`);
      for (const word of cameraWords) expect(text, name).not.toContain(word.toLowerCase());
    }
    expect(readFileSync(join(copy, "photos/plain-peg-rail/01-on-a-wall.jpg")).toString("latin1")).toContain(
      cameraWords[0],
    );
    expect(textOf("store/goods/plain-peg-rail.html")).toContain("on a wall");
  });

  it("of the price sheets' amounts only the price that is shown and what own words cost on top are in the store, on pages, in the data and in the feed", () => {
    const sheets = filesIn(join(site, "binder/prices")).map((name) => textOf(`binder/prices/${name}`));
    const amounts = sheets.flatMap(amountsOn);
    expect(sheets.length).toBeGreaterThan(1);
    expect(amounts.length).toBeGreaterThan(100);
    const files = filesIn(join(site, "store")).filter((name) => /\.(html|xml|svg)$/.test(name));
    const pages = files.map((name) => ({ name, page: withoutLines(textOf(`store/${name}`)) }));
    const ownWords = sheets.flatMap((sheet) => /own words on it<\/dt><dd>\$([\d.]+) more/.exec(sheet)?.[1] ?? []);
    const shown = new Set([
      ...pages.flatMap(({ page }) => [...page.matchAll(/"price":"([\d.]+)"/g)].map(([, price]) => price)),
      ...ownWords,
    ]);
    expect(ownWords.length).toBe(2);
    expect(shown.size).toBeGreaterThan(5);
    const found = pages.flatMap(({ name, page }) => {
      const on = new Set([...page.matchAll(/(?<![\d.])\d+\.\d\d(?!\d)/g)].map(([amount]) => amount));
      return amounts.filter((amount) => on.has(amount) && !shown.has(amount)).map((amount) => `${name}: ${amount}`);
    });
    expect(found).toEqual([]);
  });

  it("an order reaches its sheet, and its words the proof, which tells nothing else of it", () => {
    const sheet = textOf("binder/orders/wigglesworth-77.html");
    const proof = textOf("binder/proofs/wigglesworth-77.html");
    for (const [field, word] of Object.entries(words).filter(([field]) => field.startsWith("orders."))) {
      expect(sheet).toContain(word.toLowerCase());
      expect(proof.includes(word.toLowerCase())).toBe(field === "orders.*.saying");
    }
  });

  it("the shop's figures do reach the price sheet: its fixed fee of the stall is printed there", () => {
    const sheet = textOf("binder/prices/plain-peg-rail.html");
    expect(sheet).toContain(shopWords["shop.selling.stall.fixed"]);
    expect(sheet).toContain("6817.29");
  });

  it("what is public is there: title, purpose, wood, finish and care in the shop's public words", () => {
    const page = textOf("store/goods/plain-peg-rail.html");
    for (const word of [
      "Plain peg rail",
      "Holds what hangs.",
      "plain pale wood",
      "clear oil",
      "a bag of pegs",
      "a thin line",
      "coated",
    ]) {
      expect(page).toContain(word.toLowerCase());
    }
  });

  it("of all that only what is the plan itself is in a pack: in PDFs, tables, drawings and the archive", async () => {
    const inPlan = new Set(
      [...plan.map((field) => words[field] ?? ""), ...Object.values(body), "vexlevel"].flatMap(printed),
    );
    const kept = canaries.filter((word) => !inPlan.has(word) || word === body.note);
    const files = filesIn(join(site, "packs"));
    expect(files).toContain("plain-peg-rail/plain-peg-rail-inch-letter.pdf");
    const texts = await Promise.all(files.map((name) => packedTexts(name, readFileSync(join(site, "packs", name)))));
    const found = texts.flat().flatMap(([name, text]) => {
      const low = `${name}\n${text}`.toLowerCase().replace(/\s+/g, " ");
      return kept.filter((word) => low.includes(word.toLowerCase())).map((word) => `${name}: ${word}`);
    });
    expect(found).toEqual([]);
    const printedPlan = texts
      .flat()
      .find(([name]) => name.endsWith("plan.zip/plain-peg-rail-plan/plain-peg-rail-inch-a4.pdf"));
    for (const word of [
      body.heading,
      body.step,
      body.check,
      body.caution,
      words["recipe.revisions.*"],
      "wood glue",
      "clear oil",
    ])
      expect(printedPlan?.[1].replace(/\s+/g, " ").toLowerCase()).toContain(word?.toLowerCase());
  }, 120_000);

  it("a link in the store leads only inside the store", () => {
    const out = filesIn(join(site, "store"))
      .filter((name) => name.endsWith(".html"))
      .flatMap((name) =>
        pointersIn(readFileSync(join(site, "store", name), "utf8"))
          .filter((to) => !/^(#|mailto:|data:)/.test(to))
          .map((to) => ({ name, to, depth: name.split("/").length - 1 - (to.match(/\.\.\//g)?.length ?? 0) })),
      );
    expect(out.length).toBeGreaterThan(10);
    expect(out.filter(({ to, depth }) => depth < 0 || /^[a-z]+:|^\//i.test(to))).toEqual([]);
  });

  it("no word of the store's pages speaks of the other shelves", () => {
    for (const name of filesIn(join(site, "store")))
      expect(textOf(`store/${name}`)).not.toMatch(/binder\/|guide\/|packs\//);
  });
});

// The demo's paper as the real command writes it: every PDF of binder and packs read back, every pack opened, its pieces against the work.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { binderEdition } from "../../src/leaves/edition.ts";
import { piecesTable } from "../../src/leaves/pieces-table.ts";
import { archive } from "../../src/site/write-packs.ts";
import { inches } from "../../src/units/length.ts";
import { demoItem, sixteenths } from "../drawing/demo.ts";
import { a4, letter, lookAtPdf } from "../paper/pdf-faults.ts";
import { type ReadPage, readPdf } from "../paper/read-pdf.ts";
import { filesIn, root, shopleaf } from "./demo.ts";
import { demoSite } from "./demo-site.ts";

const slugs = [
  "hanging-basket-arms",
  "hose-and-pot-corral",
  "raked-cold-frame",
  "seedling-hardening-rack",
  "stall-price-ladder",
  "tapered-herb-planter",
  "trestle-pair-with-plank-top",
];

let site: string;
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(site, name)));
const textOf = (name: string): string => readFileSync(join(site, name), "utf8");
const pdfsUnder = (folder: string): string[] => filesIn(join(site, folder)).filter((name) => name.endsWith(".pdf"));
const packFolder = (slug: string): string => `packs/${slug}`;
const planOf = (slug: string): string => `${packFolder(slug)}/${slug}-inch-letter.pdf`;
const said = (pages: readonly ReadPage[]): string => plain(pages.map(({ text }) => text).join("\n"));
const plain = (text: string): string => text.replaceAll("\u00a0", " ").replace(/\s+/g, " ");

beforeAll(() => {
  site = demoSite();
}, 240_000);

describe("every PDF of the demo", () => {
  it("nothing clipped, nothing too small, tagged, with outline, own fonts, drawings as lines, no clock", async () => {
    const names = [
      ...pdfsUnder("binder").map((name) => `binder/${name}`),
      ...pdfsUnder("packs").map((name) => `packs/${name}`),
    ];
    expect(names.length).toBeGreaterThan(30);
    const found: string[] = [];
    for (const name of names) {
      const { faults, tags, pages } = await lookAtPdf(bytesOf(name), /-a4/.test(name) ? a4 : letter);
      found.push(...faults.map((fault) => `${name}: ${fault}`));
      for (const tag of ["H1", "Table", "TH", "Figure", "LI"]) if (!tags.has(tag)) found.push(`${name}: no ${tag}`);
      if (pages.length < 6) found.push(`${name}: ${pages.length} pages`);
    }
    expect(found).toEqual([]);
  }, 300_000);
});

/** Wider than this no block is cut: the room between two of a row is then that of what stands between them. Inches. */
const widestBlock = 6;

/** Without what is read on the page alone: the shelf it stands on, links to its parts, drawings for phones, and captions that paper leaves out. */
const pageWords = (html: string): string =>
  (/<main[\s\S]*<\/main>/.exec(html)?.[0] ?? "")
    .replace(/<p class="over">[\s\S]*?<\/p>/g, " ")
    .replace(/<nav[\s\S]*?<\/nav>/g, " ")
    .replace(/<div class="narrow-only">[\s\S]*?<\/svg>/g, " ")
    .replace(/<(title|desc|figcaption)\b[\s\S]*?<\/\1>/g, " ")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&amp;", "&")
    .replaceAll("&#39;", "'")
    .replaceAll("&quot;", '"')
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">");
const wordSet = (text: string): Set<string> =>
  new Set(
    plain(text)
      .split(" ")
      .map((word) => word.replace(/^[^\p{L}\p{N}$]+|[^\p{L}\p{N}%°]+$/gu, ""))
      .filter((word) => word !== ""),
  );

describe("page and PDF", () => {
  it.each(["stall-price-ladder", "hose-and-pot-corral"])(
    "%s: every word of the binder's page is on paper",
    async (slug) => {
      const printed = wordSet(said(await readPdf(bytesOf(`binder/print/${slug}-letter.pdf`))));
      const lacking = [...wordSet(pageWords(textOf(`binder/items/${slug}.html`)))].filter((word) => !printed.has(word));
      expect(lacking).toEqual([]);
    },
  );
});

describe("packs", () => {
  it("each recipe that says so has one, with a plan on both papers for each of its forms", () => {
    expect(filesIn(join(site, "packs")).filter((name) => name.endsWith(".zip"))).toEqual(
      slugs.map((slug) => `${slug}/${slug}-plan.zip`),
    );
    expect(pdfsUnder("packs/tapered-herb-planter")).toHaveLength(6);
  });

  it.each(slugs)(
    "%s: the archive opens, holds the folder's files and no other, and every checksum is right",
    (slug) => {
      const name = `${slug}-plan`;
      const inside = unzipSync(bytesOf(`${packFolder(slug)}/${name}.zip`));
      const files = filesIn(join(site, packFolder(slug))).filter((file) => !file.endsWith(".zip"));
      expect(Object.keys(inside).sort()).toEqual(files.map((file) => `${name}/${file}`).sort());
      for (const file of files)
        expect(
          Buffer.compare(
            Buffer.from(inside[`${name}/${file}`] ?? []),
            Buffer.from(bytesOf(`${packFolder(slug)}/${file}`)),
          ),
        ).toBe(0);
      const sums = textOf(`${packFolder(slug)}/SHA256SUMS`)
        .trimEnd()
        .split("\n");
      expect(sums.map((line) => line.split("  ")[1])).toEqual(files.filter((file) => file !== "SHA256SUMS").sort());
      for (const line of sums) {
        const [sum, file = ""] = line.split("  ");
        expect(
          createHash("sha256")
            .update(bytesOf(`${packFolder(slug)}/${file}`))
            .digest("hex"),
        ).toBe(sum);
      }
    },
  );

  it("an archive is the same bytes for the same files, in whichever order they come", () => {
    const [one, two] = [new Uint8Array([1, 2]), new Uint8Array([3])];
    const made = archive(
      "a",
      new Map([
        ["b.txt", one],
        ["a.txt", two],
      ]),
    );
    expect(
      Buffer.compare(
        Buffer.from(made),
        Buffer.from(
          archive(
            "a",
            new Map([
              ["a.txt", two],
              ["b.txt", one],
            ]),
          ),
        ),
      ),
    ).toBe(0);
  });

  it.each(slugs)("%s: its table of pieces is that of the worked item", (slug) => {
    const { out } = shopleaf(["work", join(root, `content/recipes/${slug}.md`)]);
    const work = JSON.parse(out) as {
      pieces: { mark: string; count: number; length: number; width: number; thickness: number }[];
    };
    const [heads, ...rows] = textOf(`${packFolder(slug)}/${slug}-inch-pieces.csv`)
      .trimEnd()
      .split("\r\n");
    expect(heads).toBe("mark,number,length,width,thickness,unit,piece,board,work");
    expect(rows).toHaveLength(work.pieces.length);
    work.pieces.forEach((piece, i) => {
      const [mark, number, length, width, thickness, unit] = (rows[i] ?? "").split(",");
      expect([mark, Number(number), unit]).toEqual([piece.mark, piece.count, "in"]);
      expect(Number(length)).toBeCloseTo(piece.length, 3);
      expect(Number(width)).toBeCloseTo(piece.width, 3);
      expect(Number(thickness)).toBeCloseTo(piece.thickness, 3);
    });
  });

  it.each(slugs)("%s: the plan says what a stranger has to know", async (slug) => {
    const pages = await readPdf(bytesOf(planOf(slug)));
    const [first, ...others] = pages;
    const cover = plain(first?.text ?? "");
    // IEC/IEEE 82079-1, in our words: name and revision on page 1; who builds it and what it is for; tools before step 1.
    expect(cover).toMatch(/Revision \d/);
    expect(cover).toContain("Needs");
    const all = said(pages);
    for (const words of [
      "To build it",
      "Not made",
      "Tools",
      "Check your boards",
      "If yours are thicker or thinner",
      "Other wood",
      "What to buy",
      "What you may do with it",
      "Is this the latest?",
      "Working wood can maim",
    ])
      expect(all).toContain(words);
    expect(all.indexOf("Tools")).toBeLessThan(all.indexOf("Steps", all.indexOf("Check your boards")));
    for (const { text } of [...(first ? [first] : []), ...others]) {
      expect(plain(text)).toContain("Latest: https://quillow-yard.example/plans");
      expect(plain(text)).toContain("Ask: plans@quillow-yard.example");
    }
  });

  it.each(slugs)(
    "%s: from the plan alone a stranger reads every piece with its sizes and work, every gap, hole and figure of a step",
    async (slug) => {
      const all = said(await readPdf(bytesOf(planOf(slug))));
      const item = demoItem(slug);
      const { bare, figure } = binderEdition(sixteenths);
      const lacking = [
        ...piecesTable(item, bare).rows.map((row) => row.slice(0, 5).join(" ")),
        ...item.pieces.map(({ mark }) => `piece ${mark}`),
        ...item.gaps.filter((one) => inches(one.gap) > 0 && inches(one.gap) < widestBlock).map((one) => bare(one.gap)),
        ...item.pieces.flatMap(({ cuts }) =>
          cuts.flatMap((cut) => (cut.kind === "hole" ? [`Ø ${bare(cut.across)}`] : [])),
        ),
        ...item.sections.flatMap(({ steps }) =>
          steps.flatMap(({ text, checks }) => [text, ...checks].flatMap(({ figures }) => figures.map(figure))),
        ),
      ].filter((words) => !all.includes(plain(words)));
      expect(lacking).toEqual([]);
    },
  );

  it.each(slugs)("%s: not a dollar, an hour, a date of a price or a name of the yard's is in it", async (slug) => {
    const all = said(await readPdf(bytesOf(planOf(slug))));
    expect(all).not.toMatch(/\$|Price seen|Record|Time for one|Notes of the shop|fence board|2026-10-03/);
  });

  it("a curve is told by measures, so that it can be drawn without the pages at full size", async () => {
    const all = said(await readPdf(bytesOf(planOf("hanging-basket-arms"))));
    expect(all).toContain("Curves by measure");
    expect(all).toMatch(/measured from its left end and up from its lower edge/);
  });

  it("screws are named for both kinds of shop: No. 6 × 1 in is 3.5 × 25 mm", async () => {
    const all = said(await readPdf(bytesOf(planOf("hose-and-pot-corral"))));
    expect(all).toContain("No. 6 × 1 in 3.5 × 25 mm");
  });

  it("patterns are drawings of their own size in millimetres", () => {
    const patterns = slugs.flatMap((slug) =>
      filesIn(join(site, packFolder(slug)))
        .filter((name) => name.endsWith(".svg"))
        .map((name) => textOf(`${packFolder(slug)}/${name}`)),
    );
    expect(patterns.length).toBeGreaterThan(10);
    for (const svg of patterns)
      expect(svg).toMatch(/^<svg[^>]* width="[\d.]+mm" height="[\d.]+mm" viewBox="0 0 [\d.]+ [\d.]+"/);
  });

  it("the shelf's page leads to every file, and to nothing else", () => {
    const html = textOf("packs/index.html");
    const links = [...html.matchAll(/<a [^>]*?href="([^"#]+)"/g)].map(([, to]) => to ?? "").sort();
    const files = filesIn(join(site, "packs"))
      .filter((name) => name.includes("/") && !name.startsWith("assets/"))
      .filter((name) => !/README\.txt$|SHA256SUMS$/.test(name))
      .sort();
    expect(links).toEqual(files);
    expect(html).not.toMatch(/binder\/|store\/|guide\//);
  });
});

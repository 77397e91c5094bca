// The shop file, and what of the shop and the yard may reach the public shelf.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { publicOnly } from "../../src/yard/public-fields.ts";
import { readShop } from "../../src/yard/read-shop.ts";
import { readYard } from "../../src/yard/read-yard.ts";
import { sawsOf, usualSaws } from "../../src/yard/saws.ts";
import { shopSchema } from "../../src/yard/shop-schema.ts";
import type { Shop } from "../../src/yard/yard.ts";
import { boardSchema, fastenerSchema, finishSchema, fittingSchema } from "../../src/yard/yard-schema.ts";
import { smallYard } from "./yard-file.ts";

const shopText = `name: Test shop
tagline: Plain goods
place: Lower Test
contact: hello@shop.example
ordering: two weeks
care-note: keep it dry
division: 1/16
kerf: 1/8
wage: 24.00
notes: secret
`;

describe("the shop", () => {
  test("reads its division, kerf and wage", () => {
    const { shop, problems } = readShop("shop.yaml", shopText);
    expect(problems).toEqual([]);
    expect([shop?.division, shop?.kerf.toFraction(), shop?.wage.toFraction()]).toEqual([
      { unit: "in", per: 16 },
      "1/8",
      "24",
    ]);
  });
  test.each([
    ["division: 1/16", "division: 1/10", "7:11 not-one-of"],
    ["kerf: 1/8", "kerf: 1/0", "8:7 yard-length"],
    ["wage: 24.00", "wage: -24", "9:7 yard-price"],
    ["notes:", "note:", "10:1 unknown-key"],
    ["kerf: 1/8\n", "", "1:1 missing-key"],
  ])("%s as %s is told", (from, to, told) => {
    const { shop, problems } = readShop("shop.yaml", shopText.replace(from, to));
    expect(shop).toBeUndefined();
    expect(problems.map((p) => `${p.at.line}:${p.at.column} ${p.code}`)).toContain(told);
  });
});

describe("what the shop says of its saws", () => {
  const withSaws = (lines: string) => readShop("shop.yaml", `${shopText}saws:\n${lines}`);

  test("what it leaves out is as usual: 8 held at the crosscut saw, 12 along the fence, offcuts from 12 x 1 1/2, nudges to 1/2", () => {
    const { shop } = withSaws("  shortest-crosscut: 6\n  keep: 10 x 2\n");
    const { shortestCrosscut, shortestRip, keep, nudge } = sawsOf(shop as Shop);
    const said = [shortestCrosscut, shortestRip, keep.length, keep.width, nudge];
    expect(said.map((size) => size.toFraction())).toEqual(["6", "12", "10", "2", "1/2"]);
    const { shop: silent } = readShop("shop.yaml", shopText);
    expect(silent && sawsOf(silent)).toBe(usualSaws);
  });
  test.each([
    ["  shortest-rip: 0\n", "12:17 yard-number"],
    ["  keep: 12\n", "12:9 yard-sides"],
    ["  nudge: a bit\n", "12:10 yard-length"],
    ["  nugde: 1/2\n", "12:3 unknown-key"],
  ])("%s is told", (lines, told) => {
    const { problems } = withSaws(lines);
    expect(problems.map((p) => `${p.at.line}:${p.at.column} ${p.code}`)).toContain(told);
  });
});

describe("a field is private unless it is marked", () => {
  test("the shop shows its name and care, never its wage, kerf or notes", () => {
    const shown = publicOnly(shopSchema, readShop("shop.yaml", shopText).shop) as Record<string, unknown>;
    expect(Object.keys(shown).sort()).toEqual(["careNote", "contact", "name", "ordering", "place", "tagline"]);
  });
  test("boards, fasteners, finishes and fittings show words and looks, never a price, pack, tin or method", () => {
    const { yard } = readYard([{ file: "y.yaml", text: smallYard }]);
    const keys = (schema: z.ZodType, thing: unknown) => Object.keys(publicOnly(schema, thing) as object).sort();
    expect(keys(boardSchema, yard?.boards[0])).toEqual(["words"]);
    expect(keys(fastenerSchema, yard?.fasteners[0])).toEqual(["material"]);
    expect(keys(finishSchema, yard?.finishes[0])).toEqual(["care", "colour", "words"]);
    expect(keys(fittingSchema, yard?.fittings[0])).toEqual(["size", "weight", "words"]);
  });
  test("marks hold inside lists, maps of names and optional fields; what the schema does not know stays private", () => {
    const shown = { shelf: "store" };
    const schema = z.strictObject({
      rows: z.array(z.strictObject({ open: z.string().meta(shown), shut: z.string() })),
      named: z.record(z.string(), z.strictObject({ open: z.string().optional().meta(shown), shut: z.string() })),
      maybe: z.string().meta(shown).optional(),
      none: z.strictObject({ shut: z.string() }),
    });
    const value = {
      rows: [{ open: "a", shut: "b" }],
      named: { x: { open: "c", shut: "d" } },
      maybe: "e",
      none: { shut: "f" },
      stranger: "g",
    };
    expect(publicOnly(schema, value)).toEqual({ rows: [{ open: "a" }], named: { x: { open: "c" } }, maybe: "e" });
  });
  test("a schema without marks shows nothing", () => {
    expect(publicOnly(z.strictObject({ a: z.string() }), { a: "x" })).toBeUndefined();
  });
});

describe("the demo's own files", () => {
  const files = (folder: string) =>
    readdirSync(folder)
      .sort()
      .map((name) => ({ file: `${folder}/${name}`, text: readFileSync(`${folder}/${name}`, "utf8") }));

  test("the yard reads without a problem and has what the goods are made of", () => {
    const { yard, problems } = readYard(files("content/yard"));
    expect(problems).toEqual([]);
    const names = (list: readonly { name: string }[] | undefined) => (list ?? []).map((x) => x.name);
    expect(names(yard?.boards)).toEqual(
      expect.arrayContaining(["fence board", "2x4", "2x6", "2x3", "2x10", "1x4", "1x6", "1x8", "1x10", "1x12"]),
    );
    expect(names(yard?.fasteners)).toEqual(
      expect.arrayContaining([
        "pocket screw No. 6 x 1",
        "screw No. 6 x 1 5/8",
        "pocket screw No. 8 x 2 1/2",
        "screw No. 10 x 2 1/2",
      ]),
    );
    expect(names(yard?.finishes)).toEqual(expect.arrayContaining(["oil", "stain", "charcoal stain", "white", "slate"]));
    expect(names(yard?.fittings)).toContain("anchor kit");
  });
  test("the shop reads without a problem and says that it is invented", () => {
    const [shopFile] = files("content/shop");
    const { shop, problems } = readShop(shopFile?.file ?? "", shopFile?.text ?? "");
    expect(problems).toEqual([]);
    expect(shop?.notice).toMatch(/invented/);
  });
});

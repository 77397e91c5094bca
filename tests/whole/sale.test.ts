// A thing for children through the whole build: without its evidence it is nowhere in the store, and the binder says why.
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, it } from "vitest";
import { buildInto, copyContent, filesIn, newFolder, shopleaf } from "./demo.ts";

const recipe = (title: string, evidence: string): string => `---
title: ${title}
class: C S
for: children
listed: 2026-10-08
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
${evidence}---
A marker for a small gardener, {width} wide.

## Put it together

1. Lay the **sign** down.
2. Screw the **stake** across it.
`;
const evidence = `evidence:
  finish: bare cedar, untreated
  edges: all arrises rounded by 1/8
  small parts: screws sunk and plugged, pulled with 20 lb
  gaps: it has none
  tip: driven into soil, it does not stand by itself
  tracking label: burnt into the back
  certificate: in the folder, June batch
`;

const content = copyContent();
let site: string;
beforeAll(() => {
  for (const name of readdirSync(join(content, "recipes"))) rmSync(join(content, "recipes", name), { recursive: true });
  for (const folder of ["guide", "orders"]) rmSync(join(content, folder), { recursive: true });
  writeFileSync(join(content, "recipes/shown.md"), recipe("Shown marker", evidence));
  writeFileSync(join(content, "recipes/barred.md"), recipe("Barred marker", evidence.replace(/^ {2}tip: .*\n/m, "")));
  site = buildInto(join(newFolder(), "_site"), content);
}, 60_000);
const read = (name: string): string => readFileSync(join(site, name), "utf8");

it("six evidences of seven are not enough: no file of the store is of it or names it", () => {
  const files = filesIn(join(site, "store"));
  expect(files).toContain("goods/shown-marker.html");
  expect(files).toContain("pictures/shown-marker.png");
  expect(files.filter((name) => name.includes("barred-marker"))).toEqual([]);
  for (const name of files)
    expect(readFileSync(join(site, "store", name)).toString("latin1"), name).not.toMatch(/barred.marker/i);
});

it("its build sheet, its listing sheet and the binder's index say what is missing", () => {
  for (const name of ["items/barred-marker.html", "listings/barred-marker.html", "index.html"])
    expect(read(`binder/${name}`)).toContain("Not in the store: no evidence of tip.");
  expect(read("binder/items/barred-marker.html")).toContain("A child can be crushed under it.");
  expect(read("binder/listings/barred-marker.html")).not.toContain("Short description");
  expect(read("binder/items/shown-marker.html")).not.toContain("Not in the store");
});

it("what is sold has its duties on page and card, and none of its papers", () => {
  expect(read("store/goods/shown-marker.html")).toContain("lasting label");
  expect(read("store/care/shown-marker/plain.html")).toContain("Made by");
  expect(read("store/goods/shown-marker.html")).not.toContain("pulled with");
});

it("it is a note and no problem: the build goes through", () => {
  expect(shopleaf(["problems", join(content, "recipes/barred.md"), "--content", content]).code).toBe(0);
});

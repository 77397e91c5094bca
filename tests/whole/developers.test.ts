// DEVELOPERS.md says what is there: its links, its paths, its ladder, its calls and its tolerances.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { inMillimetres } from "../../src/geometry/tolerance.ts";
import { namedViews } from "../../src/geometry/view.ts";
import { root } from "./demo.ts";

const text = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
const section = (title: string): string => text.split(`. ${title}\n`)[1]?.split(/^## \d/m)[0] ?? "";

describe("DEVELOPERS.md", () => {
  it("links only to what is there", () => {
    const links = [...text.matchAll(/\]\(([^)]+)\)/g)].map(([, to = ""]) => to);
    expect(links.length).toBeGreaterThan(30);
    expect(links.filter((to) => !existsSync(join(root, to)))).toEqual([]);
  });

  it("names only files that are there", () => {
    const paths = [...text.matchAll(/`((?:src|tests|layouts|content)\/[\w/.-]+\.(?:tsx?|md|txt))`/g)];
    expect(paths.length).toBeGreaterThan(20);
    expect(paths.map(([, path = ""]) => path).filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it("has every folder of src on its ladder, in the order that the import test holds them to", () => {
    const ladder = [...section("Who may import whom").matchAll(/^([a-z]+) {2,}\S/gm)].map(([, name]) => name);
    const tested = /const ladder = \[([^\]]+)\]/.exec(
      readFileSync(join(root, "tests/whole/imports.test.ts"), "utf8"),
    )?.[1];
    expect(ladder).toEqual([...(tested ?? "").matchAll(/"(\w+)"/g)].map(([, name]) => name));
    const folders = readdirSync(join(root, "src"), { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect([...ladder].sort()).toEqual(folders.map(({ name }) => name).sort());
  });

  it("names every call of the command and every view", () => {
    const calls = [...section("Handles").matchAll(/^\| `([a-z]+)/gm)].map(([, name]) => name);
    const handles = readdirSync(join(root, "src/site/handles")).map((name) => name.replace(/\.ts$/, ""));
    expect([...calls].sort()).toEqual(handles.filter((name) => name !== "options").sort());
    expect(section("Handles")).toContain(`--view ${Object.keys(namedViews).join("\\|")}`);
  });

  it("gives every tolerance of the geometry's one table", () => {
    const rows = [...section("Tolerances").matchAll(/^\| `(\w+)` \| (\S+) \|/gm)].map(([, name, mm]) => [name, mm]);
    const table = Object.entries(inMillimetres);
    expect(rows.map(([name, mm]) => [name, Number(mm)])).toEqual(table);
  });
});

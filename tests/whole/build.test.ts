// The demo built whole, as a maker builds it: what comes out, that it comes out the same, and that a mistake harms nothing.
import {
  cpSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join, posix } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { slug } from "../../src/units/slug.ts";
import {
  buildInto,
  bytesIn,
  copyContent,
  copySmallContent,
  filesIn,
  newFolder,
  pointersIn,
  root,
  shopleaf,
} from "./demo.ts";
import { demoSite } from "./demo-site.ts";

const content = join(root, "content");
let site: string;
/** Of two small recipes, and the content it was made of. */
let small: string;
let smallContent: string;

beforeAll(() => {
  site = demoSite();
  smallContent = copySmallContent();
  small = buildInto(join(newFolder(), "_site"), smallContent);
}, 240_000);

const recipesIn = (folder: string): string[] => readdirSync(join(folder, "recipes")).filter((n) => n.endsWith(".md"));

describe("what a build leaves", () => {
  it("a landing page, both shelves and the guide", () => {
    const files = filesIn(site);
    for (const file of ["index.html", "binder/index.html", "store/index.html", "guide/index.html"]) {
      expect(files).toContain(file);
    }
  });

  it("for each recipe a build sheet, a product page, and a care card for every finish it is offered in", () => {
    const files = filesIn(site);
    const corral = "hose-and-pot-corral";
    expect(files).toContain(`binder/items/${corral}.html`);
    expect(files).toContain(`store/goods/${corral}.html`);
    for (const name of recipesIn(content)) {
      const text = readFileSync(join(content, "recipes", name), "utf8");
      const [, title = ""] = /^title: (.*)$/m.exec(text) ?? [];
      expect(files).toContain(`binder/items/${slug(title)}.html`);
      const isForSale = !/^class: .*\bC\b/m.test(text) || /^evidence:$/m.test(text);
      expect(files.includes(`store/goods/${slug(title)}.html`)).toBe(isForSale);
    }
    expect(files.filter((file) => file.startsWith(`store/care/${corral}/`)).length).toBeGreaterThan(1);
  });

  it("for each size a build sheet of its own, to which the standard one leads, and one product page with all of them", () => {
    const files = filesIn(site).filter((file) => file.includes("tapered-herb-planter"));
    expect(files.filter((file) => file.startsWith("binder/items/"))).toEqual([
      "binder/items/tapered-herb-planter.html",
      "binder/items/tapered-herb-planter/large.html",
      "binder/items/tapered-herb-planter/medium.html",
    ]);
    const sheet = readFileSync(join(site, "binder/items/tapered-herb-planter.html"), "utf8");
    for (const size of ["medium", "large"]) expect(sheet).toContain(`items/tapered-herb-planter/${size}.html"`);
    expect(files.filter((file) => file.startsWith("store/goods/"))).toEqual(["store/goods/tapered-herb-planter.html"]);
    const page = readFileSync(join(site, "store/goods/tapered-herb-planter.html"), "utf8");
    for (const size of ["small", "medium", "large"]) expect(page).toContain(`<th scope="row">${size}</th>`);
  });

  it("the schemas for editors", () => {
    const schemas = filesIn(site).filter((file) => file.startsWith("schema/"));
    expect(schemas).toEqual(["schema/orders.json", "schema/recipe.json", "schema/shop.json", "schema/yard.json"]);
    for (const file of schemas) expect(JSON.parse(readFileSync(join(site, file), "utf8"))).toHaveProperty("properties");
  });

  it("prints the path of its first page, whole, and nothing else", () => {
    const out = join(newFolder(), "_site");
    const told = shopleaf(["build", "--content", smallContent, "--out", out]);
    expect(told).toEqual({ code: 0, out: `${join(out, "index.html")}\n`, err: "" });
  });

  it("with --only store: the store, a landing page that leads to nothing else, and no binder", () => {
    const out = join(newFolder(), "_site");
    expect(shopleaf(["build", "--content", smallContent, "--out", out, "--only", "store"]).code).toBe(0);
    expect(existsSync(join(out, "store/index.html"))).toBe(true);
    expect(existsSync(join(out, "binder"))).toBe(false);
    expect(deadPointers(out)).toEqual([]);
  });
});

/** What pages point at and is not there, or is not relative, or is a folder. */
function deadPointers(folder: string): string[] {
  const files = new Set(filesIn(folder));
  return [...files]
    .filter((file) => file.endsWith(".html"))
    .flatMap((file) => {
      const html = readFileSync(join(folder, file), "utf8");
      return pointersIn(html).flatMap((to) => {
        const [path = "", mark] = to.split("#");
        if (/^(mailto|data):/.test(to)) return [];
        if (/^([a-z][a-z0-9+.-]*:|\/)/i.test(to)) return [`${file} > ${to}`];
        const target = path === "" ? file : posix.join(posix.dirname(file), decodeURIComponent(path));
        if (!files.has(target)) return [`${file} > ${to}`];
        if (mark && !readFileSync(join(folder, target), "utf8").includes(` id="${mark}"`)) return [`${file} > ${to}`];
        return [];
      });
    });
}

/** The same for what style sheets ask for. */
function deadStyles(folder: string): string[] {
  const files = new Set(filesIn(folder));
  return [...files]
    .filter((file) => file.endsWith(".css"))
    .flatMap((file) =>
      [...readFileSync(join(folder, file), "utf8").matchAll(/url\(\s*["']?([^"')]+)/g)]
        .map(([, to]) => posix.join(posix.dirname(file), to ?? ""))
        .filter((to) => !files.has(to))
        .map((to) => `${file} > ${to}`),
    );
}

describe("pointers", () => {
  it("there are many of them", () => {
    const all = filesIn(site).filter((f) => f.endsWith(".html"));
    expect(all.flatMap((f) => pointersIn(readFileSync(join(site, f), "utf8"))).length).toBeGreaterThan(40);
  });

  it("all are relative, end in a file name and lead to a file that is there", () => {
    expect(deadPointers(site)).toEqual([]);
    expect(deadStyles(site)).toEqual([]);
  });

  it("each shelf copied away alone still has all it points at", () => {
    for (const shelf of ["store", "binder"]) {
      const alone = join(newFolder(), "deep/down", shelf);
      cpSync(join(site, shelf), alone, { recursive: true });
      expect(deadPointers(alone)).toEqual([]);
      expect(deadStyles(alone)).toEqual([]);
    }
  });

  it("a page of the site runs no script and may not", () => {
    for (const file of filesIn(site).filter((name) => name.endsWith(".html"))) {
      const html = readFileSync(join(site, file), "utf8");
      // Data for machines is in an element that no browser runs.
      expect(html.match(/<script(?! type="application\/ld\+json">)|<[^>]*\son[a-z]+="|<[^>]*javascript:/gi)).toBeNull();
      expect(html.includes(`<head><meta http-equiv="Content-Security-Policy" content="default-src 'none'`)).toBe(true);
    }
  });
});

/** Files that only one of two sites has, or that differ by a byte. */
function differing(one: string, other: string): string[] {
  const [a, b] = [bytesIn(one), bytesIn(other)];
  return [...new Set([...a.keys(), ...b.keys()])].filter((name) => a.get(name) !== b.get(name));
}

describe("the same bytes", () => {
  it("are many", () => {
    expect(bytesIn(site).size).toBeGreaterThan(30);
  });

  it("twice from the same content", () => {
    const again = buildInto(join(newFolder(), "elsewhere"), content);
    expect(differing(again, site)).toEqual([]);
  });

  it("with the recipe and yard files under other names, so read in another order", () => {
    const copy = copySmallContent();
    for (const folder of ["recipes", "yard"]) {
      const names = readdirSync(join(copy, folder)).sort();
      names.forEach((name, n) => {
        renameSync(join(copy, folder, name), join(copy, folder, `${names.length - n}-${name}`));
      });
    }
    const again = buildInto(join(newFolder(), "_site"), copy);
    expect(differing(again, small)).toEqual([]);
  });

  it("with the recipe files written by another editor: carriage returns and a byte order mark", () => {
    const copy = copySmallContent();
    for (const name of recipesIn(copy)) {
      const file = join(copy, "recipes", name);
      writeFileSync(file, `\uFEFF${readFileSync(file, "utf8").replaceAll("\n", "\r\n")}`);
    }
    expect(differing(buildInto(join(newFolder(), "_site"), copy), small)).toEqual([]);
  });
});

describe("a mistake", () => {
  /** A good site, then a content folder in which something is wrong. */
  function afterMistake(spoil: (content: string) => void) {
    const copy = copySmallContent();
    const out = join(newFolder(), "_site");
    cpSync(small, out, { recursive: true });
    spoil(copy);
    const told = shopleaf(["build", "--content", copy, "--out", out]);
    expect(differing(out, small)).toEqual([]);
    expect(readdirSync(join(out, "..")).sort()).toEqual(["_site"]);
    return { told, copy };
  }

  it("in two recipes: both are told with their lines, the code is 1, the last good site stays byte for byte", () => {
    const { told, copy } = afterMistake((folder) => {
      for (const name of recipesIn(folder).slice(0, 2)) {
        const file = join(folder, "recipes", name);
        writeFileSync(file, readFileSync(file, "utf8").replace(/^overall: .*$/m, "overall: 3/0 x 2x4 x 26"));
      }
    });
    expect(told.code).toBe(1);
    expect(told.out).toBe("");
    for (const name of recipesIn(copy).slice(0, 2)) expect(told.err).toMatch(new RegExp(`${name}:\\d+:\\d+  `));
    expect(told.err).not.toMatch(/\n\s+at /);
  });

  it("two recipes with one title: each names the other", () => {
    const { told, copy } = afterMistake((folder) => {
      const [first = ""] = recipesIn(folder);
      cpSync(join(folder, "recipes", first), join(folder, "recipes", `copy-of-${first}`));
    });
    const [copied = "", first = ""] = [
      recipesIn(copy).find((n) => n.startsWith("copy-of")),
      recipesIn(copy).find((n) => recipesIn(copy).includes(`copy-of-${n}`)),
    ];
    expect(told.code).toBe(1);
    expect(told.err).toContain(`${copied}:1:1`);
    expect(told.err).toContain(`${first}:1:1`);
    expect(told.err).toContain("the same address");
  });

  it("in an example of the guide: told at its line of the page", () => {
    let where = "";
    const { told } = afterMistake((folder) => {
      const page = readdirSync(join(folder, "guide")).find((name) => name.startsWith("01")) ?? "";
      const lines = readFileSync(join(folder, "guide", page), "utf8").split("\n");
      const fence = lines.indexOf("```recipe");
      const at = lines.findIndex((line, n) => n > fence && line.startsWith("overall: "));
      lines[at] = "overall: 3/0 x 9 x 9";
      writeFileSync(join(folder, "guide", page), lines.join("\n"));
      where = `${page}:${at + 1}:10  `;
    });
    expect(told.code).toBe(1);
    expect(told.err).toContain(where);
  });

  it("a price without a date in the yard", () => {
    const { told } = afterMistake((folder) => {
      for (const name of readdirSync(join(folder, "yard"))) {
        const file = join(folder, "yard", name);
        writeFileSync(file, readFileSync(file, "utf8").replace(/^\s*priced: .*$/gm, ""));
      }
    });
    expect(told.code).toBe(1);
    expect(told.err).toMatch(/\.yaml:\d+:\d+ {2}/);
  });

  it("no recipe at all", () => {
    const folder = join(newFolder(), "content");
    mkdirSync(join(folder, "recipes"), { recursive: true });
    const told = shopleaf(["build", "--content", folder, "--out", join(folder, "../_site")]);
    expect(told.code).toBe(1);
    expect(told.err).toContain("There is no recipe in this folder");
    expect(told.err).toContain('no folder "yard"');
    expect(existsSync(join(folder, "../_site"))).toBe(false);
  });

  it("a draft may be broken: it is not built, and `problems` still tells", () => {
    const copy = copySmallContent();
    const [first = ""] = recipesIn(copy);
    const file = join(copy, "recipes", "half-done.md");
    const text = readFileSync(join(copy, "recipes", first), "utf8");
    writeFileSync(
      file,
      text.replace(/^title: .*$/m, "title: Half done\ndraft: yes").replace(/^stand:$/m, "stand:\n  odd: 3 nothing"),
    );
    const again = buildInto(join(newFolder(), "_site"), copy);
    expect(differing(again, small)).toEqual([]);
    expect(shopleaf(["problems", file]).code).toBe(1);
  });
});

describe("hostile words", () => {
  it("in titles, purposes and prose stay words: no markup, no path out of the site", () => {
    const copy = copySmallContent();
    const [first = ""] = recipesIn(copy);
    const file = join(copy, "recipes", first);
    const bad = `<script>alert(1)</script><img src=x onerror=alert(1)>"'&`;
    const text = readFileSync(file, "utf8")
      .replace(/^title: .*$/m, `title: '../../${bad.replaceAll("'", "''")}'`)
      .replace(/^---\n([\s\S]*?)\n---\n/, (all) => `${all}\n${bad}\n\n`);
    writeFileSync(file, text);
    const folder = newFolder();
    buildInto(join(folder, "_site"), copy);
    expect(readdirSync(folder)).toEqual(["_site"]);
    for (const name of filesIn(join(folder, "_site"))) {
      expect(name).toMatch(/^\.shopleaf-site$|^[a-z0-9./-]+$/i);
      if (!name.endsWith(".html")) continue;
      const html = readFileSync(join(folder, "_site", name), "utf8");
      expect(
        html.match(
          /<script(?! type="application\/ld\+json">)|<img(?! src="(\.\.\/)*(drawings|pictures)\/)|href="javascript|src="http/gi,
        ),
      ).toBeNull();
    }
    expect(deadPointers(join(folder, "_site"))).toEqual([]);
  });
});

describe("an output folder that is not a site", () => {
  it("is refused as a wrong call, and left alone", () => {
    const folder = newFolder();
    writeFileSync(join(folder, "letter.txt"), "mine");
    const told = shopleaf(["build", "--out", folder]);
    expect(told.code).toBe(2);
    expect(told.err).toContain("holds other files");
    expect(readdirSync(folder)).toEqual(["letter.txt"]);
  });

  it("so is one that can't be made", () => {
    const file = join(newFolder(), "letter.txt");
    writeFileSync(file, "mine");
    const told = shopleaf(["build", "--out", join(file, "_site")]);
    expect(told.code).toBe(2);
    expect(told.err).toContain("a file stands where a folder is meant");
  });

  it("a link to a site stays a link", () => {
    const folder = newFolder();
    cpSync(small, join(folder, "real"), { recursive: true });
    symlinkSync("real", join(folder, "_site"));
    buildInto(join(folder, "_site"), smallContent);
    expect(readdirSync(folder).sort()).toEqual(["_site", "real"]);
    expect(lstatSync(join(folder, "_site")).isSymbolicLink()).toBe(true);
  });

  it("so is one that holds the content", () => {
    const copy = copyContent();
    expect(shopleaf(["build", "--content", copy, "--out", join(copy, "..")]).code).toBe(2);
    expect(existsSync(join(copy, "recipes"))).toBe(true);
  });
});

// The folders are the way of the data: who may import whom, read from the import lines of every file.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { describe, expect, it } from "vitest";

const root = resolve(import.meta.dirname, "../..");

/** From first to last; a stage imports only from itself and from those before it. */
const ladder = [
  "units",
  "problems",
  "geometry",
  "cutting",
  "yard",
  "recipe",
  "item",
  "findings",
  "drawing",
  "leaves",
  "paper",
  "site",
];

type Import = { readonly from: string; readonly to: string; readonly typeOnly: boolean };

const sourceFiles = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(ts|tsx|js)$/.test(name) && !name.endsWith(".d.ts"))
    .map((name) => join(folder, name))
    .sort();

/** Every `import` and `export … from` of a file, and its dynamic imports. */
function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), "utf8");
  const found: Import[] = [];
  for (const match of text.matchAll(/^(?:import|export)\b(\s+type\b)?[^;]*?\bfrom\s+"([^"]+)"/gm)) {
    found.push(resolved(file, match[2] ?? "", match[1] !== undefined));
  }
  for (const match of text.matchAll(/^import\s+"([^"]+)"|\bimport\(\s*"([^"]+)"/gm)) {
    found.push(resolved(file, match[1] ?? match[2] ?? "", false));
  }
  return found;
}

const resolved = (from: string, to: string, typeOnly: boolean): Import => ({
  from,
  to: to.startsWith(".") ? relative(root, resolve(root, dirname(from), to)) : to,
  typeOnly,
});

const source = sourceFiles("src").flatMap(importsOf);
const layouts = sourceFiles("layouts").flatMap(importsOf);
const stageOf = (file: string): string | undefined => /^src\/([^/]+)\//.exec(file)?.[1];
const told = (imports: readonly Import[]): string[] => imports.map(({ from, to }) => `${from} imports ${to}`);

describe("who may import whom", () => {
  it("finds the imports it is to judge", () => {
    expect(source.length).toBeGreaterThan(100);
    expect(layouts.length).toBeGreaterThan(10);
    expect(told(importsOf("src/site/cli.ts"))).toContain("src/site/cli.ts imports src/site/handles/build.ts");
  });

  it("every folder under src is a rung of the ladder", () => {
    const stages = new Set(sourceFiles("src").flatMap((file) => stageOf(file) ?? []));
    expect([...stages].filter((stage) => !ladder.includes(stage))).toEqual([]);
  });

  it("a stage imports only from itself and from stages before it", () => {
    const wrong = source.filter(({ from, to }) => {
      const [here, there] = [stageOf(from), stageOf(to)];
      return here !== undefined && there !== undefined && ladder.indexOf(there) > ladder.indexOf(here);
    });
    expect(told(wrong)).toEqual([]);
  });

  it("only the site imports layouts, and layouts import types of the leaves, each other and nothing else of ours", () => {
    const wrong = [
      ...source.filter(({ from, to }) => to.startsWith("layouts/") && stageOf(from) !== "site"),
      ...layouts.filter(
        ({ to, typeOnly }) =>
          !to.startsWith("layouts/") && !to.startsWith("preact") && !(typeOnly && stageOf(to) === "leaves"),
      ),
    ];
    expect(told(wrong)).toEqual([]);
  });

  it("only the site, and the command before it, touches disk, network, clock or processes", () => {
    const outside = source.filter(
      ({ from, to }) => to.startsWith("node:") && stageOf(from) !== "site" && from !== "src/shopleaf.js",
    );
    // Numbers of bytes and hashes are pure.
    expect(told(outside.filter(({ to }) => !["node:crypto", "node:buffer"].includes(to)))).toEqual([]);
    const clock = sourceFiles("src").filter(
      (file) =>
        stageOf(file) !== "site" &&
        /\bnew Date\(\s*\)|\bDate\.now\(|\bperformance\.now\(|\bMath\.random\(/.test(
          readFileSync(join(root, file), "utf8"),
        ),
    );
    expect(clock).toEqual([]);
  });

  it("no file imports itself by way of others", () => {
    const next = new Map<string, string[]>();
    for (const { from, to, typeOnly } of [...source, ...layouts]) {
      if (!typeOnly) next.set(from, [...(next.get(from) ?? []), to]);
    }
    const cycles: string[] = [];
    const done = new Set<string>();
    const visit = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) cycles.push([...path.slice(path.indexOf(file)), file].join(" > "));
      if (done.has(file) || path.includes(file)) return;
      for (const to of next.get(file) ?? []) visit(to, [...path, file]);
      done.add(file);
    };
    for (const file of next.keys()) visit(file, []);
    expect(cycles).toEqual([]);
  });

  it("has no file that only passes on what others export", () => {
    const barrels = sourceFiles("src").filter((file) => /(^|\/)index\.[jt]sx?$/.test(file));
    expect(barrels).toEqual([]);
  });
});

describe("the wall", () => {
  /** What is made for the store: its leaves and its layouts. */
  const storeLeaves = [
    "product-page",
    "care-card",
    "store-index",
    "product-data",
    "on-the-web",
    "feed",
    "shot-list",
    "about-page",
    "availability-words",
    "care-page",
    "fit",
    "line-page",
    "order-by-message",
    "over-time",
    "photos",
    "spares-page",
    "store-images",
    "where-from",
    "whom-for",
  ];

  it("leaves of the store know no item, recipe or yard, only what the wall lets through", () => {
    const closed = /^src\/(item|recipe|yard)\//;
    const wrong = source.filter(({ from, to }) => {
      const name = /^src\/leaves\/(.+)\.ts$/.exec(from)?.[1];
      return name !== undefined && storeLeaves.includes(name) && closed.test(to);
    });
    expect(
      storeLeaves.map((name) => `src/leaves/${name}.ts`).filter((file) => !sourceFiles("src").includes(file)),
    ).toEqual([]);
    expect(told(wrong)).toEqual([]);
  });
});

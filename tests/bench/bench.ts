// How long the work takes, as a table: warm medians in one process, and the demo site from cold in a new one.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { drawExploded } from "../../src/drawing/exploded-view.ts";
import { standingViews } from "../../src/drawing/standing-view.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { sceneOf, visibleLines } from "../../src/geometry/scene.ts";
import { solidOf } from "../../src/geometry/solid.ts";
import { inInches } from "../../src/geometry/tolerance.ts";
import { namedViews } from "../../src/geometry/view.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { yardFor } from "../../src/site/yard-for.ts";
import { newFolder, root, shopleaf } from "../whole/demo.ts";

const file = join(root, "content/recipes/hose-and-pot-corral.md");
const text = readFileSync(file, "utf8");
const { yard } = yardFor(file, undefined);
const { recipe } = readRecipe(file, text);
if (!yard || !recipe) throw new Error("the demo has problems");
const { item } = workOut(recipe, yard);
if (!item) throw new Error("the corral can't be worked out");
const parts = item.members.map(({ id, solid }) => ({ id, solid }));

/** Milliseconds: the middle one of many runs after some that don't count. */
function warm(run: () => unknown): number {
  for (let i = 0; i < 5; i++) run();
  const times = Array.from({ length: 21 }, () => {
    const started = performance.now();
    run();
    return performance.now() - started;
  }).sort((a, b) => a - b);
  return times[10] as number;
}

function cold(): number {
  const out = join(newFolder(), "_site");
  const started = performance.now();
  const told = shopleaf(["build", "--content", join(root, "content"), "--out", out]);
  if (told.code !== 0) throw new Error(`the demo does not build:\n${told.err}`);
  return performance.now() - started;
}

const pictorial = standingViews[0]?.view ?? namedViews.iso;
const exploded = drawExploded(item);
const kilobytes = formatSvg(exploded).length / 1000;

const rows: readonly (readonly [what: string, milliseconds: number, limit?: number])[] = [
  ["read the corral's recipe", warm(() => readRecipe(file, text))],
  ["work out the corral, 41 members", warm(() => workOut(recipe, yard)), 150],
  ["its solids alone", warm(() => item.members.map(({ shape }) => solidOf(shape)))],
  ["its visible lines, front", warm(() => visibleLines(parts, namedViews.front, inInches))],
  ["its visible lines, iso", warm(() => visibleLines(parts, namedViews.iso, inInches))],
  ["its pictorial drawing, lines and fills", warm(() => sceneOf(parts, pictorial, inInches)), 150],
  ["its exploded view, found and drawn", warm(() => drawExploded(item))],
  ["that as SVG", warm(() => formatSvg(exploded))],
  ["the demo site from cold, a new process", cold(), 10_000],
];
for (const [what, milliseconds, limit] of rows) {
  const verdict = limit === undefined ? "" : `  limit ${limit} ms: ${milliseconds < limit ? "met" : "MISSED"}`;
  process.stdout.write(`${what.padEnd(42)}${milliseconds.toFixed(1).padStart(9)} ms${verdict}\n`);
}
process.stdout.write(
  `${"the SVG of its exploded view".padEnd(42)}${kilobytes.toFixed(1).padStart(9)} kB  limit 60 kB: ${kilobytes < 60 ? "met" : "MISSED"}\n`,
);
if (kilobytes >= 60 || rows.some(([, milliseconds, limit]) => limit !== undefined && milliseconds >= limit))
  process.exitCode = 1;

process.stdout.write("\nCutting plans (two problems of each set; `-- all` for every one)\n");
await import("./cutting.ts");

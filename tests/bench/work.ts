// How long the work takes, as a table: warm medians in one process, and the demo site from cold in a new one.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { drawExploded } from "../../src/drawing/exploded-view.ts";
import { pictureSize, takePicture } from "../../src/drawing/picture.ts";
import { binderSheet } from "../../src/drawing/sheet.ts";
import { drawStanding, standingViews } from "../../src/drawing/standing-view.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { sceneOf, visibleLines } from "../../src/geometry/scene.ts";
import type { Shape, Vec3 } from "../../src/geometry/shape.ts";
import { solidOf } from "../../src/geometry/solid.ts";
import { inInches } from "../../src/geometry/tolerance.ts";
import { add } from "../../src/geometry/vector.ts";
import { namedViews } from "../../src/geometry/view.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { yardFor } from "../../src/site/yard-for.ts";
import { inches } from "../../src/units/length.ts";
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

/** Five corrals in a row, 205 members: lines and fills, and drawn on a sheet of the binder. */
const side = inches(item.overall.width) * 1.2;
const many = [0, 1, 2, 3, 4].flatMap((i) => item.members.map((member) => ({ member, by: [i * side, 0, 0] as const })));
const manyParts = many.map(({ member, by }, i) => ({ id: `${i}`, solid: solidOf(movedShape(member.shape, by)) }));
function movedShape({ frame, ...rest }: Shape, by: Vec3): Shape {
  return { ...rest, frame: { ...frame, origin: add(frame.origin, by) } };
}
const crowd = (): Drawing => {
  const picture = takePicture(many, pictorial);
  const size = pictureSize(picture);
  const scale = Math.min(binderSheet.width / size.width, binderSheet.height / size.height);
  return {
    id: "five-corrals",
    title: "Five corrals",
    description: "Five corrals in a row.",
    width: binderSheet.width,
    height: binderSheet.height,
    marks: drawStanding(picture, { scale, left: 0, top: 0 }, () => ({ kind: "wood" })),
  };
};

const rows: readonly (readonly [what: string, milliseconds: number, limit?: number])[] = [
  ["read the corral's recipe", warm(() => readRecipe(file, text))],
  ["work out the corral, 41 members", warm(() => workOut(recipe, yard)), 150],
  ["its solids alone", warm(() => item.members.map(({ shape }) => solidOf(shape)))],
  ["its visible lines, front", warm(() => visibleLines(parts, namedViews.front, inInches))],
  ["its visible lines, iso", warm(() => visibleLines(parts, namedViews.iso, inInches))],
  ["its pictorial drawing, lines and fills", warm(() => sceneOf(parts, pictorial, inInches)), 150],
  ["five of them, 205 members, lines and fills", warm(() => sceneOf(manyParts, pictorial, inInches)), 1000],
  ["its exploded view, found and drawn", warm(() => drawExploded(item))],
  ["that as SVG", warm(() => formatSvg(exploded))],
  ["the demo site from cold, a new process", cold(), 10_000],
];
for (const [what, milliseconds, limit] of rows) {
  const verdict = limit === undefined ? "" : `  limit ${limit} ms: ${milliseconds < limit ? "met" : "MISSED"}`;
  process.stdout.write(`${what.padEnd(42)}${milliseconds.toFixed(1).padStart(9)} ms${verdict}\n`);
}
const sizes = [
  ["the SVG of its exploded view", exploded],
  ["the SVG of 205 members", crowd()],
] as const;
const most = 60;
const kilobytes = sizes.map(([what, drawing]) => [what, formatSvg(drawing).length / 1000] as const);
for (const [what, size] of kilobytes) {
  process.stdout.write(
    `${what.padEnd(42)}${size.toFixed(1).padStart(9)} kB  limit ${most} kB: ${size < most ? "met" : "MISSED"}\n`,
  );
}
if (
  kilobytes.some(([, size]) => size >= most) ||
  rows.some(([, milliseconds, limit]) => limit !== undefined && milliseconds >= limit)
)
  process.exitCode = 1;

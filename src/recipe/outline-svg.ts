// The text of an SVG drawing -> its closed lines in inches, the edge first, or what keeps it from being a true-size outline.
import { SaxesParser, type SaxesTagPlain } from "saxes";
import { profileOf, signedArea } from "../geometry/profile.ts";
import type { Loop } from "../geometry/shape.ts";
import type { Place } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { type Matrix, matrixBy, moved, readTransform, scaleOf } from "./outline-svg-matrix.ts";
import { drawnLoops } from "./outline-svg-shapes.ts";
import type { Outline } from "./recipe.ts";

/** Elements that draw nothing, with all that is in them. */
const silent = ["defs", "title", "desc", "metadata", "style", "symbol", "clipPath", "mask", "marker", "linearGradient"];
const drawn = ["path", "rect", "circle", "ellipse", "polygon", "polyline", "line"];
/** No outline that a saw follows has more lines. */
const mostLoops = 200;
const longestDrawing = 500_000;

type Found = { readonly loop: Loop; readonly at: Place };

/** Undefined where a problem was told. */
export function readSvgOutline(name: string, file: string, svg: string, problems: Problem[]): Outline | undefined {
  const start: Place = { file, line: 1, column: 1 };
  const before = problems.length;
  if (svg.length > longestDrawing) {
    problems.push(problem("svg-too-long", start, { letters: svg.length, most: longestDrawing }));
    return undefined;
  }
  const found: Found[] = [];
  const inside: { matrix: Matrix; silent: boolean }[] = [];
  const parser = new SaxesParser();
  let broken: Problem | undefined;
  let tag: Place = start;
  parser.on("error", ({ message }) => {
    const why = message.replace(/^\d+:\d+: */, "");
    broken ??= problem("svg-broken", { file, line: parser.line, column: parser.column + 1 }, { why });
  });
  parser.on("opentagstart", ({ name: element }) => {
    // the parser stands behind the name
    tag = { file, line: parser.line, column: Math.max(1, parser.column - element.length - 1) };
  });
  parser.on("opentag", (element) => {
    if (broken) return;
    const kind = element.name.replace(/^svg:/, "");
    const outer = inside.at(-1);
    if (!outer && kind !== "svg") problems.push(problem("svg-not-one", tag, { found: kind }));
    const matrix = outer ? inner(outer.matrix, element, tag, problems) : rootMatrix(element, tag, problems);
    const isSilent = (outer?.silent ?? false) || silent.includes(kind) || kind.includes(":");
    inside.push({ matrix: matrix ?? matrixBy(1), silent: isSilent || !matrix });
    if (isSilent || !matrix || !outer || kind === "g" || kind === "a") return;
    if (!drawn.includes(kind)) problems.push(problem("svg-thing", tag, { found: kind }));
    else for (const loop of drawnLoops(kind, element.attributes, matrix, tag, problems)) found.push({ loop, at: tag });
  });
  parser.on("closetag", () => inside.pop());
  parser.write(svg).close();
  if (broken) problems.push(broken);
  if (problems.length > before) return undefined;
  if (found.length === 0 || found.length > mostLoops) {
    problems.push(problem("svg-lines", start, { count: found.length, most: mostLoops }));
    return undefined;
  }
  return { name, at: start, loops: inOrder(found) };
}

/** The one that holds most is the edge; the others keep the order they are drawn in. */
function inOrder(found: readonly Found[]): Outline["loops"] {
  const sizes = found.map(({ loop }) => Math.abs(signedArea(profileOf(loop, 0.01).points)));
  const edge = sizes.indexOf(Math.max(...sizes));
  const order = [edge, ...found.keys()].filter((i, k) => k === 0 || i !== edge);
  return order.flatMap((i, k) => {
    const each = found[i];
    if (!each) return [];
    return [{ kind: "drawn" as const, name: k === 0 ? "edge" : `cut-out ${k}`, at: each.at, loop: each.loop }];
  });
}

function inner(outer: Matrix, element: SaxesTagPlain, at: Place, problems: Problem[]): Matrix | undefined {
  const transform = element.attributes.transform;
  if (transform === undefined) return outer;
  const own = readTransform(transform);
  if (!own) {
    problems.push(problem("svg-transform", at, { found: transform.slice(0, 40) }));
    return undefined;
  }
  return moved(outer, own);
}

const inchesIn: Readonly<Record<string, number>> = { in: 1, mm: 1 / 25.4, cm: 1 / 2.54, pt: 1 / 72, pc: 1 / 6 };
/** A pixel of the web is 1/96 in (CSS Values and Units, absolute lengths). */
const pixelsPerInch = 96;

const lengthIn = (text: string | undefined): number | undefined => {
  const [, number = "", unit = ""] = /^\s*([0-9.]+(?:e[-+]?\d+)?)\s*(in|mm|cm|pt|pc)\s*$/i.exec(text ?? "") ?? [];
  const scale = inchesIn[unit.toLowerCase()];
  return scale === undefined || !(Number(number) > 0) ? undefined : Number(number) * scale;
};

/** From the drawing's own units, y down, to inches, y up from the lower left of the sheet. */
function rootMatrix({ attributes }: SaxesTagPlain, at: Place, problems: Problem[]): Matrix | undefined {
  const { width: wide, height: high, viewBox } = attributes;
  const [width, height] = [lengthIn(wide), lengthIn(high)];
  if (width === undefined || height === undefined) {
    problems.push(problem("svg-no-size", at, { width: wide ?? "", height: high ?? "" }));
    return undefined;
  }
  const box = (viewBox ?? `0 0 ${width * pixelsPerInch} ${height * pixelsPerInch}`)
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [x = 0, y = 0, w = 0, h = 0] = box;
  if (box.length !== 4 || !box.every(Number.isFinite) || !(w > 0) || !(h > 0)) {
    problems.push(problem("svg-view-box", at, { found: viewBox ?? "" }));
    return undefined;
  }
  const [across, up] = [width / w, height / h];
  if (Math.abs(across - up) > 1e-3 * across) {
    problems.push(problem("svg-stretched", at, { width, height, boxWidth: w, boxHeight: h }));
    return undefined;
  }
  return scaleOf(across, -across, -x * across, (y + h) * across);
}

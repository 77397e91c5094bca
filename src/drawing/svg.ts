// Drawing -> SVG text: few elements in a fixed order, paper mm, colours that hold in a browser, on paper and in grey.

import type { Element } from "@svgdotjs/svg.js";
import { registerWindow, SVG } from "@svgdotjs/svg.js";
import { createSVGWindow } from "svgdom";
import { wordType } from "./balloons.ts";
import { isDark } from "./dark.ts";
import type { Drawing, LineKind, Mark, Paper, Tone } from "./drawing.ts";
import { wide } from "./sheet.ts";
import { baseline, textWidth } from "./text-width.ts";

const ink = "#1f1a17";
const ground = "#ffffff";

/** Lightest to darkest: what looks up, to the front, to the side (shade 0, 1, 2). */
const tones: Readonly<Record<Exclude<Tone["kind"], "coat">, readonly [string, string, string]>> = {
  pane: ["#a9c9da", "#a9c9da", "#a9c9da"],
  wood: ["#f7ead0", "#efd9b0", "#e2c592"],
  "end grain": ["#e3c190", "#d9b27e", "#cda36c"],
  added: ["#ffdf8f", "#f9c95c", "#eab03a"],
  there: ["#f8f6f1", "#f0ece4", "#e6e1d7"],
  figure: ["#e3e7ea", "#d7dcdf", "#cbd1d5"],
  fitting: ["#d5dade", "#bcc3c8", "#a3abb1"],
  paper: [ground, ground, ground],
};

/** How much of a coat's own light is left on faces that look up, to the front, to the side. */
const shadeOfCoat = [1, 0.9, 0.78];

/** A dark coat has no light of its own to lose: this much white is laid over it instead, so that its faces differ. */
const sheenOfDark = [0.3, 0.16, 0.06];

/** How much of its colour a pane gives to what is seen through it. */
const paneTint = 0.45;

/** ISO 128-2 dashes as multiples of the line width: dashed 12 and 3; long-dashed dotted 24, 3, 0.5 and 3. */
const lines: Readonly<
  Record<LineKind, { readonly wide: boolean; readonly colour: string; readonly dash?: readonly number[] }>
> = {
  light: { wide: false, colour: "#6f6862" },
  hidden: { wide: false, colour: ink, dash: [12, 3] },
  path: { wide: false, colour: "#6f6862", dash: [24, 3, 0.5, 3] },
  dimension: { wide: false, colour: ink },
  pale: { wide: true, colour: "#a39c95" },
  visible: { wide: true, colour: ink },
  strong: { wide: true, colour: ink },
};
const lineOrder: readonly LineKind[] = ["light", "path", "hidden", "dimension", "pale", "visible", "strong"];

/** Two decimals, no trailing noughts, no minus nought. */
const mm = (value: number): string => String(Math.round(value * 100) / 100 + 0);

const point = ([u, v]: Paper): string => `${mm(u)} ${mm(v)}`;

const hundredths = (value: number): number => Math.round(value * 100);

/** A step in hundredths of a millimetre as short as SVG allows: no nought before the point. */
const step = (by: number): string => String(by / 100).replace(/^(-?)0\./, "$1.");

const after = (by: number): string => (by < 0 ? step(by) : ` ${step(by)}`);

/** A chain's points in hundredths; those that fall on the one before once rounded are dropped, and chains of too few. */
function roundedChain(chain: readonly Paper[], closed: boolean): readonly Paper[] {
  const points: Paper[] = [];
  for (const [u, v] of chain) {
    const at: Paper = [hundredths(u), hundredths(v)];
    const last = points.at(-1);
    if (last === undefined || last[0] !== at[0] || last[1] !== at[1]) points.push(at);
  }
  const [first, end] = [points[0], points.at(-1)];
  if (closed && points.length > 1 && first?.[0] === end?.[0] && first?.[1] === end?.[1]) points.pop();
  return points.length < (closed ? 3 : 2) ? [] : points;
}

/** All chains as one path: the first point as it stands, then steps between rounded points, which never add up to an error. */
function chainsPath(chains: readonly (readonly Paper[])[], closed: boolean): string {
  let d = "";
  let at: Paper | undefined;
  for (const chain of chains) {
    const points = roundedChain(chain, closed);
    const [first] = points;
    if (first === undefined) continue;
    d +=
      at === undefined
        ? `M${first[0] / 100} ${first[1] / 100}`
        : `m${step(first[0] - at[0])}${after(first[1] - at[1])}`;
    let before = "";
    points.slice(1).forEach(([u, v], i) => {
      const [x, y] = points[i] as Paper;
      const [across, down] = [u - x, v - y];
      const way = across === 0 ? "v" : down === 0 ? "h" : "l";
      if (way === "l") d += `${before === "l" ? after(across) : `l${step(across)}`}${after(down)}`;
      else d += `${way}${step(way === "v" ? down : across)}`;
      before = way;
    });
    if (closed) d += "Z";
    at = closed ? first : (points.at(-1) as Paper);
  }
  return d;
}

const circlePath = ([u, v]: Paper, radius: number): string =>
  `M${mm(u - radius)} ${mm(v)}a${mm(radius)} ${mm(radius)} 0 1 0 ${mm(2 * radius)} 0a${mm(radius)} ${mm(radius)} 0 1 0 ${mm(-2 * radius)} 0Z`;

/** A slim triangle, 15 degrees to each side of half its point (ISO 129-1 closed arrow). */
function arrowPath(tip: Paper, way: Paper, size: number): string {
  const half = size * Math.tan(Math.PI / 12);
  const back: Paper = [tip[0] - way[0] * size, tip[1] - way[1] * size];
  const corner = (side: number): Paper => [back[0] - way[1] * half * side, back[1] + way[0] * half * side];
  return chainsPath([[tip, corner(1), corner(-1)]], true);
}

function changed(colour: string, change: (light: number) => number): string {
  const channel = (from: number): string =>
    Math.round(change(Number.parseInt(colour.slice(from, from + 2), 16)))
      .toString(16)
      .padStart(2, "0");
  return `#${channel(1)}${channel(3)}${channel(5)}`;
}

function coatFill(colour: string, step: number): string {
  const sheen = sheenOfDark[step] ?? 0;
  if (isDark(colour)) return changed(colour, (light) => light + (255 - light) * sheen);
  return changed(colour, (light) => light * (shadeOfCoat[step] ?? 1));
}

function fillOf(tone: Tone, shade: number): string {
  const step = Math.max(0, Math.min(2, Math.round(shade)));
  return tone.kind === "coat" ? coatFill(tone.colour, step) : (tones[tone.kind][step] ?? ground);
}

const named = (kind: string): string => `d-${kind.replaceAll(" ", "-")}`;

/** The marks of one kind, in their order. */
const only = <K extends Mark["kind"]>(marks: readonly Mark[], kind: K): readonly Extract<Mark, { kind: K }>[] =>
  marks.filter((mark): mark is Extract<Mark, { kind: K }> => mark.kind === kind);

export function formatSvg(drawing: Drawing): string {
  const window = createSVGWindow();
  registerWindow(window, window.document);
  const root = SVG();
  root.attr({
    id: drawing.id,
    class: "drawing",
    width: `${mm(drawing.width)}mm`,
    height: `${mm(drawing.height)}mm`,
    viewBox: `0 0 ${mm(drawing.width)} ${mm(drawing.height)}`,
    role: "img",
    "aria-labelledby": `${drawing.id}-t ${drawing.id}-d`,
    "xmlns:svgjs": null,
  });
  root.element("title").words(drawing.title).attr("id", `${drawing.id}-t`);
  root.element("desc").words(drawing.description).attr("id", `${drawing.id}-d`);
  const pen = drawing.pen ?? wide;
  const path = (d: string, look: Readonly<Record<string, string | number>>): void => {
    if (d !== "") root.element("path").attr({ d, ...look });
  };
  root.element("rect").attr({ class: "d-ground", width: mm(drawing.width), height: mm(drawing.height), fill: ground });
  drawRegions(drawing.marks, path);
  for (const kind of lineOrder) {
    const look = lines[kind];
    const chains = only(drawing.marks, "lines")
      .filter((mark) => mark.line === kind)
      .flatMap((mark) => mark.chains);
    const width = look.wide ? pen : pen / 2;
    path(chainsPath(chains, false), {
      class: named(kind),
      fill: "none",
      stroke: look.colour,
      "stroke-width": mm(width),
      "stroke-linejoin": "round",
      ...(look.dash === undefined
        ? { "stroke-linecap": "round" }
        : { "stroke-dasharray": look.dash.map((part) => mm(part * width)).join(" ") }),
    });
  }
  const solid = [
    ...only(drawing.marks, "arrowhead").map((mark) => arrowPath(mark.tip, mark.way, mark.size)),
    ...only(drawing.marks, "dot").map((mark) => circlePath(mark.at, mark.radius)),
  ];
  path(solid.join(""), { class: "d-solid", fill: ink });
  const balloons = only(drawing.marks, "balloon");
  path(balloons.map((mark) => circlePath(mark.at, mark.radius)).join(""), {
    class: "d-balloon",
    fill: ground,
    stroke: ink,
    "stroke-width": mm(pen / 2),
  });
  drawTexts(drawing.marks, root);
  return `${root.node.outerHTML}\n`;
}

function drawRegions(
  marks: readonly Mark[],
  path: (d: string, look: Readonly<Record<string, string | number>>) => void,
): void {
  const byFill = new Map<string, { readonly kind: string; readonly loops: (readonly Paper[])[] }>();
  // Panes come last: they tint what they lie over.
  const regions = only(marks, "region");
  const isPane = ({ tone }: (typeof regions)[number]): boolean => tone.kind === "pane";
  for (const mark of [...regions.filter((one) => !isPane(one)), ...regions.filter(isPane)]) {
    const fill = fillOf(mark.tone, mark.shade);
    const entry = byFill.get(fill);
    if (entry === undefined) byFill.set(fill, { kind: mark.tone.kind, loops: [...mark.loops] });
    else entry.loops.push(...mark.loops);
  }
  for (const [fill, { kind, loops }] of byFill) {
    // The thin line in the fill's own colour closes the hairline seams between neighbours.
    path(chainsPath(loops, true), {
      class: named(kind),
      fill,
      "fill-rule": "evenodd",
      ...(kind === "pane" ? { "fill-opacity": paneTint } : { stroke: fill, "stroke-width": 0.1 }),
    });
  }
}

type Parent = { element(name: string): Element };

function drawTexts(marks: readonly Mark[], root: Parent): void {
  const texts = [
    ...only(marks, "text"),
    ...only(marks, "balloon").map((mark) => {
      const size = balloonType(mark.radius, mark.text);
      return {
        at: [mark.at[0], mark.at[1] + baseline(size)] as Paper,
        text: mark.text,
        size,
        anchor: "middle" as const,
        strong: true,
        turn: 0,
      };
    }),
  ];
  if (texts.length === 0) return;
  const group = root.element("g") as Element & Parent;
  group.attr({ class: "d-text", "font-family": "'Source Sans 3', sans-serif", fill: ink });
  for (const mark of texts) {
    const turn = mark.turn ?? 0;
    group
      .element("text")
      .words(mark.text)
      .attr({
        x: mm(mark.at[0]),
        y: mm(mark.at[1]),
        "font-size": mm(mark.size),
        "text-anchor": mark.anchor === "start" ? null : mark.anchor,
        "font-weight": mark.strong ? 600 : null,
        transform: turn === 0 ? null : `rotate(${mm(-turn)} ${point(mark.at)})`,
      });
  }
}

/** Type that fits its circle: a letter or two large, "B right" as wide as the circle lets it. */
const balloonType = (radius: number, text: string): number =>
  text.length > 2 ? Math.min(wordType, (2 * radius - 1.2) / textWidth(text, 1, true)) : radius * 1.25;

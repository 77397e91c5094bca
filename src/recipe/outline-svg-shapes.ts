// One drawn element of an SVG -> the closed lines it makes, moved into inches.
import { movedLoop } from "../geometry/outline-move.ts";
import type { Loop, PathItem, Vec2 } from "../geometry/shape.ts";
import type { Place } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { applied, evenScale, type Matrix } from "./outline-svg-matrix.ts";
import { ellipseItems, readSvgPath, type SvgLine } from "./outline-svg-path.ts";

type Attributes = Readonly<Record<string, string>>;

export function drawnLoops(
  name: string,
  attributes: Attributes,
  matrix: Matrix,
  at: Place,
  problems: Problem[],
): Loop[] {
  const scale = evenScale(matrix);
  const number = (key: string): number => Number((attributes[key] ?? "0").replace(/px$/, ""));
  const bad = (what: string): SvgLine[] => {
    problems.push(problem("svg-numbers", at, { name, found: what.slice(0, 40) }));
    return [];
  };
  const lines = (): SvgLine[] => {
    if (name === "path") {
      const read = readSvgPath(attributes.d ?? "", scale !== undefined);
      return "wrong" in read ? bad(read.wrong) : [...read.lines];
    }
    if (name === "polygon" || name === "polyline" || name === "line")
      return pointsLine(name, attributes) ?? bad(attributes.points ?? "");
    return [];
  };
  if (name === "circle" || name === "ellipse") {
    const [rx, ry] = name === "circle" ? [number("r"), number("r")] : [number("rx"), number("ry")];
    const centre: Vec2 = [number("cx"), number("cy")];
    if (!(rx > 0 && ry > 0) || !centre.every(Number.isFinite)) {
      bad(`${attributes.r ?? attributes.rx ?? ""}`);
      return [];
    }
    if (rx === ry && scale !== undefined)
      return [movedLoop({ kind: "circle", centre, radius: rx }, applied(matrix), scale)];
    const items = ellipseItems(centre, rx, ry, 0, 0, 2 * Math.PI);
    return [movedLoop({ kind: "path", items }, applied(matrix))];
  }
  if (name === "rect") {
    const items = rectItems(number("x"), number("y"), number("width"), number("height"), attributes);
    if (items) return [movedLoop({ kind: "path", items }, applied(matrix))];
    bad(`${attributes.width ?? ""} ${attributes.height ?? ""}`);
    return [];
  }
  return lines().flatMap(({ start, items, closed }) => {
    const last = items.at(-1);
    if (!last) return [];
    const end = "to" in last ? last.to : last;
    const [p, q] = [start, end].map(applied(matrix)) as [Vec2, Vec2];
    const gap = Math.hypot(p[0] - q[0], p[1] - q[1]);
    if (!closed && gap > 1e-3) {
      problems.push(problem("svg-open", at, { name, gap, x: q[0], y: q[1] }));
      return [];
    }
    const joined: readonly PathItem[] = gap > 1e-6 ? [...items, start] : items;
    return [movedLoop({ kind: "path", items: joined }, applied(matrix))];
  });
}

function pointsLine(name: string, attributes: Attributes): SvgLine[] | undefined {
  const text =
    name === "line"
      ? ["x1", "y1", "x2", "y2"].map((key) => attributes[key] ?? "0").join(" ")
      : (attributes.points ?? "");
  const numbers = text
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  if (numbers.length < 4 || numbers.length % 2 === 1 || !numbers.every(Number.isFinite)) return undefined;
  const points = numbers.flatMap((x, i): Vec2[] => (i % 2 === 0 ? [[x, numbers[i + 1] ?? 0]] : []));
  const [start = [0, 0], ...rest] = points;
  return [{ start, items: rest, closed: name === "polygon" }];
}

function rectItems(x: number, y: number, w: number, h: number, attributes: Attributes): PathItem[] | undefined {
  const given = [attributes.rx, attributes.ry].map((text) => (text === undefined ? undefined : Number(text)));
  const rx = Math.min(given[0] ?? given[1] ?? 0, w / 2);
  const ry = Math.min(given[1] ?? given[0] ?? 0, h / 2);
  if (!(w > 0 && h > 0) || ![x, y, rx, ry].every(Number.isFinite) || rx < 0 || ry < 0) return undefined;
  if (rx === 0 || ry === 0)
    return [
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
      [x, y],
    ];
  const quarter = (cx: number, cy: number, from: number): PathItem[] =>
    ellipseItems([cx, cy], rx, ry, 0, from, Math.PI / 2);
  return [
    [x + w - rx, y],
    ...quarter(x + w - rx, y + ry, -Math.PI / 2),
    [x + w, y + h - ry],
    ...quarter(x + w - rx, y + h - ry, 0),
    [x + rx, y + h],
    ...quarter(x + rx, y + h - ry, Math.PI / 2),
    [x, y + ry],
    ...quarter(x + rx, y + ry, Math.PI),
  ];
}

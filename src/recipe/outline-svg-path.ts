// The `d` of an SVG path -> its lines of straight sides, arcs and cubic curves (SVG 1.1, section 8.3 and appendix F.6).
import type { PathItem, Vec2 } from "../geometry/shape.ts";

export type SvgLine = { readonly start: Vec2; readonly items: readonly PathItem[]; readonly closed: boolean };

/** How many numbers each command takes. */
const takes: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };

type Command = { readonly letter: string; readonly relative: boolean; readonly n: readonly number[] };

/** `round` arcs stay arcs; else they become cubics, as the drawing is not scaled evenly. */
export function readSvgPath(
  d: string,
  round: boolean,
): { readonly lines: readonly SvgLine[] } | { readonly wrong: string } {
  const commands = commandsOf(d);
  if ("wrong" in commands) return commands;
  const lines: SvgLine[] = [];
  let start: Vec2 = [0, 0];
  let at: Vec2 = [0, 0];
  let items: PathItem[] = [];
  let cubic: Vec2 | undefined;
  let square: Vec2 | undefined;
  const finish = (closed: boolean) => {
    if (items.length > 0) lines.push({ start, items, closed });
    items = [];
  };
  for (const { letter, relative, n } of commands.list) {
    const [ox, oy] = relative ? at : [0, 0];
    const point = (i: number): Vec2 => [ox + (n[i] ?? 0), oy + (n[i + 1] ?? 0)];
    const over = (control: Vec2 | undefined): Vec2 => (control ? [2 * at[0] - control[0], 2 * at[1] - control[1]] : at);
    let [nextCubic, nextSquare]: [Vec2 | undefined, Vec2 | undefined] = [undefined, undefined];
    const bend = (leave: Vec2, reach: Vec2, to: Vec2) => {
      items.push({ leave, reach, to });
      nextCubic = reach;
      at = to;
    };
    const line = (to: Vec2) => {
      if (to[0] !== at[0] || to[1] !== at[1]) items.push(to);
      at = to;
    };
    if (letter === "M") {
      finish(false);
      start = point(0);
      at = start;
    } else if (letter === "L") line(point(0));
    else if (letter === "H") line([ox + (n[0] ?? 0), at[1]]);
    else if (letter === "V") line([at[0], oy + (n[0] ?? 0)]);
    else if (letter === "C") bend(point(0), point(2), point(4));
    else if (letter === "S") bend(over(cubic), point(0), point(2));
    else if (letter === "Q" || letter === "T") {
      const control = letter === "Q" ? point(0) : over(square);
      const to = letter === "Q" ? point(2) : point(0);
      const third = (p: Vec2): Vec2 => [p[0] + ((control[0] - p[0]) * 2) / 3, p[1] + ((control[1] - p[1]) * 2) / 3];
      bend(third(at), third(to), to);
      nextCubic = undefined;
      nextSquare = control;
    } else if (letter === "A") {
      const to = point(5);
      items.push(...arcItems(at, to, n, round));
      at = to;
    } else {
      finish(true);
      at = start;
    }
    [cubic, square] = [nextCubic, nextSquare];
  }
  finish(false);
  return { lines };
}

function commandsOf(d: string): { readonly list: readonly Command[] } | { readonly wrong: string } {
  const list: Command[] = [];
  const number = /[\s,]*([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)/y;
  const flag = /[\s,]*([01])/y;
  let i = 0;
  let letter = "";
  const skip = () => {
    while (/[\s,]/.test(d[i] ?? "")) i++;
  };
  for (skip(); i < d.length; skip()) {
    const next = d[i] ?? "";
    if (/[a-zA-Z]/.test(next)) {
      letter = next;
      i++;
    } else if (letter === "" || /z/i.test(letter)) return { wrong: d.slice(i) };
    const upper = letter.toUpperCase();
    const count = takes[upper];
    if (count === undefined || (list.length === 0 && upper !== "M")) return { wrong: d.slice(Math.max(0, i - 1)) };
    const n: number[] = [];
    while (n.length < count) {
      const form = upper === "A" && (n.length === 3 || n.length === 4) ? flag : number;
      form.lastIndex = i;
      const found = form.exec(d);
      if (!found) return { wrong: d.slice(i) || `${letter} with ${n.length} numbers` };
      n.push(Number(found[1]));
      i = form.lastIndex;
    }
    list.push({ letter: upper, relative: letter !== upper, n });
    // Further pairs behind a move are lines.
    if (upper === "M") letter = letter === "M" ? "L" : "l";
  }
  return { list };
}

/** Cubics for part of an ellipse, each over an eighth turn at most: off by less than 5 millionths of the radius. */
export function ellipseItems(
  centre: Vec2,
  rx: number,
  ry: number,
  tilt: number,
  from: number,
  sweep: number,
): PathItem[] {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 4) - 1e-9));
  const step = sweep / count;
  const reach = (4 / 3) * Math.tan(step / 4);
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  const place = (x: number, y: number): Vec2 => [
    centre[0] + c * rx * x - s * ry * y,
    centre[1] + s * rx * x + c * ry * y,
  ];
  return Array.from({ length: count }, (_, i) => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    return {
      leave: place(Math.cos(a) - reach * Math.sin(a), Math.sin(a) + reach * Math.cos(a)),
      reach: place(Math.cos(b) + reach * Math.sin(b), Math.sin(b) - reach * Math.cos(b)),
      to: place(Math.cos(b), Math.sin(b)),
    };
  });
}

function arcItems(from: Vec2, to: Vec2, n: readonly number[], round: boolean): PathItem[] {
  const [rx0 = 0, ry0 = 0, degrees = 0, large, sweeps] = n;
  if (from[0] === to[0] && from[1] === to[1]) return [];
  if (rx0 === 0 || ry0 === 0) return [to];
  const tilt = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  const [hx, hy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const [x, y] = [c * hx + s * hy, c * hy - s * hx];
  const grow = Math.max(1, Math.hypot(x / rx0, y / ry0));
  const [rx, ry] = [Math.abs(rx0) * grow, Math.abs(ry0) * grow];
  const part = Math.max(0, (rx * ry) ** 2 - (rx * y) ** 2 - (ry * x) ** 2) / ((rx * y) ** 2 + (ry * x) ** 2);
  const root = (large === sweeps ? -1 : 1) * Math.sqrt(part);
  const [mx, my] = [(root * rx * y) / ry, (-root * ry * x) / rx];
  const centre: Vec2 = [c * mx - s * my + (from[0] + to[0]) / 2, s * mx + c * my + (from[1] + to[1]) / 2];
  const start = Math.atan2((y - my) / ry, (x - mx) / rx);
  const end = Math.atan2((-y - my) / ry, (-x - mx) / rx);
  const full = 2 * Math.PI;
  const ahead = (((end - start) % full) + full) % full;
  const sweep = sweeps === 1 ? ahead : ahead - full;
  if (round && Math.abs(rx - ry) < 1e-9 * rx) {
    const half = start + sweep / 2 + tilt;
    return [{ mid: [centre[0] + rx * Math.cos(half), centre[1] + rx * Math.sin(half)], to }];
  }
  const items = ellipseItems(centre, rx, ry, tilt, start, sweep);
  return items.map((item, i) => (i === items.length - 1 && "leave" in item ? { ...item, to } : item));
}

// A board as it lies and its cuts -> its picture: the board with its grain, pieces in order, numbered cuts, what is left over.
import type { PlannedBoard, PlannedPiece } from "../findings/board-plan.ts";
import { leavings } from "../findings/leavings.ts";
import { type SawCut, stopOf } from "../findings/saw-cuts.ts";
import { compareLengths, inches, type Length, zero } from "../units/length.ts";

import { collide } from "./collision.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { flatPen, type Sheet } from "./sheet.ts";
import { baseline, capHeight, textBox, textWidth } from "./text-width.ts";

/** Along the board from its left end as bought, and across it from its lower edge, inches -> paper. */
type OnPaper = (along: number, across: number) => Paper;

type Text = Extract<Mark, { kind: "text" }>;

/** Between letters and lines; between the board and the sheet's edges; the thickness as it is seen (mm). */
const clear = 0.6;
const outside = 4.6;
const depths = { least: 1.4, most: 3 };

/**
 * A board lies along the sheet on paper and on wide screens, and stands on a phone. A piece is drawn at least this wide, the numbers of
 * cuts have this type (mm).
 */
const lying = { leastPiece: 5.2, left: outside, length: 0, small: 3.2 };
const standing = { leastPiece: 17, left: 8, length: 150, small: 3.2 };

/**
 * Lengths are to scale over the sheet; widths are to the same scale unless letters need more room, then all the board's widths are
 * drawn larger alike. The end that is trimmed first is at the left, or on a phone on top.
 */
export function drawBoard(
  itemSlug: string,
  planned: PlannedBoard,
  cuts: readonly SawCut[],
  length: (inches: Length) => string,
  sheet: Sheet,
): Drawing {
  const { board, stock, width, endLoss, strips } = planned;
  const [long, wide, loss] = [inches(stock.length), inches(width), inches(endLoss)];
  const phone = sheet.name === "phone";
  const way = phone ? standing : lying;
  const pieces = strips.flatMap((strip) => strip.pieces);
  const narrowest = Math.min(...pieces.map((piece) => inches(piece.width)));
  const along = (way.length || sheet.width - way.left - outside) / long;
  const widest = phone ? (sheet.width - way.left - outside) / wide : Number.POSITIVE_INFINITY;
  const across = Math.min(widest, Math.max(along, way.leastPiece / narrowest));
  const at: OnPaper = phone
    ? (x, y) => [way.left + y * across, outside + x * along]
    : (x, y) => [way.left + x * along, outside + (wide - y) * across];
  const onBoard = (x: Length, y: Length): Paper => at(loss + inches(x), inches(y));
  const depth = Math.min(depths.most, Math.max(depths.least, inches(board.thickness) * along));
  const shapes = pieces.map((piece) => outlineOf(piece, onBoard));
  const lines = cuts.map(({ line }) => line.map(([x, y]) => onBoard(x, y)));
  const left = leavings(planned).map(({ from, to }) => rectangle(onBoard(...from), onBoard(...to)));
  const grain = left.map((corners) => grainLines(corners, phone));
  const names = pieces.flatMap((piece, i) => nameOf(piece, shapes[i] as Paper[], way.small, length));
  const solid = solidBoard(rectangle(at(0, 0), at(long, wide)), depth, phone);
  const others = [...solid.edges, ...grain.flat(), ...(loss > 0 ? [[at(0, 0), at(loss, wide)]] : [])];
  return {
    id: `${itemSlug}-board-${planned.number}${phone ? "-phone" : ""}`,
    title: `Board ${planned.number}: ${board.name}`,
    description: describe(planned, length),
    width: sheet.width,
    height: outside + depth + outside + (phone ? long * along : wide * across),
    pen: flatPen(sheet),
    marks: [
      ...solid.regions,
      ...shapes.map((shape): Mark => ({ kind: "region", tone: { kind: "wood" }, shade: 0, loops: [shape] })),
      {
        kind: "lines",
        line: "light",
        chains: others,
      },
      { kind: "lines", line: "visible", chains: lines },
      ...names,
      ...numbers(cuts, lines, others, names, {
        low: at(0, 0),
        high: at(long, wide),
        depth,
        phone,
        small: way.small,
      }),
    ],
  };
}

const rectangle = ([u0, v0]: Paper, [u1, v1]: Paper): Paper[] => [
  [u0, v0],
  [u1, v0],
  [u1, v1],
  [u0, v1],
];

const closed = (loop: readonly Paper[]): Paper[] => [...loop, loop[0] as Paper];

/** The face, and a little of the edge and of one end, as if seen from the lower left. */
function solidBoard(
  face: readonly Paper[],
  depth: number,
  phone: boolean,
): { readonly regions: readonly Mark[]; readonly edges: readonly Paper[][] } {
  const us = face.map(([u]) => u);
  const vs = face.map(([, v]) => v);
  const [left, right, top, bottom] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
  const side: Paper[] = [
    [left, top],
    [left, bottom],
    [left - depth, bottom + depth],
    [left - depth, top + depth],
  ];
  const foot: Paper[] = [
    [left, bottom],
    [right, bottom],
    [right - depth, bottom + depth],
    [left - depth, bottom + depth],
  ];
  const part = (loop: Paper[], isEnd: boolean): Mark => ({
    kind: "region",
    tone: { kind: isEnd ? "end grain" : "wood" },
    shade: 2,
    loops: [loop],
  });
  return {
    regions: [
      { kind: "region", tone: { kind: "figure" }, shade: 0, loops: [rectangle([left, top], [right, bottom])] },
      part(side, !phone),
      part(foot, phone),
    ],
    edges: [closed(face), closed(side), closed(foot)],
  };
}

/** The blank, less what slanted ends take off it. */
function outlineOf(piece: PlannedPiece, onBoard: (x: Length, y: Length) => Paper): Paper[] {
  const [low, high] = [inches(piece.across), inches(piece.across) + inches(piece.width)];
  const [from, to] = [inches(piece.at), inches(piece.at) + inches(piece.length)];
  const run = (mitre: number): number => Math.tan((Math.abs(mitre) * Math.PI) / 180) * inches(piece.width);
  const [left, right] = piece.mitres;
  return [
    onBoard(from + (left > 0 ? run(left) : 0), low),
    onBoard(to - (right > 0 ? run(right) : 0), low),
    onBoard(to - (right < 0 ? run(right) : 0), high),
    onBoard(from + (left < 0 ? run(left) : 0), high),
  ];
}

type Room = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** The rectangle inside four corners that go round. */
function roomIn(corners: readonly Paper[]): Room {
  const us = corners.map(([u]) => u).sort((a, b) => a - b);
  const vs = corners.map(([, v]) => v).sort((a, b) => a - b);
  const [left = 0, right = 0, top = 0, bottom = 0] = [us[1], us[2], vs[1], vs[2]];
  return { left, right, top, bottom };
}

/** Lines as the grain runs, in what is left over: that is where there are no letters. */
function grainLines(corners: readonly Paper[], phone: boolean): Paper[][] {
  const { left, right, top, bottom } = roomIn(corners);
  const [wide, long] = phone ? [right - left, bottom - top] : [bottom - top, right - left];
  if (long < 4) return [];
  const count = Math.min(4, Math.floor(wide / 1.6));
  return Array.from({ length: count }, (_, i) => {
    const side = ((i + 1) * wide) / (count + 1);
    const [from, to] = i % 2 === 0 ? [0.1 * long, 0.75 * long] : [0.3 * long, 0.92 * long];
    return phone
      ? [
          [left + side, top + from],
          [left + side, top + to],
        ]
      : [
          [left + from, top + side],
          [left + to, top + side],
        ];
  });
}

/** The mark and the length where there is room for both beside a cut's number; else the mark alone, or nothing. */
function nameOf(
  piece: PlannedPiece,
  corners: readonly Paper[],
  small: number,
  length: (inches: Length) => string,
): Text[] {
  const { left, right, top, bottom } = roomIn(corners);
  const type = 3.2;
  const number = textWidth("00", small, false) + clear;
  const end = bottom - top > 3 * type ? right : right - number;
  const room = end - left - 2 * clear;
  for (const text of [`${piece.mark}  ${length(stopOf(piece))}`, piece.mark]) {
    if (textWidth(text, type, true) > room || type * capHeight > bottom - top - 2 * clear) continue;
    return [
      {
        kind: "text",
        at: [(left + end) / 2, (top + bottom) / 2 + baseline(type)],
        ...{ text, size: type, anchor: "middle", strong: true },
      },
    ];
  }
  return [];
}

type Face = {
  readonly low: Paper;
  readonly high: Paper;
  readonly depth: number;
  readonly phone: boolean;
  readonly small: number;
};

/**
 * A cut through the whole board has its number beside the board, any other at its end inside the piece that it sets free. A number
 * that would run into something is left out; the list of settings has it.
 */
function numbers(
  cuts: readonly SawCut[],
  lines: readonly Paper[][],
  others: readonly Paper[][],
  names: readonly Text[],
  face: Face,
): Text[] {
  const found: Text[] = [...names];
  const segments = [...lines, ...others].flatMap((chain) => chain.slice(1).map((to, i) => [chain[i] as Paper, to]));
  cuts.forEach(({ number }, i) => {
    const free = spotsFor(String(number), lines[i] as Paper[], face).find((text) => {
      const box = textBox(text);
      return (
        found.every((other) => !collide(box, textBox(other), 0.3)) &&
        segments.every((segment) => !collide(box, segment, 0.2))
      );
    });
    if (free) found.push(free);
  });
  return found.slice(names.length);
}

function spotsFor(text: string, line: readonly Paper[], { low, high, depth, phone, small }: Face): Text[] {
  const [left, right] = [Math.min(low[0], high[0]), Math.max(low[0], high[0])];
  const [top, bottom] = [Math.min(low[1], high[1]), Math.max(low[1], high[1])];
  const us = line.map(([u]) => u);
  const vs = line.map(([, v]) => v);
  const [u0, u1, v0, v1] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
  const cap = small * capHeight;
  const set = (u: number, v: number, anchor: Text["anchor"]): Text => ({
    ...{ kind: "text", at: [u, v], text, size: small, anchor },
  });
  const middle = (v0 + v1) / 2 + baseline(small);
  if (v1 - v0 > u1 - u0) {
    const through = v1 - v0 >= (bottom - top) * (phone ? 0.95 : 1) - 1e-6;
    const below = bottom + depth + clear + cap;
    const foot = through && !phone ? line.reduce((a, b) => (b[1] > a[1] ? b : a))[0] : (u0 + u1) / 2;
    if (through)
      return [
        set(foot, below, "middle"),
        set((u0 + u1) / 2, top - clear, "middle"),
        set(foot - clear, below, "end"),
        set(foot + clear, below, "start"),
      ];
    // Where there is no room beside it, a cut that comes out at the board's edge has its number outside there.
    const out = phone ? [] : [...(v1 > bottom - 1e-6 ? [below] : []), ...(v0 < top + 1e-6 ? [top - clear] : [])];
    return [
      ...[middle, middle - 1.2 * cap, middle + 1.2 * cap].flatMap((v) => [
        set(u0 - clear, v, "end"),
        set(u1 + clear, v, "start"),
      ]),
      ...out.flatMap((v) => [set(foot, v, "middle"), set(foot + clear, v, "start"), set(foot - clear, v, "end")]),
    ];
  }
  const through = u1 - u0 >= (right - left) * (phone ? 1 : 0.95) - 1e-6;
  if (through && !phone) return [set(right + clear, middle, "start")];
  if (through)
    return [middle, middle - cap, middle + cap].flatMap((v) => [
      set(left - depth - clear, v, "end"),
      set(right + clear, v, "start"),
    ]);
  const [over, under] = [v0 - clear, v1 + clear + cap];
  return (phone ? [over, under] : [under, over]).flatMap((v) => [
    set(u1 - clear, v, "end"),
    set(u0 + clear, v, "start"),
  ]);
}

function describe({ strips, order, endLoss }: PlannedBoard, length: (inches: Length) => string): string {
  return [
    ...(compareLengths(endLoss, zero) > 0 ? [`${length(endLoss)} trimmed off the left end.`] : []),
    ...strips.map(
      ({ pieces, size }, i) =>
        `${order === "rip" ? "Strip" : "Length"} ${i + 1}, ${length(size)}: ${pieces.map((piece) => `${piece.mark} ${length(stopOf(piece))}`).join(", ")}.`,
    ),
  ].join(" ");
}

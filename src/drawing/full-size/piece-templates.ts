// Pieces with curved outlines, round cuts or patterns of holes -> their good faces at true size, to be traced or pricked through.
import type { Vec3 } from "../../geometry/shape.ts";
import type { Item, Member, Piece, WorkedCut } from "../../item/item.ts";
import type { Division } from "../../units/division.ts";
import { blankCorner, boardFrame } from "../board-frame.ts";
import { collide } from "../collision.ts";
import { isInside } from "../dot-spots.ts";
import type { Mark, Paper } from "../drawing.ts";
import { idPart, listed, paperLength } from "../paper-text.ts";
import { drawLines, inPlace, onPaper, takePicture } from "../picture.ts";
import { mmPerInch } from "../sheet.ts";
import { textBox, textWidth } from "../text-width.ts";
import { marksIn, type Window } from "./clip-marks.ts";
import { rectangle, type Template, templateType } from "./template.ts";

/** Beyond the outermost cut of a stretch, and how near cuts lie that share a pattern, or reach the board's end with it; inches. */
const beyond = 0.5;
const together = 6;
const toEnd = 3;

/** Places of two patterns that are alike differ by less than this, mm. */
const alike = 0.1;

type Stretch = { readonly from: number; readonly to: number };
type Pattern = {
  readonly pieces: readonly string[];
  readonly wheres: readonly string[];
  readonly name: string;
  readonly template: Omit<Template, "title">;
  readonly chains: readonly (readonly Paper[])[];
};

/** One pattern for each different stretch; where several pieces (or both ends of one) are alike, they share it. */
export function pieceTemplates(item: Item, division: Division): Template[] {
  const patterns: Pattern[] = [];
  for (const piece of item.pieces) {
    const member = item.members.find((one) => one.id === piece.members[0]);
    if (member === undefined) throw new Error(`piece ${piece.mark} has no member`);
    for (const stretch of stretchesOf(piece, member)) {
      const found = patternOf(item, piece, member, stretch, division);
      const known = patterns.findIndex((one) => sameWay(one, found) !== undefined);
      const same = patterns[known];
      if (same === undefined) {
        patterns.push(found);
        continue;
      }
      const turned = sameWay(same, found) === "turned";
      patterns[known] = {
        ...same,
        pieces: [...new Set([...same.pieces, ...found.pieces])],
        wheres: [
          ...new Set([...same.wheres, ...found.wheres.map((one) => (turned ? `${one} turned half round` : one))]),
        ],
      };
    }
  }
  return patterns.map(({ pieces, wheres, name, template }) => ({
    ...template,
    title: [`${listed(pieces)}: ${name}`, ...wheres].join(", "),
  }));
}

/** Whether two patterns are alike as they lie, or by half a turn in their plane, which leaves the good side up. */
function sameWay(one: Pattern, other: Pattern): "upright" | "turned" | undefined {
  const [width, height] = [one.template.width - 2 * edge, one.template.height - 2 * edge];
  const size = Math.hypot(one.template.width - other.template.width, one.template.height - other.template.height);
  if (size > alike) return undefined;
  const turned = other.chains.map((chain) => chain.map(([u, v]): Paper => [width - u, height - v]));
  const isSame = (chains: readonly (readonly Paper[])[]) => covers(one.chains, chains) && covers(chains, one.chains);
  return isSame(other.chains) ? "upright" : isSame(turned) ? "turned" : undefined;
}

/** Whether every corner of the one lies on a line of the other. */
const covers = (one: readonly (readonly Paper[])[], other: readonly (readonly Paper[])[]): boolean =>
  other.every((chain) =>
    chain.every((p) =>
      one.some((own) => own.some((a, i) => i > 0 && distanceToStretch(p, own[i - 1] as Paper, a) < alike)),
    ),
  );

function distanceToStretch(p: Paper, a: Paper, b: Paper): number {
  const [du, dv] = [b[0] - a[0], b[1] - a[1]];
  const long = du * du + dv * dv;
  const part = long === 0 ? 0 : Math.max(0, Math.min(1, ((p[0] - a[0]) * du + (p[1] - a[1]) * dv) / long));
  return Math.hypot(p[0] - a[0] - du * part, p[1] - a[1] - dv * part);
}

const isRound = (cut: WorkedCut): boolean =>
  (cut.kind === "pocket" && cut.axis === "thickness") || (cut.kind === "corners" && cut.axis === "thickness");
const isHole = (cut: WorkedCut): cut is Extract<WorkedCut, { kind: "hole" }> =>
  cut.kind === "hole" && cut.axis === "thickness" && cut.why === "cut";

/** Where along the board there is something to trace. A single hole is measured from two edges; two or more are a pattern. */
function stretchesOf(piece: Piece, member: Member): readonly Stretch[] {
  const long = boardFrame(member).size[0];
  if (piece.outline !== undefined) return [{ from: 0, to: long }];
  const holes = member.cuts.filter(isHole);
  const spans = [
    ...(holes.length > 1 ? holes.map(({ at3, across }) => [at3[0] - across / 2, at3[0] + across / 2] as const) : []),
    ...member.cuts.filter(isRound).flatMap((cut) => {
      if (cut.kind === "pocket") return [[cut.min[0], cut.max[0]] as const];
      if (cut.kind !== "corners") return [];
      return cut.corners.map(([end]) =>
        end === 0 ? ([0, cut.radius] as const) : ([long - cut.radius, long] as const),
      );
    }),
  ].sort((a, b) => a[0] - b[0]);
  const found: { from: number; to: number }[] = [];
  for (const [from, to] of spans) {
    const last = found.at(-1);
    if (last && from - last.to < together) last.to = Math.max(last.to, to);
    else found.push({ from, to });
  }
  return found.map(({ from, to }) => ({
    from: from < toEnd ? 0 : from - beyond,
    to: long - to < toEnd ? long : to + beyond,
  }));
}

const edge = 2;

function patternOf(item: Item, piece: Piece, member: Member, stretch: Stretch, division: Division): Pattern {
  const frame = boardFrame(member);
  const [long, wide] = frame.size;
  const picture = takePicture([inPlace(member)], frame.view);
  const [low, high] = blankCorner(member, frame.size, frame.view);
  const { min, max } = picture.scene.bounds;
  const placement = {
    scale: mmPerInch,
    left: (min[0] - low - stretch.from) * mmPerInch,
    top: (high - max[1]) * mmPerInch,
  };
  const window: Window = { left: 0, top: 0, width: (stretch.to - stretch.from) * mmPerInch, height: wide * mmPerInch };
  const lines = marksIn(
    drawLines(picture, placement, () => "visible", ["visible"]),
    window,
  );
  const holes = member.cuts.filter(isHole).filter(({ at3 }) => at3[0] > stretch.from && at3[0] < stretch.to);
  const spot = ([along, across]: Vec3): Paper => [
    (along - stretch.from) * mmPerInch,
    (frame.up ? wide - across : across) * mmPerInch,
  ];
  const crosses = holes.flatMap(({ at3 }) => cross(spot(at3)));
  const sizes = holeSizes(holes, spot, window, division);
  const wood = picture.scene.regions.map(({ outer, holes: inner }) =>
    [outer, ...inner].map((loop) => loop.map((p) => onPaper(picture, placement, p))),
  );
  const chains = [...lines.flatMap((mark) => (mark.kind === "lines" ? mark.chains : [])), ...crosses];
  const label = markAndGrain(`${piece.mark}, good side`, wood, [...chains, ...sizes.map(textBox)], window);
  const marks: Mark[] = [...lines, { kind: "lines", line: "dimension", chains: crosses }, ...sizes, ...label];
  const [width, height] = [window.width + 2 * edge, window.height + 2 * edge];
  return {
    pieces: [piece.mark],
    wheres: stretch.from === 0 && stretch.to === long ? [] : [where(stretch, long)],
    name: piece.name,
    template: {
      id: `${item.slug}-full-size-${idPart(piece.mark)}-${Math.round(stretch.from * 16)}`,
      how:
        piece.outline === undefined
          ? "Lay it on the good face, its edges along the board's own, and prick each cross through."
          : "Cut it out or prick along the line, lay it on the good face with the arrow along the grain, and trace it.",
      width,
      height,
      marks: marksIn(marks, { left: -edge, top: -edge, width, height }),
    },
    chains,
  };
}

const where = (stretch: Stretch, long: number): string =>
  stretch.from === 0 ? "left end" : stretch.to === long ? "right end" : "between its ends";

const arm = 4;

const cross = ([u, v]: Paper): Paper[][] => [
  [
    [u - arm, v],
    [u + arm, v],
  ],
  [
    [u, v - arm],
    [u, v + arm],
  ],
];

type Hole = Extract<WorkedCut, { kind: "hole" }>;
type Text = Extract<Mark, { kind: "text" }>;

/** The size of the first hole of each size, beside it. */
function holeSizes(holes: readonly Hole[], spot: (at: Vec3) => Paper, { width }: Window, division: Division): Text[] {
  return [...new Map(holes.map((hole) => [hole.across, hole])).values()].map((hole): Text => {
    const [u, v] = spot(hole.at3);
    const text = `Ø ${paperLength(hole.across, division)}`;
    const off = Math.max(arm, (hole.across / 2) * mmPerInch) + 1;
    const right = u + off + textWidth(text, templateType, false) < width;
    return {
      kind: "text",
      at: [right ? u + off : u - off, v - 1],
      text,
      size: templateType,
      anchor: right ? "start" : "end",
    };
  });
}

/** Whether a straight line comes near enough to a box about a spot to be asked whether it touches it. */
const isNearBox = ([a, b]: readonly Paper[], [u, v]: Paper, half: number): boolean =>
  a !== undefined &&
  b !== undefined &&
  Math.min(a[0], b[0]) < u + half + 3 &&
  Math.max(a[0], b[0]) > u - half - 3 &&
  Math.min(a[1], b[1]) < v + 7 &&
  Math.max(a[1], b[1]) > v - 7;

/** From one place that is tried to the next: a part of the pattern's longer side, mm at least. */
const tryPart = 1 / 30;
const leastStep = 2;
const arrowLength = 24;

/** The piece's mark over an arrow along its grain, on wood and clear of every line, as near the middle as can be. */
function markAndGrain(
  words: string,
  wood: readonly (readonly (readonly Paper[])[])[],
  keepOff: readonly (readonly Paper[])[],
  { width, height }: Window,
): Mark[] {
  const half = textWidth(words, templateType, true) / 2;
  const boxAt = ([u, v]: Paper): readonly Paper[] => rectangle(u - half - 1, v - 4, 2 * half + 2, 8);
  const tryStep = Math.max(leastStep, Math.max(width, height) * tryPart);
  const spots = Array.from({ length: Math.floor(width / tryStep) }, (_, i) =>
    Array.from({ length: Math.floor(height / tryStep) }, (_, k): Paper => [(i + 0.5) * tryStep, (k + 0.5) * tryStep]),
  ).flat();
  const far = ([u, v]: Paper): number => Math.hypot(u - width / 2, v - height / 2);
  const stretches = keepOff.flatMap((chain) => chain.slice(1).map((b, i): readonly Paper[] => [chain[i] as Paper, b]));
  const at = spots
    .sort((a, b) => far(a) - far(b))
    .find((spot) => {
      const box = boxAt(spot);
      return (
        wood.some((loops) => box.every((corner) => isInside(corner, loops))) &&
        !stretches.some((stretch) => isNearBox(stretch, spot, half) && collide(box, stretch, 0.8))
      );
    });
  if (at === undefined) return [];
  const arrow = Math.min(arrowLength / 2, half);
  const below = at[1] + 2.5;
  const ends: Paper[] = [
    [at[0] - arrow, below],
    [at[0] + arrow, below],
  ];
  return [
    { kind: "text", at: [at[0], at[1] - 0.2], text: words, size: templateType, anchor: "middle", strong: true },
    { kind: "lines", line: "dimension", chains: [ends] },
    { kind: "arrowhead", tip: ends[0] as Paper, way: [-1, 0], size: 2.5 },
    { kind: "arrowhead", tip: ends[1] as Paper, way: [1, 0], size: 2.5 },
  ];
}

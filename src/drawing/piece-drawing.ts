import { cross } from "../geometry/vector.ts";
import type { View } from "../geometry/view.ts";
import type { Item, Member, Piece, WorkedCut } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { compareLengths, inches, type Length } from "../units/length.ts";
import { arrowSize, drawDimension } from "./dimensions.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { drawNotes, type Note } from "./notes.ts";
import { toward } from "./panel-space.ts";
import { idPart, listed, paperLength, unitWords } from "./paper-text.ts";
import { drawLines, drawRegions, inPlace, type Placement, takePicture } from "./picture.ts";
import { placeInRegions } from "./region-labels.ts";
import { drawTape, type Tick, tapeDepth, tapeRows } from "./running-dimensions.ts";
import { findRatio, formatRatio, scaleOf } from "./scale.ts";
import { binderSheet, flatPen, type Sheet } from "./sheet.ts";
import { textWidth } from "./text-width.ts";

const edge = 2;
const off = 7;
/** The same beside the board, for its width. */
const widthOff = 4;
/** A grain arrow is this long on paper, mm. */
const grainLength = 14;

/** The good face square on, the board's length level and its low end at the left. */
function faceView({ lie }: Member): View {
  const toViewer = toward(lie.show);
  const right = toward({ axis: lie.length, sign: 1 });
  return { toViewer, right, up: cross(toViewer, right) };
}

/** Places along the length or the width that cuts ask for: hole middles and the sides of boxes, from the low end. */
function cutPlaces(cuts: readonly WorkedCut[], way: 0 | 1, whole: Length): readonly Length[] {
  const own = way === 0 ? "length" : "width";
  const places = cuts.flatMap((cut): number[] => {
    if (cut.kind === "box" || cut.kind === "pocket") return [cut.min[way], cut.max[way]];
    return cut.kind !== "hole" || cut.axis === own ? [] : [cut.at3[way]];
  });
  return places
    .filter((place) => place > 1e-9 && place < inches(whole) - 1e-9)
    .sort(compareLengths)
    .filter((place, i, all) => i === 0 || place - (all[i - 1] as number) > 1e-9);
}

export function drawPiece(item: Item, piece: Piece, division: Division, sheet: Sheet = binderSheet): Drawing {
  const member = item.members.find((one) => one.id === piece.members[0]);
  if (member === undefined) throw new Error(`piece ${piece.mark} has no member`);
  const view = faceView(member);
  const picture = takePicture([inPlace(member)], view);
  const say = (length: Length): string => paperLength(length, division);
  // The width runs up the picture or down it, as the good face lies.
  const up = view.up[["x", "y", "z"].indexOf(member.lie.width) as 0 | 1 | 2] > 0;
  const fromFoot = (place: Length): number => (up ? inches(place) : inches(piece.width) - inches(place));
  const along = cutPlaces(member.cuts, 0, piece.length);
  const across = [...cutPlaces(member.cuts, 1, piece.width)].map(fromFoot).sort((a, b) => a - b);

  const left = edge + (across.length === 0 ? 0 : tapeDepth(across.map(say), sheet.type, 1));
  const right = widthOff + 3 + textWidth(say(piece.width), sheet.type, false) + edge;
  const above = edge + sheet.type + 1 + off;
  const rows = tapeRows(along.length, sheet.width - 2 * edge, sheet.type);
  const below = along.length === 0 ? 0 : tapeDepth(along.map(say), sheet.type, rows);
  const room = { width: sheet.width - left - right, height: 60 };
  const ratio = findRatio(inches(piece.length), inches(piece.width), room);
  const scale = scaleOf(ratio);
  const [width, height] = [inches(piece.length) * scale, inches(piece.width) * scale];
  const start = left + (room.width - width) / 2;
  const placement: Placement = { scale, left: start, top: above };
  const foot = above + height;
  const corner = (u: number, v: number): Paper => [start + u * width, foot - v * height];
  const grain = grainArrow(corner(0.25, 0.5), Math.min(grainLength, width * 0.3));
  const labels = placeInRegions(picture, placement, [piece.mark], sheet.type, grain.outlines);
  const notes = drawNotes(
    pieceNotes(piece, division),
    {
      left: edge,
      top: foot + Math.max(below + 2, height < 3 * arrowSize ? 2 * arrowSize + 1 : 3),
      width: sheet.width - 2 * edge,
    },
    sheet.type,
  );
  return {
    id: `${item.slug}-piece-${idPart(piece.mark)}-${sheet.name}`,
    title: `${item.title}: piece ${piece.mark}, ${piece.name}`,
    description: describePiece(piece, along, across, division, ratio),
    width: sheet.width,
    height: notes.bottom + edge,
    scale,
    pen: flatPen(sheet),
    marks: [
      ...drawRegions(
        picture,
        placement,
        () => 0,
        () => ({ kind: "wood" }),
      ),
      ...drawLines(picture, placement, () => "visible", ["visible"]),
      ...grain.marks,
      ...labels,
      ...drawTape(
        along.map((place): Tick => ({ at: start + inches(place) * scale, text: say(place) })),
        "below",
        { edge: foot, low: edge, high: sheet.width - edge, rows },
        sheet.type,
      ),
      ...drawTape(
        [...across].reverse().map((place): Tick => ({ at: foot - inches(place) * scale, text: say(place) })),
        "left",
        { edge: start, low: edge, high: foot + sheet.type, rows: 1 },
        sheet.type,
      ),
      ...drawDimension(corner(0, 1), corner(1, 1), [0, -1], off, say(piece.length), sheet.type),
      ...widthDimension(corner(1, 0), corner(1, 1), say(piece.width), sheet.type),
      ...notes.marks,
    ],
  };
}

/** Beside a narrow board the value stands level, right of its dimension line. */
function widthDimension(low: Paper, high: Paper, value: string, size: number): Mark[] {
  const height = low[1] - high[1];
  const dimension = drawDimension(low, high, [1, 0], widthOff, value, size);
  if (height > textWidth(value, size, false) + 2 * arrowSize) return dimension;
  const at: Paper = [low[0] + widthOff + 3, (low[1] + high[1]) / 2 + size * 0.33];
  return [
    ...dimension.filter((mark) => mark.kind !== "text"),
    { kind: "text", at, text: value, size, anchor: "start" },
  ];
}

/** A double arrow along the fibres. */
function grainArrow(middle: Paper, length: number): { readonly marks: Mark[]; readonly outlines: readonly Paper[][] } {
  const from: Paper = [middle[0] - length / 2, middle[1]];
  const to: Paper = [middle[0] + length / 2, middle[1]];
  return {
    marks: [
      { kind: "lines", line: "dimension", chains: [[from, to]] },
      { kind: "arrowhead", tip: from, way: [-1, 0], size: arrowSize * 0.8 },
      { kind: "arrowhead", tip: to, way: [1, 0], size: arrowSize * 0.8 },
    ],
    outlines: [[from, to]],
  };
}

function pieceNotes(piece: Piece, division: Division): readonly Note[] {
  const say = (length: Length): string => paperLength(length, division);
  const sawn = [
    ...(piece.ripped ? [`ripped to ${say(piece.width)}`] : []),
    ...(piece.planed ? [`planed to ${say(piece.thickness)}`] : []),
  ];
  const holes = new Map<string, number>();
  for (const cut of piece.cuts) {
    if (cut.kind !== "hole") continue;
    const depth = cut.deep === undefined ? "through" : `${say(cut.deep)} deep`;
    const text = `${say(cut.across)} across, ${depth}`;
    holes.set(text, (holes.get(text) ?? 0) + 1);
  }
  return [
    {
      text: `${piece.count} of ${piece.mark}, from ${[piece.board.name, ...sawn].join(", ")}; ${say(piece.thickness)} thick. The arrow is the grain. Sizes in ${unitWords(division)}.`,
    },
    ...[...holes].map(([text, count]): Note => ({ text: `Holes: ${count} of ${text}` })),
  ];
}

function describePiece(
  piece: Piece,
  along: readonly Length[],
  across: readonly Length[],
  division: Division,
  ratio: number,
): string {
  const say = (length: Length): string => paperLength(length, division);
  const cuts = along.length === 0 ? "" : ` Cuts from the left end at ${listed(along.map(say))}.`;
  const edges = across.length === 0 ? "" : ` From the lower edge at ${listed(across.map(say))}.`;
  return `Piece ${piece.mark} (${piece.name}), ${piece.count} of it: ${say(piece.length)} long, ${say(piece.width)} wide, ${say(piece.thickness)} thick, in ${unitWords(division)}, at ${formatRatio(ratio)}; the grain runs along its length.${cuts}${edges}`;
}

// A piece -> its drawing: the face with sizes from two edges, edge and end only where they say more, saw settings in words.

import type { Vec2, Vec3 } from "../geometry/shape.ts";
import type { Item, Member, Piece } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import type { Length } from "../units/length.ts";
import { type BoardFrame, blankCorner, boardFrame, edgeBevels, edgeSpan, edgeView, endView } from "./board-frame.ts";
import { cutPlaces } from "./cut-places.ts";
import { arrowSize, drawDimension } from "./dimensions.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { angleRoom, drawEndAngle, formatDegrees, isSlanted } from "./end-angle.ts";
import { grainArrow } from "./grain-arrow.ts";
import { drawBlankRest, drawHiddenEdges } from "./hidden-edges.ts";
import { drawNotes, type Note } from "./notes.ts";
import { outlineOffsets } from "./outline-offsets.ts";
import { idPart, listed, paperLength, sentence, unitWords } from "./paper-text.ts";
import { drawLines, drawRegions, inPlace, type Picture, type Placement, takePicture } from "./picture.ts";
import { pieceNotes } from "./piece-notes.ts";
import { placeInRegions } from "./region-labels.ts";
import { drawTape, type Tick, tapeDepth, tapeRows } from "./running-dimensions.ts";
import { findRatio, formatRatio, scaleOf } from "./scale.ts";
import { binderSheet, flatPen, type Sheet } from "./sheet.ts";
import { drawShortGrain } from "./short-grain-marks.ts";
import { baseline, textWidth } from "./text-width.ts";

const edge = 2;
const off = 7;
/** From one dimension line to the next farther one, mm. */
const rowOff = 6.5;
/** Beside the board, for its width. */
const widthOff = 4;
/** From the face to a further view, mm. */
const viewGap = 6;
/** A grain arrow is this long on paper, mm. */
const grainLength = 14;

const segmentsOf = (marks: readonly Mark[]): readonly (readonly Paper[])[] =>
  marks.flatMap((mark) =>
    mark.kind === "lines" ? mark.chains.flatMap((chain) => chain.slice(1).map((to, i) => [chain[i] as Paper, to])) : [],
  );

/** Whether a view shows anything but a plain rectangle. */
function saysMore(picture: Picture): boolean {
  const { lines, bounds } = picture.scene;
  const isBorder = (a: Vec2, b: Vec2): boolean =>
    [bounds.min, bounds.max].some((corner) =>
      ([0, 1] as const).some((k) => Math.max(Math.abs(a[k] - corner[k]), Math.abs(b[k] - corner[k])) < 1e-6),
    );
  const placement = { scale: 1, left: 0, top: 0 };
  return lines.some(({ a, b }) => !isBorder(a, b)) || drawHiddenEdges(picture, placement).length > 0;
}

/** Whether an end is out of square to the lower edge, or a cut isn't right through. */
function mayNeedEdge(member: Member, frame: BoardFrame): boolean {
  const part = (from: number, to: number): boolean => from > 1e-6 || to < frame.size[2] - 1e-6;
  return (
    frame.ends.some(({ bevel }) => isSlanted(bevel)) ||
    member.cuts.some((cut) => {
      if (cut.kind === "box") return part(cut.min[2], cut.max[2]);
      return (cut.kind === "hole" || cut.kind === "pocket") && cut.axis === "width";
    })
  );
}

/** The view with the blank's own upper left corner at this place on paper, whatever is cut off it. */
function placed(member: Member, size: Vec3, picture: Picture, { scale, left, top }: Placement): Placement {
  const [low, high] = blankCorner(member, size, picture.view);
  const { min, max } = picture.scene.bounds;
  return { scale, left: left + (min[0] - low) * scale, top: top + (high - max[1]) * scale };
}

/** Seen edges continuous, those behind the wood dashed. */
const plainView = (picture: Picture, placement: Placement): Mark[] => [
  ...drawRegions(
    picture,
    placement,
    () => 0,
    () => ({ kind: "wood" }),
  ),
  ...drawLines(picture, placement, () => "visible", ["visible"]),
  ...drawHiddenEdges(picture, placement),
];

export function drawPiece(item: Item, piece: Piece, division: Division, sheet: Sheet = binderSheet): Drawing {
  const member = item.members.find((one) => one.id === piece.members[0]);
  if (member === undefined) throw new Error(`piece ${piece.mark} has no member`);
  const frame = boardFrame(member);
  const picture = takePicture([inPlace(member)], frame.view);
  const say = (length: Length): string => paperLength(length, division);
  const [long, wide, thick] = frame.size;
  const along = cutPlaces(member.cuts, 0, [long, wide]);
  const across = cutPlaces(member.cuts, 1, [long, wide])
    .map((place) => (frame.up ? place : wide - place))
    .sort((a, b) => a - b);
  const offsets = outlineOffsets(member, frame);
  const bevels = edgeBevels(frame);
  const hasEdge = mayNeedEdge(member, frame) && saysMore(takePicture([inPlace(member)], edgeView(frame)));
  const hasEnd = bevels.some(isSlanted);
  const [lowerSpan, upperSpan] = [edgeSpan(frame, 0), edgeSpan(frame, wide)];
  const spanOf = ([from, to]: readonly [number, number]): number => to - from;
  const differs = (a: number, b: number): boolean => Math.abs(a - b) > 1e-6;
  const hasUpper = differs(spanOf(upperSpan), long);
  const hasLower = differs(spanOf(lowerSpan), long) && differs(spanOf(lowerSpan), spanOf(upperSpan));

  const tapeLeft = across.length === 0 ? 0 : tapeDepth(across.map(say), sheet.type, 1);
  const angles = frame.ends.map((end, i) =>
    Math.max(
      angleRoom(i === 0 && tapeLeft > 0 ? 0 : end.mitre, sheet.type),
      hasEdge ? angleRoom(end.bevel, sheet.type) : 0,
    ),
  ) as [number, number];
  const left = edge + Math.max(tapeLeft, angles[0]);
  const widthRoom = widthOff + 3 + textWidth(say(piece.width), sheet.type, false) + edge;
  const endRoom = hasEnd ? viewGap + angleRoom(bevels[0] || bevels[1], sheet.type) + 2 : 0;
  const above = edge + sheet.type + 1 + off + (hasUpper ? rowOff : 0);
  const rows = tapeRows(along.length, sheet.width - 2 * edge, sheet.type);
  const tapeBelow = along.length === 0 ? 0 : tapeDepth(along.map(say), sheet.type, rows);
  const lowerOff = Math.max(off, tapeBelow + sheet.type + 2);
  const room = { width: sheet.width - left - angles[1] - widthRoom - endRoom, height: 60 };
  const ratio = findRatio(long + (hasEnd ? thick : 0), wide, room);
  const scale = scaleOf(ratio);
  const [width, height] = [long * scale, wide * scale];
  const start = left + (room.width - width - (hasEnd ? thick * scale : 0)) / 2;
  const placement = placed(member, frame.size, picture, { scale, left: start, top: above });
  const foot = above + height;
  const spot = (l: number, w: number): Paper => [start + l * scale, foot - w * scale];
  const weak = drawShortGrain(piece, frame, spot);
  const hasRest = piece.outline !== undefined || frame.slopes.some(({ normal }) => Math.abs(normal[2]) < 1e-6);
  const blank = [spot(0, 0), spot(long, 0), spot(long, wide), spot(0, wide)];
  const rest = hasRest ? drawBlankRest(picture, placement, blank) : [];
  const dashed = segmentsOf([...drawHiddenEdges(picture, placement), ...weak, ...rest]);
  const grain = grainArrow(picture, placement, Math.min(grainLength, width * 0.3), dashed);
  const labels = placeInRegions(picture, placement, [piece.mark], sheet.type, [...grain.outlines, ...dashed]);
  const faceFoot =
    foot + Math.max(hasLower ? lowerOff + 3 : tapeBelow + 2, height < 3 * arrowSize ? 2 * arrowSize + 1 : 3);
  const edgeTop = faceFoot + (hasEdge ? viewGap / 2 : 0);
  const side = hasEdge ? drawEdge(member, frame, { scale, left: start, top: edgeTop }, sheet.type) : [];
  const notesTop = hasEdge ? edgeTop + Math.max(thick * scale, sheet.type) + 2 : faceFoot;
  const words = pieceNotes(piece, member, frame, offsets, division);
  const notes = drawNotes(words, { left: edge, top: notesTop, width: sheet.width - 2 * edge }, sheet.type);
  const right: Paper = [start + width + angles[1], 0];
  const endLeft = right[0] + widthRoom + viewGap - edge;
  const mitres = frame.ends.flatMap(({ mitre }, i) => {
    if (!isSlanted(mitre) || (i === 0 && tapeLeft > 0)) return [];
    const [low, high] = [spot(lowerSpan[i] as number, 0), spot(upperSpan[i] as number, wide)];
    const lowIsLong = i === 0 ? low[0] < high[0] : low[0] > high[0];
    return drawEndAngle(lowIsLong ? low : high, lowIsLong ? high : low, i === 0 ? -1 : 1, mitre, sheet.type);
  });
  return {
    id: `${item.slug}-piece-${idPart(piece.mark)}-${sheet.name}`,
    title: `${item.title}: piece ${piece.mark}, ${piece.name}`,
    description: describePiece(piece, along, across, division, ratio, [
      ...(hasUpper ? [{ text: `Upper edge ${say(spanOf(upperSpan))} long` }] : []),
      ...(hasLower ? [{ text: `Lower edge ${say(spanOf(lowerSpan))} long` }] : []),
      ...words.slice(1),
    ]),
    width: sheet.width,
    height: notes.bottom + edge,
    scale,
    pen: flatPen(sheet),
    marks: [
      ...plainView(picture, placement),
      ...weak,
      ...rest,
      ...grain.marks,
      ...labels,
      ...mitres,
      ...side,
      ...(hasEnd ? drawEnd(member, frame, { scale, left: endLeft, top: above }, sheet.type) : []),
      ...drawTape(
        along.map((place): Tick => ({ at: start + place * scale, text: say(place) })),
        "below",
        { edge: foot, low: edge, high: sheet.width - edge, rows },
        sheet.type,
      ),
      ...drawTape(
        [...across].reverse().map((place): Tick => ({ at: foot - place * scale, text: say(place) })),
        "left",
        { edge: start, low: edge, high: foot + sheet.type, rows: 1 },
        sheet.type,
      ),
      ...(hasUpper
        ? drawDimension(
            spot(upperSpan[0], wide),
            spot(upperSpan[1], wide),
            [0, -1],
            off,
            say(spanOf(upperSpan)),
            sheet.type,
          )
        : []),
      ...(hasLower
        ? drawDimension(
            spot(lowerSpan[0], 0),
            spot(lowerSpan[1], 0),
            [0, 1],
            lowerOff,
            say(spanOf(lowerSpan)),
            sheet.type,
          )
        : []),
      ...drawDimension(
        spot(0, wide),
        spot(long, wide),
        [0, -1],
        off + (hasUpper ? rowOff : 0),
        say(piece.length),
        sheet.type,
      ),
      ...widthDimension([right[0], foot], [right[0], above], say(piece.width), sheet.type),
      ...notes.marks,
    ],
  };
}

/** The lower edge, good face up, with the blade's tilt at each end that has one. */
function drawEdge(member: Member, frame: BoardFrame, placement: Placement, size: number): Mark[] {
  const picture = takePicture([inPlace(member)], edgeView(frame));
  const { left, top, scale } = placement;
  const [long, , thick] = frame.size;
  const middle = top + (thick * scale) / 2 + baseline(size);
  const tilts = frame.ends.flatMap(({ bevel }, i): Mark[] => {
    if (!isSlanted(bevel)) return [];
    const at: Paper = [i === 0 ? left - 1.2 : left + long * scale + 1.2, middle];
    return [{ kind: "text", at, text: formatDegrees(bevel), size, anchor: i === 0 ? "end" : "start" }];
  });
  return [...plainView(picture, placed(member, frame.size, picture, placement)), ...tilts];
}

/** The right end, good face to the left, with the blade's tilt of the long edges. */
function drawEnd(member: Member, frame: BoardFrame, placement: Placement, size: number): Mark[] {
  const picture = takePicture([inPlace(member)], endView(frame));
  const { left, top, scale } = placement;
  const [, wide, thick] = frame.size;
  const [lower, upper] = edgeBevels(frame);
  const tilt = isSlanted(lower) ? lower : upper;
  const v = isSlanted(lower) ? top + wide * scale - size * 0.6 : top + size * 0.6;
  const at: Paper = [left + thick * scale + 1.2, v + baseline(size)];
  return [
    ...plainView(picture, placed(member, frame.size, picture, placement)),
    { kind: "text", at, text: formatDegrees(tilt), size, anchor: "start" },
  ];
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

function describePiece(
  piece: Piece,
  along: readonly Length[],
  across: readonly Length[],
  division: Division,
  ratio: number,
  notes: readonly Note[],
): string {
  const say = (length: Length): string => paperLength(length, division);
  const cuts = along.length === 0 ? "" : ` From the left end at ${listed(along.map(say))}.`;
  const edges = across.length === 0 ? "" : ` From the lower edge at ${listed(across.map(say))}.`;
  const more = notes.map(({ text }) => ` ${sentence(text)}`);
  return `Piece ${piece.mark} (${piece.name}), ${piece.count} of it: ${say(piece.length)} long, ${say(piece.width)} wide, ${say(piece.thickness)} thick, in ${unitWords(division)}, at ${formatRatio(ratio)}; the grain runs along its length.${cuts}${edges}${more.join("")}`;
}

// An item -> the view that tells a buyer how big it is: width, depth and height, in inches and millimetres, a figure and a rule.
import type { Vec3 } from "../geometry/shape.ts";
import type { Item } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { formatWithUnit } from "../units/format-length.ts";
import { inches, type Length } from "../units/length.ts";
import { type Deck, decksOf } from "./deck-heights.ts";
import { arrowSize, drawDimension, drawUnderValue } from "./dimensions.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { type Extent, extentOf } from "./extent.ts";
import { listed, withFractions } from "./paper-text.ts";
import { type Picture, type Placement, spotOnPaper } from "./picture.ts";
import { drawFigure, figureFor, halfWidth, type ScaleFigure } from "./scale-figure.ts";
import { drawRule } from "./scale-rule.ts";
import { pictorialPen, type Sheet, storeSheet } from "./sheet.ts";
import { spread } from "./spread.ts";
import { drawStanding, type Room, standIn } from "./standing-view.ts";
import { baseline, textWidth } from "./text-width.ts";
import { seenParts, seenShare } from "./visibility.ts";

const edge = 2;
/** Of a deck at least this much is seen, or it isn't told. */
const deckSeen = 0.1;
const deckName = "deck";
/** From the outline to a dimension line, mm: its lower value stands between them. */
const off = 9;

/** What a buyer measures with, first and second: the shop's own unit leads. */
const units = (division: Division): readonly [Division, Division] => {
  const inch: Division = { unit: "in", per: 16 };
  return division.unit === "in" ? [division, { unit: "mm" }] : [division, inch];
};

/** From the figure to the dimension beside it, mm. */
const figureGap = 3;

type Side = "left" | "below left" | "below right";

/** One size with both values along its line; where that is too short for them, in two rows beside it. */
function drawSize(a: Paper, b: Paper, side: Side, values: readonly [string, string], size: number): Mark[] {
  const outward: Paper = side === "left" ? [-1, 0] : [0, 1];
  const along = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const fits = Math.max(...values.map((value) => textWidth(value, size, false))) + 2 * arrowSize < along;
  const dimension = drawDimension(a, b, outward, off, values[0], size);
  if (fits) return [...dimension, drawUnderValue(a, b, outward, off, values[1], size)];
  const lines = dimension.filter((mark) => mark.kind !== "text");
  const u = (a[0] + b[0]) / 2 + outward[0] * off + (side === "below right" ? 3 : -3);
  const v = (a[1] + b[1]) / 2 + outward[1] * off;
  const anchor = side === "below right" ? "start" : "end";
  const rows = values.map((text, i): Mark => ({ kind: "text", at: [u, v + size * 1.2 * (i + 1)], text, size, anchor }));
  return [...lines, ...rows];
}

type LaidOut = {
  readonly marks: readonly Mark[];
  readonly picture: Picture;
  readonly placement: Placement;
  readonly figure: ScaleFigure;
  readonly bottom: number;
};

/** Of the room that the thing alone would have, the least that is tried, and how often what is left is halved. */
const leastShare = 0.3;
const halvings = 6;

/** On a narrower sheet the figure stands under the thing. */
const roomBeside = 100;

export function drawMeasuredView(item: Item, division: Division, sheet: Sheet = storeSheet): Drawing {
  const { width, depth, height } = item.overall;
  const [first, second] = units(division);
  const { marks, picture, placement, figure, bottom } = fitted(item, [first, second], sheet);
  const both = (length: Length): string =>
    withFractions(`${formatWithUnit(length, first)} (${formatWithUnit(length, second)})`);
  const room = { left: edge, top: bottom + 3, most: sheet.width * 0.4 };
  const ruleWords = (length: number): string => `a rule, ${both(length)} long`;
  const rule = drawRule(picture, placement, room, ruleWords, sheet.type);
  const stands = ` Beside it, to the same scale, stands ${figure.words}, ${both(figure.height)} ${figure.name === "hand" ? "long" : "high"}.`;
  const beside = rule === undefined ? "" : ` Under it lies ${ruleWords(rule.inches)}.`;
  const all = [...marks, ...(rule?.marks ?? [])];
  const decks = seenDecks(item, picture).map((deck) => both(deck.height));
  const levels =
    decks.length === 0 ? "" : ` Marked beside it: ${deckName}${decks.length === 1 ? "" : "s"} ${listed(decks)} up.`;
  return {
    id: `${item.slug}-measured-${sheet.name}`,
    title: `${item.title}: how big it is`,
    description: `A drawing from the front right with the overall sizes: ${both(width)} wide, ${both(depth)} deep, ${both(height)} high.${levels}${stands}${beside}`,
    width: sheet.width,
    height: extentOf(all).bottom + edge,
    scale: placement.scale,
    pen: pictorialPen(sheet),
    marks: all,
  };
}

/** As large as everything finds room on the sheet, in the middle of it across. */
function fitted(item: Item, units: readonly [Division, Division], sheet: Sheet): LaidOut {
  const usual = edge + off + sheet.type + 2;
  const room: Room = {
    left: usual,
    top: edge,
    width: sheet.width - 2 * usual,
    height: sheet.height - edge - usual,
  };
  const tryAt = (share: number): { readonly smaller: Room; readonly extent: Extent } => {
    const smaller = { ...room, width: room.width * share, height: room.height * share };
    return { smaller, extent: extentOf(layOut(item, units, sheet, smaller).marks) };
  };
  // What fits at a share fits at every smaller one.
  let [fits, tooMuch] = [leastShare, 1];
  let best = tryAt(fits);
  for (let i = 0; i < halvings; i++) {
    const share = (fits + tooMuch) / 2;
    const one = tryAt(share);
    const { left, right, top, bottom } = one.extent;
    if (right - left <= sheet.width - 2 * edge && bottom - top <= sheet.height) [fits, best] = [share, one];
    else tooMuch = share;
  }
  const { smaller, extent } = best;
  const left = smaller.left + (sheet.width - extent.left - extent.right) / 2;
  return layOut(item, units, sheet, { ...smaller, left, top: smaller.top + edge - extent.top });
}

/** The decks of which something is seen. */
function seenDecks(item: Item, picture: Picture): readonly Deck[] {
  const parts = seenParts(picture);
  return decksOf(item).filter(({ members }) => {
    const own = parts.filter((_, i) => members.includes(picture.bodies[i]?.member.id ?? ""));
    return seenShare(own) > deckSeen;
  });
}

/** A tick for each deck at the right back corner, with its height in both units. */
function drawDecks(
  decks: readonly Deck[],
  paper: (spot: Vec3) => Paper,
  [x, y]: readonly [number, number],
  units: readonly [Division, Division],
  size: number,
): Mark[] {
  const line = size * 1.2;
  const highest = [...decks].reverse();
  const corners = highest.map(({ height }) => paper([x, y, inches(height)]));
  const wishes = corners.map(([, v]) => v);
  const places = spread(wishes, 3 * line + 1, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
  return highest.flatMap(({ height }, i): Mark[] => {
    const [u, v] = corners[i] as Paper;
    const place = places[i] as number;
    const rows = [deckName, ...units.map((one) => withFractions(formatWithUnit(height, one)))];
    return [
      {
        kind: "lines",
        line: "dimension",
        chains: [
          [
            [u + 1, v],
            [u + 4, v],
            [u + 7, place],
          ],
        ],
      },
      ...rows.map((text, row): Mark => {
        const at: Paper = [u + 8, place + line * (row - 1) + baseline(size)];
        return { kind: "text", at, text, size, anchor: "start" };
      }),
    ];
  });
}

function layOut(item: Item, [first, second]: readonly [Division, Division], sheet: Sheet, room: Room): LaidOut {
  const { width, depth, height } = item.overall;
  const [x, y, z] = [inches(width), inches(depth), inches(height)];
  const { picture, placement } = standIn(item, room);
  const paper = (spot: Vec3): Paper => spotOnPaper(picture, placement, spot);
  const size = (from: Vec3, to: Vec3, side: Side, length: Length): Mark[] => {
    const values = [first, second].map((one) => withFractions(formatWithUnit(length, one))) as [string, string];
    return drawSize(paper(from), paper(to), side, values, sheet.type);
  };
  const marks = [
    ...drawStanding(picture, placement, (_, endGrain) => ({ kind: endGrain ? "end grain" : "wood" })),
    ...size([0, 0, 0], [x, 0, 0], "below left", width),
    ...size([x, 0, 0], [x, y, 0], "below right", depth),
    ...size([0, 0, 0], [0, 0, z], "left", height),
  ];
  const decks = drawDecks(seenDecks(item, picture), paper, [x, y], [first, second], sheet.type);
  const figure = figureFor(x, y, z);
  const rows = [figure.name, ...[first, second].map((one) => withFractions(formatWithUnit(figure.height, one)))];
  const [, ground] = paper([0, 0, 0]);
  const up = ground - paper([0, 0, 1])[1];
  const { left, bottom } = extentOf([...marks, ...decks]);
  const half = halfWidth(figure) * placement.scale;
  const isBeside = sheet.width >= roomBeside;
  const words = Math.max(...rows.map((row) => textWidth(row, sheet.type, false) / 2));
  const foot: Paper = isBeside
    ? [left - figureGap - Math.max(half, words), ground]
    : [room.left - off + half, bottom + figureGap + figure.height * up];
  const line = sheet.type * 1.2;
  const all = [
    ...marks,
    ...decks,
    ...drawFigure(figure, foot, placement.scale, up),
    ...rows.map((text, i): Mark => {
      const at: Paper = isBeside
        ? [foot[0], foot[1] + 1 + line * (i + 1)]
        : [foot[0] + half + figureGap, foot[1] - (figure.height * up) / 2 + line * i];
      return { kind: "text", at, text, size: sheet.type, anchor: isBeside ? "middle" : "start" };
    }),
  ];
  return { marks: all, picture, placement, figure, bottom: extentOf(all).bottom };
}

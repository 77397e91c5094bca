// An item -> the view that tells a buyer how big it is: width, depth and height, in inches and millimetres, and a rule.
import type { Vec3 } from "../geometry/shape.ts";
import type { Item } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { formatWithUnit } from "../units/format-length.ts";
import { inches, type Length } from "../units/length.ts";
import { arrowSize, drawDimension, drawUnderValue } from "./dimensions.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { extentOf } from "./extent.ts";
import { withFractions } from "./paper-text.ts";
import { type Picture, type Placement, spotOnPaper } from "./picture.ts";
import { drawRule } from "./scale-rule.ts";
import { pictorialPen, type Sheet, storeSheet } from "./sheet.ts";
import { drawStanding, standIn } from "./standing-view.ts";
import { textWidth } from "./text-width.ts";

const edge = 2;
/** From the outline to a dimension line, mm: its lower value stands between them. */
const off = 9;

/** What a buyer measures with, first and second: the shop's own unit leads. */
const units = (division: Division): readonly [Division, Division] => {
  const inch: Division = { unit: "in", per: 16 };
  return division.unit === "in" ? [division, { unit: "mm" }] : [division, inch];
};

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

/** Free room round the picture for its dimensions, mm. */
type Margins = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

export function drawMeasuredView(item: Item, division: Division, sheet: Sheet = storeSheet): Drawing {
  const { width, depth, height } = item.overall;
  const [first, second] = units(division);
  const usual = edge + off + sheet.type + 2;
  const start: Margins = { left: usual, right: usual, top: edge, bottom: usual };
  const once = layOut(item, [first, second], sheet, start);
  const { marks, picture, placement, bottom } = layOut(item, [first, second], sheet, widened(start, once.marks, sheet));
  const both = (length: Length): string => `${formatWithUnit(length, first)} (${formatWithUnit(length, second)})`;
  const room = { left: edge, top: bottom + 3, most: sheet.width * 0.4 };
  const ruleWords = (length: number): string => `a rule, ${both(length)} long`;
  const rule = drawRule(picture, placement, room, ruleWords, sheet.type);
  const beside = rule === undefined ? "" : ` Under it, to the same scale, lies ${ruleWords(rule.inches)}.`;
  const all = [...marks, ...(rule?.marks ?? [])];
  return {
    id: `${item.slug}-measured-${sheet.name}`,
    title: `${item.title}: how big it is`,
    description: `A drawing from the front right with the overall sizes: ${both(width)} wide, ${both(depth)} deep, ${both(height)} high.${beside}`,
    width: sheet.width,
    height: extentOf(all).bottom + edge,
    scale: placement.scale,
    pen: pictorialPen(sheet),
    marks: all,
  };
}

/** Margins made wider by what of the marks stood over the sheet's edges at the sides and the top. */
function widened(margins: Margins, marks: readonly Mark[], sheet: Sheet): Margins {
  const { left, right, top } = extentOf(marks);
  return {
    left: margins.left + Math.max(0, edge - left),
    right: margins.right + Math.max(0, right - (sheet.width - edge)),
    top: margins.top + Math.max(0, edge - top),
    bottom: margins.bottom,
  };
}

function layOut(
  item: Item,
  [first, second]: readonly [Division, Division],
  sheet: Sheet,
  margins: Margins,
): {
  readonly marks: readonly Mark[];
  readonly picture: Picture;
  readonly placement: Placement;
  readonly bottom: number;
} {
  const { width, depth, height } = item.overall;
  const [x, y, z] = [inches(width), inches(depth), inches(height)];
  const { picture, placement } = standIn(item, {
    left: margins.left,
    top: margins.top,
    width: sheet.width - margins.left - margins.right,
    height: sheet.height - margins.top - margins.bottom,
  });
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
  return { marks, picture, placement, bottom: extentOf(marks).bottom };
}

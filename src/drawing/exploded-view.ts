// An item -> its exploded view: panels and boards moved apart along their seats, every piece once with its mark.

import { hullOf, isClear } from "../geometry/clear-way.ts";
import type { Vec3 } from "../geometry/shape.ts";
import { add, subtract } from "../geometry/vector.ts";
import { nearness, type View } from "../geometry/view.ts";
import type { Item, Panel } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { balloonRadius, columnsBeside, drawBalloons } from "./balloons.ts";
import { dotSpots } from "./dot-spots.ts";
import type { Drawing } from "./drawing.ts";
import { explode, singly, type Unit, unitsOf } from "./explode.ts";
import { extrasOf, fittingExtras, fittingSeats, spoken } from "./extras.ts";
import { drawNotes } from "./notes.ts";
import { drawPanes } from "./panes.ts";
import { listed } from "./paper-text.ts";
import {
  drawLines,
  drawRegions,
  inPlace,
  type Picture,
  type Placement,
  pictureSize,
  standingLight,
  takePicture,
} from "./picture.ts";
import { drawRopeWays, ropesApart } from "./rope-ways.ts";
import { fitScale } from "./scale.ts";
import { drawSeatPaths, endSeats } from "./seat-paths.ts";
import { binderSheet, pictorialPen, type Sheet } from "./sheet.ts";
import { standingViews } from "./standing-view.ts";
import { seenExtra, seenParts, seenShare } from "./visibility.ts";

/** Gaps that are tried, the smallest first, as parts of the item's middle size. */
const gaps = [0.2, 0.28, 0.38, 0.5, 0.65];
/** Of its own plain outline, this much is seen of the best-seen board of each piece, and of each unit. */
const seenOfPiece = 0.55;
const seenOfUnit = 0.3;

const edge = 2;

/** `by` tells how far members and fittings have moved. */
type Apart = {
  readonly picture: Picture;
  readonly units: readonly Unit[];
  readonly by: ReadonlyMap<string, Vec3>;
  readonly from: string;
};

/** The first gap and side from which enough of everything is seen; else the one that shows most of what is seen least. */
export function moveApart(item: Item): Apart {
  const { width, depth, height } = item.overall;
  const middle = [width, depth, height].map(inches).sort((a, b) => a - b)[1] as number;
  const fittings = item.fittings.filter(({ solid }) => solid !== undefined);
  const seats = fittingSeats(fittings, item.members);
  let best: { readonly apart: Apart; readonly least: number } | undefined;
  for (const { words, view } of standingViews.slice(0, 4)) {
    const opened = new Set(nearestOfKinds(item.panels, view).map((panel) => panel.name));
    for (const part of gaps) {
      const units = unitsOf(item, opened, middle * part * 0.45);
      const by = explode(
        [...item.contacts, ...seats],
        [...units, ...singly(fittings.map(({ id }) => id))],
        middle * part,
      );
      const of = (id: string): Vec3 => by.get(id) ?? [0, 0, 0];
      const picture = takePicture(
        item.members.map((member) => ({ member, by: of(member.id) })),
        view,
        [...fittings.flatMap((fitting) => fittingExtras(fitting, of(fitting.id))), ...ropesApart(item, of)],
      );
      if (runIntoEachOther(picture)) continue;
      const least = leastSeen(picture, units);
      const apart = { picture, units, by, from: words };
      if (least >= 1) return apart;
      if (best === undefined || least > best.least) best = { apart, least };
    }
  }
  return best?.apart ?? together(item);
}

/** Where nothing can be moved apart, the item as it stands. */
function together(item: Item): Apart {
  const { words, view } = standingViews[0] as (typeof standingViews)[number];
  const picture = takePicture(item.members.map(inPlace), view, extrasOf(item));
  return { picture, units: unitsOf(item, new Set(), 0), by: new Map(), from: words };
}

/** Whether boards overlap that were moved against each other; square ones never do, as their seats open along an axis. */
function runIntoEachOther({ bodies }: Picture): boolean {
  return bodies.some((a, i) =>
    bodies.slice(i + 1).some((b) => {
      if (a.by.every((step, k) => Math.abs(step - (b.by[k] as number)) < 1e-9)) return false;
      if (a.member.shape.trims.length + b.member.shape.trims.length === 0) return false;
      const by = subtract(a.by, b.by);
      return !isClear(hullOf(a.member.solid), by, by, hullOf(b.member.solid));
    }),
  );
}

/** Of each kind of panel the one nearest the viewer. */
function nearestOfKinds(panels: readonly Panel[], view: View): readonly Panel[] {
  const near = (panel: Panel): number => {
    const of = (p: Panel["min"]): Vec3 => [inches(p.x), inches(p.y), inches(p.z)];
    return nearness(view, add(of(panel.min), of(panel.max)));
  };
  const kinds = [...new Set(panels.map((panel) => panel.kind))];
  return kinds.map(
    (kind) => panels.filter((panel) => panel.kind === kind).sort((a, b) => near(b) - near(a))[0] as Panel,
  );
}

/** How far the least-seen piece or unit comes towards what is asked of it; 1 and more is enough. */
function leastSeen(picture: Picture, units: readonly Unit[]): number {
  const parts = seenParts(picture);
  const byId = new Map(picture.bodies.map(({ member }, i) => [member.id, parts[i] as (typeof parts)[number]]));
  const marks = new Map<string, number>();
  for (const { member } of picture.bodies) {
    const share = seenShare([byId.get(member.id) as (typeof parts)[number]]);
    marks.set(member.mark, Math.max(marks.get(member.mark) ?? 0, share));
  }
  const unitShares = units.map((unit) => seenShare(unit.members.map((id) => byId.get(id) as (typeof parts)[number])));
  const extras = new Set(
    [...picture.extras, ...picture.panes.extras].flatMap((one) => (one.stuff === "rope" ? [] : [one.name])),
  );
  return Math.min(
    ...[...extras].map((name) => seenShare([seenExtra(picture, name)]) / seenOfUnit),
    ...[...marks.values()].map((share) => share / seenOfPiece),
    ...unitShares.map((share) => share / seenOfUnit),
  );
}

export function drawExploded(item: Item, sheet: Sheet = binderSheet): Drawing {
  const { picture, by, from } = moveApart(item);
  const radius = balloonRadius(item.pieces.map((piece) => piece.mark));
  const column = edge + 2 * radius + 5;
  const size = pictureSize(picture);
  const room = { width: sheet.width - 2 * column, height: sheet.height - 2 * edge };
  const scale = fitScale(size.width, size.height, room);
  const placement: Placement = {
    scale,
    left: column + (room.width - size.width * scale) / 2,
    top: edge + 1,
  };
  const height = size.height * scale + 2 * edge + 2;
  const callouts = item.pieces.map((piece) => {
    const owners = new Set(picture.bodies.flatMap((body, i) => (body.member.mark === piece.mark ? [i] : [])));
    return { text: piece.mark, spots: dotSpots(picture, placement, owners, []) };
  });
  const across = { left: placement.left, width: size.width * scale };
  const columns = columnsBeside(across, sheet.width, edge, height - edge, radius);
  const seen = callouts.filter((callout) => callout.spots.length > 0);
  const hidden = callouts.filter((callout) => callout.spots.length === 0).map((callout) => callout.text);
  const others = [...new Set([...picture.extras, ...picture.panes.extras].map(({ name }) => spoken(name)))];
  const words = [
    ...(hidden.length === 0 ? [] : [{ text: `Behind the others from here: ${listed(hidden)}` }]),
    ...(others.length === 0 ? [] : [{ text: `Not wood: ${listed(others)}` }]),
  ];
  const notes = drawNotes(words, { left: edge, top: height, width: sheet.width - 2 * edge }, sheet.type);
  const pieces = item.pieces.map((piece) => `${piece.mark}, ${piece.count} of ${piece.name}`);
  const kinds = [...new Set(item.panels.map((panel) => panel.kind))];
  const count = item.members.length === 1 ? "one board" : `${item.members.length} boards`;
  const marked =
    item.pieces.length === 1 ? "One piece, marked once" : `${item.pieces.length} different pieces, each marked once`;
  const opened =
    kinds.length === 0 ? "" : ` One panel of each kind (${listed(kinds)}) is opened, any others are whole.`;
  return {
    id: `${item.slug}-exploded-${sheet.name}`,
    title: `${item.title}: exploded view`,
    description: `The ${count} moved apart, seen from ${from}; thin lines lead from seat to seat.${opened} ${marked}: ${pieces.join("; ")}.${others.length === 0 ? "" : ` Not wood: ${listed(others)}.`}`,
    width: sheet.width,
    height: words.length === 0 ? height : notes.bottom + edge,
    pen: pictorialPen(sheet),
    marks: [
      ...drawRegions(picture, placement, standingLight, (_, endGrain) => ({ kind: endGrain ? "end grain" : "wood" })),
      ...drawLines(picture, placement, () => "visible", ["visible"]),
      drawSeatPaths([...endSeats(item), ...fittingSeats(item.fittings, item.members)], by, picture, placement),
      ...drawRopeWays(item.cords, (id) => by.get(id) ?? [0, 0, 0], picture, placement),
      ...drawPanes(picture, placement, "light"),
      ...drawBalloons(seen, columns),
      ...notes.marks,
    ],
  };
}

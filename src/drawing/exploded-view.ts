// An item -> its exploded view: panels and boards moved apart along their seats, every piece once with its mark.

import { hullOf, isClear } from "../geometry/clear-way.ts";
import type { Vec3 } from "../geometry/shape.ts";
import { add, subtract } from "../geometry/vector.ts";
import { nearness, type View } from "../geometry/view.ts";
import type { Contact, Item, Panel } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { balloonRadius, columnsBeside, drawBalloons } from "./balloons.ts";
import { dotSpots } from "./dot-spots.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { explode, type Unit, unitsOf } from "./explode.ts";
import { drawNotes } from "./notes.ts";
import { listed } from "./paper-text.ts";
import {
  drawLines,
  drawRegions,
  inPlace,
  type Picture,
  type Placement,
  pictureSize,
  spotOnPaper,
  standingLight,
  takePicture,
} from "./picture.ts";
import { fitScale } from "./scale.ts";
import { binderSheet, pictorialPen, type Sheet } from "./sheet.ts";
import { standingViews } from "./standing-view.ts";
import { seenParts, seenShare, seenStretches } from "./visibility.ts";

/** Gaps that are tried, the smallest first, as parts of the item's middle size. */
const gaps = [0.2, 0.28, 0.38, 0.5, 0.65];
/** Of its own plain outline, this much is seen of the best-seen board of each piece, and of each unit. */
const seenOfPiece = 0.55;
const seenOfUnit = 0.3;

const edge = 2;

type Apart = { readonly picture: Picture; readonly units: readonly Unit[]; readonly from: string };

/** The first gap and side from which enough of everything is seen; else the one that shows most of what is seen least. */
export function moveApart(item: Item): Apart {
  const { width, depth, height } = item.overall;
  const middle = [width, depth, height].map(inches).sort((a, b) => a - b)[1] as number;
  let best: { readonly apart: Apart; readonly least: number } | undefined;
  for (const { words, view } of standingViews.slice(0, 4)) {
    const opened = new Set(nearestOfKinds(item.panels, view).map((panel) => panel.name));
    for (const part of gaps) {
      const units = unitsOf(item, opened, middle * part * 0.45);
      const by = explode(item.contacts, units, middle * part);
      const picture = takePicture(
        item.members.map((member) => ({ member, by: by.get(member.id) ?? [0, 0, 0] })),
        view,
      );
      if (runIntoEachOther(picture)) continue;
      const least = leastSeen(picture, units);
      const apart = { picture, units, from: words };
      if (least >= 1) return apart;
      if (best === undefined || least > best.least) best = { apart, least };
    }
  }
  return best?.apart ?? together(item);
}

/** Where nothing can be moved apart, the item as it stands. */
function together(item: Item): Apart {
  const { words, view } = standingViews[0] as (typeof standingViews)[number];
  return { picture: takePicture(item.members.map(inPlace), view), units: unitsOf(item, new Set(), 0), from: words };
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
  return Math.min(
    ...[...marks.values()].map((share) => share / seenOfPiece),
    ...unitShares.map((share) => share / seenOfUnit),
  );
}

/** Thin lines from seat to seat: along the seat's normal first. Of a row of like members the first and the last. */
function pathsOf(item: Item, picture: Picture, placement: Placement): Mark {
  const by = new Map(picture.bodies.map((body) => [body.member.id, body.by]));
  const chains = endSeats(item).flatMap(({ a, b, normal, patch }) => {
    const [from, to] = [by.get(a), by.get(b)];
    if (from === undefined || to === undefined || from.every((step, k) => Math.abs(step - (to[k] as number)) < 1e-9)) {
      return [];
    }
    const seat = [0, 1, 2].map((k) => patch.reduce((sum, p) => sum + (p[k] as number), 0) / patch.length);
    const axis = normal.findIndex((part) => Math.abs(part) > 0.9);
    let at = add(seat as unknown as Vec3, from);
    const corners: Vec3[] = [at];
    for (const k of [axis, 0, 1, 2]) {
      if (k < 0) continue;
      const goal = (seat[k] as number) + (to[k] as number);
      if (Math.abs(goal - (at[k] as number)) < 1e-9) continue;
      at = at.map((part, i) => (i === k ? goal : part)) as unknown as Vec3;
      corners.push(at);
    }
    return corners
      .slice(1)
      .flatMap((corner, i) => seenStretches(picture, corners[i] as Vec3, corner))
      .map((stretch) => stretch.map((spot): Paper => spotOnPaper(picture, placement, spot)));
  });
  return { kind: "lines", line: "path", chains };
}

/** Contacts that a join holds together; of members that no join holds, all their contacts. */
function fastenedContacts(item: Item): readonly Contact[] {
  const pair = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);
  const joined = new Set(item.joins.map((join) => pair(join.a, join.b)));
  const held = new Set(item.joins.flatMap((join) => [join.a, join.b]));
  return item.contacts.filter(({ a, b }) => joined.has(pair(a, b)) || !held.has(a) || !held.has(b));
}

/** Contacts of the first and the last member of every row with each thing that the row touches. */
function endSeats(item: Item): readonly Contact[] {
  const row = new Map(item.members.map((member) => [member.id, `${member.panel ?? ""}/${member.group}`]));
  const rows = new Map<string, Contact[]>();
  for (const contact of fastenedContacts(item)) {
    const key = `${row.get(contact.a)} ${row.get(contact.b)} ${contact.normal.map(Math.round).join(" ")}`;
    rows.set(key, [...(rows.get(key) ?? []), contact]);
  }
  return [...rows.values()].flatMap((all) => (all.length <= 4 ? all : [all[0] as Contact, all.at(-1) as Contact]));
}

export function drawExploded(item: Item, sheet: Sheet = binderSheet): Drawing {
  const { picture, from } = moveApart(item);
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
  const words = hidden.length === 0 ? [] : [{ text: `Behind the others from here: ${listed(hidden)}` }];
  const notes = drawNotes(words, { left: edge, top: height, width: sheet.width - 2 * edge }, sheet.type);
  const pieces = item.pieces.map((piece) => `${piece.mark}, ${piece.count} of ${piece.name}`);
  return {
    id: `${item.slug}-exploded-${sheet.name}`,
    title: `${item.title}: exploded view`,
    description: `The ${item.members.length} boards moved apart, seen from ${from}. ${item.pieces.length} different pieces, each marked once: ${listed(pieces)}.`,
    width: sheet.width,
    height: hidden.length === 0 ? height : notes.bottom + edge,
    pen: pictorialPen(sheet),
    marks: [
      ...drawRegions(picture, placement, standingLight, (_, endGrain) => ({ kind: endGrain ? "end grain" : "wood" })),
      ...drawLines(picture, placement, () => "visible", ["visible"]),
      pathsOf(item, picture, placement),
      ...drawBalloons(seen, columns),
      ...notes.marks,
    ],
  };
}

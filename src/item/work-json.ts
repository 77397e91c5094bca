// The worked-out item -> the plain tree that is printed as JSON: inches, cubic inches, pounds and degrees as numbers.
import { inches, type Length } from "../units/length.ts";
import { ropeToBuy } from "./cord/rope-to-buy.ts";
import { vecOf } from "./frame.ts";
import type { Blank, Cord, Item, Piece, TextField } from "./item.ts";

/** Twelve decimals of what came out of a sum of doubles, so that the last bit of one doesn't show; 0 has no sign. */
const plain = (value: number): number => Number(value.toFixed(12)) + 0;
const length = (value: Length): number => plain(inches(value));

const blankJson = (blank: Blank) => ({
  board: blank.board.name,
  count: blank.count,
  length: length(blank.length),
  width: length(blank.width),
  thickness: length(blank.thickness),
  grain: blank.grain,
});

const pieceJson = (piece: Piece) => ({
  mark: piece.mark,
  name: piece.name,
  count: piece.count,
  board: piece.board.name,
  length: length(piece.length),
  width: length(piece.width),
  thickness: length(piece.thickness),
  edges: piece.edges.map(length),
  ends: piece.ends.map(({ mitre, bevel }) => ({ mitre: plain(mitre), bevel: plain(bevel) })),
  volume: plain(piece.volume),
  ...(piece.outline === undefined ? {} : { outline: piece.outline, shortGrain: piece.shortGrain ?? [] }),
  ...(piece.blanks ? { blanks: piece.blanks.map(blankJson) } : {}),
});

const cordJson = (cord: Cord) => ({
  name: cord.name,
  rope: cord.rope.name,
  diameter: length(cord.rope.diameter),
  members: cord.members,
  points: cord.points.map((point) => point.map(plain)),
  through: plain(cord.through),
  between: plain(cord.between),
  hanging: plain(cord.hanging),
  knots: cord.knots,
  perKnot: plain(cord.perKnot),
  slack: plain(cord.slack),
  length: plain(cord.length),
  buy: length(ropeToBuy(cord.rope, [cord.length]).buy),
  weight: plain(cord.weight),
  ...(cord.load
    ? {
        load: {
          share: plain(cord.load.share),
          legs: cord.load.legs,
          angle: plain(cord.load.degrees),
          tension: plain(cord.load.tension),
          designFactor: plain(cord.load.designFactor),
        },
      }
    : {}),
});

const textJson = (field: TextField) => ({
  name: field.name,
  member: field.member,
  side: field.side,
  corner: field.corner.map(plain),
  across: field.across.map(plain),
  up: field.up.map(plain),
  width: plain(field.width),
  height: plain(field.height),
  free: plain(field.free),
  says: field.says,
  ways: field.ways,
});

/** The keys that scripts read. Keys of stages that aren't built are absent. */
export const workJson = (item: Item) => ({
  title: item.title,
  slug: item.slug,
  variant: item.variant.slug,
  chosen: item.variant.values,
  overall: {
    width: length(item.overall.width),
    depth: length(item.overall.depth),
    height: length(item.overall.height),
  },
  weight: plain(item.weight),
  centreOfMass: item.centreOfMass.map(plain),
  pieces: item.pieces.map(pieceJson),
  members: item.members.map((member) => ({
    id: member.id,
    mark: member.mark,
    ...(member.panel === undefined ? {} : { panel: member.panel }),
    min: vecOf(member.min).map(plain),
    max: vecOf(member.max).map(plain),
  })),
  overlaps: item.overlaps.map(({ a, b, volume, depth }) => ({ a, b, volume: plain(volume), depth: plain(depth) })),
  loads: item.loads.map(({ name, pounds, total, places }) => ({
    name,
    weight: plain(pounds),
    total: plain(total),
    places: places.map(({ at, on }) => ({ at: at.map(plain), on })),
  })),
  ...(item.soldAs
    ? { soldAs: { count: item.soldAs.count, words: item.soldAs.words, weight: plain(item.soldAs.weight) } }
    : {}),
  cords: item.cords.map(cordJson),
  text: item.textFields.map(textJson),
  finish: item.variant.finish.map(({ finish, coats, members, area, gallons }) => ({
    finish: finish.name,
    coats,
    members,
    area: plain(area),
    gallons: plain(gallons),
  })),
  bare: item.variant.bare,
  steps: item.sections.flatMap((section) =>
    section.steps.map((step) => ({
      number: step.number,
      ...(section.makes ? { makes: section.makes.kind, times: section.makes.times } : {}),
      adds: step.adds,
      fasteners: step.joins.reduce((sum, join) => sum + join.driven.length, 0),
    })),
  ),
});

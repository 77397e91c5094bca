// The join rules -> every place where members meet, with what holds them there and where each fastener sits.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, dot, subtract, times } from "../../geometry/vector.ts";
import { nearest } from "../../problems/nearest.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { JoinRule, JoinWay } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import { type Side, sides } from "../../units/side.ts";
import type { Fastener, Yard } from "../../yard/yard.ts";
import { blankOf } from "../frame.ts";
import type { Contact, Driven, Join, Panel, WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { freeRow, type Standing } from "./free-row.ts";
import { apart, pairKey, pairsOf, sharedBox } from "./meetings.ts";
import { drivePocket, pocketSeat } from "./pocket.ts";
import { type Seat, seatsOf } from "./seat.ts";
import { crossingOf } from "./slant-laps.ts";
import { type Drive, driveStraight } from "./straight.ts";
import { besideWood, woodTaken } from "./wood-taken.ts";

type Pair = readonly [PlacedMember, PlacedMember];

/** Joins in the order of the rules; `nowhere` are the members of rules that have no place. A way with a problem is told once, however many places it has. */
export function joinsOf(
  rules: readonly JoinRule[],
  placing: Placing,
  contacts: readonly Contact[],
  yard: Yard,
  cutsOf: ReadonlyMap<string, readonly WorkedCut[]>,
): { joins: Join[]; nowhere: ReadonlySet<string>; problems: Problem[] } {
  const touching = new Map<string, Contact[]>();
  for (const contact of contacts) {
    const key = pairKey(contact.a, contact.b);
    touching.set(key, [...(touching.get(key) ?? []), contact]);
  }
  const joins: Join[] = [];
  const problems: Problem[] = [];
  const unjoined = new Set<string>();
  const standing: Standing[] = [];
  const held = new Map<string, { at: Problem["at"]; text: string; driven: readonly Driven[] }[]>();
  const memberOf = new Map(placing.members.map((m) => [m.id, m]));
  const sound = (row: readonly Driven[]) =>
    row.every((one) => !woodTaken(one, memberOf, cutsOf) && !besideWood(one, memberOf));
  for (const rule of rules) {
    const a = placing.find(rule.a, undefined);
    const b = placing.find(rule.b, undefined);
    const missing = [a, b].flatMap((found) => ("code" in found ? [found] : []));
    const ways = rule.ways.map((way) => wayOf(way, yard));
    problems.push(...missing, ...ways.flatMap((way) => ("code" in way ? [way] : [])));
    if ("code" in a || "code" in b) continue;

    const carved = rule.ways.find(isCarved);
    const lapped = carved?.kind === "half-lap";
    const pairs = pairsOf(a, b);
    const meet = ([one, other]: Pair) => (carved ? sharesRoom(one, other) : touching.has(pairKey(one.id, other.id)));
    const places = pairs.filter(meet);
    if (places.length === 0) {
      // Two in one place touch nowhere, but are told as that.
      if (carved || !pairs.some(([one, other]) => sharedBox(one, other))) problems.push(nowhere(rule, carved, pairs));
      for (const { id } of [...a, ...b]) unjoined.add(id);
      continue;
    }
    for (const pair of places) {
      const [one, other] = pair;
      const seats = seatsOf(touching.get(pairKey(one.id, other.id)) ?? [], one.id);
      const key = pairKey(one.id, other.id);
      const before = held.get(key) ?? [];
      const driven: Driven[] = [];
      for (const way of ways) {
        if ("code" in way || !("fastener" in way)) continue;
        const alone =
          before.length === 0 ? undefined : drive(way, pair, seats, placing, { standing: [], sound, lapped });
        const twice = alone && before.find((b) => samePatch(b.driven, alone, touching.get(key) ?? []));
        if (twice) {
          const facts = { a: one.id, b: other.id, first: twice.text, line: twice.at.line };
          problems.push(problem("joined-twice", rule.at, facts, twice.at));
          continue;
        }
        const found = drive(way, pair, seats, placing, { standing, sound, lapped });
        if ("code" in found) problems.push(found);
        else {
          driven.push(...found);
          standing.push(...found.map((each) => ({ driven: each, at: way.at })));
        }
      }
      if (driven.length > 0) {
        held.set(key, [...before, { at: rule.at, text: `${rule.a.text} to ${rule.b.text}`, driven }]);
      }
      const glue = ways.flatMap((way) => ("glue" in way ? [way.glue] : []))[0];
      joins.push({
        a: one.id,
        b: other.id,
        ways: rule.ways.map((w) => w.kind),
        ...(glue === undefined ? {} : { glue }),
        driven,
        at: rule.at,
      });
    }
  }
  return { joins, nowhere: unjoined, problems };
}

/** Square boards by their boxes; a slanted one by its body, as its box is mostly air. */
const sharesRoom = (a: PlacedMember, b: PlacedMember): boolean =>
  sharedBox(a, b) !== undefined && (!(a.slant || b.slant) || crossingOf(a, b) !== "apart");

type Carved = JoinWay & { kind: "half-lap" | "let in" };
const isCarved = (way: JoinWay): way is Carved => way.kind === "half-lap" || way.kind === "let in";

type Way =
  | Problem
  | (Drive & { readonly way: JoinWay & { kind: "fastener" } })
  | { readonly glue: string }
  | { readonly carved: true };

/** A way of holding with what it takes from the yard. */
function wayOf(way: JoinWay, yard: Yard): Way {
  if (way.kind === "fastener") {
    const name = way.fastener.text;
    const known = yard.fasteners.map((f) => f.name);
    const fastener: Fastener | undefined = yard.fasteners.find((f) => f.name === name);
    if (!fastener)
      return problem("unknown-fastener", way.fastener.at, { what: name, known, nearest: nearest(name, known) });
    return { at: way.at, count: way.count, fastener, way };
  }
  if (way.kind === "glue") {
    const known = yard.glues.map((g) => g.name);
    const name = way.glue?.text ?? known[0];
    if (way.glue && !known.includes(way.glue.text)) {
      const what = way.glue.text;
      return problem("unknown-glue", way.glue.at, { what, known, nearest: nearest(what, known) });
    }
    return name === undefined ? problem("no-glue", way.at, {}) : { glue: name };
  }
  return { carved: true };
}

type Driving = {
  readonly standing: readonly Standing[];
  readonly sound: (row: readonly Driven[]) => boolean;
  readonly lapped: boolean;
};

function drive(
  way: Drive & { readonly way: JoinWay & { kind: "fastener" } },
  [a, b]: Pair,
  seats: readonly Seat[],
  placing: Placing,
  { standing, sound, lapped }: Driving,
): readonly Driven[] | Problem {
  const side = way.way.from;
  const panel = placing.turned(a);
  const facts = { fastener: way.fastener.name, a: a.id, b: b.id };
  const face = side && faceOf(a, panel, side);
  if (way.fastener.kind === "pocket screw") {
    if (!face) return problem("pocket-side-missing", way.at, facts, b.at);
    const bored = pocketSeat(a, seats, face);
    if (!bored) return problem("pocket-side-wrong", way.at, { ...facts, side: face.side }, b.at);
    const at = (shift: Vec3) => drivePocket(way, a, b, bored, face, shift);
    return freeRow(way, bored.seat, [bored.across], standing, at, sound);
  }
  // The heads stand on the face across from the patch.
  const headsAt = (seat: Seat, out: Vec3) => dot(seat.normal, out) < -0.7;
  const seat = seats.find((s) => !face || headsAt(s, face.out));
  if (!seat && side && lapped) {
    // Through a lap a screw may as well go from the other board's side.
    const out = faceOf(b, placing.turned(b), side).out;
    const turned = seats.map((s): Seat => ({ ...s, normal: times(s.normal, -1), offset: -s.offset }));
    const from = turned.find((s) => headsAt(s, out));
    const row = (shift: Vec3) => (from ? driveStraight(way, b, a, from, shift) : []);
    if (from) return freeRow(way, from, [from.long, from.short], standing, row, sound);
  }
  if (!seat) {
    const could = seats.flatMap((s) => sides.filter((name) => headsAt(s, faceOf(a, panel, name).out)));
    return problem("heads-side-wrong", way.at, { ...facts, side, could: [...new Set(could)] }, b.at);
  }
  const at = (shift: Vec3) => driveStraight(way, a, b, seat, shift);
  return freeRow(way, seat, [seat.long, seat.short], standing, at, sound);
}

/** Whether both rows go through one and the same patch of the two boards. */
function samePatch(before: readonly Driven[], row: readonly Driven[] | Problem, contacts: readonly Contact[]): boolean {
  if ("code" in row) return false;
  const patches = (rows: readonly Driven[]) =>
    contacts.filter(({ normal, patch }) =>
      rows.some(({ head, way, through }) => {
        const leaving = add(head, times(way, through));
        return Math.abs(dot(normal, subtract(leaving, patch[0] ?? leaving))) < sameLength;
      }),
    );
  const first = patches(before);
  return patches(row).some((patch) => first.includes(patch));
}

/** A side of a board by its name: which of its own axes it closes, and where it looks. */
function faceOf(member: PlacedMember, panel: Panel | undefined, side: Side) {
  const { own, far } = ownSideOf(member, panel, side);
  return { side, own, out: times(blankOf(member)[own], far ? 1 : -1) };
}

/** Told with the two that come nearest to each other. */
function nowhere(rule: JoinRule, carved: Carved | undefined, pairs: readonly Pair[]): Problem {
  const gaps = pairs.map((pair) => ({ pair, gap: apart(...pair) }));
  const near = gaps.reduce<(typeof gaps)[number] | undefined>(
    (best, g) => (best && best.gap <= g.gap ? best : g),
    undefined,
  );
  const facts = {
    a: rule.a.text,
    b: rule.b.text,
    ...(near ? { near: { a: near.pair[0].id, b: near.pair[1].id, gap: near.gap } } : {}),
  };
  return carved
    ? problem("join-no-crossing", carved.at, { ...facts, way: carved.kind }, near?.pair[1].at)
    : problem("join-no-meeting", rule.at, facts, near?.pair[1].at);
}

// Notches, laps, channels, rabbets, recesses, slots and openings -> boxes taken out of the member, in its own frame.
import { problem } from "../../problems/problem.ts";
import type { Cut, Sum } from "../../recipe/recipe.ts";
import type { Side } from "../../units/side.ts";
import { type OwnAxis, ownEntry, ownSize } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { type Room, type SpottedCut, spotsOf } from "./spots.ts";
import { stopsOf } from "./stops.ts";
import { checked, everyPick, othersThan, refused, sizesOf, vectorOf, type Worked } from "./worked.ts";

type BoxCut = Exclude<Cut, { kind: "hole" | "rounded corners" | "eased arrises" | "rounded arris" | "slope" }>;
type Range = readonly [number, number];

/** A cut with its sizes worked out: the room it takes, and how deep it goes into which side. */
type Sized = {
  readonly cut: SpottedCut & BoxCut;
  readonly rooms: readonly Room[];
  readonly axis: OwnAxis;
  readonly range: Range;
  readonly radius: number;
};

const sumsOf = (cut: BoxCut): Sum[] => {
  const all = "along" in cut && typeof cut.along === "object" ? [cut.along] : [];
  const more = "across" in cut ? [cut.across] : [];
  const wide = "wide" in cut ? [cut.wide] : [];
  const deep = "deep" in cut && cut.deep ? [cut.deep] : [];
  const corners = "corners" in cut && cut.corners ? [cut.corners] : [];
  return [...all, ...more, ...wide, ...deep, ...corners];
};

export function workBox(cut: BoxCut, member: PlacedMember, placing: Placing): Worked {
  const sizes = sizesOf(cut, sumsOf(cut), placing);
  if ("code" in sizes) return refused(sizes);
  const [first = 0, second = 0, third] = sizes;
  const whole = ownSize(member);
  const panel = placing.turned(member);
  if (cut.kind === "rabbet") return workRabbet(cut, first, second, member, placing);
  const sized = (side: Side | undefined, deep: number | undefined, rooms: (axis: OwnAxis) => readonly Room[]) => {
    const into = side ? ownSideOf(member, panel, side) : { own: "thickness" as const, far: false };
    const full = ownEntry(whole, into.own);
    const range: Range = deep === undefined ? [0, full] : into.far ? [full - deep, full] : [0, deep];
    return { cut, rooms: rooms(into.own), axis: into.own, range, radius: 0 };
  };
  const facts = { cut: cut.text, member: member.id };
  const across = (axis: OwnAxis): readonly Room[] =>
    othersThan(axis).map((own, i) => ({ axis: own, extent: i === 0 ? first : second }));
  if ("into" in cut && cut.into && "deep" in cut && cut.deep) {
    const { own } = ownSideOf(member, panel, cut.into);
    const full = ownEntry(whole, own);
    const deep = cut.kind === "recess" || cut.kind === "slot" ? (third ?? 0) : second;
    if (deep >= full) return refused(problem("cut-too-deep", cut.at, { ...facts, deep, full, into: cut.into }));
    const channel = cut.kind === "lap" || cut.kind === "dado" || cut.kind === "groove";
    if (channel && own === "length") return refused(problem("lap-into-end", cut.at, { ...facts, into: cut.into }));
  }
  switch (cut.kind) {
    case "notch":
      return takeOut(sized(undefined, undefined, across), member, placing);
    case "lap":
    case "dado":
      return takeOut(
        sized(cut.into, second, () => [{ axis: "length", extent: first }]),
        member,
        placing,
      );
    case "groove":
      return takeOut(
        sized(cut.into, second, (own) => [{ axis: own === "width" ? "thickness" : "width", extent: first }]),
        member,
        placing,
      );
    case "recess":
      return takeOut(sized(cut.into, third, across), member, placing);
    case "slot": {
      if (third !== undefined && !cut.into) return refused(problem("cut-side-missing", cut.at, facts));
      return takeOut({ ...sized(cut.into, third, across), radius: Math.min(first, second) / 2 }, member, placing);
    }
    case "opening": {
      const most = Math.min(first, second) / 2;
      const radius = third ?? 0;
      if (radius > most) return refused(problem("corners-too-round", cut.at, { cut: cut.text, radius, most }));
      return takeOut({ ...sized(undefined, undefined, across), radius }, member, placing);
    }
  }
}

function takeOut({ cut, rooms, axis, range, radius }: Sized, member: PlacedMember, placing: Placing): Worked {
  const spotted = spotsOf(cut, member, placing, rooms);
  if (!("get" in spotted)) return refused(...spotted);
  const whole = ownSize(member);
  const run = othersThan(axis).find((own) => !rooms.some((room) => room.axis === own));
  const stopped = run && "stops" in cut ? stopsOf(cut, run, member, placing) : undefined;
  if (stopped && "problems" in stopped) return stopped;
  const cuts = everyPick(rooms.map((room) => spotted.get(room.axis) ?? [])).map((starts): WorkedCut => {
    const along = (own: OwnAxis): Range => {
      if (own === axis) return range;
      if (stopped && own === run) return stopped;
      const i = rooms.findIndex((room) => room.axis === own);
      const start = starts[i];
      return start === undefined ? [0, ownEntry(whole, own)] : [start, start + (rooms[i]?.extent ?? 0)];
    };
    const box = {
      why: "cut",
      at: cut.at,
      min: vectorOf((own) => along(own)[0]),
      max: vectorOf((own) => along(own)[1]),
    } as const;
    return cut.kind === "slot" || cut.kind === "opening"
      ? { kind: "pocket", name: cut.kind, axis, radius, ...box }
      : { kind: "box", name: cut.kind, ...box };
  });
  return checked(cut, member, placing, cuts);
}

function workRabbet(
  cut: BoxCut & { kind: "rabbet" },
  wide: number,
  deep: number,
  member: PlacedMember,
  placing: Placing,
): Worked {
  const panel = placing.turned(member);
  const into = ownSideOf(member, panel, cut.into);
  const along = ownSideOf(member, panel, cut.along);
  const facts = { cut: cut.text, member: member.id, into: cut.into };
  if (into.own === along.own) return refused(problem("rabbet-sides", cut.at, { ...facts, along: cut.along }));
  const whole = ownSize(member);
  const full = ownEntry(whole, into.own);
  if (deep >= full) return refused(problem("cut-too-deep", cut.at, { ...facts, deep, full }));
  const run = othersThan(into.own).find((own) => own !== along.own);
  if (!run) throw new Error(`${member.id} has no way for a rabbet to run`);
  const stopped = stopsOf(cut, run, member, placing);
  if ("problems" in stopped) return stopped;
  const range = (own: OwnAxis): Range => {
    if (own === run) return stopped;
    const room = ownEntry(whole, own);
    const size = own === into.own ? deep : wide;
    const far = own === into.own ? into.far : along.far;
    return far && size < room ? [room - size, room] : [0, size];
  };
  const min = vectorOf((own) => range(own)[0]);
  const max = vectorOf((own) => range(own)[1]);
  return checked(cut, member, placing, [{ kind: "box", why: "cut", name: "rabbet", at: cut.at, min, max }]);
}

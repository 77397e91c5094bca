// The spots of a cut -> where it starts along each of the board's own axes that it has to be placed on.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut, Spot } from "../../recipe/recipe.ts";
import type { Axis } from "../../units/side.ts";
import { type OwnAxis, ownAlong, ownEntry, ownSize } from "../frame.ts";
import type { Panel } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { headingOf, ownSideOf } from "../sides.ts";
import { cutLength } from "./cut-length.ts";

/** The room a cut takes along an axis; nothing for a hole, which is placed by its centre. */
export type Room = { readonly axis: OwnAxis; readonly extent: number };

/** A cut that is placed by spots. */
export type SpottedCut = Extract<Cut, { readonly spots: readonly Spot[] }>;

/** Least coordinate of the cut along each axis, one for each time it is made. */
type Spotted = ReadonlyMap<OwnAxis, readonly number[]>;

/** Works out every spot on this member, or tells what is missing, said twice or of no use. */
export function spotsOf(
  cut: SpottedCut,
  member: PlacedMember,
  placing: Placing,
  rooms: readonly Room[],
): Spotted | readonly Problem[] {
  const panel = placing.turned(member);
  const size = ownSize(member);
  const found = new Map<OwnAxis, number[]>();
  const problems: Problem[] = [];
  const put = (spot: Spot, axis: OwnAxis, place: (room: number, extent: number) => number[]) => {
    const room = rooms.find((r) => r.axis === axis);
    const facts = { cut: cut.text, member: member.id, axis, spot: spotWords(spot) };
    if (!room) problems.push(problem("cut-spot-idle", spot.at, facts));
    else if (found.has(axis)) problems.push(problem("cut-spot-twice", spot.at, facts));
    else found.set(axis, place(ownEntry(size, axis), room.extent));
  };
  const both = (d: number) => (room: number, extent: number) => [d, room - d - extent];
  const middle = (room: number, extent: number) => [(room - extent) / 2];

  // `centred` without a direction takes what the other spots leave open, so it is read last.
  const open = (spot: Spot) => (spot.kind === "centred" && !spot.axis ? 1 : 0);
  for (const spot of [...cut.spots].sort((a, b) => open(a) - open(b))) {
    if (spot.kind === "centred") {
      const named = spot.axis ? [ownAlong(member, spaceAxis(spot.axis, panel))] : undefined;
      const axes = named ?? rooms.map((r) => r.axis).filter((axis) => !found.has(axis));
      for (const axis of axes) put(spot, axis, middle);
      continue;
    }
    const distance = spot.kind === "at" ? 0 : cutLength(spot.distance, placing);
    if (typeof distance !== "number") {
      problems.push(distance);
      continue;
    }
    const where = spot.kind === "at" ? spot.side : spot.from;
    if (where === "both ends" || where === "both ends and both edges") put(spot, "length", both(distance));
    if (where === "both edges" || where === "both ends and both edges") put(spot, edgeAxis(rooms), both(distance));
    if (where !== "both ends" && where !== "both edges" && where !== "both ends and both edges") {
      const { own, far } = ownSideOf(member, panel, where);
      put(spot, own, (room, extent) => [far ? room - distance - extent : distance]);
    }
  }
  for (const { axis } of rooms) {
    if (found.has(axis) || problems.length > 0) continue;
    problems.push(problem("cut-spot-missing", cut.at, { cut: cut.text, member: member.id, axis }));
  }
  return problems.length > 0 ? problems : found;
}

/** Edges are the board's narrow sides, across the grain; a hole into an edge has the two faces for its edges. */
const edgeAxis = (rooms: readonly Room[]): OwnAxis => (rooms.some((r) => r.axis === "width") ? "width" : "thickness");

const spaceAxis = (axis: Axis, panel: Panel | undefined): Axis =>
  headingOf(axis === "x" ? "right" : axis === "y" ? "back" : "top", panel).axis;

function spotWords(spot: Spot): string {
  if (spot.kind === "centred") return "centred";
  return spot.kind === "at" ? `at ${spot.side}` : `from ${spot.from}`;
}

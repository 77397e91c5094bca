// A panel -> what a tape reads along its edges, and the four corners its diagonals join.
import type { Vec2 } from "../geometry/shape.ts";
import type { Member, Panel } from "../item/item.ts";
import { compareLengths, inches, type Length, minus, zero } from "../units/length.ts";
import { boardFrame } from "./board-frame.ts";
import { isSlanted } from "./end-angle.ts";
import { cornersIn, leansIn, lengthIn, reachIn } from "./panel-space.ts";

/** Places along an edge: where each lies in the panel, and what the tape reads that is hooked on at `zero`. */
export type Tape = {
  readonly zero: number;
  readonly end: number;
  readonly ticks: readonly { readonly place: Length; readonly reads: Length }[];
};

export type PanelTapes = {
  readonly up: Tape;
  readonly below: Tape;
  /** Only where boards lean: along the top. */
  readonly above?: Tape;
  /** Lower left, lower right, upper right, upper left. */
  readonly corners: readonly [Vec2, Vec2, Vec2, Vec2];
  /** Whether a board has a corner of its own at each of them, for a tape to hook on. */
  readonly hooked: boolean;
};

const near = 1e-6;

function between(places: readonly Length[], from: Length, to: Length): Tape {
  const ticks = places
    .filter((place) => inches(place) > inches(from) + 1e-9 && inches(place) < inches(to) - 1e-9)
    .sort(compareLengths)
    .filter((place, i, all) => i === 0 || Math.abs(inches(place) - inches(all[i - 1] as Length)) > 1e-9)
    .map((place) => ({ place, reads: inches(from) === 0 ? place : minus(place, from) }));
  return { zero: inches(from), end: inches(to), ticks };
}

/** A board whose own ends slant takes its place from its neighbours: only its edges are measured. */
function hasPlace(panel: Panel, member: Member, way: "right" | "up"): boolean {
  if (leansIn(panel, member)) return false;
  const [x, y] = lengthIn(panel, member);
  const runs = Math.abs(way === "right" ? x : y) > 0.5;
  return !(runs && boardFrame(member).ends.some(({ mitre, bevel }) => isSlanted(mitre) || isSlanted(bevel)));
}

export function panelTapes(panel: Panel, members: readonly Member[]): PanelTapes {
  const tapes = tapesAlong(panel, members);
  const all = members.flatMap((member) => cornersIn(panel, member));
  const hooked = tapes.corners.every(([x, y]) => all.some(([u, v]) => Math.hypot(u - x, v - y) < near));
  return { ...tapes, hooked };
}

function tapesAlong(panel: Panel, members: readonly Member[]): Omit<PanelTapes, "hooked"> {
  const [width, height] = [inches(panel.width), inches(panel.height)];
  const reaches = (way: "right" | "up") =>
    members.filter((member) => hasPlace(panel, member, way)).flatMap((member) => reachIn(panel, member, way));
  const up = between(reaches("up"), zero, panel.height);
  if (!members.some((member) => leansIn(panel, member))) {
    const corners = [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ] as const;
    return { up, below: between(reaches("right"), zero, panel.width), corners };
  }
  const all = members.flatMap((member) => cornersIn(panel, member));
  const along = (v: number): Tape => {
    const places = all.filter((corner) => Math.abs(corner[1] - v) < near).map((corner) => corner[0]);
    return between(places, Math.min(...places), Math.max(...places));
  };
  const [below, above] = [along(0), along(height)];
  return {
    up,
    below,
    above,
    corners: [
      [below.zero, 0],
      [below.end, 0],
      [above.end, height],
      [above.zero, height],
    ],
  };
}

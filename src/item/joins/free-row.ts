// A row of fasteners and those already in the wood -> the row where it stands clear of them, moved no further than it must.
import { edgeGap } from "../../geometry/distance.ts";
import type { Vec3 } from "../../geometry/shape.ts";
import { add, times } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { Driven } from "../item.ts";
import { roomAround, type Seat } from "./seat.ts";
import { type Drive, leastFromEdge } from "./straight.ts";

/** A fastener that is already in, and the word of the recipe that put it there. */
export type Standing = { readonly driven: Driven; readonly at: Problem["at"] };

/** Wood left between two fasteners that pass each other; common practice, no source. */
const woodBetween = 1 / 16;

/** A row is moved in steps that a tape shows. */
const step = 1 / 16;

/** How near two middles may come: both radii and the wood between. */
const leastApart = (a: Driven, b: Driven): number => (a.fastener.diameter + b.fastener.diameter) / 2 + woodBetween;

/**
 * The row `drivenAt` no shift; where that would meet an earlier fastener, at the least shift in sixteenths that clears them
 * all, keeps the edge distance within the patch and the rules of the row itself, and is `sound`. Of equal shifts the earlier way
 * in `ways` stands, then the one toward right, back or top. The problem names the first earlier fastener that is met.
 */
export function freeRow(
  drive: Drive,
  seat: Seat,
  ways: readonly Vec3[],
  standing: readonly Standing[],
  drivenAt: (shift: Vec3) => readonly Driven[] | Problem,
  sound: (row: readonly Driven[]) => boolean,
): readonly Driven[] | Problem {
  const row = drivenAt([0, 0, 0]);
  if ("code" in row) return row;
  const met = firstMet(row, standing);
  if (!met) return row;
  for (const shift of shiftsOf(seat, ways)) {
    const moved = drivenAt(shift);
    if ("code" in moved || firstMet(moved, standing)) continue;
    if (moved.every((one) => roomAround(seat, leaving(one)) >= leastFromEdge(drive) - 1e-9) && sound(moved))
      return moved;
  }
  const { mine, other } = met;
  const facts = {
    ...{ fastener: mine.fastener.name, a: mine.a, b: mine.b },
    other: { fastener: other.driven.fastener.name, a: other.driven.a, b: other.driven.b },
    apart: edgeGap(lineOf(mine), lineOf(other.driven)),
    least: leastApart(mine, other.driven),
  };
  return problem("fasteners-cross", drive.at, facts, other.at);
}

/** Where a fastener goes from one board into the other. */
const leaving = ({ head, way, through }: Driven): Vec3 => add(head, times(way, through));

const lineOf = ({ head, tip }: Driven) => ({ a: head, b: tip });

function firstMet(row: readonly Driven[], standing: readonly Standing[]) {
  for (const mine of row) {
    const other = standing.find(({ driven }) => {
      const least = leastApart(mine, driven);
      const near = [0, 1, 2].every((i) => {
        const at = (v: Vec3) => v[i] as number;
        return (
          Math.max(at(mine.head), at(mine.tip)) + least > Math.min(at(driven.head), at(driven.tip)) &&
          Math.max(at(driven.head), at(driven.tip)) + least > Math.min(at(mine.head), at(mine.tip))
        );
      });
      return near && edgeGap(lineOf(mine), lineOf(driven)) < least - 1e-9;
    });
    if (other) return { mine, other };
  }
  return undefined;
}

function shiftsOf({ patch }: Seat, ways: readonly Vec3[]): Vec3[] {
  const most = Math.max(
    ...patch.map((p) => Math.max(...patch.map((q) => Math.hypot(...p.map((v, i) => v - (q[i] as number)))))),
  );
  const steps = Array.from({ length: Math.floor(most / step) }, (_, i) => (i + 1) * step);
  return steps.flatMap((by) => ways.flatMap((way) => [times(way, by), times(way, -by)]));
}

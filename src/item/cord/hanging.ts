// Where ropes hang, and the weight of the whole -> the pull in each, and how far that is from breaking it.
import type { Vec3 } from "../../geometry/shape.ts";
import { length, subtract } from "../../geometry/vector.ts";
import type { Cord, CordLeg } from "../item.ts";
import { designFactorOf, knotLoss, legTension } from "./rope-load.ts";
import type { WayPoint } from "./thread.ts";

/** Every stretch between the wood and a hanger or a loop. */
export function legsOf(points: readonly WayPoint[]): readonly CordLeg[] {
  return points.flatMap((point, i): CordLeg[] => {
    if (point.kind === "mouth") return [];
    const isEnd = i === 0 || i === points.length - 1;
    const beside = [points[i - 1], points[i + 1]].filter((other) => other?.kind === "mouth");
    return beside.map((mouth) => {
      const run = subtract(point.at, (mouth as WayPoint).at);
      return {
        at: point.at,
        length: length(run),
        degrees: slopeOf(run),
        ...(isEnd ? { tiedAs: point.kind } : {}),
        part: point.part.text,
        said: point.part.at,
      };
    });
  });
}

/** Degrees above level. */
const slopeOf = (run: Vec3): number => (Math.atan2(run[2], Math.hypot(run[0], run[1])) * 180) / Math.PI;

/**
 * The cords with the pull in them when the whole hangs from all their legs alike: the share of each leg, and the pull in the
 * flattest leg of each cord. A cord without a hanger carries no load that is known here.
 */
export function loadCords(cords: readonly Cord[], pounds: number): readonly Cord[] {
  const legs = cords.reduce((count, cord) => count + cord.legs.length, 0);
  return cords.map((cord) => {
    if (cord.legs.length === 0) return cord;
    const degrees = Math.min(...cord.legs.map((leg) => leg.degrees));
    const tension = legTension(pounds, degrees, legs);
    return {
      ...cord,
      load: {
        share: (pounds * cord.legs.length) / legs,
        legs: cord.legs.length,
        degrees,
        tension,
        designFactor: designFactorOf(cord.rope.strength, knotLoss, tension),
      },
    };
  });
}

// The two ends and edges of a board -> the words a maker sets the saw by.
import { type SawAngles, type SecondEnd, secondEnd } from "../geometry/saw-settings.ts";
import type { Length } from "../units/length.ts";
import { type BoardFrame, edgeBevels, edgeSpan } from "./board-frame.ts";
import { slopeCorners } from "./cut-places.ts";
import { formatDegrees, isSlanted } from "./end-angle.ts";

const isSquare = ({ mitre, bevel }: SawAngles): boolean => !isSlanted(mitre) && !isSlanted(bevel);

/** "mitre scale 14°, blade square". Square cuts read 0 on the scale. */
const settingWords = ({ mitre, bevel }: SawAngles): string =>
  `mitre scale ${isSlanted(mitre) ? formatDegrees(mitre) : "0"}, blade ${isSlanted(bevel) ? `tilted ${formatDegrees(bevel)}` : "square"}`;

/** Which corner of an end stands out: the lower edge where the cut leans back going up; the far face where the good one is short. */
function longWords({ mitre, bevel }: SawAngles, end: "left" | "right"): string {
  const out = end === "right" ? 1 : -1;
  const parts = [
    ...(isSlanted(mitre) ? [mitre * out > 0 ? "lower edge" : "upper edge"] : []),
    ...(isSlanted(bevel) ? [bevel * out > 0 ? "far face" : "good face"] : []),
  ];
  return `long at the ${parts.join(" and the ")}`;
}

const secondWords: Readonly<Record<SecondEnd, string>> = {
  slide:
    "The ends are parallel: saw the first, slide the board along to the stop and saw the second, nothing is changed",
  "turn over": "For the second end turn the board over, the same edge at the fence; the saw stays as it is set",
  "turn round": "For the second end turn the board end for end, the same face up; the saw stays as it is set",
  swing:
    "For the second end turn the board end for end, the same face up, and swing the mitre to the other side; the blade stays tilted",
  anew: "Set the saw anew for each end",
};

/** "Sawn straight from 0 along, 15/16 up to 3 3/16 along, 0 up" for a slope in the face. */
const slopeWords = ({ slopes, size }: BoardFrame, say: (length: Length) => string): readonly string[] =>
  slopes.flatMap((slope) => {
    const [from, to] = [...slopeCorners(slope, [size[0], size[1]])].sort((a, b) => a[0] - b[0]);
    if (from === undefined || to === undefined || Math.abs(slope.normal[2]) > 1e-6) return [];
    return [`Sawn straight from ${say(from[0])} along, ${say(from[1])} up to ${say(to[0])} along, ${say(to[1])} up`];
  });

/** How the ends and edges are sawn, good side up; no row for a board that is square all round. */
export function sawWords(frame: BoardFrame, say: (length: Length) => string): readonly string[] {
  const [left, right] = frame.ends;
  const bevels = edgeBevels(frame);
  const ripped = (["Lower", "Upper"] as const).flatMap((name, i) => {
    const tilt = bevels[i] as number;
    const back = tilt > 0 ? "good" : "far";
    return isSlanted(tilt)
      ? [`${name} edge ripped with the blade tilted ${formatDegrees(tilt)}, cut back at the ${back} face`]
      : [];
  });
  const edges = [...ripped, ...slopeWords(frame, say)];
  if (isSquare(left) && isSquare(right)) return edges;
  const words = (setting: SawAngles, end: "left" | "right"): string =>
    isSquare(setting) ? "square" : `${settingWords(setting)}, ${longWords(setting, end)}`;
  const [one, other] = [words(left, "left"), words(right, "right")];
  const ends = one === other ? `Both ends: ${one}` : `Left end: ${one}. Right end: ${other}`;
  const spans = [edgeSpan(frame, 0), edgeSpan(frame, frame.size[1])].map(([from, to]) => to - from);
  const [lower, upper] = spans as [number, number];
  const fence = Math.abs(lower - upper) < 1e-6 ? "either edge" : lower > upper ? "lower edge" : "upper edge";
  const stop = `Stop ${say(Math.max(lower, upper))} from the blade, measured along ${fence === "either edge" ? "either edge, they are alike" : `the ${fence} at the fence`}`;
  return [`Good side up. ${ends}.`, `${secondWords[secondEnd(left, right)]}. ${stop}.`, ...edges];
}

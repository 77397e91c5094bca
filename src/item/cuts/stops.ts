// The stops of a channel or a rabbet -> how far it runs along the board's own axis.
import { problem } from "../../problems/problem.ts";
import type { Cut } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import type { Side } from "../../units/side.ts";
import { type OwnAxis, ownEntry, ownSize } from "../frame.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { cutLength } from "./cut-length.ts";
import { refused } from "./worked.ts";

type Stopped = Extract<Cut, { readonly kind: "dado" | "groove" | "rabbet" }>;
type Refused = ReturnType<typeof refused>;

/** From where to where it runs: from side to side, less its stops; or why it can't stop there. */
export function stopsOf(
  cut: Stopped,
  run: OwnAxis,
  member: PlacedMember,
  placing: Placing,
): readonly [number, number] | Refused {
  const room = ownEntry(ownSize(member), run);
  let [low, high]: [number, number] = [0, room];
  for (const stop of cut.stops) {
    const distance = cutLength(stop.distance, placing);
    if (typeof distance !== "number") return refused(distance);
    const facts = { cut: cut.text, stop: stop.text, member: member.id };
    const both = stop.from === "both ends" || stop.from === "both edges";
    const side = both ? undefined : ownSideOf(member, placing.turned(member), stop.from as Side);
    const axis = side?.own ?? (stop.from === "both ends" ? "length" : "width");
    if (axis !== run) return refused(problem("stop-beside", stop.at, { ...facts, along: run === "length" }));
    if (distance <= sameLength) return refused(problem("cut-no-size", stop.at, { cut: stop.text, size: distance }));
    if (both || !side?.far) low = Math.max(low, distance);
    if (both || side?.far) high = Math.min(high, room - distance);
    if (high - low <= sameLength) return refused(problem("stop-past", stop.at, { ...facts, room }));
  }
  return [low, high];
}

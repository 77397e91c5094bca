// Which way a panel's good side looks -> where its own axes run in the item.
import type { Axis, Side } from "../../units/side.ts";
import type { Heading } from "../item.ts";
import type { Turn } from "./thing.ts";

const heading = (axis: Axis, sign: 1 | -1): Heading => ({ axis, sign });

// Seen from its good side with its own left at the left hand; a panel laid good side up has its bottom edge to the front.
const standing: Readonly<Record<Side, Turn>> = {
  front: { x: heading("x", 1), y: heading("y", 1), z: heading("z", 1) },
  back: { x: heading("x", -1), y: heading("y", -1), z: heading("z", 1) },
  left: { x: heading("y", -1), y: heading("x", 1), z: heading("z", 1) },
  right: { x: heading("y", 1), y: heading("x", -1), z: heading("z", 1) },
  top: { x: heading("x", 1), y: heading("z", -1), z: heading("y", 1) },
  bottom: { x: heading("x", -1), y: heading("z", 1), z: heading("y", 1) },
};

/** The turn of a panel that looks to `facing`; mirrored ones have their own left and right changed over. */
export function turnOf(facing: Side, mirrored: boolean): Turn {
  const turn = standing[facing];
  return mirrored ? { ...turn, x: heading(turn.x.axis, turn.x.sign === 1 ? -1 : 1) } : turn;
}

/** The panel's own axis that runs along this axis of the item. */
export const ownAxis = (turn: Turn, axis: Axis): Axis =>
  turn.x.axis === axis ? "x" : turn.y.axis === axis ? "y" : "z";

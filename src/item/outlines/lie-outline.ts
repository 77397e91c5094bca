// An outline and how its piece lies -> the outline along the piece's own length and width.
import { movedLoop } from "../../geometry/outline-move.ts";
import type { Loop, Vec2 } from "../../geometry/shape.ts";
import { cross } from "../../geometry/vector.ts";
import { inches } from "../../units/length.ts";
import { type Axis, axes } from "../../units/side.ts";
import { unit } from "../frame.ts";
import type { Heading, Lie } from "../item.ts";
import type { Formed } from "./form-piece.ts";

/** Where the space a piece is placed in has its up and its back, and whether it is turned over. */
export type Seen = { readonly up: Heading; readonly through: Heading; readonly mirrored: boolean };

/**
 * The drawing is what is seen when one looks at the good side, up being up (seen from above or below, up is to the back). Where the
 * board runs across the drawing's grain, it is turned a quarter counter-clockwise, or clockwise for a drawing whose grain runs up.
 */
export function lieOutline(outline: NonNullable<Formed["outline"]>, lie: Lie, seen: Seen) {
  const up = seen.up.axis === lie.thickness ? seen.through : seen.up;
  const square = cross(unit(up.axis, up.sign), unit(lie.show.axis, lie.show.sign));
  const k = square.findIndex((v) => v !== 0);
  const turned = (square[k] ?? 1) > 0 !== seen.mirrored;
  const right: Heading = { axis: axes[k] as Axis, sign: turned ? 1 : -1 };
  const [width, height] = [inches(outline.width), inches(outline.height)];
  const alongUp = lie.length === up.axis;
  const size: Vec2 = alongUp === outline.grainUp ? [width, height] : [height, width];
  // First the picture on the bench, x to the right and y up from its lower left.
  const picture = ([x, y]: Vec2): Vec2 => {
    const over = outline.mirrored ? width - x : x;
    if (alongUp === outline.grainUp) return [over, y];
    return alongUp ? [height - y, over] : [y, width - over];
  };
  const own = (p: Vec2): Vec2 => {
    const [x, y] = picture(p);
    const across = right.sign > 0 ? x : size[0] - x;
    const upward = up.sign > 0 ? y : size[1] - y;
    return alongUp ? [upward, across] : [across, upward];
  };
  const turn = (loop: Loop): Loop => movedLoop(loop, own);
  return { name: outline.name, edge: turn(outline.edge), holes: outline.holes.map(turn) };
}

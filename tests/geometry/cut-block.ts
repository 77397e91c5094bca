// A block cut up by straight cuts -> boxes that touch all over, for drawings where nearly every face meets another.
import fc from "fast-check";
import type { Part } from "../../src/geometry/front-faces.ts";
import type { Frame, Vec3 } from "../../src/geometry/shape.ts";
import { cross, placed, unit } from "../../src/geometry/vector.ts";
import type { View } from "../../src/geometry/view.ts";
import { type BoxInFrame, boxSolid } from "./box-solid.ts";

const standing: Frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0] };

/** Numbers spread evenly over a range (the library's own doubles crowd around zero). */
export const evenly = (least: number, most: number) =>
  fc.noBias(fc.integer({ min: 0, max: 1_000_000 })).map((n) => least + ((most - least) * n) / 1_000_000);

type Cut = { readonly which: number; readonly axis: number; readonly share: number };

/** Boxes of a 300 x 200 x 150 block, cut at half millimetres; about one in three is taken out. */
export const cutBlock: fc.Arbitrary<readonly BoxInFrame[]> = fc
  .noBias(
    fc.record({
      cuts: fc.array(
        fc.record({
          which: fc.nat(1000),
          axis: fc.nat(2),
          share: evenly(0.2, 0.8),
        }),
        { minLength: 6, maxLength: 14 },
      ),
      kept: fc.array(fc.nat(2), { minLength: 15, maxLength: 15 }),
    }),
  )
  .map(({ cuts, kept }) => {
    const boxes = cuts.reduce<readonly BoxInFrame[]>(cutOne, [{ frame: standing, size: [300, 200, 150] }]);
    const left = boxes.filter((_, i) => kept[i % kept.length] !== 0);
    return left.length > 0 ? left : boxes;
  });

function cutOne(boxes: readonly BoxInFrame[], { which, axis, share }: Cut): readonly BoxInFrame[] {
  const index = which % boxes.length;
  return boxes.flatMap((box, i) => {
    const whole = box.size[axis] as number;
    const first = Math.round(whole * share * 2) / 2;
    if (i !== index || first <= 2 || whole - first <= 2) return [box];
    const along = (size: number): Vec3 => box.size.map((s, k) => (k === axis ? size : s)) as unknown as Vec3;
    const origin = box.frame.origin.map((o, k) => (k === axis ? o + first : o)) as unknown as Vec3;
    return [
      { frame: box.frame, size: along(first) },
      { frame: { ...box.frame, origin }, size: along(whole - first) },
    ];
  });
}

/** Any turn in space, as a frame at the origin. */
export const anyTurn: fc.Arbitrary<Frame> = fc
  .noBias(fc.tuple(evenly(-1, 1), evenly(0, 2 * Math.PI), evenly(0, 2 * Math.PI)))
  .map(([z, around, spin]) => {
    const flat = Math.sqrt(1 - z * z);
    const axis = unit([flat * Math.cos(around), flat * Math.sin(around), z]);
    const side = unit(cross(axis, Math.abs(axis[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]));
    const third = cross(axis, side);
    const x: Vec3 = [0, 1, 2].map(
      (k) => (side[k] as number) * Math.cos(spin) + (third[k] as number) * Math.sin(spin),
    ) as unknown as Vec3;
    return { origin: [0, 0, 0], x, y: cross(axis, x) };
  });

export function turnedBox(turn: Frame, { frame, size }: BoxInFrame): BoxInFrame {
  return { frame: { origin: placed(turn, frame.origin), x: placed(turn, frame.x), y: placed(turn, frame.y) }, size };
}

export function turnedView(turn: Frame, { toViewer, right, up }: View): View {
  return { toViewer: placed(turn, toViewer), right: placed(turn, right), up: placed(turn, up) };
}

/** The frame turned into a view: z to the viewer. */
export function viewOfTurn(turn: Frame): View {
  return { toViewer: cross(turn.x, turn.y), right: turn.x, up: turn.y };
}

export function partsOf(boxes: readonly BoxInFrame[]): Part[] {
  return boxes.map((box, i) => ({ id: `box-${i + 1}`, solid: boxSolid(box) }));
}

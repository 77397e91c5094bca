// A board cut to an outline -> where its edge stands over the lower edge of its blank, at even steps from the left end.
import { profileOf } from "../geometry/profile.ts";
import type { Vec2 } from "../geometry/shape.ts";
import { inInches } from "../geometry/tolerance.ts";
import type { Member } from "../item/item.ts";
import type { BoardFrame } from "./board-frame.ts";

/** The wood at one place along the board, as stretches up from the base line. */
export type Offset = { readonly at: number; readonly wood: readonly (readonly [number, number])[] };

/** Steps a tape is read in, inches; the first that needs no more stations than a drawing's notes have room for is taken. */
const steps = [0.5, 1, 2, 3, 4, 6, 12, 24];
const inNotes = 13;

/** Empty for a board whose outline is a rectangle with square corners. A table may have room for more stations than notes. */
export function outlineOffsets(member: Member, frame: BoardFrame, most = inNotes): readonly Offset[] {
  const { outline, holes } = member.shape;
  const [long, wide] = frame.size;
  const loops = [outline, ...holes].map((loop) => profileOf(loop, inInches.chord).points);
  const edge = loops[0] ?? [];
  const isCorner = ([x, y]: Vec2): boolean =>
    Math.min(Math.abs(x), Math.abs(x - long)) < 1e-9 && Math.min(Math.abs(y), Math.abs(y - wide)) < 1e-9;
  if (holes.length === 0 && edge.length === 4 && edge.every(isCorner)) return [];
  const step = steps.find((one) => long / one <= most - 1) ?? long / (most - 1);
  const stations = [...Array.from({ length: Math.floor(long / step - 1e-9) + 1 }, (_, i) => i * step), long];
  return stations.map((at): Offset => {
    // A hair inside the ends, where the outline has a height.
    const x = Math.min(long - 1e-6, Math.max(1e-6, at));
    const heights = loops
      .flatMap((loop) => crossings(loop, x))
      .map((y) => (frame.up ? y : wide - y))
      .sort((a, b) => a - b);
    const wood: (readonly [number, number])[] = [];
    for (let i = 0; i + 1 < heights.length; i += 2) wood.push([heights[i] as number, heights[i + 1] as number]);
    return { at, wood };
  });
}

const crossings = (loop: readonly Vec2[], x: number): readonly number[] =>
  loop.flatMap((a, i) => {
    const b = loop[(i + 1) % loop.length] as Vec2;
    if (a[0] > x === b[0] > x) return [];
    return [a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0])];
  });

/** "0: 1 to 4; 2: 3/4 to 4 1/2", each place with its wood; a length is never broken over two rows. */
export function offsetWords(offsets: readonly Offset[], format: (length: number) => string): string {
  const say = (length: number): string => format(length).replaceAll(" ", "\u00a0");
  return offsets
    .map(({ at, wood }) => {
      const stretches = wood
        .filter(([low, high]) => say(low) !== say(high))
        .map(([low, high]) => `${say(low)} to ${say(high)}`);
      const point = wood[0] === undefined ? "none" : say(wood[0][0]);
      return `${say(at)}: ${stretches.length === 0 ? point : stretches.join(" and ")}`;
    })
    .join("; ");
}

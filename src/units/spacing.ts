// Like things in a row with even gaps: how wide the gaps are, where each starts, how few are enough.
import { compareLengths, exact, inches, isExact, type Length, minus, over, plus, times, zero } from "./length.ts";

/**
 * The even gap in `room` beside things that are `filled` wide together. With `ends` there is the same gap outside the
 * outer ones, (room - filled) / (n + 1); without, they are flush, / (n - 1), and one thing alone has no gap: undefined.
 * Below 0 where they don't fit. Source: published worked examples of picket spacing.
 */
export function evenGap(room: Length, filled: Length, count: number, ends: boolean): Length | undefined {
  const gaps = ends ? count + 1 : count - 1;
  return gaps < 1 ? undefined : over(minus(room, filled), exact(gaps));
}

/** How far each of `count` things `width` wide starts from the near end of the room. One alone without end gaps starts at 0. */
export function evenStarts(room: Length, width: Length, count: number, ends: boolean): Length[] {
  const gap = evenGap(room, times(width, exact(count)), count, ends) ?? zero;
  const pitch = plus(width, gap);
  return Array.from({ length: count }, (_, i) => plus(ends ? gap : zero, times(pitch, exact(i))));
}

/**
 * The fewest things `width` wide that keep every gap at or under `gap`: the least n with n (w + g) >= L - g with end
 * gaps, and n (w + g) >= L + g where the outer ones are flush. Undefined where even so many don't fit the room.
 */
export function fewestForGap(room: Length, width: Length, gap: Length, ends: boolean): number | undefined {
  if (!ends && compareLengths(room, width) === 0) return 1;
  const wanted = ends ? minus(room, gap) : plus(room, gap);
  const count = Math.max(ends ? 1 : 2, wholeUp(over(wanted, plus(width, gap))));
  return compareLengths(times(width, exact(count)), room) > 0 ? undefined : count;
}

/** Up to the next whole number; a double within 1e-9 of a whole number is it. */
const wholeUp = (n: Length): number => (isExact(n) ? n.ceil().valueOf() : Math.ceil(inches(n) - 1e-9));

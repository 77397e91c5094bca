// Rows with even gaps close to nothing over, exactly.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Exact, exact, isExact, minus, plus, times } from "../../src/units/length.ts";
import { evenGap, evenStarts, fewestForGap } from "../../src/units/spacing.ts";

const text = (l: unknown) => (l as Exact).toFraction(true);

test("six rails 1 11/16 from 3 to 26: (23 - 6 x 1 11/16) / 5 = 2 23/40", () => {
  const gap = evenGap(exact(23), exact(27, 16).mul(6), 6, false);
  expect(gap && text(gap)).toBe("2 23/40");
});
test("nine slats 1 11/16 with end gaps in 26 5/8: (26 5/8 - 15 3/16) / 10 = 1 23/160", () => {
  const gap = evenGap(exact(213, 8), exact(27, 16).mul(9), 9, true);
  expect(gap && text(gap)).toBe("1 23/160");
});
test("one thing flush has no gap", () => expect(evenGap(exact(10), exact(2), 1, false)).toBeUndefined());
test("things too wide for the room have a gap below 0", () => {
  const gap = evenGap(exact(10), exact(12), 3, false);
  expect(gap && text(gap)).toBe("-1");
});

const size = fc
  .tuple(fc.integer({ min: 1, max: 4000 }), fc.constantFrom(1, 3, 7, 16, 32, 127))
  .map(([n, d]) => exact(n, d));
const count = fc.integer({ min: 2, max: 40 });

describe("for every room, width and count", () => {
  test("the last one ends where the row ends: nothing is over", () => {
    fc.assert(
      fc.property(size, size, count, fc.boolean(), (room, width, n, ends) => {
        const gap = evenGap(room, times(width, exact(n)), n, ends);
        const last = evenStarts(room, width, n, ends).at(-1);
        if (!gap || !last) throw new Error("a row of two or more has a gap and a last one");
        const over = minus(room, plus(plus(last, width), ends ? gap : exact(0)));
        expect(isExact(over) && over.equals(0)).toBe(true);
      }),
    );
  });
  test("the fewest for a largest gap keep to it, and one fewer does not", () => {
    fc.assert(
      fc.property(size, size, size, fc.boolean(), (room, width, limit, ends) => {
        const n = fewestForGap(room, width, limit, ends);
        const gapOf = (k: number) => evenGap(room, times(width, exact(k)), k, ends) as Exact | undefined;
        if (n === undefined) {
          const most = room.div(width).floor().valueOf();
          const widest = gapOf(most);
          if (most >= (ends ? 1 : 2)) expect(widest?.compare(limit)).toBeGreaterThan(0);
          return;
        }
        expect(width.mul(n).compare(room)).toBeLessThanOrEqual(0);
        expect((gapOf(n) ?? exact(0)).compare(limit)).toBeLessThanOrEqual(0);
        if (n > (ends ? 1 : 2)) expect(gapOf(n - 1)?.compare(limit)).toBeGreaterThan(0);
      }),
    );
  });
});

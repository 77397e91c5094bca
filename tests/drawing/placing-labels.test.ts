// Labels are placed by solving: places along a tape, balloons in columns.
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { balloonRadius, drawBalloons } from "../../src/drawing/balloons.ts";
import { collide, cross } from "../../src/drawing/collision.ts";
import type { Paper } from "../../src/drawing/drawing.ts";
import { spread } from "../../src/drawing/spread.ts";

test("three wishes at 10, 11, 30 with a step of 4: the first two part to 8.5 and 12.5, the third stays", () => {
  expect(spread([10, 11, 30], 4, 0, 100)).toEqual([8.5, 12.5, 30]);
});

test("wishes at the end of the room stay inside it: 99, 100 in 0 to 100 with a step of 4 stand at 96 and 100", () => {
  expect(spread([99, 100], 4, 0, 100)).toEqual([96, 100]);
});

test("any wishes: the step is kept, the order is kept, and far-apart wishes are granted", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 20 }), (raw) => {
      const wishes = [...raw].sort((a, b) => a - b);
      const places = spread(wishes, 3, -1000, 1000);
      places.slice(1).forEach((place, i) => {
        expect(place - (places[i] as number)).toBeGreaterThanOrEqual(3 - 1e-9);
      });
      wishes.forEach((wish, i) => {
        const free = Math.min(wish - (wishes[i - 1] ?? -1e9), (wishes[i + 1] ?? 1e9) - wish) >= 60;
        if (free) expect(places[i]).toBeCloseTo(wish, 9);
      });
    }),
  );
});

test("any dots: no two leaders cross and no two balloons touch", () => {
  const dot = fc.record({
    u: fc.double({ min: 20, max: 150, noNaN: true }),
    v: fc.double({ min: 0, max: 180, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(dot, { minLength: 1, maxLength: 14 }), (dots) => {
      const callouts = dots.map(({ u, v }, i) => ({
        text: String.fromCharCode(65 + i),
        spots: [{ at: [u, v] as Paper, room: 2, broad: true, crossed: { left: 0, right: 0 } }],
      }));
      const radius = balloonRadius(callouts.map(({ text }) => text));
      const marks = drawBalloons(callouts, { left: 6, right: 164, top: 2, bottom: 188, radius });
      const balloons = marks.filter((mark) => mark.kind === "balloon");
      const ends = marks.filter((mark) => mark.kind === "dot");
      balloons.forEach((a, i) => {
        balloons.slice(i + 1).forEach((b, j) => {
          expect(Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1])).toBeGreaterThanOrEqual(2 * radius);
          const [from, to] = [ends[i]?.at as Paper, ends[i + 1 + j]?.at as Paper];
          expect(cross(from, a.at, to, b.at)).toBe(false);
        });
      });
    }),
  );
});

test("a square 10 wide and a line past its corner: apart by more than 1, not by more than 2", () => {
  const square: Paper[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];
  const line: Paper[] = [
    [11.5, -5],
    [11.5, 25],
  ];
  expect(collide(square, line, 1)).toBe(false);
  expect(collide(square, line, 2)).toBe(true);
});

// Saw settings by turning boards about: each word for the second end is tried on the planes themselves.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type SawAngles, type SecondEnd, sawAngles, secondEnd } from "../../src/geometry/saw-settings.ts";
import type { Vec3 } from "../../src/geometry/shape.ts";

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The outward normal that a table turned by the mitre under a blade tilted by the bevel cuts at the right end. */
const planeOf = ({ mitre, bevel }: SawAngles): Vec3 => [
  Math.cos(radians(bevel)) * Math.cos(radians(mitre)),
  Math.cos(radians(bevel)) * Math.sin(radians(mitre)),
  Math.sin(radians(bevel)),
];
const back = ([l, w, t]: Vec3): Vec3 => [-l, -w, -t];
const near = (a: Vec3, b: Vec3): boolean => a.every((part, i) => Math.abs(part - (b[i] as number)) < 1e-9);

/** Tenths of a degree to 60, never square. */
const angle = fc.integer({ min: 1, max: 600 }).chain((tenths) => fc.constantFrom(tenths / 10, -tenths / 10));
const setting = fc.record({ mitre: angle, bevel: angle });

test("14 degrees off square in the face reads 14, and square reads 0", () => {
  expect(sawAngles([Math.cos(radians(14)), Math.sin(radians(14)), 0]).mitre).toBeCloseTo(14, 12);
  expect(sawAngles([-1, 0, 0])).toEqual({ mitre: 0, bevel: 0 });
});

test("any settings are read back from the plane they cut, at either end", () => {
  fc.assert(
    fc.property(setting, (set) => {
      for (const plane of [planeOf(set), back(planeOf(set))]) {
        expect(sawAngles(plane).mitre).toBeCloseTo(set.mitre, 9);
        expect(sawAngles(plane).bevel).toBeCloseTo(set.bevel, 9);
      }
    }),
  );
});

describe("the second end", () => {
  /** The board turned so that its left end comes to the blade as a right end. */
  const turns: readonly (readonly [SecondEnd, (v: Vec3) => Vec3])[] = [
    ["turn over", ([l, w, t]) => [-l, w, -t]],
    ["turn round", ([l, w, t]) => [-l, -w, t]],
  ];

  test.each(turns)("%s: the turned left end lies in the plane the saw is set to", (word, turn) => {
    fc.assert(
      fc.property(setting, (set) => {
        const left = turn(planeOf(set));
        expect(near(turn(left), planeOf(set))).toBe(true);
        expect(secondEnd(sawAngles(left), set)).toBe(word);
      }),
    );
  });

  test("parallel ends slide, mirrored compound ends swing, others are set anew", () => {
    expect(secondEnd({ mitre: 14, bevel: 0 }, { mitre: 14, bevel: 0 })).toBe("slide");
    expect(secondEnd({ mitre: 5, bevel: 44.8 }, { mitre: -5, bevel: -44.8 })).toBe("swing");
    expect(secondEnd({ mitre: 14, bevel: 0 }, { mitre: 0, bevel: 0 })).toBe("anew");
    expect(secondEnd({ mitre: 0, bevel: 0 }, { mitre: 0, bevel: 0 })).toBe("slide");
  });
});

// A solid's uncut board -> where a straight line enters and leaves it.
import type { Loop, Vec2, Vec3 } from "./shape.ts";
import type { Solid } from "./solid.ts";
import { add, dot, frameZ } from "./vector.ts";

type Slab = { readonly normal: Vec3; readonly low: number; readonly high: number };

function pointsOf(loop: Loop): readonly Vec2[] {
  if (loop.kind === "circle") {
    const [x, y] = loop.centre;
    return [
      [x - loop.radius, y - loop.radius],
      [x + loop.radius, y + loop.radius],
    ];
  }
  return loop.items.flatMap((item): readonly Vec2[] => {
    if ("leave" in item) return [item.leave, item.reach, item.to];
    return "mid" in item ? [item.mid, item.to] : [item];
  });
}

const known = new WeakMap<Solid, readonly Slab[]>();

/** The board before it is cut: between three pairs of parallel planes, and behind the planes that trim it (item space). */
function slabsOf(solid: Solid): readonly Slab[] {
  const found = known.get(solid);
  if (found !== undefined) return found;
  const { frame, outline, depth, trims } = solid.shape;
  const z = frameZ(frame);
  const points = pointsOf(outline);
  const slab = (normal: Vec3, low: number, high: number): Slab => {
    const at = dot(normal, frame.origin);
    return { normal, low: at + low, high: at + high };
  };
  const reach = (k: 0 | 1): readonly [number, number] => [
    Math.min(...points.map((p) => p[k])),
    Math.max(...points.map((p) => p[k])),
  ];
  const slabs = [
    slab(frame.x, ...reach(0)),
    slab(frame.y, ...reach(1)),
    slab(z, 0, depth),
    ...trims.map(({ point, normal }): Slab => {
      const turn = ([a, b, c]: Vec3): Vec3 =>
        [0, 1, 2].map(
          (k) => (frame.x[k] as number) * a + (frame.y[k] as number) * b + (z[k] as number) * c,
        ) as unknown as Vec3;
      const out = turn(normal);
      return { normal: out, low: Number.NEGATIVE_INFINITY, high: dot(out, add(frame.origin, turn(point))) };
    }),
  ];
  known.set(solid, slabs);
  return slabs;
}

/**
 * The stretch of from + t way that runs inside the uncut board, kept off its sides by `hair`; undefined where it misses it.
 */
export function stretchIn(solid: Solid, from: Vec3, way: Vec3, hair: number): readonly [number, number] | undefined {
  let [near, far] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { normal, low, high } of slabsOf(solid)) {
    const [at, speed] = [dot(normal, from), dot(normal, way)];
    if (Math.abs(speed) < 1e-12) {
      if (at < low + hair || at > high - hair) return undefined;
      continue;
    }
    const [enter, leave] = [(low + hair - at) / speed, (high - hair - at) / speed];
    near = Math.max(near, Math.min(enter, leave));
    far = Math.min(far, Math.max(enter, leave));
  }
  return near < far ? [near, far] : undefined;
}

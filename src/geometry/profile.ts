// A loop of lines and arcs -> the polygon it is cut to, each side knowing which curved wall it belongs to.
import type { Loop, Vec2 } from "./shape.ts";

/** Side i runs from points[i] to the next point; counter-clockwise. */
export type Profile = {
  readonly points: readonly Vec2[];
  /** The curved wall each side belongs to, counted from 0 within the loop; flat sides have none. */
  readonly walls: readonly (number | undefined)[];
  /** Whether the side before points[i] runs into side i without a kink. */
  readonly smooth: readonly boolean[];
};

/** Sides that meet at less than this are one smooth line (drawing habit of this project, no source). */
const tangentDegrees = 0.5;

/** A side while the profile is made, with the direction the true curve has at both its ends. */
type Side = { from: Vec2; curved: boolean; within: boolean; leaves: Vec2; arrives: Vec2 };

/** The polygon of a loop with no chord further than `chordError` off its arc, turned counter-clockwise. */
export function profileOf(loop: Loop, chordError: number): Profile {
  const sides =
    loop.kind === "circle" ? circleSides(loop.centre, loop.radius, chordError) : pathSides(loop, chordError);
  if (sides.length < 3) throw new Error(`a loop needs three sides, found ${sides.length}`);
  const forward = signedArea(sides.map((s) => s.from)) > 0 ? sides : reversed(sides);
  return joined(withoutStraightPoints(forward));
}

/** The area inside a polygon; negative where it runs clockwise. */
export function signedArea(points: readonly Vec2[]): number {
  const [x0, y0] = points[0] ?? [0, 0];
  let double = 0;
  points.forEach(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] ?? [x0, y0];
    double += (x - x0) * (nextY - y0) - (nextX - x0) * (y - y0);
  });
  return double / 2;
}

/** How many chords keep within `chordError` of an arc: the height of a chord is r (1 - cos(sweep / 2)). */
const chordCount = (radius: number, sweep: number, chordError: number): number =>
  Math.ceil(sweep / (2 * Math.acos(Math.max(0, 1 - chordError / radius))) - 1e-9);

function circleSides([cx, cy]: Vec2, radius: number, chordError: number): Side[] {
  if (!(radius > 0)) throw new Error(`a circle needs a radius above zero, found ${radius}`);
  // a multiple of four puts a corner on each axis, so the circle is as wide as it says
  const count = Math.max(8, 4 * Math.ceil(chordCount(radius, 2 * Math.PI, chordError) / 4));
  return Array.from({ length: count }, (_, i) => {
    const [c, s] = quarterExact(i, count);
    const [cNext, sNext] = quarterExact(i + 1, count);
    const from: Vec2 = [cx + radius * c, cy + radius * s];
    return { from, curved: true, within: true, leaves: [-s, c], arrives: [-sNext, cNext] };
  });
}

/** Cosine and sine of step i of n round the circle, with true zeros and ones on the axes. */
function quarterExact(i: number, n: number): Vec2 {
  const quarter = Math.floor((4 * i) / n);
  const rest = (2 * Math.PI * (i - (quarter * n) / 4)) / n;
  const [c, s] = [Math.cos(rest), Math.sin(rest)];
  const turns: Vec2[] = [
    [c, s],
    [-s, c],
    [-c, -s],
    [s, -c],
  ];
  return turns[quarter % 4] ?? [c, s];
}

function pathSides(loop: Loop & { kind: "path" }, chordError: number): Side[] {
  const last = loop.items.at(-1);
  if (last === undefined) return [];
  let from: Vec2 = "to" in last ? last.to : last;
  const sides: Side[] = [];
  for (const item of loop.items) {
    if ("leave" in item) {
      sides.push(...cubicSides(from, item.leave, item.reach, item.to, chordError));
      from = item.to;
    } else if ("to" in item) {
      sides.push(...arcSides(from, item.mid, item.to, chordError));
      from = item.to;
    } else {
      if (Math.hypot(item[0] - from[0], item[1] - from[1]) > 0) sides.push(lineSide(from, item));
      from = item;
    }
  }
  return sides;
}

function lineSide(from: Vec2, to: Vec2): Side {
  const along = direction(from, to);
  return { from, curved: false, within: false, leaves: along, arrives: along };
}

/** The chords of the arc through three points; three points in a line make a line. */
function arcSides(from: Vec2, mid: Vec2, to: Vec2, chordError: number): Side[] {
  const [ax, ay] = [mid[0] - from[0], mid[1] - from[1]];
  const [bx, by] = [to[0] - from[0], to[1] - from[1]];
  const double = 2 * (ax * by - ay * bx);
  if (Math.abs(double) < 1e-12 * (ax * ax + ay * ay + bx * bx + by * by)) return [lineSide(from, to)];
  const [a2, b2] = [ax * ax + ay * ay, bx * bx + by * by];
  const cx = from[0] + (by * a2 - ay * b2) / double;
  const cy = from[1] + (ax * b2 - bx * a2) / double;
  const radius = Math.hypot(from[0] - cx, from[1] - cy);
  const start = Math.atan2(from[1] - cy, from[0] - cx);
  const turn = double > 0 ? 1 : -1;
  const ahead = (turn * (Math.atan2(to[1] - cy, to[0] - cx) - start) + 4 * Math.PI) % (2 * Math.PI);
  const count = Math.max(2, chordCount(radius, ahead, chordError));
  const angle = (i: number) => start + (turn * ahead * i) / count;
  const tangent = (i: number): Vec2 => [-turn * Math.sin(angle(i)), turn * Math.cos(angle(i))];
  const point = (i: number): Vec2 =>
    i === 0 ? from : [cx + radius * Math.cos(angle(i)), cy + radius * Math.sin(angle(i))];
  return Array.from({ length: count }, (_, i) => ({
    from: point(i),
    curved: true,
    within: i > 0,
    leaves: tangent(i),
    arrives: tangent(i + 1),
  }));
}

/**
 * The chords of a cubic curve in equal steps of its parameter: a step h lies off its chord by at most h^2 / 8 of the second
 * derivative, and that is at most 6 times the greater second difference of the control points.
 */
function cubicSides(p: Vec2, q: Vec2, r: Vec2, s: Vec2, chordError: number): Side[] {
  const bend = (a: Vec2, b: Vec2, c: Vec2) => Math.hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]);
  const count = Math.max(2, Math.ceil(Math.sqrt((0.75 * Math.max(bend(p, q, r), bend(q, r, s))) / chordError)));
  const mix = (weights: readonly [number, number, number, number]): Vec2 => [
    weights[0] * p[0] + weights[1] * q[0] + weights[2] * r[0] + weights[3] * s[0],
    weights[0] * p[1] + weights[1] * q[1] + weights[2] * r[1] + weights[3] * s[1],
  ];
  const point = (i: number): Vec2 => {
    if (i === 0) return p;
    if (i === count) return s;
    const [t, u] = [i / count, 1 - i / count];
    return mix([u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t]);
  };
  const speed = (i: number): Vec2 => {
    const [t, u] = [i / count, 1 - i / count];
    return mix([-u * u, u * u - 2 * u * t, 2 * u * t - t * t, t * t]);
  };
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [point(i), point(i + 1)];
    // where a control point lies on its end the speed is nothing; the chord tells the direction
    const way = (v: Vec2): Vec2 => (Math.hypot(v[0], v[1]) > 1e-9 ? direction([0, 0], v) : direction(from, to));
    return { from, curved: true, within: i > 0, leaves: way(speed(i)), arrives: way(speed(i + 1)) };
  });
}

/** The same loop run the other way. */
function reversed(sides: readonly Side[]): Side[] {
  const back = ([x, y]: Vec2): Vec2 => [-x, -y];
  return sides
    .map((s, i) => {
      const next = sides[(i + 1) % sides.length] ?? s;
      // "within" belongs to the point a side starts from, which is now where the next side started
      return { ...s, from: next.from, within: next.within, leaves: back(s.arrives), arrives: back(s.leaves) };
    })
    .reverse();
}

function withoutStraightPoints(sides: readonly Side[]): Side[] {
  return sides.filter((s, i) => {
    const before = sides[(i + sides.length - 1) % sides.length] ?? s;
    return s.curved || before.curved || turnBetween(before.arrives, s.leaves) > 1e-10;
  });
}

function joined(sides: readonly Side[]): Profile {
  const limit = (tangentDegrees * Math.PI) / 180;
  const before = (i: number) => sides[(i + sides.length - 1) % sides.length];
  const smooth = sides.map((s, i) => s.within || turnBetween(before(i)?.arrives ?? s.leaves, s.leaves) < limit);
  const walls: (number | undefined)[] = [];
  let count = 0;
  sides.forEach((s, i) => {
    const carriesOn = i > 0 && smooth[i] && sides[i - 1]?.curved;
    walls.push(s.curved ? (carriesOn ? walls[i - 1] : count++) : undefined);
  });
  const [first, last] = [walls[0], walls.at(-1)];
  const closes = first !== undefined && last !== undefined && smooth[0];
  return {
    points: sides.map((s) => s.from),
    walls: closes ? walls.map((w) => (w === last ? first : w)) : walls,
    smooth,
  };
}

const direction = (from: Vec2, to: Vec2): Vec2 => {
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / far, (to[1] - from[1]) / far];
};

const turnBetween = (a: Vec2, b: Vec2): number =>
  Math.abs(Math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]));

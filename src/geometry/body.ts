// A prism -> the bare body a solid is finished from: numbered corners, and faces that know which side made them.
import { type Profile, profileOf } from "./profile.ts";
import type { Removal, Vec2, Vec3 } from "./shape.ts";
import { dot } from "./vector.ts";

/** A plane that can bound a solid, facing away from the wood. */
export type Side = {
  readonly normal: Vec3;
  readonly offset: number;
  /** The curved wall this facet belongs to, with the stretch of it the facet covers. */
  readonly curve?: {
    readonly wall: string;
    /** Not of a cone's facet, which no other lies level with. */
    readonly stretch?: { readonly start: Vec3; readonly along: Vec3; readonly length: number };
  };
  /** The name of this side, and of the next one round its loop if the two meet without a kink. */
  readonly name: string;
  readonly runsInto?: string;
};

/** Loops are numbers of corners: outer counter-clockwise seen from outside, then holes. */
export type Body = {
  readonly points: readonly Vec3[];
  readonly faces: readonly { readonly side: Side; readonly loops: readonly (readonly number[])[] }[];
};

/** A prism's loops as polygons, the outline first, and its sides: one list a loop, then the bottom and the top. */
export type PrismSides = {
  readonly profiles: readonly Profile[];
  readonly walls: readonly (readonly Side[])[];
  readonly bottom: Side;
  readonly top: Side;
};

/** The sides of a prism in its own frame; `name` keeps the sides of several prisms apart. */
export function prismSides(prism: Removal, name: string, chordError: number): PrismSides {
  if (!(prism.depth > 0)) throw new Error(`a prism needs a depth above zero, found ${prism.depth}`);
  const profiles = [prism.outline, ...prism.holes].map((loop) => profileOf(loop, chordError));
  const walls = profiles.map((profile, k) =>
    wallSides(profile, `${name}:${k}`, k > 0, ((prism.taper ?? 1) - 1) / prism.depth),
  );
  const bottom: Side = { normal: [0, 0, -1], offset: 0, name: `${name}:bottom` };
  const top: Side = { normal: [0, 0, 1], offset: prism.depth, name: `${name}:top` };
  return { profiles, walls, bottom, top };
}

/** `spread` is how much a prism's outline grows for each unit of its depth. */
function wallSides(profile: Profile, name: string, inward: boolean, spread: number): Side[] {
  const { points, walls, smooth } = profile;
  const flip = inward ? -1 : 1;
  return points.map((from, i) => {
    const next = (i + 1) % points.length;
    const to = points[next] ?? from;
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const along: Vec2 = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
    const start: Vec3 = [from[0], from[1], 0];
    // A wall that spreads leans over by as much as its line moves out.
    const lean = spread * (along[1] * from[0] - along[0] * from[1]);
    const steep = Math.hypot(1, lean);
    const normal: Vec3 =
      spread === 0
        ? [flip * along[1] + 0, 0 - flip * along[0], 0]
        : [(flip * along[1]) / steep, (-flip * along[0]) / steep, (-flip * lean) / steep];
    const wall = walls[i];
    return {
      normal,
      offset: dot(normal, start),
      name: `${name}:${i}`,
      ...(smooth[next] ? { runsInto: `${name}:${next}` } : {}),
      ...(wall === undefined
        ? {}
        : {
            curve: {
              wall: `${name}:${wall}`,
              ...(spread === 0 ? { stretch: { start, along: [along[0], along[1], 0] as Vec3, length: long } } : {}),
            },
          }),
    };
  });
}

/** The body of a prism that nothing is cut from. */
export function prismBody(sides: PrismSides, depth: number): Body {
  const points: Vec3[] = [];
  const faces: { side: Side; loops: number[][] }[] = [];
  const rings = sides.profiles.map((profile, k) => {
    const ring = k === 0 ? profile.points : [...profile.points].reverse();
    const first = points.length;
    for (const [x, y] of ring) points.push([x, y, 0], [x, y, depth]);
    return ring.map((_, i) => first + 2 * i);
  });
  faces.push({ side: sides.bottom, loops: rings.map((ring) => [...ring].reverse()) });
  faces.push({ side: sides.top, loops: rings.map((ring) => ring.map((p) => p + 1)) });
  rings.forEach((ring, k) => {
    const walls = sides.walls[k] ?? [];
    ring.forEach((p, i) => {
      const q = ring[(i + 1) % ring.length] ?? p;
      // a hole is run backwards: its side i now ends where it began
      const side = walls[k === 0 ? i : (2 * ring.length - 2 - i) % ring.length];
      if (side === undefined) throw new Error(`loop ${k} has no side ${i}`);
      faces.push({ side, loops: [[p, q, q + 1, p + 1]] });
    });
  });
  return { points, faces };
}

// A picture -> how much of each member is seen, and which stretches of a line in space no board hides.
import type { Vec3 } from "../geometry/shape.ts";
import { stretchIn } from "../geometry/stretch-in.ts";
import { add, dot, subtract, times } from "../geometry/vector.ts";
import type { Body, Picture } from "./picture.ts";

/** Seen area over the area that would be seen alone, by index of body; 1 is wholly seen. */
export function seenParts(picture: Picture): readonly { readonly seen: number; readonly whole: number }[] {
  const seen = picture.bodies.map(() => 0);
  for (const { owner, area } of picture.scene.regions) {
    // Regions of ropes have owners beyond the bodies.
    if (owner < seen.length) seen[owner] = (seen[owner] as number) + area;
  }
  return picture.bodies.map(({ member }, i) => ({
    seen: seen[i] as number,
    whole: member.solid.faces.reduce(
      (sum, face) => sum + face.area * Math.max(0, dot(face.normal, picture.view.toViewer)),
      0,
    ),
  }));
}

/** The same for what isn't wood, all bodies of one name together. */
export function seenExtra(picture: Picture, name: string): { readonly seen: number; readonly whole: number } {
  const { bodies, extras, scene, panes, view } = picture;
  const all = [...extras, ...panes.extras];
  const seen = [...scene.regions, ...panes.regions]
    .filter(({ owner }) => all[owner - bodies.length]?.name === name)
    .reduce((sum, { area }) => sum + area, 0);
  const whole = all
    .filter((extra) => extra.name === name)
    .flatMap(({ solid }) => solid.faces)
    .reduce((sum, face) => sum + face.area * Math.max(0, dot(face.normal, view.toViewer)), 0);
  return { seen, whole };
}

/** Seen share of several bodies together. */
export function seenShare(parts: readonly { readonly seen: number; readonly whole: number }[]): number {
  const whole = parts.reduce((sum, part) => sum + part.whole, 0);
  return whole === 0 ? 1 : parts.reduce((sum, part) => sum + part.seen, 0) / whole;
}

/** Whether an uncut board stands between a spot and the viewer (inches; a hair of touching is free). */
function hides({ member, by }: Body, spot: Vec3, toViewer: Vec3): boolean {
  const stretch = stretchIn(member.solid, subtract(spot, by), toViewer, 1e-4);
  return stretch !== undefined && Math.max(stretch[0], 1e-3) < stretch[1];
}

/** Where the boards stand, and from where they are looked at. */
export type Sight = Pick<Picture, "bodies" | "view">;

export const isSeen = (picture: Sight, spot: Vec3): boolean =>
  !picture.bodies.some((body) => hides(body, spot, picture.view.toViewer));

const samples = 64;

/** The stretches of a straight line that are seen, as pairs of ends, to a 64th of its length. */
export const seenStretches = (picture: Sight, from: Vec3, to: Vec3): readonly (readonly [Vec3, Vec3])[] =>
  stretchesThat((spot) => isSeen(picture, spot), from, to);

/** Those that boards hide. */
export const hiddenStretches = (picture: Sight, from: Vec3, to: Vec3): readonly (readonly [Vec3, Vec3])[] =>
  stretchesThat((spot) => !isSeen(picture, spot), from, to);

function stretchesThat(holds: (spot: Vec3) => boolean, from: Vec3, to: Vec3): readonly (readonly [Vec3, Vec3])[] {
  const at = (i: number): Vec3 => add(from, times(subtract(to, from), i / samples));
  const stretches: (readonly [Vec3, Vec3])[] = [];
  let start: number | undefined;
  for (let i = 0; i <= samples; i++) {
    const open = i < samples && holds(at(i + 0.5));
    if (open && start === undefined) start = i;
    if (!open && start !== undefined) {
      stretches.push([at(start), at(i)]);
      start = undefined;
    }
  }
  return stretches;
}

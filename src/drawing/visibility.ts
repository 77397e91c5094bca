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

export const isSeen = (picture: Picture, spot: Vec3): boolean =>
  !picture.bodies.some((body) => hides(body, spot, picture.view.toViewer));

const samples = 64;

/** The stretches of a straight line that are seen, as pairs of ends, to a 64th of its length. */
export function seenStretches(picture: Picture, from: Vec3, to: Vec3): readonly (readonly [Vec3, Vec3])[] {
  const at = (i: number): Vec3 => add(from, times(subtract(to, from), i / samples));
  const stretches: (readonly [Vec3, Vec3])[] = [];
  let start: number | undefined;
  for (let i = 0; i <= samples; i++) {
    const open = i < samples && isSeen(picture, at(i + 0.5));
    if (open && start === undefined) start = i;
    if (!open && start !== undefined) {
      stretches.push([at(start), at(i)]);
      start = undefined;
    }
  }
  return stretches;
}

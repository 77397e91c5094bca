// Members where they stand (or moved apart) and a view -> what is seen of them, and its regions and lines on paper.
import { lineChains } from "../geometry/line-chains.ts";
import type { Scene } from "../geometry/scene.ts";
import { sceneOf } from "../geometry/scene.ts";
import type { Vec2, Vec3 } from "../geometry/shape.ts";
import { type Solid, solidOf } from "../geometry/solid.ts";
import { inInches } from "../geometry/tolerance.ts";
import { add, dot } from "../geometry/vector.ts";
import { project, type View } from "../geometry/view.ts";
import type { Item, Member } from "../item/item.ts";
import type { LineKind, Mark, Paper, Tone } from "./drawing.ts";
import { rememberScene } from "./remember-scene.ts";

export type Body = { readonly member: Member; readonly by: Vec3 };

export const inPlace = (member: Member): Body => ({ member, by: [0, 0, 0] });

/** What a viewer sees, in inches on the view's own plane; owners are indices into bodies, those after them are of ropes. */
export type Picture = { readonly bodies: readonly Body[]; readonly view: View; readonly scene: Scene };

function movedSolid(solid: Solid, by: Vec3): Solid {
  if (by.every((step) => step === 0)) return solid;
  const move = (p: Vec3): Vec3 => add(p, by);
  return {
    ...solid,
    faces: solid.faces.map((face) => ({
      ...face,
      offset: face.offset + dot(face.normal, by),
      loops: face.loops.map((loop) => loop.map(move)),
    })),
    edges: solid.edges.map((edge) => ({ ...edge, a: move(edge.a), b: move(edge.b) })),
    centroid: move(solid.centroid),
    box: { min: move(solid.box.min), max: move(solid.box.max) },
  };
}

/** Ropes stand where they are; the members may be moved. */
export function takePicture(bodies: readonly Body[], view: View, ropes: readonly Solid[] = []): Picture {
  const placed = [
    ...bodies.map(({ member, by }) => ({ solid: member.solid, by })),
    ...ropes.map((solid) => ({ solid, by: [0, 0, 0] as const })),
  ];
  const scene = rememberScene(placed, view, () => {
    const members = bodies.map(({ member, by }) => ({ id: member.id, solid: movedSolid(member.solid, by) }));
    const parts = [...members, ...ropes.map((solid, i) => ({ id: `rope ${i + 1}`, solid }))];
    return sceneOf(parts, view, inInches);
  });
  return { bodies, view, scene };
}

/** Ropes are thin on paper: rods of eight sides do, and keep the drawing light. */
const coarse = { ...inInches, chord: 1 / 64 };

/** The rods of an item's cords, or of those of these names. */
export const ropesOf = (item: Pick<Item, "cords">, names?: readonly string[]): readonly Solid[] =>
  item.cords
    .filter((cord) => !names || names.includes(cord.name))
    .flatMap((cord) => cord.tube.map((rod) => solidOf(rod, coarse)));

/** Rope is shown pale, whatever it is made of. */
const ropeTone: Tone = { kind: "coat", colour: "#e6dcc3", shade: 0 };

/** Where a picture lies on paper: mm for an inch, and the paper place of its upper left corner. */
export type Placement = { readonly scale: number; readonly left: number; readonly top: number };

export const pictureSize = ({ scene: { bounds } }: Picture): { readonly width: number; readonly height: number } => ({
  width: bounds.max[0] - bounds.min[0],
  height: bounds.max[1] - bounds.min[1],
});

/** A place on the view's plane, on paper. */
export const onPaper = (picture: Picture, placement: Placement, [x, y]: Vec2): Paper => [
  placement.left + (x - picture.scene.bounds.min[0]) * placement.scale,
  placement.top + (picture.scene.bounds.max[1] - y) * placement.scale,
];

/** A place in space, on paper. */
export const spotOnPaper = (picture: Picture, placement: Placement, spot: Vec3): Paper =>
  onPaper(picture, placement, project(picture.view, spot));

/** 0, 1 or 2, lightest first, by the axis a face looks along; the order of `axes` says which axis is how light. */
export type Shading = (normal: Vec3) => number;

/** Standing things: light from above, less on fronts, least on sides. */
export const standingLight: Shading = (normal) => {
  const sizes = normal.map(Math.abs) as [number, number, number];
  return sizes[2] >= Math.max(sizes[0], sizes[1]) ? 0 : sizes[1] >= sizes[0] ? 1 : 2;
};

/** Whether a face with this normal shows the ends of the fibres: up to a mitre of 60 degrees. */
const isEndGrain = (member: Member, normal: Vec3): boolean => Math.abs(dot(normal, member.shape.frame.x)) > 0.5;

export function drawRegions(
  picture: Picture,
  placement: Placement,
  shading: Shading,
  toneOf: (member: Member, endGrain: boolean) => Tone,
): Mark[] {
  return picture.scene.regions.map((region) => {
    const member = picture.bodies[region.owner]?.member;
    return {
      kind: "region",
      tone: member ? toneOf(member, isEndGrain(member, region.normal)) : ropeTone,
      shade: shading(region.normal),
      loops: [region.outer, ...region.holes].map((loop) => loop.map((p) => onPaper(picture, placement, p))),
    };
  });
}

/** Lines by kind; a line that several members share takes the kind that comes first in `order`. Ropes are drawn as light as anything is. */
export function drawLines(
  picture: Picture,
  placement: Placement,
  kindOf: (member: Member) => LineKind,
  order: readonly LineKind[],
): Mark[] {
  return order.flatMap((kind, rank) => {
    const own = picture.scene.lines.filter((line) => {
      const ranks = [line.owner, ...line.shared].map((i) => {
        const member = picture.bodies[i]?.member;
        return member ? order.indexOf(kindOf(member)) : order.length - 1;
      });
      return Math.min(...ranks) === rank;
    });
    const chains = lineChains(own, inInches.lineUnion).map((chain) => chain.map((p) => onPaper(picture, placement, p)));
    return chains.length === 0 ? [] : [{ kind: "lines" as const, line: kind, chains }];
  });
}

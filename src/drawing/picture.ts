// Members where they stand (or moved apart), fittings, ropes and a view -> what is seen, and its regions and lines on paper.
import { lineChains } from "../geometry/line-chains.ts";
import type { Scene } from "../geometry/scene.ts";
import { sceneOf } from "../geometry/scene.ts";
import type { Vec2, Vec3 } from "../geometry/shape.ts";
import { inInches } from "../geometry/tolerance.ts";
import { dot } from "../geometry/vector.ts";
import { project, type View } from "../geometry/view.ts";
import type { Member } from "../item/item.ts";
import type { LineKind, Mark, Paper, Tone } from "./drawing.ts";
import type { Extra } from "./extras.ts";
import { movedSolid } from "./moved-solid.ts";
import { type Placed, rememberScene } from "./remember-scene.ts";

export type Body = { readonly member: Member; readonly by: Vec3 };

export const inPlace = (member: Member): Body => ({ member, by: [0, 0, 0] });

/**
 * What a viewer sees, in inches on the view's own plane. Owners are indices into bodies, those after them into extras; panes hide
 * nothing: what is seen of them lies over the scene.
 */
export type Picture = {
  readonly bodies: readonly Body[];
  readonly extras: readonly Extra[];
  readonly view: View;
  readonly scene: Scene;
  readonly panes: Pick<Scene, "lines" | "regions"> & { readonly extras: readonly Extra[] };
};

const sceneOfAll = (all: readonly Placed[], view: View): Scene =>
  rememberScene(all, view, () =>
    sceneOf(
      all.map(({ solid, by }, i) => ({ id: `part ${i + 1}`, solid: movedSolid(solid, by) })),
      view,
      inInches,
    ),
  );

export function takePicture(bodies: readonly Body[], view: View, others: readonly Extra[] = []): Picture {
  const extras = others.filter(({ stuff }) => stuff !== "pane");
  const panes = others.filter(({ stuff }) => stuff === "pane");
  const opaque: readonly Placed[] = [...bodies.map(({ member, by }) => ({ solid: member.solid, by })), ...extras];
  const scene = sceneOfAll(opaque, view);
  if (panes.length === 0) return { bodies, extras, view, scene, panes: { extras: [], lines: [], regions: [] } };
  const whole = sceneOfAll([...opaque, ...panes], view);
  const isPane = (owner: number): boolean => owner >= opaque.length;
  return {
    bodies,
    extras,
    view,
    scene: { ...scene, bounds: whole.bounds },
    panes: {
      extras: panes,
      lines: whole.lines.filter(({ owner }) => isPane(owner)),
      regions: whole.regions.filter(({ owner }) => isPane(owner)),
    },
  };
}

/** Rope is shown pale and metal grey, whatever they are made of. */
const extraTones: Readonly<Record<Exclude<Extra["stuff"], "pane">, Tone>> = {
  rope: { kind: "coat", colour: "#e6dcc3", shade: 0 },
  fitting: { kind: "fitting" },
};

const plainTone = ({ stuff }: Extra): Tone => extraTones[stuff === "rope" ? "rope" : "fitting"];

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
  toneOfExtra: (extra: Extra) => Tone = plainTone,
): Mark[] {
  return picture.scene.regions.map((region) => {
    const member = picture.bodies[region.owner]?.member;
    return {
      kind: "region",
      tone: member ? toneOf(member, isEndGrain(member, region.normal)) : toneOfExtra(extraOf(picture, region.owner)),
      shade: shading(region.normal),
      loops: [region.outer, ...region.holes].map((loop) => loop.map((p) => onPaper(picture, placement, p))),
    };
  });
}

function extraOf({ bodies, extras }: Picture, owner: number): Extra {
  const extra = extras[owner - bodies.length];
  if (extra === undefined) throw new Error(`no body ${owner} in the picture`);
  return extra;
}

/** Lines by kind; a line that several share takes the kind that comes first in `order`. What isn't wood is drawn as light as anything is. */
export function drawLines(
  picture: Picture,
  placement: Placement,
  kindOf: (member: Member) => LineKind,
  order: readonly LineKind[],
  kindOfExtra: (extra: Extra) => LineKind = () => order.at(-1) as LineKind,
): Mark[] {
  const kindAt = (owner: number): LineKind => {
    const member = picture.bodies[owner]?.member;
    return member ? kindOf(member) : kindOfExtra(extraOf(picture, owner));
  };
  return order.flatMap((kind, rank) => {
    const own = picture.scene.lines.filter(
      (line) => Math.min(...[line.owner, ...line.shared].map((i) => order.indexOf(kindAt(i)))) === rank,
    );
    const chains = lineChains(own, inInches.lineUnion).map((chain) => chain.map((p) => onPaper(picture, placement, p)));
    return chains.length === 0 ? [] : [{ kind: "lines" as const, line: kind, chains }];
  });
}

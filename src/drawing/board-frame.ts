// A member -> the frame its board is drawn in: length level, good face to the viewer; its blank, end planes and edges in it.
import type { SawAngles } from "../geometry/saw-settings.ts";
import type { Vec3 } from "../geometry/shape.ts";
import { add, cross, dot, frameZ, times } from "../geometry/vector.ts";
import type { View } from "../geometry/view.ts";
import type { Member, WorkedCut } from "../item/item.ts";
import { crossing, endsOf } from "../item/piece-ends.ts";
import type { OwnTrim } from "../item/piece-form.ts";
import { inches } from "../units/length.ts";
import { toward } from "./panel-space.ts";

export type BoardFrame = {
  /** The good face square on, the board's length level and its low end at the left. */
  readonly view: View;
  /** The square blank: length, width, thickness in inches. */
  readonly size: Vec3;
  /** Whether the board's own width runs up the picture. */
  readonly up: boolean;
  /** Planes of its ends and level edges, in this frame: along, up and toward the viewer from the lower left far corner. */
  readonly trims: readonly OwnTrim[];
  /** Planes of sawn slopes, in this frame. */
  readonly slopes: readonly OwnTrim[];
  /** Settings of the left and the right end, good side up. */
  readonly ends: readonly [SawAngles, SawAngles];
};

const slopesIn = (cuts: readonly WorkedCut[]): number => cuts.filter((cut) => cut.kind === "slope").length;

export function boardFrame(member: Member): BoardFrame {
  const { frame, trims, depth } = member.shape;
  const size: Vec3 = [inches(member.length), inches(member.width), depth];
  const z = frameZ(frame);
  const up = dot(z, toward(member.lie.show)) > 0;
  const toViewer = up ? z : times(z, -1);
  const view: View = { toViewer, right: frame.x, up: cross(toViewer, frame.x) };
  const planes = trims.map(({ point, normal }): OwnTrim => {
    const offset = dot(point, normal);
    if (up) return { normal, offset };
    const turned: Vec3 = [normal[0], 0 - normal[1], 0 - normal[2]];
    return { normal: turned, offset: offset - normal[1] * size[1] - normal[2] * size[2] };
  });
  // The planes of sawn slopes come last and are no ends.
  const own = planes.slice(0, planes.length - slopesIn(member.cuts));
  return { view, size, up, trims: own, slopes: planes.slice(own.length), ends: endsOf(own, size, size[0]).ends };
}

/** Where an edge at this height up the picture starts and ends, over its longer arris. */
export function edgeSpan({ trims, size }: BoardFrame, height: number): readonly [number, number] {
  const spans = [0, size[2]].map((depth): readonly [number, number] => {
    const at = ({ normal, offset }: OwnTrim) => (offset - normal[1] * height - normal[2] * depth) / normal[0];
    const low = trims.filter(({ normal }) => normal[0] < -crossing).map(at);
    const high = trims.filter(({ normal }) => normal[0] > crossing).map(at);
    return [Math.max(0, ...low), Math.min(size[0], ...high)];
  });
  return spans.reduce((longest, span) => (span[1] - span[0] > longest[1] - longest[0] + 1e-9 ? span : longest));
}

/** The blade's tilt for each bevelled long edge, degrees: the lower, then the upper; 0 is square. */
export function edgeBevels({ trims, slopes }: BoardFrame): readonly [number, number] {
  const tilt = (side: 1 | -1): number => {
    const plane = [...trims, ...slopes].find(({ normal }) => Math.abs(normal[0]) <= crossing && normal[1] * side > 0.1);
    return plane === undefined ? 0 : (Math.asin(plane.normal[2]) * 180) / Math.PI;
  };
  return [tilt(-1), tilt(1)];
}

/** Where a view of the square blank starts at the left, and where it ends at the top, inches on the view's plane. */
export function blankCorner({ shape }: Member, size: Vec3, view: View): readonly [left: number, top: number] {
  const { frame } = shape;
  const z = frameZ(frame);
  const corners = [0, size[0]].flatMap((l) =>
    [0, size[1]].flatMap((w) =>
      [0, size[2]].map((t) => add(frame.origin, add(times(frame.x, l), add(times(frame.y, w), times(z, t))))),
    ),
  );
  return [Math.min(...corners.map((p) => dot(p, view.right))), Math.max(...corners.map((p) => dot(p, view.up)))];
}

/** The lower edge seen from below, under the face view (third angle): the good face up. */
export const edgeView = ({ view }: BoardFrame): View => ({
  right: view.right,
  up: view.toViewer,
  toViewer: times(view.up, -1),
});

/** The right end, beside the face view (third angle): the good face to the left. */
export const endView = ({ view }: BoardFrame): View => ({
  right: times(view.toViewer, -1),
  up: view.up,
  toViewer: view.right,
});

// A member's size and cuts -> a text that is the same for every member cut alike, however it lies; and for its mirror.
import { profileOf, signedArea } from "../geometry/profile.ts";
import type { Vec2, Vec3 } from "../geometry/shape.ts";
import { dot, subtract } from "../geometry/vector.ts";
import { sameLength } from "../units/length.ts";
import { blankOf, isRightHanded, type OwnAxis, ownAlong, ownAxes, ownSize } from "./frame.ts";
import type { OwnSide, WorkedCut } from "./item.ts";
import type { PlacedMember } from "./placed.ts";

/** Turns and mirrors of a board that keep its grain: ends changed over along each axis, and width for thickness. */
type Turn = { readonly flip: readonly [boolean, boolean, boolean]; readonly swap: boolean };

const bools = [false, true];
const turns: readonly Turn[] = bools.flatMap((swap) =>
  bools.flatMap((l) => bools.flatMap((w) => bools.map((t): Turn => ({ flip: [l, w, t], swap })))),
);

/** A turn is a rotation if it changes an even number of things over; the others are mirrors. */
const isRotation = (turn: Turn): boolean => [...turn.flip, turn.swap].filter(Boolean).length % 2 === 0;

/** A plane that trims the blank, told in its own frame: normal . p = offset, wood on the side the normal leaves. */
export type OwnTrim = { readonly normal: Vec3; readonly offset: number };

export type Form = {
  /** Equal for members that can be turned into each other. */
  readonly own: string;
  /** The `own` of the mirrored board. */
  readonly mirrored: string;
  /** The cuts as they lie on the board with its good face up: at the high end of its thickness. */
  readonly cuts: readonly WorkedCut[];
  /** The planes of its ends and edges, on the same board. */
  readonly trims: readonly OwnTrim[];
};

type Reading = Pick<Form, "cuts" | "trims"> & { readonly text: string; readonly up: boolean };

/** Boards with one good face keep it apart from the rough one. */
export function formOf(member: PlacedMember, cuts: readonly WorkedCut[]): Form {
  const size = ownSize(member);
  const square = Math.abs(size[1] - size[2]) <= sameLength;
  // Own frames of either hand are brought to the right hand first, or a turned board would read as its mirror.
  const base: Turn = { flip: [false, false, !isRightHanded(member)], swap: false };
  const show: Vec3 = ownAxes.map((own) =>
    ownAlong(member, member.lie.show.axis) === own ? member.lie.show.sign : 0,
  ) as unknown as Vec3;
  const trims = ownTrims(member);
  const read = (turn: Turn): Reading => {
    const turned = cuts.map((cut) => turnedCut(turnedCut(cut, base, size), turn, size));
    const face = member.board.showSides === 1 ? turnedWay(turnedWay(show, base), turn).join() : "";
    const shape = shapeText(member, base, turn);
    const planes = trims.map((trim) => turnedTrim(turnedTrim(trim, base, size), turn, size));
    const up = turnedWay(turnedWay(show, base), turn)[2] === 1;
    return {
      text: [face, shape, ...[...turned.map(cutText), ...planes.map(trimText)].sort()].join(";"),
      cuts: turned,
      trims: planes,
      up,
    };
  };
  const least = (list: readonly Reading[]) => list.reduce((best, r) => (r.text < best.text ? r : best));
  const allowed = turns.filter((turn) => square || !turn.swap);
  const rotated = allowed.filter(isRotation).map(read);
  const own = least(rotated);
  const mirrored = least(allowed.filter((turn) => !isRotation(turn)).map(read));
  const faceUp = rotated.filter((r) => r.up);
  const lies = least(faceUp.length > 0 ? faceUp : rotated);
  const kind = [member.board.name, member.ripped, member.planed, ...size.map((v) => v.toFixed(8))].join("|");
  return {
    own: `${kind}|${own.text}`,
    mirrored: `${kind}|${mirrored.text}`,
    cuts: lies.cuts,
    trims: lies.trims,
  };
}

/** Chords this far off their curves tell outlines apart (inches). */
const outlineChord = 0.01;

/** The corners of an outline and its cut-outs on the turned board, in the order of their numbers. */
function shapeText(member: PlacedMember, base: Turn, turn: Turn): string {
  if (!member.outline) return "";
  const [length, width] = ownSize(member);
  const points = [member.outline.edge, ...member.outline.holes].flatMap((loop) => profileOf(loop, outlineChord).points);
  const flips = [base, turn].filter((t) => t.flip[0]).length % 2 === 1;
  const rolls = [base, turn].filter((t) => t.flip[1]).length % 2 === 1;
  const over = points.map(([x, y]): Vec3 => [flips ? length - x : x, rolls ? width - y : y, 0]);
  return `outline ${turn.swap} ${over.map(rounded).sort().join(" ")}`;
}

function ownTrims(member: PlacedMember): OwnTrim[] {
  const blank = blankOf(member);
  return blank.trims.map(({ point, normal }) => {
    const own = ownAxes.map((axis) => dot(normal, blank[axis])) as unknown as Vec3;
    return { normal: own, offset: dot(normal, subtract(point, blank.origin)) };
  });
}

function turnedTrim({ normal, offset }: OwnTrim, turn: Turn, size: Vec3): OwnTrim {
  const shift = normal.reduce((sum, n, i) => sum + (turn.flip[i] ? n * (size[i] as number) : 0), 0);
  return { normal: turnedWay(normal, turn), offset: offset - shift };
}

const swapped = ([l, w, t]: Vec3, swap: boolean): Vec3 => (swap ? [l, t, w] : [l, w, t]);

const turnedWay = (way: Vec3, { flip, swap }: Turn): Vec3 =>
  swapped(way.map((v, i) => (flip[i] ? 0 - v : v)) as unknown as Vec3, swap);

function turnedCut(cut: WorkedCut, { flip, swap }: Turn, size: Vec3): WorkedCut {
  const over = (v: Vec3): Vec3 => v.map((x, i) => (flip[i] ? (size[i] as number) - x : x)) as unknown as Vec3;
  if (cut.kind === "eased") {
    if (!cut.arris) return cut;
    const side = ({ axis, far }: OwnSide): OwnSide => ({
      axis: swappedAxis(axis, swap),
      far: far !== flip[ownAxes.indexOf(axis)],
    });
    return { ...cut, arris: [side(cut.arris[0]), side(cut.arris[1])] };
  }
  if (cut.kind === "slope") {
    const { normal, offset } = turnedTrim(cut, { flip, swap }, size);
    return { ...cut, normal, offset };
  }
  if (cut.kind === "corners") {
    const across = cut.axis === "thickness" ? 1 : 2;
    const end = (is: 0 | 1, i: 0 | 1 | 2): 0 | 1 => (flip[i] ? (is === 0 ? 1 : 0) : is);
    const corners = cut.corners.map(([l, w]) => [end(l, 0), end(w, across)] as const);
    return { ...cut, corners, axis: swap === (cut.axis === "thickness") ? "width" : "thickness" };
  }
  if (cut.kind === "box" || cut.kind === "pocket") {
    const [p, q] = [over(cut.min), over(cut.max)];
    const min = p.map((v, i) => Math.min(v, q[i] as number)) as unknown as Vec3;
    const max = p.map((v, i) => Math.max(v, q[i] as number)) as unknown as Vec3;
    const axes = cut.kind === "pocket" ? { axis: swappedAxis(cut.axis, swap) } : {};
    return { ...cut, ...axes, min: swapped(min, swap), max: swapped(max, swap) };
  }
  if (cut.kind === "prism") return turnedFigure(cut, { flip, swap }, size);
  const at = ownAxes.indexOf(cut.axis);
  const axis = swappedAxis(cut.axis, swap);
  const from =
    (cut.deep ?? cut.countersink) !== undefined && flip[at] ? (cut.from === "low" ? "high" : "low") : cut.from;
  // A hole's own entry along its axis says nothing: it starts at the mouth.
  const at3 = swapped(over(cut.at3).map((v, i) => (i === at ? 0 : v)) as unknown as Vec3, swap);
  return { ...cut, axis, from, at3 };
}

function turnedFigure(cut: WorkedCut & { kind: "prism" }, { flip, swap }: Turn, size: Vec3): WorkedCut {
  const axis = swappedAxis(cut.axis, swap);
  const old = ownAxes.filter((own) => own !== cut.axis);
  const now = ownAxes.filter((own) => own !== axis).map((own) => old.indexOf(swappedAxis(own, swap)));
  const over = (own: OwnAxis, v: number): number => {
    const i = ownAxes.indexOf(own);
    return flip[i] ? (size[i] as number) - v : v;
  };
  const outline = cut.outline.map((p) => {
    const turned = p.map((v, i) => over(old[i] as OwnAxis, v));
    return now.map((i) => turned[i] as number) as unknown as Vec2;
  });
  const [low, high] = [over(cut.axis, cut.low), over(cut.axis, cut.high)].sort((a, b) => a - b) as [number, number];
  return { ...cut, axis, outline: signedArea(outline) < 0 ? outline.reverse() : outline, low, high };
}

const swappedAxis = (axis: OwnAxis, swap: boolean): OwnAxis =>
  swap && axis !== "length" ? (axis === "width" ? "thickness" : "width") : axis;

const rounded = (v: Vec3): string => v.map((x) => (Math.round(x * 1e7) / 1e7 + 0).toFixed(7)).join();

const trimText = ({ normal, offset }: OwnTrim): string => `trim ${rounded(normal)} ${rounded([offset, 0, 0])}`;

function cutText(cut: WorkedCut): string {
  if (cut.kind === "box") return `box ${rounded(cut.min)} ${rounded(cut.max)}`;
  if (cut.kind === "eased") {
    const arris = (cut.arris ?? []).map(({ axis, far }) => `${axis} ${far}`).sort();
    return ["eased", cut.radius.toFixed(7), ...arris].join(" ");
  }
  if (cut.kind === "prism") {
    const points = cut.outline.map(([x, y]) => rounded([x, y, 0])).sort();
    return `figure ${cut.axis} ${rounded([cut.low, cut.high, 0])} ${points.join(" ")}`;
  }
  if (cut.kind === "slope") return `slope ${trimText(cut)}`;
  if (cut.kind === "corners")
    return `corners ${cut.radius.toFixed(7)} ${cut.axis} ${[...cut.corners].sort().join(" ")}`;
  if (cut.kind === "pocket")
    return `pocket ${cut.axis} ${rounded(cut.min)} ${rounded(cut.max)} ${cut.radius.toFixed(7)}`;
  const end = cut.deep === undefined ? "through" : `${cut.deep.toFixed(7)} ${cut.from}`;
  const sink = cut.countersink === undefined ? "" : ` sunk ${cut.countersink.toFixed(7)} ${cut.from}`;
  return `hole ${cut.across.toFixed(7)} ${cut.axis} ${rounded(cut.at3)} ${end}${sink}`;
}

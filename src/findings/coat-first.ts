// A variant worked out -> the pieces that are coated before they are put together, and the faces of their joints to mask.

import type { Vec3 } from "../geometry/shape.ts";
import { dot, frameZ, times } from "../geometry/vector.ts";
import type { Item, Member, Piece } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { axes } from "../units/side.ts";

export type JointFace = "ends" | "edges" | "good side" | "back";

export type CoatFirst = {
  readonly piece: Piece;
  /** What meets it has another coat or none, or the gap beside it is too narrow for a brush. */
  readonly why: readonly ("another coat" | "narrow gap")[];
  /** Faces that others lie on, with the marks of those. */
  readonly mask: readonly { readonly face: JointFace; readonly marks: readonly string[] }[];
};

/** A brush reaches into no narrower gap, inches. Common practice, no source. */
const brush = 1 / 2;

const coatsOf = ({ coats }: Member): string => coats.map(({ finish, coats }) => `${finish.name} ${coats}`).join(", ");

/** In the order of their marks; empty where one coat goes over all. */
export function coatFirst(item: Item): readonly CoatFirst[] {
  const byId = new Map(item.members.map((member) => [member.id, member]));
  const why = new Map<string, Set<CoatFirst["why"][number]>>();
  const note = (member: Member, reason: CoatFirst["why"][number]): void => {
    if (member.coats.length > 0) why.set(member.mark, (why.get(member.mark) ?? new Set()).add(reason));
  };
  for (const { a, b } of item.contacts) {
    const [one, other] = [byId.get(a), byId.get(b)];
    if (one && other && coatsOf(one) !== coatsOf(other)) for (const each of [one, other]) note(each, "another coat");
  }
  const narrow = item.gaps.filter(({ gap }) => inches(gap) > 1e-6 && inches(gap) < brush);
  for (const member of item.members) {
    if (narrow.some(({ group, panelKind }) => group === member.group && panelKind === member.panelKind))
      note(member, "narrow gap");
  }
  return item.pieces.flatMap((piece) => {
    const reasons = why.get(piece.mark);
    return reasons ? [{ piece, why: [...reasons], mask: maskedFaces(item, byId, piece) }] : [];
  });
}

function maskedFaces(item: Item, byId: ReadonlyMap<string, Member>, piece: Piece): CoatFirst["mask"] {
  const faces = new Map<JointFace, Set<string>>();
  const own = new Set(piece.members);
  for (const { a, b, normal } of item.contacts) {
    for (const [id, other, outward] of [
      [a, b, normal],
      [b, a, times(normal, -1)],
    ] as const) {
      const [member, met] = [byId.get(id), byId.get(other)];
      if (!member || !met || !own.has(id)) continue;
      const face = faceToward(member, outward);
      faces.set(face, (faces.get(face) ?? new Set()).add(met.mark));
    }
  }
  return [...faces]
    .map(([face, marks]) => ({ face, marks: [...marks].sort() }))
    .sort((a, b) => (a.face < b.face ? -1 : 1));
}

/** The face that looks most nearly that way. */
function faceToward({ shape, lie }: Member, way: Vec3): JointFace {
  const along = Math.abs(dot(way, shape.frame.x));
  const through = Math.abs(dot(way, frameZ(shape.frame)));
  if (along > Math.SQRT1_2) return "ends";
  if (through <= Math.SQRT1_2) return "edges";
  const show = axes.map((axis) => (axis === lie.show.axis ? lie.show.sign : 0)) as unknown as Vec3;
  return dot(way, show) > 0 ? "good side" : "back";
}

// Rounded corners and eased arrises -> what is done to the member's outline and edges.

import type { Vec3 } from "../../geometry/shape.ts";
import { dot } from "../../geometry/vector.ts";
import { problem } from "../../problems/problem.ts";
import type { Cut } from "../../recipe/recipe.ts";
import { blankOf, ownAxes, ownEntry, ownSize } from "../frame.ts";
import type { OwnSide } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { refused, sizesOf, type Worked } from "./worked.ts";

export function workCorners(
  cut: Cut & { readonly kind: "rounded corners" },
  member: PlacedMember,
  placing: Placing,
): Worked {
  const sizes = sizesOf(cut, [cut.radius], placing);
  if ("code" in sizes) return refused(sizes);
  const [radius = 0] = sizes;
  const [length, width] = ownSize(member);
  const facts = { cut: cut.text, member: member.id };
  if ((member.slant?.trims.length ?? 0) > 0)
    return refused(problem("corners-where", cut.at, { ...facts, why: "slanted" }));
  if (member.outline) return refused(problem("corners-where", cut.at, { ...facts, why: "outlined" }));
  const side = cut.along && ownSideOf(member, placing.turned(member), cut.along);
  if (side?.own === "thickness") return refused(problem("corners-where", cut.at, { ...facts, why: "face" }));
  // Two corners that share a side must both fit on it; along the other way each has the whole board.
  const most = Math.min(length / (side?.own === "length" ? 1 : 2), width / (side?.own === "width" ? 1 : 2));
  if (radius > most) return refused(problem("corners-too-round", cut.at, { cut: cut.text, radius, most }));
  const all = ([0, 1] as const).flatMap((l) => ([0, 1] as const).map((w) => [l, w] as const));
  const far = side?.far ? 1 : 0;
  const corners = side ? all.filter(([l, w]) => (side.own === "length" ? l : w) === far) : all;
  return { cuts: [{ kind: "corners", why: "cut", at: cut.at, axis: "thickness", radius, corners }] };
}

export function workEased(
  cut: Cut & { readonly kind: "eased arrises" },
  member: PlacedMember,
  placing: Placing,
): Worked {
  const sizes = sizesOf(cut, [cut.radius], placing);
  if ("code" in sizes) return refused(sizes);
  const [radius = 0] = sizes;
  const thickness = Math.min(...ownSize(member));
  if (radius > thickness / 2) {
    return refused(problem("ease-too-round", cut.at, { cut: cut.text, member: member.id, radius, thickness }));
  }
  return { cuts: [{ kind: "eased", why: "cut", at: cut.at, radius }] };
}

export function workArris(
  cut: Cut & { readonly kind: "rounded arris" },
  member: PlacedMember,
  placing: Placing,
): Worked {
  const sizes = sizesOf(cut, [cut.radius], placing);
  if ("code" in sizes) return refused(sizes);
  const [radius = 0] = sizes;
  const panel = placing.turned(member);
  const [into, along] = [cut.into, cut.along].map((side) => ownSideOf(member, panel, side));
  if (!into || !along || into.own === along.own) {
    const facts = { cut: cut.text, member: member.id, into: cut.into, along: cut.along };
    return refused(problem("rabbet-sides", cut.at, facts));
  }
  const ends = [into.own, along.own].includes("length");
  const bevelled = (member.slant?.trims ?? []).some(({ normal }) => !alongOne(member, normal));
  if (member.outline || (bevelled && ends)) {
    const why = member.outline ? "outlined" : "slanted";
    return refused(problem("arris-where", cut.at, { cut: cut.text, member: member.id, why }));
  }
  const most = Math.min(...[into, along].map(({ own }) => ownEntry(ownSize(member), own)));
  if (radius > most) return refused(problem("corners-too-round", cut.at, { cut: cut.text, radius, most }));
  const sides = [into, along].map(({ own, far }) => ({ axis: own, far })) as [OwnSide, OwnSide];
  return { cuts: [{ kind: "eased", why: "cut", at: cut.at, radius, arris: sides }] };
}

/** Whether a plane of a slanted board lies square to one of its own directions. */
const alongOne = (member: PlacedMember, normal: Vec3): boolean =>
  ownAxes.some((own) => Math.abs(dot(normal, blankOf(member)[own])) > 1 - 1e-9);

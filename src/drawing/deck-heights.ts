// An item -> the level surfaces that something can be put on, under its top: how high each is.
import type { Item, Member } from "../item/item.ts";
import { compareLengths, inches, type Length } from "../units/length.ts";

export type Deck = { readonly height: Length; readonly members: readonly string[] };

/** Of the item's own plan this much is wood at a deck's height; less is a rail or a lip. */
const leastOfPlan = 0.25;

/** Less room than this over it, inches, and nothing is put on it. */
const headroom = 4;

const isFlat = ({ lie, shape }: Member): boolean =>
  lie.thickness === "z" && Math.abs(shape.frame.x[2]) < 1e-9 && Math.abs(shape.frame.y[2]) < 1e-9;

/** Lowest first; boards that lie flat at one height are one deck. */
export function decksOf(item: Item): readonly Deck[] {
  const plan = inches(item.overall.width) * inches(item.overall.depth);
  const levels: Member[][] = [];
  for (const member of item.members.filter(isFlat)) {
    const level = levels.find(([first]) => first && Math.abs(inches(first.max.z) - inches(member.max.z)) < 1e-6);
    if (level === undefined) levels.push([member]);
    else level.push(member);
  }
  return levels
    .filter((level) => level.reduce((sum, one) => sum + inches(one.length) * inches(one.width), 0) > plan * leastOfPlan)
    .map((level): Deck => ({ height: (level[0] as Member).max.z, members: level.map(({ id }) => id) }))
    .sort((a, b) => compareLengths(a.height, b.height))
    .filter(({ height }, i, all) => {
      const above = all[i + 1]?.height ?? item.overall.height;
      return inches(above) - inches(height) >= headroom;
    });
}

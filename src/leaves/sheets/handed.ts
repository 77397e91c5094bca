// Worked-out pieces -> those that come as left and right, as pairs.
import type { Item, Piece } from "../../item/item.ts";

export const handedOf = ({ pieces }: Item): readonly (readonly [Piece, Piece])[] =>
  pieces.flatMap((left) => {
    const right = pieces.find(({ letter, hand }) => letter === left.letter && hand === "right");
    return left.hand === "left" && right ? [[left, right] as const] : [];
  });

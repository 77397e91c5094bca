// A glued-up member -> problems with the boards that are sawn for it.
import { type Problem, problem } from "../../problems/problem.ts";
import { compareLengths, type Length, most } from "../../units/length.ts";
import type { PlacedMember } from "../placed.ts";

/** Plies wider than their board, and boards longer than any that is sold; each kind once. */
export function checkBlanks(member: PlacedMember): Problem[] {
  return (member.blanks ?? []).flatMap(({ board, width, length, grain }): Problem[] => {
    const name = member.pieceKind;
    if (compareLengths(width, board.width) > 0) {
      const facts = { name, width, board: board.name, whole: board.width, crossed: grain === "across" };
      return [problem("ply-over-board", member.at, facts, board.at)];
    }
    const longest = board.lengths.reduce<Length>((best, each) => most(best, each.usable), 0);
    // What runs along is told by the member's own length.
    if (grain === "along" || compareLengths(length, longest) <= 0) return [];
    return [problem("blank-too-long", member.at, { name, length, board: board.name, longest }, board.at)];
  });
}

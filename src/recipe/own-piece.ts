// `6 of fence board ripped to 2` -> a piece that only this line uses, so that it needs no name under `pieces:`.
import type { Written } from "../problems/place.ts";
import type { PieceKind } from "./recipe.ts";
import { attempt, type Form, type Gathered, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

export const ownPieceForm: Form = {
  form: "[N ]of BOARD[ ripped to W][ planed to T]",
  means: "A line may say itself what its pieces are cut from; they then need no name under pieces.",
  example: "6 of fence board ripped to 2",
};

/**
 * The piece, noted with those of the other lines; undefined with its problem gathered. It goes by the path of its line and its
 * board, which has blanks in it, as no name that a maker gives may have.
 */
export function readOwnPiece(path: readonly Written[], of: Written, into: Gathered): Written | undefined {
  return attempt(into.problems, () => {
    const scan = new Scan(of, ownPieceForm, into);
    scan.must("of");
    const first = scan.read;
    const at = scan.here;
    while (!scan.done && !scan.is("ripped", "to") && !scan.is("planed", "to")) scan.take();
    if (scan.read === first) scan.wants("the name of a board in the yard");
    const board: Written = { text: scan.textFrom(first), at };
    const ripped = scan.skip("ripped", "to") ? readSum(scan) : undefined;
    const planed = scan.skip("planed", "to") ? readSum(scan) : undefined;
    scan.end();
    const name: Written = { text: `${path.map(({ text }) => text).join(" ")} of ${board.text}`, at };
    const piece: PieceKind = {
      ...{ name, board, at, own: true },
      ...(ripped ? { ripped } : {}),
      ...(planed ? { planed } : {}),
    };
    into.ownPieces.push(piece);
    return name;
  });
}

// A recipe worked out again with boards a little thicker and thinner -> which sizes follow, so that a builder with other boards knows.
import type { Item } from "../../item/item.ts";
import { workOut } from "../../item/work-out.ts";
import type { Recipe, Sum } from "../../recipe/recipe.ts";
import type { Division } from "../../units/division.ts";
import { type Exact, exact, inches, type Length } from "../../units/length.ts";
import type { Board, Yard } from "../../yard/yard.ts";

/** One kind of board, by its name in the yard, that is off by so much; and every size of the thing that isn't the same any more. */
export type BoardEffect = {
  readonly board: string;
  readonly thicker: boolean;
  readonly by: Exact;
  /** Over all, where it changes. */
  readonly overall?: Item["overall"];
  /** By mark, lengths and widths of pieces that change. */
  readonly pieces: readonly {
    readonly mark: string;
    readonly what: "length" | "width";
    readonly from: Length;
    readonly to: Length;
  }[];
  /** It can't be built from such boards as it is written. */
  readonly stops: boolean;
};

/** As far as boards of one nominal size are off in the trade. Common practice, no source. */
const off = exact(1, 16);
/** Less than this is no other size at the bench. */
const same = 1 / 128;

const differs = (a: Length, b: Length): boolean => Math.abs(inches(a) - inches(b)) > same;

/** Pieces that are planed have the thickness they are planed to, whatever the board's. */
export function boardEffects(recipe: Recipe, yard: Yard, item: Item, division: Division): readonly BoardEffect[] {
  const used = [...new Set(item.pieces.filter(({ planed }) => !planed).map(({ board }) => board.name))];
  return used.flatMap((name) =>
    [true, false].map((thicker): BoardEffect => {
      const boards = yard.boards.map((board) =>
        board.name === name ? offBy(board, thicker ? off : off.neg()) : board,
      );
      const by = thicker ? off : off.neg();
      const work = (of: Recipe) => workOut(of, { ...yard, boards }, item.variant.slug, division);
      return { board: name, thicker, by: off, ...effectOf(item, workLoosely(recipe, work, layersOf(item), by)) };
    }),
  );
}

const sides = ["width", "depth", "height"] as const;

/** How many boards lie on each other in a piece: 1, or its plies. */
const layersOf = ({ pieces }: Item): readonly number[] => [
  ...new Set(pieces.map(({ blanks }) => blanks?.reduce((sum, { count }) => sum + count, 0) ?? 1)),
];

/** Where a stated side of the whole is as thick as the boards themselves, it follows them. */
function workLoosely(
  recipe: Recipe,
  work: (recipe: Recipe) => ReturnType<typeof workOut>,
  layers: readonly number[],
  by: Exact,
): Item | undefined {
  const worked = work(recipe);
  if (worked.item || !worked.problems.every(({ code }) => code === "overall-false")) return worked.item;
  for (const side of sides) {
    const stated = recipe.overall[side];
    if (stated.kind === "fit") continue;
    for (const count of layers) {
      const { item } = work({ ...recipe, overall: { ...recipe.overall, [side]: moreThan(stated, by.mul(count)) } });
      if (item) return item;
    }
  }
  return undefined;
}

const moreThan = (sum: Sum, by: Exact): Sum => ({
  kind: "plus",
  at: sum.at,
  left: sum,
  right: { kind: "length", at: sum.at, value: by, bare: true },
});

const offBy = (board: Board, by: Exact): Board => ({ ...board, thickness: board.thickness.add(by) });

function effectOf(before: Item, after: Item | undefined): Omit<BoardEffect, "board" | "thicker" | "by"> {
  if (!after) return { pieces: [], stops: true };
  const members = new Map(after.members.map((member) => [member.id, member]));
  const pieces = before.pieces.flatMap((piece) => {
    const now = members.get(piece.members[0] ?? "");
    return (["length", "width"] as const).flatMap((what) =>
      now && differs(piece[what], now[what]) ? [{ mark: piece.mark, what, from: piece[what], to: now[what] }] : [],
    );
  });
  const changed = sides.some((size) => differs(before.overall[size], after.overall[size]));
  return { ...(changed ? { overall: after.overall } : {}), pieces, stops: false };
}

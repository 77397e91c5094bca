// A recipe worked out again with boards a little thicker and thinner -> which sizes follow, so that a builder with other boards knows.
import { differentPanels } from "../../drawing/panel-space.ts";
import type { Figure, Item, WorkedStep } from "../../item/item.ts";
import { workOut } from "../../item/work-out.ts";
import type { Recipe, Sum } from "../../recipe/recipe.ts";
import type { Division } from "../../units/division.ts";
import { type Exact, exact, inches, type Length, most } from "../../units/length.ts";
import type { Board, Yard } from "../../yard/yard.ts";

export type Change = { readonly from: Length; readonly to: Length };

/** One kind of board, by its name in the yard, that is off by so much; and every size of the thing that isn't the same any more. */
export type BoardEffect = {
  readonly board: string;
  readonly thicker: boolean;
  readonly by: Exact;
  /** Over all, where it changes. */
  readonly overall?: Item["overall"];
  /** By mark, lengths and widths of pieces that change, and the stop where their parallel ends are sawn to less than the length. */
  readonly pieces: readonly (Change & { readonly mark: string; readonly what: "length" | "width" | "stop" })[];
  /** By kind, sizes of panels that change. */
  readonly panels: readonly (Change & { readonly kind: string; readonly what: "width" | "height" })[];
  /** By its number, lengths in a step's words and checks that change; `gap` of one that a block is cut to. */
  readonly steps: readonly (Change & { readonly step: number; readonly gap: boolean })[];
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
  if (!after) return { pieces: [], panels: [], steps: [], stops: true };
  const members = new Map(after.members.map((member) => [member.id, member]));
  const pieces = before.pieces.flatMap((piece) => {
    const now = members.get(piece.members[0] ?? "");
    const cut = after.pieces.find(({ members: own }) => own.includes(piece.members[0] ?? ""));
    const sizes = (["length", "width"] as const).flatMap((what) =>
      now && differs(piece[what], now[what]) ? [{ mark: piece.mark, what, from: piece[what], to: now[what] }] : [],
    );
    const [from, to] = [most(...piece.edges), cut && most(...cut.edges)];
    const hasStop = differs(piece.length, from) && to !== undefined && differs(from, to);
    return [...sizes, ...(hasStop ? [{ mark: piece.mark, what: "stop" as const, from, to }] : [])];
  });
  const panels = differentPanels(before).flatMap((panel) => {
    const now = after.panels.find(({ name }) => name === panel.name);
    return (["width", "height"] as const).flatMap((what) =>
      now && differs(panel[what], now[what]) ? [{ kind: panel.kind, what, from: panel[what], to: now[what] }] : [],
    );
  });
  const changed = sides.some((size) => differs(before.overall[size], after.overall[size]));
  const steps = stepsOf(before).flatMap((step, i) => changesIn(step, stepsOf(after)[i]));
  return { ...(changed ? { overall: after.overall } : {}), pieces, panels, steps, stops: false };
}

const stepsOf = ({ sections }: Item): readonly WorkedStep[] => sections.flatMap(({ steps }) => steps);

const figuresOf = ({ text, checks, cautions }: WorkedStep): readonly Figure[] =>
  [text, ...checks, ...cautions].flatMap(({ figures }) => figures);

/** The same words of the same recipe, so that their figures stand in the same order. */
function changesIn(before: WorkedStep, after: WorkedStep | undefined): BoardEffect["steps"] {
  const now = after ? figuresOf(after) : [];
  return figuresOf(before).flatMap((figure, i) => {
    const other = now[i];
    if (figure.kind !== "length" || other?.kind !== "length" || !differs(figure.value, other.value)) return [];
    return [{ step: before.number, gap: figure.gap === true, from: figure.value, to: other.value }];
  });
}

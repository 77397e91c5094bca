// A plan's item -> the sheet to read before wood is bought: how to check boards, what changes if they differ, what may stand in.
import { driest, wettest } from "../../findings/movement.ts";
import { yardList } from "../../findings/yard-list.ts";
import { inches, type Length, most, plus, zero } from "../../units/length.ts";
import { speciesTable } from "../../yard/species-table.ts";
import type { Board } from "../../yard/yard.ts";
import { type BinderEdition, smallChange, threeSizes } from "../edition.ts";
import type { Table } from "../leaf.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { heading, listOf, sheetOf, tableOf, together, words } from "../sheets/blocks.ts";
import type { BoardEffect, Change } from "./board-effects.ts";
import type { PackItem } from "./pack-item.ts";
import type { PackShop } from "./pack-shop.ts";

export type BeforeSource = {
  readonly item: PackItem;
  readonly shop: PackShop;
  readonly edition: BinderEdition;
  /** Under the generic names of the boards. */
  readonly effects: readonly BoardEffect[];
};

export function beforeSheet(source: BeforeSource): readonly PaperSheet[] {
  const boards = [...new Map(source.item.pieces.map(({ board }) => [board.name, board])).values()];
  const isRipped = source.item.pieces.some(({ ripped }) => ripped);
  return sheetOf("before", "Before you buy", "Build", [
    heading("Check your boards"),
    ...listOf(checks(isRipped ? widestLaid(source) : undefined, source.edition), "number"),
    ...tableOf(trueSizes(boards, source)),
    ...together([
      heading("If yours are thicker or thinner"),
      ...words(
        "The whole thing was worked out again with such boards. Cut to the sizes on the right, and in the steps named there set off and check the new figures; whatever is drawn from these moves with them, all other sizes stay. Between two rows, take the part of the change that your boards have.",
      ),
      ...tableOf(effectTable(source)),
    ]),
    ...together([
      heading("Other wood"),
      ...tableOf(woodTable(boards, source)),
      ...words(woodNotes(source.item, boards), true),
    ]),
    ...together([
      heading("Wider or narrower boards"),
      ...words(
        isRipped
          ? "Pieces are ripped to their widths, so any board that is wide enough will do: lay them out anew and keep the lengths. Two narrow boards glued edge to edge count as one wide board."
          : "Pieces have the whole width of their boards. Rip wider boards down to it; in narrower ones the gaps between boards grow by as much as the boards lack, so glue edge to edge where a gap matters.",
      ),
    ]),
  ]);
}

/** Across the fullest board of the plan: all strips side by side and the saw cuts between them. */
function widestLaid({ item, shop }: BeforeSource): Length {
  return yardList(item, shop.kerf).plan.reduce<Length>((sofar, { order, strips }) => {
    const ends = strips.flatMap(({ from, size, pieces }) =>
      order === "rip" ? [plus(from, size)] : pieces.map(({ across, width }) => plus(across, width)),
    );
    return ends.reduce<Length>(most, sofar);
  }, zero);
}

/** `widest` only of a plan whose pieces are ripped. */
const checks = (widest: Length | undefined, { length }: BinderEdition): string[] => [
  "Take three boards of the stack and measure each at both ends and in the middle, thickness first, with a caliper or a steel rule held square.",
  "Write the mean of what you find under “yours”. Boards of one name differ from yard to yard and from batch to batch.",
  "As near as half of the smallest division printed here counts as the same. If yours differ more, take the sizes from the table below before you cut anything.",
  widest !== undefined
    ? `Widths don't matter while boards are at least ${length(widest)} wide, which is what strips and saw cuts take: pieces are ripped to their width. Cut one of each, put them together dry, then cut the rest.`
    : "Cut one of each piece, put them together dry, then cut the rest.",
];

const trueSizes = (boards: readonly Board[], { shop, edition }: BeforeSource): Table => ({
  caption: `True sizes that this plan is worked out for, in ${unitName(shop)}`,
  heads: ["Board", "Thickness", "Width", "Moisture", "Thickness of yours", "Width of yours"],
  rows: boards.map((board) => [
    board.name,
    edition.bare(board.thickness),
    edition.bare(board.width),
    `${board.moisture} %`,
    "…………",
    "…………",
  ]),
});

const unitName = ({ division }: PackShop): string => (division.unit === "in" ? "inches" : "millimetres");

/** One row for each board and way. */
function effectTable({ item, effects, edition, shop }: BeforeSource): Table {
  const sizesOf = ({ width, depth, height }: PackItem["overall"]): string =>
    threeSizes([width, depth, height], shop.division);
  return {
    caption: `As drawn it is ${sizesOf(item.overall)}, width × depth × height`,
    heads: ["If this board", "is", "it becomes", "and these sizes change"],
    rows: effects.map((effect) => [
      effect.board,
      `${edition.length(effect.by)} ${effect.thicker ? "thicker" : "thinner"}`,
      sizesOf(effect.overall ?? item.overall) === sizesOf(item.overall)
        ? "the same size"
        : sizesOf(effect.overall ?? item.overall),
      effect.stops
        ? "it can't be built from them as it is drawn: plane them to size, or take others"
        : changesIn(effect, edition),
    ]),
  };
}

/** What reads the same before and after, rounded as it is printed, is no change. */
function changesIn({ pieces, panels, steps }: BoardEffect, { length, gap }: BinderEdition): string {
  const told = (name: string, { from, to }: Change, say: (size: Length) => string): string[] =>
    say(from) === say(to) ? [] : [`${name} ${say(to)}, not ${say(from)}`];
  const all = [
    ...pieces.flatMap((one) => told(`${one.mark}: ${one.what}`, one, length)),
    ...panels.flatMap((one) => told(`${one.kind}: ${one.what}`, one, length)),
    ...steps.flatMap((one) => told(`step ${one.step}:`, one, one.gap ? gap : length)),
  ];
  return all.length === 0 ? "none" : [...new Set(all)].join("; ");
}

/** Woods that a yard anywhere may have, lightest first; the plan's own among them. */
const standIns = [
  "western redcedar",
  "eastern white pine",
  "ponderosa pine",
  "Douglas-fir, coast",
  "loblolly pine",
  "white oak",
];

/** Weight goes with the specific gravity, since all else stays; movement with the tangential coefficient of the widest piece. */
function woodTable(boards: readonly Board[], { item, edition }: BeforeSource): Table {
  const own = meanGravity(item);
  const widest = [...item.pieces].sort((a, b) => inches(b.width) - inches(a.width))[0]?.width ?? 0;
  const points = wettest.sub(driest).valueOf();
  return {
    caption: `Woods that may stand in; the plan's own is ${listed(boards.map(({ words: says }) => says))}`,
    heads: ["Wood", "It then weighs", `The widest piece (${edition.length(widest)}) moves by`, "Rot outdoors"],
    rows: standIns.flatMap((name) => {
      const species = speciesTable.find((one) => one.name === name);
      if (!species) return [];
      const weight = item.weight - item.woodWeight + (item.woodWeight * species.specificGravity) / own;
      const rots = {
        resistant: "resists it",
        moderate: "resists it for a while",
        "slight or none": "coat it, or keep it dry",
      };
      return [
        [name, edition.weight(weight), smallChange(inches(widest) * species.tangential * points), rots[species.decay]],
      ];
    }),
  };
}

/** By volume, so that the plan's own wood comes out at its own weight. */
function meanGravity({ pieces }: PackItem): number {
  const volume = pieces.reduce((sum, piece) => sum + piece.volume * piece.count, 0);
  return (
    pieces.reduce((sum, piece) => sum + piece.volume * piece.count * piece.board.species.specificGravity, 0) / volume
  );
}

const woodNotes = (item: PackItem, boards: readonly Board[]): string =>
  [
    "Sizes stay the same in any wood. Averages of clear wood (Wood Handbook, tables 5-3, 13-1, 13-5); movement between 9 and 14 % moisture.",
    "Drill lead holes in every hard wood; screws in oak and redcedar are of stainless steel, since these woods eat other steel (common practice, no source).",
    ...(item.classes.includes("L")
      ? ["It carries weight: take no weaker wood than its own, and none with knots at the edges."]
      : []),
    ...(item.classes.includes("F") || item.classes.includes("C")
      ? ["For food and for children take only wood you know to be untreated, and ask about what it may give off."]
      : []),
    ...(boards.some(({ treatment }) => treatment === "none")
      ? ["Treated wood wants other screws and other care; this plan doesn't count on it."]
      : []),
  ].join(" ");

const listed = (all: readonly string[]): string => [...new Set(all)].join("; ");

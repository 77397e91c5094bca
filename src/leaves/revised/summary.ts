// A worked-out item and its sheets -> what a later revision is compared with: sizes, places, drawings, prices, steps, cautions.
import { createHash } from "node:crypto";
import type { Pricing } from "../../findings/pricing.ts";
import { vecOf } from "../../item/frame.ts";
import type { Item } from "../../item/item.ts";
import { inches, type Length } from "../../units/length.ts";
import { formatMoney } from "../../units/money.ts";
import type { CautionText, Picture } from "../leaf.ts";
import type { SheetBlock, SheetSet } from "../sheet-set.ts";

/** Inches, degrees and pounds as numbers, drawings by a hash of what is drawn, money as text. Private. */
export type Summary = {
  readonly title: string;
  readonly slug: string;
  readonly revision: string;
  readonly date: string;
  readonly sizes: Readonly<Record<string, number>>;
  readonly places: Readonly<Record<string, readonly number[]>>;
  readonly drawings: Readonly<Record<string, string>>;
  readonly prices: Readonly<Record<string, string>>;
  readonly steps: Readonly<Record<string, string>>;
  readonly cautions: readonly string[];
};

/** Six decimals: finer than any saw, coarser than the last bits of a double. */
const plain = (value: number): number => Number(value.toFixed(6)) + 0;
const length = (value: Length): number => plain(inches(value));

/** `item` is the standard variant of the form that the set is of. */
export function summaryOf(item: Item, set: SheetSet, pricings: readonly Pricing[]): Summary {
  const blocks = set.sheets.flatMap((sheet) => sheet.blocks.flatMap(inside));
  const cautions = blocks.flatMap((block) =>
    block.kind === "cautions" ? block.cautions : block.kind === "step" ? block.step.cautions : [],
  );
  return {
    title: item.title,
    slug: item.slug,
    revision: set.revision,
    date: set.date,
    sizes: sizesOf(item),
    places: Object.fromEntries(item.members.map(({ id, min, max }) => [id, [...vecOf(min), ...vecOf(max)].map(plain)])),
    drawings: Object.fromEntries(blocks.flatMap(picturesIn).map(({ caption, svg }) => [caption, hashOf(svg.html)])),
    prices: Object.fromEntries(
      pricings.flatMap(({ item: { variant }, channels }) =>
        channels.map(({ channel, target }) => [`${variant.name}, ${channel.name}`, formatMoney(target)]),
      ),
    ),
    steps: Object.fromEntries(
      blocks.flatMap((block) => (block.kind === "step" ? [[block.step.number, textOf(block.step.text.html)]] : [])),
    ),
    cautions: [...new Set(cautions.map(cautionText))].sort(),
  };
}

function sizesOf({ overall, pieces, weight }: Item): Record<string, number> {
  const own = pieces.flatMap((piece): [string, number][] => [
    [`${piece.mark} number`, piece.count],
    [`${piece.mark} length`, length(piece.length)],
    [`${piece.mark} width`, length(piece.width)],
    [`${piece.mark} thickness`, length(piece.thickness)],
    ...piece.ends.flatMap(({ mitre, bevel }, i): [string, number][] => [
      [`${piece.mark} mitre, ${i === 0 ? "low" : "high"} end`, plain(mitre)],
      [`${piece.mark} bevel, ${i === 0 ? "low" : "high"} end`, plain(bevel)],
    ]),
  ]);
  return Object.fromEntries([
    ["overall width", length(overall.width)],
    ["overall depth", length(overall.depth)],
    ["overall height", length(overall.height)],
    ["weight", Number(weight.toFixed(1))],
    ...own,
  ]);
}

const inside = (block: SheetBlock): readonly SheetBlock[] => {
  if (block.kind === "together") return block.blocks.flatMap(inside);
  return block.kind === "row" ? block.figures : [block];
};

/** A sticker and a tape say what the sizes and steps say; they are no drawings of their own. */
function picturesIn(block: SheetBlock): readonly Picture[] {
  if (block.kind === "figure") return block.name === "sticker" ? [] : [block.picture];
  return block.kind === "step" && block.step.picture ? [block.step.picture] : [];
}

const hashOf = (text: string): string => createHash("sha256").update(text).digest("hex").slice(0, 16);
const textOf = (html: string): string => html.replace(/<[^>]*>/g, "");

/** What is said again in short is no caution of its own. */
const cautionText = ({ signal, avoidance }: CautionText): string => `${signal}: ${avoidance}`;

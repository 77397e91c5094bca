// Panels of an item -> one sheet for each kind: its drawing, its spacer blocks and its proof numbers.
import { drawPanel } from "../drawing/panel-drawing.ts";
import { differentPanels, membersOf, spacedRows } from "../drawing/panel-space.ts";
import { panelTapes } from "../drawing/panel-tapes.ts";
import { binderSheet } from "../drawing/sheet.ts";
import type { Vec2 } from "../geometry/shape.ts";
import type { Item, Panel } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { inches, type Length } from "../units/length.ts";
import type { Edition } from "./edition.ts";
import type { Fact, Picture } from "./leaf.ts";
import { pictureOn } from "./picture.ts";

export type PanelSheet = {
  readonly name: string;
  /** "Make 2.", mirrored ones counted for themselves. */
  readonly times: string;
  readonly picture: Picture;
  readonly facts: readonly Fact[];
};

export const panelsSheet = (
  item: Item,
  division: Division,
  { length, gap }: Pick<Edition, "length" | "gap">,
): PanelSheet[] =>
  differentPanels(item).map((drawn) => ({
    name: drawn.mirrored ? `${drawn.kind}, mirrored` : drawn.kind,
    times: `Make ${item.panels.filter((one) => one.kind === drawn.kind && one.mirrored === drawn.mirrored).length}.`,
    picture: pictureOn(binderSheet, (sheet) => drawPanel(item, drawn, division, sheet)),
    facts: [
      { name: "Over all", value: `${length(drawn.width)} wide, ${length(drawn.height)} high` },
      ...diagonalFacts(item, drawn, length),
      ...spacedRows(item, drawn).map((row) => gapFact("Spacer block", row, gap)),
    ],
  }));

/** Gaps of what is placed in the item itself, outside its panels. */
export const looseGaps = (item: Item, length: (inches: Length) => string): Fact[] =>
  item.gaps
    .filter((gap) => gap.panelKind === undefined && inches(gap.gap) > 0)
    .map((gap) => gapFact("Gap", gap, length));

const gapFact = (
  word: string,
  { group, gap, atEnds }: Item["gaps"][number],
  length: (inches: Length) => string,
): Fact => ({ name: `${word} between ${group}${atEnds ? " and at the ends" : ""}`, value: length(gap) });

/** From the corners that the drawing joins; none where a tape finds no board to hook on at one of them. */
function diagonalFacts(item: Item, panel: Panel, length: (inches: Length) => string): Fact[] {
  const { corners, hooked } = panelTapes(panel, membersOf(item, panel.members));
  if (!hooked) return [];
  const [one, other] = [gapBetween(corners[0], corners[2]), gapBetween(corners[1], corners[3])].map(length);
  return one === other && one !== undefined ? [{ name: "Corner to corner, both ways", value: one }] : [];
}

const gapBetween = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

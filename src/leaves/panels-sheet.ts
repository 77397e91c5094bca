// Panels of an item -> one sheet for each kind: its drawing, its spacer blocks and its proof numbers.
import { drawPanel } from "../drawing/panel-drawing.ts";
import { binderSheet } from "../drawing/sheet.ts";
import type { Item, Panel } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { inches, type Length } from "../units/length.ts";
import type { Fact, Picture } from "./leaf.ts";
import { pictureOn } from "./picture.ts";

export type PanelSheet = {
  readonly name: string;
  /** "Make 2." or "Make 2: 1 as drawn, 1 mirrored." */
  readonly times: string;
  readonly picture: Picture;
  readonly facts: readonly Fact[];
};

export const panelsSheet = (item: Item, division: Division, length: (inches: Length) => string): PanelSheet[] =>
  [...new Set(item.panels.map((panel) => panel.kind))].map((kind) => {
    const panels = item.panels.filter((panel) => panel.kind === kind);
    const drawn = panels.find((panel) => !panel.mirrored) ?? (panels[0] as Panel);
    return {
      name: kind,
      times: timesText(panels, drawn),
      picture: pictureOn(binderSheet, (sheet) => drawPanel(item, drawn, division, sheet)),
      facts: [
        { name: "Over all", value: `${length(drawn.width)} wide, ${length(drawn.height)} high` },
        { name: "Corner to corner, both ways", value: length(diagonalOf(drawn)) },
        ...spacers(item, length, kind),
      ],
    };
  });

/** Spacer blocks for lines placed in a panel kind, or in the item itself where none is given. */
export const spacers = (item: Item, length: (inches: Length) => string, kind?: string): Fact[] =>
  item.gaps
    .filter((gap) => gap.panelKind === kind && inches(gap.gap) > 0)
    .map(({ group, gap, atEnds }) => ({
      name: `Spacer between ${group}${atEnds ? " and at the ends" : ""}`,
      value: length(gap),
    }));

const diagonalOf = (panel: Panel): number => Math.hypot(inches(panel.width), inches(panel.height));

function timesText(panels: readonly Panel[], drawn: Panel): string {
  const other = panels.filter((panel) => panel.mirrored !== drawn.mirrored).length;
  return other === 0
    ? `Make ${panels.length}.`
    : `Make ${panels.length}: ${panels.length - other} as drawn, ${other} mirrored.`;
}

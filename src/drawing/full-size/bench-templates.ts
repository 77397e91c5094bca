// Gaps, angles and panels of an item -> spacer blocks, bevel guides and story sticks at true size.

import type { Item, Panel } from "../../item/item.ts";
import type { Division } from "../../units/division.ts";
import { inches, type Length } from "../../units/length.ts";
import type { Mark, Paper } from "../drawing.ts";
import { formatDegrees, isSlanted } from "../end-angle.ts";
import { leansOf } from "../lean-angle.ts";
import { differentPanels, membersOf, reachIn, spacedRows } from "../panel-space.ts";
import { panelTapes, type Tape } from "../panel-tapes.ts";
import { idPart, listed, paperGap, paperLength } from "../paper-text.ts";
import { mmPerInch } from "../sheet.ts";
import { textWidth } from "../text-width.ts";
import { closedChain, rectangle, type Template, templateType } from "./template.ts";

const edge = 2;
const blockLength = 100;
/** A gap wider than this is measured, not blocked; inches. */
const widestBlock = 6;

export function spacerTemplates(item: Item, division: Division): Template[] {
  const rows = [
    ...differentPanels(item).flatMap((panel) => spacedRows(item, panel)),
    ...item.gaps.filter(({ panelKind }) => panelKind === undefined),
  ];
  const blocks = new Map<string, { gap: Length; groups: string[] }>();
  for (const { group, gap } of rows) {
    if (inches(gap) <= 0 || inches(gap) > widestBlock) continue;
    const key = inches(gap).toFixed(6);
    const known = blocks.get(key);
    if (known === undefined) blocks.set(key, { gap, groups: [group] });
    else if (!known.groups.includes(group)) known.groups.push(group);
  }
  return [...blocks.values()].map(({ gap, groups }, i) => {
    const high = inches(gap) * mmPerInch;
    const words = `${paperGap(gap, division)} between ${listed(groups)}`;
    const inside = high > templateType * 1.6 && textWidth(words, templateType, false) < blockLength - 4;
    const textAt: Paper = inside
      ? [edge + blockLength / 2, edge + high / 2 + 1.1]
      : [edge, edge + high + templateType + 1];
    return {
      id: `${item.slug}-full-size-block-${i + 1}`,
      title: `Spacer block ${paperGap(gap, division)}`,
      how: "Plane scrap until it just covers the drawn block's height, and stand it between the pieces.",
      width: Math.max(blockLength, textWidth(words, templateType, false)) + 2 * edge,
      height: high + 2 * edge + (inside ? 0 : templateType + 2),
      marks: [
        { kind: "lines", line: "visible", chains: [closedChain(rectangle(edge, edge, blockLength, high))] },
        { kind: "text", at: textAt, text: words, size: templateType, anchor: inside ? "middle" : "start" },
      ],
    };
  });
}

const guideLength = 90;

/** One for every angle that a saw or a sliding bevel is set to. */
export function bevelTemplates(item: Item): Template[] {
  const angles = new Map<string, { degrees: number; of: string[] }>();
  const note = (degrees: number, of: string): void => {
    if (!isSlanted(degrees)) return;
    const key = formatDegrees(degrees);
    const known = angles.get(key);
    if (known === undefined) angles.set(key, { degrees: Math.abs(degrees), of: [of] });
    else if (!known.of.includes(of)) known.of.push(of);
  };
  for (const piece of item.pieces) {
    for (const { mitre, bevel } of piece.ends) {
      note(mitre, piece.mark);
      note(bevel, piece.mark);
    }
  }
  for (const panel of differentPanels(item)) {
    for (const { degrees, groups } of leansOf(panel, membersOf(item, panel.members))) note(degrees, listed(groups));
  }
  return [...angles.values()]
    .sort((a, b) => a.degrees - b.degrees)
    .map(({ degrees, of }) => {
      const turn = (degrees * Math.PI) / 180;
      const run = guideLength * Math.tan(turn);
      const sweep = Math.min(guideLength, 1e3);
      const far = Math.min(run, 150);
      const rise = run > 150 ? 150 / Math.tan(turn) : sweep;
      const words = `${formatDegrees(degrees)} off square: ${listed(of)}`;
      const foot = edge + rise;
      const start = edge + 10;
      const end = start + Math.max(far, 40) + 30;
      const arc = Array.from({ length: 13 }, (_, i): Paper => {
        const at = (turn * i) / 12;
        return [start + 30 * Math.sin(at), foot - 30 * Math.cos(at)];
      });
      return {
        id: `${item.slug}-full-size-angle-${idPart(formatDegrees(degrees))}`,
        title: `Bevel guide ${formatDegrees(degrees)}`,
        how: "Hold a sliding bevel's stock along the base line and set its blade to the slanted line; or prove the saw's first cut on it.",
        width: Math.max(end, edge + textWidth(words, templateType, true)) + edge,
        height: foot + templateType + 3 + edge,
        marks: [
          {
            kind: "lines",
            line: "visible",
            chains: [
              [
                [edge, foot],
                [end, foot],
              ],
              [
                [start, foot],
                [start + far, foot - rise],
              ],
            ],
          },
          {
            kind: "lines",
            line: "path",
            chains: [
              [
                [start, foot],
                [start, edge],
              ],
            ],
          },
          { kind: "lines", line: "dimension", chains: [arc] },
          {
            kind: "text",
            at: [edge, foot + templateType + 2],
            text: words,
            size: templateType,
            anchor: "start",
            strong: true,
          },
        ],
      };
    });
}

const stickHeight = 22;
const stickLine = 14;

/** From this many readings on a stick is quicker than a tape. */
const manyTicks = 4;

/** For each different panel all that a tape would be read for, up its side, along its foot, or both, where there is much to read. */
export function storySticks(item: Item, division: Division): Template[] {
  return differentPanels(item).flatMap((panel) => {
    const members = membersOf(item, panel.members);
    const tapes = panelTapes(panel, members);
    const called = panel.mirrored ? `${panel.kind}, mirrored` : panel.kind;
    const ways: readonly (readonly [Tape, "up" | "right", string, string])[] = [
      [tapes.up, "up", "up its side", "from the bottom"],
      [tapes.below, "right", "along its foot", "from the left"],
    ];
    return ways.flatMap(([tape, way, where, from]) =>
      tape.ticks.length < manyTicks
        ? []
        : [
            {
              ...stick(item, panel, tape, way, division),
              id: `${item.slug}-full-size-stick-${idPart(called)}-${way}`,
              title: `Story stick of the ${called}, ${where}`,
              how: `Stick it on a straight lath, hook it on the panel's edge, and mark ${from} without a tape.`,
            },
          ],
    );
  });
}

function stick(
  item: Item,
  panel: Panel,
  tape: Tape,
  way: "up" | "right",
  division: Division,
): Pick<Template, "width" | "height" | "marks"> {
  const length = (tape.end - tape.zero) * mmPerInch;
  const left = edge;
  const foot = edge + stickHeight;
  const at = (place: number): number => left + (place - tape.zero) * mmPerInch;
  const ticks = [
    ...tape.ticks.map(({ place, reads }) => ({ at: at(inches(place)), text: paperLength(reads, division) })),
    { at: left + length, text: paperLength(tape.end - tape.zero, division) },
  ];
  const rows = rowsFor(ticks);
  const wood = stretchesIn(item, panel, tape, way);
  return {
    width: length + 2 * edge + 14,
    height: stickHeight + 2 * edge,
    marks: [
      {
        kind: "lines",
        line: "visible",
        chains: [
          closedChain(rectangle(left, foot - stickLine, length, stickLine)),
          ...ticks.map(({ at: u }): Paper[] => [
            [u, foot],
            [u, foot - stickLine],
          ]),
        ],
      },
      {
        kind: "lines",
        line: "dimension",
        chains: wood.map(({ from, to }): Paper[] => [
          [at(from), foot],
          [at(to), foot - stickLine],
        ]),
      },
      ...ticks.map(
        ({ at: u, text }, i): Mark => ({
          kind: "text",
          at: [u, foot - stickLine - 1 - (rows[i] ?? 0) * 3.6],
          text,
          size: templateType,
          anchor: "middle",
        }),
      ),
      ...wood.flatMap(({ from, to, mark }): Mark[] => {
        const crossed = ticks.some(({ at: u }) => u > at(from) + 1 && u < at(to) - 1);
        const middle = at(from) + (at(to) - at(from)) * (crossed ? 0.75 : 0.5);
        if ((to - from) * mmPerInch < textWidth(mark, templateType, true) + 6) return [];
        return [
          { kind: "text", at: [middle, foot - 1.2], text: mark, size: templateType, anchor: "middle", strong: true },
        ];
      }),
    ],
  };
}

/** 0 or 1 for each label: the upper row where the lower one is taken. */
function rowsFor(ticks: readonly { readonly at: number; readonly text: string }[]): number[] {
  const ends = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  return ticks.map(({ at, text }) => {
    const half = textWidth(text, templateType, false) / 2;
    const row = ends.findIndex((end) => at - half > end + 1);
    const taken = row === -1 ? 1 : row;
    ends[taken] = at + half;
    return taken;
  });
}

/** Where wood crosses the stick: boards that don't run its whole length, each stretch once. */
function stretchesIn(
  item: Item,
  panel: Panel,
  tape: Tape,
  way: "up" | "right",
): readonly { readonly from: number; readonly to: number; readonly mark: string }[] {
  const found = new Map<string, { from: number; to: number; mark: string }>();
  for (const member of membersOf(item, panel.members)) {
    const [from, to] = reachIn(panel, member, way).map(inches) as [number, number];
    if (to - from > (tape.end - tape.zero) * 0.6 || from < tape.zero - 1e-6 || to > tape.end + 1e-6) continue;
    if (!tape.ticks.some(({ place }) => Math.abs(inches(place) - from) < 1e-6 || Math.abs(inches(place) - to) < 1e-6))
      continue;
    found.set(`${from.toFixed(4)} ${to.toFixed(4)}`, { from, to, mark: member.mark });
  }
  return [...found.values()];
}

// Evenly spaced rows of a panel -> the spacer block to cut, drawn in one of its gaps with its size.
import type { Item, Member, Panel } from "../item/item.ts";
import { inches, type Length } from "../units/length.ts";
import { collide } from "./collision.ts";
import type { Mark, Paper } from "./drawing.ts";
import { membersOf, reachIn, spacedRows } from "./panel-space.ts";
import { baseline, textWidth } from "./text-width.ts";

/** mm for an inch, and the paper places of the panel's left edge and foot. */
type Foot = { readonly scale: number; readonly left: number; readonly foot: number };
type Reach = readonly [number, number];

/** Where in the gap the block is tried, as parts of the gap's length. */
const tries = [0.25, 0.5, 0.75, 0.35, 0.65, 0.15, 0.85, 0.1, 0.9];

/** A gap that is too low for the type has no block drawn; its size stands in the notes. */
export function drawBlocks(
  item: Item,
  panel: Panel,
  placement: Foot,
  keepOff: readonly (readonly Paper[])[],
  say: (length: Length) => string,
  size: number,
): { readonly marks: Mark[]; readonly outlines: readonly (readonly Paper[])[] } {
  const marks: Mark[] = [];
  const outlines: (readonly Paper[])[] = [];
  for (const { group, gap } of spacedRows(item, panel)) {
    const pair = neighbours(
      membersOf(item, panel.members).filter((member) => member.group === group),
      panel,
    );
    if (pair === undefined) continue;
    const text = `block ${say(gap)}`;
    const { scale } = placement;
    const high = (pair.gap[1] - pair.gap[0]) * scale;
    const length = textWidth(text, size, false) + 3;
    if (high < size * 1.2 || length > (pair.along[1] - pair.along[0]) * scale) continue;
    const boxAt = (part: number): Paper[] => {
      const from = (pair.along[0] + (pair.along[1] - pair.along[0]) * part) * scale - length / 2;
      const start = Math.max(pair.along[0] * scale, Math.min(pair.along[1] * scale - length, from));
      const paper = (along: number, across: number): Paper =>
        pair.stacked
          ? [placement.left + along, placement.foot - across * scale]
          : [placement.left + across * scale, placement.foot - along];
      const [near, far] = pair.gap;
      return [paper(start, near), paper(start + length, near), paper(start + length, far), paper(start, far)];
    };
    const box = tries.map(boxAt).find((outline) => !keepOff.some((other) => collide(outline, other, 0.5)));
    if (box === undefined) continue;
    const centre: Paper = [0, 1].map((k) => box.reduce((sum, p) => sum + (p[k] as number), 0) / 4) as [number, number];
    const down = baseline(size);
    const at: Paper = pair.stacked ? [centre[0], centre[1] + down] : [centre[0] + down, centre[1]];
    outlines.push(box);
    marks.push(
      { kind: "region", tone: { kind: "figure" }, shade: 0, loops: [box] },
      { kind: "lines", line: "light", chains: [[...box, box[0] as Paper]] },
      { kind: "text", at, text, size, anchor: "middle", turn: pair.stacked ? 0 : 90 },
    );
  }
  return { marks, outlines };
}

type Neighbours = { readonly stacked: boolean; readonly gap: Reach; readonly along: Reach };

/** The first two of a row: the clear gap between them, and how far they both run along it (inches in the panel). */
function neighbours(row: readonly Member[], panel: Panel): Neighbours | undefined {
  for (const [heading, other, stacked] of [
    ["up", "right", true],
    ["right", "up", false],
  ] as const) {
    const [one, two] = [...row].sort((a, b) => reach(panel, a, heading)[0] - reach(panel, b, heading)[0]);
    if (one === undefined || two === undefined) return undefined;
    const gap: Reach = [reach(panel, one, heading)[1], reach(panel, two, heading)[0]];
    if (gap[1] - gap[0] < 1e-6) continue;
    const [a, b] = [reach(panel, one, other), reach(panel, two, other)];
    return { stacked, gap, along: [Math.max(a[0], b[0]), Math.min(a[1], b[1])] };
  }
  return undefined;
}

function reach(panel: Panel, member: Member, heading: "right" | "up"): Reach {
  const [from, to] = reachIn(panel, member, heading);
  return [inches(from), inches(to)];
}

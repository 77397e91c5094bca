// Leaning boards of a panel -> how far each kind is out of plumb: a plumb line at the foot, an arc, the degrees between.
import type { Vec2 } from "../geometry/shape.ts";
import type { Member, Panel } from "../item/item.ts";
import { collide } from "./collision.ts";
import type { Mark, Paper } from "./drawing.ts";
import { formatDegrees } from "./end-angle.ts";
import { cornersIn, leansIn, lengthIn } from "./panel-space.ts";
import { baseline, textBox, textWidth } from "./text-width.ts";

/** Groups of boards that lean alike, and how far out of plumb they are, degrees. */
export function leansOf(
  panel: Panel,
  members: readonly Member[],
): readonly { readonly degrees: number; readonly groups: readonly string[]; readonly first: Member }[] {
  const found: { degrees: number; groups: string[]; first: Member }[] = [];
  for (const member of members) {
    if (!leansIn(panel, member)) continue;
    const [x, y] = lengthIn(panel, member);
    const degrees = (Math.atan2(Math.abs(x), y) * 180) / Math.PI;
    const known = found.find((lean) => Math.abs(lean.degrees - degrees) < 0.05);
    if (known === undefined) found.push({ degrees, groups: [member.group], first: member });
    else if (!known.groups.includes(member.group)) known.groups.push(member.group);
  }
  return found;
}

/** `paper` turns the panel's own places into places on the sheet; labels keep off the outlines given. */
export function drawLeans(
  panel: Panel,
  members: readonly Member[],
  paper: (place: Vec2) => Paper,
  keepOff: readonly (readonly Paper[])[],
  size: number,
): { readonly marks: Mark[]; readonly outlines: readonly (readonly Paper[])[] } {
  const marks: Mark[] = [];
  const outlines: (readonly Paper[])[] = [];
  for (const { degrees, first } of leansOf(panel, members)) {
    const corners = cornersIn(panel, first);
    const low = Math.min(...corners.map((corner) => corner[1]));
    const feet = corners.filter((corner) => corner[1] < low + 1e-6).map((corner) => corner[0]);
    const toRight = lengthIn(panel, first)[0] > 0;
    const foot = paper([toRight ? Math.min(...feet) : Math.max(...feet), low]);
    const top = paper([0, Math.max(...corners.map((corner) => corner[1]))])[1];
    const text = formatDegrees(degrees);
    const side = toRight ? 1 : -1;
    const tangent = Math.tan((degrees * Math.PI) / 180);
    // The wedge between plumb and board is wide enough for the label from here up.
    const rise = Math.max(4, (textWidth(text, size, false) + 2) / tangent);
    for (let up = rise; foot[1] - up - size > top; up += 2) {
      const at: Paper = [foot[0] + side, foot[1] - up + baseline(size) - size / 2];
      const mark = { kind: "text", at, text, size, anchor: toRight ? "start" : "end" } as const;
      const box = textBox(mark);
      if (keepOff.some((other) => collide(box, other, 0.3))) continue;
      const radius = rise * 0.75;
      const arc = Array.from({ length: 9 }, (_, i): Paper => {
        const angle = (degrees * Math.PI * i) / 180 / 8;
        return [foot[0] + side * radius * Math.sin(angle), foot[1] - radius * Math.cos(angle)];
      });
      const plumb: Paper[] = [foot, [foot[0], foot[1] - up - size]];
      marks.push(
        { kind: "lines", line: "path", chains: [plumb] },
        { kind: "lines", line: "dimension", chains: [arc] },
        mark,
      );
      outlines.push(box, plumb);
      break;
    }
  }
  return { marks, outlines };
}

// Lines of words under a picture -> text set in rows as wide as the sheet allows, signs of a legend before their rows.
import type { Mark } from "./drawing.ts";
import { drawSign, type Sign } from "./fastener-marks.ts";
import { capHeight, wrapText } from "./text-width.ts";

export type Note = { readonly text: string; readonly sign?: Sign };

/** Room before the text of a row that has a sign, mm. */
const indent = 9;

export function drawNotes(
  notes: readonly Note[],
  room: { readonly left: number; readonly top: number; readonly width: number },
  size: number,
): { readonly marks: Mark[]; readonly bottom: number } {
  const marks: Mark[] = [];
  const row = size * 1.45;
  let foot = room.top;
  for (const { text, sign } of notes) {
    const left = room.left + (sign === undefined ? 0 : indent);
    const lines = wrapText(text, size, room.width - (sign === undefined ? 0 : indent));
    if (sign !== undefined) {
      const v = foot + row - (size * capHeight) / 2;
      const head = sign === "bar" ? room.left + 1 : room.left + 4;
      marks.push(...drawSign(sign, [head, v], [room.left + 7, v]).marks);
    }
    for (const line of lines) {
      foot += row;
      marks.push({ kind: "text", at: [left, foot], text: line, size, anchor: "start" });
    }
  }
  return { marks, bottom: foot + size * 0.3 };
}

// Steps and gaps of a sheet -> how its numbers are to be read: where number 1 lies, which marks they have, what full and scant mean.
import { faceOnView } from "../drawing/panel-space.ts";
import type { Vec3 } from "../geometry/shape.ts";
import { add, dot, subtract, times } from "../geometry/vector.ts";
import type { View } from "../geometry/view.ts";
import { vecOf } from "../item/frame.ts";
import type { Item, Member, WorkedSection } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { setFractions } from "./edition.ts";

const front: View = { right: [1, 0, 0], up: [0, 0, 1], toViewer: [0, -1, 0] };

/** More of one name than these are told by their marks in the pictures alone. */
const mostMarked = 8;

/** `texts` are all that the sheet prints of gaps and figures. */
export function readingNotes(item: Item, texts: string, division: Division): string[] {
  const numbered = item.sections.flatMap((section) => numberedIn(item, section));
  const orders = [...new Set(numbered.map(({ rows, view }) => orderWords(rows, view)))].filter((text) => text !== "");
  const marks = [...new Set(numbered.map(({ rows }) => markWords(rows)))].filter((text) => text !== "");
  const rounded = /\d (?:full|scant)\b/.test(texts);
  return [
    ...(orders.length === 0 ? [] : [`Numbers count in order: ${orders.join("; ")}.`]),
    ...(marks.length === 0 ? [] : [`By mark: ${marks.join("; ")}.`]),
    ...(rounded ? [fullAndScant(division)] : []),
  ];
}

const fullAndScant = (division: Division): string => {
  const half = division.unit === "in" ? setFractions(`1/${division.per * 2} in`) : "half a millimetre";
  return `“Full” is a little more than the size that stands before it, “scant” a little less: both less than ${half}.`;
};

type Numbered = { readonly rows: readonly Member[]; readonly view: View };

/** Lines that a section's steps call by number, each once, as they stand in the panel it makes or in the item. */
function numberedIn(item: Item, { makes, steps }: WorkedSection): Numbered[] {
  const said = steps.flatMap(({ text, checks }) => [text, ...checks].map(({ markdown }) => markdown)).join(" ");
  const panel = item.panels.find(({ name }) => name === makes?.panels[0]);
  const near = panel ? item.members.filter((member) => member.panel === panel.name) : item.members;
  return [...new Set(near.map(({ group }) => group))]
    .filter((group) => new RegExp(`(?<![\\w-])${group} \\d`).test(said))
    .map((group) => near.filter((member) => member.group === group && (panel || member.panel === undefined)))
    .filter((rows) => rows.length > 1)
    .map((rows) => ({
      rows: [...rows].sort((a, b) => a.number - b.number),
      view: panel ? faceOnView(panel) : front,
    }));
}

const middleOf = ({ min, max }: Member): Vec3 => times(add(vecOf(min), vecOf(max)), 0.5);

const places = [
  ["right", "left", "right"],
  ["up", "lowest", "highest"],
  ["toViewer", "back", "front"],
] as const;

/** "rails 1 is the lowest"; of several rows "boards 1 is the front one of the lowest". */
function orderWords(rows: readonly Member[], view: View): string {
  const [first, second, last] = [rows[0], rows[1], rows.at(-1)];
  if (!first || !second || !last) return "";
  const [own, whole] = [second, last].map((other) => placeWord(subtract(middleOf(other), middleOf(first)), view));
  const of = own === whole || own === undefined ? "" : ` of the ${whole}`;
  return own === undefined ? "" : `${first.group} 1 is the ${own}${/st$/.test(own) ? "" : " one"}${of}`;
}

function placeWord(step: Vec3, view: View): string | undefined {
  const ways = places.map(([way, low, high]) => ({ by: dot(step, view[way]), low, high }));
  const [most] = ways.sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
  return most === undefined || Math.abs(most.by) < 1e-6 ? undefined : most.by > 0 ? most.low : most.high;
}

/** "planks 1 D, 2 E, 3 D": only where they differ. */
function markWords(rows: readonly Member[]): string {
  const [first] = rows;
  if (!first || rows.length > mostMarked || new Set(rows.map(({ mark }) => mark)).size < 2) return "";
  return `${first.group} ${rows.map(({ number, mark }) => `${number} ${mark}`).join(", ")}`;
}

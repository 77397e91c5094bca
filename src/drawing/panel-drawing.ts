// A panel -> its drawing as it lies on the bench, good side up: running sizes from two edges, diagonals, spacer block, fasteners.
import type { Driven, Heading, Item, Member, Panel } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { isRounded } from "../units/format-length.ts";
import { compareLengths, inches, type Length } from "../units/length.ts";
import { drawDimension } from "./dimensions.ts";
import type { Drawing, Paper, Tone } from "./drawing.ts";
import { drawSign, legendRows, signOf } from "./fastener-marks.ts";
import { drawNotes, type Note } from "./notes.ts";
import { faceOnView, membersOf, reachIn, rightOf, spacedRows } from "./panel-space.ts";
import { idPart, listed, paperLength, timesWords, unitWords } from "./paper-text.ts";
import { drawLines, drawRegions, inPlace, type Placement, spotOnPaper, takePicture } from "./picture.ts";
import { placeInRegions } from "./region-labels.ts";
import { drawTape, type Tick, tapeDepth, tapeRows } from "./running-dimensions.ts";
import { findRatio, formatRatio, scaleOf } from "./scale.ts";
import { binderSheet, flatPen, type Sheet } from "./sheet.ts";
import { drawBlocks } from "./spacer-block.ts";

/** From the outline to the overall sizes' dimension lines, mm. */
const overallOff = 7;
const edge = 2;

/** Every different place along a heading where a member's edge or end lies, the panel's own two edges left out. */
function runningPlaces(panel: Panel, members: readonly Member[], heading: Heading, whole: Length): readonly Length[] {
  const places = members.flatMap((member) => reachIn(panel, member, heading));
  return places
    .filter((place) => inches(place) > 1e-9 && inches(place) < inches(whole) - 1e-9)
    .sort(compareLengths)
    .filter((place, i, all) => i === 0 || compareLengths(place, all[i - 1] as Length) !== 0);
}

export function drawPanel(item: Item, panel: Panel, division: Division, sheet: Sheet = binderSheet): Drawing {
  const members = membersOf(item, panel.members);
  const own = new Set(panel.members);
  const view = faceOnView(panel);
  const picture = takePicture(members.map(inPlace), view);
  const say = (length: Length): string => paperLength(length, division);
  const across = runningPlaces(panel, members, rightOf(panel), panel.width);
  const up = runningPlaces(panel, members, panel.up, panel.height);
  const driven = item.joins.flatMap((join) => join.driven).filter((one) => own.has(one.a));

  const rowsUp = tapeRows(up.length, sheet.height * 0.6, sheet.type);
  const rowsAcross = tapeRows(across.length, sheet.width - 2 * edge, sheet.type);
  const left = edge + tapeDepth(up.map(say), sheet.type, rowsUp);
  const below = tapeDepth(across.map(say), sheet.type, rowsAcross);
  const above = edge + sheet.type + 1 + overallOff;
  const words = panelNotes(item, panel, driven, division);
  const noteRoom = { left: edge, width: sheet.width - 2 * edge };
  const noteHeight = drawNotes(words, { ...noteRoom, top: 0 }, sheet.type).bottom + 3 + edge;
  const room = { width: sheet.width - left - above, height: sheet.height - above - below - noteHeight };
  const ratio = findRatio(inches(panel.width), inches(panel.height), room);
  const scale = scaleOf(ratio);
  const [width, height] = [inches(panel.width) * scale, inches(panel.height) * scale];
  // A narrow panel stands in the middle of its sheet.
  const start = left + (room.width - width) / 2;
  const placement: Placement = { scale, left: start, top: above };
  const foot = above + height;

  const upTicks = up.map((place): Tick => ({ at: foot - inches(place) * scale, text: say(place) })).reverse();
  const acrossTicks = across.map((place): Tick => ({ at: start + inches(place) * scale, text: say(place) }));
  const corners: Paper[] = [
    [start, above],
    [start + width, above],
    [start + width, foot],
    [start, foot],
  ];
  const [upperLeft, upperRight, lowerRight, lowerLeft] = corners as [Paper, Paper, Paper, Paper];
  const diagonals: Paper[][] = [
    [upperLeft, lowerRight],
    [lowerLeft, upperRight],
  ];
  const signs = driven.map((one) =>
    drawSign(signOf(one, view), spotOnPaper(picture, placement, one.head), spotOnPaper(picture, placement, one.tip)),
  );
  const blocks = drawBlocks(item, panel, { ...placement, foot }, diagonals, say, sheet.type);
  const marks = placeInRegions(
    picture,
    placement,
    members.map((member) => member.mark),
    sheet.type,
    [...diagonals, ...signs.map((sign) => sign.outline), ...blocks.outlines],
  );
  const notes = drawNotes(words, { ...noteRoom, top: foot + below + 3 }, sheet.type);
  const wood = (_: Member, endGrain: boolean): Tone => ({ kind: endGrain ? "end grain" : "wood" });
  return {
    id: `${item.slug}-${idPart(panel.kind)}-panel-${panel.mirrored ? "mirrored-" : ""}${sheet.name}`,
    title: `${item.title}: panel ${panel.kind} as it lies on the bench`,
    description: describePanel(item, panel, members, across, up, division, formatRatio(ratio)),
    width: sheet.width,
    height: notes.bottom + edge,
    scale,
    pen: flatPen(sheet),
    marks: [
      ...drawRegions(picture, placement, () => 0, wood),
      ...drawLines(picture, placement, () => "visible", ["visible"]),
      ...blocks.marks,
      { kind: "lines", line: "path", chains: diagonals },
      ...signs.flatMap((sign) => sign.marks),
      ...marks,
      ...drawTape(upTicks, "left", { edge: start, low: edge, high: foot + sheet.type, rows: rowsUp }, sheet.type),
      ...drawTape(
        acrossTicks,
        "below",
        { edge: foot, low: edge, high: sheet.width - edge, rows: rowsAcross },
        sheet.type,
      ),
      ...drawDimension(upperLeft, upperRight, [0, -1], overallOff, say(panel.width), sheet.type),
      ...drawDimension(lowerRight, upperRight, [1, 0], overallOff, say(panel.height), sheet.type),
      ...notes.marks,
    ],
  };
}

function panelNotes(item: Item, panel: Panel, driven: readonly Driven[], division: Division): readonly Note[] {
  const diagonal = Math.hypot(inches(panel.width), inches(panel.height));
  const gaps = spacedRows(item, panel).map(({ group, gap }): Note => {
    const rounded = isRounded(gap, division) ? " (rounded: the sizes along the edge are what counts)" : "";
    return { text: `Spacer block between ${group}: ${paperLength(gap, division)}${rounded}` };
  });
  return [
    { text: `Good side up. Sizes in ${unitWords(division)}, running from the left and from the bottom.` },
    { text: `Corner to corner, both ways: ${paperLength(diagonal, division)}` },
    ...gaps,
    ...legendRows(driven, faceOnView(panel), new Set(panel.members)),
  ];
}

function describePanel(
  item: Item,
  panel: Panel,
  members: readonly Member[],
  across: readonly Length[],
  up: readonly Length[],
  division: Division,
  ratio: string,
): string {
  const say = (length: Length): string => paperLength(length, division);
  const groups = [...new Set(members.map((member) => member.group))].map((group) => {
    const all = members.filter((member) => member.group === group);
    return `${all.length} ${group} (${[...new Set(all.map((member) => `mark ${member.mark}`))].join(", ")})`;
  });
  const row = (places: readonly Length[], from: string): string =>
    places.length === 0 ? "" : ` From the ${from}: ${listed(places.map(say))}.`;
  const diagonal = say(Math.hypot(inches(panel.width), inches(panel.height)));
  const times = item.panels.filter((other) => other.kind === panel.kind && other.mirrored === panel.mirrored).length;
  return `Panel ${panel.kind}, made ${timesWords(times)}, ${say(panel.width)} wide and ${say(panel.height)} high in ${unitWords(division)}, at ${ratio}: ${listed(groups)}.${row(across, "left")}${row(up, "bottom")} Corner to corner ${diagonal} both ways.`;
}

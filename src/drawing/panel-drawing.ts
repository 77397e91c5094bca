// A panel -> its drawing as it lies on the bench, good side up: running sizes from two edges, diagonals, spacer block, fasteners.
import type { Vec2 } from "../geometry/shape.ts";
import type { Driven, Item, Member, Panel, PlacedFitting } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { isRounded } from "../units/format-length.ts";
import { inches, type Length } from "../units/length.ts";
import { drawDimension } from "./dimensions.ts";
import type { Drawing, Mark, Paper, Tone } from "./drawing.ts";
import { formatDegrees } from "./end-angle.ts";
import { fittingExtras, fittingSeats, lineOf, spoken } from "./extras.ts";
import { drawSign, legendRows, signOf } from "./fastener-marks.ts";
import { drawHiddenEdges } from "./hidden-edges.ts";
import { drawLeans, leansOf } from "./lean-angle.ts";
import { drawNotes, type Note } from "./notes.ts";
import { faceOnView, membersOf, spacedRows } from "./panel-space.ts";
import { type PanelTapes, panelTapes, type Tape } from "./panel-tapes.ts";
import { drawPanes } from "./panes.ts";
import { idPart, listed, paperGap, paperLength, sentence, timesWords, unitWords } from "./paper-text.ts";
import {
  type Body,
  drawLines,
  drawRegions,
  inPlace,
  type Picture,
  type Placement,
  spotOnPaper,
  takePicture,
} from "./picture.ts";
import { placeInRegions } from "./region-labels.ts";
import { drawTape, type Tick, tapeDepth, tapeRows } from "./running-dimensions.ts";
import { findRatio, formatRatio, scaleOf } from "./scale.ts";
import { binderSheet, flatPen, type Sheet } from "./sheet.ts";
import { drawBlocks } from "./spacer-block.ts";

/** From the outline to the overall sizes' dimension lines, mm. */
const overallOff = 7;
const edge = 2;

export function drawPanel(item: Item, panel: Panel, division: Division, sheet: Sheet = binderSheet): Drawing {
  const members = membersOf(item, panel.members);
  const own = new Set(panel.members);
  const view = faceOnView(panel);
  const fittings = fittingsOn(item, panel);
  const picture = takePicture(
    members.map(inPlace),
    view,
    fittings.flatMap((fitting) => fittingExtras(fitting)),
  );
  const say = (length: Length): string => paperLength(length, division);
  const { up, below: across, above: top, corners: ends, hooked } = panelTapes(panel, members);
  const texts = (tape: Tape): readonly string[] => tape.ticks.map(({ reads }) => say(reads));
  const driven = item.joins.flatMap((join) => join.driven).filter((one) => own.has(one.a));

  const rowsUp = tapeRows(up.ticks.length, sheet.height * 0.6, sheet.type);
  const rowsAcross = tapeRows(across.ticks.length, sheet.width - 2 * edge, sheet.type);
  const left = edge + tapeDepth(texts(up), sheet.type, rowsUp);
  const acrossDepth = tapeDepth(texts(across), sheet.type, rowsAcross);
  // Where boards lean, foot to foot stands under the tape along the foot, and the top has a tape of its own.
  const footOff = acrossDepth + sheet.type + 2;
  const below = top === undefined ? acrossDepth : footOff + 3;
  const topTape = top === undefined || top.ticks.length === 0 ? 0 : tapeDepth(texts(top), sheet.type, 1);
  const topOff = Math.max(overallOff, topTape + sheet.type + 2);
  const beside = edge + sheet.type + 1 + overallOff;
  const above = edge + sheet.type + 1 + topOff;
  const under = mostlyHidden(picture);
  const words = panelNotes(item, panel, driven, under, division);
  const noteRoom = { left: edge, width: sheet.width - 2 * edge };
  const noteHeight = drawNotes(words, { ...noteRoom, top: 0 }, sheet.type).bottom + 3 + edge;
  const room = { width: sheet.width - left - beside, height: sheet.height - above - below - noteHeight };
  const ratio = findRatio(inches(panel.width), inches(panel.height), room);
  const scale = scaleOf(ratio);
  const [width, height] = [inches(panel.width) * scale, inches(panel.height) * scale];
  // A narrow panel stands in the middle of its sheet.
  const start = left + (room.width - width) / 2;
  const placement: Placement = { scale, left: start, top: above };
  const foot = above + height;

  const at = ([x, y]: Vec2): Paper => [start + x * scale, foot - y * scale];
  const upTicks = up.ticks
    .map(({ place, reads }): Tick => ({ at: foot - inches(place) * scale, text: say(reads) }))
    .reverse();
  const ticksAcross = (tape: Tape): Tick[] =>
    tape.ticks.map(({ place, reads }) => ({ at: start + inches(place) * scale, text: say(reads) }));
  const [lowerLeft, lowerRight, upperRight, upperLeft] = ends.map(at) as [Paper, Paper, Paper, Paper];
  const [footRight, topRight] = [at([inches(panel.width), 0]), at([inches(panel.width), inches(panel.height)])];
  const diagonals: Paper[][] = hooked
    ? [
        [upperLeft, lowerRight],
        [lowerLeft, upperRight],
      ]
    : [];
  const signs = driven.map((one) =>
    drawSign(signOf(one, view), spotOnPaper(picture, placement, one.head), spotOnPaper(picture, placement, one.tip)),
  );
  const blocks = drawBlocks(
    item,
    panel,
    { ...placement, foot },
    diagonals,
    (gap) => paperGap(gap, division),
    sheet.type,
  );
  const wood = [...drawLines(picture, placement, () => "visible", ["visible"])];
  const dashed = drawHiddenEdges({ ...picture, bodies: under }, placement);
  const panes = drawPanes(picture, placement, "light");
  const borders = segmentsOf(wood);
  const keepOff = [...diagonals, ...signs.map((sign) => sign.outline), ...blocks.outlines];
  const leans = drawLeans(panel, members, at, [...borders, ...keepOff], sheet.type);
  const marks = placeInRegions(
    picture,
    placement,
    members.map((member) => member.mark),
    sheet.type,
    [...keepOff, ...leans.outlines, ...segmentsOf([...panes, ...dashed])],
  );
  const notes = drawNotes(words, { ...noteRoom, top: foot + below + 3 }, sheet.type);
  const tone = (_: Member, endGrain: boolean): Tone => ({ kind: endGrain ? "end grain" : "wood" });
  return {
    id: `${item.slug}-${idPart(panel.kind)}-panel-${panel.mirrored ? "mirrored-" : ""}${sheet.name}`,
    title: `${item.title}: panel ${panel.kind} as it lies on the bench`,
    description: describePanel(item, panel, members, division, formatRatio(ratio), words.slice(1)),
    width: sheet.width,
    height: notes.bottom + edge,
    scale,
    pen: flatPen(sheet),
    marks: [
      ...drawRegions(picture, placement, () => 0, tone),
      ...wood,
      ...dashed,
      ...panes,
      ...leans.marks,
      ...blocks.marks,
      { kind: "lines", line: "path", chains: diagonals },
      ...signs.flatMap((sign) => sign.marks),
      ...marks,
      ...drawTape(upTicks, "left", { edge: start, low: edge, high: foot + sheet.type, rows: rowsUp }, sheet.type),
      ...drawTape(
        ticksAcross(across),
        "below",
        { edge: foot, low: edge, high: sheet.width - edge, rows: rowsAcross },
        sheet.type,
      ),
      ...(top === undefined
        ? []
        : [
            ...drawTape(
              ticksAcross(top),
              "above",
              { edge: above, low: edge, high: sheet.width - edge, rows: 1 },
              sheet.type,
            ),
            ...drawDimension(lowerLeft, lowerRight, [0, 1], footOff, say(across.end - across.zero), sheet.type),
          ]),
      ...drawDimension(
        upperLeft,
        upperRight,
        [0, -1],
        topOff,
        say(top === undefined ? panel.width : top.end - top.zero),
        sheet.type,
      ),
      ...drawDimension(footRight, topRight, [1, 0], overallOff, say(panel.height), sheet.type),
      ...notes.marks,
    ],
  };
}

const segmentsOf = (marks: readonly Mark[]): readonly (readonly Paper[])[] =>
  marks.flatMap((mark) =>
    mark.kind === "lines" ? mark.chains.flatMap((chain) => chain.slice(1).map((to, i) => [chain[i] as Paper, to])) : [],
  );

/** What lies on this panel's boards and on no other. */
function fittingsOn(item: Item, panel: Panel): readonly PlacedFitting[] {
  const own = new Set(panel.members);
  return item.fittings.filter((fitting) => {
    const seats = fittingSeats([fitting], item.members);
    return seats.length > 0 && seats.every(({ a }) => own.has(a));
  });
}

/** "On it: pane." */
const fittingWords = (item: Item, panel: Panel): readonly string[] => {
  const names = [...new Set(fittingsOn(item, panel).map((fitting) => spoken(lineOf(fitting))))];
  return names.length === 0 ? [] : [`On it: ${listed(names)}.`];
};

const seenArea = ({ scene }: Picture, owner: number): number =>
  scene.regions.filter((region) => region.owner === owner).reduce((sum, { area }) => sum + area, 0);

/** Boards of which the others leave less than half to be seen: their edges are dashed, and words say what they are. */
const mostlyHidden = (picture: Picture): readonly Body[] =>
  picture.bodies.filter((body, i) => {
    const alone = takePicture([body], picture.view);
    return seenArea(picture, i) < seenArea(alone, 0) / 2;
  });

/** "Dashed, under the others: 2 of B." */
function hiddenWords(under: readonly Body[]): readonly string[] {
  const marks = [...new Set(under.map(({ member }) => member.mark))].sort();
  const count = (mark: string): number => under.filter(({ member }) => member.mark === mark).length;
  return marks.length === 0
    ? []
    : [`Dashed, under the others: ${listed(marks.map((mark) => `${count(mark)} of ${mark}`))}.`];
}

function panelNotes(
  item: Item,
  panel: Panel,
  driven: readonly Driven[],
  under: readonly Body[],
  division: Division,
): readonly Note[] {
  const members = membersOf(item, panel.members);
  const tapes = panelTapes(panel, members);
  const { above } = tapes;
  const leans = leanWords(panel, members);
  const gaps = spacedRows(item, panel).map(({ group, gap }): Note => {
    const rounded = isRounded(gap, division) ? " (rounded: the sizes along the edge are what counts)" : "";
    return { text: `Spacer block between ${group}: ${paperGap(gap, division)}${rounded}` };
  });
  return [
    {
      text: `Good side up. Sizes in ${unitWords(division)}, running from the left${above === undefined ? "" : " end of each edge"} and from the bottom.`,
    },
    ...(leans === "" ? [] : [{ text: leans.trim() }]),
    ...diagonalWords(tapes, (length) => paperLength(length, division)).map((text): Note => ({ text })),
    ...gaps,
    ...[...hiddenWords(under), ...fittingWords(item, panel)].map((text): Note => ({ text })),
    ...legendRows(driven, faceOnView(panel), new Set(panel.members)),
  ];
}

/** " legs 12° out of plumb." for every kind that leans. */
const leanWords = (panel: Panel, members: readonly Member[]): string =>
  leansOf(panel, members)
    .map(({ groups, degrees }) => ` Out of plumb: ${listed(groups)} ${formatDegrees(degrees)}.`)
    .join("");

/** What a tape reads from corner to corner; nothing where it finds no board to hook on. */
function diagonalWords({ corners: [a, b, c, d], hooked }: PanelTapes, say: (length: Length) => string): string[] {
  if (!hooked) return [];
  const [rising, falling] = [Math.hypot(c[0] - a[0], c[1] - a[1]), Math.hypot(d[0] - b[0], d[1] - b[1])];
  return Math.abs(rising - falling) < 1e-6
    ? [`Corner to corner, both ways: ${say(rising)}`]
    : [`Corner to corner: ${say(rising)} from the lower left, ${say(falling)} from the lower right`];
}

function describePanel(
  item: Item,
  panel: Panel,
  members: readonly Member[],
  division: Division,
  ratio: string,
  notes: readonly Note[],
): string {
  const { up, below, above } = panelTapes(panel, members);
  const say = (length: Length): string => paperLength(length, division);
  const groups = [...new Set(members.map((member) => member.group))].map((group) => {
    const all = members.filter((member) => member.group === group);
    return `${all.length} ${group} (${[...new Set(all.map((member) => `mark ${member.mark}`))].join(", ")})`;
  });
  const row = ({ ticks }: Tape, from: string): string =>
    ticks.length === 0 ? "" : ` From the ${from}: ${listed(ticks.map(({ reads }) => say(reads)))}.`;
  const foot =
    above === undefined
      ? ""
      : `, ${say(below.end - below.zero)} from foot to foot, ${say(above.end - above.zero)} along the top`;
  const times = item.panels.filter((other) => other.kind === panel.kind && other.mirrored === panel.mirrored).length;
  const more = notes.map(({ text }) => ` ${sentence(text)}`).join("");
  return `Panel ${panel.kind}, made ${timesWords(times)}, ${say(panel.width)} wide and ${say(panel.height)} high${foot} in ${unitWords(division)}, at ${ratio}, good side up: ${listed(groups)}.${row(below, above === undefined ? "left" : "left foot")}${above === undefined ? "" : row(above, "left of the top")}${row(up, "bottom")}${more}`;
}

// One step -> its picture: what is there in light line, what is added in strong line and tint, the way in, the screws.
import type { Vec3 } from "../geometry/shape.ts";
import { add, dot, length, times } from "../geometry/vector.ts";
import { type View, viewFrom } from "../geometry/view.ts";
import type { Item, Member, Panel, WorkedSection, WorkedStep } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { balloonRadius, columnsBeside, drawBalloons } from "./balloons.ts";
import { dotSpots } from "./dot-spots.ts";
import type { Drawing, LineKind, Tone } from "./drawing.ts";
import { type Extra, spoken } from "./extras.ts";
import { drawNotes } from "./notes.ts";
import { faceOnView, membersOf } from "./panel-space.ts";
import { drawPanes } from "./panes.ts";
import { listed } from "./paper-text.ts";
import {
  drawLines,
  drawRegions,
  type Picture,
  type Placement,
  pictureSize,
  type Shading,
  standingLight,
  takePicture,
} from "./picture.ts";
import { drawRopeWays } from "./rope-ways.ts";
import { fitScale } from "./scale.ts";
import { drawSeatPaths, endSeats } from "./seat-paths.ts";
import { type Sheet, stepSheet } from "./sheet.ts";
import { standingViews } from "./standing-view.ts";
import { drawScrews, drawWaysIn, seenWay } from "./step-arrows.ts";
import { type StepExtras, stepExtras } from "./step-extras.ts";
import { seenExtra, seenParts, seenShare } from "./visibility.ts";
import { type Entry, findEntries } from "./way-in.ts";

/** A way of looking at a step; `words` go under the picture where they are not the usual ones. */
type Look = {
  readonly view: View;
  readonly shading: Shading;
  readonly words: string;
  /** Only on the bench: what looks up there. */
  readonly up?: Vec3;
};

type Scene = {
  readonly look: Look;
  readonly picture: Picture;
  /** What its boards do, and what else it puts on. */
  readonly entries: readonly Entry[];
  readonly extras: StepExtras;
};

/** Of the added members of each piece together this much is seen, or the view turns. */
const seenEnough = 0.3;
/** Of the thing's longest way through this much is seen of the way of what goes in, so that its arrow can be drawn. */
const wayEnough = 0.05;
/** Where that doesn't come out, it stands farther off: parts of the usual distance. */
const reaches = [1, 1.6, 2.4];
/** Of the middle size of the thing: how wide seats are opened of what is put together all at once. */
const openedPart = 0.18;
const edge = 2;
/** A picture that is this much higher than wide gets so much more height. */
const tall = 1.3;
const tallRoom = 1.3;

/** Without screws: whether boards of later lines lie on the back of those before them. */
function laterLiesBehind(item: Item, panel: Panel, through: Vec3): boolean {
  const rank = new Map(panel.members.map((id, i) => [id, i]));
  const sum = item.contacts.reduce((total, { a, b, normal }) => {
    const [first, second] = [rank.get(a), rank.get(b)];
    if (first === undefined || second === undefined) return total;
    return total + dot(normal, through) * (first < second ? 1 : -1);
  }, 0);
  return sum > 1e-6;
}

/** On the bench: the side that screws go into looks up, the maker stands at the panel's bottom, a little to its right. */
function benchLook(item: Item, panel: Panel): Look & { readonly up: Vec3 } {
  const own = new Set(panel.members);
  const face = faceOnView(panel);
  const through = times(face.toViewer, -1);
  const into = item.joins
    .filter((join) => own.has(join.a) && own.has(join.b))
    .flatMap((join) => join.driven)
    .reduce((sum, driven) => sum + dot(driven.way, through), 0);
  const backUp = Math.abs(into) > 1e-6 ? into < 0 : laterLiesBehind(item, panel, through);
  const [right, away, up] = [times(face.right, backUp ? -1 : 1), face.up, times(through, backUp ? 1 : -1)];
  const flat = viewFrom([0.16, -0.6, 0.9]);
  const inSpace = ([x, y, z]: Vec3): Vec3 => add(add(times(right, x), times(away, y)), times(up, z));
  return {
    view: { toViewer: inSpace(flat.toViewer), right: inSpace(flat.right), up: inSpace(flat.up) },
    shading: (normal) => standingLight([dot(normal, right), dot(normal, away), dot(normal, up)]),
    words: backUp ? "Good side down." : "Good side up.",
    up,
  };
}

const itemLooks: readonly Look[] = standingViews.map(({ words, view }, i) => ({
  view,
  shading: standingLight,
  words: i === 0 ? "" : `Turned: seen from ${words}.`,
}));

const itemWays: readonly Vec3[] = [
  [0, 0, 1],
  [0, -1, 0],
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, 0, -1],
];

export function findScene(item: Item, section: WorkedSection, step: WorkedStep): Scene {
  const [added, there] = [membersOf(item, step.shown), membersOf(item, step.there)];
  const panel = item.panels.find((one) => one.name === section.makes?.panels[0]);
  const bench = panel === undefined ? undefined : benchLook(item, panel);
  const sizes = (panel === undefined ? Object.values(item.overall) : [panel.width, panel.height]).map(inches);
  const ways = bench === undefined ? itemWays : [bench.up, ...itemWays];
  const apart = ([...sizes].sort((a, b) => a - b)[sizes.length - 2] as number) * openedPart;
  const stages = reaches.map((part) => {
    const distance = Math.min(...sizes) * (bench === undefined ? 0.45 : 0.25) * part;
    const entries = findEntries(added, there, item.contacts, ways, { distance, apart });
    const by = new Map(entries.flatMap((entry) => [...entry.by]));
    const bodies = [...there, ...added].map((member) => ({ member, by: by.get(member.id) ?? ([0, 0, 0] as Vec3) }));
    return { entries, bodies, extras: stepExtras(item, step, bodies, distance * 0.7) };
  });
  const most = Math.hypot(...sizes);
  let best: { readonly scene: Scene; readonly seen: number } | undefined;
  for (const look of bench === undefined ? itemLooks : [bench]) {
    const arrows = stages.map(({ entries, bodies, extras }) =>
      Math.min(
        1,
        ...[...entries, ...extras.entries].map((entry) => seenWay(entry, bodies, look.view) / (most * wayEnough)),
      ),
    );
    const stage = stages[arrows.indexOf(Math.max(...arrows))] as (typeof stages)[number];
    const { entries, bodies, extras } = stage;
    const picture = takePicture(bodies, look.view, extras.all);
    const share = Math.min(leastSeen(picture, new Set(step.shown)), ...fittingsSeen(picture, extras)) / seenEnough;
    const seen = Math.min(1, share, ...arrows.filter((_, i) => stages[i] === stage));
    const scene = { look, picture, entries, extras };
    if (seen >= 1) return scene;
    if (best === undefined || seen > best.seen + 0.1) best = { scene, seen };
  }
  if (best === undefined) throw new Error(`step ${step.number} has no view`);
  return best.scene;
}

/** Of the added members of each piece together, how much is seen, by mark. */
function sharesSeen(picture: Picture, added: ReadonlySet<string>): ReadonlyMap<string, number> {
  const parts = seenParts(picture);
  const byMark = new Map<string, { readonly seen: number; readonly whole: number }[]>();
  picture.bodies.forEach(({ member }, i) => {
    if (!added.has(member.id)) return;
    byMark.set(member.mark, [...(byMark.get(member.mark) ?? []), parts[i] as (typeof parts)[number]]);
  });
  return new Map([...byMark].map(([mark, own]) => [mark, seenShare(own)]));
}

/** Ropes are too thin to be told by what is seen of them. */
const fittingsSeen = (picture: Picture, extras: StepExtras): readonly number[] =>
  extras.putOn
    .filter((name) => extras.all.some((one) => one.name === name && one.stuff !== "rope"))
    .map((name) => seenShare([seenExtra(picture, name)]));

const leastSeen = (picture: Picture, added: ReadonlySet<string>): number =>
  Math.min(...sharesSeen(picture, added).values());

const hiddenMarks = (picture: Picture, added: ReadonlySet<string>): readonly string[] =>
  [...sharesSeen(picture, added)].flatMap(([mark, share]) => (share < seenEnough ? [mark] : []));

export function drawStep(item: Item, step: WorkedStep, sheet: Sheet = stepSheet): Drawing {
  const section = item.sections.find((one) => one.steps.includes(step));
  if (section === undefined) throw new Error(`step ${step.number} is in no section of ${item.slug}`);
  const { look, picture, entries, extras } = findScene(item, section, step);
  const added = new Set(step.shown);
  const by = new Map(entries.flatMap((entry) => [...entry.by]));
  const driven = step.joins.flatMap((join) => join.driven);

  const marks = [...new Set(membersOf(item, step.shown).map((member) => member.mark))];
  const radius = balloonRadius(marks);
  const column = edge + 2 * radius + 4;
  // Arrows of screws stand out over the outline.
  const stand = driven.length > 0 ? 6 : 1;
  const size = pictureSize(picture);
  const high = size.height > size.width * tall ? sheet.height * tallRoom : sheet.height;
  const room = { width: sheet.width - 2 * column, height: high - 2 * edge - 2 * stand };
  const scale = fitScale(size.width, size.height, room);
  const placement: Placement = {
    scale,
    left: column + (room.width - size.width * scale) / 2,
    top: edge + stand,
  };
  const bottom = placement.top + size.height * scale + stand;
  const behind = hiddenMarks(picture, new Set(step.shown));
  const words = [
    look.words,
    putOnWords(extras),
    ...(behind.length === 0 ? [] : [`Mostly behind the others: ${listed(behind)}.`]),
  ].filter((text) => text !== "");
  const notes = drawNotes(
    words.map((text) => ({ text })),
    { left: edge, top: bottom, width: sheet.width - 2 * edge },
    sheet.type,
  );
  const kindOf = (member: Member): LineKind => (added.has(member.id) ? "strong" : "light");
  const toneOf = (member: Member): Tone => ({ kind: added.has(member.id) ? "added" : "there" });
  const isNew = ({ name }: Extra): boolean => extras.added.has(name);
  const extraLine = (extra: Extra): LineKind => (isNew(extra) ? "strong" : "light");
  const toneOfExtra = (extra: Extra): Tone => ({ kind: isNew(extra) ? "added" : "there" });
  const outlines = drawLines(picture, placement, kindOf, ["strong", "light"], extraLine);
  const panes = drawPanes(picture, placement, picture.panes.extras.some(isNew) ? "strong" : "light");
  const waysIn = drawWaysIn([...entries, ...extras.entries], picture, placement);
  const opened = new Map(entries.filter(({ goesIn }) => !goesIn).flatMap((entry) => [...entry.by]));
  const paths = drawSeatPaths(endSeats(item), opened, picture, placement);
  const threaded = item.cords.filter(({ name }) => extras.putOn.includes(name));
  const stepOf = (id: string): Vec3 => by.get(id) ?? [0, 0, 0];
  const screws = drawScrews(driven, by, picture, placement, [...outlines, ...waysIn]);
  const arrows = screws.flatMap((mark) => (mark.kind === "lines" ? mark.chains : []));
  const callouts = marks.map((mark) => {
    const owners = new Set(
      picture.bodies.flatMap(({ member }, i) => (member.mark === mark && added.has(member.id) ? [i] : [])),
    );
    return { text: mark, spots: dotSpots(picture, placement, owners, arrows) };
  });
  return {
    id: `${item.slug}-step-${step.number}-${sheet.name}`,
    title: `${item.title}: step ${step.number}`,
    description: `${describeStep(item, section, step, look, extras)}${wayWords(entries, look)}`,
    width: sheet.width,
    height: notes.bottom + edge,
    scale,
    pen: 0.25,
    marks: [
      ...drawRegions(picture, placement, look.shading, toneOf, toneOfExtra),
      ...outlines,
      ...panes,
      ...(paths.kind === "lines" && paths.chains.length > 0 ? [paths] : []),
      ...drawRopeWays(threaded, stepOf, picture, placement),
      ...waysIn,
      ...screws,
      ...drawBalloons(
        callouts.filter((callout) => callout.spots.length > 0),
        columnsBeside({ left: placement.left, width: size.width * scale }, sheet.width, edge, bottom, radius),
      ),
      ...notes.marks,
    ],
  };
}

/** Ways in by the axis they mostly run along, as the maker stands at the item. */
const comesFrom = (way: Vec3): string => {
  const [x, y, z] = way;
  const most = Math.max(...way.map(Math.abs));
  if (Math.abs(z) === most) return z > 0 ? "above" : "below";
  if (Math.abs(y) === most) return y > 0 ? "the back" : "the front";
  return x > 0 ? "the right" : "the left";
};

/** " Goes in from above.", and whether what is put together at once is shown apart. */
function wayWords(entries: readonly Entry[], { up }: Look): string {
  const ways = entries.filter(({ goesIn }) => goesIn).flatMap(({ by }) => [...by.values()].slice(0, 1));
  // On the bench the side that looks up is above.
  const from = new Set(
    ways.map((way) => (up !== undefined && dot(way, up) > 0.9 * length(way) ? "above" : comesFrom(way))),
  );
  const apart = entries.some(({ goesIn, by }) => !goesIn && [...by.values()].some((step) => length(step) > 1e-9));
  return `${from.size === 0 ? "" : ` Goes in from ${listed([...from])}.`}${apart ? " Shown apart; thin lines lead from seat to seat." : ""}`;
}

/** "Put on now: pane." */
const putOnWords = ({ putOn }: StepExtras): string =>
  putOn.length === 0 ? "" : `Put on now: ${listed(putOn.map(spoken))}.`;

function describeStep(item: Item, section: WorkedSection, step: WorkedStep, look: Look, extras: StepExtras): string {
  const counted = (ids: readonly string[]): string => {
    const members = membersOf(item, ids);
    return listed(
      [...new Set(members.map((member) => member.mark))].map((mark) => {
        const groups = [...new Set(members.filter((member) => member.mark === mark).map((member) => member.group))];
        return `${members.filter((member) => member.mark === mark).length} of ${mark} (${listed(groups)})`;
      }),
    );
  };
  const fasteners = step.joins.flatMap((join) => join.driven.map((driven) => driven.fastener.name));
  const counts = [...new Set(fasteners)].map((name) => `${fasteners.filter((other) => other === name).length} ${name}`);
  const place = section.makes === undefined ? "" : ` On the bench, panel ${section.makes.kind}.`;
  const before = step.there.length === 0 ? "Nothing is there yet." : `Already there: ${counted(step.there)}.`;
  const now =
    step.shown.length === 0 ? " No board is put in place in this step." : ` Added now: ${counted(step.shown)}.`;
  const driven = counts.length === 0 ? "" : ` Driven now: ${listed(counts)}.`;
  const words = look.words === "" ? "" : ` ${look.words}`;
  const more = extras.putOn.length === 0 ? "" : ` ${putOnWords(extras)}`;
  return `${before}${now}${more}${driven}${place}${words}`;
}

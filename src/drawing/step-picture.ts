// One step -> its picture: what is there in light line, what is added in strong line and tint, the way in, the screws.
import type { Vec3 } from "../geometry/shape.ts";
import { add, dot, times } from "../geometry/vector.ts";
import { type View, viewFrom } from "../geometry/view.ts";
import type { Item, Member, Panel, WorkedSection, WorkedStep } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { balloonRadius, columnsBeside, drawBalloons } from "./balloons.ts";
import { dotSpots } from "./dot-spots.ts";
import type { Drawing, LineKind, Tone } from "./drawing.ts";
import { drawNotes } from "./notes.ts";
import { faceOnView, membersOf } from "./panel-space.ts";
import { listed } from "./paper-text.ts";
import {
  drawLines,
  drawRegions,
  type Picture,
  type Placement,
  pictureSize,
  ropesOf,
  type Shading,
  standingLight,
  takePicture,
} from "./picture.ts";
import { fitScale } from "./scale.ts";
import { type Sheet, stepSheet } from "./sheet.ts";
import { standingViews } from "./standing-view.ts";
import { drawScrews, drawWaysIn } from "./step-arrows.ts";
import { seenParts, seenShare } from "./visibility.ts";
import { type Entry, findEntries } from "./way-in.ts";

/** A way of looking at a step; `words` go under the picture where they are not the usual ones. */
type Look = { readonly view: View; readonly shading: Shading; readonly words: string };

type Scene = { readonly look: Look; readonly picture: Picture; readonly entries: readonly Entry[] };

/** Of the added members of each piece together this much is seen, or the view turns. */
const seenEnough = 0.3;
const edge = 2;

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
  const distance = Math.min(...sizes) * (bench === undefined ? 0.45 : 0.25);
  const ways = bench === undefined ? itemWays : [bench.up, ...itemWays];
  const entries = findEntries(added, there, item.contacts, ways, distance);
  const by = new Map(entries.flatMap((entry) => [...entry.by]));
  const bodies = [...there, ...added].map((member) => ({ member, by: by.get(member.id) ?? ([0, 0, 0] as Vec3) }));
  let best: { readonly scene: Scene; readonly seen: number } | undefined;
  for (const look of bench === undefined ? itemLooks : [bench]) {
    const picture = takePicture(bodies, look.view, ropesOf(item, step.cords));
    const seen = leastSeen(picture, new Set(step.shown));
    if (best === undefined || seen > best.seen + 0.1) best = { scene: { look, picture, entries }, seen };
    if (seen >= seenEnough) break;
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

const leastSeen = (picture: Picture, added: ReadonlySet<string>): number =>
  Math.min(...sharesSeen(picture, added).values());

const hiddenMarks = (picture: Picture, added: ReadonlySet<string>): readonly string[] =>
  [...sharesSeen(picture, added)].flatMap(([mark, share]) => (share < seenEnough ? [mark] : []));

export function drawStep(item: Item, step: WorkedStep, sheet: Sheet = stepSheet): Drawing {
  const section = item.sections.find((one) => one.steps.includes(step));
  if (section === undefined) throw new Error(`step ${step.number} is in no section of ${item.slug}`);
  const { look, picture, entries } = findScene(item, section, step);
  const added = new Set(step.shown);
  const by = new Map(entries.flatMap((entry) => [...entry.by]));
  const driven = step.joins.flatMap((join) => join.driven);

  const marks = [...new Set(membersOf(item, step.shown).map((member) => member.mark))];
  const radius = balloonRadius(marks);
  const column = edge + 2 * radius + 4;
  // Arrows of screws stand out over the outline.
  const stand = driven.length > 0 ? 6 : 1;
  const size = pictureSize(picture);
  const room = { width: sheet.width - 2 * column, height: sheet.height - 2 * edge - 2 * stand };
  const scale = fitScale(size.width, size.height, room);
  const placement: Placement = {
    scale,
    left: column + (room.width - size.width * scale) / 2,
    top: edge + stand,
  };
  const bottom = placement.top + size.height * scale + stand;
  const behind = hiddenMarks(picture, new Set(step.shown));
  const words = [look.words, ...(behind.length === 0 ? [] : [`Mostly behind the others: ${listed(behind)}.`])].filter(
    (text) => text !== "",
  );
  const notes = drawNotes(
    words.map((text) => ({ text })),
    { left: edge, top: bottom, width: sheet.width - 2 * edge },
    sheet.type,
  );
  const kindOf = (member: Member): LineKind => (added.has(member.id) ? "strong" : "light");
  const toneOf = (member: Member): Tone => ({ kind: added.has(member.id) ? "added" : "there" });
  const outlines = drawLines(picture, placement, kindOf, ["strong", "light"]);
  const waysIn = drawWaysIn(entries, picture, placement);
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
    description: describeStep(item, section, step, look),
    width: sheet.width,
    height: notes.bottom + edge,
    scale,
    pen: 0.25,
    marks: [
      ...drawRegions(picture, placement, look.shading, toneOf),
      ...outlines,
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

function describeStep(item: Item, section: WorkedSection, step: WorkedStep, look: Look): string {
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
  return `${before}${now}${driven}${place}${words}`;
}

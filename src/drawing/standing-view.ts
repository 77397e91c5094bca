// An item -> how it stands before a buyer: in the colours of its finish, or with its three overall sizes.
import type { View } from "../geometry/view.ts";
import { viewFrom } from "../geometry/view.ts";
import type { Item, Member } from "../item/item.ts";
import { isDark } from "./dark.ts";
import type { LineKind, Mark, Tone } from "./drawing.ts";
import { extrasOf } from "./extras.ts";
import { drawPanes } from "./panes.ts";
import {
  drawLines,
  drawRegions,
  inPlace,
  type Picture,
  type Placement,
  pictureSize,
  standingLight,
  takePicture,
} from "./picture.ts";
import { fitScale } from "./scale.ts";

/** Where a standing thing is looked at from, in turn: nothing lines up from any of them. */
export const standingViews: readonly { readonly words: string; readonly view: View }[] = [
  { words: "the front right, from above", view: viewFrom([1, -1.7, 0.95]) },
  { words: "the front left, from above", view: viewFrom([-1, -1.7, 0.95]) },
  { words: "the back right, from above", view: viewFrom([1, 1.7, 0.95]) },
  { words: "the back left, from above", view: viewFrom([-1, 1.7, 0.95]) },
  { words: "the front right, from below", view: viewFrom([1, -1.7, -0.8]) },
  { words: "the back left, from below", view: viewFrom([-1, 1.7, -0.8]) },
];

const woodColour = "#efd9b0";

/** A coat over what is under it: `clear` 1 lets all of that through. */
function over(colour: string, under: string, clear: number): string {
  const channel = (from: number): string => {
    const [top, low] = [colour, under].map((text) => Number.parseInt(text.slice(from, from + 2), 16)) as [
      number,
      number,
    ];
    return Math.round(top + (low - top) * clear)
      .toString(16)
      .padStart(2, "0");
  };
  return `#${channel(1)}${channel(3)}${channel(5)}`;
}

/** Bare wood, or its coats one over the other in their order. */
export function coatedTone(member: Member, endGrain: boolean): Tone {
  if (member.coats.length === 0) return { kind: endGrain ? "end grain" : "wood" };
  const colour = member.coats.reduce((under, { finish }) => over(finish.colour, under, finish.clear), woodColour);
  return { kind: "coat", colour, shade: 0 };
}

export type Room = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** The whole item as large as a round scale allows, in the middle of its room across, at the top of it. */
export function standIn(item: Item, room: Room): { picture: Picture; placement: Placement; height: number } {
  const first = standingViews[0] as (typeof standingViews)[number];
  const picture = takePicture(item.members.map(inPlace), first.view, extrasOf(item));
  const size = pictureSize(picture);
  const scale = fitScale(size.width, size.height, room);
  const placement = { scale, left: room.left + (room.width - size.width * scale) / 2, top: room.top };
  return { picture, placement, height: size.height * scale };
}

/** Edges of what is dark are drawn pale: ink would be lost on it. */
export const drawStanding = (
  picture: Picture,
  placement: Placement,
  toneOf: (member: Member, endGrain: boolean) => Tone,
): Mark[] => {
  const lineOf = (tone: Tone): LineKind => (tone.kind === "coat" && isDark(tone.colour) ? "pale" : "visible");
  return [
    ...drawRegions(picture, placement, standingLight, toneOf),
    ...drawLines(
      picture,
      placement,
      (member) => lineOf(toneOf(member, false)),
      ["visible", "pale"],
      () => "visible",
    ),
    ...drawPanes(picture, placement, "light"),
  ];
};

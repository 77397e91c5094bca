// Rows of letters on an item -> how they stand on it, seen straight from in front of them.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, cross, dot, times } from "../../geometry/vector.ts";
import type { View } from "../../geometry/view.ts";
import type { Item, TextField } from "../../item/item.ts";
import { sameLength } from "../../units/length.ts";
import type { Drawing, Mark, Paper, Tone } from "../drawing.ts";
import { extrasOf } from "../extras.ts";
import { inPlace, type Picture, type Placement, pictureSize, spotOnPaper, takePicture } from "../picture.ts";
import { fitScale } from "../scale.ts";
import { pictorialPen, type Sheet, storeSheet } from "../sheet.ts";
import { drawStanding } from "../standing-view.ts";
import type { LetterFont } from "./letter-font.ts";
import { setRow } from "./set-row.ts";

const edge = 2;
const ink: Tone = { kind: "coat", colour: "#1f1a17", shade: 0 };

/**
 * A drawing for each side that letters stand on, in the order of the rows. The wood is drawn bare, so that the letters can be read
 * whatever it is coated with.
 */
export function drawLettered(item: Item, font: LetterFont, sheet: Sheet = storeSheet): readonly Drawing[] {
  return viewsOf(item.textFields).map(({ view, fields }, i) => {
    const picture = takePicture(item.members.map(inPlace), view, extrasOf(item));
    const size = pictureSize(picture);
    const room = { width: sheet.width - 2 * edge, height: sheet.height - 2 * edge };
    const scale = fitScale(size.width, size.height, room);
    const placement: Placement = { scale, left: edge + (room.width - size.width * scale) / 2, top: edge };
    return {
      id: `${item.slug}-letters-${i + 1}-${sheet.name}`,
      title: `${item.title}: its letters`,
      description: `The ${item.title.toLowerCase()} straight from the ${fields[0]?.side ?? "front"}, with its letters: ${fields.map(({ says }) => says).join("; ")}.`,
      width: sheet.width,
      height: size.height * scale + 2 * edge,
      scale,
      pen: pictorialPen(sheet),
      marks: [
        ...drawStanding(picture, placement, (_, endGrain) => ({ kind: endGrain ? "end grain" : "wood" })),
        ...fields.map((field) => lettersOf(field, font, picture, placement)),
      ],
    };
  });
}

/** The letters on the middle of their row, capitals as high as it, dark on the wood. */
function lettersOf(field: TextField, font: LetterFont, picture: Picture, placement: Placement): Mark {
  const { corner, across, width, height, says } = field;
  const row = setRow(font, says, height * placement.scale);
  const [left, line] = spotOnPaper(picture, placement, add(corner, times(across, width / 2)));
  const paper = ([u, v]: readonly [number, number]): Paper => [left - row.width / 2 + u, line - v];
  const loops = row.letters.flatMap(({ outer, counters }) => [outer, ...counters]);
  return { kind: "region", tone: ink, shade: 0, loops: loops.map((loop) => loop.map(paper)) };
}

type Seen = { readonly view: View; readonly fields: readonly TextField[] };

const alike = (a: Vec3, b: Vec3): boolean => dot(a, b) > 1 - sameLength;

/** Rows that look the same way up and out share a view. */
function viewsOf(fields: readonly TextField[]): readonly Seen[] {
  const looks = (one: TextField) => (other: TextField) => alike(one.across, other.across) && alike(one.up, other.up);
  const firsts = fields.filter((field, i) => fields.findIndex(looks(field)) === i);
  return firsts.map((first) => ({
    view: { right: first.across, up: first.up, toViewer: cross(first.across, first.up) },
    fields: fields.filter(looks(first)),
  }));
}

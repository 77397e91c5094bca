// Worked-out pieces and joins -> the holes to drill before anything is put together: bored ones, and the pockets of pocket screws.
import type { Vec3 } from "../geometry/shape.ts";
import { dot, subtract } from "../geometry/vector.ts";
import type { Driven, Item, Member, Piece } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { axes } from "../units/side.ts";
import { type BinderEdition, setFractions } from "./edition.ts";
import type { Table } from "./leaf.ts";

/** Undefined where there is nothing to drill before; lead holes are drilled in the step that drives their screws. */
export function drillList(item: Item, edition: BinderEdition): Table | undefined {
  const rows = item.pieces.flatMap((piece) => [...boredRows(piece, edition), ...pocketRows(item, piece)]);
  if (rows.length === 0) return undefined;
  return {
    caption: "Holes, drilled before anything is put together",
    heads: ["Piece", "Pieces", "In each", "Where"],
    rows,
  };
}

function boredRows({ mark, count, cuts }: Piece, { length }: BinderEdition): string[][] {
  const across = new Map<number, { holes: number; blind: boolean }>();
  for (const cut of cuts) {
    if (cut.kind !== "hole" || cut.why !== "cut") continue;
    const known = across.get(cut.across) ?? { holes: 0, blind: false };
    across.set(cut.across, { holes: known.holes + 1, blind: known.blind || cut.deep !== undefined });
  }
  return [...across].map(([size, { holes, blind }]) => [
    mark,
    String(count),
    `${holes} × ${length(size)}`,
    `as drawn${blind ? ", to the depth drawn" : ", right through"}`,
  ]);
}

/** Members of one piece that have as many pockets share a row; where some have them in the other face, the boards may be turned. */
function pocketRows(item: Item, { mark, members }: Piece): string[][] {
  const found = new Map<string, { readonly holes: string; readonly ends: string; readonly faces: boolean[] }>();
  for (const id of members) {
    const member = item.members.find((one) => one.id === id);
    const driven = item.joins
      .flatMap((join) => join.driven)
      .filter((one) => one.fastener.kind === "pocket screw" && one.a === id);
    if (!member || driven.length === 0) continue;
    const holes = `${driven.length} × pocket for ${namesOf(driven)}`;
    const ends = endsWords(member, driven);
    const entry = found.get(`${holes}|${ends}`) ?? { holes, ends, faces: [] };
    entry.faces.push(isInGoodFace(member, driven));
    found.set(`${holes}|${ends}`, entry);
  }
  return [...found.values()].map(({ holes, ends, faces }) => {
    const face = faces.every((good) => good)
      ? "in the good face"
      : faces.some((good) => good)
        ? "all in one face"
        : "in the face behind the good one";
    return [mark, String(faces.length), holes, `${ends}, ${face}`];
  });
}

const namesOf = (driven: readonly Driven[]): string =>
  [...new Set(driven.map(({ fastener }) => setFractions(fastener.name.replace(/^pocket screw /, ""))))].join(" and ");

function endsWords({ shape: { frame }, length }: Member, driven: readonly Driven[]): string {
  const isFar = (along: Vec3): boolean => dot(subtract(along, frame.origin), frame.x) > inches(length) / 2;
  const far = driven.filter(({ head }) => isFar(head)).length;
  const near = driven.length - far;
  if (near === far) return `${near} at each end`;
  return near === 0 || far === 0 ? "at one end" : `${near} at one end, ${far} at the other`;
}

function isInGoodFace({ lie: { show }, min, max }: Member, driven: readonly Driven[]): boolean {
  const axis = axes.indexOf(show.axis);
  const centre = (inches(min[show.axis]) + inches(max[show.axis])) / 2;
  return driven.every(({ head }) => ((head[axis] as number) - centre) * show.sign > 0);
}

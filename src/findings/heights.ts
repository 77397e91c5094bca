// Worked-out item -> how high a seat or a table's top is, and whom that suits.
import type { Item } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { isPersonLoad } from "./use.ts";

/** Inches over the ground: of a seat, of a table's top; and of what hangs, from its foot to the top of its rope. */
export type Heights = { readonly seat?: number; readonly top?: number; readonly hung?: number };

type Told = Pick<Item, "loads" | "members" | "overall" | "title" | "purpose" | "cords">;

/** A seat is what a person is put on as a load; a table is what its own title or purpose calls one. */
export function heightsOf({ loads, members, overall, title, purpose = "", cords }: Told): Heights {
  const sat = new Set(
    loads.filter(({ name }) => isPersonLoad(name)).flatMap(({ places }) => places.flatMap(({ on }) => on)),
  );
  const tops = members.filter(({ id }) => sat.has(id)).map(({ max }) => inches(max.z));
  const isTable = /\b(?:table|desk|workbench)\b/i.test(`${title} ${purpose}`);
  return {
    ...(tops.length > 0 ? { seat: Math.max(...tops) } : {}),
    ...(isTable ? { top: inches(overall.height) } : {}),
    ...hungOf(cords, inches(overall.height)),
  };
}

/** Where the rope goes up higher than the wood. */
function hungOf(cords: Told["cords"], wood: number): Pick<Heights, "hung"> {
  const high = Math.max(0, ...cords.flatMap(({ points }) => points.map(([, , z]) => z)));
  return high > wood + 0.01 ? { hung: high } : {};
}

export type SizeBand = {
  /** The mark of the standard. */
  readonly mark: number;
  readonly ages: string;
  /** Stature, mm, least and most. */
  readonly stature: readonly [number, number];
};

/**
 * Size marks 1 to 6 of EN 1729-1 for school furniture: height of seat and table top, and the stature they suit, mm; ages as
 * suppliers' guides print them. The standard itself isn't public; figures from those guides.
 */
const bands: readonly (SizeBand & { readonly seat: number; readonly top: number })[] = [
  { mark: 1, seat: 260, top: 460, stature: [930, 1160], ages: "3 to 4" },
  { mark: 2, seat: 310, top: 530, stature: [1080, 1210], ages: "4 to 6" },
  { mark: 3, seat: 350, top: 590, stature: [1190, 1420], ages: "6 to 8" },
  { mark: 4, seat: 380, top: 640, stature: [1330, 1590], ages: "8 to 11" },
  { mark: 5, seat: 430, top: 710, stature: [1460, 1765], ages: "11 to 14" },
  { mark: 6, seat: 460, top: 760, stature: [1590, 1880], ages: "14 and over" },
];

/** Within this many mm of a size mark's height it is of that size. Common practice, no source. */
const near = 20;

/** The nearest size mark, or undefined where none is near: lower or higher than people sit at. */
export function findSizeBand(kind: "seat" | "top", height: number): SizeBand | undefined {
  const mm = height * 25.4;
  const [nearest] = [...bands].sort((a, b) => Math.abs(a[kind] - mm) - Math.abs(b[kind] - mm));
  return nearest && Math.abs(nearest[kind] - mm) <= near ? nearest : undefined;
}

/** A top higher than this is stood at: over the highest that EN 1729-1 has for sitting, mark 7 (820 mm, from memory). */
export const standingFrom = 820 / 25.4;

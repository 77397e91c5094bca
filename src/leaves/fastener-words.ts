// Places of fasteners -> lines as they are marked out with a tape: how many, how far from end and edge, which bit.
import type { FastenerPlaces } from "../findings/fastener-places.ts";
import { leadHolesFor } from "../findings/lead-holes.ts";
import { exact, type Length } from "../units/length.ts";
import { setFractions } from "./edition.ts";

/** More distances than this are found where the boards cross, not with the tape. */
const mostTold = 3;

/** "A to B, 12 places with 2 × screw No. 6 x 1 each: 3/4 in from the end of A, 1/2 in from its edges; drill 5/64 in B, 9/64 through A". */
export function fastenerWords(spots: FastenerPlaces, length: (inches: Length) => string): string {
  const { fastener, through, into, places, each } = spots;
  const count = `${each} × ${setFractions(fastener.name)}`;
  const where = places === 1 ? count : `${places} places, ${count} in each`;
  const told = (all: readonly number[]): string => listed(all.map(length));
  const ends =
    spots.ends.length > mostTold
      ? `where ${into} lies`
      : `${told(spots.ends)} from the ${spots.from ?? "end"} of ${through}`;
  const edges =
    spots.edges.length > mostTold ? "" : `, ${told(spots.edges)} from its ${spots.inLine ? "edge" : "edges"}`;
  const pocket = fastener.kind === "pocket screw";
  return `${through} to ${into}, ${where}: ${pocket ? `in pockets${edges.replace(", ", " ")}` : `${ends}${edges}`}${drillWords(spots)}.`;
}

function drillWords({ fastener, wood, through, into }: FastenerPlaces): string {
  const holes = leadHolesFor(fastener, wood);
  if (!holes) return "";
  const first = holes.through === undefined ? "" : `${bit(holes.through)} through ${through}, `;
  return `; drill ${first}${bit(holes.into)} in ${into}`;
}

/** Bits are sold by 64ths of an inch: "5/64". */
const bit = (inches: number): string => setFractions(`${exact(Math.round(inches * 64), 64).toFraction(true)} in`);

const listed = (all: readonly string[]): string => {
  const last = all.at(-1) ?? "";
  return all.length < 2 ? last : `${all.slice(0, -1).join(", ")} and ${last}`;
};

// Places of fasteners -> lines as they are marked out with a tape: how many, how far from end and edge, which bit.
import type { FastenerPlaces, Spot } from "../findings/fastener-places.ts";
import { leadHolesFor } from "../findings/lead-holes.ts";
import { exact, type Length } from "../units/length.ts";
import { setFractions } from "./edition.ts";

/** More distances than this are found where the boards cross, not with the tape. */
const mostTold = 3;

/** "A to B, 12 places with 2 × screw No. 6 x 1 each: 3/4 in from the end of A, 1/2 in from each edge; drill 5/64 in B, 9/64 through A". */
export function fastenerWords(places: FastenerPlaces, length: (inches: Length) => string): string {
  const { fastener, through, into, each } = places;
  const count = `${each} × ${setFractions(fastener.name)}`;
  const where = places.places === 1 ? count : `${places.places} places, ${count} in each`;
  const told =
    fastener.kind === "pocket screw" ? `in pockets ${edgeWords(places.spots, length)}` : placeWords(places, length);
  return `${through} to ${into}, ${where}: ${told}${drillWords(places)}.`;
}

type Say = (inches: Length) => string;

/** Ends and edges apart where each of the two is told by itself, else fastener by fastener. */
function placeWords({ spots, through, into, from }: FastenerPlaces, length: Say): string {
  const ends = distinct(spots.map(({ end }) => length(end)));
  const edges = distinct(spots.map((spot) => edgeKey(spot, length)));
  const end = `from the ${from ?? "end"} of ${through}`;
  if (ends.length > mostTold) return `where ${into} lies`;
  if (ends.length === 1 || edges.length === 1) return `${listed(ends)} ${end}, ${edgeWords(spots, length)}`;
  return `${listed(spots.map((spot, i) => `${length(spot.end)} ${i === 0 ? `${end} ` : ""}${spot.of === undefined ? "" : "at "}${edgeOf(spot, length)}`))}`;
}

/** Of fasteners that stand beside each other, or all on one line: "1 1/4 in from its front edge and 1 1/2 in from its back edge". */
function edgeWords(spots: readonly Spot[], length: Say): string {
  const once = spots.filter(
    (spot, i) => spots.findIndex((one) => edgeKey(one, length) === edgeKey(spot, length)) === i,
  );
  const [first, other] = once;
  if (first && other && once.length === 2 && first.of !== other.of && length(first.edge) === length(other.edge))
    return `${length(first.edge)} from each edge`;
  return listed(once.map((spot) => edgeOf(spot, length)));
}

const edgeKey = ({ edge, of }: Spot, length: Say): string => `${length(edge)} ${of ?? ""}`;

const edgeOf = ({ edge, of }: Spot, length: Say): string =>
  of === undefined ? "in the middle of its width" : `${length(edge)} from its ${of} edge`;

function drillWords({ fastener, wood, through, into }: FastenerPlaces): string {
  const holes = leadHolesFor(fastener, wood);
  if (!holes) return "";
  const first = holes.through === undefined ? "" : `${bit(holes.through)} through ${through}, `;
  return `; drill ${first}${bit(holes.into)} in ${into}`;
}

/** Bits are sold by 64ths of an inch: "5/64". */
const bit = (inches: number): string => setFractions(`${exact(Math.round(inches * 64), 64).toFraction(true)} in`);

const distinct = (all: readonly string[]): string[] => [...new Set(all)];

const listed = (all: readonly string[]): string => {
  const last = all.at(-1) ?? "";
  return all.length < 2 ? last : `${all.slice(0, -1).join(", ")} and ${last}`;
};

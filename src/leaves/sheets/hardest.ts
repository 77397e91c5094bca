// Worked-out item -> its hardest operations in words, hardest first, from its angles, cuts, joins and number of pieces.
import { boardFrame, edgeBevels } from "../../drawing/board-frame.ts";
import { formatDegrees, isSlanted } from "../../drawing/end-angle.ts";
import { cuttingOperations } from "../../findings/operations.ts";
import type { Item, Piece } from "../../item/item.ts";

/** How hard: 3 wants practice and scrap to try it on, 2 care, 1 patience. Common practice, no source. */
export type HardOperation = { readonly rank: 1 | 2 | 3; readonly says: string };

/** No more are named. */
const mostNamed = 4;
/** From so many pieces on it is the stop that keeps them alike. */
const manyPieces = 12;

const count = (pieces: readonly Piece[]): number => pieces.reduce((sum, piece) => sum + piece.count, 0);
const marks = (pieces: readonly Piece[]): string => pieces.map(({ mark }) => mark).join(", ");
const degreesOf = (all: readonly number[]): string =>
  [...new Set(all.filter(isSlanted).map((one) => formatDegrees(Math.abs(one))))].join(" and ");

/** Only pieces that have a mirror image among the marks have a hand. */
function handWords(pieces: readonly Piece[]): string {
  const handed = pieces.filter(({ hand }) => hand !== undefined);
  return handed.length === 0 ? "" : `, left and right apart on ${marks(handed)}`;
}

/** Ends alike and parallel, and nothing bored or cut in one face: turned over it is its own mirror image. */
function turnsOver(piece: Piece, { joins, members }: Item): boolean {
  const [{ mitre, bevel }, other] = piece.ends;
  const isParallel =
    isSlanted(mitre) && !isSlanted(bevel) && !isSlanted(other.bevel) && !isSlanted(mitre - other.mitre);
  const own = new Set(members.filter(({ mark }) => mark === piece.mark).map(({ id }) => id));
  const isBored = joins.some(({ driven }) => driven.some(({ a }) => own.has(a)));
  const isFree = piece.hand === undefined && piece.board.showSides === 2 && piece.cuts.length === 0 && !isBored;
  return isParallel && isFree && piece.count > 1;
}

function turnWords(pieces: readonly Piece[], item: Item): string {
  const turned = pieces.filter((piece) => turnsOver(piece, item));
  return turned.length === 0 ? "" : ` ${marks(turned)} may be turned over: either face may show, left and right.`;
}

function endWork(item: Item): HardOperation[] {
  const { pieces } = item;
  const isCompound = ({ ends }: Piece) => ends.some((end) => isSlanted(end.mitre) && isSlanted(end.bevel));
  const isMitred = ({ ends }: Piece) => ends.some((end) => isSlanted(end.mitre) !== isSlanted(end.bevel));
  const [compound, single] = [pieces.filter(isCompound), pieces.filter((p) => !isCompound(p) && isMitred(p))];
  const angles = (of: readonly Piece[], way: "mitre" | "bevel") =>
    degreesOf(of.flatMap(({ ends }) => ends.map((end) => end[way])));
  const one = degreesOf(single.flatMap(({ ends }) => ends.flatMap((end) => [end.mitre, end.bevel])));
  return [
    ...(compound.length === 0
      ? []
      : [
          {
            rank: 3 as const,
            says: `Compound mitres on ${marks(compound)}: the saw turned to ${angles(compound, "mitre")} and the blade tilted to ${angles(compound, "bevel")} at once. Try both on scrap until four close.`,
          },
        ]),
    ...(single.length === 0
      ? []
      : [
          {
            rank: 2 as const,
            says: `Slanted ends on ${marks(single)}: ${one}${handWords(single)}. Cut one of each and lay it on its drawing first.${turnWords(single, item)}`,
          },
        ]),
  ];
}

function edgeWork(item: Item): HardOperation[] {
  const bevelled = item.pieces.filter((piece) => {
    const member = item.members.find(({ id }) => id === piece.members[0]);
    return member !== undefined && edgeBevels(boardFrame(member)).some(isSlanted);
  });
  return bevelled.length === 0
    ? []
    : [
        {
          rank: 3,
          says: `Bevelled edges on ${marks(bevelled)}: ripped with the blade tilted, so that the strip must not creep.`,
        },
      ];
}

function shapeWork({ pieces }: Item): HardOperation[] {
  const outlines = pieces.filter(({ outline }) => outline !== undefined);
  const glued = pieces.filter(({ blanks }) => (blanks?.reduce((sum, blank) => sum + blank.count, 0) ?? 1) > 1);
  const sloped = pieces.filter(({ cuts }) => cuts.some(({ kind }) => kind === "slope"));
  const letIn = pieces.filter(({ cuts }) => cuts.some(({ kind }) => kind === "box" || kind === "pocket"));
  const work = (of: readonly Piece[], rank: 1 | 2 | 3, says: string): HardOperation[] =>
    of.length === 0 ? [] : [{ rank, says }];
  return [
    ...work(outlines, 3, `Sawing ${marks(outlines)} to a curved outline, inside and out, square to the face.`),
    ...work(
      sloped,
      3,
      `Long slopes on ${marks(sloped)}: marked straight from end to end and sawn freehand or on a sled.`,
    ),
    ...work(glued, 2, `Gluing up ${marks(glued)}: flat under the clamps, with no gap at the edges.`),
    ...work(letIn, 2, `Notches and recesses in ${marks(letIn)}: to a line, with a flat bottom.`),
  ];
}

function joinWork(item: Item): HardOperation[] {
  const glued = item.joins.filter(({ ways }) => ways.includes("glue")).length;
  const pockets = item.joins.flatMap(({ driven }) => driven.filter(({ fastener }) => fastener.kind === "pocket screw"));
  const thin = item.pieces.some(({ thickness }) => Number(thickness.valueOf()) < 0.75);
  const screws = item.joins.flatMap(({ driven }) => driven).length;
  return [
    ...(glued === 0
      ? []
      : [
          {
            rank: 2 as const,
            says: `${glued} glued ${glued === 1 ? "join" : "joins"}: put together dry first, closed before the glue skins over.`,
          },
        ]),
    ...(pockets.length === 0
      ? []
      : [
          {
            rank: 1 as const,
            says: `${pockets.length} pocket screws: jig and collar set on a piece of scrap, every joint clamped.`,
          },
        ]),
    ...(thin && screws > pockets.length
      ? [
          {
            rank: 1 as const,
            says: `${screws - pockets.length} screws in boards under ¾ in: a lead hole for each, or they split.`,
          },
        ]
      : []),
    ...(item.cords.length === 0
      ? []
      : [{ rank: 1 as const, says: "Threading the rope so that every board hangs level." }]),
  ];
}

function cuttingWork(item: Item): HardOperation[] {
  const narrow = cuttingOperations(item).includes("rip narrow");
  const ripped = item.pieces.filter((piece) => piece.ripped);
  const pieces = count(item.pieces);
  return [
    ...(narrow
      ? [{ rank: 2 as const, says: `Ripping narrow strips for ${marks(ripped)}, all at one setting of the fence.` }]
      : []),
    ...(pieces >= manyPieces
      ? [
          {
            rank: 1 as const,
            says: `${pieces} pieces of ${item.pieces.length} kinds, alike only if every kind is cut against one stop.`,
          },
        ]
      : []),
  ];
}

/** The hardest first, as many as are worth reading; a thing of square cuts and a few screws has none but its plain work. */
export function hardestOf(item: Item): readonly HardOperation[] {
  const all = [...endWork(item), ...edgeWork(item), ...shapeWork(item), ...cuttingWork(item), ...joinWork(item)];
  const named = all.sort((a, b) => b.rank - a.rank).slice(0, mostNamed);
  return named.length > 0
    ? named
    : [{ rank: 1, says: "Square cuts to length, and keeping it square while it is put together." }];
}

/** Whom the sheets are written for, by the hardest that there is. */
export function skillWords(item: Item): string {
  const [hardest] = hardestOf(item);
  const sawn = item.pieces.some(({ ripped }) => ripped) ? "a table saw and a crosscut saw" : "a crosscut saw";
  const done = {
    1: `A grown-up who uses ${sawn} and a drill with their guards, and has cut to a stop before.`,
    2: `A grown-up who is at home at ${sawn}, guards on, and has made a few things of wood.`,
    3: `A grown-up with practice at ${sawn}, guards on, who has sawn at a slant or to a line before and tries it on scrap.`,
  } as const;
  return done[hardest?.rank ?? 1];
}

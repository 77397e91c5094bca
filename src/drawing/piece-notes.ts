// A piece -> the words under its drawing: what it is cut from, how the saw is set, its holes and corners.
import type { Lie, Member, Piece, WorkedCut } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import type { Length } from "../units/length.ts";
import type { BoardFrame } from "./board-frame.ts";
import type { Note } from "./notes.ts";
import { type Offset, offsetWords } from "./outline-offsets.ts";
import { listed, paperLength, unitWords } from "./paper-text.ts";
import { sawWords } from "./saw-words.ts";
import { shortGrainWords } from "./short-grain-marks.ts";

/** The member that a piece's drawing shows. */
type Drawn = Pick<Member, "cuts" | "lie">;

type Hole = WorkedCut & { readonly kind: "hole" };

const isMouthOf = (wide: WorkedCut, hole: Hole): wide is Hole =>
  wide.kind === "hole" &&
  wide !== hole &&
  wide.axis === hole.axis &&
  (hole.deep === undefined || wide.from === hole.from) &&
  wide.across > hole.across &&
  wide.deep !== undefined &&
  (hole.deep === undefined || hole.deep > wide.deep) &&
  wide.at3.every((at, k) => Math.abs(at - (hole.at3[k] as number)) < 1e-6);

/** The wide, shallow hole round the mouth of another one, for its screw's head. */
const counterboreOf = (hole: Hole, cuts: readonly WorkedCut[]): Hole | undefined =>
  cuts.find((wide) => isMouthOf(wide, hole)) as Hole | undefined;

const isCounterbore = (cut: WorkedCut, cuts: readonly WorkedCut[]): boolean =>
  cuts.some((hole) => hole.kind === "hole" && isMouthOf(cut, hole));

/** " at the good face", for what isn't alike at both. */
const faceWords = ({ axis, from }: Hole, { show }: Lie): string =>
  axis === "thickness" ? ` at the ${(from === "high") === (show.sign === 1) ? "good" : "far"} face` : "";

function cutWords(
  cut: WorkedCut,
  cuts: readonly WorkedCut[],
  lie: Lie,
  say: (length: Length) => string,
): { readonly kind: string; readonly text: string } | undefined {
  switch (cut.kind) {
    case "hole": {
      const bore = counterboreOf(cut, cuts);
      const face = faceWords(bore ?? cut, lie);
      const depth = cut.deep === undefined ? "through" : `${say(cut.deep)} deep${bore === undefined ? face : ""}`;
      const sunk = cut.countersink === undefined ? "" : `, countersunk to Ø ${say(cut.countersink)}${face}`;
      const bored =
        bore?.deep === undefined ? "" : `, counterbored to Ø ${say(bore.across)}, ${say(bore.deep)} deep${face}`;
      return { kind: "Holes", text: `Ø ${say(cut.across)}, ${depth}${sunk}${bored}` };
    }
    case "box":
      return { kind: "Cuts", text: boxWords(cut, say) };
    case "pocket": {
      const [l, w, t] = [0, 1, 2].map((i) => say((cut.max[i] as number) - (cut.min[i] as number)));
      const [a, b] = cut.axis === "length" ? [w, t] : cut.axis === "width" ? [l, t] : [l, w];
      return { kind: "Cuts", text: `${cut.name} ${a} × ${b}, corners R ${say(cut.radius)}` };
    }
    case "prism":
      return { kind: "Cuts", text: `${cut.name} on the slant as drawn, ${say(cut.high - cut.low)} deep` };
    case "corners":
      return { kind: "Corners", text: `R ${say(cut.radius)}, ${cut.corners.length} of them` };
    case "eased":
      return { kind: "Arrises", text: `${cut.arris ? "rounded" : "eased"} to R ${say(cut.radius)}` };
    case "slope":
      return undefined;
  }
}

function boxWords({ name, min, max }: WorkedCut & { kind: "box" }, say: (length: Length) => string): string {
  const [along, across, deep] = [0, 1, 2].map((i) => (max[i] as number) - (min[i] as number)) as [
    number,
    number,
    number,
  ];
  return `${name} ${say(along)} along the grain, ${say(across)} across, ${say(deep)} through the thickness`;
}

/** Like cuts are counted: "Holes: 2 of Ø 3/8, through". */
function cutNotes({ cuts, lie }: Drawn, say: (length: Length) => string): readonly Note[] {
  const counts = new Map<string, { readonly kind: string; readonly text: string; count: number }>();
  for (const cut of cuts) {
    const words = isCounterbore(cut, cuts) ? undefined : cutWords(cut, cuts, lie, say);
    if (words === undefined) continue;
    const known = counts.get(words.text);
    if (known === undefined) counts.set(words.text, { ...words, count: 1 });
    else known.count += 1;
  }
  return [...counts.values()].map(({ kind, text, count }): Note => {
    const many = kind === "Holes" || count > 1 ? `${count} of ` : "";
    return { text: `${kind}: ${many}${text}` };
  });
}

/** What the piece is sawn from: a board, or the boards of a glue-up. */
function stockWords(piece: Piece, say: (length: Length) => string): string {
  const sawn = [
    ...(piece.ripped ? [`ripped to ${say(piece.width)}`] : []),
    ...(piece.planed ? [`planed to ${say(piece.thickness)}`] : []),
  ];
  const blanks = piece.blanks?.map(
    (blank) => `${blank.count} of ${blank.board.name} ${say(blank.width)} × ${say(blank.length)}, grain ${blank.grain}`,
  );
  const stock = blanks === undefined ? [piece.board.name, ...sawn].join(", ") : `glued up from ${listed(blanks)}`;
  return blanks === undefined ? `from ${stock}` : stock;
}

/** The member is the one that is drawn: its cuts say on which face they are. */
export function pieceNotes(
  piece: Piece,
  member: Drawn,
  frame: BoardFrame,
  offsets: readonly Offset[],
  division: Division,
): readonly Note[] {
  const say = (length: Length): string => paperLength(length, division);
  const slanted = sawWords(frame, say);
  const blank = frame.trims.length === 0 ? "" : `It takes ${say(piece.length)} of its board, over all. `;
  return [
    {
      text: `${piece.count} of ${piece.mark}, ${stockWords(piece, say)}; ${say(piece.thickness)} thick. ${blank}The arrow is the grain. Sizes in ${unitWords(division)}.`,
    },
    ...(piece.hand === undefined
      ? []
      : [{ text: `This is the ${piece.hand} one of a pair; the other is its mirror image.` }]),
    ...slanted.map((text): Note => ({ text })),
    ...(offsets.length === 0
      ? []
      : [
          {
            text: `Outline: how far over the lower edge the wood reaches, by the way from the left end. ${offsetWords(offsets, say)}.`,
          },
        ]),
    ...cutNotes(member, say),
    ...[shortGrainWords(piece, say)].flatMap((text) => (text === undefined ? [] : [{ text }])),
  ];
}

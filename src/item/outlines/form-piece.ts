// How a piece is glued up and cut to an outline -> its finished section, and the boards that are sawn for it.
import { problem } from "../../problems/problem.ts";
import type { Outline, PieceKind, Sum } from "../../recipe/recipe.ts";
import { compareLengths, exact, inches, type Length, over, times } from "../../units/length.ts";
import type { Board } from "../../yard/yard.ts";
import type { Blank } from "../item.ts";
import { Fault } from "../places/fault.ts";
import { type WorkedOutline, workOutline } from "./work-outline.ts";

type SizeOf = (sum: Sum) => Length;

/** One board as it is sawn, ripped and planed, before anything is glued. */
export type Sawn = { readonly board: Board; readonly width: Length; readonly thickness: Length };

export type Glue = {
  readonly sawn: Sawn;
  readonly edgeToEdge: boolean;
  readonly plies: number;
  readonly crossed: boolean;
  readonly ripped: boolean;
  readonly planed: boolean;
};

/** `grainUp`: the grain runs up the drawing. `length` is given where an outline decides it. */
export type Formed = {
  readonly length?: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly outline?: WorkedOutline & { readonly grainUp: boolean; readonly mirrored: boolean };
  readonly glue?: Glue;
};

/** The tightest curve an ordinary jigsaw or scroll-saw blade follows without help. Common practice, no source. */
const bladeTurn = 1 / 8;

/** Throws a Fault where the boards or the outline don't allow it. */
export function formPiece(kind: PieceKind, sawn: Sawn, outlines: readonly Outline[], sizeOf: SizeOf): Formed {
  const plies = kind.plies?.count ?? 1;
  const thickness = times(sawn.thickness, exact(plies));
  const width = gluedWidth(kind, sawn, sizeOf);
  const glue = kind.glued || kind.plies ? { glue: glueOf(kind, sawn, plies) } : {};
  if (!kind.outline) return { width, thickness, ...glue };
  const name = kind.outline.name.text;
  const drawn = outlines.find((outline) => outline.name === name);
  // The reader lets no unknown name through.
  if (!drawn) throw new Error(`${kind.name.text} asks for the unknown outline ${name}`);
  const at = kind.outline.at;
  const worked = workOutline(drawn, sizeOf, {
    wood: {
      least: kind.leastWood ? inches(sizeOf(kind.leastWood)) : inches(thickness) / 2,
      at: kind.leastWood?.at ?? at,
      said: kind.leastWood !== undefined,
    },
    turn: {
      least: kind.leastTurn ? inches(sizeOf(kind.leastTurn)) : bladeTurn,
      at: kind.leastTurn?.at ?? at,
      said: kind.leastTurn !== undefined,
    },
  });
  const grainUp = kind.grain?.up ?? false;
  const [along, across] = grainUp ? [worked.height, worked.width] : [worked.width, worked.height];
  if (compareLengths(across, width) > 0) {
    const facts = { name: kind.name.text, outline: name, across, width, board: sawn.board.name, grainUp };
    throw new Fault(problem("outline-over-board", at, facts, drawn.at));
  }
  return {
    length: along,
    width: across,
    thickness,
    outline: { ...worked, grainUp, mirrored: kind.outline.mirrored },
    ...glue,
  };
}

function gluedWidth(kind: PieceKind, sawn: Sawn, sizeOf: SizeOf): Length {
  if (!kind.glued) return sawn.width;
  const width = sizeOf(kind.glued.to);
  if (compareLengths(width, sawn.width) <= 0) {
    const facts = { name: kind.name.text, width, board: sawn.board.name, one: sawn.width };
    throw new Fault(problem("glue-needless", kind.glued.at, facts));
  }
  return width;
}

const glueOf = (kind: PieceKind, sawn: Sawn, plies: number): Glue => ({
  sawn,
  edgeToEdge: kind.glued !== undefined,
  plies,
  crossed: kind.crossed !== undefined,
  ripped: kind.ripped !== undefined,
  planed: kind.planed !== undefined,
});

/**
 * The boards of a glued-up piece of this finished length and width, without any allowance for trimming. Boards glued edge to
 * edge are all of one width: as few as are wide enough.
 */
export function blanksOf(glue: Glue, length: Length, width: Length): Blank[] {
  const { sawn, plies, crossed, planed } = glue;
  const layer = (grain: Blank["grain"], layers: number): Blank => {
    const [long, wide] = grain === "along" ? [length, width] : [width, length];
    const boards = glue.edgeToEdge ? Math.max(1, Math.ceil(inches(wide) / inches(sawn.width) - 1e-9)) : 1;
    const each = over(wide, exact(boards));
    const ripped = glue.ripped || compareLengths(each, sawn.width) !== 0;
    const count = boards * layers;
    return { board: sawn.board, length: long, width: each, thickness: sawn.thickness, count, grain, ripped, planed };
  };
  const turned = crossed ? Math.floor(plies / 2) : 0;
  return [layer("along", plies - turned), ...(turned > 0 ? [layer("across", turned)] : [])];
}

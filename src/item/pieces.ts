// Members -> the kinds of piece to cut: like ones share a mark, mirrored ones a letter.

import type { Solid } from "../geometry/solid.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { inches } from "../units/length.ts";
import { ownSize } from "./frame.ts";
import type { Piece, WorkedCut } from "./item.ts";
import { shortGrainOf } from "./outlines/short-grain.ts";
import { endsOf } from "./piece-ends.ts";
import { type Form, formOf } from "./piece-form.ts";
import type { PlacedMember } from "./placed.ts";

/** A placed member with its cuts and the solid that is left. */
export type Cut = { readonly placed: PlacedMember; readonly cuts: readonly WorkedCut[]; readonly solid: Solid };

type Group = { readonly form: Form; readonly cut: readonly [Cut, ...Cut[]] };

/**
 * Marks A, B, C… in the order in which the pieces are declared, then the longest, widest and thickest first, then those with fewer
 * cuts: the order of the lines that use them changes nothing. Of two mirrored kinds the one that stands further left is the left.
 */
export function piecesOf(recipe: Recipe, members: readonly Cut[]): Piece[] {
  const groups = new Map<string, Group>();
  const kinds = recipe.pieces.filter((kind) => kind.matched).map(({ name }) => name.text);
  const matchedOf = ({ placed }: Cut): string | undefined => kinds.find((name) => name === placed.pieceKind);
  const keyOf = (form: string, cut: Cut): string => JSON.stringify([form, matchedOf(cut)]);
  for (const cut of members) {
    const form = formOf(cut.placed, cut.cuts);
    const key = keyOf(form.own, cut);
    const group = groups.get(key);
    groups.set(key, group ? { ...group, cut: [...group.cut, cut] } : { form, cut: [cut] });
  }
  const order = new Map(recipe.pieces.map((kind, i) => [kind.name.text, i]));
  const sorted = [...groups.values()].sort((a, b) => compareGroups(a, b, order));
  const pieces: Piece[] = [];
  let letters = 0;
  const marked = new Set<Group>();
  for (const group of sorted) {
    if (marked.has(group)) continue;
    const letter = letterOf(letters++);
    const twin =
      group.form.own === group.form.mirrored ? undefined : groups.get(keyOf(group.form.mirrored, group.cut[0]));
    if (!twin) {
      pieces.push(pieceOf(group, letter, undefined, matchedOf(group.cut[0])));
      continue;
    }
    marked.add(twin);
    const [left, right] = compareSides(group, twin) <= 0 ? [group, twin] : [twin, group];
    pieces.push(
      pieceOf(left, letter, "left", matchedOf(left.cut[0])),
      pieceOf(right, letter, "right", matchedOf(right.cut[0])),
    );
  }
  return pieces;
}

function compareGroups(a: Group, b: Group, order: ReadonlyMap<string, number>): number {
  const declared = (g: Group) => Math.min(...g.cut.map((c) => order.get(c.placed.pieceKind) ?? order.size));
  const [p, q] = [a.cut[0].placed, b.cut[0].placed];
  return (
    declared(a) - declared(b) ||
    differ(q.length, p.length) ||
    differ(q.width, p.width) ||
    differ(q.thickness, p.thickness) ||
    a.form.cuts.length - b.form.cuts.length ||
    (a.form.own < b.form.own ? -1 : 1)
  );
}

function differ(a: Piece["length"], b: Piece["length"]): number {
  const d = inches(a) - inches(b);
  return Math.abs(d) < 1e-8 ? 0 : d;
}

function compareSides(a: Group, b: Group): number {
  const mean = (g: Group, i: 0 | 1 | 2) => g.cut.reduce((sum, c) => sum + c.solid.centroid[i], 0) / g.cut.length;
  for (const i of [0, 1, 2] as const) {
    const d = mean(a, i) - mean(b, i);
    if (Math.abs(d) > 1e-6) return d;
  }
  return a.form.own < b.form.own ? -1 : 1;
}

/** A … Z, AA, AB … */
const letterOf = (n: number): string =>
  (n < 26 ? "" : letterOf(Math.floor(n / 26) - 1)) + String.fromCharCode(65 + (n % 26));

function pieceOf({ form, cut }: Group, letter: string, hand: Piece["hand"], matched: string | undefined): Piece {
  const { placed, solid } = cut[0];
  const names = cut.map(({ placed: p }) => (p.panelKind ? `${p.panelKind} ${p.group}` : p.group));
  return {
    mark: hand ? `${letter} ${hand}` : letter,
    letter,
    ...(hand ? { hand } : {}),
    name: [...new Set(names)].join(", "),
    count: cut.length,
    board: placed.board,
    length: placed.length,
    width: placed.width,
    thickness: placed.thickness,
    ripped: placed.ripped,
    planed: placed.planed,
    ...endsOf(form.trims, ownSize(placed), placed.length),
    cuts: form.cuts,
    ...(matched === undefined ? {} : { matched }),
    ...(placed.blanks ? { blanks: placed.blanks } : {}),
    ...(placed.outline ? { outline: placed.outline.name, shortGrain: shortGrainOf(placed) } : {}),
    volume: solid.volume,
    weight: solid.volume * placed.board.density,
    members: cut.map((c) => c.placed.id),
  };
}

// A worked-out item -> the tables of its ropes and of its rows of letters, for the binder. Private.
import { knotLoss } from "../item/cord/rope-load.ts";
import type { Cord, Item, TextField } from "../item/item.ts";
import { type BinderEdition, setFractions } from "./edition.ts";
import type { Table } from "./leaf.ts";

export type CordSheet = { readonly ropes?: Table; readonly letters?: Table; readonly notes: readonly string[] };

/** Undefined where the item has neither. */
export function cordSheet(item: Item, edition: BinderEdition): CordSheet | undefined {
  const { cords, textFields } = item;
  if (cords.length === 0 && textFields.length === 0) return undefined;
  return {
    ...(cords.length > 0 ? { ropes: ropesTable(cords, edition) } : {}),
    ...(textFields.length > 0 ? { letters: lettersTable(item, textFields, edition) } : {}),
    notes: notesOn(cords, edition),
  };
}

const ropesTable = (cords: readonly Cord[], { bare }: BinderEdition): Table => ({
  caption: "Rope, cut to these lengths, in inches",
  heads: ["Name", "Rope", "In the wood", "Along it", "Hanging", "Knots", "Slack", "Cut"],
  rows: cords.map((cord) => [
    cord.name.replaceAll("-", " "),
    setFractions(cord.rope.name),
    bare(cord.through),
    bare(cord.between),
    bare(cord.hanging),
    `${cord.knots} × ${bare(cord.perKnot)}`,
    bare(cord.slack),
    bare(cord.length),
  ]),
});

function lettersTable(item: Item, fields: readonly TextField[], { bare }: BinderEdition): Table {
  const marks = new Map(item.members.map((member) => [member.id, member.mark]));
  return {
    caption: "Rows of letters, from the top down, in inches",
    heads: ["Piece", "On its", "Width", "Height", "Says", "Put on by"],
    rows: fields.map((field) => [
      marks.get(field.member) ?? "",
      field.side,
      bare(field.width),
      bare(field.height),
      field.says,
      field.ways.join(" or "),
    ]),
  };
}

/** What each rope that hangs has to hold. A knotted rope is counted at what its knots leave of it. */
function notesOn(cords: readonly Cord[], edition: BinderEdition): string[] {
  const hung = cords.flatMap(({ name, load, rope }) => (load ? [{ name, load, rope }] : []));
  return hung.map(({ name, load, rope }) => {
    const slope = edition.figure({ kind: "angle", degrees: load.degrees });
    const broken = edition.weight(rope.strength * (1 - knotLoss));
    const pull = edition.weight(load.tension);
    return `The ${name.replaceAll("-", " ")} hangs at ${slope} above level and pulls ${pull}; new and knotted it breaks at about ${broken}. Strength: ${rope.strengthSource}.`;
  });
}

// Worked-out variants -> what a plan that is sold may know of them. The wall: everything in a pack is made from this.
import type { Item, Join, Member, Piece, WorkedSection } from "../../item/item.ts";
import type { Form } from "../../item/variants/forms.ts";
import type { Division } from "../../units/division.ts";
import { zero } from "../../units/length.ts";
import type { Board, BoardLength, Fastener, Finish, Fitting, Rope, Species, Yard } from "../../yard/yard.ts";
import { boardName, fastenerName } from "./generic-names.ts";

declare const inPack: unique symbol;

/**
 * An item without anything of the shop's own: boards, fasteners, finishes, fittings and ropes under generic names and public words,
 * without price, source or method; no notes, evidence, records or comparables. Names of pieces and panels, steps, checks and
 * cautions are the plan itself and stay. Drawings and findings take it like any other item; only `packForm` makes one.
 */
export type PackItem = Item & { readonly [inPack]: true };
export type PackForm = readonly [PackItem, ...PackItem[]];

/** Nothing is known of when it was seen. */
const undated = "";

/** The same thing is cleaned once, so that what was one stays one. */
function once<T extends object>(clean: (thing: T) => T): (thing: T) => T {
  const known = new Map<T, T>();
  return (thing) => {
    const before = known.get(thing) ?? clean(thing);
    known.set(thing, before);
    return before;
  };
}

type Cleaners = {
  readonly board: (board: Board) => Board;
  readonly fastener: (fastener: Fastener) => Fastener;
  readonly finish: (finish: Finish) => Finish;
  readonly fitting: (fitting: Fitting) => Fitting;
  readonly rope: (rope: Rope) => Rope;
  readonly glue: (name: string) => string;
};

/** Field by field, so that a field that is added to the yard stays out until somebody lets it in. */
function cleaners(division: Division, glues: Yard["glues"]): Cleaners {
  const names = new Map<string, string>();
  /** Two boards of one size and wood, such as two grades, are told apart by number. */
  const nameOf = (board: Board): string => {
    const known = names.get(board.name);
    if (known !== undefined) return known;
    const name = boardName(board, division);
    const like = [...names.values()].filter((one) => one === name || one.startsWith(`${name}, `)).length;
    names.set(board.name, like === 0 ? name : `${name}, sort ${like + 1}`);
    return names.get(board.name) ?? name;
  };
  const species = once(
    (wood: Species): Species => ({
      name: wood.name,
      specificGravity: wood.specificGravity,
      stiffness: wood.stiffness,
      rupture: wood.rupture,
      radial: wood.radial,
      tangential: wood.tangential,
      saturation: wood.saturation,
      ...(wood.fastenerGravity === undefined ? {} : { fastenerGravity: wood.fastenerGravity }),
      decay: wood.decay,
      source: "",
    }),
  );
  return {
    board: once((board) => ({
      name: nameOf(board),
      ...(board.nominal === undefined ? {} : { nominal: board.nominal }),
      thickness: board.thickness,
      width: board.width,
      sizeFrom: board.sizeFrom,
      species: { ...species(board.species), name: board.words.split(",")[0]?.trim() ?? "" },
      treatment: board.treatment,
      showSides: board.showSides,
      moisture: board.moisture,
      density: board.density,
      lengths: board.lengths.map(lengthAlone),
      words: board.words,
      at: board.at,
    })),
    fastener: once((fastener) => ({
      name: fastenerName(fastener),
      kind: fastener.kind,
      diameter: fastener.diameter,
      length: fastener.length,
      weight: fastener.weight,
      material: fastener.material,
      driver: "",
      pack: { count: 1, price: zero, priced: undated },
      at: fastener.at,
    })),
    finish: once((finish) => ({
      name: finish.words,
      kind: finish.kind,
      words: finish.words,
      colour: finish.colour,
      clear: finish.clear,
      coverage: finish.coverage,
      tin: { size: "", gallons: finish.tin.gallons, price: zero, priced: undated },
      recoatHours: finish.recoatHours,
      cureHours: finish.cureHours,
      oilyRags: finish.oilyRags,
      method: "",
      care: finish.care,
      at: finish.at,
    })),
    fitting: once((fitting) => ({
      name: fitting.words,
      words: fitting.words,
      ...(fitting.size ? { size: fitting.size } : {}),
      weight: fitting.weight,
      price: zero,
      priced: undated,
      at: fitting.at,
    })),
    rope: once((rope) => ({
      name: rope.words,
      words: rope.words,
      material: rope.material,
      diameter: rope.diameter,
      strength: rope.strength,
      strengthSource: "that of the rope it was worked out for; ask for yours",
      weightPerFoot: rope.weightPerFoot,
      sold: rope.sold,
      pricePerFoot: zero,
      priced: undated,
      at: rope.at,
    })),
    glue: (name) => glues.find((glue) => glue.name === name)?.words ?? "wood glue",
  };
}

/** A stranger's prices are his own: boards count by their length, so that the plan takes the least wood, and none lies in the shop. */
const lengthAlone = ({ length, usable }: BoardLength): BoardLength => ({
  length,
  usable,
  price: length,
  priced: undated,
});

/** All variants of one form, cleaned alike. */
export function packForm(form: Form, division: Division, glues: Yard["glues"]): PackForm {
  const clean = cleaners(division, glues);
  const [first, ...others] = form.map((item) => packItem(item, clean));
  return [first as PackItem, ...others];
}

function packItem(item: Item, clean: Cleaners): PackItem {
  const cleaned: Item = {
    title: item.title,
    slug: item.slug,
    file: "",
    classes: item.classes,
    hasPlan: item.hasPlan,
    revisions: item.revisions,
    availability: item.availability,
    photoWords: [],
    ...(item.line === undefined ? {} : { line: item.line }),
    ...(item.purpose === undefined ? {} : { purpose: item.purpose }),
    variant: {
      ...item.variant,
      finish: item.variant.finish.map((coat) => ({ ...coat, finish: clean.finish(coat.finish) })),
    },
    variants: item.variants,
    sayings: item.sayings,
    loads: item.loads,
    madeFor: item.madeFor,
    ...(item.soldAs ? { soldAs: item.soldAs } : {}),
    overall: item.overall,
    weight: item.weight,
    woodWeight: item.woodWeight,
    centreOfMass: item.centreOfMass,
    pieces: item.pieces.map((piece) => packPiece(piece, clean)),
    members: item.members.map((member) => packMember(member, clean)),
    panels: item.panels,
    fittings: item.fittings.map((placed) => ({ ...placed, fitting: clean.fitting(placed.fitting) })),
    contacts: item.contacts,
    overlaps: item.overlaps,
    joins: item.joins.map((join) => packJoin(join, clean)),
    cords: item.cords.map((cord) => ({ ...cord, rope: clean.rope(cord.rope) })),
    textFields: item.textFields,
    intro: item.intro,
    sections: item.sections.map((section) => packSection(section, clean)),
    gaps: item.gaps,
  };
  return cleaned as PackItem;
}

const packPiece = (piece: Piece, { board }: Cleaners): Piece => ({
  ...piece,
  board: board(piece.board),
  ...(piece.blanks ? { blanks: piece.blanks.map((blank) => ({ ...blank, board: board(blank.board) })) } : {}),
});

const packMember = (member: Member, { board, finish }: Cleaners): Member => ({
  ...member,
  board: board(member.board),
  coats: member.coats.map((coat) => ({ ...coat, finish: finish(coat.finish) })),
});

const packJoin = (join: Join, { fastener, glue }: Cleaners): Join => ({
  ...join,
  ...(join.glue === undefined ? {} : { glue: glue(join.glue) }),
  driven: join.driven.map((one) => ({ ...one, fastener: fastener(one.fastener) })),
});

/** Paragraphs that belong to no step are notes of the shop. */
const packSection = (section: WorkedSection, clean: Cleaners): WorkedSection => ({
  ...section,
  steps: section.steps.map((step) => ({ ...step, joins: step.joins.map((join) => packJoin(join, clean)) })),
  notes: [],
});

// The sentences of the yard stage's problems, one for each code.
import type { Sentence } from "../sentences.ts";

const optional = (nearest: string | undefined) => (nearest === undefined ? {} : { nearest });

export const yardSentences = {
  "yard-length": (f: { key: string; found: string; why: string; suggestion: string | undefined }) => ({
    says: `"${f.found}" under "${f.key}" can't be read as a length: ${f.why}.`,
    found: f.found,
    expected: "a length like 5 1/2, 8 ft, 1' 6 1/2\" or 450 mm",
    ...optional(f.suggestion),
    mend: f.suggestion === undefined ? "Write the length in inches, or with its unit." : `Write ${f.suggestion}.`,
  }),
  "yard-sides": (f: { key: string; found: string; sides: readonly string[] }) => ({
    says: `"${f.key}" is "${f.found}", which is not ${f.sides.length} sizes.`,
    found: f.found,
    expected: f.sides.join(" x "),
    mend: `Write ${f.sides.length === 2 ? "both" : `all ${f.sides.length}`}, with x between them.`,
  }),
  "yard-number": (f: { key: string; found: string; expected: string }) => ({
    says: `"${f.found}" under "${f.key}" is not ${f.expected}.`,
    found: f.found,
    expected: f.expected,
    mend: `Write ${f.expected}.`,
  }),
  "shop-minutes": (f: { key: string; found: string; timed: boolean }) => ({
    says: `"${f.found}" under "${f.key}" can't be read as ${f.timed ? "times that were taken" : "minutes"}.`,
    found: f.found,
    expected: f.timed
      ? "minutes for how many, like 40 for 32, with ; between one time and the next"
      : "minutes for one, like 1.5, or with the setting up, like 1.5, 4 to set up",
    mend: f.timed
      ? "Write the minutes without the setting up, then how many were done in them (of sanding and coating: square feet)."
      : "Write minutes as a plain number, without a unit.",
  }),
  "timed-alone": (_: Record<never, never>) => ({
    says: 'There are times under "timed", but no "minutes" that they could set right.',
    expected: '"minutes" with a line for every kind of work',
    mend: 'Add "minutes" to the shop file, or take "timed" out.',
  }),
  "selling-alone": (_: Record<never, never>) => ({
    says: 'There is "selling", but no "minutes", so no price can count the work.',
    expected: '"minutes" with a line for every kind of work',
    mend: 'Add "minutes" to the shop file, or take "selling" out.',
  }),
  "selling-nowhere": (_: Record<never, never>) => ({
    says: 'Under "selling" there is no way to sell.',
    expected: '"local", "stall" or "posted", or more of them',
    mend: "Add one of them with its fees.",
  }),
  "fees-too-high": (f: { where: string; percent: string }) => ({
    says: `Of what a buyer pays ${f.where}, fee and sales tax take ${f.percent} %; no price can make that good.`,
    found: `${f.percent} %`,
    expected: "fees that leave something of the price",
    mend: "Look at the fee again: it is a share in %, like 2.9.",
  }),
  "yard-price": (f: { found: string; below: boolean }) => ({
    says: f.below ? `A price can't be below 0, as in "${f.found}".` : `"${f.found}" can't be read as a price.`,
    found: f.found,
    expected: "dollars and cents, like 3.98",
    mend: "Write the price in dollars with a point before the cents.",
  }),
  "yard-date": (f: { found: string }) => ({
    says: `"${f.found}" is not a day of the calendar.`,
    found: f.found,
    expected: "year-month-day, like 2026-10-03",
    mend: "Write the day the price was seen as year, month and day with two digits each for the last two.",
  }),
  "yard-no-date": (f: { name: string }) => ({
    says: `The price of "${f.name}" has no date, so nobody can tell whether it still holds.`,
    expected: "the day the price was seen",
    mend: 'Add a line "priced: 2026-10-03" here or at the top of the file.',
  }),
  "yard-species": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is not a wood the yard knows.`,
    found: f.found,
    expected: `one of ${f.known.map((k) => `"${k}"`).join(", ")}`,
    ...optional(f.nearest),
    mend: 'Write one of these, or give the wood its figures under "species".',
  }),
  "yard-nominal": (f: { found: string; sawn: string; nearest: string | undefined }) => ({
    says: `No ${f.sawn} board "${f.found}" stands in the table of dressed sizes (PS 20).`,
    found: f.found,
    expected: `a nominal section of the ${f.sawn} table, like 2x4 or 5/4x6`,
    ...optional(f.nearest),
    mend: 'Correct the name, or add a line "size: thickness x width" with what the seller states.',
  }),
  "yard-not-dry": (f: { name: string; moisture: number; most: number }) => ({
    says: `"${f.name}" has ${f.moisture} % moisture, but its size is that of a dry board, which has at most ${f.most} %.`,
    found: `${f.moisture}`,
    expected: `at most ${f.most}, or a green board's size`,
    mend: 'Add a line "sawn: green", or measure the batch and add "measured: thickness x width".',
  }),
  "yard-no-size": (f: { name: string }) => ({
    says: `"${f.name}" has no size: its name is not a nominal section.`,
    expected: '"size", "measured" or "nominal"',
    mend: 'Add a line like "size: 5/8 x 5 1/2" (thickness x width).',
  }),
  "yard-length-twice": (f: { name: string; length: string }) => ({
    says: `"${f.name}" is offered twice at ${f.length} in.`,
    found: f.length,
    expected: "each length once",
    mend: "Take one of the two out.",
  }),
  "yard-vehicle": (f: { name: string; shortest: string; vehicle: string }) => ({
    says: `No "${f.name}" fits the vehicle: the shortest is ${f.shortest} in long, the vehicle takes ${f.vehicle} in.`,
    found: `${f.shortest} in`,
    expected: `a length up to ${f.vehicle} in`,
    mend: "Have it cut shorter at the yard and write that length with its price, or say a longer vehicle.",
  }),
  "yard-own-wide": (f: { found: string; whole: string }) => ({
    says: `What lies in the shop can't be ${f.found} in wide: the board is ${f.whole} in wide.`,
    found: `${f.found} in`,
    expected: `length x width, up to ${f.whole} in wide`,
    mend: "Write the length first, then the width; or write the wider one under the board that it is.",
  }),
  "one-board-too-small": (f: { title: string; board: string; kind: string }) => ({
    says: `No single ${f.board} gives all pieces "${f.kind}" of the ${f.title}, which are to come from one board.`,
    expected: "a board that is long and wide enough for all of them",
    mend: 'Add a longer board to the yard, or take "from one board" out of the piece.',
  }),
  "too-few-boards": (f: { title: string; board: string; there: string }) => ({
    says: `The boards of "${f.board}" are too few for the ${f.title}: there are ${f.there}.`,
    expected: "enough boards for one of it",
    mend: "Correct how many are there, leave the number out, or add another length.",
  }),
  "yard-line-twice": (f: { key: string }) => ({
    says: `"${f.key}" stands in two files of the yard; it holds for all of them.`,
    expected: "one line in one file",
    mend: "Take one of the two out.",
  }),
  "yard-nothing-left": (f: { length: string; loss: string }) => ({
    says: `Of a board ${f.length} in long nothing is left after an end loss of ${f.loss} in.`,
    found: f.length,
    expected: "a length over the end loss",
    mend: "Correct the length or the end loss.",
  }),
  "yard-name-twice": (f: { name: string; section: string }) => ({
    says: `"${f.name}" stands twice under "${f.section}".`,
    found: f.name,
    expected: "each name once over all yard files",
    mend: "Take one of the two out, or give it another name.",
  }),
  "yard-fastener-name": (f: { name: string }) => ({
    says: `From "${f.name}" nobody can tell the kind, diameter and length.`,
    found: f.name,
    expected: '"screw No. 6 x 1", "pocket screw No. 8 x 2 1/2", "nail 8d", "dowel 3/8 x 2" or "bolt 3/8 x 4"',
    mend: 'Name it so, or add lines "kind", "diameter" and "length".',
  }),
  "yard-material": (f: { found: string; known: readonly string[] }) => ({
    says: `How heavy "${f.found}" is, is not known here.`,
    found: f.found,
    expected: `a material with one of the words ${f.known.join(", ")}, or a weight`,
    mend: 'Add a line like "weight: 0.2 oz" for one piece.',
  }),
  "yard-colour": (f: { found: string }) => ({
    says:
      f.found === ""
        ? "The colour is empty; a # after a blank starts a remark."
        : `"${f.found}" can't be read as a colour.`,
    found: f.found,
    expected: "six digits of red, green and blue without #, like 7a5230",
    mend: "Write the six digits without #.",
  }),
  "yard-rope-strength": (f: { name: string; known: readonly string[] }) => ({
    says: `What load breaks "${f.name}" when it is new is not known here.`,
    expected: `a rope of ${f.known.join(", ")} 3/16, 1/4, 3/8 or 1/2 thick, or a strength with its source`,
    mend: 'Add lines like "strength: 540 lb" and "source: the maker\'s label".',
  }),
  "yard-rope-source": (f: { name: string; found: string }) => ({
    says: `Nothing says where the ${f.found} of "${f.name}" come from.`,
    found: f.found,
    expected: "who states the strength",
    mend: 'Add a line like "source: the maker\'s label".',
  }),
} satisfies Record<string, (facts: never) => Sentence>;

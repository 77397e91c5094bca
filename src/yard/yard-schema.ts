// The shape of a yard file. Every value is the text the maker wrote; what is marked "store" may reach the public shelf.
import { z } from "zod";

const text = (expected: string) => z.string({ error: expected }).min(1, expected);
const shown = { shelf: "store" } as const;

const price = text("dollars, like 3.98");
const date = text("the day the price was seen, like 2026-10-03");

export const speciesSchema = z.strictObject({
  gravity: text("specific gravity at 12 % moisture, like 0.42"),
  stiffness: text("modulus of elasticity in psi, like 1300000"),
  rupture: text("modulus of rupture in psi, like 9400"),
  radial: text("change of width per 1 % moisture, quartersawn, like 0.00148"),
  tangential: text("change of width per 1 % moisture, flatsawn, like 0.00248"),
  saturation: text("moisture in % at which shrinking starts, like 30"),
  "fastener-gravity": text("oven-dry specific gravity, like 0.42").optional(),
  decay: z.enum(["resistant", "moderate", "slight or none"]),
  source: text("where the figures come from"),
});

export const boardSchema = z.strictObject({
  species: text("the wood's name"),
  nominal: text("a nominal section, like 2x4").optional(),
  sawn: z.enum(["dry", "green"]).optional(),
  size: text("the true size the seller states, thickness x width, like 5/8 x 5 1/2").optional(),
  measured: text("the true size of the batch in hand, thickness x width, like 19/32 x 5 7/16").optional(),
  treatment: z.enum(["none", "preservative"]).optional(),
  show: z.enum(["one side", "both sides"]).optional(),
  moisture: text("moisture in %, like 12"),
  "end-loss": text("what is lost at the ends, its saw cuts included, like 1 1/2").optional(),
  words: text("what the buyer reads, like western redcedar, not treated").meta(shown),
  priced: date.optional(),
  lengths: z.record(z.string(), text("dollars, like 3.98; with how many there are, like 3.98, 4 there")),
  "in-stock": z.record(z.string(), text("how many of this length lie in the shop, like 2")).optional(),
});

export const fastenerSchema = z.strictObject({
  kind: z.enum(["screw", "pocket screw", "nail", "dowel", "bolt"]).optional(),
  diameter: text("shank diameter in inches").optional(),
  length: text("a length").optional(),
  material: text("what it is made of, like stainless steel").meta(shown),
  driver: text("the bit or tool that drives it, like star T-15"),
  weight: text("one one's weight, like 0.1 oz").optional(),
  pack: text("count for dollars, like 100 for 9.50"),
  priced: date.optional(),
});

export const finishSchema = z.strictObject({
  kind: z.enum(["oil", "stain", "paint", "limewash", "wax"]),
  words: text("what the buyer reads").meta(shown),
  colour: text("six digits of red, green and blue without #, like 7a5230").meta(shown),
  clear: text("0 where it hides the grain, 1 where it is clear"),
  coverage: text("square feet a gallon covers in one coat, like 200"),
  tin: text("what a tin holds, like 1 quart"),
  price,
  priced: date.optional(),
  recoat: text("hours between coats, like 4"),
  cure: text("hours until it may be used, like 72"),
  "oily-rags": z.enum(["yes", "no"]),
  method: text("how it is put on"),
  care: text("how the buyer looks after it").meta(shown),
});

export const fittingSchema = z.strictObject({
  words: text("what the buyer reads").meta(shown),
  size: text("length x width x thickness, like 2 x 5/8 x 1/16").meta(shown).optional(),
  weight: text("its weight, like 3 oz").meta(shown),
  price,
  priced: date.optional(),
});

/** Weight and price are for one foot. */
export const ropeSchema = z.strictObject({
  words: text("what the buyer reads").meta(shown),
  material: text("what it is made of, like polypropylene").meta(shown),
  diameter: text("how thick it is, like 1/4").meta(shown),
  strength: text("what breaks it when it is new and has no knot, like 540 lb").optional(),
  source: text("who says so").optional(),
  weight: text("what a foot of it weighs, like 0.2 oz"),
  price,
  sold: text("the length it is sold by, like 1 ft").optional(),
  priced: date.optional(),
});

export const glueSchema = text("what the buyer reads").meta(shown);

/**
 * A whole file; every section may be absent. `priced` is the date of all prices in the file that have none of their own; the other
 * two lines hold for all files.
 */
export const yardSchema = z.strictObject({
  priced: date.optional(),
  vehicle: text("the longest board that fits the vehicle, like 8 ft").optional(),
  "fresh-end": text("what is sawn off the end of what lies in the shop, like 1/4").optional(),
  species: z.record(z.string(), speciesSchema).optional(),
  boards: z.record(z.string(), boardSchema).optional(),
  fasteners: z.record(z.string(), fastenerSchema).optional(),
  finishes: z.record(z.string(), finishSchema).optional(),
  fittings: z.record(z.string(), fittingSchema).optional(),
  ropes: z.record(z.string(), ropeSchema).optional(),
  glues: z.record(z.string(), glueSchema).optional(),
});

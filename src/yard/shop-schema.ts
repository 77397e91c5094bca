// The shape of a shop file. What is marked "store" may reach the public shelf; all else stays in the binder.
import { z } from "zod";
import { batches, works } from "./shop-rates.ts";

const text = (expected: string) => z.string({ error: expected }).min(1, expected);
const shown = { shelf: "store" } as const;

const dollars = text("dollars, like 4.20");
const share = text("a share in %, like 6.5");

/** Every kind of work with a text of its own. */
const eachWork = (expected: string) =>
  z.strictObject(
    Object.fromEntries(works.map((work) => [work, text(expected)])) as Record<(typeof works)[number], z.ZodString>,
  );

const channelSchema = z.strictObject({
  fee: text("the share of all the buyer pays that is kept as a fee, in %, like 2.9"),
  fixed: text("dollars of fee for each sale, like 0.30"),
  sale: text("dollars that one sale costs there, like 4.00"),
  day: text("dollars that a day there costs, whatever is sold, like 35.00").optional(),
  tax: z.enum(["in", "out"]),
  step: text("dollars that prices go up by, like 1.00"),
});

const sellingSchema = z.strictObject({
  batch: text(`how many are made at once: ${batches.join(", ")}`),
  overhead: share,
  profit: share,
  "profit-as": z.enum(["markup", "margin"]),
  "sales-tax": share,
  abrasives: text("dollars for each sanded square foot, like 0.05"),
  glue: text("dollars for each glued join, like 0.08"),
  sundries: text("dollars for each thing sold, like 0.75"),
  packing: z.strictObject({
    material: dollars,
    minutes: text("minutes to pack one, like 8"),
    weight: text("what box and padding weigh, like 2 lb"),
    room: text("padding at every side, like 1 1/2"),
  }),
  postage: z.strictObject({
    divisor: text("cubic inches that are billed as a pound, like 139"),
    base: text("dollars for any parcel, like 7.50"),
    pound: text("dollars for each billed pound, like 0.62"),
    most: text("the most that may be billed for a thing that is posted, like 100 lb"),
  }),
  personalising: z
    .strictObject({
      material: text("dollars more for each row of the buyer's own letters, like 0.80"),
      minutes: text("minutes more for each row of the buyer's own letters, like 6"),
    })
    .optional(),
  local: channelSchema.optional(),
  stall: channelSchema.optional(),
  posted: channelSchema.optional(),
});

export const shopSchema = z.strictObject({
  name: text("the shop's name").meta(shown),
  tagline: text("one line under the name").meta(shown),
  notice: text("a notice that is printed on every shelf").meta(shown).optional(),
  place: text("where it is").meta(shown),
  contact: text("how to reach it").meta(shown),
  address: text("where the store is published, like https://shop.example/").meta(shown).optional(),
  ordering: text("lead time, pickup and returns").meta(shown),
  about: text("who makes it and how, for the page about the shop").meta(shown).optional(),
  pickup: text("where and when it can be fetched").meta(shown).optional(),
  delivery: text("how it is sent, and how far").meta(shown).optional(),
  returns: text("what happens when it comes back").meta(shown).optional(),
  "care-note": text("care that holds for everything sold").meta(shown),
  plans: z
    .strictObject({
      licence: text("what a buyer of a plan may do with it").meta(shown),
      ask: text("where a builder's questions go").meta(shown),
      latest: text("where the latest revision of a plan is told").meta(shown),
    })
    .meta(shown)
    .optional(),
  division: text("what lengths are printed to: 1/8, 1/16, 1/32 or mm"),
  "bench-hours": text("when you are at the bench, like 8:00 to 18:00").optional(),
  papers: text("the papers of the binder's PDFs: letter, a4, letter large, a4 large").optional(),
  kerf: text("the width of the saw's cut, like 1/8"),
  saws: z
    .strictObject({
      "shortest-crosscut": text("the least that a hand holds at the crosscut saw, like 8").optional(),
      "shortest-rip": text("the shortest that is pushed along the rip fence, like 12").optional(),
      keep: text("length x width of offcuts worth keeping, like 12 x 1 1/2").optional(),
      nudge: text("how far a size may be changed to save wood, like 1/2").optional(),
    })
    .optional(),
  wage: text("dollars an hour, like 24.00"),
  notes: text("notes for the shop"),
  listing: z
    .strictObject({
      title: text("the most letters of a title, like 80").optional(),
      short: text("the most letters of a short description, like 160").optional(),
      long: text("the most letters of a long description, like 3000").optional(),
      "alt-text": text("the most letters of a picture's text, like 140").optional(),
      keywords: text("how many keywords, like 12").optional(),
      keyword: text("the most letters of one keyword, like 24").optional(),
      images: text("sizes of pictures in pixels, like 2000x2000, 1200x630").optional(),
    })
    .optional(),
  minutes: eachWork("minutes for one, and to set up, like 1.5, 4 to set up")
    .extend({ fetch: text("minutes to fetch the boards of a batch, like 20") })
    .optional(),
  timed: eachWork("minutes you took for how many, like 40 for 32; 36 for 30").partial().optional(),
  selling: sellingSchema.optional(),
});

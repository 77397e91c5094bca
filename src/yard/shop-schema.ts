// The shape of a shop file. What is marked "store" may reach the public shelf; all else stays in the binder.
import { z } from "zod";

const text = (expected: string) => z.string({ error: expected }).min(1, expected);
const shown = { shelf: "store" } as const;

export const shopSchema = z.strictObject({
  name: text("the shop's name").meta(shown),
  tagline: text("one line under the name").meta(shown),
  notice: text("a notice that is printed on every shelf").meta(shown).optional(),
  place: text("where it is").meta(shown),
  contact: text("how to reach it").meta(shown),
  address: text("where the store is published, like https://shop.example/").meta(shown).optional(),
  ordering: text("lead time, pickup and returns").meta(shown),
  "care-note": text("care that holds for everything sold").meta(shown),
  division: text("what lengths are printed to: 1/8, 1/16, 1/32 or mm"),
  kerf: text("the width of the saw's cut, like 1/8"),
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
    })
    .optional(),
});

// The schemas of recipe, yard and shop -> JSON Schema files that an editor can check a maker's typing with.
import { z } from "zod";
import { frontMatterSchema } from "../recipe/front-matter.ts";
import { ordersSchema } from "../yard/order-schema.ts";
import { shopSchema } from "../yard/shop-schema.ts";
import { yardSchema } from "../yard/yard-schema.ts";

type JsonSchema = Record<string, unknown>;

/** A file of the site; `path` counts from its root. */
export type SchemaFile = { readonly path: string; readonly text: string };

/** What an editor says of each part of a recipe. */
export const recipeWords: Readonly<Record<string, string>> = {
  format: "The language this recipe is written in; without it, the present one.",
  title: "What the thing is called; the page's address is made from it. Public.",
  class:
    "Hazard letters with blanks between: D decor, S static use, L load-bearing, C child, F food contact, A animals, H hung, T tip risk, G glazing, X soil or wet. Public.",
  line: "The line of goods it belongs to. Public.",
  draft: "yes keeps the recipe out of the site.",
  listed: "The day it came into the store, like 2026-10-03; the feed is made of it. Public.",
  availability:
    "Whether a buyer finds it ready: ready now 2, made to order in 3 weeks, or sold; for all, or a line for each variant. Public.",
  photos: "What each photograph shows, by the number its file's name starts with. Public.",
  purpose: "What it is for, in a sentence. Public.",
  notes: "Notes for the shop.",
  revisions:
    "What changed when, like 2026-10-05: first written; the last one's day stands on every sheet. On paper only.",
  plan: "yes sells a plan pack of it; it then stands on the packs shelf.",
  for: "Who or what it is for: adults, children, animals, plants, goods. Public.",
  "sold as": "How many are sold as one: pair, or set of 4. Public.",
  price: "What you ask: 85.00 for all variants, or a line for each; without it the worked-out price is shown. Public.",
  record: "Batches you made and the minutes they took: 2026-10-12: 5 made in stained, rip 22, screw 260. Private.",
  "left to the buyer": "The heading of the section that whoever buys it does; an assembly card is made of it.",
  season: "Between which days of the year it sells: 04-15 to 06-30. Private.",
  comparables: "What others ask for the like, dated: spring fair: 79.00, 2026-05-09, 28 x 16 x 24. Private.",
  overall: "width x depth x height of the finished thing; fit leaves one to its pieces. Public.",
  sizes: "Sizes you choose, each once under a name.",
  pieces: "What is cut from which board: fence board, ripped to 1 11/16.",
  outlines: "Curved shapes, each with its edge.",
  panels: "Flat assemblies as they lie on the bench; each has a size and lines.",
  assemblies: "What is put together in space and used again; each has a size and lines.",
  stand: "Where panels and single pieces stand in the finished thing.",
  fittings: "Bought things that aren't wood.",
  joins: "What is fastened to what: rails to legs: 2 pocket screw No. 6 x 1, back.",
  cuts: "Holes, notches and laps.",
  cords: "Rope through holes.",
  text: "Letters on boards.",
  finish: "Schemes: what is coated with what. Their names are public.",
  choices: "What the buyer may choose; the first of each is the standard one. Their names are public.",
  loads: "What is put on it: pots: 6 of 8 lb, on boards. Their names are public.",
  claims: "Figures that must come out as stated.",
  fixed: "Sizes, pieces and lines whose sizes are never nudged to save wood: width, pitch. Private.",
  evidence: "Tests and reasons: what of class C needs before it has a page in the store.",
};

const about: readonly (readonly [name: string, schema: z.ZodType, title: string, says: string])[] = [
  ["recipe", frontMatterSchema, "Recipe", "The lines between the --- lines of a recipe."],
  ["yard", yardSchema, "Yard", "A file of the yard: boards, fasteners, finishes, fittings."],
  ["shop", shopSchema, "Shop", "The shop's own file."],
  ["orders", ordersSchema, "Orders", "A file of orders, each under its number or the buyer's initials."],
];

/** The same bytes each time. */
export const schemaFiles = (): readonly SchemaFile[] =>
  about.map(([name, schema, title, says]) => {
    const { $schema, ...rest } = z.toJSONSchema(schema, {
      override: ({ zodSchema, jsonSchema }) => asTyped(zodSchema, jsonSchema as JsonSchema),
    }) as JsonSchema;
    const properties = (rest.properties ?? {}) as Record<string, JsonSchema>;
    const described = name === "recipe" ? withWords(properties) : properties;
    const whole = { $schema, title, description: says, ...rest, properties: described };
    return { path: `schema/${name}.json`, text: `${JSON.stringify(whole, null, 2)}\n` };
  });

const withWords = (properties: Readonly<Record<string, JsonSchema>>): Record<string, JsonSchema> =>
  Object.fromEntries(
    Object.entries(properties).map(([key, schema]) => {
      const words = recipeWords[key];
      return [key, words === undefined ? schema : { description: words, ...schema }];
    }),
  );

/** How an editor reads what we read as text: without quotes, a number is a number to it. */
function asTyped(zodSchema: z.core.$ZodType, schema: JsonSchema): void {
  delete schema.shelf;
  delete schema.propertyNames;
  if (schema.type !== "string" || schema.enum !== undefined) return;
  schema.type = ["string", "number", "boolean"];
  const wanted = expectedOf(zodSchema);
  if (wanted !== undefined) schema.description = wanted;
}

/** The words that a text's own schema has for what is expected there. */
function expectedOf(schema: z.core.$ZodType): string | undefined {
  const { error } = schema._zod.def;
  const says = error?.({ code: "invalid_type", expected: "string", input: undefined, path: [] } as never);
  return typeof says === "string" ? says : says?.message;
}

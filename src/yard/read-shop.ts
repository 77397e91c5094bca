// The text of the shop file -> the Shop, or every problem in it at its line.

import type { Place, Written } from "../problems/place.ts";
import { inReadingOrder, type Problem, problem } from "../problems/problem.ts";
import { checkShape, entryAt } from "../problems/tree-shape.ts";
import { readYamlTree, type TreeMap } from "../problems/yaml-tree.ts";
import type { Division } from "../units/division.ts";
import { readBenchHours } from "./bench-hours.ts";
import { readImageSizes } from "./image-sizes.ts";
import { readLimits } from "./listing-limits.ts";
import { readPapers, usualPapers } from "./papers.ts";
import { type Problems, parsePrice, parseYardLength } from "./parse-values.ts";
import { readSelling } from "./read-selling.ts";
import { readMinutes } from "./read-shop-minutes.ts";
import { readSaws } from "./saws.ts";
import { shopSchema } from "./shop-schema.ts";
import { checkPublicWords } from "./unprovable.ts";
import { readWebAddress } from "./web-address.ts";
import type { Shop } from "./yard.ts";

const divisions: Readonly<Record<string, Division>> = {
  "1/8": { unit: "in", per: 8 },
  "1/16": { unit: "in", per: 16 },
  "1/32": { unit: "in", per: 32 },
  mm: { unit: "mm" },
};

/** Words for the store that a shop may leave out. */
const told = ["about", "pickup", "delivery", "returns"] as const;

/** The shop is absent where there is any problem. */
export function readShop(file: string, text: string): { shop?: Shop; problems: Problem[] } {
  const { tree, problems } = readYamlTree(file, text, 1);
  if (problems.length > 0) return { problems: inReadingOrder(problems) };
  const { placed: f, problems: found } = checkShape(tree, shopSchema, "of the shop");
  if (!f) return { problems: inReadingOrder(found) };
  const words = told.map((key) => f[key]);
  problems.push(...checkPublicWords([f.tagline, f.ordering, f["care-note"], f.plans?.licence, ...words]));
  const division = readDivision(f.division, problems);
  const kerf = parseYardLength("kerf", f.kerf, problems);
  const wage = parsePrice(f.wage, problems);
  const address = f.address && readWebAddress(f.address, problems);
  const papers = f.papers ? readPapers(f.papers, problems) : usualPapers;
  const benchHours = f["bench-hours"] && readBenchHours(f["bench-hours"], problems);
  const saws = f.saws && readSaws(f.saws, problems);
  const listing = f.listing && readLimits(f.listing, problems);
  const images = f.listing?.images && readImageSizes(f.listing.images, problems);
  const minutes = f.minutes && readMinutes(f.minutes, f.timed, problems);
  if (f.timed && !f.minutes) problems.push(problem("timed-alone", keyAt(tree, "timed"), {}));
  const selling = f.selling && readSelling(f.selling, problems);
  if (f.selling && !f.minutes) problems.push(problem("selling-alone", keyAt(tree, "selling"), {}));
  if (!division || !kerf || !wage || problems.length > 0) return { problems: inReadingOrder(problems) };
  return {
    shop: {
      name: f.name.text,
      tagline: f.tagline.text,
      ...(f.notice ? { notice: f.notice.text } : {}),
      place: f.place.text,
      contact: f.contact.text,
      division,
      kerf,
      papers,
      ...(benchHours ? { benchHours } : {}),
      ordering: f.ordering.text,
      careNote: f["care-note"].text,
      ...Object.fromEntries(told.flatMap((key) => (f[key] ? [[key, f[key].text]] : []))),
      wage,
      notes: f.notes.text,
      ...(address === undefined ? {} : { address }),
      ...(f.plans
        ? { plans: { licence: f.plans.licence.text, ask: f.plans.ask.text, latest: f.plans.latest.text } }
        : {}),
      ...(saws ? { saws } : {}),
      ...(listing ? { listing } : {}),
      ...(images ? { images } : {}),
      ...(minutes ? { minutes } : {}),
      ...(selling ? { selling } : {}),
    },
    problems,
  };
}

const keyAt = (tree: TreeMap, key: string): Place => entryAt(tree, [key])?.key.at ?? tree.at;

function readDivision(w: Written, problems: Problems): Division | undefined {
  const division = divisions[w.text.replace(/\s*(in|")$/, "")];
  if (!division)
    problems.push(
      problem("not-one-of", w.at, {
        key: "division",
        found: w.text,
        allowed: Object.keys(divisions),
        nearest: undefined,
      }),
    );
  return division;
}

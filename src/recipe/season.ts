// `04-15 to 06-30` -> the days of the year between which a thing sells. Private.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { isDay } from "../units/day.ts";
import type { Season } from "./recipe.ts";
import type { Form, Gathered } from "./scan.ts";

export const seasonForm: Form = {
  form: "MONTH-DAY to MONTH-DAY",
  means: "Between these days of the year it sells; the binder counts back to the day its batch is begun at the latest.",
  example: "04-15 to 06-30",
};

/** A season may run over the end of the year; the 29th of February is no day of every year. */
export function readSeason(value: Written | undefined, into: Gathered): { readonly season?: Season } {
  if (!value) return {};
  const [, from = "", to = ""] = /^(\d\d-\d\d) to (\d\d-\d\d)$/.exec(value.text) ?? [];
  if ([from, to].every((one) => isDay(`2027-${one}`)) && from !== to) return { season: { from, to } };
  into.problems.push(problem("season-days", value.at, { found: value.text }));
  return {};
}

// A maker's mistake as data: what code it has, where it stands, and the facts its sentence needs.
import { comparePlaces, type Place } from "./place.ts";
import { type Code, type Facts, type Sentence, sentences } from "./sentences.ts";

/** One mistake. `also` is the other end when two places clash. */
export type Problem = { readonly at: Place; readonly also?: Place; readonly code: Code } & Sentence;

/** The problem of this code at this place; its sentence is made here, once, from the facts. */
export function problem<C extends Code>(code: C, at: Place, facts: Facts<C>, also?: Place): Problem {
  const say = sentences[code] as (facts: Facts<C>) => Sentence;
  return { code, at, ...(also ? { also } : {}), ...say(facts) };
}

/** All problems in reading order, each once. */
export function inReadingOrder(problems: readonly Problem[]): Problem[] {
  const seen = new Set<string>();
  return [...problems]
    .sort((a, b) => comparePlaces(a.at, b.at) || (a.code < b.code ? -1 : a.code > b.code ? 1 : 0))
    .filter((p) => {
      const key = JSON.stringify(p);
      return !seen.has(key) && seen.add(key);
    });
}

// The texts that stand on every printed page of a set -> the style that puts them into the page's margin.
import type { Markup } from "./leaf.ts";
import type { SheetSet } from "./sheet-set.ts";

/** A CSS string: whatever isn't a letter, a digit or a blank is written by its number, so that nothing of it ends string or style. */
const cssString = (text: string): string =>
  `"${[...text].map((c) => (/[A-Za-z0-9 ]/.test(c) ? c : `\\${(c.codePointAt(0) ?? 32).toString(16)} `)).join("")}"`;

/** Title, variant, revision and day, then where to ask; the page's number stands at the right in the style sheet. */
export function pageStyle(set: SheetSet): Markup {
  const first = [set.title, set.variant, set.revision, set.date].filter((text) => text !== "").join(" · ");
  const lines = [first, `${set.shopName}. ${set.foot}`].map(cssString).join(' "\\a " ');
  return { html: `@page{@bottom-left{content:${lines}}}` };
}

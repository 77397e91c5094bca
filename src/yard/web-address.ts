// Where a shop's store stands on the web, as its maker writes it -> the address that pages are found under.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Problems } from "./parse-values.ts";

/** `https://…/` with a slash at its end; undefined, with a problem told, for anything that pages can't stand under. */
export function readWebAddress(w: Written, problems: Problems): string | undefined {
  const address = findAddress(w.text);
  if (address === undefined) {
    const expected = "an address like https://shop.example/ that the store folder is published under";
    problems.push(problem("yard-number", w.at, { key: "address", found: w.text, expected }));
  }
  return address;
}

function findAddress(text: string): string | undefined {
  if (!/^https:\/\/[^\s?#@\\]+$/i.test(text) || !URL.canParse(text)) return undefined;
  const { protocol, host, pathname } = new URL(text);
  if (protocol !== "https:" || !host.includes(".")) return undefined;
  return `https://${host}${pathname.endsWith("/") ? pathname : `${pathname}/`}`;
}

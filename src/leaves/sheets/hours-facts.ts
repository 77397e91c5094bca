// Prices worked out -> the time that one takes, and where it goes. For the shop's own sheets only.
import type { Hours } from "../../findings/hours.ts";
import type { Fact } from "../leaf.ts";
import { formatMinutes, workWords } from "../work-table.ts";
import type { SheetSource } from "./sheet-source.ts";

/** So many kinds of work are named, those that take longest. */
const mostNamed = 4;

export function hoursFacts({ item, readers, pricings }: SheetSource): Fact[] {
  const pricing = pricings.find((one) => one.item.variant.slug === item.variant.slug);
  const one = pricing?.hours.find(({ units }) => units === 1);
  return readers === "stranger" || one === undefined
    ? []
    : [{ name: item.soldAs ? `Time for one ${item.soldAs.words}` : "Time for one", value: reasonsFor(one) }];
}

function reasonsFor({ lines, minutes }: Hours): string {
  const longest = [...lines].sort((a, b) => b.minutes.compare(a.minutes)).slice(0, mostNamed);
  const reasons = longest.map((line) => {
    const number = Number(line.count.valueOf().toFixed(0));
    return `${formatMinutes(line.minutes)} ${workWords[line.work]} (${number})`;
  });
  return `${formatMinutes(minutes)}; most of it ${reasons.join(", ")}`;
}

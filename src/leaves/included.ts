// Store item -> what a buyer holds in the end, line by line.
import type { StoreItem } from "./store-item.ts";

export function includedOf(item: StoreItem): string[] {
  const whole = item.soldAs ? `a ${item.soldAs.words} of them` : "one";
  return [
    `${item.title}: ${whole}, put together and finished as you choose`,
    ...item.fittings.map(({ words, count }) => (count === 1 ? words : `${count} × ${words}`)),
    "a care card with its lot and its date",
  ];
}

// The notice due on everything that is sold or built without a finish: product page, care card and build sheet.
import type { Notice } from "./leaf.ts";

export const unfinishedNotice: Notice = {
  title: "Unfinished",
  says: "Bare wood: nothing is on it to keep water or dirt out. Outdoors it turns grey, roughens and decays sooner than coated wood. Coat it before its first season, or take it as it weathers.",
};

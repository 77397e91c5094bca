// A plan's terms -> its last sheet: what a buyer may do, where to ask, whether it is the latest, and what changed when.
import { setFractions } from "../edition.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { heading, sheetOf, tableOf, together, words } from "../sheets/blocks.ts";
import type { PackItem } from "./pack-item.ts";
import type { PackShop } from "./pack-shop.ts";

/** "Revision 2 of 2026-11-02"; a recipe that keeps no log has none to name. */
export const revisionWords = ({ revisions }: Pick<PackItem, "revisions">): string => {
  const last = revisions.at(-1);
  return last === undefined ? "" : `Revision ${revisions.length} of ${last.day}`;
};

/** Stands on every page. */
export const latestLine = (item: PackItem, { plans }: PackShop): string => {
  const own = revisionWords(item);
  return `${own === "" ? "" : `${own}. `}Latest: ${plans.latest}. Ask: ${plans.ask}`;
};

export const safetyWords =
  "Working wood can maim. The cautions in this plan are the usual ones; they don't replace the manuals of your machines, the rules where you live, or somebody who shows you. Where it is fixed to a wall or a building, or carries people, local codes hold and a licensed builder has the last word.";

export function termsSheet(item: PackItem, shop: PackShop): readonly PaperSheet[] {
  const own = revisionWords(item);
  return sheetOf("terms", "Licence, questions, revisions", "Plan", [
    heading("What you may do with it"),
    ...words(shop.plans.licence),
    heading("Safety"),
    ...words(safetyWords),
    heading("Questions"),
    ...words(
      `${shop.name}, ${shop.place}. Ask at ${shop.plans.ask}; say the title${own === "" ? "" : " and the revision"} and the number of the step.`,
    ),
    ...together([
      heading("Is this the latest?"),
      ...words(
        `${own === "" ? "This plan keeps no log of revisions." : `This is ${own}.`} The latest is named at ${shop.plans.latest}; whoever has bought the plan gets it.`,
      ),
      ...tableOf({
        caption: "Revisions",
        heads: ["Revision", "Day", "What changed"],
        rows: item.revisions.map(({ day, says }, i) => [String(i + 1), day, setFractions(says)]),
      }),
    ]),
  ]);
}

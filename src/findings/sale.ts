// Hazard classes and evidence -> what still keeps an item out of the store, and what is due on one that is in it.
import type { Item } from "../item/item.ts";
import type { EvidenceKind } from "../recipe/evidence.ts";
import { hasAnchor, isSlender } from "./use.ts";

/**
 * The rule of the two shelves: what is missing is a note on a shop sheet, since a maker may build for himself, and a bar to
 * selling, since a buyer can't know.
 */
export type SaleNeed = {
  readonly kind: EvidenceKind;
  /** What has to be shown. */
  readonly needs: string;
  readonly why: string;
  readonly source: string;
  /** The maker's evidence; without it the item isn't sold. */
  readonly evidence?: string;
};

type Need = Omit<SaleNeed, "evidence">;

/** Of what is tall for its depth and comes without an anchor kit. */
const withoutAnchor: Need = {
  kind: "tip",
  needs:
    "an anchor kit among its fittings; or that it doesn't tip when it is pulled at its upper edge, with the force it was tried with",
  why: "It is 27 in high or more and three times as high as it is deep or wide: pulled at its top it comes down on whoever pulls.",
  source: "height: 16 CFR 1261; height to depth: common practice, no source",
};

/** The law meant is that of the United States; elsewhere another holds. */
const forChildren: readonly Need[] = [
  {
    kind: "finish",
    needs: "lead in paint or coating at most 90 ppm, by a test report; of bare untreated wood that reason is enough",
    why: "Children chew what they can reach, and lead harms them for life.",
    source: "16 CFR 1303; 15 USC 1278a; untreated wood: 16 CFR 1500.91",
  },
  {
    kind: "edges",
    needs: "no sharp point, and every arris that a hand meets rounded, about 1/8 in radius",
    why: "Children run and fall against corners.",
    source: "points: 16 CFR 1500.48; wooden edges: common practice, no source",
  },
  {
    kind: "small parts",
    needs:
      "nothing that comes off fits whole into a cylinder 1 1/4 in across, or a reason why nobody under 3 years gets at it",
    why: "Small parts choke.",
    source: "16 CFR 1501",
  },
  {
    kind: "gaps",
    needs: "no closed opening over 3 1/2 in and under 9 in, and none of 3/8 to 1 in where a finger goes in",
    why: "Heads and fingers get caught.",
    source: "CPSC Publication 325, 3.3.1; Caring for Our Children 6.2.1.9",
  },
  {
    kind: "tip",
    needs: "that it doesn't tip when a child leans, pulls or steps on it, with the force or weight it was tried with",
    why: "A child can be crushed under it.",
    source: "CPSC advice on tip-over; the trial itself: common practice, no source",
  },
  {
    kind: "tracking label",
    needs: "a lasting label on each one with maker, place, date and lot",
    why: "If one is found to be dangerous, all of its lot can be called back.",
    source: "15 USC 2063(a)(5)",
  },
  {
    kind: "certificate",
    needs:
      "the certificate that goes with it, and the tests by others that it names; small makers are spared some tests, not the certificate",
    why: "The law asks it of whoever makes a thing for children, and the buyer's trust hangs on it.",
    source: "15 USC 2063; small batch makers: cpsc.gov",
  },
];

type Judged = Pick<Item, "classes" | "evidence" | "fittings" | "overall">;

/** Everything that has to be shown before it is sold, with what is there. */
export function saleNeeds(item: Judged): SaleNeed[] {
  const { classes, evidence = {} } = item;
  const isChild = classes.includes("C");
  const tips = classes.includes("T") && isSlender(item.overall) && !hasAnchor(item.fittings);
  // What tips is asked of a thing for children whatever its shape.
  const needs = [...(isChild ? forChildren : []), ...(tips && !isChild ? [withoutAnchor] : [])];
  return needs.map((need) => {
    const shown = evidence[need.kind];
    return shown === undefined ? need : { ...need, evidence: shown };
  });
}

export const missingForSale = (item: Judged): SaleNeed[] =>
  saleNeeds(item).filter(({ evidence }) => evidence === undefined);

/** An item with any need left open has no page in the store. */
export const isForSale = (item: Judged): boolean => missingForSale(item).length === 0;

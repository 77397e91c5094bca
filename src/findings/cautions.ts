// Operations and hazard classes -> the usual cautions, each with its hazard, what it can do, how to keep clear of it, and its source.
import type { HazardClass } from "../recipe/recipe.ts";
import type { Operation } from "./operations.ts";
import type { Use } from "./use.ts";

/** By ANSI Z535.4: could cause death or serious injury; could cause minor or moderate injury; no injury. */
export type SignalWord = "WARNING" | "CAUTION" | "NOTICE";

export type Caution = {
  readonly id: string;
  readonly signal: SignalWord;
  readonly hazard: string;
  readonly consequence: string;
  readonly avoidance: string;
  readonly source: string;
};

const practice = "common practice, no source";

const byOperation: Record<Operation, Caution> = {
  "handle treated wood": {
    id: "treated-wood",
    signal: "WARNING",
    hazard: "Treated wood carries its preservative in the dust and in the smoke.",
    consequence: "Both are poisonous.",
    avoidance: "Wear a mask and gloves to carry it, wash before eating, never burn the offcuts.",
    source: "CPSC and EPA guidance on preserved wood",
  },
  rip: {
    id: "rip",
    signal: "WARNING",
    hazard: "The blade cuts, and a pinched strip is thrown back.",
    consequence: "Either can maim.",
    avoidance:
      "Guard and riving knife on; stand beside the line of the cut; never rip freehand; glasses and ear muffs, no gloves.",
    source: "29 CFR 1910.213(c)",
  },
  "rip narrow": {
    id: "rip-narrow",
    signal: "WARNING",
    hazard: "A narrow strip leaves no room for a hand between blade and fence.",
    consequence: "Fingers reach the blade.",
    avoidance:
      "Push the strip between blade and fence with a push stick, or a push block where the stick has no room, until it is clear of the blade; no hand there, guard and riving knife on.",
    source: practice,
  },
  plane: {
    id: "plane",
    signal: "WARNING",
    hazard: "A short or twisted board is thrown by the cutters.",
    consequence: "It hits whoever stands behind it.",
    avoidance: "Plane at full length before crosscutting; stand to one side; light cuts.",
    source: practice,
  },
  crosscut: {
    id: "crosscut",
    signal: "WARNING",
    hazard: "A part that is pinched between blade and stop jams and flies.",
    consequence: "It can blind, or pull a hand in.",
    avoidance: "Hold the longer part alone, never the shorter one; let the blade halt before you lift it; glasses on.",
    source: practice,
  },
  "crosscut short": {
    id: "crosscut-short",
    signal: "WARNING",
    hazard: "A short piece can't be held by hand at the saw.",
    consequence: "The hand comes too near the blade.",
    avoidance: "Cut it off the end of a long strip against a stop and don't hold it, or clamp it.",
    source: practice,
  },
  bore: {
    id: "bore",
    signal: "CAUTION",
    hazard: "A bit that grabs spins the board.",
    consequence: "It bruises hands and breaks wrists.",
    avoidance: "Clamp the board, back it with scrap, ease off as the bit breaks through.",
    source: practice,
  },
  notch: {
    id: "notch",
    signal: "CAUTION",
    hazard: "A saw or chisel slips past the line.",
    consequence: "It cuts the hand in front of it.",
    avoidance: "Clamp the piece; both hands behind the edge.",
    source: practice,
  },
  "pocket holes": {
    id: "pocket-holes",
    signal: "CAUTION",
    hazard: "The stepped bit comes out through thin stock, and swarf flies.",
    consequence: "It cuts and gets into eyes.",
    avoidance: "Set jig and collar to the thickness on a piece of scrap first; clamp; glasses on.",
    source: practice,
  },
  "lead holes": {
    id: "lead-holes",
    signal: "CAUTION",
    hazard: "Wood splits near its ends and edges, and the bit comes through.",
    consequence: "Splinters and bit go into the hand that holds the back.",
    avoidance: "Drill every lead hole; clamp; keep hands out of the line of the bit.",
    source: practice,
  },
  "drive screws": {
    id: "drive-screws",
    signal: "CAUTION",
    hazard: "A driver that slips off the head runs on.",
    consequence: "It goes into the hand.",
    avoidance: "Clamp the joint instead of holding it; lean straight behind the driver; slow at the end.",
    source: practice,
  },
  "drive nails": {
    id: "drive-nails",
    signal: "CAUTION",
    hazard: "Nails glance off and chips fly.",
    consequence: "They hit eyes and thumbs.",
    avoidance: "Glasses on; start each nail lightly.",
    source: practice,
  },
  glue: {
    id: "glue",
    signal: "NOTICE",
    hazard: "Glue sets while you look for clamps.",
    consequence: "The joint is lost.",
    avoidance: "Put it together dry first; wipe off what squeezes out before it skins over.",
    source: practice,
  },
  lift: {
    id: "lift",
    signal: "CAUTION",
    hazard: "It is heavy or too bulky for one pair of hands.",
    consequence: "Backs strain and toes are crushed.",
    avoidance: "Two people lift it.",
    source: practice,
  },
  sand: {
    id: "sand",
    signal: "CAUTION",
    hazard: "Fine wood dust, that of western redcedar above all, harms the airways.",
    consequence: "It can bring on asthma.",
    avoidance: "Dust mask N95 or better; collect the dust or sand outdoors.",
    source: "ACGIH limits: redcedar 0.5, other woods 1 mg/m3 (osha.gov)",
  },
  coat: {
    id: "coat",
    signal: "CAUTION",
    hazard: "Finishes give off vapour while they dry.",
    consequence: "It irritates and can burn.",
    avoidance: "Work outdoors or with the doors open, away from flames; follow the tin.",
    source: practice,
  },
  "coat with lime": {
    id: "lime",
    signal: "WARNING",
    hazard: "Limewash is caustic while it is wet.",
    consequence: "It burns skin, and a splash can blind.",
    avoidance:
      "Goggles, long sleeves and waterproof gloves on; keep clean water beside you, and rinse an eye for a quarter of an hour and see a doctor.",
    source: "NIOSH pocket guide: calcium hydroxide; the words: common practice, no source",
  },
  "coat with drying oil": {
    id: "oily-rags",
    signal: "WARNING",
    hazard: "Rags wet with this finish heat up by themselves as it dries.",
    consequence: "They can set the shop on fire within hours.",
    avoidance:
      "Lay them flat outdoors to dry, or under water in a lidded metal can. Never leave them in a heap or a bin.",
    source: "NFPA advice on oily rags; at work 29 CFR 1926.252(e)",
  },
};

/** One caution for each operation, in their order. */
export const cautionsFor = (operations: readonly Operation[]): Caution[] =>
  [...new Set(operations)].map((operation) => byOperation[operation]);

/** Pounds as the edition prints them. */
type Weight = (pounds: number) => string;

const loadWords = ({ loads }: Use, weight: Weight): string =>
  loads.map(({ pounds, count }) => (count === 1 ? weight(pounds) : `${weight(pounds)} each`)).join(" and ");

/** Each rule gives the caution that its class calls for in this use, or none. */
const byClass: Partial<Record<HazardClass, (use: Use, weight: Weight) => Caution | undefined>> = {
  S: ({ classes }) =>
    classes.includes("L")
      ? undefined
      : {
          id: "not-a-seat",
          signal: "WARNING",
          hazard: "It is made to hold things, not people.",
          consequence: "It can break or tip under somebody.",
          avoidance: "Do not sit, stand or climb on it.",
          source: practice,
        },
  L: (use, weight) => {
    const people = use.carriesPeople ? "" : "; do not sit, stand or climb on it";
    return use.loads.length === 0
      ? {
          id: "no-load-stated",
          signal: "WARNING",
          hazard: "No load has been worked out or tested for it.",
          consequence: "It can break under a heavy load or a person.",
          avoidance: "Load it lightly; do not sit, stand or climb on it.",
          source: practice,
        }
      : {
          id: "load-stated",
          signal: "WARNING",
          hazard: `It is meant for ${loadWords(use, weight)}; that has not been tested.`,
          consequence: "It can break under more.",
          avoidance: `Do not load it with more${people}.`,
          source: practice,
        };
  },
  T: ({ anchored }) =>
    anchored
      ? {
          id: "anchor-it",
          signal: "WARNING",
          hazard: "It is tall for its depth and can be pulled over.",
          consequence: "A child can be killed under it.",
          avoidance:
            "Fasten it to solid wood or masonry before you load it, with a fixing that suits the wall; ask somebody licensed if unsure. Heavy things go at the bottom.",
          source: "CPSC advice on anchoring; the fixing itself: common practice, no source",
        }
      : {
          id: "stand-it-level",
          signal: "WARNING",
          hazard: "It can tip when somebody leans on an edge or climbs on it.",
          consequence: "It falls on whoever is near, with all that is on it.",
          avoidance: "Stand it on firm level ground; do not lean or climb on it.",
          source: practice,
        },
  H: ({ hasRope }) => ({
    id: "hang-it-well",
    signal: "WARNING",
    hazard: "It hangs, and can fall.",
    consequence: "It hits whoever is under it.",
    avoidance: hasRope
      ? "Hang it from a hook that holds in solid wood or masonry, not where people sit or sleep."
      : "Fasten it to solid wood or masonry with a fixing made for the weight, not where people sit or sleep.",
    source: practice,
  }),
  C: () => ({
    id: "grown-up-near",
    signal: "WARNING",
    hazard: "Children climb, pull and put things in their mouths.",
    consequence: "They can fall, be caught or choke.",
    avoidance: "Keep a grown-up near while it is in use.",
    source: practice,
  }),
  F: ({ classes }) => ({
    id: "not-food-tested",
    signal: "NOTICE",
    hazard: "It has not been tested for food.",
    consequence: classes.includes("X")
      ? "Its finish may pass into wet soil and into what grows in it."
      : "Its finish may pass into what lies on it.",
    avoidance: classes.includes("X")
      ? "Line it before you grow food in it."
      : "Put a clean liner between it and unpacked food.",
    source: practice,
  }),
  G: ({ hasLid }) => ({
    id: "clear-panel",
    signal: "WARNING",
    hazard: hasLid ? "A clear panel can break, and a lid can drop." : "A clear panel can break.",
    consequence: hasLid ? "It cuts, and it pinches fingers." : "Its edges cut.",
    avoidance: hasLid ? "Set the stay before you reach in; do not lean on the panel." : "Do not lean on the panel.",
    source: practice,
  }),
  X: ({ classes }) =>
    classes.includes("H")
      ? undefined
      : {
          id: "wet-wood",
          signal: "NOTICE",
          hazard: "Wood that stands wet or on soil decays.",
          consequence: "It loses its strength from the feet up.",
          avoidance: "Stand it on stone, gravel or feet, and let it dry out; look at the feet once a year.",
          source: practice,
        },
};

/** What the one who uses it has to be told, the gravest first. A class that calls for nothing is passed over. */
export function cautionsForUse(use: Use, weight: Weight): Caution[] {
  const order: Record<SignalWord, number> = { WARNING: 0, CAUTION: 1, NOTICE: 2 };
  return use.classes
    .flatMap((one) => byClass[one]?.(use, weight) ?? [])
    .sort((a, b) => order[a.signal] - order[b.signal]);
}

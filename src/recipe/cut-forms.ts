// The kinds of cut: how each is written, and what is made of its words.
import { readRopeHole } from "./cord-hole.ts";
import type { CutParts, PartName } from "./cut-parts.ts";
import type { Cut, CutKind, Slope, Sum } from "./recipe.ts";
import type { Form, Scan } from "./scan.ts";
import { readSlope } from "./slant-forms.ts";
import { readSum } from "./sum.ts";

type Without<T> = T extends unknown ? Omit<T, "at" | "text"> : never;
/** The sizes behind the name of the cut, or the line of a slope. */
type Head = { readonly sizes: readonly Sum[]; readonly slope?: Slope };

export type CutForm = Form & {
  readonly kind: CutKind;
  readonly takes: readonly PartName[];
  readonly needs: readonly PartName[];
  readonly read: (scan: Scan) => Head;
  readonly make: (head: Head, parts: CutParts) => Without<Cut>;
};

/** `A`, `A x B` or `A x B x C`, with what must follow the last. */
const sizes =
  (least: number, most: number, ...then: readonly string[]) =>
  (scan: Scan): Head => {
    const found = [readSum(scan)];
    while (found.length < least || (found.length < most && scan.is("x"))) {
      scan.must("x");
      found.push(readSum(scan));
    }
    scan.must(...then);
    return { sizes: found };
  };

/** The size numbered so; the reader has made sure that it is there. */
function at(head: Head, i: number): Sum {
  const sum = head.sizes[i];
  if (!sum) throw new Error(`a cut was read without its size ${i + 1}`);
  return sum;
}

function sure<T>(part: T | undefined): T {
  if (part === undefined) throw new Error("a cut was read without a part that it needs");
  return part;
}

/** `3/8`, or `for 1/4 rope`. */
const readHoleSize = (scan: Scan): Head => (scan.is("for") ? { sizes: [readRopeHole(scan)] } : sizes(1, 1)(scan));

const channel = (kind: "dado" | "groove") => (head: Head, parts: CutParts) => ({
  kind,
  wide: at(head, 0),
  deep: sure(parts.deep),
  into: sure(parts.into),
  spots: parts.spots,
  stops: parts.stops,
});

export const cutForms: readonly CutForm[] = [
  {
    kind: "hole",
    form: "hole D, SPOT, SPOT[, L deep][, in SIDE][, N x M every P][, countersink D|counterbore D x L]",
    means:
      "A round hole this wide, square to the wide side or to the named side, right through unless it says how deep; or N along the board by M across it.",
    example: "hole 3/8, 15/16 from both ends and both edges",
    takes: ["spots", "deep", "into", "grid", "sink"],
    needs: ["spots"],
    read: readHoleSize,
    make: (head, { spots, deep, into, grid, sink }) => ({
      kind: "hole",
      across: at(head, 0),
      spots,
      ...(deep ? { deep } : {}),
      ...(into ? { into } : {}),
      ...(grid ? { grid } : {}),
      ...(sink ? { sink } : {}),
    }),
  },
  {
    kind: "notch",
    form: "notch A x B, SPOT, SPOT",
    means: "A rectangle A along the grain by B across it, taken out right through the thickness.",
    example: "notch 1 1/2 x 3/4, at left, at top",
    takes: ["spots"],
    needs: ["spots"],
    read: sizes(2, 2),
    make: (head, { spots }) => ({ kind: "notch", along: at(head, 0), across: at(head, 1), spots }),
  },
  {
    kind: "lap",
    form: "lap A long, B deep, in SIDE, SPOT",
    means: "Over the whole width, A along the grain, B deep into that side.",
    example: "lap 1 1/2 long, 5/16 deep, in back, at both ends",
    takes: ["spots", "deep", "into"],
    needs: ["spots", "deep", "into"],
    read: sizes(1, 1, "long"),
    make: (head, { spots, deep, into }) => ({
      kind: "lap",
      along: at(head, 0),
      deep: sure(deep),
      into: sure(into),
      spots,
    }),
  },
  {
    kind: "rabbet",
    form: "rabbet A x B, in SIDE, along SIDE[, stopped L from SIDE]",
    means: "The arris between these two sides is cut away: A wide from the second, B deep into the first.",
    example: "rabbet 3/4 x 3/8, in back, along left",
    takes: ["into", "along", "stops"],
    needs: ["into", "along"],
    read: sizes(2, 2),
    make: (head, { into, along, stops }) => ({
      kind: "rabbet",
      wide: at(head, 0),
      deep: at(head, 1),
      into: sure(into),
      along: sure(along),
      stops,
    }),
  },
  {
    kind: "dado",
    form: "dado W wide, D deep, in SIDE, SPOT[, stopped L from SIDE]",
    means: "A channel this wide right across the grain.",
    example: "dado 3/4 wide, 3/8 deep, in front, 6 from top",
    takes: ["spots", "deep", "into", "stops"],
    needs: ["spots", "deep", "into"],
    read: sizes(1, 1, "wide"),
    make: channel("dado"),
  },
  {
    kind: "groove",
    form: "groove W wide, D deep, in SIDE, SPOT[, stopped L from SIDE]",
    means: "A channel this wide along the grain from end to end.",
    example: "groove 1/4 wide, 3/8 deep, in back, 1/2 from bottom",
    takes: ["spots", "deep", "into", "stops"],
    needs: ["spots", "deep", "into"],
    read: sizes(1, 1, "wide"),
    make: channel("groove"),
  },
  {
    kind: "recess",
    form: "recess A x B x D, in SIDE, SPOT, SPOT",
    means: "A rectangle A along the board by B across it, let in this deep, for a plate or a hinge.",
    example: "recess 1 3/8 x 5/8 x 1/16, in back, 1 from top, centred",
    takes: ["spots", "into"],
    needs: ["spots", "into"],
    read: sizes(3, 3),
    make: (head, { spots, into }) => ({
      kind: "recess",
      along: at(head, 0),
      across: at(head, 1),
      deep: at(head, 2),
      into: sure(into),
      spots,
    }),
  },
  {
    kind: "slot",
    form: "slot A x B[ x D], SPOT, SPOT[, in SIDE]",
    means: "As a recess, with round ends the long way; without D it goes through.",
    example: "slot 7/8 x 3/8 x 1/2, in back, 1 from top, centred",
    takes: ["spots", "into"],
    needs: ["spots"],
    read: sizes(2, 3),
    make: (head, { spots, into }) => ({
      kind: "slot",
      along: at(head, 0),
      across: at(head, 1),
      ...(head.sizes[2] ? { deep: head.sizes[2] } : {}),
      ...(into ? { into } : {}),
      spots,
    }),
  },
  {
    kind: "opening",
    form: "opening A x B[, corners R], SPOT, SPOT",
    means: "A rectangle A along the board by B across it right through the wide side, its corners round by R.",
    example: "opening 14 x 10, corners 1, centred",
    takes: ["spots", "corners"],
    needs: ["spots"],
    read: sizes(2, 2),
    make: (head, { spots, corners }) => ({
      kind: "opening",
      along: at(head, 0),
      across: at(head, 1),
      ...(corners ? { corners } : {}),
      spots,
    }),
  },
  {
    kind: "rounded corners",
    form: "rounded corners R[, along SIDE]",
    means: "The corners of the wide side are rounded, all four or the two at that side.",
    example: "rounded corners 1/2, along top",
    takes: ["along"],
    needs: [],
    read: sizes(1, 1),
    make: (head, { along }) => ({ kind: "rounded corners", radius: at(head, 0), ...(along ? { along } : {}) }),
  },
  {
    kind: "eased arrises",
    form: "eased arrises R",
    means: "Every arris is broken round by R with plane or sandpaper; it is listed, not drawn or taken off the weight.",
    example: "eased arrises 1/8",
    takes: [],
    needs: [],
    read: sizes(1, 1),
    make: (head) => ({ kind: "eased arrises", radius: at(head, 0) }),
  },
  {
    kind: "rounded arris",
    form: "rounded arris R, in SIDE, along SIDE",
    means: "The arris between these two sides is rounded to R from end to end.",
    example: "rounded arris 3/8, in top, along front",
    takes: ["into", "along"],
    needs: ["into", "along"],
    read: sizes(1, 1),
    make: (head, { into, along }) => ({
      kind: "rounded arris",
      radius: at(head, 0),
      into: sure(into),
      along: sure(along),
    }),
  },
  {
    kind: "slope",
    form: "slope H at SIDE to H at SIDE",
    means: "What stands above the straight line between these two heights is cut away.",
    example: "slope 10 at front to 16 at back",
    takes: [],
    needs: [],
    read: (scan) => ({ sizes: [], slope: readSlope(scan) }),
    make: (head) => ({ kind: "slope", slope: sure(head.slope) }),
  },
];

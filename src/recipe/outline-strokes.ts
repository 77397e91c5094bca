// `start 0, 0; line to 9, 0; arc through 7, 2 to 5, 3; close` -> the strokes of an outline.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { CurveWay, OutlinePoint, Stroke } from "./recipe.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split } from "./scan.ts";
import { readSum } from "./sum.ts";

type Without<T> = T extends unknown ? Omit<T, "at" | "text"> : never;
type StrokeForm = Form & { readonly starts: string; readonly read: (scan: Scan) => Without<Stroke> };

function readPoint(scan: Scan): OutlinePoint {
  const at = scan.here;
  const x = readSum(scan, "to");
  scan.must(",");
  return { at, x, y: readSum(scan, "to") };
}

/** `through P and P`, as many as there are. */
function readPoints(scan: Scan): OutlinePoint[] {
  const points = [readPoint(scan)];
  while (scan.skip("and")) points.push(readPoint(scan));
  return points;
}

function readWay(scan: Scan, before: "toward" | "from"): CurveWay {
  const at = scan.here;
  for (const kind of ["left", "right", "up", "down"] as const) if (scan.skip(kind)) return { kind, at };
  if (scan.skip(before)) return { kind: "point", at, point: readPoint(scan) };
  return scan.wants(`"left", "right", "up", "down" or "${before}" and a point`);
}

function readCurve(scan: Scan): Without<Stroke> {
  const smooth = scan.skip("smooth");
  scan.must("curve");
  const leaving = scan.skip("leaving") ? readWay(scan, "toward") : undefined;
  const through = scan.skip("through") ? readPoints(scan) : [];
  scan.must("to");
  const points = [...through, readPoint(scan)];
  const arriving = scan.skip("arriving") ? readWay(scan, "from") : undefined;
  return { kind: "curve", points, smooth, ...(leaving ? { leaving } : {}), ...(arriving ? { arriving } : {}) };
}

export const strokeForms: readonly StrokeForm[] = [
  {
    starts: "start",
    form: "start X, Y",
    means: "The outline starts here: X to the right of 0, Y up from it.",
    example: "start 0, 0",
    read: (scan) => {
      scan.must("start");
      return { kind: "start", to: readPoint(scan) };
    },
  },
  {
    starts: "line",
    form: "line to X, Y",
    means: "Straight on to this point.",
    example: "line to 9, 0",
    read: (scan) => {
      scan.must("line", "to");
      return { kind: "line", to: readPoint(scan) };
    },
  },
  {
    starts: "arc",
    form: "arc through X, Y to X, Y",
    means: "A part of a circle through the first point to the second.",
    example: "arc through 7, 2 to 5, 3",
    read: (scan) => {
      scan.must("arc", "through");
      const through = readPoint(scan);
      scan.must("to");
      return { kind: "arc", through, to: readPoint(scan) };
    },
  },
  {
    starts: "curve",
    form: "curve [leaving WAY] [through X, Y and X, Y …] to X, Y [arriving WAY]",
    means:
      "A smooth curve through these points; WAY is left, right, up or down, or leaving toward, arriving from a point.",
    example: "curve leaving up through 2, 6 and 4, 8 to 9, 9 arriving right",
    read: readCurve,
  },
  {
    starts: "smooth",
    form: "smooth curve [through X, Y and X, Y …] to X, Y [arriving WAY]",
    means: "A curve that leaves the stroke before it without a kink.",
    example: "smooth curve to 9, 9 arriving right",
    read: readCurve,
  },
  {
    starts: "round",
    form: "round through X, Y and X, Y and X, Y …",
    means: "A closed smooth curve through these points.",
    example: "round through 2, 1 and 4, 2 and 3, 4",
    read: (scan) => {
      scan.must("round", "through");
      return { kind: "round", points: readPoints(scan), smooth: true };
    },
  },
  {
    starts: "close",
    form: "close",
    means: "Straight back to the start.",
    example: "start 0, 0; line to 9, 0; line to 0, 9; close",
    read: (scan) => {
      scan.must("close");
      return { kind: "close" };
    },
  },
  {
    starts: "mirrored",
    form: "mirrored",
    means: "The other half is the same turned over on the line from here to the start, which runs upright or level.",
    example: "start 4, 0; line to 8, 2; line to 4, 6; mirrored",
    read: (scan) => {
      scan.must("mirrored");
      return { kind: "mirrored" };
    },
  },
  {
    starts: "circle",
    form: "circle D at X, Y",
    means: "A whole circle this wide round this point.",
    example: "circle 3/4 at 2, 3",
    read: (scan) => {
      scan.must("circle");
      const across = readSum(scan);
      scan.must("at");
      return { kind: "circle", across, centre: readPoint(scan) };
    },
  },
  {
    starts: "rectangle",
    form: "rectangle W x H at X, Y[ corners R]",
    means: "A rectangle whose lower left corner is there, its corners round by R.",
    example: "rectangle 4 x 1 1/4 at 2, 3 corners 5/8",
    read: (scan) => {
      scan.must("rectangle");
      const width = readSum(scan);
      scan.must("x");
      const height = readSum(scan);
      scan.must("at");
      const corner = readPoint(scan);
      return { kind: "rectangle", width, height, corner, ...(scan.skip("corners") ? { corners: readSum(scan) } : {}) };
    },
  },
];

/** Every stroke that can be read. */
export function readStrokes(value: Written, into: Gathered): Stroke[] {
  return split(value, ";").flatMap((part) => attempt(into.problems, () => readStroke(part, value, into)) ?? []);
}

function readStroke(part: Written, value: Written, into: Gathered): Stroke {
  if (part.text === "") refuse(problem("empty-clause", part.at, { whole: value.text.slice(0, 40) }));
  const word = part.text.split(/\s+/)[0] ?? "";
  const form = strokeForms.find((f) => f.starts === word);
  if (!form) {
    const kinds = strokeForms.map((f) => f.starts);
    return refuse(problem("unknown-stroke", part.at, { found: word, kinds, nearest: nearest(word, kinds) }));
  }
  const scan = new Scan(part, form, into);
  const body = form.read(scan);
  scan.end();
  return { ...body, at: part.at, text: part.text };
}

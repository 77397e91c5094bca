// The parts of a cut behind its first words: `in back`, `3/8 deep`, `8 x 5 every 1 3/4`, and its spots.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Side } from "../units/side.ts";
import { readBoth, readSpot } from "./cut-spots.ts";
import { readSide } from "./read-side.ts";
import type { HoleGrid, Sink, Spot, Stop, Sum } from "./recipe.ts";
import { type Form, type Gathered, refuse, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

export type CutParts = {
  spots: Spot[];
  stops: Stop[];
  into?: Side;
  along?: Side;
  deep?: Sum;
  corners?: Sum;
  grid?: HoleGrid;
  sink?: Sink;
};
export type PartName = keyof CutParts;

type Part = {
  readonly name: Exclude<PartName, "spots" | "stops">;
  readonly fits: RegExp;
  readonly read: (scan: Scan) => Omit<CutParts, "spots" | "stops">;
};

/** At most this many holes a side of a grid. */
const mostInGrid = 60;

const parts: readonly Part[] = [
  {
    name: "into",
    fits: /^in\s/,
    read: (scan) => {
      scan.must("in");
      return { into: readSide(scan) };
    },
  },
  {
    name: "along",
    fits: /^along\s/,
    read: (scan) => {
      scan.must("along");
      return { along: readSide(scan) };
    },
  },
  {
    name: "deep",
    fits: /\sdeep$/,
    read: (scan) => {
      const deep = readSum(scan);
      scan.must("deep");
      return { deep };
    },
  },
  {
    name: "corners",
    fits: /^corners\s/,
    read: (scan) => {
      scan.must("corners");
      return { corners: readSum(scan) };
    },
  },
  { name: "grid", fits: /\severy\s/, read: (scan) => ({ grid: readGrid(scan) }) },
  {
    name: "sink",
    fits: /^countersink\s/,
    read: (scan) => {
      scan.must("countersink");
      return { sink: { kind: "countersink", across: readSum(scan) } };
    },
  },
  {
    name: "sink",
    fits: /^counterbore\s/,
    read: (scan) => {
      scan.must("counterbore");
      const across = readSum(scan);
      scan.must("x");
      return { sink: { kind: "counterbore", across, deep: readSum(scan) } };
    },
  },
];

function readGrid(scan: Scan): HoleGrid {
  const along = readCount(scan);
  scan.must("x");
  const across = readCount(scan);
  scan.must("every");
  const pitch = readSum(scan);
  return { along, across, pitch, ...(scan.skip("x") ? { pitchAcross: readSum(scan) } : {}) };
}

/** `2 from left`, `1/2 from both ends`, behind the word `stopped`. */
function readStop(text: Written, form: Form, into: Gathered): Stop {
  const scan = new Scan(text, form, into);
  scan.must("stopped");
  const distance = readSum(scan);
  scan.must("from");
  const from = readBoth(scan) ?? readSide(scan);
  scan.end();
  return { at: text.at, text: text.text, distance, from };
}

function readCount(scan: Scan): number {
  const count = Number(scan.peek());
  if (!Number.isInteger(count) || count < 1 || count > mostInGrid) {
    scan.wants(`a whole number of holes from 1 to ${mostInGrid}`);
  }
  scan.take();
  return count;
}

/** Every part, each kind once; a part this cut has no use for is refused. */
export function readCutParts(
  written: readonly Written[],
  takes: readonly PartName[],
  form: Form,
  cut: Written,
  into: Gathered,
): CutParts {
  const found: CutParts = { spots: [], stops: [] };
  const seen = new Map<PartName, Written>();
  for (const text of written) {
    if (text.text === "") refuse(problem("empty-clause", text.at, { whole: cut.text }));
    const part = parts.find((p) => p.fits.test(text.text));
    const stopped = /^stopped\s/.test(text.text);
    const name = part?.name ?? (stopped ? "stops" : "spots");
    const first = seen.get(name);
    const facts = { found: text.text, cut: cut.text, form: form.form };
    if (!takes.includes(name)) refuse(problem("cut-part-idle", text.at, facts));
    if (part && first) refuse(problem("clause-twice", text.at, { found: text.text, first: first.text }, first.at));
    seen.set(name, text);
    if (!part && stopped) found.stops.push(readStop(text, form, into));
    else if (!part) found.spots.push(readSpot(text, into));
    else {
      const scan = new Scan(text, form, into);
      Object.assign(found, part.read(scan));
      scan.end();
    }
  }
  return found;
}

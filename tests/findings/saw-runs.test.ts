// Saw cuts, the order of settings, what stays in the hand and what is kept, all by hand.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planBoards } from "../../src/findings/board-plan.ts";
import { cautionsFor } from "../../src/findings/cautions.ts";
import { shortHolds } from "../../src/findings/hand-safety.ts";
import { givesOf, offcutsOf } from "../../src/findings/offcuts.ts";
import { type SawCut, sawCutsOf } from "../../src/findings/saw-cuts.ts";
import { type SawRun, sawRunsOf } from "../../src/findings/saw-runs.ts";
import type { Piece } from "../../src/item/item.ts";
import { safeOrder, settingsTable, whereWords } from "../../src/leaves/saw-settings.ts";
import { exact, inches, type Length } from "../../src/units/length.ts";
import { usualSaws } from "../../src/yard/saws.ts";
import { board, fenceBoard, inch, kerf, piece, stock } from "./timber.ts";

const strip = inch("1 11/16");
const cutsOf = (...pieces: Piece[]): SawCut[] => planBoards(pieces, kerf).flatMap((one) => sawCutsOf(one, kerf));
const said = (run: SawRun): string =>
  `${run.saw} ${run.size === undefined ? "fresh" : inches(run.size)}: ${run.cuts.length}`;

describe("cuts of a board", () => {
  it("two strips of 1 11/16 with B 12 and A 17 each: 1 trims, 2 and 3 rip, each strip is then crosscut twice", () => {
    const cuts = cutsOf(piece("A", 2, inch("17"), fenceBoard, strip), piece("B", 2, inch("12"), fenceBoard, strip));
    const rips = cuts.filter(({ saw }) => saw === "rip");
    const crosscuts = cuts.filter(({ saw, size }) => saw === "crosscut" && size !== undefined);
    expect(cuts[0]).toMatchObject({ number: 1, saw: "crosscut", mitre: 0 });
    expect(rips.length + crosscuts.length + 1).toBe(cuts.length);
    expect(crosscuts.map(({ mark }) => mark).sort()).toEqual(["A", "A", "B", "B"]);
  });

  it("three pieces with parallel ends of 14 degrees share their cuts: 3 + 1 slanted cuts, all leaning alike", () => {
    const stud = board("2x4", "1 1/2", "3 1/2", [stock("96", "96", "4")]);
    const slanted: Piece = {
      ...piece("A", 3, 20, stud),
      ends: [
        { mitre: 14, bevel: 0 },
        { mitre: 14, bevel: 0 },
      ],
    };
    const cuts = cutsOf(slanted);
    expect(cuts).toHaveLength(4);
    expect(new Set(cuts.map(({ mitre }) => mitre)).size).toBe(1);
    // tan 14 = 0.2493 by any table: along either edge 20 - 3 1/2 x 0.2493 = 19.127, which is where the stop stands.
    const [run, ...more] = sawRunsOf(cuts);
    expect(more).toEqual([]);
    expect([run?.mitre, run?.cuts.length]).toEqual([14, 4]);
    expect(inches(run?.size ?? 0)).toBeCloseTo(19.127, 3);
  });

  it("two of 15 and one cut of 1/8 between take 30 1/8; of a board of 30 1/4 the last is cut at the stop too, and one of 30 1/8", () => {
    for (const long of ["30 1/4", "30 1/8"]) {
      const cuts = cutsOf(piece("A", 2, inch("15"), board("lath", "3/4", "2", [stock(long, long, "1")])));
      expect(cuts.map(({ mark, size }) => [mark, size?.valueOf()])).toEqual([
        ["A", 15],
        ["A", 15],
      ]);
    }
  });

  it("four pieces whose ends lean apart, 12 over all: a stop and one angle for all eight cuts, the board turned over between", () => {
    const stud = board("1x8", "3/4", "7 1/4", [stock("72", "72", "4")]);
    const apart: Piece = {
      ...piece("A", 4, 12, stud),
      ends: [
        { mitre: 10, bevel: 0 },
        { mitre: -10, bevel: 0 },
      ],
    };
    const runs = sawRunsOf(cutsOf(apart));
    expect(runs.map((run) => [run.size?.valueOf(), run.mitre])).toEqual([[12, 10]]);
    expect(runs[0]?.cuts.filter(({ mark }) => mark === "A")).toHaveLength(4);
  });

  it("a tilted blade shares no cut: two pieces with both ends tilted take four", () => {
    const stud = board("2x4", "1 1/2", "3 1/2", [stock("96", "96", "4")]);
    const ends = [
      { mitre: 0, bevel: 5 },
      { mitre: 0, bevel: 5 },
    ] as const;
    expect(cutsOf({ ...piece("A", 2, 20, stud), ends })).toHaveLength(4);
  });
});

describe("settings", () => {
  it("four of 30 by 1 11/16: fresh end, fence 1 11/16 for two strips, stop 30 for four pieces", () => {
    expect(sawRunsOf(cutsOf(piece("A", 4, inch("30"), fenceBoard, strip))).map(said)).toEqual([
      "crosscut fresh: 1",
      "rip 1.6875: 2",
      "crosscut 30: 4",
    ]);
  });

  it("the short stop comes before the long one: 12 for B, then 17 for A", () => {
    const runs = sawRunsOf(
      cutsOf(piece("A", 2, inch("17"), fenceBoard, strip), piece("B", 2, inch("12"), fenceBoard, strip)),
    );
    expect(runs.filter(({ saw, size }) => saw === "crosscut" && size !== undefined).map(said)).toEqual([
      "crosscut 12: 2",
      "crosscut 17: 2",
    ]);
  });

  it("are told with their number of cuts, what they give and where", () => {
    const runs = sawRunsOf(cutsOf(piece("A", 4, inch("30"), fenceBoard, strip)));
    expect(settingsTable(runs, (size: Length) => String(inches(size))).rows).toEqual([
      ["Crosscut", "no stop", "1", "1 × fresh ends", "board 1: 1"],
      ["Rip", "fence 1.6875", "2", "2 × strips", "board 1: 2, 3"],
      ["Crosscut", "stop 30", "4", "4 × A", "board 1: 4–7"],
    ]);
  });

  it("cuts of two boards stand apart, runs of numbers together: board 1: 2–4, 7; board 2: 1, 2", () => {
    const cuts = cutsOf(piece("A", 4, inch("30"), fenceBoard, strip));
    const [any] = cuts;
    if (!any) throw new Error("no cut");
    const at = (board: number, number: number): SawCut => ({ ...any, board, number });
    expect(whereWords([at(4, 1), at(2, 1), at(3, 1)])).toBe("boards 2–4: 1");
    expect(whereWords([at(2, 1), at(1, 7), at(1, 2), at(1, 4), at(1, 3), at(2, 2)])).toBe(
      "board 1: 2–4, 7; board 2: 1, 2",
    );
  });

  it("every cut stands in one run and never before what it waits for, whatever is cut", () => {
    const sixteenths = (low: number, high: number) => fc.integer({ min: low, max: high }).map((n) => exact(n, 16));
    const wanted = fc.record({
      count: fc.integer({ min: 1, max: 4 }),
      length: sixteenths(40, 1100),
      width: sixteenths(16, 87),
    });
    fc.assert(
      fc.property(fc.array(wanted, { minLength: 1, maxLength: 4 }), (list) => {
        const cuts = cutsOf(...list.map((one, i) => piece(`P${i}`, one.count, one.length, fenceBoard, one.width)));
        const done = new Set<string>();
        for (const cut of sawRunsOf(cuts).flatMap((run) => run.cuts)) {
          for (const number of cut.after) expect(done.has(`${cut.board}:${number}`)).toBe(true);
          expect(done.has(`${cut.board}:${cut.number}`)).toBe(false);
          done.add(`${cut.board}:${cut.number}`);
        }
        expect(done.size).toBe(cuts.length);
      }),
      { numRuns: 20 },
    );
  });
});

describe("what stays in the hand", () => {
  it("one rule for sheet and caution: the longer part is held alone, and a strip is pushed between blade and fence", () => {
    const [rip, crosscut] = cautionsFor(["rip narrow", "crosscut"]);
    expect([safeOrder, crosscut?.avoidance].map((words) => /hold the longer part alone/i.test(words ?? ""))).toEqual([
      true,
      true,
    ]);
    expect(safeOrder).not.toMatch(/shortest/);
    expect(rip?.avoidance).toMatch(/between blade and fence with a push stick/);
  });

  it("a short piece off a long strip is safe: 3 off 70 1/2 leaves 67 3/8 in the hand", () => {
    const cuts = cutsOf(piece("A", 1, inch("3"), fenceBoard));
    expect(cuts.at(-1)?.inHand.valueOf()).toBe(67.375);
    expect(shortHolds(cuts, usualSaws)).toEqual([]);
  });

  it("the last of two pieces of 5 out of a board of 11 leaves 5 in the hand, under 8", () => {
    const short = board("stub", "3/4", "5 1/2", [stock("11", "11", "1")]);
    const [hold, ...more] = shortHolds(cutsOf(piece("A", 2, inch("5"), short)), usualSaws);
    expect(more).toEqual([]);
    expect([hold?.saw, hold?.inHand.valueOf(), hold?.cuts.length]).toEqual(["crosscut", 5, 2]);
  });
});

describe("offcuts", () => {
  it("one of 30 by 1 11/16 leaves 70 1/2 - 30 1/8 = 40 3/8 of its strip and 5 1/2 - 1 13/16 = 3 11/16 beside it", () => {
    const kept = offcutsOf(planBoards([piece("A", 1, inch("30"), fenceBoard, strip)], kerf), usualSaws);
    expect(kept.map(({ length, width }) => [length.valueOf(), width.valueOf()])).toEqual([
      [70.5, 3.6875],
      [40.375, 1.6875],
    ]);
  });

  it("3 11/16 by 70 1/2 gives two strips, 2 x 1 11/16 + 1/8 = 3 1/2, of two pieces of 30 each: four", () => {
    const [wide] = offcutsOf(planBoards([piece("A", 1, inch("30"), fenceBoard, strip)], kerf), usualSaws);
    if (!wide) throw new Error("no offcut");
    expect(givesOf(wide, piece("B", 9, inch("30"), fenceBoard, strip), kerf)).toBe(4);
    expect(givesOf(wide, piece("B", 9, inch("30"), { ...fenceBoard, name: "2x4" }, strip), kerf)).toBe(0);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawBoard } from "../../src/drawing/board-layout.ts";
import { binderSheet } from "../../src/drawing/sheet.ts";
import { type PlannedBoard, planBoards } from "../../src/findings/board-plan.ts";
import { findShortages } from "../../src/findings/board-shortages.ts";
import { rippedFirst } from "../../src/findings/rip-first.ts";
import { sawCutsOf } from "../../src/findings/saw-cuts.ts";
import type { Item, Piece } from "../../src/item/item.ts";
import { cuttingSheet } from "../../src/leaves/cutting-sheet.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { type Exact, exact, inches, type Length } from "../../src/units/length.ts";
import { riserRecipe, workItem } from "./riser.ts";
import { board, fenceBoard, inch, kerf, piece, stock } from "./timber.ts";

const strip = inch("1 11/16");

/** Legs, face rails, posts, end rails and slats of the corral, its face rails `rail` long. */
const corral = (rail: string): Piece[] => [
  piece("A", 4, inch("26"), fenceBoard, strip),
  piece("B", 12, inch(rail), fenceBoard, strip),
  piece("C", 4, inch("23"), fenceBoard, strip),
  piece("D", 12, inch("13 3/8"), fenceBoard, strip),
  piece("E", 9, inch("18"), fenceBoard, strip),
];

/** Adds every strip and board up again, in doubles and without the planner: what is over-full, and what is not cut. */
function findFaults(plan: readonly PlannedBoard[], pieces: readonly Piece[], saw: number): string[] {
  const faults: string[] = [];
  const cut = new Map<string, number>();
  for (const { number, board: from, stock: bought, order, strips, left } of plan) {
    const rip = order === "rip";
    const [room, other] = rip
      ? [inches(from.width), inches(bought.usable)]
      : [inches(bought.usable), inches(from.width)];
    const taken = strips.reduce((sum, one) => sum + inches(one.size), 0) + saw * (strips.length - 1);
    if (taken > room + 1e-9) faults.push(`board ${number}: strips take ${taken}`);
    if (Math.abs(Math.max(0, room - taken - saw) - inches(left)) > 1e-9) faults.push(`board ${number}: wrong rest`);
    for (const one of strips) {
      const sizes = one.pieces.map((each) => inches(rip ? each.length : each.width));
      const along = sizes.reduce((a, b) => a + b, 0) + saw * (sizes.length - 1);
      if (along > other + 1e-9) faults.push(`board ${number}: a strip takes ${along}`);
      if (Math.abs(Math.max(0, other - along - saw) - inches(one.left)) > 1e-9) faults.push("wrong length left");
      for (const each of one.pieces) {
        cut.set(each.mark, (cut.get(each.mark) ?? 0) + 1);
        const wanted = pieces.find(({ mark }) => mark === each.mark);
        const isSize =
          wanted &&
          Math.abs(inches(wanted.width) - inches(each.width)) < 1e-9 &&
          Math.abs(inches(wanted.length) - inches(each.length)) < 1e-9;
        if (!isSize) faults.push(`${each.mark} is another size`);
        if (inches(rip ? each.width : each.length) > inches(one.size) + 1e-9)
          faults.push(`${each.mark} in a wrong strip`);
        if (wanted?.board.name !== from.name) faults.push(`${each.mark} from a wrong board`);
      }
    }
  }
  for (const { mark, count } of pieces)
    if (cut.get(mark) !== count) faults.push(`${mark}: ${cut.get(mark)} of ${count}`);
  return faults;
}

const empty = { name: "", kerf, trim: exact(0), boards: [], order: "either", effort: 1 } as const;
const proof = { cost: exact(0), lowerBound: exact(0), proven: true };

const marksOf = (board: PlannedBoard | undefined): string[] =>
  board?.strips.map((one) => one.pieces.map(({ mark }) => mark).join(" ")) ?? [];

describe("boards as they lie", () => {
  it("half an inch narrower, two rails and a slat fill a strip, 18 + 2 x 26 1/8 + 2 x 1/8 = 70 1/2: 12 strips, 4 fence boards", () => {
    const plan = planBoards(corral("26 1/8"), kerf);
    expect(plan).toHaveLength(4);
    expect(findFaults(plan, corral("26 1/8"), 1 / 8)).toEqual([]);
  });

  it("all lengths of the corral with their kerfs are 12 x 26 3/4 + 4 x 26 1/8 + 4 x 23 1/8 + 12 x 13 1/2 + 9 x 18 1/8 = 843 1/8, 70 5/8 a strip: 12 strips at least, so 4 boards at least", () => {
    const plan = planBoards(corral("26 5/8"), kerf);
    expect(findFaults(plan, corral("26 5/8"), 1 / 8)).toEqual([]);
    expect(plan.length).toBeGreaterThanOrEqual(4);
    expect(plan.length).toBeLessThanOrEqual(5);
  });

  it("a fence board gives 3 strips of 1 11/16: 3 x 1 11/16 + 3 x 1/8 = 5 7/16, 1/16 of 5 1/2 left", () => {
    const [first] = planBoards([piece("A", 3, inch("70"), fenceBoard, strip)], kerf);
    expect(first?.strips.map(({ from }) => from.valueOf())).toEqual([0, 1.8125, 3.625]);
    expect(first?.left.valueOf()).toBe(1 / 16);
  });

  it("the shortest piece of a strip is cut first, so that what stays in the hand is long: B 12 from 0, A 17 from 12 1/8, 70 1/2 - 29 1/4 = 41 1/4 left", () => {
    const [first] = planBoards(
      [piece("A", 1, inch("17"), fenceBoard, strip), piece("B", 1, inch("12"), fenceBoard, strip)],
      kerf,
    );
    expect(first?.strips[0]?.pieces.map(({ mark, at }) => [mark, at.valueOf()])).toEqual([
      ["B", 0],
      ["A", 12.125],
    ]);
    expect(first?.strips[0]?.left.valueOf()).toBe(41.25);
  });

  it("a last cut that has only itself to take leaves nothing: 70 1/2 - 70 7/16 = 1/16 is less than 1/8", () => {
    const [first] = planBoards([piece("A", 1, inch("70 7/16"), fenceBoard, strip)], kerf);
    expect(first?.strips[0]?.left.valueOf()).toBe(0);
  });

  it("72 bought and 70 1/2 usable: 1 1/2 is trimmed off the end first, then drawn as lost there", () => {
    const [first] = planBoards([piece("A", 1, inch("26 5/8"), fenceBoard, strip)], kerf);
    if (!first) throw new Error("no board is planned");
    expect(first.endLoss.valueOf()).toBe(1.5);
    const drawing = drawBoard("corral", first, sawCutsOf(first, kerf), (length) => String(inches(length)), binderSheet);
    expect(drawing.description).toMatch(/^1\.5 trimmed off the left end\. Strip 1, 1\.6875: A 26\.625/);
    // The sheet's mm for an inch: the board's face is 72 long, the piece starts 1 1/2 from its left end and is 26 5/8 long.
    const regions = drawing.marks.flatMap((mark) => (mark.kind === "region" ? [mark] : []));
    const across = (loop: readonly (readonly [number, number])[] | undefined) => {
      const us = (loop ?? []).map(([u]) => u);
      return [Math.min(...us), Math.max(...us)] as const;
    };
    const [face, only] = [across(regions[0]?.loops[0]), across(regions.at(-1)?.loops[0])];
    const scale = (face[1] - face[0]) / 72;
    expect(only[0] - face[0]).toBeCloseTo(1.5 * scale, 9);
    expect(only[1] - only[0]).toBeCloseTo(26.625 * scale, 9);
    const sheet = cuttingSheet("corral", { plan: [first], proof }, { kerf }, binderEdition({ unit: "in", per: 16 }));
    expect(sheet.boards[0]?.first).toBe("Trim 1\u00a01\u20442 off the end first, saw cut included.");
  });

  it("the rack takes 16 strips of 2 1/2 (4 legs; 8 of two deck boards and a side, 2 x 28 + 12 3/4 + 2 x 1/8 = 69; 4 of two long strips), two to a board: 8 fence boards", () => {
    const wide = inch("2 1/2");
    const pieces = [
      piece("A", 4, inch("60"), fenceBoard, wide),
      piece("B", 8, inch("25 1/2"), fenceBoard, wide),
      piece("C", 8, inch("12 3/4"), fenceBoard, wide),
      piece("D", 16, inch("28"), fenceBoard, wide),
    ];
    const plan = planBoards(pieces, kerf);
    expect([plan.reduce((sum, one) => sum + one.strips.length, 0), plan.length]).toEqual([16, 8]);
    expect(findFaults(plan, pieces, 1 / 8)).toEqual([]);
  });

  it("a piece as wide as its board takes the whole width and is not ripped", () => {
    const [first] = planBoards([piece("A", 1, inch("30"), fenceBoard)], kerf);
    expect(first?.strips.map(({ parted }) => parted)).toEqual([false]);
    expect(first?.left.valueOf()).toBe(0);
  });

  it("of 96 at $5 and 120 at $6, three pieces of 58 are cheapest from one of each: 2 x 58 + 1/8 fit 120, the third is bought 96 long", () => {
    const stud = board("2x4", "1 1/2", "3 1/2", [stock("96", "96", "5"), stock("120", "120", "6")]);
    const plan = planBoards([piece("A", 3, inch("58"), stud)], kerf);
    expect(plan.map((one) => one.stock.length.valueOf()).sort((a, b) => b - a)).toEqual([120, 96]);
  });

  it("three of 20 x 1 3/4 beside each other, 3 x 1 3/4 + 2/8 = 5 1/2, and one of 20 7/8 x 5 behind them, 20 + 20 7/8 + 1/8 = 41: crosscut first, one board of 41 at $2", () => {
    const short = board("fence board", "5/8", "5 1/2", [stock("41", "41", "2"), stock("72", "72", "4")]);
    const pieces = [piece("A", 3, inch("20"), short, inch("1 3/4")), piece("B", 1, inch("20 7/8"), short, inch("5"))];
    const plan = planBoards(pieces, kerf);
    expect(plan.map((one) => [one.order, one.stock.length.valueOf()])).toEqual([["crosscut", 41]]);
    expect(marksOf(plan[0])).toEqual(["A A A", "B"]);
    expect(findFaults(plan, pieces, 1 / 8)).toEqual([]);
  });

  it("two lengths of the same three widths are three strips of two: ripped first, whatever else would be as cheap", () => {
    const pieces = [piece("A", 3, inch("40"), fenceBoard, strip), piece("B", 3, inch("30"), fenceBoard, strip)];
    const plan = planBoards(pieces, kerf);
    expect(plan.map(({ order }) => order)).toEqual(["rip"]);
    expect(marksOf(plan[0])).toEqual(["B A", "B A", "B A"]);
    expect(sawCutsOf(plan[0] as PlannedBoard, kerf).filter(({ saw }) => saw === "rip")).toHaveLength(3);
  });

  it("lengths whose strips differ can't be ripped first: three of 1 3/4 behind one of 5 stay crosscut first", () => {
    const cuts = {
      id: "41",
      order: "crosscut",
      pieces: [
        ...[0, 1, 2].map((i) => ({ mark: "A", at: 0, across: i * 1.875, turned: false, flipped: false })),
        { mark: "B", at: 20.125, across: 0, turned: false, flipped: false },
      ],
    } as const;
    const sized = (mark: string, length: number, width: string) => ({
      ...{ mark, length: exact(length), width: inch(width), count: 1, showFace: false },
      ends: [0, 0] as const,
    });
    const problem = { ...empty, pieces: [sized("A", 20, "1 3/4"), sized("B", 20, "5")] };
    expect(rippedFirst(problem, cuts)).toBe(cuts);
    const alike = { ...problem, pieces: [sized("A", 20, "1 3/4"), sized("B", 20, "1 3/4")] };
    expect(rippedFirst(alike, cuts).pieces.map(({ mark, at, across }) => [mark, at, across])).toEqual([
      ["A", 0, 0],
      ["B", 20.125, 0],
      ["A", 0, 1.875],
      ["A", 0, 3.75],
    ]);
  });

  it("a piece of another thickness says so wherever it lies", () => {
    const planed = { ...piece("B", 1, inch("10"), fenceBoard, strip), planed: true, thickness: inch("1/2") };
    const plan = planBoards([piece("A", 1, inch("10"), fenceBoard, strip), planed], kerf);
    const laid = plan.flatMap(({ strips }) => strips.flatMap(({ pieces }) => pieces));
    expect(laid.map(({ mark, planedTo }) => [mark, planedTo?.valueOf()]).sort()).toEqual([
      ["A", undefined],
      ["B", 0.5],
    ]);
  });

  it("a piece longer than every board is our own bug, as the item stage has refused it", () => {
    expect(() => planBoards([piece("A", 1, inch("71"), fenceBoard)], kerf)).toThrow("no boards of fence board");
  });

  it("no board is ever over-full and every piece is cut once, whatever is asked for (added up again in doubles)", () => {
    const sixteenths = (low: number, high: number) => fc.integer({ min: low, max: high }).map((n) => exact(n, 16));
    const wanted = fc.record({
      count: fc.integer({ min: 1, max: 5 }),
      length: sixteenths(16, 70 * 16 + 8),
      width: fc.option(sixteenths(8, 87), { nil: undefined }),
    });
    fc.assert(
      fc.property(fc.array(wanted, { minLength: 1, maxLength: 5 }), sixteenths(0, 4), (list, saw) => {
        const pieces = list.map(({ count, length, width }, i) => piece(`P${i}`, count, length, fenceBoard, width));
        const plan = planBoards(pieces, saw);
        expect(findFaults(plan, pieces, saw.valueOf())).toEqual([]);
        for (const one of plan) expect(findCutFaults(one, saw)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it("the checker itself sees an over-full strip: 71 in on 70 1/2", () => {
    const pieces = [piece("A", 1, inch("70"), fenceBoard, strip)];
    const [good] = planBoards(pieces, kerf);
    const first = good?.strips[0];
    const [one] = first?.pieces ?? [];
    if (!good || !first || !one) throw new Error("no plan");
    const bad = { ...good, strips: [{ ...first, pieces: [{ ...one, length: inch("71") }] }] };
    expect(findFaults([bad], pieces, 1 / 8)[0]).toBe("board 1: a strip takes 71");
  });
});

/** Every piece's four sides are the board's own or a cut's, and no cut waits for a later one. */
function findCutFaults(planned: PlannedBoard, saw: Exact): string[] {
  const cuts = sawCutsOf(planned, saw);
  const { board: from, stock: bought } = planned;
  const near = (a: Length, b: number): boolean => Math.abs(inches(a) - b) < 1e-9;
  const runs = (x0: number, y0: number, x1: number, y1: number): boolean =>
    cuts.some(
      ({ line: [[a, b], [c, d]] }) =>
        (x0 === x1 ? near(a, x0) && near(c, x0) : near(b, y0) && near(d, y0)) &&
        inches(a) <= x0 + 1e-9 &&
        inches(c) >= x1 - 1e-9 &&
        inches(b) <= y0 + 1e-9 &&
        inches(d) >= y1 - 1e-9,
    );
  const late = cuts.filter(({ number, after }) => after.some((other) => other >= number));
  const open = planned.strips.flatMap(({ pieces }) =>
    pieces.filter(({ at, across, length, width }) => {
      const [x, y, right, top] = [
        inches(at),
        inches(across),
        inches(at) + inches(length),
        inches(across) + inches(width),
      ];
      const rightEdge = near(bought.usable, right) || runs(right, y, right, top);
      const topEdge = near(from.width, top) || runs(x, top, right, top);
      return !(rightEdge && topEdge);
    }),
  );
  return [...late.map(({ number }) => `cut ${number} is late`), ...open.map(({ mark }) => `${mark} is not cut out`)];
}

describe("pieces from one board", () => {
  const of = (matched: boolean, made = 1): Piece[] => {
    const a = piece("A", 2, inch("30"), fenceBoard);
    const b = piece("B", 2, inch("38"), fenceBoard);
    return [
      { ...a, count: 2 * made, ...(matched ? { matched: "top" } : {}) },
      { ...b, count: 2 * made },
    ];
  };

  it("30 + 38 + 1/8 fit 70 1/2: two boards; both of 30 from one board, the two of 38 take a board each: three", () => {
    expect(planBoards(of(false), kerf)).toHaveLength(2);
    const plan = planBoards(of(true), kerf);
    expect(plan.map((one) => marksOf(one)[0]).sort()).toEqual(["A A", "B", "B"]);
  });

  it("of two things, each thing's own pieces come from one board: twice as many boards, marked alike", () => {
    const plan = planBoards(of(true, 2), kerf);
    expect(plan.map((one) => marksOf(one)[0]).sort()).toEqual(["A A", "A A", "B", "B", "B", "B"]);
  });

  it("a recipe says so of a piece: shelf and legs of a riser from one board, as long as both lie on it: 24 + 2 x 8 + 2/8 of 96", () => {
    const riser = workItem(riserRecipe.replace("plank: plank", "plank: plank, from one board"));
    expect(riser.pieces.map(({ matched }) => matched)).toEqual(["plank", "plank"]);
    expect(planBoards(riser.pieces, kerf)).toHaveLength(1);
  });

  it("two of 36 from one board of 70 1/2: one-board-too-small", () => {
    const one = piece("A", 2, inch("36"), fenceBoard);
    const item = { title: "Bench", pieces: [{ ...one, matched: "top" }] } as unknown as Item;
    expect(findShortages(item, kerf).map(({ code, says }) => [code, says])).toEqual([
      [
        "one-board-too-small",
        'No single fence board gives all pieces "top" of the bench, which are to come from one board.',
      ],
    ]);
    expect(findShortages({ ...item, pieces: [one] }, kerf)).toEqual([]);
  });
});

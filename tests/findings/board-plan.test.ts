import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawBoard } from "../../src/drawing/board-layout.ts";
import { type PlannedBoard, planBoards } from "../../src/findings/board-plan.ts";
import type { Piece } from "../../src/item/item.ts";
import { cuttingSheet } from "../../src/leaves/cutting-sheet.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { exact, inches } from "../../src/units/length.ts";
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

/** Adds every strip and board up again, in doubles and without the packer: what is over-full, and what is not cut. */
function findFaults(plan: readonly PlannedBoard[], pieces: readonly Piece[], saw: number): string[] {
  const faults: string[] = [];
  const cut = new Map<string, number>();
  for (const { number, board: from, stock: bought, strips, leftWidth } of plan) {
    const widths = strips.map((one) => inches(one.size));
    const taken = widths.reduce((a, b) => a + b, 0) + saw * (widths.length - 1);
    if (taken > inches(from.width) + 1e-9) faults.push(`board ${number}: strips take ${taken}`);
    if (Math.abs(Math.max(0, inches(from.width) - taken - saw) - inches(leftWidth)) > 1e-9)
      faults.push(`board ${number}: wrong width left`);
    if (inches(bought.usable) > inches(bought.length)) faults.push(`board ${number}: longer than it is`);
    for (const one of strips) {
      const lengths = one.pieces.map((each) => inches(each.size));
      const along = lengths.reduce((a, b) => a + b, 0) + saw * (lengths.length - 1);
      if (along > inches(bought.usable) + 1e-9) faults.push(`board ${number}: a strip takes ${along}`);
      if (Math.abs(Math.max(0, inches(bought.usable) - along - saw) - inches(one.leftLength)) > 1e-9)
        faults.push("wrong length left");
      for (const { mark } of one.pieces) cut.set(mark, (cut.get(mark) ?? 0) + 1);
      for (const { mark } of one.pieces) {
        const wanted = pieces.find((each) => each.mark === mark);
        if (!wanted || Math.abs(inches(wanted.width) - inches(one.size)) > 1e-9)
          faults.push(`${mark} in a wrong strip`);
        if (wanted?.board.name !== from.name) faults.push(`${mark} from a wrong board`);
      }
    }
  }
  for (const { mark, count } of pieces)
    if (cut.get(mark) !== count) faults.push(`${mark}: ${cut.get(mark)} of ${count}`);
  return faults;
}

const stripsOf = (plan: readonly PlannedBoard[]): number => plan.reduce((sum, one) => sum + one.strips.length, 0);

describe("simple packing of boards", () => {
  it("a fence board gives 3 strips of 1 11/16: 3 x 1 11/16 + 3 x 1/8 = 5 7/16, 1/16 of 5 1/2 left", () => {
    const [first] = planBoards(corral("26 5/8"), kerf);
    expect(first?.strips).toHaveLength(3);
    expect(first?.leftWidth.valueOf()).toBe(1 / 16);
  });

  it("a strip of 70 1/2 takes two rails and one end rail: 2 x 26 5/8 + 13 3/8 + 3 x 1/8 = 67, 3 1/2 left", () => {
    const [first] = planBoards(corral("26 5/8"), kerf);
    expect(first?.strips[0]?.pieces.map(({ mark }) => mark)).toEqual(["B", "B", "D"]);
    expect(first?.strips[0]?.leftLength.valueOf()).toBe(3.5);
  });

  it("the corral takes 13 strips (6 of rails, 2 of legs, 2 of posts, 3 of slats and end rails), so 13 / 3 = 5 fence boards", () => {
    const plan = planBoards(corral("26 5/8"), kerf);
    expect(stripsOf(plan)).toBe(13);
    expect(plan).toHaveLength(5);
    expect(findFaults(plan, corral("26 5/8"), 1 / 8)).toEqual([]);
  });

  it("a last cut that has only itself to take leaves nothing: 70 1/2 - 70 7/16 = 1/16 is less than 1/8", () => {
    const [first] = planBoards([piece("A", 1, inch("70 7/16"), fenceBoard, strip)], kerf);
    expect(first?.strips[0]?.leftLength.valueOf()).toBe(0);
  });

  it("72 bought and 70 1/2 usable: 1 1/2 is trimmed off the end first, then drawn as lost there", () => {
    const [first] = planBoards(corral("26 5/8"), kerf);
    if (!first) throw new Error("no board is planned");
    expect(first.endLoss.valueOf()).toBe(1.5);
    const drawing = drawBoard("corral", first, kerf, (length) => String(inches(length)));
    expect(drawing.description).toMatch(/^1\.5 trimmed off the left end\. Strip 1: /);
    // The sheet's mm for an inch; the first piece starts 1 1/2 from the board's left end, a letter B and 26 5/8 long.
    const regions = drawing.marks.flatMap((mark) => (mark.kind === "region" ? [mark] : []));
    const across = (loop: readonly (readonly [number, number])[] | undefined) => {
      const us = (loop ?? []).map(([u]) => u);
      return [Math.min(...us), Math.max(...us)] as const;
    };
    const [lost, firstPiece] = [across(regions[0]?.loops[0]), across(regions[1]?.loops[0])];
    const scale = (firstPiece[1] - firstPiece[0]) / 26.625;
    expect(lost[1] - lost[0]).toBeCloseTo(1.5 * scale, 9);
    expect(firstPiece[0]).toBeCloseTo(lost[1], 9);
    const sheet = cuttingSheet("corral", [first], kerf, binderEdition({ unit: "in", per: 16 }));
    expect(sheet.boards[0]?.first).toBe("Trim 1\u00a01\u20442 off the end first, saw cut included.");
  });

  it("half an inch narrower a slat fits behind two rails, 2 x 26 1/8 + 18 + 2 x 1/8 = 70 1/2: 12 strips, 4 fence boards", () => {
    const plan = planBoards(corral("26 1/8"), kerf);
    expect(stripsOf(plan)).toBe(12);
    expect(plan).toHaveLength(4);
    expect(plan[0]?.strips[0]?.leftLength.valueOf()).toBe(0);
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
    expect([stripsOf(plan), plan.length]).toEqual([16, 8]);
    expect(findFaults(plan, pieces, 1 / 8)).toEqual([]);
  });

  it("a piece as wide as its board takes the whole width and is not ripped", () => {
    const [first] = planBoards([piece("A", 1, inch("30"), fenceBoard)], kerf);
    expect(first?.strips.map(({ ripped }) => ripped)).toEqual([false]);
    expect(first?.leftWidth.valueOf()).toBe(0);
  });

  it("of 96 at $5 and 120 at $6, three pieces of 58 are cheapest from one of each: 2 x 58 + 1/8 fit 120, the third is bought 96 long", () => {
    const stud = board("2x4", "1 1/2", "3 1/2", [stock("96", "96", "5"), stock("120", "120", "6")]);
    const plan = planBoards([piece("A", 3, inch("58"), stud)], kerf);
    expect(plan.map((one) => one.stock.length.valueOf())).toEqual([120, 96]);
  });

  it("planed strips never share a strip with rough ones of the same width", () => {
    const planed = { ...piece("B", 1, inch("10"), fenceBoard, strip), planed: true, thickness: inch("1/2") };
    const plan = planBoards([piece("A", 1, inch("10"), fenceBoard, strip), planed], kerf);
    expect(plan[0]?.strips.map((one) => [one.pieces.map(({ mark }) => mark).join(), one.planedTo?.valueOf()])).toEqual([
      ["A", undefined],
      ["B", 0.5],
    ]);
  });

  it("a piece longer than every board is our own bug, as the item stage has refused it", () => {
    expect(() => planBoards([piece("A", 1, inch("71"), fenceBoard)], kerf)).toThrow("no board of fence board");
  });

  it("no board is ever over-full and every piece is cut once, whatever is asked for (added up again in doubles)", () => {
    const sixteenths = (low: number, high: number) => fc.integer({ min: low, max: high }).map((n) => exact(n, 16));
    const wanted = fc.record({
      count: fc.integer({ min: 1, max: 9 }),
      length: sixteenths(16, 70 * 16 + 8),
      width: fc.option(sixteenths(8, 87), { nil: undefined }),
    });
    fc.assert(
      fc.property(fc.array(wanted, { minLength: 1, maxLength: 8 }), sixteenths(0, 4), (list, saw) => {
        const pieces = list.map(({ count, length, width }, i) => piece(`P${i}`, count, length, fenceBoard, width));
        expect(findFaults(planBoards(pieces, saw), pieces, saw.valueOf())).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it("the checker itself sees an over-full strip: 71 in on 70 1/2", () => {
    const pieces = [piece("A", 1, inch("70"), fenceBoard, strip)];
    const [good] = planBoards(pieces, kerf);
    const first = good?.strips[0];
    if (!good || !first) throw new Error("no plan");
    const bad = { ...good, strips: [{ ...first, pieces: [{ mark: "A", size: inch("71") }] }] };
    expect(findFaults([bad], pieces, 1 / 8)[0]).toBe("board 1: a strip takes 71");
  });
});

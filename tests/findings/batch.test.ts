// The things of a line planned together: boards, marks, and work that is shared, by hand.
import { describe, expect, it } from "vitest";
import { lineBatch } from "../../src/findings/batch.ts";
import type { Item } from "../../src/item/item.ts";
import { batchSheetLeaf, linesOf } from "../../src/leaves/batch-sheet.ts";
import { corral, rack, shop } from "../leaves/worked-goods.ts";
import { pricedShop, riserRecipe, workItem } from "./riser.ts";
import { fenceBoard, inch, piece } from "./timber.ts";

const priced = pricedShop();
const riser = workItem(riserRecipe);
/** A shop that hasn't said its minutes: only boards count. */
const { minutes: _, ...wood } = shop;
const like = (title: string, ...pieces: ReturnType<typeof piece>[]): Item => ({ ...corral[0], title, pieces });
const three = like("Three", piece("A", 3, inch("35"), fenceBoard));
const one = like("One", piece("A", 1, inch("35"), fenceBoard));

describe("two things of a line", () => {
  it("three of 35 take two boards of 70 1/2, one of 35 another; together four of 35 take two, 4.25 less", () => {
    const { list, alone } = lineBatch([three, one], 1, wood);
    expect(alone.map(({ boards, proof }) => [boards, proof.cost.valueOf()])).toEqual([
      [2, 8.5],
      [1, 4.25],
    ]);
    expect([list.proof.cost.valueOf(), list.proof.proven, list.plan.length]).toEqual([8.5, true, 2]);
  });

  it("the second's pieces are marked 2A, so that nobody mixes them up", () => {
    const { list } = lineBatch([three, one], 1, wood);
    const marks = list.plan.flatMap(({ strips }) => strips.flatMap(({ pieces }) => pieces.map(({ mark }) => mark)));
    expect(marks.sort()).toEqual(["1A", "1A", "1A", "2A"]);
  });

  it("together is never dearer than apart: the corral and the rack, one of each", () => {
    const { list, alone } = lineBatch([corral[0], rack[0]], 1, wood);
    const apart = alone.reduce((sum, { proof }) => sum + proof.cost.valueOf(), 0);
    expect(list.proof.cost.valueOf()).toBeLessThanOrEqual(apart);
  });

  it("fasteners are whole packs of both: what each takes, added", () => {
    const [both, alone] = [lineBatch([three, one], 2, wood), lineBatch([three], 2, wood)];
    expect(both.list.fasteners.map(({ count }) => count)).toEqual(alone.list.fasteners.map(({ count }) => 2 * count));
  });
});

describe("the work of two risers of a line", () => {
  it("apart 2 x 61.12; together one fetching of 20 and two stops of 2 are saved: 122.24 - 24 = 98.24 minutes", () => {
    const { minutes } = lineBatch([riser, { ...riser, title: "Another riser" }], 1, priced);
    expect([minutes?.apart.valueOf(), minutes?.together.valueOf()]).toEqual([122.24, 98.24]);
  });
});

describe("the sheet of a line", () => {
  const leaf = batchSheetLeaf("Fence-board line", [three, one], { ...shop });

  it("has a table for each thing at 1, 2, 5 and 10; three of 35 are 8.50, 10 of it 15 boards at 4.25, 6.38 each", () => {
    const [sheet] = leaf.set.sheets;
    const tables = sheet.blocks.flatMap((block) => (block.kind === "table" ? [block.table] : []));
    expect(tables.map(({ caption }) => caption)).toEqual(["1: Three", "2: One"]);
    expect(tables[0]?.rows.map((row) => row.slice(0, 3))).toEqual([
      ["1", "2", "$8.50"],
      ["2", "3", "$6.38"],
      ["5", "8", "$6.80"],
      ["10", "15", "$6.38"],
    ]);
  });

  it("offers the offcut of one to the other: three of 35 leave 35 3/8 x 5 1/2, which gives 1 × A of One", () => {
    const sheet = leaf.set.sheets.find(({ id }) => id === "offcuts");
    const [table] = sheet?.blocks.flatMap((block) => (block.kind === "table" ? [block.table] : [])) ?? [];
    expect(table?.rows[0]?.slice(0, 2)).toEqual(["Three", "fence board"]);
    expect(table?.rows[0]?.[3]).toBe("one of: 1 × A of One");
  });

  it("a thing without a line is a line by itself", () => {
    const { line: _, ...alone } = one;
    expect(
      linesOf([{ ...three, line: "L" }, alone, { ...one, title: "Two", line: "L" }]).map(({ name, line }) => [
        name,
        line.length,
      ]),
    ).toEqual([
      ["L", 2],
      ["One", 1],
    ]);
  });
});

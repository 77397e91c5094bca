// How gaps open and close outdoors: Wood Handbook, equation 13-1, from 9 % to 14 % moisture (table 13-1); sums by hand in the titles.
import { expect, it } from "vitest";
import { gapMovements } from "../../src/findings/gap-movement.ts";
import { findSizeBand, heightsOf } from "../../src/findings/heights.ts";
import { exact } from "../../src/units/length.ts";
import { rack } from "../leaves/worked-goods.ts";

const [item] = rack;
const [member] = item.members;
if (!member) throw new Error("the rack has no member");

/** One row of boards 5 wide, 1/4 apart, of a wood that moves 0.002 for 1 % moisture, bought at 12 %. */
const row = (moisture: number) => ({
  ...item,
  panels: [],
  members: [
    {
      ...member,
      group: "boards",
      width: exact(5),
      board: { ...member.board, moisture, species: { ...member.board.species, tangential: 0.002 } },
      lie: { length: "x" as const, width: "y" as const, thickness: "z" as const, show: member.lie.show },
    },
  ].map(({ panelKind: _k, panel: _p, ...rest }) => rest),
  gaps: [{ group: "boards", axis: "y" as const, gap: exact(1, 4), atEnds: false }],
});

it("5 wide x 0.002 = 0.01 for 1 %: 0.25 + 3 x 0.01 = 0.28 at 9 %, 0.25 - 2 x 0.01 = 0.23 at 14 %", () => {
  const [one] = gapMovements(row(12));
  expect(one?.made).toBe(0.25);
  expect(one?.driest).toBeCloseTo(0.28, 12);
  expect(one?.wettest).toBeCloseTo(0.23, 12);
});

it("bought at 15 %, wetter than it will be: 0.25 + 0.01 = 0.26 at its wettest", () => {
  expect(gapMovements(row(15))[0]?.wettest).toBeCloseTo(0.26, 12);
});

it("a gap of 1/4 that would close by more than itself is closed: 0, not less", () => {
  const wide = row(12);
  const swelling = { ...wide, gaps: [{ ...wide.gaps[0], gap: exact(1, 100) }] } as typeof wide;
  expect(gapMovements(swelling)[0]?.wettest).toBe(0);
});

it("EN 1729-1 (as suppliers' guides print it): a seat of 16 15/16 in is 430 mm, mark 5; one of 24 is none", () => {
  expect(findSizeBand("seat", 430 / 25.4)).toMatchObject({ mark: 5, ages: "11 to 14" });
  expect(findSizeBand("seat", 24)).toBeUndefined();
  expect(findSizeBand("top", 30)).toMatchObject({ mark: 6, stature: [1590, 1880] });
});

it("a table is what calls itself one; a seat is what a person is put on", () => {
  expect(heightsOf({ ...item, title: "Potting table" }).top).toBe(60);
  expect(heightsOf({ ...item, title: "Tablet stand" }).top).toBeUndefined();
  const sat = { name: "one-person", pounds: 250, total: 250, places: [{ at: [0, 0, 0] as const, on: [member.id] }] };
  expect(heightsOf({ ...item, loads: [sat] }).seat).toBeCloseTo(Number(member.max.z.valueOf()), 9);
});

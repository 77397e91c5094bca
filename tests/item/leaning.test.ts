import { describe, expect, test } from "vitest";
import { inches } from "../../src/units/length.ts";
import { memberOf, pieceOf, worked } from "./bench-yard.ts";

const radians = Math.PI / 180;

// A trestle of 2x4: legs 14 degrees from plumb, 30 high; a brace between them with its bottom at 8.
const trestle = `
overall: fit x 1 1/2 x 30
sizes:
  splay: 14 deg
pieces:
  stud: 2x4
panels:
  trestle:
    size: fit x height
    legs: 2 stud, mirrored, leaning splay inward, from bottom to top, touching at top
    brace: stud, level, between legs, bottom at 8
stand:
  frame: trestle, at front
joins:
  brace to legs: 2 pocket screw No. 8 x 2 1/2, back
`;

const body = "## Make\nmakes trestle\n\n1. Lay the **legs** and the **brace**.\n\n## Stand\n\n1. Put **frame** up.";

describe("a leaning trestle", () => {
  const item = worked(trestle, body);
  const [tan, cos] = [Math.tan(14 * radians), Math.cos(14 * radians)];

  test("has legs of 3 1/2 x 1 1/2 x 30 / cos 14, as both ends are cut level", () => {
    expect(memberOf(item, "frame/legs/1").solid.volume).toBeCloseTo((3.5 * 1.5 * 30) / cos, 6);
  });

  test("has one kind of leg with parallel ends, 14 degrees off square, and edges of 30 / cos 14 = 30.918", () => {
    const leg = pieceOf(item, "A");
    expect(leg.count).toBe(2);
    expect(inches(leg.length)).toBeCloseTo(30 / cos + 3.5 * tan, 9);
    expect(leg.edges.map(inches)).toEqual([expect.closeTo(30 / cos, 9), expect.closeTo(30 / cos, 9)]);
    const [low, high] = leg.ends;
    expect(Math.abs(low.mitre)).toBeCloseTo(14, 9);
    expect(low.mitre).toBeCloseTo(high.mitre, 9);
    expect([low.bevel, high.bevel]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  });

  test("has a brace with ends against each other, edges 3 1/2 x 2 tan 14 apart", () => {
    const brace = pieceOf(item, "B");
    const [low, high] = brace.ends;
    expect(low.mitre).toBeCloseTo(-high.mitre, 9);
    expect(Math.abs(low.mitre)).toBeCloseTo(14, 9);
    const [one, other] = brace.edges.map(inches);
    expect(Math.abs((one ?? 0) - (other ?? 0))).toBeCloseTo(7 * tan, 9);
  });

  test("drives its pocket screws square to the legs' edges, 15 degrees from the back face", () => {
    const screws = item.joins.filter((j) => j.a === "frame/brace").flatMap((j) => j.driven);
    expect(screws).toHaveLength(4);
    for (const { way, through, into } of screws) {
      expect(Math.abs(way[0])).toBeCloseTo(Math.cos(15 * radians) * cos, 9);
      expect(way[1]).toBeCloseTo(-Math.sin(15 * radians), 9);
      expect([through, into]).toEqual([expect.closeTo(1, 9), expect.closeTo(1.5, 9)]);
    }
  });

  test("has nothing in one place and stands balanced over the middle of its feet", () => {
    expect(item.overlaps).toEqual([]);
    expect(item.centreOfMass[0]).toBeCloseTo(inches(item.overall.width) / 2, 6);
  });
});

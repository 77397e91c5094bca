import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planBoards } from "../../src/findings/board-plan.ts";
import { thinnestWood } from "../../src/geometry/outline-faults.ts";
import { profileOf } from "../../src/geometry/profile.ts";
import { exact, inches } from "../../src/units/length.ts";
import { demoItem } from "./bench-yard.ts";
import { workedWith } from "./demo-tried.ts";

const arm = (
  loops: Readonly<Record<string, string>>,
  piece = "1x10, outline arm, wood at least 1/16",
  place = "upright, facing left",
) => `
overall: fit x fit x fit
pieces:
  arm: ${piece}
outlines:
  arm:
${Object.entries(loops)
  .map(([name, strokes]) => `    ${name}: ${strokes}`)
  .join("\n")}
stand:
  arm: arm, ${place}, at left, at front, at bottom
`;
const only = (matter: string) => {
  const item = workedWith(matter);
  const [member] = item.members;
  const [piece] = item.pieces;
  if (!member || !piece) throw new Error("there is nothing");
  return { item, member, piece };
};
const square = "start 0, 0; line to 9, 0; line to 9, 9; line to 0, 9; close";

describe("outlines in words", () => {
  test("lines keep exact sizes: 8 1/3 long, 7/3 across", () => {
    const { piece } = only(
      arm({ edge: "start 1, 1; line to 9 1/3, 1; line to 9 1/3, 3 1/3; line to 1, 3 1/3; close" }),
    );
    expect(piece.length).toEqual(exact(25, 3));
    expect(piece.width).toEqual(exact(7, 3));
    expect(piece.volume).toBeCloseTo((25 / 3) * (7 / 3) * 0.75, 9);
  });

  test("an arc over a chord of 6 that rises 3 is half a circle of 3: 6 x 2 + 9 pi / 2", () => {
    const { piece } = only(arm({ edge: "start 0, 0; line to 6, 0; line to 6, 2; arc through 3, 5 to 0, 2; close" }));
    expect(piece.volume / 0.75).toBeCloseTo(12 + (9 * Math.PI) / 2, 2);
    expect(inches(piece.width)).toBeCloseTo(5, 12);
  });

  test("a curve that leaves up and arrives down over one span is a cubic bow: 2/3 x 6 x its control height", () => {
    // Both control points stand a third of the span above the ends; a Bezier bow of height h and span s holds 3/5 h s.
    const { piece } = only(arm({ edge: "start 6, 0; curve leaving up to 0, 0 arriving down; close" }));
    expect(piece.volume / 0.75).toBeCloseTo((3 / 5) * 2 * 6, 2);
  });

  test("the mirrored half makes the whole: 2 x (4 x 6 / 2) over an upright line, as wide as 2 x 4", () => {
    const { piece } = only(arm({ edge: "start 4, 0; line to 8, 3; line to 4, 6; mirrored" }));
    expect(piece.volume / 0.75).toBeCloseTo(24, 9);
    expect(piece.length).toEqual(exact(8));
    expect(piece.width).toEqual(exact(6));
  });

  test("a circle and a rectangle with round corners are cut out: 81 - pi - (8 - (4 - pi) / 4)", () => {
    const { piece } = only(arm({ edge: square, eye: "circle 2 at 2, 2", slit: "rectangle 4 x 2 at 3, 5 corners 1/2" }));
    expect(piece.volume / 0.75).toBeCloseTo(81 - Math.PI - (8 - (4 - Math.PI) / 4), 2);
  });

  test("a round curve through the corners of a square bows out evenly and closes without a kink", () => {
    const { member } = only(arm({ edge: "round through 1, 1 and 7, 1 and 7, 7 and 1, 7" }));
    expect(member.solid.edges.filter((edge) => !edge.smooth && Math.abs(edge.a[0] - edge.b[0]) > 0.1)).toEqual([]);
    expect(inches(member.length)).toBeCloseTo(inches(member.width), 9);
  });

  test("any polygon: its area by the shoelace formula is its volume over its thickness", () => {
    const ring = fc.array(fc.integer({ min: 4, max: 32 }), { minLength: 5, maxLength: 11 });
    fc.assert(
      fc.property(ring, (radii) => {
        // points in eighths round a middle never cross
        const points = radii.map((r, i) => {
          const turn = (2 * Math.PI * i) / radii.length;
          return [Math.round(36 + r * Math.cos(turn)) / 8, Math.round(36 + r * Math.sin(turn)) / 8] as const;
        });
        const strokes = points.map(([x, y], i) => `${i === 0 ? "start" : "line to"} ${x}, ${y}`).join("; ");
        const twice = points.reduce((sum, [x, y], i) => {
          const [nx, ny] = points[(i + 1) % points.length] ?? [x, y];
          return sum + x * ny - nx * y;
        }, 0);
        const { piece } = only(arm({ edge: `${strokes}; close` }, "1x10, outline arm, wood at least 1/1000"));
        expect(piece.volume / 0.75).toBeCloseTo(twice / 2, 9);
      }),
      { numRuns: 40 },
    );
  });
});

describe("an outline lies as it is seen on its good side", () => {
  // A flag: the foot of the L runs to the right at the bottom.
  const flag = { edge: "start 0, 0; line to 6, 0; line to 6, 1; line to 1, 1; line to 1, 8; line to 0, 8; close" };
  const grain = "1x10, outline arm, grain up, wood at least 1/16";
  // Area 6 + 7 = 13; first moments 6 x 3 + 7 x 1/2 = 21 1/2 across, 6 x 1/2 + 7 x 4 1/2 = 34 1/2 up.
  const [across, up] = [21.5 / 13, 34.5 / 13];
  test("facing front, its right is the right: 21 1/2 / 13 from the left, 34 1/2 / 13 up", () => {
    const { member } = only(arm(flag, grain, "upright, facing front"));
    expect(member.solid.centroid[0]).toBeCloseTo(across, 9);
    expect(member.solid.centroid[2]).toBeCloseTo(up, 9);
  });
  test("facing left, its right is the front: 6 - 21 1/2 / 13 from the front", () => {
    const { member } = only(arm(flag, grain, "upright, facing left"));
    expect(member.solid.centroid[1]).toBeCloseTo(6 - across, 9);
    expect(member.solid.centroid[2]).toBeCloseTo(up, 9);
  });
  test("facing back, its right is the left", () => {
    const { member } = only(arm(flag, grain, "upright, facing back"));
    expect(member.solid.centroid[0]).toBeCloseTo(6 - across, 9);
  });
  test("flat, up is to the back", () => {
    const { member } = only(arm(flag, "1x10, outline arm, wood at least 1/16", "flat, running left to right"));
    expect(member.solid.centroid[0]).toBeCloseTo(across, 9);
    expect(member.solid.centroid[1]).toBeCloseTo(up, 9);
  });
  test("mirrored, it is turned over left to right", () => {
    const mirrored = "1x10, outline arm mirrored, grain up, wood at least 1/16";
    const { member } = only(arm(flag, mirrored, "upright, facing front"));
    expect(member.solid.centroid[0]).toBeCloseTo(6 - across, 9);
  });
  test("a drawing with level grain on an upright board is turned a quarter counter-clockwise", () => {
    const { member } = only(arm(flag, "1x10, outline arm, wood at least 1/16", "upright, facing front"));
    expect(member.solid.centroid[0]).toBeCloseTo(8 - up, 9);
    expect(member.solid.centroid[2]).toBeCloseTo(across, 9);
  });
});

test("the shared scroll bracket, written in words, has the volume of the reference kernel (0.5 % for chords)", () => {
  const file = join(import.meta.dirname, "../reference/geometry/scroll-bracket.json");
  const reference: number = JSON.parse(readFileSync(file, "utf8")).parts["bracket-1"].volume;
  const mm = (x: number, y: number) => `${x} mm, ${y} mm`;
  const { piece } = only(
    arm(
      {
        edge: `start ${mm(0, 0)}; line to ${mm(200, 0)}; line to ${mm(200, 24)}; arc through ${mm(150, 48)} to ${mm(120, 90)}; arc through ${mm(70, 150)} to ${mm(24, 180)}; line to ${mm(24, 240)}; line to ${mm(0, 240)}; close`,
        opening: `start ${mm(26, 26)}; line to ${mm(120, 26)}; arc through ${mm(88, 70)} to ${mm(60, 95)}; line to ${mm(26, 128)}; close`,
        hole: `circle 10 mm at ${mm(16, 208)}`,
      },
      "1x10, planed to 1/2, outline arm, grain up, wood at least 1 mm",
    ),
  );
  // 20 mm thick there, 1/2 in here.
  const volume = (piece.volume / 0.5) * 25.4 ** 2 * 20;
  expect(Math.abs(volume / reference - 1)).toBeLessThan(0.005);
});

describe("least wood", () => {
  const webOf = (loops: Readonly<Record<string, string>>) => {
    const { member } = only(arm(loops));
    const { outline, holes } = member.shape;
    return thinnestWood([outline, ...holes].map((loop) => profileOf(loop, 0.0005).points))?.width;
  };
  test("between two circles: 5 - 1 - 2 = 2 on the line of their middles", () => {
    expect(
      webOf({
        edge: "start 0, 0; line to 14, 0; line to 14, 9; line to 0, 9; close",
        a: "circle 2 at 4, 4",
        b: "circle 4 at 9, 4",
      }),
    ).toBeCloseTo(2, 3);
  });
  test("between a circle and the edge: 2 1/2 - 1 = 1 1/2", () => {
    expect(webOf({ edge: square, a: "circle 2 at 2 1/2, 4" })).toBeCloseTo(1.5, 3);
  });
  test("of a neck between two bays is what stands between their rims: 7 - 2 x 3 = 1", () => {
    const edge =
      "start 0, 0; line to 7, 0; line to 7, 1 1/2; arc through 4, 4 1/2 to 7, 7 1/2; line to 7, 9; line to 0, 9; line to 0, 7 1/2; arc through 3, 4 1/2 to 0, 1 1/2; close";
    expect(webOf({ edge })).toBeCloseTo(1, 3);
  });
  test("a square corner is no thin wood", () => {
    expect(webOf({ edge: square })).toBeCloseTo(9, 9);
  });
});

describe("glued-up pieces", () => {
  const slab = (piece: string) => `
overall: fit x fit x fit
pieces:
  slab: ${piece}
stand:
  slab: slab, flat, running left to right, 20 long, at left, at front, at bottom
`;
  test("14 wide out of 5 1/2 boards takes 14 / 5 1/2, up to 3, each 4 2/3", () => {
    const { piece, item } = only(slab("1x6, glued edge to edge to 14 wide"));
    expect(piece.blanks).toMatchObject([
      { count: 3, length: exact(20), width: exact(14, 3), grain: "along", ripped: true },
    ]);
    expect(piece.volume).toBeCloseTo(20 * 14 * 0.75, 9);
    const planned = planBoards(item.pieces, exact(1, 8)).flatMap((board) =>
      board.strips.flatMap((strip) => strip.pieces),
    );
    expect(planned).toHaveLength(3);
  });
  test("16 1/2 wide is three whole boards, none ripped", () => {
    const { piece } = only(slab("1x6, glued edge to edge to 16 1/2 wide"));
    expect(piece.blanks).toMatchObject([{ count: 3, ripped: false }]);
  });
  test("two crossed plies are 2 x 3/4 thick: one sawn along, one across, weight 20 x 14 x 1 1/2 of cedar", () => {
    const { piece, member } = only(slab("1x6, glued edge to edge to 14 wide, 2 plies, grain crossed"));
    expect(piece.thickness).toEqual(exact(3, 2));
    expect(piece.blanks).toMatchObject([
      { count: 3, length: exact(20), width: exact(14, 3), grain: "along" },
      { count: 4, length: exact(14), width: exact(5), grain: "across" },
    ]);
    expect(member.weight).toBeCloseTo(20 * 14 * 1.5 * member.board.density, 9);
  });
});

describe("the demo's hanging-basket arms", () => {
  const { item, problems } = demoItem("hanging-basket-arms");
  const member = item?.members[0];
  test("have no problem, and one arm is 1 1/2 x 9 x 9", () => {
    expect(problems).toEqual([]);
    expect(item?.overall).toEqual({ width: exact(3, 2), depth: exact(9), height: exact(9) });
    expect(item?.variants.map((v) => v.slug)).toEqual(["distressed-white", "one-board", "dark", "dark-one-board"]);
  });
  test("have at least 1 1/4 of wood everywhere and touch all four sides of their box", () => {
    const loops = member ? [member.shape.outline, ...member.shape.holes] : [];
    expect(loops).toHaveLength(3);
    const web = thinnestWood(loops.map((loop) => profileOf(loop, 0.0005).points));
    expect(web?.width).toBeGreaterThanOrEqual(1.25);
    expect(member?.solid.box).toEqual({ min: [0, 0, 0], max: [1.5, 9, 9] });
  });
  test("are two plies of 9 x 9, one with upright and one with level grain", () => {
    expect(item?.pieces[0]?.blanks).toMatchObject([
      { count: 1, length: exact(9), width: exact(9), grain: "along" },
      { count: 1, length: exact(9), width: exact(9), grain: "across" },
    ]);
  });
  test("lose the recess, 1 3/8 x 5/8 x 1/16, and under it the slot to 1/2, (1/2 x 3/8 + pi/4 x 3/8^2) x 7/16", () => {
    const whole = Math.abs(
      member?.shape
        ? areaOf(member.shape.outline) - member.shape.holes.reduce((sum, hole) => sum + areaOf(hole), 0)
        : 0,
    );
    const recess = (11 / 8) * (5 / 8) * (1 / 16);
    const slot = ((1 / 2) * (3 / 8) + (Math.PI / 4) * (3 / 8) ** 2) * (7 / 16);
    expect(member?.solid.volume).toBeCloseTo(whole * 1.5 - recess - slot, 3);
  });
});

function areaOf(loop: Parameters<typeof profileOf>[0]): number {
  const { points } = profileOf(loop, 0.02 / 25.4);
  return (
    points.reduce((sum, [x, y], i) => {
      const [nx, ny] = points[(i + 1) % points.length] ?? [x, y];
      return sum + x * ny - nx * y;
    }, 0) / 2
  );
}

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { inches } from "../../src/units/length.ts";
import { worked } from "./bench-yard.ts";

const panel = [
  "    legs: 2 strip, upright, from bottom to top, spread left to right",
  "    rails: 3 strip, level, between legs, spread clear to top",
];
const stand = [
  "  front-face: face, at front",
  "  back-face: face, at back",
  "  slats: 4 strip, flat, from front to back, under front-face rails, spread between front-face legs",
];
const joins = ["  rails to legs: 2 pocket screw No. 6 x 1, back", "  slats to rails: 1 screw No. 6 x 1 5/8"];
const cuts = ["  legs 1: hole 1/4, 1 from top, 1/2 from left, 1/2 deep, in back", "  slats: hole 1/4, centred"];

function bin(lines: { panel: string[]; stand: string[]; joins: string[]; cuts: string[] }, edge = "left"): Item {
  return worked(
    `
overall: 20 x 12 x 10
sizes:
  clear: 2
pieces:
  strip: fence board, ripped to 2 1/2
panels:
  face:
    size: width x height
${lines.panel.join("\n")}
stand:
${lines.stand.join("\n")}
joins:
${lines.joins.join("\n")}
cuts:
${lines.cuts.join("\n").replace("from left, 1/2 deep", `from ${edge}, 1/2 deep`)}
finish:
  oiled: 2 coats oil on all
`,
    `## Make
makes face, twice

1. Screw **rails** to **legs**.

## Stand

1. Put up **front-face**, **back-face** and **slats**; it weighs {weight}, {gap of slats} apart.
`,
  );
}

const inOrder = { panel, stand, joins, cuts };
const plain = bin(inOrder);

/** All that mustn't depend on the order of lines, in an order of its own. */
const figures = (item: Item) => ({
  weight: item.weight.toFixed(9),
  centre: item.centreOfMass.map((v) => v.toFixed(9)),
  pieces: item.pieces.map((p) => [p.mark, p.count, inches(p.length), p.volume.toFixed(9)]),
  members: item.members.map((m) => `${m.id} ${m.mark} ${m.solid.volume.toFixed(9)}`).sort(),
  screws: item.joins
    .flatMap((j) => j.driven)
    .map((d) => `${d.head.map((v) => v.toFixed(6))} ${d.into.toFixed(9)}`)
    .sort(),
  area: item.variant.finish.map((f) => f.area.toFixed(6)),
});

describe("the order of lines", () => {
  test("changes no figure, mark or screw", () => {
    const shuffled = <T>(list: T[]) => fc.shuffledSubarray(list, { minLength: list.length });
    fc.assert(
      fc.property(shuffled(panel), shuffled(stand), shuffled(joins), shuffled(cuts), (...[p, s, j, c]) => {
        expect(figures(bin({ panel: p, stand: s, joins: j, cuts: c }))).toEqual(figures(plain));
      }),
      { numRuns: 24 },
    );
  });
});

describe("a bin mirrored left to right", () => {
  // The left leg's hole from its left edge becomes the right leg's from its right edge.
  const mirrored = bin({ ...inOrder, cuts: [cuts[0]?.replace("legs 1", "legs 2") ?? "", cuts[1] ?? ""] }, "right");

  test("weighs the same and balances at 20 less the other's middle", () => {
    expect(mirrored.weight).toBeCloseTo(plain.weight, 12);
    expect(mirrored.centreOfMass[0]).toBeCloseTo(20 - plain.centreOfMass[0], 9);
    expect(mirrored.centreOfMass[1]).toBeCloseTo(plain.centreOfMass[1], 9);
    expect(mirrored.centreOfMass[2]).toBeCloseTo(plain.centreOfMass[2], 9);
  });

  test("has the same marks, counts and volumes", () => {
    const list = (item: Item) => item.pieces.map((p) => [p.mark, p.count, p.volume.toFixed(9)]);
    expect(list(mirrored)).toEqual(list(plain));
  });
});

// A yard of a few boards for tests of places; every figure but the sizes is of no weight there.
import { readYard } from "../../src/yard/read-yard.ts";
import type { Yard } from "../../src/yard/yard.ts";

const text = `
priced: 2026-03-02
boards:
  fence board:
    species: western redcedar
    size: 5/8 x 5 1/2
    moisture: 12
    end-loss: 1 1/2
    words: western redcedar, not treated
    lengths:
      72: 3.25
  2x4:
    species: Douglas-fir, coast
    moisture: 15
    words: Douglas-fir, not treated
    lengths:
      96: 4.10
  2x6:
    species: Douglas-fir, coast
    moisture: 15
    words: Douglas-fir, not treated
    lengths:
      96: 6.90
  1x6:
    species: ponderosa pine
    moisture: 12
    words: pine, not treated
    lengths:
      72: 5.00
fittings:
  hanger plate:
    words: a steel hanger plate
    size: 2 x 5/8 x 1/16
    weight: 1 oz
    price: 0.40
  anchor kit:
    words: a strap that ties it to the wall
    weight: 4 oz
    price: 2.10
`;

const read = readYard([{ file: "yard/boards.yaml", text }]);
if (!read.yard) throw new Error(`the small yard has problems: ${read.problems.map((p) => p.says).join("; ")}`);

export const smallYard: Yard = read.yard;

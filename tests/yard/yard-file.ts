// A small yard as a maker would write it, to be changed line by line in tests.

/** Reads cleanly as it stands. */
export const smallYard = `priced: 2026-10-03
boards:
  fence board:
    species: western redcedar
    size: 5/8 x 5 1/2
    show: one side
    moisture: 15
    end-loss: 1 1/2
    words: western redcedar, not treated
    lengths:
      72: 3.98
  2x4:
    species: lodgepole pine
    moisture: 15
    words: pine, not treated
    lengths:
      10 ft: 5.60 on 2026-09-12
      8 ft: 3.85
fasteners:
  screw No. 6 x 1 5/8:
    material: stainless steel
    driver: star T-15
    pack: 100 for 9.80
finishes:
  stain:
    kind: stain
    words: brown stain
    colour: 8A5A34
    clear: 0.45
    coverage: 200
    tin: 1 quart
    price: 21.00
    recoat: 4
    cure: 72
    oily-rags: no
    method: brush thin
    care: wash it
fittings:
  hanger plate:
    words: hanger plate
    size: 1 3/8 x 5/8 x 1/16
    weight: 0.4 oz
    price: 0.85
glues:
  wood glue: waterproof glue
`;

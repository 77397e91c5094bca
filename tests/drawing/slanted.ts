// Small recipes of slanted work, worked out: a trestle, a hopper, a cold frame with its lid; and a rack with cuts of every kind.
import type { Item } from "../../src/item/item.ts";
import { guideItem, itemFrom } from "./demo.ts";

const recipe = (matter: string, body: string): string => `---\n${matter.trim()}\n---\n\n${body.trim()}\n`;

export const trestle: Item = itemFrom(
  "trestle",
  recipe(
    `
title: Trestle
class: S
overall: fit x fit x 30
sizes:
  splay: 12 deg
pieces:
  stud: 2x4
panels:
  trestle:
    size: fit x height
    legs: 2 stud, mirrored, leaning splay inward, from bottom to top, touching at top
    brace: 1 stud, level, between legs, bottom at 8
    bearer: 1 stud, level, 24 long, centred, top at top, on back of legs
stand:
  one-trestle: trestle, facing left, at left, at front
joins:
  brace to legs: 2 pocket screw No. 8 x 2 1/2, back
  bearer to legs: 3 screw No. 10 x 2 1/2
finish:
  plain: none
`,
    `
One trestle of two.

## Screw it up

makes trestle

1. Lay the **legs** good side down.
2. Put the **brace** between them.
3. Screw the **bearer** across the back.

## Stand it up

1. Stand up the **one-trestle**.
`,
  ),
);

const wall = (name: string, run: string, side: string, neighbours: string): string =>
  `  ${name}: 1 wall, running ${run}, on edge, leaning slope ${side}, at ${side}, bottom at bottom, mitred with ${neighbours}, edges level`;

export const hopper: Item = itemFrom(
  "hopper",
  recipe(
    `
title: Hopper
class: G
overall: 14 x 12 x fit
sizes:
  slope: 20 deg
pieces:
  wall: 1x6, ripped to 5
stand:
${wall("front-wall", "left to right", "front", "left-wall and right-wall")}
${wall("back-wall", "left to right", "back", "left-wall and right-wall")}
${wall("left-wall", "front to back", "left", "front-wall and back-wall")}
${wall("right-wall", "front to back", "right", "front-wall and back-wall")}
joins:
  front-wall to left-wall: glue
  front-wall to right-wall: glue
  back-wall to left-wall: glue
  back-wall to right-wall: glue
finish:
  plain: none
`,
    `
A hopper of four walls, open below.

## Glue it up

1. Lay out the **front-wall** and the **left-wall** and glue their mitre.
2. Glue on the **back-wall**.
3. Close the ring with the **right-wall**.
`,
  ),
);

export const coldFrame: Item = itemFrom(
  "cold-frame",
  recipe(
    `
title: Cold frame
class: G
overall: 36 x 30 x fit
sizes:
  front-height: 10
  back-height: 16
pieces:
  board: 1x6
  strip: 1x4
panels:
  lid:
    size: width x fit
    boards: 5 board, level, from left to right, spread bottom to top
    battens: 2 strip, upright, from bottom to top, spread left to right, on back of boards
stand:
  floor-boards: 2 board, flat, from left to right, bottom at bottom, spread front to back
  lid: lid, flat, sloping front-height at front to back-height at back, at front, back at back, left at left
joins:
  battens to boards: 2 screw No. 6 x 1 1/4, back
finish:
  plain: none
`,
    `
A lid on a slope.

## Make the lid

makes lid

1. Lay the **boards** good side down.
2. Screw on the **battens**.

## Put it together

1. Lay the **floor-boards**.
2. Hold up the **lid**.
`,
  ),
);

/** Holes, laps and notches. */
export const cutRack: Item = guideItem("09-cuts");

export const slantedItems: readonly Item[] = [trestle, hopper, coldFrame, cutRack];

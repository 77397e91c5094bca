// Every drawing of the demo set by a browser in three sizes: its letters, measured there, run into nothing.
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { collide, squareRound } from "../../src/drawing/collision.ts";
import type { Drawing, Paper } from "../../src/drawing/drawing.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { demoItems, drawingsOf } from "../drawing/demo.ts";
import { slantedItems } from "../drawing/slanted.ts";
import { openBrowser } from "./browser.ts";

const drawings = [
  ...demoItems.flatMap((item) => drawingsOf(item)),
  ...slantedItems.flatMap((item) => drawingsOf(item, () => item)),
];

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** Pixels; undefined is as large as on paper. */
type Widths = { readonly broad?: number; readonly narrow?: number };

/** A text as it is set: the four corners round its ink, in the drawing's own millimetres. */
type Ink = { readonly text: string; readonly outline: readonly Paper[] };

/** Along its line as the browser lays it out there; over and under it as the face's own shapes reach. */
const inkOfPage = `document.fonts.ready.then(() => {
  const canvas = document.createElement("canvas").getContext("2d");
  return [...document.querySelectorAll("svg.drawing")].map((svg) =>
    [...svg.querySelectorAll("text")].map((text) => {
      const size = Number(text.getAttribute("font-size"));
      canvas.font = (text.getAttribute("font-weight") ?? "400") + " 200px 'Source Sans 3'";
      const ink = canvas.measureText(text.textContent);
      const box = text.getBBox();
      const y = Number(text.getAttribute("y"));
      const [top, foot] = [y - ink.actualBoundingBoxAscent * size / 200, y + ink.actualBoundingBoxDescent * size / 200];
      const turn = text.transform.baseVal.consolidate()?.matrix;
      const at = (x, y) => (turn ? [turn.a * x + turn.c * y + turn.e, turn.b * x + turn.d * y + turn.f] : [x, y]);
      return {
        text: text.textContent,
        outline: [at(box.x, top), at(box.x + box.width, top), at(box.x + box.width, foot), at(box.x, foot)],
      };
    }),
  );
})`;

/** Broad sheets are for paper and desks; narrow ones are what a phone is given. */
async function setAt(widths: Widths): Promise<readonly (readonly Ink[])[]> {
  const page = await browser.newPage({ viewport: { width: 1300, height: 900 } });
  await page.setContent(
    `<style>svg { display: block; height: auto }</style>${drawings
      .map((drawing) => {
        const width = drawing.width > 80 ? widths.broad : widths.narrow;
        return `<div${width === undefined ? "" : ` class="w${width}"`}>${formatSvg(drawing)}</div>`;
      })
      .join(
        "",
      )}<style>${[275, 400, 640, 1000].map((width) => `.w${width} svg { width: ${width}px }`).join(" ")}</style>`,
  );
  const found = (await page.evaluate(inkOfPage)) as readonly (readonly Ink[])[];
  await page.close();
  return found;
}

/** What the letters of a drawing run into, each told in words. */
function collisionsOf(drawing: Drawing, inks: readonly Ink[]): readonly string[] {
  const balloons = drawing.marks.filter((mark) => mark.kind === "balloon");
  const lines = drawing.marks.flatMap((mark) =>
    mark.kind === "lines"
      ? mark.chains.flatMap((chain) => chain.slice(1).map((to, i) => [chain[i] as Paper, to] as const))
      : [],
  );
  const middle = (outline: readonly Paper[]): Paper => [
    outline.reduce((sum, p) => sum + p[0], 0) / 4,
    outline.reduce((sum, p) => sum + p[1], 0) / 4,
  ];
  return inks.flatMap(({ text, outline }, i) => {
    const [u, v] = middle(outline);
    const own = balloons.find(
      (balloon) => balloon.text === text && Math.hypot(balloon.at[0] - u, balloon.at[1] - v) < balloon.radius / 2,
    );
    const out = outline.some(([x, y]) => x < 0 || y < 0 || x > drawing.width || y > drawing.height);
    const others = inks.slice(i + 1).filter((other) => collide(outline, other.outline, 0));
    return [
      ...(out ? [`"${text}" off the sheet`] : []),
      ...others.map((other) => `"${text}" over "${other.text}"`),
      ...(own === undefined
        ? lines
            .filter((line) => collide(outline, line, 0))
            .map(([at]) => `"${text}" over a line at ${at.map(Math.round)}`)
        : outline
            .filter(([x, y]) => Math.hypot(x - own.at[0], y - own.at[1]) > own.radius)
            .map(() => `"${text}" out of its circle`)),
      ...balloons
        .filter((balloon) => balloon !== own && collide(outline, squareRound(balloon.at, balloon.radius * 0.99), 0))
        .map((balloon) => `"${text}" over balloon ${balloon.text}`),
    ];
  });
}

describe.each<readonly [string, Widths]>([
  ["as large as on paper", {}],
  ["640 px wide on a desk, 275 px on a phone of 320 px", { broad: 640, narrow: 275 }],
  ["1000 px wide on a desk, 400 px on a large phone", { broad: 1000, narrow: 400 }],
])("%s", (_, widths) => {
  it("no label, leader or dimension runs into another, in any drawing", { timeout: 60_000 }, async () => {
    const inks = await setAt(widths);
    expect(inks.length).toBe(drawings.length);
    const texts = inks.flat().length;
    expect(texts).toBeGreaterThan(1000);
    const found = drawings.flatMap((drawing, i) =>
      collisionsOf(drawing, inks[i] ?? []).map((words) => `${drawing.id}: ${words}`),
    );
    expect(found).toEqual([]);
  });
});

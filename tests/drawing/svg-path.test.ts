// Lines as SVG paths: read back by the rules of SVG 1.1 section 8.3, every point lies within half a hundredth of a millimetre.
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Drawing, Paper } from "../../src/drawing/drawing.ts";
import { formatSvg } from "../../src/drawing/svg.ts";

/** M m l h v z of a path as points, each chain for itself. */
function readPath(d: string): Paper[][] {
  const chains: Paper[][] = [];
  let at: [number, number] = [0, 0];
  for (const [, letter, rest] of d.matchAll(/([MmlhvZ])([^MmlhvZ]*)/g)) {
    const numbers = [...(rest ?? "").matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(([text]) => Number(text));
    if (letter === "Z") {
      at = [...((chains.at(-1) as Paper[])[0] as Paper)] as [number, number];
      continue;
    }
    const pairs: Paper[] =
      letter === "h"
        ? numbers.map((x): Paper => [x, 0])
        : letter === "v"
          ? numbers.map((y): Paper => [0, y])
          : numbers.flatMap((x, i) => (i % 2 === 0 ? [[x, numbers[i + 1] as number] as Paper] : []));
    for (const [x, y] of pairs) {
      at = letter === "M" ? [x, y] : [at[0] + x, at[1] + y];
      if (letter === "M" || letter === "m") chains.push([]);
      (chains.at(-1) as Paper[]).push([...at]);
    }
  }
  return chains;
}

const drawing = (marks: Drawing["marks"]): Drawing => ({
  id: "lines",
  title: "Lines",
  description: "Lines and a field.",
  width: 200,
  height: 200,
  marks,
});
const pathOf = (svg: string, kind: string): string =>
  new RegExp(`<path [^>]*class="${kind}"[^>]*>`).exec(svg)?.[0].match(/ d="([^"]*)"/)?.[1] ?? "";

const place = fc.integer({ min: -1_000_000, max: 21_000_000 }).map((n) => n / 100_000);
/** Points that don't fall together on the grid of hundredths. */
const chain = fc.uniqueArray(fc.tuple(place, place), {
  minLength: 3,
  maxLength: 8,
  comparator: ([a, b], [c, d]) => Math.max(Math.abs(a - c), Math.abs(b - d)) < 0.02,
});

const sameAs = (read: readonly Paper[][], drawn: readonly (readonly Paper[])[]): void => {
  expect(read.length).toBe(drawn.length);
  read.forEach((points, i) => {
    expect(points.length).toBe(drawn[i]?.length);
    points.forEach(([u, v], j) => {
      const [x, y] = (drawn[i] as readonly Paper[])[j] as Paper;
      expect(Math.max(Math.abs(u - x), Math.abs(v - y))).toBeLessThanOrEqual(0.005 + 1e-6);
    });
  });
};

test("open chains come back point for point, however long the path: steps don't add up to an error", () => {
  fc.assert(
    fc.property(fc.array(chain, { minLength: 1, maxLength: 8 }), (chains) => {
      const svg = formatSvg(drawing([{ kind: "lines", line: "visible", chains }]));
      sameAs(readPath(pathOf(svg, "d-visible")), chains);
    }),
  );
});

test("closed fields come back too, each from its own first point", () => {
  fc.assert(
    fc.property(fc.array(chain, { minLength: 1, maxLength: 10 }), (loops) => {
      const svg = formatSvg(drawing([{ kind: "region", tone: { kind: "wood" }, shade: 0, loops }]));
      sameAs(readPath(pathOf(svg, "d-wood")), loops);
    }),
  );
});

test("10 0.5, 10 1, 12.25 1 is written M10 0.5v.5h2.25", () => {
  const chains: Paper[][] = [
    [
      [10, 0.5],
      [10, 1],
      [12.25, 1],
    ],
  ];
  const svg = formatSvg(drawing([{ kind: "lines", line: "visible", chains }]));
  expect(pathOf(svg, "d-visible")).toBe("M10 0.5v.5h2.25");
});

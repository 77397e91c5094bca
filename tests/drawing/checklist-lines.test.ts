// Lines, dimensions, references and views as the standards have them, asked of every drawing of the demo on paper. Sources: ISO 128-2,
// ISO 129-1, ISO 6433, ISO 128-3 (scopes and excerpts read; figures of dashes and distances from memory and from tutorials).
import { describe, expect, test } from "vitest";
import { cross } from "../../src/drawing/collision.ts";
import { isInside } from "../../src/drawing/dot-spots.ts";
import type { Drawing, LineKind, Mark, Paper } from "../../src/drawing/drawing.ts";
import { type Segment, sideBySide } from "../../src/drawing/side-by-side.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { demoItems, drawingsOf } from "./demo.ts";
import { slantedItems } from "./slanted.ts";

const drawings = [
  ...demoItems.flatMap((item) => drawingsOf(item)),
  ...slantedItems.flatMap((item) => drawingsOf(item, () => item)),
];

const only = <K extends Mark["kind"]>(drawing: Drawing, kind: K) =>
  drawing.marks.filter((mark): mark is Extract<Mark, { kind: K }> => mark.kind === kind);

const segmentsOf = (drawing: Drawing, kinds: readonly LineKind[]): readonly Segment[] =>
  only(drawing, "lines")
    .filter((mark) => kinds.includes(mark.line))
    .flatMap((mark) => mark.chains.flatMap((chain) => chain.slice(1).map((to, i): Segment => [chain[i] as Paper, to])));

/** Dimensions with arrows: two extension lines, and the tips of its arrows. */
function dimensionsOf(drawing: Drawing) {
  return drawing.marks.flatMap((mark, i) => {
    const [first, second] = drawing.marks.slice(i + 1, i + 3);
    if (mark.kind !== "lines" || mark.line !== "dimension" || mark.chains.length !== 3) return [];
    if (first?.kind !== "arrowhead" || second?.kind !== "arrowhead") return [];
    const [one, two] = mark.chains as readonly Segment[] as readonly [Segment, Segment];
    return [{ extensions: [one, two] as const, tips: [first.tip, second.tip] as Segment }];
  });
}

const rounded = (value: number): number => Math.round(value * 100) / 100;

describe.each(drawings.map((drawing) => [drawing.id, drawing] as const))("%s", (_, drawing) => {
  test("16: dashed is 12 and 3 line widths, long-dashed dotted 24, 3, 1/2 and 3, all else continuous", () => {
    const dashes: Readonly<Record<string, readonly number[]>> = { hidden: [12, 3], path: [24, 3, 0.5, 3] };
    for (const [, kind, width, dash] of formatSvg(drawing).matchAll(
      /<path [^>]*class="d-(light|hidden|path|dimension|visible|strong)"[^>]*? stroke-width="([\d.]+)"[^>]*?(?: stroke-dasharray="([\d. ]+)")?(?= d=|\/?>)/g,
    )) {
      const wanted = dashes[kind as string];
      const drawn = dash?.split(" ").map(Number);
      if (wanted === undefined) expect([kind, drawn]).toEqual([kind, undefined]);
      else {
        expect([kind, drawn?.length]).toEqual([kind, wanted.length]);
        drawn?.forEach((part, i) => {
          expect(Math.abs(part - (wanted[i] as number) * Number(width))).toBeLessThan(0.15);
        });
      }
    }
  });

  test("17: lines of dimensions, leaders and arrows that run side by side stand 0.7 mm apart", () => {
    const all = segmentsOf(drawing, ["dimension"]);
    const close = all.flatMap((a, i) =>
      all.slice(i + 1).flatMap((b) => {
        const found = sideBySide(a, b);
        if (found === undefined || found.together < 0.5 || found.apart < 1e-3) return [];
        return found.apart < 0.7 - 1e-6
          ? [{ apart: rounded(found.apart), a: a[0].map(rounded), b: b[0].map(rounded) }]
          : [];
      }),
    );
    expect(close).toEqual([]);
  });

  test("18: no dashed line lies under a continuous one", () => {
    const continuous = segmentsOf(drawing, ["visible", "strong", "light"]);
    for (const dashed of segmentsOf(drawing, ["hidden"])) {
      for (const line of continuous) {
        const found = sideBySide(dashed, line);
        if (found === undefined || found.apart > 0.1) continue;
        expect(found.together).toBeLessThan(1);
      }
    }
  });

  test("22: dimension lines side by side stand at least 6 mm apart, the shorter one nearer to the wood", () => {
    const wood = only(drawing, "region").flatMap((region) => region.loops.flat());
    const all = dimensionsOf(drawing);
    const off = ([a, b]: Segment): number => {
      const level = Math.abs(a[1] - b[1]) < 1e-6;
      return Math.min(...wood.map((p) => Math.abs(level ? p[1] - a[1] : p[0] - a[0])));
    };
    all.forEach(({ tips: a }, i) => {
      for (const { tips: b } of all.slice(i + 1)) {
        const found = sideBySide(a, b);
        if (found === undefined || found.together < 1e-6) continue;
        const long = ([from, to]: Segment) => Math.hypot(to[0] - from[0], to[1] - from[1]);
        expect(found.apart).toBeGreaterThanOrEqual(6);
        if (found.apart < 10 && /-piece-|-panel-/.test(drawing.id)) {
          expect(off(a) < off(b) === long(a) < long(b)).toBe(true);
        }
      }
    });
  });

  test("23: extension lines start 1 mm off what they measure and run 2 mm, 8 narrow lines, past the dimension line", () => {
    for (const { extensions, tips } of dimensionsOf(drawing)) {
      extensions.forEach(([from, to], i) => {
        const tip = tips[i] as Paper;
        expect(Math.hypot(to[0] - tip[0], to[1] - tip[1])).toBeCloseTo(2, 6);
        expect(Math.abs((to[0] - from[0]) * (tip[1] - from[1]) - (to[1] - from[1]) * (tip[0] - from[0]))).toBeLessThan(
          1e-6,
        );
        expect(Math.hypot(tip[0] - from[0], tip[1] - from[1])).toBeGreaterThan(2.99);
      });
    }
  });

  test("24: between its arrows no dimension line crosses an outline, another dimension line, or an extension line that isn't its own", () => {
    const outlines = segmentsOf(drawing, ["visible", "strong", "light"]);
    const all = dimensionsOf(drawing);
    for (const { tips } of all) {
      for (const outline of outlines) {
        expect(cross(...tips, ...outline)).toBe(false);
        const found = sideBySide(tips, outline);
        if (found !== undefined && found.together > 0.5) expect(found.apart).toBeGreaterThan(0.7);
      }
      for (const other of all) {
        if (other.tips === tips) continue;
        expect(cross(...tips, ...other.tips)).toBe(false);
        for (const extension of other.extensions) expect(cross(...tips, ...extension)).toBe(false);
      }
    }
  });

  test("27: references stand in two columns, in circles larger than the type of the dimensions", () => {
    const balloons = only(drawing, "balloon");
    expect(new Set(balloons.map((balloon) => rounded(balloon.at[0]))).size).toBeLessThanOrEqual(2);
    const type = Math.max(0, ...only(drawing, "text").map((text) => text.size));
    for (const { radius } of balloons) expect(2 * radius).toBeGreaterThan(type);
  });
});

describe("views of one piece", () => {
  const extent = (loops: readonly (readonly Paper[])[], k: 0 | 1): readonly [number, number] => {
    const all = loops.flat().map((p) => p[k]);
    return [Math.min(...all), Math.max(...all)];
  };
  const pieces = drawings.filter((drawing) => /-piece-/.test(drawing.id));
  let further = 0;

  test.each(pieces.map((drawing) => [drawing.id, drawing] as const))(
    "30, 31: %s: the edge hangs below the face, the end stands right of it (third angle), in line to 0.01 mm",
    (_, drawing) => {
      const wood = only(drawing, "region");
      const [first] = wood;
      if (first === undefined) throw new Error("no wood");
      // Views are told apart by the free strip between them.
      const groups: (readonly Paper[])[][] = [];
      for (const { loops } of wood) {
        const touching = groups.filter((group) => {
          const [gu, gv, u, v] = [extent(group, 0), extent(group, 1), extent(loops, 0), extent(loops, 1)];
          return gu[0] - 0.5 < u[1] && u[0] - 0.5 < gu[1] && gv[0] - 0.5 < v[1] && v[0] - 0.5 < gv[1];
        });
        const rest = groups.filter((group) => !touching.includes(group));
        groups.splice(0, groups.length, ...rest, [...touching.flat(), ...loops]);
      }
      const face = groups.find((group) => group.includes(first.loops[0] as readonly Paper[])) as (readonly Paper[])[];
      for (const group of groups) {
        if (group === face) continue;
        further += 1;
        const isBelow = extent(group, 1)[0] > extent(face, 1)[1];
        const isRight = extent(group, 0)[0] > extent(face, 0)[1];
        expect([isBelow, isRight].filter(Boolean)).toHaveLength(1);
        const k = isBelow ? 0 : 1;
        extent(group, k).forEach((end, i) => {
          expect(Math.abs(end - (extent(face, k)[i] as number))).toBeLessThanOrEqual(0.01);
        });
      }
    },
  );

  test("some pieces have a further view", () => {
    expect(further).toBeGreaterThan(3);
  });
});

test("a reference's circle holds no wood: it stands outside every outline", () => {
  for (const drawing of drawings) {
    const regions = only(drawing, "region");
    for (const { at } of only(drawing, "balloon")) {
      expect(regions.some((region) => isInside(at, region.loops))).toBe(false);
    }
  }
});

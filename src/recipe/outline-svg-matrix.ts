// An SVG transform's text -> the matrix it stands for (SVG 1.1, section 7.6).
import type { Vec2 } from "../geometry/shape.ts";

/** x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
};

export const scaleOf = (a: number, d: number, e = 0, f = 0): Matrix => ({ a, b: 0, c: 0, d, e, f });
export const matrixBy = (scale: number): Matrix => scaleOf(scale, scale);

/** What `inner` does, then what `outer` does. */
export const moved = (outer: Matrix, inner: Matrix): Matrix => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
});

export const applied =
  ({ a, b, c, d, e, f }: Matrix) =>
  ([x, y]: Vec2): Vec2 => [a * x + c * y + e, b * x + d * y + f];

/** How much it scales if it keeps circles round; undefined if it doesn't. */
export function evenScale({ a, b, c, d }: Matrix): number | undefined {
  const size = Math.hypot(a, b);
  const even = Math.abs(Math.hypot(c, d) - size) < 1e-9 * size && Math.abs(a * c + b * d) < 1e-9 * size * size;
  return even ? size : undefined;
}

/** Undefined where the text is none. */
export function readTransform(text: string): Matrix | undefined {
  let matrix = matrixBy(1);
  const rest = text.replace(/\s*(\w+)\s*\(([^)]*)\)\s*,?/g, (_, name: string, inner: string) => {
    const numbers = inner
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    const own = numbers.every(Number.isFinite) ? single(name, numbers) : undefined;
    if (!own) return "?";
    matrix = moved(matrix, own);
    return "";
  });
  return rest.trim() === "" ? matrix : undefined;
}

function single(name: string, n: readonly number[]): Matrix | undefined {
  const [a = 0, b, c] = n;
  const turn = (a * Math.PI) / 180;
  switch (`${name} ${n.length}`) {
    case "translate 1":
    case "translate 2":
      return scaleOf(1, 1, a, b ?? 0);
    case "scale 1":
    case "scale 2":
      return scaleOf(a, b ?? a);
    case "rotate 1":
      return { a: Math.cos(turn), b: Math.sin(turn), c: -Math.sin(turn), d: Math.cos(turn), e: 0, f: 0 };
    case "rotate 3": {
      const about = single("rotate", [a]);
      return about && moved(moved(scaleOf(1, 1, b, c), about), scaleOf(1, 1, -(b ?? 0), -(c ?? 0)));
    }
    case "skewX 1":
      return { ...matrixBy(1), c: Math.tan(turn) };
    case "skewY 1":
      return { ...matrixBy(1), b: Math.tan(turn) };
    case "matrix 6": {
      const [p = 0, q = 0, r = 0, s = 0, t = 0, u = 0] = n;
      return { a: p, b: q, c: r, d: s, e: t, f: u };
    }
    default:
      return undefined;
  }
}

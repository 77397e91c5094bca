// Drawing -> the same with fewer points in its curves, and on a coarser grid: for what is looked at on a screen and measured by nobody.
import type { Drawing, Mark, Paper } from "./drawing.ts";

/** No point lies further than this from the line that is left, mm: a tenth of a wide line. */
const off = 0.04;

/** Points lie on tenths of a millimetre: a third of a pixel where a drawing fills a page. */
const grid = ([u, v]: Paper): Paper => [Math.round(u * 10) / 10, Math.round(v * 10) / 10];

export const lighten = (drawing: Drawing): Drawing => ({ ...drawing, marks: drawing.marks.map(lighter) });

function lighter(mark: Mark): Mark {
  if (mark.kind === "region") return { ...mark, loops: mark.loops.map((loop) => fewerOfLoop(loop).map(grid)) };
  if (mark.kind === "lines") return { ...mark, chains: mark.chains.map((chain) => fewer(chain).map(grid)) };
  return mark;
}

/** A closed loop is cut at its first point and at the one furthest from it. */
function fewerOfLoop(loop: readonly Paper[]): readonly Paper[] {
  const [first] = loop;
  if (!first || loop.length < 5) return loop;
  const far = furthest(loop, ([u, v]) => Math.hypot(u - first[0], v - first[1]));
  return [...fewer(loop.slice(0, far + 1)).slice(0, -1), ...fewer([...loop.slice(far), first]).slice(0, -1)];
}

/** Ramer, Douglas and Peucker: the point furthest from the straight line stays if it is too far, and both halves are done again. */
function fewer(chain: readonly Paper[]): readonly Paper[] {
  const [first, last] = [chain[0], chain.at(-1)];
  if (!first || !last || chain.length < 3) return chain;
  const away = distanceFrom(first, last);
  const far = furthest(chain, away);
  if (away(chain[far] as Paper) <= off) return [first, last];
  return [...fewer(chain.slice(0, far + 1)).slice(0, -1), ...fewer(chain.slice(far))];
}

const furthest = (chain: readonly Paper[], away: (p: Paper) => number): number =>
  chain.reduce((best, p, i) => (away(p) > away(chain[best] as Paper) ? i : best), 0);

/** To the stretch from a to b, not to the endless line: a chain may turn back. */
function distanceFrom([au, av]: Paper, [bu, bv]: Paper): (p: Paper) => number {
  const [du, dv] = [bu - au, bv - av];
  const square = du * du + dv * dv;
  return ([u, v]) => {
    const along = square === 0 ? 0 : Math.max(0, Math.min(1, ((u - au) * du + (v - av) * dv) / square));
    return Math.hypot(u - au - along * du, v - av - along * dv);
  };
}

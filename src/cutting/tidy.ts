// A plan's boards -> the same boards with the same pieces or exchanged ones, for fewer saw settings, then for a longer useful offcut.
import type { CutPiece, CutProblem, Order } from "./cut-problem.ts";
import { type Blank, everyLaying } from "./every-laying.ts";
import type { Strip } from "./fill.ts";
import type { Job, Kind, Stock } from "./job.ts";
import { bestLoads, type Work } from "./knapsack.ts";
import { placedPieces, type SawnBoard } from "./lay-out.ts";
import { isMitred } from "./mitre-line.ts";
import { countSettings, settingNames } from "./saw-settings.ts";

/** Steps at effort 1: of laying one board again, and of all boards. */
const stepsOfBoard = 3_000;
const stepsOfAll = 300_000;

/** Neither money nor the number of boards changes; settings never grow for an offcut. Counted steps, so the same everywhere. */
export function tidy(problem: CutProblem, job: Job, boards: readonly SawnBoard[]): readonly SawnBoard[] {
  const work = { left: stepsOfAll * problem.effort };
  const few = fewerSettings(problem, job, boards, work);
  return problem.useful === undefined ? few : longerOffcut(problem, job, few, work);
}

const namesOf = (problem: CutProblem, job: Job, board: SawnBoard): string[] =>
  settingNames(problem, {
    id: (job.stocks[board.stock] as Stock).boards[0]?.id as string,
    order: board.order,
    pieces: placedPieces(job, board, (kind) => ((job.kinds[kind] as Kind).pieces[0] as CutPiece).mark),
  });

/** Full width that stays free at the end, in steps of the grid; slanted and fixed pieces aren't looked at. */
function freeEnd(job: Job, { stock, order, strips }: SawnBoard): number {
  const { length } = job.stocks[stock] as Stock;
  const long = ({ pieces }: Strip): number =>
    pieces.reduce((sum, { kind, quarter }) => {
      const piece = job.kinds[kind] as Kind;
      return sum + (quarter ? piece.width : piece.length) + job.kerf;
    }, 0);
  if (order === "rip") return length - Math.max(...strips.map(long));
  return length - strips.reduce((sum, { size }) => sum + size + job.kerf, 0);
}

const isPlain = (job: Job, { strips }: SawnBoard): boolean =>
  strips.every(({ fixed, pieces }) => !fixed && pieces.every(({ kind }) => !isMitred(job.kinds[kind] as Kind)));

/** Board after board is laid again in the way that asks the fewest settings beside all the others; until none gets better. */
function fewerSettings(problem: CutProblem, job: Job, given: readonly SawnBoard[], work: Work): SawnBoard[] {
  const boards = [...given];
  const names = boards.map((board) => namesOf(problem, job, board));
  const narrow = boards.map(
    (board) =>
      isPlain(job, board) &&
      board.strips.some(({ pieces }) =>
        pieces.some(({ kind, quarter }) => {
          const { length, width } = job.kinds[kind] as Kind;
          return (quarter ? length : width) < (job.stocks[board.stock] as Stock).width;
        }),
      ),
  );
  for (let better = true; better && work.left > 0; ) {
    better = false;
    for (let b = 0; b < boards.length && work.left > 0; b++) {
      if (!narrow[b]) continue;
      const now = boards[b] as SawnBoard;
      const others = names.filter((_, i) => i !== b);
      let best = { board: now, own: names[b] as string[], count: countSettings(names), free: freeEnd(job, now) };
      const blanks = now.strips.flatMap(({ pieces }) =>
        pieces.map(({ kind, quarter }): Blank => ({ kind, quarter: quarter ?? false })),
      );
      for (const order of job.orders as readonly Order[]) {
        const steps = { left: Math.min(stepsOfBoard * problem.effort, work.left) };
        work.left -= steps.left;
        everyLaying(job, job.stocks[now.stock] as Stock, order, blanks, steps, (strips) => {
          const board = { stock: now.stock, order, strips };
          const own = namesOf(problem, job, board);
          const count = countSettings([...others, own]);
          const free = freeEnd(job, board);
          steps.left -= blanks.length + names.length;
          if (count < best.count || (count === best.count && problem.useful !== undefined && free > best.free)) {
            best = { board, own, count, free };
          }
          return true;
        });
        work.left += Math.max(0, steps.left);
      }
      if (best.board === now) continue;
      boards[b] = best.board;
      names[b] = best.own;
      better = true;
    }
  }
  return boards;
}

/** Boards that are one line each exchange pieces two by two, so that one is emptied as far as it goes. */
function longerOffcut(problem: CutProblem, job: Job, given: readonly SawnBoard[], work: Work): readonly SawnBoard[] {
  const countOf = (boards: readonly SawnBoard[]): number =>
    countSettings(boards.map((board) => namesOf(problem, job, board)));
  const settings = countOf(given);
  const longest = (boards: readonly SawnBoard[]): number => Math.max(...boards.map((board) => freeEnd(job, board)));
  let best = given;
  for (let target = 0; target < given.length && work.left > 0; target++) {
    let boards = [...given];
    for (let other = 0; other < boards.length && work.left > 0; other++) {
      if (other === target) continue;
      const pair = exchanged(job, boards[target] as SawnBoard, boards[other] as SawnBoard);
      work.left -= 2_000;
      if (pair) boards = boards.with(target, pair[0]).with(other, pair[1]);
    }
    if (longest(boards) > longest(best) && countOf(boards) <= settings) best = boards;
  }
  return best;
}

/** As much of both as fits goes onto the second; undefined where the first gets no shorter or would stay empty. */
function exchanged(job: Job, first: SawnBoard, second: SawnBoard): [SawnBoard, SawnBoard] | undefined {
  if (!isLine(job, first) || !isLine(job, second)) return undefined;
  const pieces = [...second.strips, ...first.strips].flatMap((strip) => strip.pieces);
  const kinds = [...new Set(pieces.map(({ kind }) => kind))];
  const fits = (board: SawnBoard, kind: number): boolean => (job.kinds[kind] as Kind).fits[board.stock] === true;
  if (!kinds.every((kind) => fits(first, kind))) return undefined;
  const counts = kinds.map((kind) => pieces.filter((piece) => piece.kind === kind).length);
  const sizes = kinds.map((kind) => (job.kinds[kind] as Kind).length + job.kerf);
  const most = counts.map((count, i) => (fits(second, kinds[i] as number) ? count : 0));
  const room = (job.stocks[second.stock] as Stock).length + job.kerf;
  const [load] = bestLoads({ sizes, profits: Float64Array.from(sizes), most: Int32Array.from(most) }, [room]);
  if (load === undefined) return undefined;
  const rest = counts.map((count, i) => count - (load.counts[i] as number));
  const used = (board: SawnBoard): number => (job.stocks[board.stock] as Stock).length - freeEnd(job, board);
  const left = rest.reduce((sum, count, i) => sum + count * (sizes[i] as number), 0);
  if (left >= used(first) || left === 0) return undefined;
  const line = (board: SawnBoard, of: ArrayLike<number>): SawnBoard => {
    const held = kinds.flatMap((kind, i) => Array.from({ length: of[i] as number }, () => kind));
    const laid = held.map((kind) => ({ kind, turned: false, flipped: false, at: 0 }));
    const strips =
      board.order === "rip"
        ? [{ size: Math.max(...held.map((kind) => (job.kinds[kind] as Kind).width)), pieces: laid }]
        : laid.map((each) => ({ size: (job.kinds[each.kind] as Kind).length, pieces: [each] }));
    return { ...board, strips };
  };
  return [line(first, rest), line(second, load.counts)];
}

/** Nothing lies side by side, slanted or turned. */
const isLine = (job: Job, board: SawnBoard): boolean =>
  isPlain(job, board) &&
  board.strips.every(({ pieces }) => pieces.every(({ quarter }) => !quarter)) &&
  (board.order === "rip" ? board.strips.length === 1 : board.strips.every(({ pieces }) => pieces.length === 1));

// A problem and a plan -> everything that is wrong with the plan, added up again from the two alone.
import { exact, zero } from "../units/length.ts";
import type { CutBoard, CutPiece, CutPlan, CutProblem, PlacedPiece, PlannedCuts } from "./cut-problem.ts";

/** A piece as it lies: its square blank and how far its ends lean, upper edge less lower edge, along the board. */
type Lying = {
  readonly mark: string;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly left: number;
  readonly right: number;
};

/** Faults in plain words; none where the plan holds. Shares nothing with the planner. Positions may be off by 1e-6 of the problem's unit. */
export function checkPlan(problem: CutProblem, plan: CutPlan): string[] {
  return [
    ...checkCounts(problem, plan),
    ...checkMoney(problem, plan),
    ...plan.boards.flatMap((board, i) => checkBoard(problem, board, i)),
  ];
}

const slack = 1e-6;

function checkCounts({ pieces, boards }: CutProblem, plan: CutPlan): string[] {
  const faults: string[] = [];
  const cut = plan.boards.flatMap((board) => board.pieces.map(({ mark }) => mark));
  for (const mark of new Set([...cut, ...pieces.map((piece) => piece.mark)])) {
    const wanted = pieces.find((piece) => piece.mark === mark)?.count ?? 0;
    const got = cut.filter((each) => each === mark).length;
    if (got !== wanted) faults.push(`piece "${mark}" is cut ${got} times, wanted ${wanted}`);
  }
  for (const id of new Set(plan.boards.map((board) => board.id))) {
    const used = plan.boards.filter((board) => board.id === id).length;
    const have = boards.find((board) => board.id === id)?.have ?? Number.POSITIVE_INFINITY;
    if (used > have) faults.push(`board "${id}" is used ${used} times, there are ${have}`);
  }
  return faults;
}

function checkMoney({ boards }: CutProblem, plan: CutPlan): string[] {
  const cost = plan.boards.reduce(
    (sum, { id }) => sum.add(boards.find((board) => board.id === id)?.cost ?? exact(0)),
    zero,
  );
  const faults: string[] = [];
  if (!cost.equals(plan.cost)) faults.push(`the boards cost ${cost.valueOf()}, the plan says ${plan.cost.valueOf()}`);
  if (plan.lowerBound.compare(plan.cost) > 0) faults.push("the bound is above the cost");
  if (plan.proven !== plan.lowerBound.equals(plan.cost))
    faults.push("proven is said where bound and cost differ, or not where they agree");
  return faults;
}

function checkBoard(problem: CutProblem, planned: PlannedCuts, number: number): string[] {
  const name = `board ${number + 1} (${planned.id})`;
  const board = problem.boards.find(({ id }) => id === planned.id);
  if (board === undefined) return [`${name} is not among the boards`];
  if (planned.pieces.length === 0) return [`${name} gives nothing`];
  const lying: Lying[] = [];
  const faults: string[] = [];
  for (const placed of planned.pieces) {
    const piece = problem.pieces.find(({ mark }) => mark === placed.mark);
    if (piece === undefined) continue;
    if (piece.boards && !piece.boards.includes(board.id)) faults.push(`${name}: "${piece.mark}" may not come from it`);
    if (piece.showFace && placed.flipped) {
      faults.push(`${name}: "${piece.mark}" is turned over, yet its face must show`);
    }
    lying.push(lies(piece, placed));
  }
  const length = board.length.sub(problem.trim).valueOf();
  for (const { mark, from, to, low, high } of lying) {
    if (from < -slack || to > length + slack) faults.push(`${name}: "${mark}" lies from ${from} to ${to} of ${length}`);
    if (low < -slack || high > board.width.valueOf() + slack)
      faults.push(`${name}: "${mark}" lies across ${low} to ${high}`);
  }
  return [...faults, ...checkCuts(planned, lying, problem.kerf.valueOf(), board).map((fault) => `${name}: ${fault}`)];
}

/** The lower edge's left end is at `at`; half a turn changes the ends about, turning over mirrors both. */
function lies(piece: CutPiece, { mark, at, across, turned, flipped }: PlacedPiece): Lying {
  const width = piece.width.valueOf();
  const lean = (end: number): number => Math.tan((end * Math.PI) / 180) * width;
  let [left, right] = [-lean(piece.ends[0]), lean(piece.ends[1])];
  if (turned) [left, right] = [right, left];
  if (flipped) [left, right] = [-left, -right];
  const from = at + Math.min(0, left);
  return { mark, from, to: from + piece.length.valueOf(), low: across, high: across + width, left, right };
}

/** First cuts run through the whole board, second cuts through one strip: strips first, then the pieces of each. */
function checkCuts({ order }: PlannedCuts, lying: readonly Lying[], kerf: number, board: CutBoard): string[] {
  const faults: string[] = [];
  const [start, end] = order === "rip" ? (["low", "high"] as const) : (["from", "to"] as const);
  const [first, last] = order === "rip" ? (["from", "to"] as const) : (["low", "high"] as const);
  if (
    lying.some(({ left, right }) => left !== 0 || right !== 0) &&
    lying.every(({ low, high }) => low < slack && high > board.width.valueOf() - slack)
  ) {
    return checkNesting(
      [...lying].sort((a, b) => a.from + a.to - b.from - b.to),
      kerf,
    );
  }
  const sorted = [...lying].sort((a, b) => a[start] - b[start] || a[first] - b[first]);
  const strips: Lying[][] = [];
  for (const piece of sorted) {
    const strip = strips.at(-1);
    if (strip && Math.abs((strip[0] as Lying)[start] - piece[start]) <= slack) strip.push(piece);
    else strips.push([piece]);
  }
  strips.forEach((strip, i) => {
    const next = strips[i + 1]?.[0];
    const widest = Math.max(...strip.map((piece) => piece[end]));
    if (next && next[start] < widest + kerf - slack)
      faults.push(`the strip of "${next.mark}" starts at ${next[start]}, within ${widest} and a kerf`);
    strip.forEach((piece, k) => {
      const after = strip[k + 1];
      if (after && after[first] < piece[last] + kerf - slack)
        faults.push(`"${after.mark}" starts at ${after[first]}, within ${piece[last]} and a kerf`);
    });
  });
  return faults;
}

/** Pieces as wide as the board, one after the other: a slanted cut is longer along the board than a square one. */
function checkNesting(line: readonly Lying[], kerf: number): string[] {
  return line.flatMap((piece, i) => {
    const next = line[i + 1];
    if (next === undefined) return [];
    const width = piece.high - piece.low;
    const steepest = Math.max(Math.abs(piece.right), Math.abs(next.left));
    const needed = kerf * Math.hypot(1, steepest / width);
    const lower = next.from - Math.min(0, next.left) - (piece.to - Math.max(0, piece.right));
    const upper = lower + next.left - piece.right;
    return Math.min(lower, upper) < needed - slack
      ? [`"${next.mark}" has ${Math.min(lower, upper)} after "${piece.mark}", a kerf takes ${needed}`]
      : [];
  });
}

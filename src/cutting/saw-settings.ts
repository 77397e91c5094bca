// Planned boards -> every setting of fence, stop and mitre in the order of the work, each once with its runs.
import type { CutBoard, CutPiece, CutProblem, PlannedCuts } from "./cut-problem.ts";
import { type Lying, liesOn } from "./lying.ts";

/**
 * All boards are worked together in four passes: boards crosscut to lengths, boards and lengths ripped, strips crosscut to pieces (and
 * pieces shorter than their length), pieces narrower than their strip ripped. A board that isn't ripped is crosscut in whichever pass
 * has its stop already. `size`: a width, a length, or degrees off square.
 */
export type SawSetting = {
  readonly pass: 1 | 2 | 3 | 4;
  readonly tool: "fence" | "stop" | "mitre";
  readonly size: number;
  /** How many pieces, strips or lengths are sawn at it; of a mitre, how many ends. */
  readonly runs: number;
};

/** One cut; "free": a crosscut that may be in pass 1 or 3. */
type Cut = { readonly pass: SawSetting["pass"] | "free"; readonly tool: SawSetting["tool"]; readonly size: number };

const slack = 1e-6;

/** In the order of passes, a pass's mitres behind its stops, the largest size first. */
export function sawSettings(problem: CutProblem, boards: readonly PlannedCuts[]): SawSetting[] {
  const settings = new Map<string, SawSetting>();
  const count = (cut: Cut & { readonly pass: SawSetting["pass"] }): void => {
    const runs = (settings.get(nameOf(cut))?.runs ?? 0) + 1;
    settings.set(nameOf(cut), { ...cut, runs });
  };
  const free: Cut[] = [];
  for (const cut of boards.flatMap((board) => cutsOf(problem, board))) {
    const { pass } = cut;
    if (pass === "free") free.push(cut);
    else count({ ...cut, pass });
  }
  for (const cut of free) count({ ...cut, pass: settings.has(nameOf({ ...cut, pass: 1 })) ? 1 : 3 });
  const tools = ["fence", "stop", "mitre"];
  return [...settings.values()].sort(
    (a, b) => a.pass - b.pass || tools.indexOf(a.tool) - tools.indexOf(b.tool) || b.size - a.size,
  );
}

/** The same counted only, from the names of each board's cuts. */
export function countSettings(boards: Iterable<readonly string[]>): number {
  const names = new Set<string>();
  for (const board of boards) for (const name of board) names.add(name);
  let count = 0;
  for (const name of names) {
    const size = name.slice(name.indexOf(" "));
    if (!name.startsWith("free") || (!names.has(`1${size}`) && !names.has(`3${size}`))) count++;
  }
  return count;
}

/** What sawing one board asks of the settings, each once. */
export const settingNames = (problem: CutProblem, board: PlannedCuts): string[] => [
  ...new Set(cutsOf(problem, board).map(nameOf)),
];

const nameOf = ({ pass, tool, size }: Cut): string => `${pass} ${tool} ${size.toFixed(6)}`;

function cutsOf(problem: CutProblem, { id, order, pieces }: PlannedCuts): Cut[] {
  const board = problem.boards.find((each) => each.id === id) as CutBoard;
  const [length, width] = [board.length.valueOf(), board.width.valueOf()];
  const lying = pieces.map((placed) => liesOn(problem, placed));
  const ripped = lying.some(({ wide }) => wide < width - slack);
  const crosscut = ({ piece, long }: Lying, pass: Cut["pass"]): Cut[] => [
    ...(long < length - slack ? [{ pass, tool: "stop", size: long } as const] : []),
    ...mitresOf(piece).map((size) => ({ pass, tool: "mitre", size }) as const),
  ];
  if (!ripped) return lying.flatMap((each) => crosscut(each, "free"));
  return order === "rip"
    ? stripsOf(lying, ({ across }) => across).flatMap((strip) => {
        const size = Math.max(...strip.map(({ wide }) => wide));
        const low = (strip[0] as Lying).across;
        const cuts: Cut[] = strip.flatMap((each) => crosscut(each, 3));
        // What is left of the board at exactly this width needs no cut of its own.
        if (low + size < width - slack) cuts.push({ pass: 2, tool: "fence", size });
        for (const { wide } of strip) if (wide < size - slack) cuts.push({ pass: 4, tool: "fence", size: wide });
        return cuts;
      })
    : stripsOf(lying, ({ from }) => from).flatMap((strip) => {
        const size = Math.max(...strip.map(({ long }) => long));
        const cuts: Cut[] = size < length - slack ? [{ pass: 1, tool: "stop", size }] : [];
        for (const { piece, long, wide, across } of strip) {
          if (across + wide < width - slack) cuts.push({ pass: 2, tool: "fence", size: wide });
          if (long < size - slack) cuts.push({ pass: 3, tool: "stop", size: long });
          for (const angle of mitresOf(piece))
            cuts.push({ pass: strip.length > 1 ? 3 : 1, tool: "mitre", size: angle });
        }
        return cuts;
      });
}

/** Pieces that begin at the same place, by that place. */
function stripsOf(lying: readonly Lying[], start: (each: Lying) => number): Lying[][] {
  const strips: Lying[][] = [];
  for (const each of [...lying].sort((a, b) => start(a) - start(b))) {
    const strip = strips.at(-1);
    if (strip && start(each) - start(strip[0] as Lying) <= slack) strip.push(each);
    else strips.push([each]);
  }
  return strips;
}

const mitresOf = ({ ends }: CutPiece): number[] => ends.filter((end) => end !== 0).map(Math.abs);

// Places where a piece's grain runs out across a narrow part -> three lines along the grain on its face view, and the words for them.
import type { Piece } from "../item/item.ts";
import type { Length } from "../units/length.ts";
import type { BoardFrame } from "./board-frame.ts";
import type { Mark, Paper } from "./drawing.ts";

/** From one of the three lines to the next, mm. */
const apart = 1;

/** `spot` puts a place along the board and up its face on paper. The outer two lines are shorter, as the edges may curve. */
export function drawShortGrain(
  { shortGrain = [] }: Piece,
  frame: BoardFrame,
  spot: (along: number, up: number) => Paper,
): readonly Mark[] {
  const chains = shortGrain.flatMap(({ from, to, width }) =>
    [-1, 0, 1].map((k): Paper[] => {
      const inset = width * (k === 0 ? 0.04 : 0.15);
      return [from[0] + inset, to[0] - inset].map((along): Paper => {
        const [u, v] = spot(along, frame.up ? from[1] : frame.size[1] - from[1]);
        return [u, v + k * apart];
      });
    }),
  );
  return chains.length === 0 ? [] : [{ kind: "lines", line: "dimension", chains }];
}

/** One sentence for all such places; undefined where there is none. */
export function shortGrainWords({ shortGrain = [] }: Piece, say: (length: Length) => string): string | undefined {
  const [first] = shortGrain;
  if (!first) return undefined;
  const [low, high] = [Math.min, Math.max].map((pick) => say(pick(...shortGrain.map(({ width }) => width))));
  const wide = low === high ? `${low} wide` : `${low} to ${high} wide`;
  const places = shortGrain.length === 1 ? "1 place" : `${shortGrain.length} places`;
  const kept = Math.round(100 * Math.max(...shortGrain.map((each) => each.kept)));
  const warned = shortGrain.some(({ level }) => level === "warn");
  return `${warned ? "Weak" : "Note the"} short grain, three lines along it: ${places}, ${wide} along the grain, where at most ${kept} % of the strength is left and the wood may split. ${warned ? "Let it bear little there; cross plies or turn the grain if it must bear." : "Let nothing heavy hang there."}`;
}

// The sentences of order: a piece that can't get to its place at its step, and a fastener that no driver gets behind.
import { sayList as list } from "../say-length.ts";
import type { Sentence } from "../sentences.ts";

export const feasibleSentences = {
  "no-way-in": (f: { step: number; piece: string; blockers: readonly string[]; last: string | undefined }) => ({
    says: `${f.piece} can't get to its place in step ${f.step}: every straight way in is blocked by ${list(f.blockers)}, there before it.`,
    expected: "one straight way to its place that nothing stands in",
    mend: `Put ${f.piece} in place ${f.last === undefined ? "earlier" : `before ${f.last}`}, or leave a way open for it.`,
  }),
  "no-driver-room": (f: { step: number; fastener: string; count: number; a: string; b: string; blocker: string }) => ({
    says: `${f.count === 1 ? `the ${f.fastener}` : `${f.count} of ${f.fastener}`} from ${f.a} into ${f.b} can't be driven in step ${f.step}: ${f.blocker} stands behind ${f.count === 1 ? "its head" : "their heads"}.`,
    expected:
      "room behind a head, 3/8 wide for a bit 1 long, then 3/4 wide to 4 for the driver (common practice, no source)",
    mend: `Drive ${f.count === 1 ? "it" : "them"} before ${f.blocker} is put in place, or from another side.`,
  }),
} satisfies Record<string, (facts: never) => Sentence>;

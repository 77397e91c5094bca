// Even gaps, fewest pieces and rounding to the tape against published worked examples.
import { describe } from "vitest";
import { formatLength } from "../../src/units/format-length.ts";
import { exact, inches, times } from "../../src/units/length.ts";
import { evenGap, fewestForGap } from "../../src/units/spacing.ts";
import { type Answer, given, type Published, published, testPublished } from "./published.ts";

function answer(row: Published): Answer {
  if (row.id.startsWith("trig.round")) return formatLength(given(row, "x"), { unit: "in", per: 16 }).replace(" ", "-");
  const room = exact(given(row, "L"));
  const width = exact(given(row, "w"));
  if (row.id.startsWith("trig.count")) return fewestForGap(room, width, exact(given(row, "gmax")), true) ?? "none";
  const gap = evenGap(room, times(width, exact(given(row, "n"))), given(row, "n"), row.id !== "trig.space.noend");
  return gap && inches(gap);
}

describe("spacing", () => testPublished(published("spacing"), answer));

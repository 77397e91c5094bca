// Lumber sizes, board feet, shrinkage and kerfs against published figures.
// Left out, because the project computes nothing from them: lumber.mc.kd15 (a grade mark), lumber.mc.example (weighing a
// sample in an oven), lumber.shrink.ps20.t and .w (the allowance of an old edition; its equation is checked instead).
import { describe } from "vitest";
import { boardFeet } from "../../src/units/board-foot.ts";
import { formatLength } from "../../src/units/format-length.ts";
import { offcut, piecesPerBoard } from "../../src/units/kerf.ts";
import { exact } from "../../src/units/length.ts";
import { woodDensity } from "../../src/yard/density.ts";
import { dressedThickness, dressedWidth, dryMoisture, type Sawn } from "../../src/yard/dressed-sizes.ts";
import { lumberShrinkage } from "../../src/yard/movement.ts";
import { type Answer, given, type Published, published, testPublished } from "./published.ts";

function answer(row: Published): Answer {
  const [, what = "", a = "", b = ""] = row.id.split(".");
  if (what === "thick") return dressedThickness[a as Sawn][b]?.valueOf();
  if (what === "width") return dressedWidth[a as Sawn][b]?.valueOf();
  if (row.id === "lumber.mc.dry.max") return dryMoisture;
  if (row.id === "lumber.mc.example2")
    return (given(row, "weight_lb") * woodDensity(0.4, given(row, "mc_to"))) / woodDensity(0.4, given(row, "mc_from"));
  if (what === "bf")
    return boardFeet(
      exact(given(row, "nominal_t_in")),
      exact(given(row, "nominal_w_in")),
      exact(given(row, "length_ft") * 12),
    ).valueOf();
  if (row.id === "lumber.kerf.4")
    return offcut(
      exact(given(row, "board_in")),
      exact(given(row, "piece_in")),
      given(row, "n"),
      exact(given(row, "kerf_in")),
    ).valueOf();
  if (what === "kerf")
    return piecesPerBoard(exact(given(row, "board_in")), exact(given(row, "piece_in")), exact(given(row, "kerf_in")));
  if (what === "shrink") return lumberShrinkage(b === "w" ? "width" : "thickness", given(row, "M"));
  if (what === "mm") return metricOfDry();
  return undefined;
}

function metricOfDry(): Record<string, number> {
  const named = [
    ...["1", "2"].map((t) => [`t${t}`, dressedThickness.dry[t]] as const),
    ...["2", "3", "4", "6", "8", "10", "12"].map((w) => [`w${w}`, dressedWidth.dry[w]] as const),
  ];
  return Object.fromEntries(
    named.map(([key, size]) => [key, size ? Number(formatLength(size, { unit: "mm" })) : Number.NaN]),
  );
}

describe("lumber", () => testPublished(published("lumber"), answer));

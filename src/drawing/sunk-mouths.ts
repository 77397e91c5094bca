// A board's countersunk holes -> the rims of their cones on its face view, which the solid itself doesn't have.
import type { Member } from "../item/item.ts";
import type { BoardFrame } from "./board-frame.ts";
import type { LineKind, Mark, Paper } from "./drawing.ts";

const sides = 24;

/** `spot` puts a place along the board and up its face on paper. Rims on the far face are dashed. */
export function drawSunkMouths(
  { cuts }: Member,
  frame: BoardFrame,
  spot: (along: number, up: number) => Paper,
): readonly Mark[] {
  const rims = cuts.flatMap((cut) => {
    if (cut.kind !== "hole" || cut.axis !== "thickness" || cut.countersink === undefined) return [];
    const [along, width] = cut.at3;
    const up = frame.up ? width : frame.size[1] - width;
    const radius = cut.countersink / 2;
    const line: LineKind = (cut.from === "high") === frame.up ? "visible" : "hidden";
    const chain = Array.from({ length: sides + 1 }, (_, i): Paper => {
      const angle = (2 * Math.PI * i) / sides;
      return spot(along + radius * Math.cos(angle), up + radius * Math.sin(angle));
    });
    return [{ line, chain }];
  });
  return (["visible", "hidden"] as const).flatMap((line): Mark[] => {
    const chains = rims.filter((rim) => rim.line === line).map((rim) => rim.chain);
    return chains.length === 0 ? [] : [{ kind: "lines", line, chains }];
  });
}

// A loop and a way to move points -> the loop moved. The way must keep shapes: turns, mirrors, shifts, even scaling.
import type { Loop, PathItem, Vec2 } from "./shape.ts";

export function movedLoop(loop: Loop, move: (p: Vec2) => Vec2, scale = 1): Loop {
  if (loop.kind === "circle") return { kind: "circle", centre: move(loop.centre), radius: loop.radius * scale };
  return { kind: "path", items: loop.items.map((item) => movedItem(item, move)) };
}

function movedItem(item: PathItem, move: (p: Vec2) => Vec2): PathItem {
  if ("leave" in item) return { leave: move(item.leave), reach: move(item.reach), to: move(item.to) };
  return "mid" in item ? { mid: move(item.mid), to: move(item.to) } : move(item);
}

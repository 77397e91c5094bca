// A drawing with texts -> the same with every letter drawn as an outline: the same pixels on a machine that has no fonts.
import type { Drawing, Mark } from "./drawing.ts";
import { baseline, textWidth } from "./text-width.ts";
import { type TypeFaces, textLoops } from "./type-face.ts";

const ink = "#1f1a17";

/** Balloons keep their circles; their letters become outlines over them. */
export function outlined(drawing: Drawing, faces: TypeFaces): Drawing {
  return { ...drawing, marks: drawing.marks.flatMap((mark) => outlinedMark(mark, faces)) };
}

function outlinedMark(mark: Mark, faces: TypeFaces): Mark[] {
  if (mark.kind === "text") return [letters({ ...mark }, faces)];
  if (mark.kind !== "balloon") return [mark];
  // As svg.ts sets it in a balloon.
  const size = mark.text.length > 2 ? (2 * mark.radius - 1.2) / textWidth(mark.text, 1, true) : mark.radius * 1.25;
  const at = [mark.at[0], mark.at[1] + baseline(size)] as const;
  return [
    { ...mark, text: "" },
    letters({ kind: "text", at, text: mark.text, size, anchor: "middle", strong: true }, faces),
  ];
}

const letters = (mark: Extract<Mark, { kind: "text" }>, faces: TypeFaces): Mark => ({
  kind: "region",
  tone: { kind: "coat", colour: ink, shade: 0 },
  shade: 0,
  loops: textLoops(mark, mark.strong ? faces.strong : faces.regular),
});

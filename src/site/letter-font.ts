// The bundled bold font -> the outlines that signs are lettered in. Source Sans 3, SIL Open Font License 1.1.
import { createRequire } from "node:module";
import * as fontkit from "fontkit";
import type { Contour, LetterFont, Stroke } from "../drawing/lettering/letter-font.ts";

let known: LetterFont | undefined;

/** Read once; the file comes with the packages. */
export function signFont(): LetterFont {
  known ??= readFont(createRequire(import.meta.url).resolve("source-sans/TTF/SourceSans3-Bold.ttf"));
  return known;
}

function readFont(file: string): LetterFont {
  const font = fontkit.openSync(file);
  if (!("layout" in font)) throw new Error("the bundled font file holds several fonts");
  return {
    name: font.fullName,
    capHeight: font.capHeight,
    contoursOf: (text) => {
      // Kerning alone: ligatures and other forms would make what is read differ from what was typed.
      const { glyphs, positions } = font.layout(text, { liga: false, clig: false, calt: false, frac: false });
      let pen = 0;
      return glyphs.flatMap((glyph, i) => {
        const at = pen + (positions[i]?.xOffset ?? 0);
        pen += positions[i]?.xAdvance ?? 0;
        return contoursAt(glyph.path.commands, at);
      });
    },
  };
}

/** Errors: a cubic curve, which no TrueType font has, is our bug. */
export function contoursAt(commands: fontkit.Glyph["path"]["commands"], right: number): Contour[] {
  const contours: { from: readonly [number, number]; strokes: Stroke[] }[] = [];
  const point = (args: readonly number[], i: number): readonly [number, number] => [
    (args[i] ?? 0) + right,
    args[i + 1] ?? 0,
  ];
  for (const { command, args } of commands) {
    const strokes = contours.at(-1)?.strokes ?? [];
    if (command === "moveTo") contours.push({ from: point(args, 0), strokes: [] });
    else if (command === "lineTo") strokes.push({ to: point(args, 0) });
    else if (command === "quadraticCurveTo") strokes.push({ by: point(args, 0), to: point(args, 2) });
    else if (command !== "closePath") throw new Error(`a letter has a ${command}`);
  }
  return contours;
}

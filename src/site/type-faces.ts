// The bundled fonts -> outlines for the letters of pictures. Source Sans 3, SIL Open Font License 1.1.
import { createRequire } from "node:module";
import * as fontkit from "fontkit";
import type { TypeFace, TypeFaces } from "../drawing/type-face.ts";
import { contoursAt } from "./letter-font.ts";

let known: TypeFaces | undefined;

/** Read once; the files come with the packages, so that no font of the machine has a part in it. */
export function typeFaces(): TypeFaces {
  known ??= { regular: readFace("Regular"), strong: readFace("Semibold") };
  return known;
}

function readFace(cut: string): TypeFace {
  const font = fontkit.openSync(createRequire(import.meta.url).resolve(`source-sans/TTF/SourceSans3-${cut}.ttf`));
  if (!("layout" in font)) throw new Error("the bundled font file holds several fonts");
  return {
    unitsPerEm: font.unitsPerEm,
    set: (text) => {
      const { glyphs, positions } = font.layout(text);
      let pen = 0;
      const contours = glyphs.flatMap((glyph, i) => {
        const at = pen + (positions[i]?.xOffset ?? 0);
        pen += positions[i]?.xAdvance ?? 0;
        return contoursAt(glyph.path.commands, at);
      });
      return { contours, advance: pen };
    },
  };
}

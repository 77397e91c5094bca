// An item -> everything of it that is worth having at true size, in the order of the work.
import type { Item } from "../../item/item.ts";
import type { Division } from "../../units/division.ts";
import type { LetterFont } from "../lettering/letter-font.ts";
import { letteringTemplates } from "../lettering/lettering-templates.ts";
import { bevelTemplates, spacerTemplates, storySticks } from "./bench-templates.ts";
import { pieceTemplates } from "./piece-templates.ts";
import type { Template } from "./template.ts";

/** All but the letters, which need a font. */
export const benchTemplates = (item: Item, division: Division): readonly Template[] => [
  ...pieceTemplates(item, division),
  ...bevelTemplates(item),
  ...spacerTemplates(item, division),
  ...storySticks(item, division),
];

/** Rows of letters by the way that is standard for each. */
export const templatesOf = (item: Item, division: Division, font: LetterFont): readonly Template[] => [
  ...benchTemplates(item, division),
  ...letteringTemplates(item, font, ({ ways }) => ways[0] ?? "stencil"),
];

// The text of a summary that was written when sheets were printed -> the summary; undefined where it is none.
import { z } from "zod";
import type { Summary } from "./summary.ts";

const texts = z.record(z.string(), z.string());

const schema = z.strictObject({
  title: z.string(),
  slug: z.string(),
  revision: z.string(),
  date: z.string(),
  sizes: z.record(z.string(), z.number()),
  places: z.record(z.string(), z.array(z.number())),
  drawings: texts,
  prices: texts,
  steps: texts,
  cautions: z.array(z.string()),
});

export function parseSummary(text: string): Summary | undefined {
  try {
    return schema.parse(JSON.parse(text));
  } catch {
    return undefined;
  }
}

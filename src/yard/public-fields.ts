// A checked thing and its schema -> only what may stand on the public shelf. A field is private unless its schema says otherwise.
import { z } from "zod";
import { elementOf, shapeOf } from "../problems/tree-shape.ts";

/** Whether the schema, or what it wraps, carries the store's mark. */
function isPublic(schema: z.core.$ZodType): boolean {
  let inner: z.core.$ZodType | undefined = schema;
  while (inner) {
    if (z.globalRegistry.get(inner)?.shelf === "store") return true;
    inner = (inner._zod.def as { innerType?: z.core.$ZodType }).innerType;
  }
  return false;
}

const camel = (key: string): string => key.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

/**
 * The value with its public fields alone; undefined where none is left. A marked field comes whole; in one without a
 * mark the walk goes on inside. A key of the schema written `care-note` is also found as `careNote`. What the schema
 * does not know is private.
 */
export function publicOnly(schema: z.core.$ZodType, value: unknown): unknown {
  if (value === undefined || isPublic(schema)) return value;
  const shape = shapeOf(schema);
  const element = elementOf(schema);
  if (typeof value !== "object" || value === null) return undefined;
  if (Array.isArray(value)) {
    const kept = element ? value.map((v) => publicOnly(element, v)).filter((v) => v !== undefined) : [];
    return kept.length > 0 ? kept : undefined;
  }
  const fields = Object.entries(value).flatMap(([key, inner]) => {
    const under = shape ? Object.entries(shape).find(([known]) => known === key || camel(known) === key)?.[1] : element;
    const kept = under === undefined ? undefined : publicOnly(under, inner);
    return kept === undefined ? [] : [[key, kept] as const];
  });
  return fields.length > 0 ? Object.fromEntries(fields) : undefined;
}

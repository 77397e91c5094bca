// One row of published figures -> a test whose title says where the figure comes from and how sure it is.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

type Value = number | string | Readonly<Record<string, number>>;

/** A figure from outside the project; `tolerance` is in the value's unit (abs), a fraction (rel), or exact. */
export type Published = {
  readonly id: string;
  readonly title: string;
  readonly inputs: Readonly<Record<string, number>> | null;
  readonly value: Value;
  readonly unit: string;
  readonly conditions: string | null;
  readonly source: string;
  readonly certainty: string;
  readonly tolerance: { readonly abs?: number; readonly rel?: number; readonly exact?: boolean };
};

const certainties: readonly (readonly [code: string, words: string])[] = [
  ["R1", "read in the primary text"],
  ["R2", "read in a reprint"],
  ["X", "from memory, agrees with what was read"],
  ["M", "from memory"],
  ["P", "common practice, no source"],
  ["C", "computed"],
];

const certaintyWords = (code: string): string =>
  certainties.find(([start]) => code.startsWith(start))?.[1] ?? `certainty ${code}`;

/** The rows of tests/world/data/NAME.json. */
export const published = (name: string): readonly Published[] =>
  JSON.parse(readFileSync(new URL(`data/${name}.json`, import.meta.url), "utf8"));

/** What the project computes for a row; undefined fails the test. */
export type Answer = Value | undefined;

/** One test a row. Every row must be answered. */
export function testPublished(rows: readonly Published[], answer: (row: Published) => Answer): void {
  for (const row of rows)
    test(`${row.title}: ${JSON.stringify(row.value)} ${row.unit} — ${row.source} (${certaintyWords(row.certainty)})`, () => {
      const ours = answer(row);
      expect(ours, `no answer for ${row.id}`).toBeDefined();
      if (typeof row.value === "object")
        for (const [key, value] of Object.entries(row.value))
          expectNear((ours as Record<string, number>)[key], value, row);
      else expectNear(ours, row.value, row);
    });
}

function expectNear(ours: unknown, value: number | string, row: Published): void {
  if (typeof value === "string") {
    expect(ours).toBe(value);
    return;
  }
  const within = row.tolerance.abs ?? (row.tolerance.rel ?? 0) * Math.abs(value);
  expect(typeof ours).toBe("number");
  expect(Math.abs((ours as number) - value)).toBeLessThanOrEqual(within + 1e-9);
}

/** An input of the row by name. */
export function given(row: Published, key: string): number {
  const value = row.inputs?.[key];
  if (value === undefined) throw new Error(`row ${row.id} has no input ${key}`);
  return value;
}

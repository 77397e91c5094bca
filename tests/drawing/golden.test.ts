// Every drawing of the demo as SVG, compared byte for byte with the one that was looked at.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { formatSvg } from "../../src/drawing/svg.ts";
import { golden } from "./kept.ts";

const folder = join(import.meta.dirname, "../output/drawings");
/** A drawing that is new is written; one that differs leaves its new form beside the old one. */
test.each(golden.map((drawing) => [drawing.id, drawing] as const))(
  "%s is as it was when it was looked at",
  (id, drawing) => {
    const svg = formatSvg(drawing);
    const kept = join(folder, `${id}.svg`);
    const changed = join(folder, `${id}-changed.svg`);
    if (!existsSync(kept) && process.env.CI === undefined) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(kept, svg);
    }
    const same = readFileSync(kept, "utf8") === svg;
    if (same) rmSync(changed, { force: true });
    else writeFileSync(changed, svg);
    expect(same, `compare tests/output/drawings/${id}.svg with its -changed.svg`).toBe(true);
  },
);

test("no kept drawing is left over", () => {
  const names = new Set(golden.map((drawing) => `${drawing.id}.svg`));
  expect(readdirSync(folder).filter((file) => !file.endsWith("-changed.svg") && !names.has(file))).toEqual([]);
});

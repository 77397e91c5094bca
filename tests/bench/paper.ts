// How long the demo's PDFs take: each set by the typesetter, nothing kept; and what one changed recipe asks of the maker's patience.

import { join } from "node:path";
import { formsOf } from "../../src/item/variants/forms.ts";
import { sheetSetOf } from "../../src/leaves/sheets/sheet-set-of.ts";
import { printJob } from "../../src/paper/print-job.ts";
import { readContent } from "../../src/site/content-files.ts";
import { packShelf } from "../../src/site/pack-shelf.tsx";
import { PageSetter } from "../../src/site/pdf/page-setter.ts";
import type { Variants } from "../../src/site/shelf-pages.tsx";
import type { Printed } from "../../src/site/site.ts";
import { workContent } from "../../src/site/work-content.ts";
import { root } from "../whole/demo.ts";

const limit = 1250;

const { content } = readContent(join(root, "content"));
const worked = workContent(content);
const { shop } = worked;
if (!shop) throw new Error("the demo has problems");
const timed = <T>(run: () => T): readonly [T, number] => {
  const started = performance.now();
  const made = run();
  return [made, performance.now() - started];
};

const [binder, binderTook] = timed(() =>
  worked.recipes.flatMap(({ items: [standard, ...others] }): Printed[] => {
    if (!standard) return [];
    const forms = formsOf([standard, ...others] satisfies Variants);
    return forms.flatMap((form) => {
      const printed = sheetSetOf(form, shop, forms);
      const name = [standard.slug, form[0].variant.form].filter((part) => part !== "").join("-");
      return shop.papers.map((paper) => ({ path: `binder: ${name}, ${paper.size}`, printed, paper }));
    });
  }),
);
const [shelf, packsTook] = timed(() => packShelf(worked));
const packed = shelf.packs.flatMap(({ files }) => files.flatMap((file) => ("printed" in file ? [file] : [])));

const setter = new PageSetter();
const took: (readonly [path: string, milliseconds: number])[] = [];
const { user, system } = process.cpuUsage();
for (const { path, printed, paper } of [...binder, ...packed]) {
  const started = performance.now();
  await setter.set(printJob(printed, paper));
  took.push([path, performance.now() - started]);
}
const used = process.cpuUsage({ user, system });
const slowest = took.reduce((a, b) => (b[1] > a[1] ? b : a));
const all = took.reduce((sum, [, milliseconds]) => sum + milliseconds, 0);
const row = (what: string, milliseconds: number, most?: number): void => {
  const verdict = most === undefined ? "" : `  limit ${most} ms: ${milliseconds < most ? "met" : "MISSED"}`;
  process.stdout.write(`${what.padEnd(58)}${milliseconds.toFixed(0).padStart(7)} ms${verdict}\n`);
  if (most !== undefined && milliseconds >= most) process.exitCode = 1;
};
row("sheets of the binder, worked out and drawn", binderTook);
row("sheets of the packs, with boards that are thicker and thinner", packsTook);
row(`${took.length} PDFs together`, all);
row("the same in time of the processor", (used.user + used.system) / 1000);
row(`the slowest of them (${slowest[0]})`, slowest[1], limit);

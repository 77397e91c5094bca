// The demo's contact sheet with every kept drawing that came out otherwise, before and after -> .cache/drawings, to be looked at.
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { renderToString } from "preact-render-to-string";
import { DrawingsSheetPage } from "../../layouts/drawings-sheet.tsx";
import { drawingsSheetLeaf, itemDrawings } from "../../src/leaves/drawings-sheet.ts";
import { yardFor } from "../../src/site/yard-for.ts";
import { buildInto, root } from "../whole/demo.ts";
import { demoItem, demoItems } from "./demo.ts";

const kept = join(root, "tests/output/drawings");
const after = "-changed.svg";
const changed = readdirSync(kept)
  .filter((file) => file.endsWith(after))
  .map((file) => {
    const name = file.slice(0, -after.length);
    const before = join(kept, `${name}.svg`);
    return {
      name,
      before: existsSync(before) ? readFileSync(before, "utf8") : "",
      after: readFileSync(join(kept, file), "utf8"),
    };
  });

const { shop } = yardFor(join(root, "content/recipes/hose-and-pot-corral.md"), undefined);
if (!shop) throw new Error("the demo's shop has problems");
const items = demoItems.map((item) => {
  const [first, ...others] = item.variants.map(({ slug }) => demoItem(item.slug, slug));
  return itemDrawings([first ?? item, ...others], shop);
});
const leaf = drawingsSheetLeaf(items, changed, shop);

const out = join(root, ".cache/drawings");
mkdirSync(out, { recursive: true });
const site = join(root, ".cache/looks-site");
buildInto(site, join(root, "content"));
cpSync(join(site, "binder/assets"), join(out, "assets"), { recursive: true });
const page = join(out, "drawings.html");
writeFileSync(page, `<!doctype html>${renderToString(DrawingsSheetPage({ leaf, root: "" }))}`);
process.stdout.write(`${page}: ${changed.length} changed\n`);

// Sheets that were printed: what they said is kept, and later ones tell what moved since, on cover and index.
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { buildInto, newFolder, root, shopleaf } from "./demo.ts";

const slug = "trestle-pair-with-plank-top";

it("a changed splay, 14 to 12, is told from the kept file on: by differ, on the cover, in the binder's index", () => {
  const folder = newFolder();
  const content = join(folder, "content");
  for (const part of ["yard", "shop"]) cpSync(join(root, "content", part), join(content, part), { recursive: true });
  const recipe = join(content, "recipes", `${slug}.md`);
  cpSync(join(root, "content/recipes", `${slug}.md`), recipe);

  const kept = shopleaf(["printed", recipe]);
  expect(kept).toMatchObject({ code: 0, err: "" });
  const file = join(content, "printed", `${slug}.json`);
  expect(JSON.parse(readFileSync(file, "utf8"))).toMatchObject({ slug, revision: "Revision 1" });

  const same = buildInto(join(folder, "same"), content);
  expect(readFileSync(join(same, `binder/items/${slug}.html`), "utf8")).toContain("the printed sheets still hold");

  writeFileSync(recipe, readFileSync(recipe, "utf8").replace("splay: 14 deg", "splay: 12 deg"));
  const told = shopleaf(["differ", file, recipe]);
  expect(told.code).toBe(0);
  const { changes } = JSON.parse(told.out) as {
    changes: { what: string; name: string; before?: number; after?: number }[];
  };
  expect(changes).toContainEqual({ what: "size", name: "A mitre, low end", before: 14, after: 12 });

  const site = buildInto(join(folder, "site"), content);
  for (const page of [`binder/items/${slug}.html`, "binder/index.html"])
    expect(readFileSync(join(site, page), "utf8")).toContain("A mitre, low end: 14° → 12°");
}, 120_000);

it("a kept file that was written by hand is a problem, and a wrong call is told with the usage", () => {
  const file = join(newFolder(), "x.json");
  writeFileSync(file, "{}");
  const told = shopleaf(["differ", file, file]);
  expect(told.code).toBe(1);
  expect(told.err).toContain("shopleaf printed");
  expect(shopleaf(["differ", file]).code).toBe(2);
});

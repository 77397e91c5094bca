// The command's calls: what is wrong with a call, what a script gets, and that no maker ever sees a stack.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { newFolder, root, shopleaf } from "./demo.ts";

const corral = join(root, "content/recipes/hose-and-pot-corral.md");

describe("a wrong call ends with 2 and the usage, and prints no JSON", () => {
  it.each([
    [[]],
    [["bild"]],
    [["build", "extra"]],
    [["build", "--contents", "x"]],
    [["build", "--out"]],
    [["build", "--out", ""]],
    [["build", "--out", "a", "--out", "b"]],
    [["build", "--only", "shelf"]],
    [["problems"]],
    [["work"]],
    [["work", "a.md", "b.md"]],
    [["work", corral, "--variant", "gilded"]],
    [["watch", "--port", "many"]],
    [["watch", "--content", "nowhere"]],
  ])("%j", (words) => {
    const told = shopleaf(words);
    expect(told.code).toBe(2);
    expect(told.out).toBe("");
    expect(told.err).toContain("shopleaf build");
    expect(told.err).not.toMatch(/\n\s+at /);
  });
});

it("--help prints the usage and ends with 0", () => {
  const told = shopleaf(["--help"]);
  expect(told.code).toBe(0);
  expect(told.out).toContain("shopleaf work");
  expect(told.err).toBe("");
});

describe("a recipe without a yard near", () => {
  const alone = join(newFolder(), "alone.md");
  writeFileSync(alone, readFileSync(corral));

  it("is told what to do, and takes the yard it is given", () => {
    const told = shopleaf(["work", alone]);
    expect(told.code).toBe(1);
    expect(told.out).toBe("");
    expect(told.err).toContain("There is no yard in any folder above this recipe");
    expect(told.err).toContain("--content");
    const given = shopleaf(["work", alone, "--content", join(root, "content")]);
    expect(given.code).toBe(0);
    expect(JSON.parse(given.out)).toMatchObject({ slug: "hose-and-pot-corral" });
  });

  it("finds the yard of the nearest folder above it, from any folder it is called in", () => {
    const from = newFolder();
    const told = shopleaf(["work", corral], from);
    expect(told.code).toBe(0);
    expect(JSON.parse(told.out)).toMatchObject({ title: "Hose-and-pot corral" });
  });
});

describe("problems", () => {
  it("of a good recipe are none: exit 0, an empty list, no word on standard error", () => {
    expect(shopleaf(["problems", corral])).toEqual({ code: 0, out: '{\n  "problems": []\n}\n', err: "" });
  });

  it("of the whole demo are none", () => {
    expect(shopleaf(["problems", join(root, "content")]).code).toBe(0);
  });

  it("of files that are not there, not text or not readable are problems of theirs, not faults of ours", () => {
    const folder = newFolder();
    writeFileSync(join(folder, "bytes.md"), Buffer.from([0xff, 0xfe, 0x00, 0x80]));
    mkdirSync(join(folder, "folder.md"));
    const told = shopleaf(["problems", join(folder, "gone.md"), join(folder, "bytes.md")]);
    expect(told.code).toBe(1);
    const { problems } = JSON.parse(told.out) as { problems: { code: string; at: { file: string } }[] };
    expect(problems.map(({ code }) => code).sort()).toEqual(["not-text", "unreadable-file"]);
    expect(shopleaf(["work", join(folder, "folder.md")]).err).toContain("it is a folder");
  });
});

describe("work", () => {
  it("gives the standard variant unless another is named, each under its own slug", () => {
    const standard = JSON.parse(shopleaf(["work", corral]).out) as { variant: string };
    const other = JSON.parse(shopleaf(["work", corral, "--variant", "two-colour"]).out) as { variant: string };
    expect(JSON.stringify(standard.variant)).toContain("plain");
    expect(JSON.stringify(other.variant)).toContain("two-colour");
  });
});

import { expect, it } from "vitest";
import type { Problem } from "../../src/problems/problem.ts";
import { readImageSizes } from "../../src/yard/image-sizes.ts";

const read = (text: string) => {
  const problems: Problem[] = [];
  const sizes = readImageSizes({ text, at: { file: "shop.yaml", line: 3, column: 11 } }, problems);
  return { sizes, problems };
};

it("2000x2000 and 1200 x 630 are two sizes, the same one twice is one", () => {
  expect(read("2000x2000, 1200 x 630,2000x2000").sizes).toEqual([
    { width: 2000, height: 2000 },
    { width: 1200, height: 630 },
  ]);
});

it("what is no size, too small or too large is told where it stands", () => {
  const { sizes, problems } = read("800x800, big, 100x100, 5000x5000");
  expect(sizes).toEqual([{ width: 800, height: 800 }]);
  expect(problems.map(({ code, at }) => `${code} ${at.column}`)).toEqual([
    "yard-number 20",
    "yard-number 25",
    "yard-number 34",
  ]);
});

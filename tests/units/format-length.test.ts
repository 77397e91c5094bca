// Lengths as a reader sees them.
import { describe, expect, test } from "vitest";
import {
  asPrinted,
  formatBoth,
  formatLength,
  formatMarked,
  fullOrScant,
  isRounded,
} from "../../src/units/format-length.ts";
import { exact } from "../../src/units/length.ts";

const sixteenths = { unit: "in", per: 16 } as const;
const mm = { unit: "mm" } as const;

describe("to the nearest sixteenth", () => {
  test.each([
    ["281/16", "17 9/16"],
    ["563/32", "17 5/8"], // 17 19/32 is half way from 9/16 to 10/16: up, and 10/16 is 5/8
    ["8/16", "1/2"],
    ["575/32", "18"], // 17 31/32: up and carried
    ["1/64", "0"],
    ["1/32", "1/16"],
    ["-3/8", "-3/8"],
    ["-1/64", "0"],
  ])("%s in prints as %s", (length, text) => expect(formatLength(exact(length), sixteenths)).toBe(text));

  test("a double a hair under half a sixteenth goes up as its exact twin does", () => {
    expect(formatLength(1 / 32 - 1e-12, sixteenths)).toBe("1/16");
    expect(formatLength(11.9999, sixteenths)).toBe("12");
  });
});

describe("what is lost in the printing", () => {
  test.each([
    ["7/32", "1/4 scant"], // 3 1/2 sixteenths go up to 4: a thirty-second less than is printed
    ["5/24", "3/16 full"], // 3 1/3 sixteenths go down to 3
    ["1/4", "1/4"],
  ])("%s in at sixteenths is %s", (length, text) =>
    expect(`${formatLength(exact(length), sixteenths)}${fullOrScant(exact(length), sixteenths)}`).toBe(text),
  );

  test("7/32 in is 5.556 mm, 6 scant; a double within 1e-9 of a sixteenth is just that", () => {
    expect(fullOrScant(exact(7, 32), mm)).toBe(" scant");
    expect(fullOrScant(0.25 + 1e-12, sixteenths)).toBe("");
    expect(fullOrScant(0.26, sixteenths)).toBe(" full");
  });
});

test("whole millimetres: 17 9/16 in are 446.09 mm, so 446", () => {
  expect(formatLength(exact(281, 16), mm)).toBe("446");
  expect(formatMarked(exact(281, 16), mm)).toBe("446 mm");
});
test("inches take their mark", () => expect(formatMarked(exact(281, 16), sixteenths)).toBe('17 9/16"'));
test("for the buyer both are printed, each from the length itself", () => {
  expect(formatBoth(exact(281, 16), sixteenths)).toBe("17 9/16 in (446 mm)");
  expect(formatBoth(exact(281, 16), mm)).toBe("17 9/16 in (446 mm)");
});
test("1/3 in is rounded to 5/16 and says so; 5/16 is not", () => {
  expect(asPrinted(exact(1, 3), sixteenths).toFraction()).toBe("5/16");
  expect(isRounded(exact(1, 3), sixteenths)).toBe(true);
  expect(isRounded(exact(5, 16), sixteenths)).toBe(false);
  expect(isRounded(0.3125, sixteenths)).toBe(false);
});

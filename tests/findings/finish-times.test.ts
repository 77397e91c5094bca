import { expect, it } from "vitest";
import { type FinishTimes, finishTimes } from "../../src/findings/finish-times.ts";
import type { Variant } from "../../src/item/item.ts";
import { oil, white } from "../leaves/worked-goods.ts";

const bench = { from: 8 * 60, to: 18 * 60 };
/** A finish of 8 h between coats and 72 h to cure, on these members. */
const scheme = (...coats: Variant["finish"]): Variant => ({
  slug: "x",
  name: "x",
  standard: true,
  values: [],
  form: "",
  formName: "",
  unfinished: coats.length === 0,
  bare: [],
  finish: coats,
});
const on = (finish: typeof oil, coats: number, ...members: string[]) => ({
  finish,
  coats,
  members,
  area: 1,
  gallons: 1,
});
const said = ({ coats }: FinishTimes) =>
  coats.map(({ finish, coat, day, minute }) => `${finish} ${coat}: ${day}, ${minute / 60}`);

it("two coats 8 h apart: 8 and 16 of the first day; cured 72 h after the second, on day 4 at 16", () => {
  const times = finishTimes(scheme(on(oil, 2, "a")), bench);
  expect(said(times)).toEqual(["oil 1: 1, 8", "oil 2: 1, 16"]);
  expect(times.ready).toEqual({ day: 4, minute: 16 * 60 });
});

it("a third coat would fall on midnight, so it waits for 8 in the morning", () => {
  expect(said(finishTimes(scheme(on(oil, 3, "a")), bench))[2]).toBe("oil 3: 2, 8");
});

it("a coat that would start at 17.5, less than an hour before the bench is left, waits too: 9.5 + 8", () => {
  expect(said(finishTimes(scheme(on(oil, 2, "a")), { from: 9.5 * 60, to: 18 * 60 }))[1]).toBe("oil 2: 2, 9.5");
});

it("on other members a second finish goes on at the same time; over the first it waits till that is dry", () => {
  expect(said(finishTimes(scheme(on(oil, 1, "a"), on(white, 1, "b")), bench))).toEqual([
    "oil 1: 1, 8",
    "white 1: 1, 8",
  ]);
  expect(said(finishTimes(scheme(on(oil, 1, "a"), on(white, 1, "a")), bench))).toEqual([
    "oil 1: 1, 8",
    "white 1: 1, 16",
  ]);
});

it("bare wood has no times", () => {
  expect(finishTimes(scheme(), bench)).toEqual({ coats: [] });
});

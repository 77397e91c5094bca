// A field of a cutting problem's JSON -> its value, or what is wrong with it in plain words.
import { type Exact, exact } from "../units/length.ts";
import { parseMoney } from "../units/money.ts";

/** Takes down a fault. */
export type Told = (says: string) => undefined;
export type Fields = Readonly<Record<string, unknown>>;

export function readLength(from: Fields, key: string, name: string, least: 0 | 1, told: Told): Exact | undefined {
  const value = from[key];
  if (value === undefined) return told(`${name}: it has no ${key}`);
  if (typeof value !== "number" || !Number.isFinite(value))
    return told(`${name}: the ${key} should be a number, found ${say(value)}`);
  if (value < 0 || (value === 0 && least === 1)) return told(`${name}: the ${key} should be above 0, found ${value}`);
  if (value >= 1e9) return told(`${name}: the ${key} should be below 1000000000, found ${value}`);
  return exact(String(value));
}

export function readCost(from: Fields, name: string, told: Told): Exact | undefined {
  const { cost } = from;
  if (cost === undefined || cost === null || cost === "") return told(`${name}: it has no price`);
  const money = typeof cost === "string" || typeof cost === "number" ? parseMoney(String(cost)) : undefined;
  return money ?? told(`${name}: the price should be money such as "4.10", found ${say(cost)}`);
}

export function readText(from: Fields, key: string, name: string, told: Told): string | undefined {
  const value = from[key];
  if (typeof value === "string" && (value !== "" || key === "name")) return value;
  return told(
    value === undefined ? `${name}: it has no ${key}` : `${name}: the ${key} should be a text, found ${say(value)}`,
  );
}

export function readList(from: Fields, key: string, told: Told): readonly unknown[] {
  const value = from[key];
  if (Array.isArray(value) && value.length > 0) return value;
  told(
    Array.isArray(value) || value === undefined
      ? `there are no ${key}`
      : `the ${key} should be a list, found ${say(value)}`,
  );
  return [];
}

export function unknownKeys(from: Fields, known: readonly string[], name: string, told: Told): void {
  for (const key of Object.keys(from)) {
    if (!known.includes(key)) told(`${name}: "${key}" is not known here, only ${known.join(", ")}`);
  }
}

export const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);
export const isWhole = (value: unknown, least: number): boolean =>
  typeof value === "number" && Number.isInteger(value) && value >= least && value <= 1e6;
export const isDay = (value: unknown): boolean =>
  typeof value === "string" &&
  /^\d{4}-\d{2}-\d{2}$/.test(value) &&
  new Date(`${value}T00:00:00Z`).toJSON()?.startsWith(value);
export const say = (value: unknown): string => JSON.stringify(value) ?? "nothing";

/** True or false; false where it is left out. */
export function readFlag(from: Fields, key: string, name: string, told: Told): boolean {
  const value = from[key] ?? false;
  if (typeof value !== "boolean") told(`${name}: "${key}" should be true or false, found ${say(value)}`);
  return value === true;
}

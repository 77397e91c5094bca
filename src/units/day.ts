// A day of the calendar as it is written in ISO 8601: 2026-10-03.

/** Whether the text is a day that there is. */
export function isDay(text: string): boolean {
  const [, year = "", month = "", day = ""] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  const at = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return year !== "" && !Number.isNaN(at.getTime()) && at.toISOString().slice(0, 10) === text;
}

/** Whole days from one day to a later one; both are days that there are. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);

/** The day so many days later, or earlier where it is below 0. */
export const daysAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

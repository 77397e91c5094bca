// A colour -> whether lines in ink are lost on it.

/** Relative luminance (WCAG 2.2, "relative luminance"): ink itself is near 0.01, so its contrast is under 1.7 : 1 here. */
const leastLight = 0.05;

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);

/** `colour` as "#rrggbb". */
export function isDark(colour: string): boolean {
  const [red, green, blue] = [1, 3, 5].map((from) =>
    linear(Number.parseInt(colour.slice(from, from + 2), 16) / 255),
  ) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < leastLight;
}

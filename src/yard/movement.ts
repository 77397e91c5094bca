// A board's width and a change of moisture -> how much wider or narrower it becomes.

/**
 * Change of a width in inches, + swells, for a change of moisture from `from` to `to` (%), both from 6 to 14:
 * dD = DI C (MF - MI). Source: Wood Handbook (FPL-GTR-282) eq. 13-1, Table 13-5 for the coefficient.
 */
export const widthChange = (width: number, coefficient: number, from: number, to: number): number =>
  width * coefficient * (to - from);

/**
 * The same beyond 6 to 14 %, from the total shrinkage in % from green to oven-dry:
 * dD = DI (MF - MI) / (100 F / S - F + MI), F the moisture at which shrinking starts. Source: Wood Handbook eq. 13-3.
 */
export const widthChangeByShrinkage = (
  width: number,
  shrinkage: number,
  from: number,
  to: number,
  saturation: number,
): number => (width * (to - from)) / ((100 * saturation) / shrinkage - saturation + from);

/**
 * Fractional change per 1 % moisture, read at 10 %, from the total shrinkage in %: C = S / (100 F - (F - 10) S).
 * Derived from eq. 13-3; gives the rows of Wood Handbook Table 13-5.
 */
export const coefficientOfShrinkage = (shrinkage: number, saturation: number): number =>
  shrinkage / (100 * saturation - (saturation - 10) * shrinkage);

/**
 * How much a softwood board has shrunk from green, in % of its green size, at a moisture of 8 to 19 %; not for redwood
 * and cedars. Source: FPL-RP-489 (1989).
 */
export const lumberShrinkage = (side: "width" | "thickness", moisture: number): number =>
  side === "width" ? 6.031 - 0.215 * moisture : 5.062 - 0.181 * moisture;

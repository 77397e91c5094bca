// The air's temperature and humidity -> the moisture wood comes to in it.

/**
 * Equilibrium moisture in % of oven-dry weight at a temperature in degrees F and a relative humidity in % (0 to under 100).
 * The data behind it are approximate: print it to whole or tenth per cents at most. Source: Wood Handbook
 * (FPL-GTR-282) ch. 4, the equation fitted to its table of equilibrium moisture.
 */
export function equilibriumMoisture(fahrenheit: number, humidity: number): number {
  const t = fahrenheit;
  return sorption(
    humidity / 100,
    330 + 0.452 * t + 0.00415 * t * t,
    0.791 + 0.000463 * t - 0.000000844 * t * t,
    6.34 + 0.000775 * t - 0.0000935 * t * t,
    1.09 + 0.0284 * t - 0.0000904 * t * t,
  );
}

/** The same at a temperature in degrees C; its own fit, which differs by hundredths. */
export function equilibriumMoistureCelsius(celsius: number, humidity: number): number {
  const t = celsius;
  return sorption(
    humidity / 100,
    349 + 1.29 * t + 0.0135 * t * t,
    0.805 + 0.000736 * t - 0.00000273 * t * t,
    6.27 - 0.00938 * t - 0.000303 * t * t,
    1.91 + 0.0407 * t - 0.000293 * t * t,
  );
}

/** M = 1800/W [KH/(1-KH) + (K1 KH + 2 K1 K2 K^2 H^2)/(1 + K1 KH + K1 K2 K^2 H^2)]. */
function sorption(h: number, w: number, k: number, k1: number, k2: number): number {
  const kh = k * h;
  const first = k1 * kh;
  const second = k1 * k2 * kh * kh;
  return (1800 / w) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
}

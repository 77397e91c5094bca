// Areas in square inches and volumes in cubic inches -> what a reader sees.

const tenths = (value: number): string => String(Math.floor(value * 10 + 0.5 + 1e-9) / 10);
const hundredths = (value: number): string => String(Math.floor(value * 100 + 0.5 + 1e-9) / 100);

export const squareFeet = (squareInches: number): number => squareInches / 144;

/** `12.4 sq ft`; under 1 sq ft in whole square inches: `86 sq in`. */
export const formatArea = (squareInches: number): string =>
  squareInches < 143.5 ? `${Math.floor(squareInches + 0.5)} sq in` : `${tenths(squareFeet(squareInches))} sq ft`;

/** `1.15 m²`. */
export const formatAreaMetric = (squareInches: number): string => `${hundredths(squareInches * 0.0254 ** 2)} m²`;

/** `0.42 cu ft`; under 0.1 cu ft in whole cubic inches. */
export const formatVolume = (cubicInches: number): string =>
  cubicInches < 172.8 ? `${Math.floor(cubicInches + 0.5)} cu in` : `${hundredths(cubicInches / 1728)} cu ft`;

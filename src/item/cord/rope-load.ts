// A load and the way its rope runs -> the pull in the rope, and how far that is from breaking it.

/** What knots cost a rope of its strength at worst. Source: Cordage Institute CI 1401, read in reprints. */
export const knotLoss = 0.5;

/** Pounds that one leg of a cord at this slope (degrees above level) pulls when legs alike carry the load: W / (n sin a). Source: statics. */
export const legTension = (pounds: number, degrees: number, legs = 2): number =>
  pounds / (legs * Math.sin((degrees * Math.PI) / 180));

/** Pounds that break a rope once it is knotted. */
export const knottedStrength = (strength: number, loss: number = knotLoss): number => strength * (1 - loss);

/** Pounds a knotted rope may carry at this design factor. Source: the method of Cordage Institute CI 1401. */
export const workingLoad = (strength: number, loss: number, designFactor: number): number =>
  knottedStrength(strength, loss) / designFactor;

/** How many times the pull would have to grow to break the knotted rope. */
export const designFactorOf = (strength: number, loss: number, pull: number): number =>
  knottedStrength(strength, loss) / pull;

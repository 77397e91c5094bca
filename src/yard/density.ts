// A wood's gravity and moisture -> its weight; a metal's name -> its weight.

/**
 * Pounds per cubic inch of wood of this specific gravity at this moisture (%): 62.4 G (1 + M/100) lb/ft3, finish and
 * preservative not counted. Source: Wood Handbook (FPL-GTR-282) ch. 4.
 */
export const woodDensity = (specificGravity: number, moisture: number): number =>
  (62.4 * specificGravity * (1 + moisture / 100)) / 1728;

/** Pounds per cubic inch of what fasteners are made of, by a word of the material's name; metals from memory of handbooks. */
const materials: readonly (readonly [word: string, density: number])[] = [
  ["stainless", 0.289],
  ["steel", 0.2836],
  ["brass", 0.307],
  ["maple", woodDensity(0.63, 8)],
  ["oak", woodDensity(0.68, 8)],
];

/** Undefined where no known word stands in the material's name. */
export const findMaterialDensity = (material: string): number | undefined =>
  materials.find(([word]) => material.toLowerCase().includes(word))?.[1];

export const knownMaterials: readonly string[] = materials.map(([word]) => word);

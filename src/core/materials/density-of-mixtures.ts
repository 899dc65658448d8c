/** Density of nickel (UNS N02200), recalled; see the alloy's own figure. */
export const NICKEL_KG_PER_M3 = 8890;

/** Density of patented carbon steel, EN 10270-1. */
export const STEEL_KG_PER_M3 = 7850;

/**
 * Density of nickel-plated steel, kg/m3, from the share of nickel by mass (0 to 1): the volumes of coat and
 * core add, 1/rho = w/8890 + (1 - w)/7850. No source gives the share; it is a property of the spool.
 */
export const nickelPlatedDensityKgPerM3 = (nickelMassShare: number): number =>
  mixtureDensityKgPerM3(nickelMassShare, NICKEL_KG_PER_M3, STEEL_KG_PER_M3);

/** Density of two materials side by side, kg/m3, the first taking `massShare` of the mass: 1/rho = w/rho1 + (1 - w)/rho2. */
export const mixtureDensityKgPerM3 = (
  massShare: number,
  firstKgPerM3: number,
  secondKgPerM3: number,
): number => 1 / (massShare / firstKgPerM3 + (1 - massShare) / secondKgPerM3);

/** Why strings wound at one setting do not all measure the same. Standard deviations, m. */
export interface StringNoise {
  /** Of the mean diameter, from string to string. */
  readonly betweenM: number;
  /** From place to place along one string. */
  readonly withinM: number;
  /** Of the micrometer and the hand that holds it, from reading to reading. */
  readonly micrometerM: number;
  /** By how much the process wanders from one string to the next. */
  readonly wanderM: number;
}

/** Variance of a string's measured mean about the process, from so many places, m^2. */
export const meanReadingVariance = (noise: StringNoise, places: number): number =>
  noise.betweenM ** 2 + placeVariance(noise) / Math.max(1, places);

/** Variance of one reading about its own string, m^2. */
export const placeVariance = ({ withinM, micrometerM }: StringNoise): number =>
  withinM ** 2 + micrometerM ** 2;

/** The same noise, so many times as large from string to string. */
export const scaledNoise = (noise: StringNoise, by: number): StringNoise => ({
  ...noise,
  betweenM: noise.betweenM * by,
  wanderM: noise.wanderM * by,
});

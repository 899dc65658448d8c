import type { NoiseSpreads } from './calibration-prior.js';
import type { StringSlopes } from './string-slopes.js';
import type { Telling } from './told-by-string.js';

/** Variances of a telling about what seat and wires explain: what a run's strings share, and what each has of its own. */
export interface TellingVariance {
  readonly run: number;
  readonly string: number;
}

/** What a micrometer's readings leave in the mean of several, m; and how far its zero may be off from run to run. Our own. */
const READING_M = 0.5e-6;
const MICROMETER_M = 1e-6;

export function tellingVariance(
  kind: Telling,
  { byDiameter }: Pick<StringSlopes, 'byDiameter'>,
  noise: NoiseSpreads,
): TellingVariance {
  const perM = byDiameter[2]!;
  // A plain string is drawn, not wound: no setting of a winder moves it.
  const wound = byDiameter[0]!;
  const diameter = {
    run: wound * noise.runM ** 2 + MICROMETER_M ** 2,
    string: wound * noise.stringM ** 2 + READING_M ** 2,
  };
  const largest = noise.largestReadingM ** 2 + READING_M ** 2;
  const weight = { run: noise.runWeight ** 2, string: noise.stringWeight ** 2 };
  switch (kind) {
    case 'mean-diameter':
      return diameter;
    case 'largest-diameter':
      return { run: diameter.run, string: diameter.string + largest };
    case 'corners':
      return { run: 0, string: largest };
    case 'weight-beside-mean':
      return { run: weight.run, string: weight.string + (perM * READING_M) ** 2 };
    case 'weight-beside-largest':
      return { run: weight.run, string: weight.string + perM ** 2 * largest };
    case 'weight':
      return {
        run: weight.run + perM ** 2 * diameter.run,
        string: weight.string + perM ** 2 * diameter.string,
      };
    case 'axial-stiffness':
      return { run: 0, string: noise.axialStiffness ** 2 };
  }
}

import type { Estimate } from '../../../core/numeric/index.js';
import {
  formatDecimal,
  formatMillimetres,
  formatThou,
  formatUnitWeight,
  metresFromThou,
} from '../../../core/units/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';

/** Twice the standard uncertainty covers about 95 % (GUM, JCGM 100:2008, 6.3.3). */
const COVERAGE = 2;

/** What the micrometer should read, with its band, beside the gauge that the string is called by. */
export interface ExpectedBand {
  readonly name: string;
  readonly inThou: string;
  readonly inMillimetres: string;
  readonly lowM: number;
  readonly middleM: number;
  readonly highM: number;
}

/** The two readings of a string that a winder takes: mean over one turn, and the largest. */
export const expectedBands = (sheet: SetUpSheet): readonly ExpectedBand[] => [
  bandOf('Mean over one turn', sheet.meanDiameterM),
  bandOf('Largest reading', sheet.caliperDiameterM),
];

function bandOf(name: string, { value, u }: Estimate): ExpectedBand {
  const lowM = value - COVERAGE * u;
  const highM = value + COVERAGE * u;
  const digits = value < THIN_M ? 2 : 1;
  return {
    name,
    inThou: `${formatThou(value, digits)} ± ${formatThou(COVERAGE * u, digits)}`,
    inMillimetres: `${formatMillimetres(value)} mm, from ${formatMillimetres(lowM)} to ${formatMillimetres(highM)} mm`,
    lowM,
    middleM: value,
    highM,
  };
}

/** Unit weight with its band. */
export const expectedWeight = ({ unitWeightKgPerM: { value, u } }: SetUpSheet): string =>
  `${formatUnitWeight(value)} ± ${formatDecimal((COVERAGE * u * 100) / value, 1)} %`;

/** Where everything that is drawn lies: all bands and the gauge, with some air. */
export function bandRange(
  bands: readonly ExpectedBand[],
  gaugeThou: number,
): { lowM: number; highM: number } {
  const gaugeM = metresFromThou(gaugeThou);
  const lowM = Math.min(gaugeM, ...bands.map((band) => band.lowM));
  const highM = Math.max(gaugeM, ...bands.map((band) => band.highM));
  const airM = (highM - lowM) * 0.12;
  return { lowM: lowM - airM, highM: highM + airM };
}

/** Below this a tenth of a thou is too coarse to see the band. */
const THIN_M = 0.0007;

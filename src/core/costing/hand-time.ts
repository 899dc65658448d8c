import type { CostParts } from './costs.js';
import type { CostRates } from './rates.js';

/** What minutes of a hand cost: labour by the hour, and overhead as a share of it. Not rounded. */
export function handTimeCosts(
  minutes: number,
  rates: CostRates,
): Pick<CostParts, 'labourMinor' | 'overheadMinor'> {
  const labourMinor = (minutes / 60) * rates.labourMinorPerHour;
  return { labourMinor, overheadMinor: labourMinor * rates.overheadShare };
}

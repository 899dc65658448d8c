import { type Result, succeed } from '../../foundation/index.js';
import type { Interval } from '../intervals/interval.js';
import { rateInterval } from '../intervals/rate-interval.js';
import { shareInterval } from '../intervals/share-interval.js';
import type { StatsFault } from '../stats-fault.js';

export interface SeededCheck {
  /** Bad strings put among good ones without the checker's knowledge, and how many of them were found. */
  readonly seeded: number;
  readonly found: number;
  /** Bad strings of the shop's own that the same check caught. */
  readonly caught: number;
}

export interface SeededEstimate {
  readonly detection: number;
  readonly detectionInterval: Interval;
  /** Own bad strings that passed the check: caught (1 - d)/d. Infinite where no seeded one was found. */
  readonly escaped: number;
  readonly escapedInterval: Interval;
}

/**
 * What a check lets through, by how many planted bad strings it finds: no two checks need to be alike. Interval from
 * those of d (Clopper & Pearson) and of the mean caught (Garwood), each at half the risk, so that both hold together at
 * the confidence asked for or more (C. Bonferroni). Planted faults must be as hard to see as the shop's own.
 */
export function seededEstimate(
  { seeded, found, caught }: SeededCheck,
  confidence = 0.95,
): Result<SeededEstimate, StatsFault> {
  const detectionInterval = shareInterval({ bad: found, of: seeded }, confidence);
  if (!detectionInterval.ok) return detectionInterval;
  const halved = (1 + confidence) / 2;
  const share = shareInterval({ bad: found, of: seeded }, halved);
  if (!share.ok) return share;
  const mean = rateInterval({ count: caught, exposure: 1 }, halved);
  if (!mean.ok) return mean;
  const passed = (count: number, detection: number): number =>
    count === 0 || detection === 1 ? 0 : (count * (1 - detection)) / detection;
  const detection = found / seeded;
  return succeed({
    detection,
    detectionInterval: detectionInterval.value,
    escaped: passed(caught, detection),
    escapedInterval: {
      from: passed(mean.value.from, share.value.to),
      to: passed(mean.value.to, share.value.from),
    },
  });
}

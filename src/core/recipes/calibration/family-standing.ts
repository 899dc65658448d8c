import type { SeatFamily } from '../../string/index.js';
import type { Calibration } from './calibrate.js';
import { CALIBRATED_RULE } from './calibrated-rule.js';
import { ninetyPercentFactor } from './ninety-percent.js';
import type { Sample } from './sample.js';
import { seatQuestion, seatVariance } from './seat-question.js';

/** How well a family of strings is known. */
export interface FamilyStanding {
  readonly family: SeatFamily;
  readonly key: string;
  readonly strings: number;
  readonly runs: number;
  readonly byMachine: ReadonlyMap<string, number>;
  /** Half of the 90 % interval of mean diameter, of that of its recipes measured which is known least, m. */
  readonly widestM: number;
  readonly isCalibrated: boolean;
}

/** Families that strings were measured of, in the order of their keys. Calibrated: `CALIBRATED_RULE` for every recipe measured. */
export function familyStandings(calibration: Calibration, toleranceM: number): readonly FamilyStanding[] {
  const gathered = new Map<string, Gathered>();
  for (const sample of calibration.samples) {
    const { family, familyKey } = sample;
    if (!family) continue;
    const known = gathered.get(familyKey) ?? emptyFamily(family);
    gathered.set(familyKey, known);
    gather(known, sample);
  }
  const factor = ninetyPercentFactor(calibration.noiseDegrees);
  return calibration.posterior.layout.families.map((key) => {
    const { family, strings, runs, byMachine, slopes } = gathered.get(key)!;
    const question = seatQuestion(calibration, key, undefined);
    const widest = [...slopes.values()].map(
      (byUnknown) => seatVariance(calibration.posterior, question, byUnknown).variance,
    );
    const widestM = factor * Math.sqrt(Math.max(...widest));
    const { familyStrings, familyRuns, shareOfTolerance } = CALIBRATED_RULE;
    return {
      family,
      key,
      strings: strings.size,
      runs: runs.size,
      byMachine: new Map([...byMachine].map(([machineId, ids]) => [machineId, ids.size])),
      widestM,
      isCalibrated:
        strings.size >= familyStrings && runs.size >= familyRuns && widestM <= shareOfTolerance * toleranceM,
    };
  });
}

interface Gathered {
  readonly family: SeatFamily;
  readonly strings: Set<string>;
  readonly runs: Set<string>;
  readonly byMachine: Map<string, Set<string>>;
  /** How mean diameter goes with the unknowns, by recipe. */
  readonly slopes: Map<string, readonly number[]>;
}

const emptyFamily = (family: SeatFamily): Gathered => ({
  family,
  strings: new Set(),
  runs: new Set(),
  byMachine: new Map(),
  slopes: new Map(),
});

function gather(family: Gathered, sample: Sample): void {
  family.runs.add(sample.runId);
  family.slopes.set(sample.recipeId, sample.slopes.byUnknown[0]!);
  const ofMachine = family.byMachine.get(sample.machineId) ?? new Set();
  family.byMachine.set(sample.machineId, ofMachine);
  for (const { stringId } of sample.strings) {
    family.strings.add(stringId);
    ofMachine.add(stringId);
  }
}

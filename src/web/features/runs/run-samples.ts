import type { ReadingAnswer } from '../../../contract/index.js';

export type Measurement = ReadingAnswer<'measurements'>['items'][number];
export type TrialString = ReadingAnswer<'trial-strings'>['items'][number];

/** One string of a run as it was measured: a trial string, or one taken in the run. */
export interface RunSample {
  readonly key: string;
  readonly trial: TrialString | undefined;
  readonly at: string;
  /** Diameters, in the order of place and turn. */
  readonly readings: readonly Measurement[];
  readonly meanM: number;
  /** Largest less smallest. */
  readonly spreadM: number;
}

/** The measured strings of a run in the order in which they were measured. Readings that belong to no trial string are one string where they came together. */
export function runSamples(
  measurements: readonly Measurement[],
  trials: readonly TrialString[],
): readonly RunSample[] {
  const byString = new Map<string, Measurement[]>();
  for (const reading of measurements) {
    if (reading.quantity !== 'diameter') continue;
    const key = reading.trialStringId ?? reading.at;
    byString.set(key, [...(byString.get(key) ?? []), reading]);
  }
  const trialOf = new Map(trials.map((trial) => [trial.id, trial]));
  return [...byString]
    .map(([key, readings]): RunSample => {
      const values = readings.map(({ value }) => value);
      return {
        key,
        trial: trialOf.get(key),
        at: readings.map(({ at }) => at).toSorted()[0]!,
        readings: readings.toSorted(byPlaceAndTurn),
        meanM: values.reduce((sum, value) => sum + value, 0) / values.length,
        spreadM: Math.max(...values) - Math.min(...values),
      };
    })
    .toSorted((a, b) => (a.at < b.at ? -1 : 1));
}

const byPlaceAndTurn = (a: Measurement, b: Measurement): number =>
  (a.placeM ?? 0) - (b.placeM ?? 0) || (a.rotationDeg ?? 0) - (b.rotationDeg ?? 0);

export interface TallyLine {
  readonly outcome: 'good' | 'scrap';
  readonly reason: string;
  readonly winder: number;
  readonly coiler: number;
}

/** Tallies summed by outcome and reason: good first, then scrap, the commonest reason first. */
export function tallyLines(
  tallies: readonly Pick<
    ReadingAnswer<'tallies'>['items'][number],
    'outcome' | 'reason' | 'station' | 'count'
  >[],
): readonly TallyLine[] {
  const lines = new Map<string, TallyLine>();
  for (const { outcome, reason, station, count } of tallies) {
    const key = `${outcome} ${reason}`;
    const before = lines.get(key) ?? { outcome, reason, winder: 0, coiler: 0 };
    lines.set(key, { ...before, [station]: before[station] + count });
  }
  const all = ({ winder, coiler }: TallyLine) => winder + coiler;
  return [...lines.values()].toSorted(
    (a, b) => (a.outcome === b.outcome ? 0 : a.outcome === 'good' ? -1 : 1) || all(b) - all(a),
  );
}

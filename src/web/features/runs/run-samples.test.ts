import { describe, expect, it } from 'vitest';
import { type Measurement, runSamples, type TrialString, tallyLines } from './run-samples.js';

const reading = (value: number, more: Partial<Measurement>): Measurement => ({
  id: `${value}`,
  runId: 'run',
  trialStringId: null,
  quantity: 'diameter',
  value,
  placeM: null,
  rotationDeg: null,
  instrument: 'micrometer 1',
  at: '09:00',
  by: 'console',
  ...more,
});
const trial: TrialString = {
  id: 't1',
  runId: 'run',
  number: 1,
  position: 1,
  verdict: 'good',
  at: '09:00',
  by: 'console',
};

describe('what was measured in a run', () => {
  it('is told string by string in the order of time', () => {
    const samples = runSamples(
      [
        reading(0.0012, { at: '10:00' }),
        reading(0.0014, { at: '10:00' }),
        reading(0.001, { trialStringId: 't1' }),
      ],
      [trial],
    );
    expect(samples.map(({ trial: one }) => one?.number)).toEqual([1, undefined]);
    expect(samples[1]?.meanM).toBeCloseTo(0.0013, 12);
    expect(samples[1]?.spreadM).toBeCloseTo(0.0002, 12);
  });

  it('has the readings of a string by place along it and turn about it', () => {
    const [sample] = runSamples(
      [
        reading(3, { placeM: 0.5, rotationDeg: 90 }),
        reading(2, { placeM: 0.5, rotationDeg: 0 }),
        reading(1, { placeM: 0.2, rotationDeg: 90 }),
      ],
      [],
    );
    expect(sample?.readings.map(({ value }) => value)).toEqual([1, 2, 3]);
  });

  it('leaves masses and lengths out of the diameters', () => {
    expect(runSamples([reading(1, { quantity: 'mass' })], [])).toEqual([]);
  });
});

describe('the tallies of a run', () => {
  it('are summed by outcome and reason, the commonest scrap first', () => {
    const lines = tallyLines([
      { outcome: 'scrap', reason: 'kink', station: 'winder', count: 1 },
      { outcome: 'scrap', reason: 'gap', station: 'winder', count: 2 },
      { outcome: 'good', reason: '', station: 'winder', count: 10 },
      { outcome: 'scrap', reason: 'gap', station: 'coiler', count: 1 },
    ]);
    expect(lines).toEqual([
      { outcome: 'good', reason: '', winder: 10, coiler: 0 },
      { outcome: 'scrap', reason: 'gap', winder: 2, coiler: 1 },
      { outcome: 'scrap', reason: 'kink', winder: 1, coiler: 0 },
    ]);
  });
});

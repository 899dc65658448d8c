import { describe, expect, it } from 'vitest';
import { turned } from './knob-play.js';
import { SIMULATED_MACHINES, type SimulatedKind } from './machine-character.js';
import { simulatedMachine } from './simulated-machine.js';
import { type SimulatedRun, simulatedRun } from './simulated-run.js';

const KINDS = Object.keys(SIMULATED_MACHINES) as SimulatedKind[];

const runOf = (kind: SimulatedKind, seed = 1): SimulatedRun =>
  simulatedRun(simulatedMachine(SIMULATED_MACHINES[kind], seed), { familyOffsetM: 5e-6, seed: seed + 40 });

const meanOf = (figures: readonly number[]): number =>
  figures.reduce((sum, each) => sum + each, 0) / figures.length;

function strings(run: SimulatedRun, count: number): readonly number[] {
  return Array.from({ length: count }, () => {
    run.wind();
    return run.truth(0).stringErrorM;
  });
}

describe('a simulated machine', () => {
  it.each(KINDS)('%s does the same for the same seed, and something else for another', (kind) => {
    const once = strings(runOf(kind), 5);
    expect(strings(runOf(kind), 5)).toEqual(once);
    expect(strings(runOf(kind, 2), 5)).not.toEqual(once);
  });

  it.each(KINDS)('%s has as many positions as it says, and each can be brought to no error', (kind) => {
    const run = runOf(kind);
    expect(run.positions).toBe(SIMULATED_MACHINES[kind].positions);
    for (let position = 0; position < run.positions; position++) {
      for (let turn = 0; turn < 6; turn++) {
        const { bestSetting } = run.truth(position);
        run.set(position, bestSetting, bestSetting - 5);
      }
      expect(Math.abs(run.truth(position).processErrorM)).toBeLessThan(1e-6);
    }
  });

  it('winds strings that spread about the process, and tells the share of good ones rightly', () => {
    const run = runOf('new-servo');
    const { bestSetting } = run.truth(0);
    run.set(0, bestSetting + 2);
    const { processErrorM, goodShare } = run.truth(0);
    const wound = strings(run, 4000);
    const { toleranceM } = SIMULATED_MACHINES['new-servo'];
    expect(Math.abs(meanOf(wound) - processErrorM)).toBeLessThan(0.3e-6);
    const good = wound.filter((error) => Math.abs(error) <= toleranceM).length / wound.length;
    expect(Math.abs(good - goodShare(100))).toBeLessThan(0.02);
  });

  it('gives the same string back when it is measured again, but for the micrometer', () => {
    const run = runOf('new-servo');
    run.wind();
    const spread = Array.from({ length: 200 }, () => run.measure(0, 1)[0]!);
    const middle = meanOf(spread);
    const readingSpread = Math.sqrt(meanOf(spread.map((each) => (each - middle) ** 2)));
    expect(readingSpread / SIMULATED_MACHINES['new-servo'].micrometerM).toBeCloseTo(1, 0.7);
  });

  it('with a worn box drifts one way', () => {
    const run = runOf('worn-gearbox');
    const before = run.truth(0).processErrorM;
    strings(run, 100);
    expect(Math.abs(run.truth(0).processErrorM - before)).toBeCloseTo(100 * 0.03e-6, 12);
  });
});

describe('a knob with lost motion', () => {
  const knob = { dial: 10, stands: 9.6, play: 0.8, deadBand: 0 };

  it('loses its play when the direction changes, and follows after', () => {
    const back = turned(knob, 9.5);
    expect(back.stands).toBeCloseTo(9.6, 12);
    expect(turned(back, 9).stands).toBeCloseTo(9.4, 12);
  });

  it('stands on the same flank whenever it is reached from below', () => {
    const readied = turned(turned(knob, 15), 7);
    expect(turned(readied, 10).stands).toBeCloseTo(9.6, 12);
  });

  it('does not follow within its dead-band', () => {
    expect(turned({ ...knob, deadBand: 0.4 }, 10.3).stands).toBe(9.6);
    expect(turned({ ...knob, deadBand: 0.4 }, 10.5).stands).toBeCloseTo(10.1, 12);
  });
});

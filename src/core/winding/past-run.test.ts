import { describe, expect, it } from 'vitest';
import { type PastRun, recordedCoreTension, recordedSpindleRpm, recordedWrapTension } from './past-run.js';

const run = (wireDiameterM: number, tensionN: number, spindleRpm = 2000): PastRun => ({
  machineId: 'servo-1',
  core: { shape: 'hex', sizeM: 4e-4, tensionN: 60 },
  layers: [{ alloy: 'phosphor-bronze', wireDiameterM, tensionN, spindleRpm }],
});

const wish = { layer: { alloy: 'phosphor-bronze', wireDiameterM: 2.5e-4 }, index: 0 } as const;

describe('what the shop’s past runs say', () => {
  it('is nothing where there are none', () => {
    expect(recordedWrapTension([], 'servo-1', wish)).toBeUndefined();
  });

  it('is the figure itself where the wire is the same', () => {
    expect(recordedWrapTension([run(2.5e-4, 6)], 'servo-1', wish)).toEqual({ value: 6, runs: 1 });
  });

  it('carries a tension over to another size by equal stress', () => {
    const found = recordedWrapTension([run(2.4e-4, 6)], 'servo-1', wish);
    expect(found?.value).toBeCloseTo(6 * (2.5 / 2.4) ** 2, 9);
    expect(
      recordedCoreTension([run(2.4e-4, 6)], 'servo-1', { shape: 'hex', sizeM: 4.2e-4 })?.value,
    ).toBeCloseTo(60 * 1.05 ** 2, 9);
  });

  it('counts a run half whose wire is a tenth thicker', () => {
    const record = [run(2.5e-4, 6), run(2.75e-4, 12)];
    const carried = 12 / 1.1 ** 2;
    expect(recordedWrapTension(record, 'servo-1', wish)).toEqual({
      value: expect.closeTo((6 + 0.5 * carried) / 1.5, 9),
      runs: 2,
    });
  });

  it('leaves out other alloys, machines, layers, core shapes and wires far off', () => {
    const near = run(2.5e-4, 6);
    const brass = { ...near, layers: [{ ...near.layers[0]!, alloy: 'bronze-80-20' as const }] };
    expect(recordedWrapTension([brass, run(3.4e-4, 9)], 'servo-1', wish)).toBeUndefined();
    expect(recordedWrapTension([near], 'gear-2', wish)).toBeUndefined();
    expect(recordedWrapTension([near], 'servo-1', { ...wish, index: 1 })).toBeUndefined();
    expect(recordedCoreTension([near], 'servo-1', { shape: 'round', sizeM: 4e-4 })).toBeUndefined();
  });

  it('means spindle speeds as they are', () => {
    const record = [run(2.5e-4, 6, 2000), run(2.5e-4, 6, 2400)];
    expect(recordedSpindleRpm(record, 'servo-1', wish)).toEqual({ value: 2200, runs: 2 });
  });
});

import { describe, expect, it } from 'vitest';
import type { WhirlCheck } from '../../core/winding/index.js';
import { firstOffInWords, protocolInWords, whirlInWords } from './set-up-checks.js';

const whirl: WhirlCheck = {
  layer: 0,
  spindleRpm: 2850,
  freeSpanM: 0.55,
  dampersAtM: [],
  nearestAtM: 0.55,
  keepOutShare: 0.2,
  leastCoreTensionN: 29.7,
  damperBestAtM: 0.275,
  leastCoreTensionDampedN: 7.6,
  assumedTensionN: 178.3,
  assumed: 'strength-bound',
  bareRpm: 20_000,
  lowestRpm: 8730,
  marginShare: 0.67,
};

describe('checks of a set-up in words', () => {
  it('whirl says the least tension, with a damper and without', () => {
    const words = whirlInWords(whirl);
    expect(words).toContain('at 2850 rpm the core needs at least 29.7 N (6.68 lbf) to stay 20 % clear');
    expect(words).toContain('7.6 N (1.71 lbf) with a damper 275 mm from the head.');
    expect(words).toContain(
      '550 mm from the start of the wrap; at the upper limit of tension it begins at 8730 rpm.',
    );
  });

  it('names the dampers that stand there already', () => {
    const words = whirlInWords({ ...whirl, dampersAtM: [0.15, 0.4] });
    expect(words).toContain('29.7 N (6.68 lbf) with its dampers at 150 and 400 mm');
    expect(words).toContain('with one more 275 mm from the head');
  });

  it('where no tension is known no whirling speed is claimed', () => {
    expect(whirlInWords({ ...whirl, assumed: 'least-needed' })).not.toContain('8730');
  });

  it('the corners of a hexagon are no fault of the winding', () => {
    expect(firstOffInWords('hex-corners-and-flats')).toContain('not a fault');
  });

  it('say in one line why so many first strings, and when to stop', () => {
    const protocol = {
      stringsEach: 3,
      places: 2,
      stopBeyondM: 6.43e-6,
      badM: 10e-6,
      letGoChance: 0.035,
      goodM: 3.2e-6,
      stopChance: 0.05,
      isEnough: true,
    };
    const firstOff = {
      strings: 6,
      placesFromEndM: [0.05, 0.9],
      rotationsDeg: [0, 30],
      why: 'hex-corners-and-flats',
      kind: 'hex-core',
      toleranceM: 12.7e-6,
      spreads: { betweenM: 3.2e-6, withinM: 1.5e-6, micrometerM: 1e-6, isOwn: true },
      protocol,
    } as const;
    expect(protocolInWords(firstOff)).toBe(
      '3 strings of each position at 2 places: strings differ by 3.2 in this shop, places by 1.5, readings by 1.0; tolerance ±12.7 µm; lets 1 bad string in 4 go 4 % of the time, stops a centred process 5 %. Stop beyond 6.4 µm off in the mean.',
    );
    expect(protocolInWords({ ...firstOff, protocol: { ...protocol, isEnough: false } })).toContain(
      'even so many let',
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { WhirlCheck } from '../../core/winding/index.js';
import { firstOffInWords, whirlInWords } from './set-up-checks.js';

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
});

import { describe, expect, it } from 'vitest';
import type { WhirlCheck } from '../../core/winding/index.js';
import { firstOffInWords, whirlInWords } from './set-up-checks.js';

const whirl: WhirlCheck = {
  layer: 0,
  spindleRpm: 2850,
  freeSpanM: 0.55,
  nearestAtM: 0.55,
  keepOutShare: 0.2,
  leastCoreTensionN: 29.7,
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
    expect(words).toContain('7.6 N (1.71 lbf) with a damper');
    expect(words).toContain(
      '550 mm from the start of the wrap; at the upper limit of tension it begins at 8730 rpm.',
    );
  });

  it('where no tension is known no whirling speed is claimed', () => {
    expect(whirlInWords({ ...whirl, assumed: 'least-needed' })).not.toContain('8730');
  });

  it('the corners of a hexagon are no fault of the winding', () => {
    expect(firstOffInWords('hex-corners-and-flats')).toContain('not a fault');
  });
});

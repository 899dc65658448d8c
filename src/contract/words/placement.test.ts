import { describe, expect, it } from 'vitest';
import { placementInWords } from './placement.js';

describe('why a run stands where it does', () => {
  it.each([
    [{ kind: 'frozen' }, 'Under way already; it stays where it is.'],
    [{ kind: 'due-first', dueMinute: -5 }, 'The orders that wait for it are due now.'],
    [{ kind: 'due-first', dueMinute: 450 }, 'Of what can start here it is due first.'],
    [
      { kind: 'same-set-up', keeps: ['core', 'alloy', 'length'] },
      'It keeps the core, alloy and length of the run before, so less is changed.',
    ],
    [{ kind: 'same-set-up', keeps: [] }, 'It needs the smallest change from the run before.'],
    [{ kind: 'released', releaseMinute: 60 }, 'It waits for its wire, ready 1 h of work into the plan.'],
    [{ kind: 'only-machine' }, 'No other machine can make it.'],
    [
      { kind: 'weighed', aheadOf: 'L-7' },
      'Set-up, work and due date weighed together put it before L-7, which is due earlier.',
    ],
    [{ kind: 'fills-bin' }, 'It only tops up a bin; no order waits for it.'],
  ] as const)('%o', (reason, sentence) => {
    expect(placementInWords(reason)).toBe(sentence);
  });
});

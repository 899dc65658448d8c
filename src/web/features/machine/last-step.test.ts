import { describe, expect, it } from 'vitest';
import { lastStep } from './last-step.js';
import type { Trial } from './run-count.js';
import type { RunReading } from './use-run-book.js';

const trial = (id: string, rank: string, verdict: Trial['verdict'] = 'open') =>
  ({ id, rank, verdict }) as Trial & { readonly rank: string };
const reading = (id: string, rank: string, trialStringId: string | null) =>
  ({ id, rank, trialStringId }) as RunReading;

describe('the last step of the first strings', () => {
  it('is taken back one after the other, down to the first string', () => {
    const [one, two] = [trial('1', '0 08:00', 'good'), trial('2', '1 000007')];
    const [a, b, c] = [
      reading('a', '0 08:01', '1'),
      reading('b', '0 08:02', '1'),
      reading('c', '1 000008', '2'),
    ];
    expect(lastStep([one, two], [a, b, c])).toEqual({ kind: 'reading', reading: c });
    expect(lastStep([one, two], [a, b])).toEqual({ kind: 'string', trial: two });
    expect(lastStep([one], [a, b])).toEqual({ kind: 'verdict', trial: one });
    const open = { ...one, verdict: 'open' as const };
    expect(lastStep([open], [a, b])).toEqual({ kind: 'reading', reading: b });
    expect(lastStep([open], [])).toEqual({ kind: 'string', trial: open });
    expect(lastStep([], [])).toBeUndefined();
  });

  it('is a check between strings too, though it belongs to none', () => {
    const check = reading('a', '0 09:00', null);
    expect(lastStep([trial('1', '0 08:00', 'good')], [check])).toEqual({ kind: 'reading', reading: check });
  });
});

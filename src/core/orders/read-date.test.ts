import { describe, expect, it } from 'vitest';
import { readDate } from './read-date.js';

describe('a due date in a cell', () => {
  it('reads the order of ISO 8601', () => {
    expect(readDate(' 2026-12-04 ')).toEqual({ ok: true, value: '2026-12-04' });
  });

  it('reads day and month by numbers where only one order makes a day', () => {
    expect(readDate('30/11/2026')).toEqual({ ok: true, value: '2026-11-30' });
    expect(readDate('11.30.2026')).toEqual({ ok: true, value: '2026-11-30' });
    expect(readDate('7-7-2026')).toEqual({ ok: true, value: '2026-07-07' });
  });

  it('says both days where both orders make one', () => {
    expect(readDate('03/04/2026')).toEqual({
      ok: false,
      fault: { code: 'ambiguous', readings: ['2026-04-03', '2026-03-04'] },
    });
  });

  it('refuses days that do not exist and words', () => {
    for (const text of ['2026-02-30', '31/31/2026', 'soon', '', '1/2/26', '1/2.2026'])
      expect(readDate(text)).toEqual({ ok: false, fault: { code: 'unreadable' } });
  });
});

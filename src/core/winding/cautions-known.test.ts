import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '../foundation/index.js';
import type { Caution } from './cautions.js';
import { AWAY_DAYS, CAUTIONS_EDITION, cautionsToRead } from './cautions-known.js';

const on = (date: string) => date as CalendarDate;
const BRONZE: readonly Caution[] = ['rotating-spindle', 'wire-whip', 'local-rules'];
const NICKEL: readonly Caution[] = [...BRONZE, 'nickel-skin'];
const read = (cautions: readonly Caution[], date: string, edition = CAUTIONS_EDITION) => ({
  cautions,
  edition,
  on: on(date),
});

describe('the cautions that a winder has yet to read', () => {
  it('are all at first use, and none once they are acknowledged', () => {
    expect(cautionsToRead(BRONZE, { acknowledged: [] }, on('2031-03-03'))).toEqual(BRONZE);
    const known = { acknowledged: [read(BRONZE, '2031-03-03')] };
    expect(cautionsToRead(BRONZE, known, on('2031-03-04'))).toEqual([]);
  });

  it('are all of them for one who worked there before anybody was asked', () => {
    const known = { acknowledged: [], lastStart: on('2031-03-02') };
    expect(cautionsToRead(BRONZE, known, on('2031-03-03'))).toEqual(BRONZE);
  });

  it('are the new ones alone where another kind of run brings more', () => {
    const known = { acknowledged: [read(BRONZE, '2031-03-03')] };
    expect(cautionsToRead(NICKEL, known, on('2031-03-04'))).toEqual(['nickel-skin']);
    const both = { acknowledged: [...known.acknowledged, read(NICKEL, '2031-03-04')] };
    expect(cautionsToRead(NICKEL, both, on('2031-03-05'))).toEqual([]);
    expect(cautionsToRead(BRONZE, both, on('2031-03-05'))).toEqual([]);
  });

  it('are all after more than a year away, but not for one who was there meanwhile', () => {
    const acknowledged = [read(BRONZE, '2031-03-03')];
    expect(AWAY_DAYS).toBe(365);
    expect(cautionsToRead(BRONZE, { acknowledged }, on('2032-03-02'))).toEqual([]);
    expect(cautionsToRead(BRONZE, { acknowledged }, on('2032-03-03'))).toEqual(BRONZE);
    const known = { acknowledged, lastStart: on('2033-03-01') };
    expect(cautionsToRead(BRONZE, known, on('2034-03-01'))).toEqual([]);
    expect(cautionsToRead(BRONZE, known, on('2034-03-03'))).toEqual(BRONZE);
  });

  it('are all where their words were others when they were read', () => {
    const known = { acknowledged: [read(BRONZE, '2031-03-03', CAUTIONS_EDITION - 1)] };
    expect(cautionsToRead(BRONZE, known, on('2031-03-04'))).toEqual(BRONZE);
  });
});

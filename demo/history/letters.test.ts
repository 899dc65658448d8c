import { describe, expect, it } from 'vitest';
import { type CalendarDate, seededChance } from '../../src/core/foundation/index.js';
import { PLANTED_CAUSES } from './causes.js';
import { DAMP_SPELL, dryRoomClimate } from './dry-room.js';
import { letterOfCause, type StringSent } from './letters.js';

const SOUND: StringSent = {
  isFaulty: false,
  wireLots: ['another lot'],
  wornM: 0,
  measuredLarge: false,
  made: '2026-10-01' as CalendarDate,
};
const AUTUMN = '2026-11-02' as CalendarDate;
const STRINGS = 4000;

/** Of so many strings alike that went out on a day, how many players write, and of what. */
function letters(string: StringSent, sent: CalendarDate) {
  const chance = seededChance(3);
  const all = Array.from({ length: STRINGS }, () =>
    letterOfCause(string, { sent, badLot: PLANTED_CAUSES.badLot, chance }),
  ).flatMap((letter) => letter ?? []);
  return { share: all.length / STRINGS, faults: new Set(all.map(({ faultCode }) => faultCode)) };
}

describe('players of the invented year', () => {
  it('write nothing of a string that no cause has touched', () => {
    expect(letters(SOUND, AUTUMN).share).toBe(0);
  });

  it('write the more of a worn machine the more it is worn', () => {
    const little = letters({ ...SOUND, wornM: 2e-6 }, AUTUMN);
    const much = letters({ ...SOUND, wornM: 12e-6 }, AUTUMN);
    expect(much.share).toBeGreaterThan(3 * little.share);
    expect(much.faults).toContain('wrap-loose');
  });

  it('write of a bad lot of wire that it warbles, and of strings made thin that they are slack', () => {
    const bad = letters({ ...SOUND, wireLots: [PLANTED_CAUSES.badLot.lot] }, AUTUMN);
    expect([...bad.faults].sort()).toEqual(['dull', 'out-of-tune']);
    expect([...letters({ ...SOUND, measuredLarge: true }, AUTUMN).faults]).toEqual(['feels-off']);
  });

  it('write of stains only after the dryer stood still, and only of what lay there then', () => {
    const lying = { ...SOUND, made: '2026-07-10' as CalendarDate };
    const after = '2026-07-20' as CalendarDate;
    expect([...letters(lying, after).faults]).toEqual(['corroded']);
    expect(letters(lying, '2026-07-13' as CalendarDate).share).toBe(0);
    expect(letters(lying, AUTUMN).share).toBe(0);
    expect(letters({ ...SOUND, made: '2026-07-18' as CalendarDate }, after).share).toBe(0);
  });
});

it('the air of those days is damp enough for steel to rust, and not before', () => {
  const chance = seededChance(5);
  expect(dryRoomClimate(DAMP_SPELL.from, true, chance).relativeHumidity).toBeGreaterThan(0.58);
  expect(dryRoomClimate('2026-07-10' as CalendarDate, true, chance).relativeHumidity).toBeLessThan(0.55);
});

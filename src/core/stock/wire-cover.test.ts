import { describe, expect, it } from 'vitest';
import { DRY_ROOM_PRACTICE, isDryEnough } from './dry-room.js';
import { coverDays } from './wire-cover.js';

describe('cover of a wire', () => {
  it('is what lies there over what goes in a day', () => {
    // 0.5 kg a day over four weeks, 6 kg on the spools: twelve days.
    expect(coverDays({ onHandKg: 6, usedKg: 14, overDays: 28 })).toBeCloseTo(12, 12);
  });

  it('never ends where nothing is used, and is none where nothing lies there', () => {
    expect(coverDays({ onHandKg: 6, usedKg: 0, overDays: 28 })).toBe(Number.POSITIVE_INFINITY);
    expect(coverDays({ onHandKg: -0.1, usedKg: 1, overDays: 28 })).toBe(0);
  });
});

describe('a dry room', () => {
  const within = { temperatureC: 20, relativeHumidity: 0.4 };

  it('is within its limits up to their edges', () => {
    expect(isDryEnough(within, DRY_ROOM_PRACTICE)).toBe(true);
    expect(isDryEnough({ ...within, relativeHumidity: 0.5 }, DRY_ROOM_PRACTICE)).toBe(true);
    expect(isDryEnough({ ...within, relativeHumidity: 0.501 }, DRY_ROOM_PRACTICE)).toBe(false);
    expect(isDryEnough({ ...within, temperatureC: 14.9 }, DRY_ROOM_PRACTICE)).toBe(false);
    expect(isDryEnough({ ...within, temperatureC: 27.1 }, DRY_ROOM_PRACTICE)).toBe(false);
  });
});

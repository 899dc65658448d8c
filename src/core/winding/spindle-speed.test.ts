import { describe, expect, it } from 'vitest';
import { spindleSpeed } from './spindle-speed.js';

const LIMITS = {
  machineRpm: { least: 500, most: 3000 },
  wireSpeedLimitMPerS: 10,
  wirePerTurnM: 0.002,
  stepRpm: 10,
};

describe('the speed of a spindle', () => {
  it('is the machine’s fastest where nothing else holds it down', () => {
    expect(spindleSpeed(LIMITS)).toEqual({ ok: true, value: { rpm: 3000, limitedBy: 'machine' } });
  });

  it('lets the wire run no faster than its guide bears', () => {
    // 0.0777 m/s over 2 mm a turn is 38.85 turns a second, 2331 a minute: 2330 in steps of ten.
    const speed = spindleSpeed({ ...LIMITS, wireSpeedLimitMPerS: 0.0777 });
    expect(speed).toEqual({ ok: true, value: { rpm: 2330, limitedBy: 'wire-speed' } });
  });

  it('stays below whirl, and below what the shop ran before', () => {
    expect(spindleSpeed({ ...LIMITS, whirlRpm: 2199 })).toMatchObject({
      value: { rpm: 2190, limitedBy: 'whirl' },
    });
    expect(spindleSpeed({ ...LIMITS, whirlRpm: 2199, recordRpm: 1800 })).toMatchObject({
      value: { rpm: 1800, limitedBy: 'record' },
    });
  });

  it('never goes below the machine’s slowest by rounding or by an old record', () => {
    expect(spindleSpeed({ ...LIMITS, machineRpm: { least: 505, most: 3000 }, whirlRpm: 508 })).toMatchObject({
      value: { rpm: 505 },
    });
    expect(spindleSpeed({ ...LIMITS, recordRpm: 300 })).toMatchObject({ value: { rpm: 500 } });
  });

  it('is a fault where even the slowest is too fast', () => {
    expect(spindleSpeed({ ...LIMITS, whirlRpm: 400 })).toEqual({
      ok: false,
      fault: { code: 'winding.spindle-too-fast', slowestRpm: 500, limitedBy: 'whirl', limitRpm: 400 },
    });
    expect(spindleSpeed({ ...LIMITS, wireSpeedLimitMPerS: 0.01 })).toMatchObject({
      fault: { limitedBy: 'wire-speed', limitRpm: expect.closeTo(300, 9) },
    });
  });
});

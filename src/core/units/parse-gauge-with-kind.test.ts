import { describe, expect, it } from 'vitest';
import { parseGaugeWithKind } from './parse-gauge-with-kind.js';

describe('a gauge with plain or wound beside it', () => {
  it.each([
    ['10p', 10, 'plain'],
    ['26w', 26, 'wound'],
    ['26 W', 26, 'wound'],
    ['26 wound', 26, 'wound'],
    ['wound 26', 26, 'wound'],
    ['17 plain', 17, 'plain'],
    ['17 unwound', 17, 'plain'],
    ['.026" wound', 26, 'wound'],
    ['13½p', 13.5, 'plain'],
    ['0.254 mm p', 10, 'plain'],
  ])('%j is a %d that is %s', (text, gaugeThou, kind) => {
    expect(parseGaugeWithKind(text)).toEqual({ ok: true, value: { gaugeThou, kind } });
  });

  it('without a word the kind is left open', () => {
    expect(parseGaugeWithKind('17')).toEqual({ ok: true, value: { gaugeThou: 17 } });
  });

  it('what is offered for an ambiguous gauge keeps the kind that was asked for', () => {
    const wanted = parseGaugeWithKind('.10w');
    expect(wanted).toMatchObject({ ok: false, fault: { code: 'unit.ambiguous', text: '.10w' } });
    if (wanted.ok) return;
    expect(wanted.fault.readings.map(({ write }) => write)).toEqual([
      '0.100 in wound',
      '10 wound',
      '0.10 mm wound',
    ]);
    expect(parseGaugeWithKind('0.100 in wound')).toEqual({
      ok: true,
      value: { gaugeThou: 100, kind: 'wound' },
    });
  });

  it.each(['p', '17 kp', '17 pp', 'p17', 'wound', '17 flat', 'plain 17 wound'])('%j is refused', (text) => {
    expect(parseGaugeWithKind(text)).toMatchObject({ ok: false, fault: { code: 'unit.unreadable' } });
  });
});

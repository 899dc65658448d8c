import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatGauge } from './format.js';
import { GAUGE_RANGE_THOU, parseGauge } from './parse-gauge.js';

const thouOf = (text: string): number | string => {
  const gauge = parseGauge(text);
  return gauge.ok ? gauge.value : gauge.fault.code;
};

const writesOf = (text: string): string[] => {
  const gauge = parseGauge(text);
  return gauge.ok ? [] : gauge.fault.readings.filter(({ plausible }) => plausible).map(({ write }) => write);
};

describe('a gauge as makers write it', () => {
  it.each([
    ['10', 10],
    [' 10 ', 10],
    ['\u00a010', 10],
    ['010', 10],
    ['.010', 10],
    ['0.010', 10],
    ['0,010', 10],
    ['0.010"', 10],
    ['0.010″', 10],
    ['.010”', 10],
    [".010''", 10],
    ['.010 in', 10],
    ['.010 in.', 10],
    ['.010 INCH', 10],
    ['10 thou', 10],
    ['10 mil', 10],
    ['.10 in', 100],
    ['.0095', 9.5],
    ['.0135', 13.5],
    ['10.5', 10.5],
    ['13,5', 13.5],
    ['13½', 13.5],
    ['13 ½', 13.5],
    ['13 1/2', 13.5],
    ['13-1/2', 13.5],
    ['13 1⁄2', 13.5],
    ['9¼', 9.25],
    ['046', 46],
    ['0046', 46],
    ['0.130', 130],
    ['5', 5],
    ['200', 200],
  ])('%j is %d thou', (text, thou) => {
    expect(thouOf(text)).toBe(thou);
  });

  it.each([
    ['0.254 mm', 10],
    ['0,254 mm', 10],
    ['0.254mm', 10],
    ['254 µm', 10],
    ['0.0254 cm', 10],
    ['0.25 mm', 10],
    ['0.33 mm', 13],
    ['0.34 mm', 13.5],
    ['0.46 mm', 18],
    ['1.17 mm', 46],
    ['0.343 mm', 13.5],
  ])('%j gives the half thou that rounds to it', (text, thou) => {
    expect(thouOf(text)).toBe(thou);
  });

  it.each([
    ['0.3 mm', 11.811024],
    ['0.45 mm', 17.716535],
    ['0.250 mm', 9.84252],
  ])('%j rounds from no half thou, or too coarsely to tell, and stays what it is', (text, thou) => {
    expect(thouOf(text)).toBe(thou);
  });
});

describe('a gauge that can be read in two ways', () => {
  it('0.46 is 460 thou as inches, 46 with a slipped point, or 0.46 mm; the fault says so', () => {
    const gauge = parseGauge(' 0.46');
    expect(gauge).toEqual({
      ok: false,
      fault: {
        code: 'unit.ambiguous',
        text: '0.46',
        expected: 'gauge',
        readings: [
          { value: 460, unit: 'thou', write: '0.460 in', plausible: false },
          { value: 46, unit: 'thou', write: '46', plausible: true },
          { value: 18, unit: 'thou', write: '0.46 mm', plausible: true },
        ],
      },
    });
  });

  it.each([
    ['.10', ['0.100 in', '10']],
    ['.1', ['0.100 in', '10']],
    ['0,09', ['0.090 in', '9']],
    ['0.254', ['0.254 mm']],
    ['1.17', ['1.17 mm']],
    ['0105', ['105', '10.5']],
    ['0130', ['130', '13']],
  ])('%j is refused and %j offered', (text, writes) => {
    expect(thouOf(text)).toBe('unit.ambiguous');
    expect(writesOf(text)).toEqual(writes);
  });

  it('every text offered reads as the value beside it', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^0{0,2}[1-9]?\d{0,2}[.,]?\d{0,4}$/), (text) => {
        const gauge = parseGauge(text);
        if (gauge.ok) return;
        for (const { value, write, plausible } of gauge.fault.readings) {
          if (plausible) expect(parseGauge(write)).toEqual({ ok: true, value });
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('a text that is no gauge', () => {
  it.each([
    '',
    ' ',
    'ten',
    '1e1',
    '1e-2',
    '1E1',
    '+10',
    '10.',
    '.',
    '10 13',
    '10-13',
    '10,13,17',
    '½',
    '10 3/2',
    '10 1/0',
  ])('%j cannot be read', (text) => {
    expect(thouOf(text)).toBe('unit.unreadable');
  });

  it.each(['NaN', 'Infinity', '#10', 'No. 10', '0x10', '10 constructor', '9'.repeat(5000)])(
    '%.20j cannot be read',
    (text) => {
      expect(thouOf(text)).toBe('unit.unreadable');
    },
  );

  it.each(['0', '4', '201', '-10', '−10', '-.010', '10 in', '0.46 in', '10 mm', '0.001', '9'.repeat(50)])(
    '%j lies outside what a string can be',
    (text) => {
      expect(thouOf(text)).toBe('unit.out-of-range');
    },
  );

  it('26 kg is no gauge, and the fault names the unit', () => {
    const gauge = parseGauge('26 kg');
    expect(gauge).toEqual({
      ok: false,
      fault: { code: 'unit.unreadable', text: '26 kg', expected: 'gauge', readings: [], wrongUnit: 'kg' },
    });
  });
});

describe('whatever the text', () => {
  it('a gauge that is read lies in the range', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,-/ ½"incm'), maxLength: 9 }), (text) => {
        const gauge = parseGauge(text);
        if (!gauge.ok) return;
        expect(gauge.value).toBeGreaterThanOrEqual(GAUGE_RANGE_THOU.least);
        expect(gauge.value).toBeLessThanOrEqual(GAUGE_RANGE_THOU.most);
      }),
      { numRuns: 1000 },
    );
  });

  it('every half thou reads back from how it is shown, and from its inches', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 400 }), (halfThous) => {
        const thou = halfThous / 2;
        expect(thouOf(formatGauge(thou))).toBe(thou);
        expect(thouOf((thou / 1000).toFixed(4))).toBe(thou);
        expect(thouOf(`${(thou * 0.0254).toFixed(3)} mm`)).toBe(thou);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Result } from '../../src/core/foundation/index.js';
import {
  ALLOYS,
  diameterToleranceM,
  metresPerKilogram,
  nickelPlatedDensityKgPerM3,
  STRENGTH_TABLES,
  type StrengthReading,
  type StrengthTableId,
  spoolContents,
  type TensileStrength,
  tensileStrength,
  weighedUnitWeightKgPerM,
  wireUnitWeightKgPerM,
  wrapStrength,
} from '../../src/core/materials/index.js';
import { estimate } from '../../src/core/numeric/index.js';
import {
  A228_ROWS,
  A228_THICK_ROWS,
  EN_DH_ROWS,
  EN_SM_ROWS,
  JIS_A_ROWS,
  JIS_B_ROWS,
} from './wire-strength-rows.js';

/** Exact by definition of pound-force and inch (NIST SP 811): written out here so as not to borrow the program's. */
const INCH_M = 0.0254;
const POUND_FORCE_N = 4.4482216152605;
const KSI_PA = (1000 * POUND_FORCE_N) / INCH_M ** 2;

const TABLES = Object.keys(STRENGTH_TABLES) as StrengthTableId[];
const READINGS: readonly StrengthReading[] = ['conservative', 'linear'];

describe('music wire by ASTM A228', () => {
  it.each(A228_ROWS)('of %f in has %i to %i ksi (ASTM A228 table)', (inches, leastKsi, mostKsi) => {
    const strength = a228(inches);
    expect(strength.rule).toBe('row');
    expect(strength.minimumPa / KSI_PA).toBeCloseTo(leastKsi, 9);
    expect(strength.maximumPa / KSI_PA).toBeCloseTo(mostKsi, 9);
  });

  it.each(A228_THICK_ROWS)('of %f in has %i to %i ksi (ASTM A228 table)', (inches, leastKsi, mostKsi) => {
    expect(a228(inches).minimumPa / KSI_PA).toBeCloseTo(leastKsi, 9);
    expect(a228(inches).maximumPa / KSI_PA).toBeCloseTo(mostKsi, 9);
  });

  it('agrees with MPa and breaking loads worked out by hand from the table (ASTM A228; last digit printed)', () => {
    for (const [inches, , , leastMPa, mostMPa, breakN] of A228_ROWS) {
      const { minimumPa, maximumPa } = a228(inches);
      expect(Math.abs(minimumPa / 1e6 - leastMPa), `${inches} in`).toBeLessThanOrEqual(0.5);
      expect(Math.abs(maximumPa / 1e6 - mostMPa), `${inches} in`).toBeLessThanOrEqual(0.5);
      expect(Math.abs(minimumPa * roundAreaM2(inches) - breakN), `${inches} in`).toBeLessThanOrEqual(0.05);
    }
  });

  it('knows no sizes but those of the table (ASTM A228: 58 rows)', () => {
    expect(STRENGTH_TABLES['astm-a228'].rows).toHaveLength(A228_ROWS.length + A228_THICK_ROWS.length);
  });

  it.each([
    [0.017, 359, 396.5],
    [0.0105, 384.5, 425],
    [0.046, 308, 341],
    [0.0135, 371, 410],
  ])(
    'between rows, %f in lies on the line at %f to %f ksi (worked by hand from ASTM A228)',
    (inches, least, most) => {
      const strength = a228(inches, 'linear');
      expect(strength.rule).toBe('linear');
      expect(strength.standing).toBe('derived');
      expect(strength.minimumPa / KSI_PA).toBeCloseTo(least, 6);
      expect(strength.maximumPa / KSI_PA).toBeCloseTo(most, 6);
    },
  );

  it('rounds what lies between rows down to 0.1 ksi, never up (worked by hand from ASTM A228)', () => {
    expect(a228(0.0173, 'linear').minimumPa / KSI_PA).toBeCloseTo(358.1, 6);
    expect(a228(0.0121, 'linear').minimumPa / KSI_PA).toBeCloseTo(376.6, 6);
    // 345 - 4 * 0.37 / 2 = 344.26
    expect(a228(0.02237, 'linear').minimumPa / KSI_PA).toBeCloseTo(344.2, 6);
  });

  it('breaks at 362.5 N or 81.5 lbf at least at 0.017 in, 33.29 lbf at 0.0105 in (worked by hand from ASTM A228)', () => {
    const breakN = a228(0.017, 'linear').minimumPa * roundAreaM2(0.017);
    expect(Math.abs(breakN - 362.5)).toBeLessThanOrEqual(0.2);
    expect(Math.abs(breakN / POUND_FORCE_N - 81.5)).toBeLessThanOrEqual(0.05);
    const thinN = a228(0.0105, 'linear').minimumPa * roundAreaM2(0.0105);
    expect(Math.abs(thinN / POUND_FORCE_N - 33.29)).toBeLessThanOrEqual(0.005);
  });

  it('has a maximum of 355 ksi at 0.036 in, not the misprint of 255, and says that it was inferred', () => {
    const strength = a228(0.036);
    expect(strength.maximumPa / KSI_PA).toBeCloseTo(355, 9);
    expect(strength.standing).toBe('derived');
    expect(a228(0.038).standing).toBe('printed');
  });

  it('has a maximum 10 to 11 % above the minimum in every row to 0.121 in, and above it in all (ASTM A228)', () => {
    for (const { diameterM, minimumPa, maximumPa } of STRENGTH_TABLES['astm-a228'].rows) {
      expect(maximumPa).toBeGreaterThan(minimumPa);
      if (diameterM <= 0.1215 * INCH_M) {
        expect(maximumPa / minimumPa).toBeGreaterThanOrEqual(1.1);
        expect(maximumPa / minimumPa).toBeLessThanOrEqual(1.11);
      }
    }
  });

  it('read conservatively takes the next larger size: 369 ksi for 0.0135 in (rule of JIS G 3522)', () => {
    const strength = a228(0.0135);
    expect(strength.rule).toBe('next-larger-row');
    expect(strength.minimumPa / KSI_PA).toBeCloseTo(369, 9);
    expect(strength.rowDiameterM / INCH_M).toBeCloseTo(0.014, 9);
  });

  it('has minima from 230 to 399 ksi between 0.250 and 0.008 in (three pages of spring data quote that range)', () => {
    expect(a228(0.25).minimumPa / KSI_PA).toBeCloseTo(230, 9);
    expect(a228(0.008).minimumPa / KSI_PA).toBeCloseTo(399, 9);
  });

  it('spans the nominal 330 to 480 ksi of a table of spring materials (0.032 to 0.002 in)', () => {
    expect(a228(0.032).minimumPa / KSI_PA).toBeLessThan(330);
    expect(a228(0.032).maximumPa / KSI_PA).toBeGreaterThan(330);
    expect(a228(0.004).maximumPa / KSI_PA).toBeGreaterThan(480);
  });

  it.each([
    [0.01, 176],
    [0.012, 171],
    [0.014, 167],
    [0.016, 164],
    [0.018, 161],
    [0.02, 159],
    [0.024, 155],
    [0.026, 153],
    [0.028, 151],
  ])(
    'of %f in is within 1.1 %% of a design table: torsion %i ksi at 45 %% of strength',
    (inches, torsionKsi) => {
      const deviation = torsionKsi / 0.45 / (a228(inches).minimumPa / KSI_PA) - 1;
      expect(deviation).toBeGreaterThan(0);
      expect(deviation).toBeLessThanOrEqual(0.011);
    },
  );

  it('lies within 3.6 % of 201/d^0.145 ksi up to 0.1 in, 6.8 % off at 0.25 in (Budynas and Nisbett, table 10-4)', () => {
    const off = (inches: number): number =>
      (201 / inches ** 0.145 / (a228(inches).minimumPa / KSI_PA) - 1) * 100;
    const upToTenth = [...A228_ROWS, ...A228_THICK_ROWS].map(([inches]) => inches).filter((d) => d <= 0.1);
    expect(Math.max(...upToTenth.map((inches) => Math.abs(off(inches))))).toBeLessThanOrEqual(3.65);
    expect(off(0.25)).toBeCloseTo(6.8, 1);
  });

  it.each([
    [0.004, 0.0002],
    [0.01, 0.0002],
    [0.0101, 0.0003],
    [0.028, 0.0003],
    [0.0281, 0.0004],
    [0.063, 0.0004],
    [0.08, 0.0005],
    [0.25, 0.001],
  ])('of %f in may be off by %f in (ASTM A228 permissible variation)', (inches, plusMinus) => {
    const tolerance = value(diameterToleranceM({ table: 'astm-a228', diameterM: inches * INCH_M }));
    expect(tolerance / INCH_M).toBeCloseTo(plusMinus, 9);
  });
});

describe('spring wire by EN 10270-1 and piano wire by JIS G 3522', () => {
  it.each([
    ['en-10270-1-dh', EN_DH_ROWS],
    ['en-10270-1-sh', EN_DH_ROWS.filter(([millimetres]) => millimetres >= 0.3)],
    ['en-10270-1-sm', EN_SM_ROWS],
    ['jis-g-3522-a', JIS_A_ROWS],
    ['jis-g-3522-b', JIS_B_ROWS],
  ] as const)('has the rows of %s as printed', (table, rows) => {
    for (const [millimetres, leastMPa, mostMPa] of rows) {
      const strength = metric(table, millimetres);
      expect(strength.rule, `${millimetres} mm`).toBe('row');
      expect(strength.minimumPa / 1e6, `${millimetres} mm`).toBeCloseTo(leastMPa, 9);
      expect(strength.maximumPa / 1e6, `${millimetres} mm`).toBeCloseTo(mostMPa, 9);
    }
  });

  it.each([
    ['jis-g-3522-b', 0.42, 2550, 2790],
    ['en-10270-1-dh', 0.23, 2720, 3010],
  ] as const)(
    '%s of %f mm takes the row above: %i to %i MPa, asked to interpolate or not',
    (table, mm, least, most) => {
      for (const reading of READINGS) {
        const strength = metric(table, mm, reading);
        expect(strength.minimumPa / 1e6).toBeCloseTo(least, 9);
        expect(strength.maximumPa / 1e6).toBeCloseTo(most, 9);
        expect(strength.rule).toBe('next-larger-row');
        expect(strength.linearRefused).toBe(reading === 'linear');
      }
    },
  );

  it('follows 2220 - 820 log d (DH) and 1980 - 740 log d (SM) within -14 to +5 MPa (EN 10270-1, coefficients recalled)', () => {
    const off = [
      ...EN_DH_ROWS.map(([mm]) => 2220 - 820 * Math.log10(mm) - metric('en-10270-1-dh', mm).minimumPa / 1e6),
      ...EN_SM_ROWS.map(([mm]) => 1980 - 740 * Math.log10(mm) - metric('en-10270-1-sm', mm).minimumPa / 1e6),
    ];
    expect(Math.min(...off)).toBeGreaterThanOrEqual(-14.5);
    expect(Math.max(...off)).toBeLessThanOrEqual(5.5);
  });

  it('asks 2668, 2680 and 2750 MPa of 0.254 mm by A228, EN DH and JIS B: three standards, three answers', () => {
    expect(a228(0.01).minimumPa / 1e6).toBeCloseTo(2668, 0);
    expect(metric('en-10270-1-dh', 0.254).minimumPa / 1e6).toBeCloseTo(2680, 9);
    expect(metric('jis-g-3522-b', 0.254).minimumPa / 1e6).toBeCloseTo(2750, 9);
  });

  it.each([
    [0.5, 0.008],
    [0.55, 0.01],
    [1, 0.01],
    [1.2, 0.015],
    [2, 0.015],
  ])('of %f mm may be off by %f mm (JIS G 3522 tolerance)', (millimetres, plusMinus) => {
    const tolerance = value(diameterToleranceM({ table: 'jis-g-3522-b', diameterM: millimetres / 1000 }));
    expect(tolerance * 1000).toBeCloseTo(plusMinus, 12);
  });
});

describe('laws of every strength table', () => {
  const sizesOf = (table: StrengthTableId): { leastM: number; mostM: number } => {
    const { rows } = STRENGTH_TABLES[table];
    return { leastM: rows[0]?.diameterM ?? 0, mostM: rows.at(-1)?.diameterM ?? 0 };
  };
  const question = fc.record({
    table: fc.constantFrom(...TABLES),
    reading: fc.constantFrom(...READINGS),
    first: fc.double({ min: 0, max: 1, noNaN: true }),
    second: fc.double({ min: 0, max: 1, noNaN: true }),
  });

  it('thicker wire is never stronger', () => {
    fc.assert(
      fc.property(question, ({ table, reading, first, second }) => {
        const { leastM, mostM } = sizesOf(table);
        const at = (share: number): TensileStrength =>
          value(tensileStrength({ table, diameterM: leastM + share * (mostM - leastM), reading }));
        const [thin, thick] = [at(Math.min(first, second)), at(Math.max(first, second))];
        expect(thick.minimumPa).toBeLessThanOrEqual(thin.minimumPa * (1 + 1e-12));
        expect(thick.maximumPa).toBeLessThanOrEqual(thin.maximumPa * (1 + 1e-12));
      }),
    );
  });

  it('the conservative reading never promises more than the line', () => {
    fc.assert(
      fc.property(question, ({ table, first }) => {
        const { leastM, mostM } = sizesOf(table);
        const diameterM = leastM + first * (mostM - leastM);
        const careful = value(tensileStrength({ table, diameterM, reading: 'conservative' }));
        const onTheLine = value(tensileStrength({ table, diameterM, reading: 'linear' }));
        expect(careful.minimumPa).toBeLessThanOrEqual(onTheLine.minimumPa * (1 + 1e-12));
      }),
    );
  });

  it('outside its rows a table says nothing but where it begins and ends', () => {
    fc.assert(
      fc.property(question, fc.boolean(), ({ table, reading, first }, below) => {
        const { leastM, mostM } = sizesOf(table);
        const diameterM = below ? (leastM - 1.3e-6) * first : mostM + 1.3e-6 + first;
        expect(tensileStrength({ table, diameterM, reading })).toEqual({
          ok: false,
          fault: { code: 'strength.outside-table', table, diameterM, leastM, mostM },
        });
      }),
    );
  });
});

describe('the weight of wire', () => {
  it.each([
    ['music-wire', 0.01, 0.397765, 2514.04],
    ['phosphor-bronze', 0.01, 0.448942, 2227.46],
    ['pure-nickel', 0.008, 0.2883, 3468.65],
  ] as const)(
    '%s of %f in weighs %f g/m, %f m/kg (pi/4 d^2 rho, worked by hand)',
    (id, inches, gPerM, mPerKg) => {
      const unitWeight = wireUnitWeightKgPerM({
        shape: 'round',
        sizeM: inches * INCH_M,
        densityKgPerM3: ALLOYS[id].densityKgPerM3.value,
      });
      expect(Math.abs((unitWeight * 1000) / gPerM - 1)).toBeLessThan(1e-4);
      expect(Math.abs(metresPerKilogram(unitWeight) / mPerKg - 1)).toBeLessThan(1e-4);
    },
  );

  it('of 0.010 in phosphor bronze is 25.140e-6 lb/in (worked by hand)', () => {
    const unitWeight = wireUnitWeightKgPerM({ shape: 'round', sizeM: 0.01 * INCH_M, densityKgPerM3: 8860 });
    expect(((unitWeight * INCH_M) / 0.45359237) * 1e6).toBeCloseTo(25.14, 2);
  });

  it('of a hexagon 0.016 in across flats: 2.217025e-4 in2, 0.143034 mm2, 1.122814 g/m in steel (geometry)', () => {
    const unitWeight = wireUnitWeightKgPerM({ shape: 'hex', sizeM: 0.016 * INCH_M, densityKgPerM3: 7850 });
    expect(Math.abs((unitWeight * 1000) / 1.122814 - 1)).toBeLessThan(1e-5);
    expect(Math.abs(unitWeight / 7850 / INCH_M ** 2 / 2.217025e-4 - 1)).toBeLessThan(1e-5);
    expect(Math.abs(((unitWeight / 7850) * 1e6) / 0.143034 - 1)).toBeLessThan(1e-5);
  });

  it('of a hexagon is 1.102658 times that of a round as wide, of every size and metal (geometry)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 5e-3, noNaN: true }),
        fc.integer({ min: 1000, max: 11_000 }),
        (sizeM, rho) => {
          const hex = wireUnitWeightKgPerM({ shape: 'hex', sizeM, densityKgPerM3: rho });
          const round = wireUnitWeightKgPerM({ shape: 'round', sizeM, densityKgPerM3: rho });
          expect(hex / round).toBeCloseTo(1.102658, 6);
          expect(metresPerKilogram(round) * round).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it.each([
    [0, 7.85],
    [0.02, 7.868],
    [0.05, 7.896],
    [0.08, 7.9242],
    [0.1, 7.943],
  ])('steel plated with %f nickel by mass has %f g/cm3 (volumes add; 8.89 and 7.85)', (share, gPerCm3) => {
    const digits = gPerCm3 === 7.9242 ? 1e-4 : 5.1e-4;
    expect(Math.abs(nickelPlatedDensityKgPerM3(share) / 1000 - gPerCm3)).toBeLessThan(digits);
  });

  it('a coat of 2 um on 0.30 mm steel is 2.65 % of the area, 2.99 % of the mass, 7.878 g/cm3 (geometry)', () => {
    const areaShare = 1 - (1 - (2 * 0.002) / 0.3) ** 2;
    const massShare = (areaShare * 8890) / (areaShare * 8890 + (1 - areaShare) * 7850);
    expect(areaShare).toBeCloseTo(0.0265, 4);
    expect(massShare).toBeCloseTo(0.0299, 4);
    expect(nickelPlatedDensityKgPerM3(massShare)).toBeCloseTo(7850 + (8890 - 7850) * areaShare, 9);
    expect(nickelPlatedDensityKgPerM3(massShare) / 1000).toBeCloseTo(7.878, 3);
  });

  it('a spool of 2340 g with a tare of 390 g holds 1950 g, 4343.5 m of 0.010 in phosphor bronze (worked by hand)', () => {
    const unitWeightKgPerM = wireUnitWeightKgPerM({
      shape: 'round',
      sizeM: 0.01 * INCH_M,
      densityKgPerM3: 8860,
    });
    const { netKg, lengthM } = value(spoolContents({ grossKg: 2.34, tareKg: 0.39, unitWeightKgPerM }));
    expect(netKg).toBeCloseTo(1.95, 12);
    expect(Math.abs(lengthM - 4343.5)).toBeLessThanOrEqual(0.5);
  });

  it('of a weighed metre of 0.010 in steel is known to 0.107 %: mass 0.103, length 0.029 (JCGM 100, 5.1.6)', () => {
    const massKg = estimate(397.8e-6, (Math.SQRT2 * 1e-6) / Math.sqrt(12));
    const lengthM = estimate(1, 0.0005 / Math.sqrt(3));
    expect(Math.abs((massKg.u / massKg.value) * 100 - 0.1026)).toBeLessThan(0.0005);
    const weighed = weighedUnitWeightKgPerM({ massKg, lengthM });
    expect(weighed.value).toBeCloseTo(397.8e-6, 12);
    expect(Math.abs((weighed.u / weighed.value) * 100 - 0.107)).toBeLessThan(0.001);
  });
});

describe('wrap wire under pull', () => {
  const areaM2 = roundAreaM2(0.01);

  it('breaks at 15.0 N annealed and 50.7 N in spring temper, phosphor bronze of 0.254 mm (ASTM B159: 43 and 145 ksi)', () => {
    const wire = { alloy: 'phosphor-bronze', diameterM: 0.254e-3 } as const;
    const softest = value(wrapStrength(wire));
    expect(softest.temper).toBe('annealed');
    expect(softest.minimumPa * areaM2).toBeCloseTo(15.0, 1);
    expect(value(wrapStrength({ ...wire, temper: 'spring' })).minimumPa * areaM2).toBeCloseTo(50.7, 1);
  });

  it.each([
    [0.025, 145],
    [0.0251, 135],
    [0.0625, 135],
    [0.125, 130],
    [0.25, 125],
  ])('of phosphor bronze in spring temper, %f in, bears %i ksi (ASTM B159)', (inches, ksi) => {
    const wire = { alloy: 'phosphor-bronze', diameterM: inches * INCH_M, temper: 'spring' } as const;
    expect(value(wrapStrength(wire)).minimumPa / KSI_PA).toBeCloseTo(ksi, 9);
  });

  it('of 80/20 weighs 2.3 % less than phosphor bronze, which a tolerance on diameter would hide (data of ASTM B36, B103)', () => {
    const ratio =
      ALLOYS['bronze-80-20'].densityKgPerM3.value / ALLOYS['phosphor-bronze'].densityKgPerM3.value;
    expect((1 - ratio) * 100).toBeCloseTo(2.3, 1);
  });
});

function a228(inches: number, reading: StrengthReading = 'conservative'): TensileStrength {
  return value(tensileStrength({ table: 'astm-a228', diameterM: inches * INCH_M, reading }));
}

function metric(
  table: StrengthTableId,
  mm: number,
  reading: StrengthReading = 'conservative',
): TensileStrength {
  return value(tensileStrength({ table, diameterM: mm / 1000, reading }));
}

function roundAreaM2(inches: number): number {
  return (Math.PI / 4) * (inches * INCH_M) ** 2;
}

function value<T>(result: Result<T, unknown>): T {
  if (!result.ok) throw new Error(`Expected a value: ${JSON.stringify(result.fault)}`);
  return result.value;
}

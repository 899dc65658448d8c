import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeOverCosts } from './change-over-costs.js';
import { settle, type UnsettledCosts, unsettledTotal } from './costs.js';
import type { CostRates } from './rates.js';
import { standardSetCost } from './set-costs.js';
import { type CostedString, type Prices, standardCost, stringCosts } from './string-costs.js';

const RATES: CostRates = {
  currency: 'EUR',
  minorDigits: 2,
  labourMinorPerHour: 2400,
  overheadShare: 0.5,
  endMinorEach: { ball: 3, loop: 4 },
  packMinorPerSet: 25,
  packMinutesPerSet: 1.5,
  runScrapShare: 0.02,
};

const PRICES: Prices = {
  wires: [
    { id: 'steel', priceMinorPerKg: 2000 },
    { id: 'bronze', priceMinorPerKg: 4000 },
  ],
  rates: RATES,
};

const STRING: CostedString = {
  wire: [
    { wireId: 'steel', alloy: 'music-wire', metres: 1.1, kg: 0.0012 },
    { wireId: 'bronze', alloy: 'phosphor-bronze', metres: 8, kg: 0.0036 },
  ],
  cycleSeconds: 90,
  positions: 2,
  end: 'ball',
};

const unsettledOf = (string: CostedString): UnsettledCosts => {
  const costs = stringCosts(string, PRICES);
  if (!costs.ok) throw new Error(costs.fault.wireId);
  return costs.value;
};

describe('the standard cost of a string, worked by hand', () => {
  // Wire 1.2 g x 20.00/kg + 3.6 g x 40.00/kg = 2.4 + 14.4 = 16.8. End 3. Hand 45 s of 24.00/h = 30, overhead 15.
  // Together 64.8; scrap 2 % of it 1.296; in all 66.096.
  it('is wire by weight, end, hand and overhead, and scrap on all of them', () => {
    const one = unsettledOf(STRING);
    expect(one).toMatchObject({
      wireMinor: expect.closeTo(16.8, 9),
      endsMinor: 3,
      packMinor: 0,
      labourMinor: expect.closeTo(30, 9),
      overheadMinor: expect.closeTo(15, 9),
      scrapMinor: expect.closeTo(1.296, 9),
    });
    expect(one.byWire).toEqual([
      { wireId: 'steel', minor: expect.closeTo(2.4, 9) },
      { wireId: 'bronze', minor: expect.closeTo(14.4, 9) },
    ]);
    expect(unsettledTotal(one)).toBeCloseTo(66.096, 9);
  });

  it('is 66 cents for one and 66.10 euros for a hundred: rounded once, not a hundred times', () => {
    const [one, hundred] = [standardCost(STRING, PRICES), standardCost(STRING, PRICES, 100)];
    if (!one.ok || !hundred.ok) throw new Error('prices are known');
    expect(one.value).toMatchObject({ totalMinor: 66, wireMinor: 17, endsMinor: 3, labourMinor: 30 });
    expect(hundred.value.totalMinor).toBe(6610);
    expect(hundred.value.byWire.map(({ minor }) => minor)).toEqual([240, 1440]);
  });

  it('halves the hand where two strings run at once', () => {
    const alone = unsettledOf({ ...STRING, positions: 1 });
    expect(alone.labourMinor).toBeCloseTo(2 * unsettledOf(STRING).labourMinor, 9);
  });

  it('names the wire that has no price', () => {
    const unpriced = { ...STRING, wire: [{ ...STRING.wire[0]!, wireId: 'silver' }] };
    const fault = { code: 'costing.no-price', wireId: 'silver' };
    expect(stringCosts(unpriced, PRICES)).toEqual({ ok: false, fault });
    expect(standardCost(unpriced, PRICES)).toEqual({ ok: false, fault });
  });
});

describe('the standard cost of a set, worked by hand', () => {
  // Six strings 396.576; pack 25; 1.5 min of hand 60 and overhead 30: 511.576.
  const strings = Array.from({ length: 6 }, () => unsettledOf(STRING));

  it('is its strings, its pack and the hand that packs it', () => {
    const set = standardSetCost(strings, RATES);
    expect(set.totalMinor).toBe(512);
    expect(set.packMinor).toBe(25);
    expect(set.labourMinor + set.overheadMinor).toBe(360);
    expect(set.packingMinor).toBe(115);
    expect(set.byStringMinor).toEqual([67, 66, 66, 66, 66, 66]);
  });

  it('sums to the same total by part and by string, whatever the prices', () => {
    const prices = fc.integer({ min: 0, max: 20000 });
    fc.assert(
      fc.property(
        fc.array(prices, { minLength: 0, maxLength: 12 }),
        fc.integer({ min: 1, max: 500 }),
        (perKg, quantity) => {
          const costs = perKg.map((priceMinorPerKg) => {
            const wires = [{ id: 'steel', priceMinorPerKg }, PRICES.wires[1]!];
            const one = stringCosts(STRING, { wires, rates: RATES });
            if (!one.ok) throw new Error(one.fault.wireId);
            return one.value;
          });
          const set = standardSetCost(costs, RATES, quantity);
          const byPart =
            set.wireMinor +
            set.endsMinor +
            set.packMinor +
            set.labourMinor +
            set.overheadMinor +
            set.scrapMinor;
          const byString = set.byStringMinor.reduce((sum, minor) => sum + minor, set.packingMinor);
          expect([byPart, byString]).toEqual([set.totalMinor, set.totalMinor]);
        },
      ),
    );
  });
});

describe('the cost of changing over, worked by hand', () => {
  // 18 min of 24.00/h = 720, overhead 360; 3 strings at 64.8 (their share of the run's scrap left out) = 194.4.
  it('is the hand’s time with overhead and the strings lost', () => {
    const costs = changeOverCosts({ minutes: 18, scrapStrings: 3 }, unsettledOf(STRING), RATES);
    expect(costs).toMatchObject({
      wireMinor: 0,
      labourMinor: expect.closeTo(720, 9),
      overheadMinor: expect.closeTo(360, 9),
      scrapMinor: expect.closeTo(194.4, 9),
    });
    expect(settle(costs).totalMinor).toBe(1274);
  });

  it('is nothing where nothing is changed', () => {
    const costs = changeOverCosts({ minutes: 0, scrapStrings: 0 }, unsettledOf(STRING), RATES);
    expect(settle(costs).totalMinor).toBe(0);
  });
});

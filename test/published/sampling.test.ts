import { describe, expect, it } from 'vitest';
import { seededChance } from '../../src/core/foundation/index.js';
import {
  acceptance,
  type CodeLetter,
  cheapestPlan,
  codeLetter,
  findPlan,
  type InspectionLevel,
  lookedAt,
  nextInspection,
  normalCell,
  outgoing,
  type QualityLevel,
  sequentialAnswer,
  sequentialCourse,
  sequentialPlan,
  standardPlan,
  tightenedCell,
  worstOutgoing,
} from '../../src/core/stats/index.js';
import { given, qualityRows, relativeError } from './data/quality-rows.js';

const near = (found: number, expected: number, tolerance: number): void =>
  expect(Math.abs(found - expected)).toBeLessThan(tolerance);

describe('52 of a lot of 10,000, accepted up to 3 bad (NIST/SEMATECH e-Handbook 6.2.3.2; R 4.2.2)', () => {
  const plan = { size: 52, acceptUpTo: 3 };

  it.each(qualityRows('nist-oc-n52-c3.csv'))('at $p: accepted $Pa', (row) => {
    const p = Number(row.p);
    near(acceptance(plan, p, 'process'), Number(row.Pa), 1e-6);
    // Some of the page's figures are cut, not rounded.
    near(acceptance(plan, p, 'process'), Number(row.Pa_printed), 1.1e-3);
    near(outgoing(plan, p, 10_000), Number(row.AOQ), 1e-6);
    expect(relativeError(lookedAt(plan, p, 10_000), Number(row.ATI))).toBeLessThan(1e-6);
  });

  it('the worst that passes is 0.0371901, at 0.055906 coming in', () => {
    const worst = worstOutgoing(plan, 10_000);
    near(worst.outgoing, 0.0371901, 1e-6);
    // The peak is flat: R's search for it is good to five digits there.
    near(worst.incoming, 0.055906, 1e-5);
  });
});

describe('the worst that passes', () => {
  it.each([
    [1, 0],
    [3, 2],
    [20, 0],
    [80, 7],
    [1250, 21],
  ])('of %d with %d allowed is worse than what passes at any other share', (size, acceptUpTo) => {
    const worst = worstOutgoing({ size, acceptUpTo });
    for (let share = 0.0005; share < 1; share += 0.0005)
      expect(outgoing({ size, acceptUpTo }, share)).toBeLessThanOrEqual(worst.outgoing * (1 + 1e-12));
  });
});

describe('a gross is a lot, not a process', () => {
  it('19 bad of 144 pass 20 looked at and none allowed 4.72 times in 100, 18 still more than 5', () => {
    const plan = { size: 20, acceptUpTo: 0 };
    near(acceptance(plan, 19 / 144, { lot: 144 }), 0.0472, 5e-5);
    expect(acceptance(plan, 18 / 144, { lot: 144 })).toBeGreaterThan(0.05);
  });

  it('faults by the string: P(0) = exp(-n u), whatever the lot', () => {
    near(acceptance({ size: 20, acceptUpTo: 0 }, 0.05, 'faults'), Math.exp(-1), 1e-12);
  });
});

describe('finding a plan', () => {
  it('lot of 100, 0.01 refused at 0.05, 0.08 accepted at 0.05: 31 and none (R. Kenett & S. Zacks, findPlan)', () => {
    const found = findPlan({
      good: { share: 0.01, refusedAtMost: 0.05 },
      poor: { share: 0.08, acceptedAtMost: 0.05 },
      from: { lot: 100 },
    });
    // Theirs accepts the good lot 0.69 of the time: it meets the poor point alone. Ours meets both.
    const plan = given(found);
    expect(acceptance({ size: 31, acceptUpTo: 0 }, 0.08, { lot: 100 })).toBeLessThan(0.05);
    expect(acceptance({ size: 30, acceptUpTo: 0 }, 0.08, { lot: 100 })).toBeGreaterThan(0.05);
    expect(acceptance(plan, 0.01, { lot: 100 })).toBeGreaterThanOrEqual(0.95);
  });

  it.each([
    [0.01, 0.06, 'process'],
    [0.005, 0.05, 'process'],
    [0.02, 0.08, { lot: 500 }],
    [0.01, 0.06, 'faults'],
  ] as const)('no smaller plan than the one found is as good: %d, %d', (good, poor, from) => {
    const plan = given(
      findPlan({
        good: { share: good, refusedAtMost: 0.05 },
        poor: { share: poor, acceptedAtMost: 0.1 },
        from,
      }),
    );
    const meets = (size: number, acceptUpTo: number): boolean =>
      acceptance({ size, acceptUpTo }, good, from) >= 0.95 &&
      acceptance({ size, acceptUpTo }, poor, from) <= 0.1;
    expect(meets(plan.size, plan.acceptUpTo)).toBe(true);
    for (let size = 1; size < plan.size; size++)
      for (let acceptUpTo = 0; acceptUpTo < size && acceptUpTo < 12; acceptUpTo++)
        expect(meets(size, acceptUpTo)).toBe(false);
  });

  it('is a fault where no sample is large enough, or good is not better than poor', () => {
    const asked = {
      good: { share: 0.01, refusedAtMost: 0.05 },
      poor: { share: 0.012, acceptedAtMost: 0.05 },
    };
    expect(findPlan({ ...asked, from: 'process', largestSize: 500 })).toMatchObject({
      fault: { code: 'stats.no-plan', largestSize: 500 },
    });
    expect(
      findPlan({ good: { share: 0.1, refusedAtMost: 0.05 }, poor: asked.poor, from: 'process' }),
    ).toMatchObject({
      fault: { code: 'stats.limits-unusable' },
    });
  });
});

describe('the tables of the standard (MIL-STD-105E, 1989; the same in ANSI/ASQ Z1.4 and ISO 2859-1)', () => {
  const LEVELS: readonly InspectionLevel[] = ['S1', 'S2', 'S3', 'S4', 'I', 'II', 'III'];

  it.each(qualityRows('z14-code-letters.csv'))('letters for lots from $lot_min to $lot_max', (row) => {
    const most = row.lot_max === 'inf' ? 1e9 : Number(row.lot_max);
    for (const level of LEVELS) {
      expect(codeLetter(Number(row.lot_min), level)).toBe(row[level]);
      expect(codeLetter(most, level)).toBe(row[level]);
    }
  });

  it.each(qualityRows('z14-single-normal.csv'))('normal, $letter at $aql: $Ac', (row) => {
    const cell = normalCell(row.letter as CodeLetter, Number(row.aql) as QualityLevel);
    expect(String(cell)).toBe(row.Ac);
  });

  it.each(qualityRows('z14-single-tightened-partial.csv'))('tightened, $letter at $aql: $Ac', (row) => {
    expect(tightenedCell(row.letter as CodeLetter, Number(row.aql) as QualityLevel)).toBe(Number(row.Ac));
  });

  it.each([
    [144, 0.65, 'F', 20, 0],
    [144, 1, 'E', 13, 0],
    [144, 1.5, 'G', 32, 1],
    [144, 2.5, 'F', 20, 1],
    [144, 4, 'F', 20, 2],
    [300, 2.5, 'H', 50, 3],
    [5000, 2.5, 'L', 200, 10],
    [20_000, 0.65, 'M', 315, 5],
  ] as const)('a lot of %d at %d: %s, %d looked at, %d allowed', (lot, level, letter, size, acceptUpTo) => {
    expect(standardPlan(lot, level)).toEqual({ letter, size, acceptUpTo });
  });

  it('F, J and N at 0.65 allow 0, 1 and 7 (Birolini 2007, table 7.1)', () => {
    expect((['F', 'J', 'N'] as const).map((letter) => normalCell(letter, 0.65))).toEqual([0, 1, 7]);
  });

  it('20 with none allowed: 0.358486 at 0.05', () => {
    near(acceptance({ size: 20, acceptUpTo: 0 }, 0.05, 'process'), 0.358486, 1e-6);
  });

  it('a sample as large as the lot means to look at all', () => {
    expect(standardPlan(10, 0.65)).toMatchObject({ size: 10, acceptUpTo: 0 });
  });
});

describe('switching (ISO 2859-1:1999, 9.3)', () => {
  const lots = (text: string) => [...text].map((each) => each === '+');

  it.each([
    ['', 'normal'],
    ['++-+++', 'normal'],
    ['+-++-', 'tightened'],
    ['-+++++-', 'normal'],
    ['--+++++', 'normal'],
    ['--++++', 'tightened'],
    ['------', 'tightened'],
    ['-------', 'stopped'],
    ['--+-+-+-+-', 'tightened'],
    ['--+-+-+-+-+-', 'stopped'],
  ])('after "%s": %s', (text, expected) => {
    expect(nextInspection(lots(text))).toBe(expected);
  });
});

describe('one string after the other (Wald 1947)', () => {
  const asked = {
    good: { share: 0.01, refusedAtMost: 0.05 },
    poor: { share: 0.06, acceptedAtMost: 0.1 },
  };

  it('0.01 at 0.05 and 0.06 at 0.10: lines 0.028 n - 1.22 and + 1.57 (Montgomery, 15.3.3)', () => {
    const plan = sequentialPlan(asked);
    near(plan.slope, 0.028, 5e-4);
    near(plan.accept, 1.22, 5e-3);
    near(plan.refuse, 1.57, 5e-3);
    expect(sequentialAnswer(plan, 43, 0)).toBe('go-on');
    expect(sequentialAnswer(plan, 44, 0)).toBe('accept');
    expect(sequentialAnswer(plan, 2, 2)).toBe('refuse');
  });

  it('0.01 at 0.05 and 0.10 at 0.10: 0.0397 n - 0.939 and + 1.205 (NIST/SEMATECH e-Handbook 6.2.6)', () => {
    const plan = sequentialPlan({ ...asked, poor: { share: 0.1, acceptedAtMost: 0.1 } });
    near(plan.slope, 0.0397, 5e-5);
    near(plan.accept, 0.939, 5e-4);
    near(plan.refuse, 1.205, 5e-4);
  });

  it('keeps both risks, and looks at fewer than the single plan would', () => {
    const plan = sequentialPlan(asked);
    const good = sequentialCourse(plan, 0.01, 5000);
    const poor = sequentialCourse(plan, 0.06, 5000);
    near(good.accepted + good.refused + good.open, 1, 1e-12);
    expect(good.refused).toBeLessThan(0.05);
    expect(poor.accepted).toBeLessThan(0.1);
    const single = given(findPlan({ ...asked, from: 'process' }));
    expect(good.meanLooked).toBeLessThan(0.75 * single.size);
    expect(poor.meanLooked).toBeLessThan(0.75 * single.size);
  });
});

describe('the cheapest plan', () => {
  const costs = { lot: 144, look: 1, escape: 50 };

  it.each([
    [0.01, 0],
    [0.019, 0],
    [0.021, 144],
    [0.1, 144],
  ])('lots all alike at %d: none or all (Deming, Out of the crisis, ch. 15): %d', (share, size) => {
    const plan = cheapestPlan({ ...costs, incoming: [{ share, weight: 1 }] });
    // Looking at all by accepting only on none bad in all of them costs the same as a sample that always refuses.
    expect(plan.cost).toBeCloseTo(size === 0 ? 144 * share * 50 : 144, 0);
    if (size === 0) expect(plan.size).toBe(0);
  });

  it('is the cheapest of all there are, each reckoned anew', () => {
    const chance = seededChance(6);
    for (let round = 0; round < 40; round++) {
      const weight = chance.next();
      const asked = {
        lot: chance.whole(2, 24),
        look: 0.1 + 3 * chance.next(),
        escape: 100 * chance.next(),
        incoming: [
          { share: 0.05 * chance.next(), weight },
          { share: 0.6 * chance.next(), weight: 1 - weight },
        ],
      };
      const costOf = (size: number, acceptUpTo: number): number =>
        asked.incoming.reduce((sum, { share, weight: often }) => {
          const accepted = size === 0 ? 1 : acceptance({ size, acceptUpTo }, share, 'process');
          const passed = (asked.lot - size) * accepted;
          const sorted = (asked.lot - size) * (1 - accepted);
          return sum + often * ((size + sorted) * asked.look + passed * share * asked.escape);
        }, 0);
      let least = costOf(0, 0);
      for (let size = 1; size <= asked.lot; size++)
        for (let acceptUpTo = 0; acceptUpTo < size; acceptUpTo++)
          least = Math.min(least, costOf(size, acceptUpTo));
      expect(cheapestPlan(asked).cost).toBeCloseTo(least, 9);
    }
  });

  it('mixed lots are worth a sample, and no plan near it is cheaper', () => {
    const incoming = [
      { share: 0.002, weight: 0.9 },
      { share: 0.15, weight: 0.1 },
    ];
    const plan = cheapestPlan({ ...costs, incoming });
    expect(plan.size).toBeGreaterThan(0);
    expect(plan.size).toBeLessThan(40);
    const none = incoming.reduce((sum, { share, weight }) => sum + weight * 144 * share * 50, 0);
    expect(plan.cost).toBeLessThan(Math.min(none, 144));
  });
});

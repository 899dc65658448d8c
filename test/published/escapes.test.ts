import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chance, seededChance } from '../../src/core/foundation/index.js';
import {
  addedCheck,
  type Check,
  checksOutcome,
  escapesBetween,
  firstPassYield,
  lincolnPetersen,
  recaptureEstimate,
  removalEstimate,
  robsonRegier,
  rolledYield,
  seededEstimate,
  yieldOfFaults,
} from '../../src/core/stats/index.js';
import { given, qualityRows } from './data/quality-rows.js';

const near = (found: number, expected: number, tolerance: number): void =>
  expect(Math.abs(found - expected)).toBeLessThan(tolerance);

/** How many of so many events come about. */
const drawn = (of: number, share: number, chance: Chance): number =>
  Array.from({ length: of }, () => chance.next()).filter((each) => each < share).length;

describe('two checks (Seber 2002; Krebs 1989; Ricker 1975; Pine et al. 2013; Polya; R 4.2.2)', () => {
  it.each(qualityRows('two-inspection-estimators.csv'))('$method $a, $b, $c: $N', (row) => {
    const [a, b, c] = [Number(row.a), Number(row.b), Number(row.c)];
    // As printed: whole strings.
    const printed = row.N_published === '' ? Number(row.N) : Number(row.N_published);
    if (row.method === 'removal') {
      const found = given(removalEstimate({ first: a, second: b }));
      near(found.all, Number(row.N), 1e-6);
      near(found.u, Number(row.se), 1e-6);
      near(found.escaped, Number(row.missed), 1e-6);
      near(found.all, printed, 0.5);
    } else if (row.method === 'lp') {
      near(given(lincolnPetersen({ first: a, second: b, both: c })), Number(row.N), 1e-6);
      near(given(lincolnPetersen({ first: a, second: b, both: c })), printed, 0.5);
    } else {
      const found = given(recaptureEstimate({ first: a, second: b, both: c }));
      near(found.all, Number(row.N), 1e-6);
      near(found.u, Number(row.se), 1e-6);
      near(found.missedByBoth, Number(row.missed), 1e-6);
      near(found.all, printed, 0.5);
    }
  });

  it('79 and 28: detection 0.645570 (Seber 2002, example 7.4), Robson & Regier a little fewer', () => {
    near(given(removalEstimate({ first: 79, second: 28 })).detection, 0.64557, 1e-6);
    near(given(robsonRegier({ first: 79, second: 28 })), (79 ** 2 - 28) / 51, 1e-9);
  });

  it('421, 332 and 88: 1,330 to 1,826 with 95 % (Pine et al. 2013, box 11.2)', () => {
    const { interval } = given(recaptureEstimate({ first: 421, second: 332, both: 88 }));
    near(interval.from, 1329.89, 0.01);
    near(interval.to, 1825.99, 0.01);
  });

  it('proofreaders 10, 12 and 8: they find two thirds and four fifths of what the other found (Polya 1976)', () => {
    const { firstFinds, secondFinds, isThin } = given(recaptureEstimate({ first: 10, second: 12, both: 8 }));
    near(firstFinds!, 8 / 12, 1e-12);
    near(secondFinds!, 8 / 10, 1e-12);
    expect(isThin).toBe(false);
  });
});

describe('escapes by what two checks in a row removed', () => {
  it('a second check that caught as many as the first gives no estimate, but still a least number', () => {
    for (const second of [8, 9])
      expect(removalEstimate({ first: 8, second })).toMatchObject({
        fault: { code: 'stats.second-caught-more', first: 8, second },
      });
    const between = given(escapesBetween({ first: 8, second: 9 }));
    expect(between.to).toBeUndefined();
    expect(between.from).toBeGreaterThan(0.5);
  });

  it('300 and 7, as a coiler finds among 6,000: a fifth of a string, and hardly more than one', () => {
    const counts = { first: 300, second: 7 };
    near(given(removalEstimate(counts)).escaped, 49 / 293, 1e-12);
    const { from, to } = given(escapesBetween(counts));
    expect(from).toBe(0);
    expect(to!).toBeGreaterThan(0.5);
    expect(to!).toBeLessThan(4);
  });

  it('the interval holds the estimate wherever there is one, and has an upper end only there', () => {
    const counts = fc.integer({ min: 0, max: 400 });
    fc.assert(
      fc.property(counts, counts, (first, second) => {
        fc.pre(first + second > 0);
        const { from, to } = given(escapesBetween({ first, second }));
        expect(from).toBeGreaterThanOrEqual(0);
        const estimate = removalEstimate({ first, second });
        if (!estimate.ok) expect(to).toBeUndefined();
        else {
          expect(from).toBeLessThanOrEqual(estimate.value.escaped);
          expect(to ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(estimate.value.escaped);
        }
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    [200, 0.7, 0.93],
    [60, 0.6, 0.92],
    [300, 0.9, 0.93],
  ])(
    '%d bad strings, each check finds %d: it holds the truth 95 times in 100, or nearly: %d',
    (bad, finds, least) => {
      const chance = seededChance(bad);
      let held = 0;
      for (let round = 0; round < 1500; round++) {
        const first = drawn(bad, finds, chance);
        const second = drawn(bad - first, finds, chance);
        const { from, to = Number.POSITIVE_INFINITY } = given(escapesBetween({ first, second }));
        const escaped = bad - first - second;
        // The likelihood knows no half strings.
        if (Math.floor(from) <= escaped && escaped <= Math.ceil(to)) held += 1;
      }
      expect(held / 1500).toBeGreaterThan(least);
    },
  );
});

describe('escapes by planted strings', () => {
  it('45 of 50 found, 18 caught: 2 escaped, with an interval that two exact ones make', () => {
    const found = given(seededEstimate({ seeded: 50, found: 45, caught: 18 }));
    near(found.detection, 0.9, 1e-12);
    near(found.escaped, 2, 1e-12);
    // SciPy 1.17.1, binomtest(45, 50).proportion_ci(0.95, 'exact').
    near(found.detectionInterval.from, 0.7818646335657977, 1e-9);
    near(found.detectionInterval.to, 0.9667249064109785, 1e-9);
    expect(found.escapedInterval.from).toBeLessThan(2);
    expect(found.escapedInterval.to).toBeGreaterThan(2);
  });

  it('holds the mean that escapes 95 times in 100 or more', () => {
    const chance = seededChance(3);
    let held = 0;
    for (let round = 0; round < 600; round++) {
      const found = drawn(40, 0.85, chance);
      const caught = drawn(1000, 0.02 * 0.85, chance);
      const { from, to } = given(seededEstimate({ seeded: 40, found, caught })).escapedInterval;
      if (from <= 1000 * 0.02 * 0.15 && 1000 * 0.02 * 0.15 <= to) held += 1;
    }
    expect(held / 600).toBeGreaterThan(0.945);
  });

  it('none of the planted ones found: any number may have passed', () => {
    expect(given(seededEstimate({ seeded: 5, found: 0, caught: 1 })).escaped).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('checks in a row', () => {
  const eye: Check = { detection: 0.9, looksAt: 1, goodRefused: 0, look: 0.02 };
  const pluck: Check = { detection: 0.8, looksAt: 0.1, goodRefused: 0.01, look: 0.2 };
  const lot = { strings: 6000, badShare: 0.02, scrap: 1, escape: 20 };

  it('120 bad, two looks that find nine in ten: 1.2 escape', () => {
    const outcome = checksOutcome([eye, eye], lot);
    near(outcome.escapes, 1.2, 1e-12);
    near(outcome.looks, 6000 + 5892, 1e-9);
    near(outcome.cost, 11_892 * 0.02 + 1.2 * 20, 1e-9);
  });

  it('a pluck of one in ten more spares 8 % of them, and what it costs is told', () => {
    const { escapesSpared, addedCost } = addedCheck([eye, eye], pluck, lot);
    near(escapesSpared, 1.2 * 0.08, 1e-12);
    const looked = 0.1 * (5880 + 1.2);
    near(addedCost, looked * 0.2 + 0.1 * 0.01 * 5880 - 1.2 * 0.08 * 20, 1e-9);
  });
});

describe('yields', () => {
  it('137 of 144, three stages, and 0.05 faults a unit: 0.951389, 0.92169, 0.951229', () => {
    near(firstPassYield({ entered: 144, rightFirst: 137 }), 0.951389, 5e-7);
    const stages = [95, 98, 99].map((rightFirst) => ({ entered: 100, rightFirst }));
    near(rolledYield(stages), 0.92169, 1e-12);
    near(yieldOfFaults(0.05), 0.951229, 5e-7);
  });
});

import { describe, expect, it } from 'vitest';
import { seededChance } from '../../src/core/foundation/index.js';
import {
  averageRangeStudy,
  type CrossedStudy,
  crossedStudy,
  gaugeStudy,
  normalDraw,
} from '../../src/core/stats/index.js';
import { given, qualityRows } from './data/quality-rows.js';

const near = (found: number, expected: number, tolerance: number): void =>
  expect(Math.abs(found - expected)).toBeLessThan(tolerance);

const readings = qualityRows('aiag-grr-10x3x3.csv').map((row) => ({
  part: row.part!,
  person: row.appraiser!,
  value: Number(row.value),
}));

describe('a crossed gauge study, 10 parts, 3 persons, 3 trials (AIAG, MSA, 4th ed. 2010, III B; R 4.2.2)', () => {
  const study = given(crossedStudy(readings));
  const found = given(gaugeStudy(study));

  it('sums of squares 88.361934, 3.167262, 0.358982, 2.758933 with 9, 2, 18 and 60 degrees', () => {
    const { part, person, interaction, repeat } = found.anova;
    near(part.sum, 88.361934, 1e-5);
    near(person.sum, 3.167262, 1e-5);
    near(interaction.sum, 0.358982, 1e-5);
    near(repeat.sum, 2.758933, 1e-5);
    expect([part, person, interaction, repeat].map(({ degrees }) => degrees)).toEqual([9, 2, 18, 60]);
  });

  it('no interaction: F 0.433721, p 0.974106, so it is pooled to a mean square of 0.039973276', () => {
    near(found.anova.interactionF, 0.433721, 1e-5);
    near(found.anova.interactionP, 0.974106, 1e-5);
    expect(found.isPooled).toBe(true);
    near(found.sd.repeat ** 2, 0.039973276, 1e-8);
  });

  it('standard deviations 0.199933, 0.226838, 0.302372, 1.042327, 1.085300 (AIAG table III-B 8)', () => {
    near(found.sd.repeat, 0.199933, 1e-5);
    near(found.sd.person, 0.226838, 1e-5);
    near(found.sd.gauge, 0.302372, 1e-5);
    near(found.sd.part, 1.042327, 1e-5);
    near(found.sd.total, 1.0853, 1e-5);
    expect(found.sd.interaction).toBe(0);
  });

  it('shares 18.42, 20.90, 27.86 and 96.04 %, four kinds told apart', () => {
    const { repeat, person, part, total } = found.sd;
    near((100 * repeat) / total, 18.42, 0.005);
    near((100 * person) / total, 20.9, 0.005);
    near(100 * found.shareOfStudy, 27.86, 0.005);
    near((100 * part) / total, 96.04, 0.005);
    expect(found.kinds).toBe(4);
    near((1.41 * part) / found.sd.gauge, 4.86, 0.005);
    expect(found.verdict).toBe('tells-roughly');
  });

  it('against a tolerance the verdict is another: a width of 40 it can tell, of 4 it cannot', () => {
    expect(given(gaugeStudy(study, { tolerance: 40 }))).toMatchObject({
      verdict: 'tells',
      shareOfTolerance: expect.closeTo((6 * 0.302372) / 40, 6),
    });
    expect(given(gaugeStudy(study, { tolerance: 4 })).verdict).toBe('cannot-tell');
  });

  it('three persons do not make it sure: the interval of the gauge takes in the next verdict', () => {
    expect(found.gaugeInterval.from).toBeLessThan(found.sd.gauge);
    expect(found.gaugeInterval.to).toBeGreaterThan(1);
    expect(found.isSure).toBe(false);
  });

  it('with the interaction kept: gauge 0.22343 to 1.45661, part 0.71690 to 1.90617 (the formulas in SciPy 1.17.1)', () => {
    const kept = given(gaugeStudy(study, { keepBelow: 1 }));
    expect(kept.isPooled).toBe(false);
    near(kept.gaugeInterval.from, 0.2234292718458751, 1e-10);
    near(kept.gaugeInterval.to, 1.456608022529596, 1e-10);
    near(kept.partInterval.from, 0.7169000140955294, 1e-10);
    near(kept.partInterval.to, 1.9061657443470021, 1e-10);
  });

  it('by averages and ranges: EV 0.20188, AV 0.22963, GRR 0.30575, PV 1.10456, TV 1.14610, five kinds', () => {
    const { meanRanges, repeat, person, gauge, part, total, kinds } = averageRangeStudy(study);
    meanRanges.forEach((mean, at) => {
      near(mean, [0.184, 0.513, 0.328][at]!, 5e-4);
    });
    near(repeat, 0.20188, 5e-4);
    near(person, 0.22963, 5e-4);
    near(gauge, 0.30575, 5e-4);
    near(part, 1.10456, 5e-4);
    near(total, 1.1461, 5e-4);
    near((100 * gauge) / total, 26.68, 0.03);
    near((100 * repeat) / total, 17.62, 0.03);
    near((100 * person) / total, 20.04, 0.03);
    near((100 * part) / total, 96.38, 0.03);
    expect(kinds).toBe(5);
  });

  it('a missing reading is a fault, and so is a study of one person', () => {
    expect(crossedStudy(readings.slice(1))).toMatchObject({ fault: { code: 'stats.unequal-groups' } });
    expect(crossedStudy(readings.filter(({ person }) => person === 'A'))).toMatchObject({
      fault: { code: 'stats.too-few', given: 1, needed: 2 },
    });
  });
});

describe('the intervals of gauge and parts (Burdick, Borror & Montgomery, J. Quality Technology 35 (2003) 342)', () => {
  /** A study drawn with these standard deviations. */
  function drawn(
    seed: number,
    sd: { gauge: number; person: number; crossed: number; part: number },
  ): CrossedStudy {
    const chance = seededChance(seed);
    const [p, o, r] = [10, 4, 3];
    const persons = Array.from({ length: o }, () => sd.person * normalDraw(chance));
    const cells = Array.from({ length: p }, () => {
      const part = sd.part * normalDraw(chance);
      return persons.map((person) => {
        const crossed = sd.crossed * normalDraw(chance);
        return Array.from({ length: r }, () => part + person + crossed + sd.gauge * normalDraw(chance));
      });
    });
    return {
      parts: cells.map((_, at) => `${at}`),
      persons: persons.map((_, at) => `${at}`),
      trials: r,
      cells,
    };
  }

  it.each([
    { gauge: 1, person: 0.5, crossed: 0.7, part: 4 },
    { gauge: 0.5, person: 1, crossed: 0.3, part: 2 },
  ])('hold the truth 95 times in 100, or a little more: $gauge, $person, $crossed, $part', (sd) => {
    const truth = Math.hypot(sd.gauge, sd.person, sd.crossed);
    let [gauge, part] = [0, 0];
    const rounds = 1500;
    for (let seed = 0; seed < rounds; seed++) {
      // Never pooled: the intervals are for the model with an interaction.
      const found = given(gaugeStudy(drawn(seed, sd), { keepBelow: 1 + 1e-9 }));
      if (found.gaugeInterval.from <= truth && truth <= found.gaugeInterval.to) gauge += 1;
      if (found.partInterval.from <= sd.part && sd.part <= found.partInterval.to) part += 1;
    }
    // Standard error 0.6 %; the methods are known to hold a little more than they say.
    for (const share of [gauge / rounds, part / rounds]) {
      expect(share).toBeGreaterThan(0.932);
      expect(share).toBeLessThan(0.985);
    }
  });
});

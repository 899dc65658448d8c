import { describe, expect, it } from 'vitest';
import { SERVO } from '../../../../test/fixtures/winders.js';
import { type Chance, seededChance } from '../../foundation/index.js';
import { changeOver } from '../change-over.js';
import type { SetUpTraits } from '../set-up-traits.js';
import { CHANGE_KINDS, type ChangeKind, changeKind } from './change-kind.js';
import { type ChangeLearned, LEAST_SET_UPS, learnChanges, learnedOf } from './learn-changes.js';
import type { PastSetUp } from './past-set-up.js';

const setUp = (changes: Partial<PastSetUp> = {}): PastSetUp => ({
  machineId: 'm',
  kind: 'wrap',
  figureScrap: 5,
  figureMinutes: 20,
  scrap: 5,
  minutes: 20,
  ...changes,
});
const times = (count: number, of: PastSetUp): readonly PastSetUp[] => Array.from({ length: count }, () => of);
const one = (setUps: readonly PastSetUp[], kind: ChangeKind = 'wrap'): ChangeLearned =>
  learnChanges(setUps).find((each) => each.kind === kind)!;

describe('kinds of change', () => {
  it('are told by what is changed, the length apart', () => {
    expect(changeKind([])).toBeUndefined();
    expect(changeKind(['length'])).toBe('length');
    expect(changeKind(['core', 'length'])).toBe('core');
    expect(changeKind(['wrap'])).toBe('wrap');
    expect(changeKind(['core', 'wrap'])).toBe('core+wrap');
    expect(changeKind(['wrap', 'alloy', 'length'])).toBe('wrap+alloy');
    expect(changeKind(['core', 'wrap', 'alloy'])).toBe('core+wrap+alloy');
  });
});

describe('what set-ups teach', () => {
  it('stays by the record where they bear it out, and the band narrows with their number', () => {
    const few = one(times(5, setUp()));
    const many = one(times(60, setUp()));
    expect(few.scrap.learned).toBeCloseTo(5, 1);
    expect(many.scrap.high - many.scrap.low).toBeLessThan(few.scrap.high - few.scrap.low);
    expect(many.minutes!.high - many.minutes!.low).toBeLessThan(few.minutes!.high - few.minutes!.low);
  });

  it('moves from the record to what is counted, the further the more there is of it', () => {
    const learned = [1, 5, 50].map((count) => one(times(count, setUp({ scrap: 2 }))).scrap.learned);
    expect(learned[0]).toBeGreaterThan(learned[1]!);
    expect(learned[1]).toBeGreaterThan(learned[2]!);
    expect(learned[2]).toBeCloseTo(2, 1);
    expect(learned[0]).toBeLessThan(5);
  });

  it('lends what a machine’s other kinds say to one that is seldom made', () => {
    const seldom = setUp({ kind: 'core', scrap: 5 });
    const alone = one([seldom], 'core').scrap.learned;
    const beside = one([seldom, ...times(40, setUp({ scrap: 2, minutes: 10 }))], 'core');
    expect(beside.scrap.learned).toBeLessThan(alone);
    expect(beside.minutes!.learned).toBeLessThan(one([seldom], 'core').minutes!.learned);
  });

  it('says less where scrap scatters more than by chance', () => {
    const even = one(times(20, setUp({ scrap: 5 })));
    const wild = one([...times(10, setUp({ scrap: 0 })), ...times(10, setUp({ scrap: 10 }))]);
    expect(wild.scrap.high - wild.scrap.low).toBeGreaterThan(1.5 * (even.scrap.high - even.scrap.low));
  });

  it('learns of a machine whose record says nothing is lost that something is', () => {
    const learned = one(times(20, setUp({ figureScrap: 0, scrap: 2 })));
    expect(learned.scrap).toMatchObject({ figure: 0 });
    expect(learned.scrap.learned).toBeGreaterThan(1.2);
  });

  it('is planned by from the fifth set-up of a kind on, minutes only where five tell them', () => {
    const untimed = times(LEAST_SET_UPS, { ...setUp({ scrap: 1 }), minutes: undefined } as never);
    expect(learnedOf(learnChanges(untimed.slice(1)), 'm')).toEqual({});
    const { wrap } = learnedOf(learnChanges(untimed), 'm');
    expect(wrap?.setUps).toBe(LEAST_SET_UPS);
    expect(wrap).not.toHaveProperty('minutesTimes');
    expect(learnedOf(learnChanges(untimed), 'another')).toEqual({});
    const timed = learnedOf(learnChanges(times(LEAST_SET_UPS, setUp({ minutes: 10 }))), 'm');
    expect(timed.wrap?.minutesTimes).toBeLessThan(1);
  });
});

describe('a change-over by what was learned', () => {
  const from: SetUpTraits = { coreWireId: 'a', wrapWireIds: ['w'], wrapAlloy: 'phosphor-bronze', lengthM: 1 };
  const to = { ...from, coreWireId: 'b' };

  it('is the machine’s own but for the kinds of which there are enough, and says from how many', () => {
    const own = changeOver(SERVO, from, to);
    expect(own).not.toHaveProperty('learnedFrom');
    const machine = { ...SERVO, changeLearned: { core: { setUps: 14, scrapTimes: 0.5, minutesTimes: 2 } } };
    expect(changeOver(machine, from, to)).toEqual({
      minutes: own.minutes * 2,
      scrapStrings: own.scrapStrings * 0.5,
      changes: ['core'],
      learnedFrom: 14,
    });
    const other = { ...from, wrapWireIds: ['v'] };
    expect(changeOver(machine, from, other)).toEqual(changeOver(SERVO, from, other));
    expect(changeOver(machine, from, from).scrapStrings).toBe(0);
  });
});

describe('shops that are made up, whose truth is known', () => {
  const SHOPS = 120;
  const FIGURES = { length: 2, core: 4, wrap: 5, 'core+wrap': 8, 'wrap+alloy': 7, 'core+wrap+alloy': 10 };

  const normal = (chance: Chance): number =>
    Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

  /** Of whole shape and mean 1: so many exponentials. */
  const gamma = (chance: Chance, shape: number): number =>
    Array.from({ length: shape }, () => -Math.log(1 - chance.next())).reduce((sum, each) => sum + each, 0) /
    shape;

  /** Machines and kinds as far off their records as the model thinks, seen through few set-ups. */
  const seen = Array.from({ length: SHOPS }, (_, seed) => madeUp(seededChance(1000 + seed)));

  it('are found again: nine bands in ten hold the truth, and what is learned lies nearer than record or bare mean', () => {
    const cells = seen.flatMap(({ setUps, truth }) =>
      learnChanges(setUps).map((learned) => ({ learned, truth: truth.get(learned.kind)!, setUps })),
    );
    expect(cells.length).toBeGreaterThan(500);
    for (const what of ['scrap', 'minutes'] as const) {
      const told = cells.map(({ learned, truth }) => ({ ...learned[what]!, truth: truth[what] }));
      const held = told.filter(({ low, high, truth }) => low <= truth && truth <= high).length / told.length;
      expect(held, what).toBeGreaterThan(0.86);
      expect(held, what).toBeLessThan(0.95);
      const off = (of: (each: (typeof told)[number]) => number) =>
        Math.sqrt(told.reduce((sum, each) => sum + Math.log(of(each) / each.truth) ** 2, 0) / told.length);
      expect(
        off(({ learned }) => learned),
        what,
      ).toBeLessThan(0.75 * off(({ figure }) => figure));
    }
    const bare = cells.map(({ learned, truth, setUps }) => {
      const own = setUps.filter(({ kind }) => kind === learned.kind);
      const mean = own.reduce((sum, { scrap }) => sum + scrap, 0) / own.length;
      return { bare: mean - truth.scrap, learned: learned.scrap.learned - truth.scrap };
    });
    const rms = (of: 'bare' | 'learned') =>
      Math.sqrt(bare.reduce((sum, each) => sum + each[of] ** 2, 0) / bare.length);
    expect(rms('learned')).toBeLessThan(rms('bare'));
  });

  function madeUp(chance: Chance) {
    const machine = { scrap: gamma(chance, 4), minutes: Math.exp(0.4 * normal(chance)) };
    const truth = new Map<ChangeKind, { readonly scrap: number; readonly minutes: number }>();
    const setUps = CHANGE_KINDS.flatMap((kind) => {
      const scrap = FIGURES[kind] * machine.scrap * gamma(chance, 8);
      const typical = 20 * machine.minutes * Math.exp(0.25 * normal(chance));
      truth.set(kind, { scrap, minutes: typical * Math.exp(0.35 ** 2 / 2) });
      return Array.from({ length: chance.whole(1, 12) }, () =>
        setUp({
          kind,
          figureScrap: FIGURES[kind],
          scrap: poisson(chance, scrap),
          minutes: typical * Math.exp(0.35 * normal(chance)),
        }),
      );
    });
    return { setUps, truth };
  }

  function poisson(chance: Chance, mean: number): number {
    const least = Math.exp(-mean);
    let count = 0;
    for (let product = chance.next(); product > least; product *= chance.next()) count++;
    return count;
  }
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { normalDraw } from '../../stats/index.js';
import { dialInAdvice } from './advice.js';
import type { DialIn, DialInStep } from './dial-in.js';
import { USUAL_AIM } from './dial-in-aim.js';
import type { DialInAdvice } from './dial-in-decision.js';
import { type FirstBelief, firstBelief } from './first-belief.js';
import type { Knob } from './knob.js';

const UM = 1e-6;
const KNOB: Knob = {
  least: 0,
  most: 60,
  step: 0.05,
  deadBand: 0,
  backlash: 0,
  responseMPerUnit: -4 * UM,
  roughness: 0.03,
};
const TOLERANCE_M = 12.7 * UM;
const AIM = { ...USUAL_AIM, toleranceM: TOLERANCE_M };

const unknown = (positions: 1 | 2, knob = KNOB): FirstBelief =>
  firstBelief({
    machineId: 'winder',
    family: 'family',
    knob,
    toleranceM: TOLERANCE_M,
    reckonedSettings: positions === 1 ? [30] : [30, 30],
    past: [],
  });

/** As if the process were known to stand where it should. */
const centred: FirstBelief = (() => {
  const first = unknown(1);
  return {
    ...first,
    belief: {
      ...first.belief,
      covariance: [
        [(0.5 * UM) ** 2, 0],
        [0, (0.4 * UM) ** 2],
      ],
    },
  };
})();

const started = (first: FirstBelief, steps: readonly DialInStep[] = [], knob = KNOB): DialIn => ({
  knob,
  aim: AIM,
  first,
  steps: [
    ...first.belief.referenceSettings.map(
      (setting, position): DialInStep => ({ kind: 'set', position, setting, chosenBy: 'advice' }),
    ),
    ...steps,
  ],
});

const string = (errorUm: number, position = 0): DialInStep => ({
  kind: 'string',
  position,
  errorsM: [errorUm * UM, (errorUm + 0.4) * UM, (errorUm - 0.4) * UM],
});

const advised = (dialIn: DialIn, position = 0): DialInAdvice => dialInAdvice(dialIn)[position]!;
const moveOf = ({ decision }: DialInAdvice): number => (decision.kind === 'adjust' ? decision.move.by : 0);

const errorUm = fc.double({ min: -40, max: 40, noNaN: true });

describe('advice at a position', () => {
  it('begins with the setting that its past points to', () => {
    const dialIn: DialIn = { knob: KNOB, aim: AIM, first: unknown(1), steps: [] };
    expect(advised(dialIn)).toMatchObject({
      decision: { kind: 'start', move: { to: 30 } },
      why: { kind: 'no-past-runs' },
    });
  });

  it('wants a string before it says more', () => {
    expect(advised(started(unknown(1))).decision.kind).toBe('measure-one-more');
  });

  it('takes most of a large error of an unknown process out, and looks again', () => {
    const advice = advised(started(unknown(1), [string(20)]));
    expect(advice.decision).toMatchObject({ kind: 'adjust', next: 'string' });
    expect(advice.why.kind).toBe('error-seen');
    expect(moveOf(advice)).toBeGreaterThan(3.5);
    expect(moveOf(advice)).toBeLessThan(5);
  });

  it('does not chase chance: a process known to be centred is never moved for what its strings differ by', () => {
    const chance = seededChance(3);
    const kinds = Array.from({ length: 200 }, () => {
      const dialIn = started(centred, [string(3.2 * normalDraw(chance)), string(3.2 * normalDraw(chance))]);
      return advised(dialIn).decision.kind;
    });
    expect(kinds.filter((kind) => kind === 'adjust')).toEqual([]);
    expect(kinds.filter((kind) => kind === 'run').length).toBeGreaterThan(190);
  });

  it('moves the further, the larger the error', () => {
    const size = fc.double({ min: 1, max: 16, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: 1.5, max: 3, noNaN: true }), (error, times) => {
        const small = moveOf(advised(started(unknown(1), [string(error)])));
        const large = moveOf(advised(started(unknown(1), [string(times * error)])));
        // A response below nought: thicker strings are answered by a higher setting. Seven tenths of the full
        // correction may be chosen for one error and all of it for another.
        expect(large).toBeGreaterThanOrEqual(small - KNOB.step);
        if (error > 5) expect(small).toBeGreaterThan(0);
      }),
      { numRuns: 40 },
    );
  });

  it('treats thick and thin alike', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 40, noNaN: true }), (error) => {
        const thick = advised(started(unknown(1), [string(error)]));
        const thin = advised(started(unknown(1), [string(-error)]));
        expect(thin.decision.kind).toBe(thick.decision.kind);
        expect(Math.abs(moveOf(thin) + moveOf(thick))).toBeLessThanOrEqual(KNOB.step + 1e-9);
      }),
      { numRuns: 40 },
    );
  });

  it('lets a run go only where it is sure enough, and says how sure', () => {
    fc.assert(
      fc.property(fc.array(errorUm, { minLength: 1, maxLength: 4 }), (errors) => {
        const { decision, odds } = advised(
          started(
            unknown(1),
            errors.map((error) => string(error)),
          ),
        );
        const letsGo = decision.kind === 'run' || (decision.kind === 'adjust' && decision.next === 'run');
        expect(odds.sure).toBeGreaterThanOrEqual(0);
        expect(odds.sure).toBeLessThanOrEqual(1);
        if (letsGo) expect(odds.sure).toBeGreaterThanOrEqual(AIM.sure);
      }),
      { numRuns: 40 },
    );
  });

  it('does not let even a short run go that it is not sure of', () => {
    const short = { ...started(unknown(1), [string(0)]), aim: { ...AIM, sure: 0.999, stringsToMake: 1 } };
    expect(advised(short).odds.sure).toBeLessThan(0.999);
    expect(advised(short).decision.kind).toBe('measure-one-more');
    expect(advised({ ...short, aim: { ...short.aim, sure: 0.5 } }).decision.kind).toBe('run');
  });

  it('is surer of a run with a wider tolerance', () => {
    const steps = [string(9)];
    const [narrow, wide] = [1, 1.5].map(
      (times) =>
        advised({ ...started(unknown(1), steps), aim: { ...AIM, toleranceM: times * TOLERANCE_M } }).odds
          .sure,
    );
    expect(wide).toBeGreaterThan(narrow!);
  });

  it('says so where the machine itself is too rough for the tolerance', () => {
    const dialIn = { ...started(centred, [string(1)]), aim: { ...AIM, toleranceM: 4 * UM } };
    expect(advised(dialIn).odds.capable).toBe(false);
    expect(advised(started(centred, [string(1)])).odds.capable).toBe(true);
  });

  it('never becomes quite sure of a process that may wander', () => {
    const many = Array.from({ length: 60 }, () => string(0));
    const still = { ...centred, noise: { ...centred.noise, wanderM: 0 } };
    const restless = { ...centred, noise: { ...centred.noise, wanderM: 1 * UM } };
    const doubt = (first: FirstBelief): number => advised(started(first, many)).odds.error.u;
    expect(doubt(restless)).toBeGreaterThan(2 * doubt(still));
  });

  it('learns the response from what a move did', () => {
    const steps: DialInStep[] = [
      string(20),
      { kind: 'set', position: 0, setting: 35, chosenBy: 'advice' },
      string(10),
    ];
    // 5 units took out 10 um: 2 um a unit, where 4 was reckoned with a quarter of doubt.
    const { odds } = advised(started(unknown(1), steps));
    expect(odds.response.value).toBeGreaterThan(-3.5 * UM);
    expect(odds.response.u).toBeLessThan(0.25 * 4 * UM);
  });
});

describe('a knob', () => {
  const gear: Knob = { ...KNOB, step: 0.25, deadBand: 0.4, backlash: 0.8, roughness: 0.1 };

  it('is put to its own steps, within its ends, and from below where it has lost motion', () => {
    fc.assert(
      fc.property(errorUm, (error) => {
        const { decision } = advised(started(unknown(1, gear), [string(error)], gear));
        if (decision.kind !== 'adjust') return;
        const { to, past } = decision.move;
        expect(Math.abs(to / gear.step - Math.round(to / gear.step))).toBeLessThan(1e-9);
        expect(to).toBeGreaterThanOrEqual(gear.least);
        expect(to).toBeLessThanOrEqual(gear.most);
        expect(to - past!).toBeGreaterThan(gear.backlash + gear.deadBand);
      }),
      { numRuns: 30 },
    );
  });

  it('that lands roughly leaves more doubt after a move', () => {
    const doubtAfter = (knob: Knob): number => {
      const move: DialInStep = { kind: 'set', position: 0, setting: 36, chosenBy: 'advice' };
      return advised(started(centred, [move], knob)).odds.error.u;
    };
    expect(doubtAfter({ ...KNOB, roughness: 0.2 })).toBeGreaterThan(1.5 * doubtAfter(KNOB));
  });

  it('that has no finer step is left where it is', () => {
    const coarse: Knob = { ...KNOB, step: 5 };
    const knowing = { ...centred, belief: { ...centred.belief, mean: [6 * UM, -4 * UM] } };
    const advice = advised(started(knowing, [string(6), string(6)], coarse));
    expect(advice.decision.kind).not.toBe('adjust');
    expect(advice.why.kind).toBe('finer-than-knob');
  });

  it('that has come to its end is not turned further: stop', () => {
    const short: Knob = { ...KNOB, most: 30 };
    const advice = advised(started(unknown(1, short), [string(30), string(29), string(31)], short));
    expect(advice).toMatchObject({ decision: { kind: 'stop' }, why: { kind: 'end-of-knob' } });
  });
});

describe('two positions', () => {
  it('are told apart, and each learns a part of what the other shows', () => {
    const dialIn = started(unknown(2), [string(16, 0)]);
    const [first, second] = dialInAdvice(dialIn);
    expect(first!.decision.kind).toBe('adjust');
    expect(second!.decision.kind).toBe('measure-one-more');
    const own = advised(started(unknown(2), [string(16, 0), string(16, 1)]), 1).odds;
    const none = advised(started(unknown(2)), 1).odds;
    const shared = dialInAdvice(dialIn)[1]!.odds;
    expect(shared.error.value).toBeGreaterThan(5 * UM);
    expect(shared.error.value).toBeLessThan(16 * UM);
    expect(shared.error.u).toBeLessThan(none.error.u);
    expect(own.error.u).toBeLessThan(shared.error.u);
  });

  it('that stand apart are moved apart', () => {
    const [first, second] = dialInAdvice(started(unknown(2), [string(10, 0), string(-10, 1)]));
    expect(moveOf(first!)).toBeGreaterThan(0);
    expect(moveOf(second!)).toBeLessThan(0);
  });
});

describe('a winder who sets against the advice', () => {
  const override = (setting: number): DialInStep => ({
    kind: 'set',
    position: 0,
    setting,
    chosenBy: 'winder',
  });

  it('is taken to have seen something: the error is thought smaller there', () => {
    const byAdvice: DialInStep = { kind: 'set', position: 0, setting: 38, chosenBy: 'advice' };
    const told = advised(started(unknown(1), [string(20), byAdvice])).odds.error;
    const chosen = advised(started(unknown(1), [string(20), override(38)])).odds.error;
    expect(Math.abs(chosen.value)).toBeLessThan(Math.abs(told.value));
    expect(chosen.u).toBeLessThan(told.u);
  });

  it('is believed the more, the nearer such settings were in the past', () => {
    const pastOf = (errorsUm: readonly number[]): FirstBelief =>
      firstBelief({
        machineId: 'winder',
        family: 'family',
        knob: KNOB,
        toleranceM: TOLERANCE_M,
        reckonedSettings: [30],
        past: [
          {
            machineId: 'winder',
            family: 'family',
            responseMPerUnit: KNOB.responseMPerUnit,
            positions: [
              { reckonedSetting: 30, strings: [], overrideErrorsM: errorsUm.map((each) => each * UM) },
            ],
          },
        ],
      });
    expect(pastOf([1, -1, 2]).overrideSpreadM).toBeLessThan(pastOf([15, -20, 18]).overrideSpreadM);
  });

  it('who changes his mind is heard once', () => {
    const twice = advised(started(unknown(1), [string(20), override(33), override(36)])).odds.error;
    const once = advised(started(unknown(1), [string(20), override(36)])).odds.error;
    expect(twice.value).toBeCloseTo(once.value, 6);
  });
});

describe('a reading that cannot be', () => {
  const again = (errorUm: number): DialInStep => ({ ...string(errorUm), kind: 'again' }) as DialInStep;

  it('is not believed: measure the same string again', () => {
    const advice = advised(started(centred, [string(30)]));
    expect(advice).toMatchObject({ decision: { kind: 'measure-again' }, why: { kind: 'doubtful' } });
    expect(Math.abs(advice.odds.error.value)).toBeLessThan(0.5 * UM);
  });

  it('of one place alone is told by its place', () => {
    const steps: DialInStep[] = [{ kind: 'string', position: 0, errorsM: [1 * UM, 25 * UM, 0] }];
    expect(advised(started(centred, steps)).why).toMatchObject({ doubt: { kind: 'odd-place', place: 1 } });
  });

  it('gives way to the second where the two differ', () => {
    const corrected = advised(started(centred, [string(30), again(1)]));
    const straight = advised(started(centred, [string(1)]));
    expect(corrected.decision.kind).not.toBe('measure-again');
    expect(corrected.odds.error.value).toBeCloseTo(straight.odds.error.value, 9);
  });

  it('that comes again is a string gone astray, and moves the belief less than it would if it were common', () => {
    const { odds } = advised(started(centred, [string(30), again(30)]));
    expect(odds.error.value).toBeGreaterThan(0);
    expect(odds.error.value).toBeLessThan(2 * UM);
  });
});

import { describe, expect, it } from 'vitest';
import { BENCH, PLAIN_12, specOf } from '../../../test/fixtures/winders.js';
import { type CalendarDate, calendarDate } from '../foundation/index.js';
import type { ResolvedOrder } from '../orders/index.js';
import type { Recipe } from '../recipes/index.js';
import { type StringSpec, stringKey } from '../sets/index.js';
import type { ClockTime, Day } from './day.js';
import type { RunUnderWay } from './run-under-way.js';
import type { Shop } from './shop.js';
import { workOutResolved } from './work-out-day.js';

const date = (text: string): CalendarDate => calendarDate(text)!;
const MONDAY = date('2026-03-02');
const MORNING = 450;

/** Another plain string of the same wire, cut longer: on the bench only the stop is moved for it. */
const LONG: StringSpec = specOf(PLAIN_12, 1.1);
const SHORT: StringSpec = specOf(PLAIN_12);

/** One bench, one wire, nothing on the shelf: a string takes half a minute. */
const SHOP: Shop = {
  name: 'Reedmoor Strings',
  invented: true,
  wires: [
    {
      id: PLAIN_12.coreWireId,
      use: 'core',
      shape: 'round',
      sizeM: 12 * 25.4e-6,
      alloy: 'music-wire',
      strengthTable: 'astm-a228',
      priceMinorPerKg: 2000,
    },
  ],
  spools: [{ id: 'S1', wireId: PLAIN_12.coreWireId, lot: 'A', netKg: 5 }],
  machines: [BENCH],
  setUpNow: [{ machineId: BENCH.id, recipeId: PLAIN_12.id, lengthM: SHORT.lengthM }],
  bins: [],
  strings: [],
  recipes: [PLAIN_12],
  sets: [],
  instruments: [],
  tunings: [],
  rules: {
    lotSize: 12,
    stressLimit: 0.8,
    plainUpToThou: 19,
    thickestPlainThou: 20,
    thinnestWoundThou: 20,
    standardLengthM: 1,
    longLengthM: 1.1,
    standardScaleUpToM: 0.67,
    dayStartsAtMinute: MORNING,
    workingDays: [1, 2, 3, 4, 5],
  },
  rates: {
    currency: 'EUR',
    minorDigits: 2,
    labourMinorPerHour: 3000,
    overheadShare: 0.4,
    endMinorEach: { ball: 2, loop: 0 },
    packMinorPerSet: 40,
    packMinutesPerSet: 2,
    runScrapShare: 0,
  },
};

const order = (spec: StringSpec, quantity: number, due = date('2026-03-06')): ResolvedOrder => ({
  line: 1,
  orderId: 'O-1',
  player: 'Ama Barleycroft',
  quantity,
  due,
  note: '',
  kind: 'custom',
  setName: 'one string',
  strings: [{ position: 1, spec, stringKey: stringKey(spec), recipeId: PLAIN_12.id }],
  warnings: [],
});

const run = (more: Partial<RunUnderWay> = {}): RunUnderWay => ({
  id: 'run-a',
  name: 'Friday’s run',
  state: 'running',
  machineId: BENCH.id,
  recipe: PLAIN_12,
  spec: SHORT,
  quantity: 120,
  made: 0,
  spoolIds: ['S1'],
  takenKg: {},
  binId: 'A1',
  reorderLevel: 0,
  ...more,
});

const dayOf = (
  orders: readonly ResolvedOrder[],
  underWay: readonly RunUnderWay[],
  more: { readonly shop?: Shop; readonly now?: ClockTime; readonly on?: CalendarDate } = {},
): Day => {
  const { shop = SHOP, on = MONDAY, now } = more;
  return workOutResolved({ shop, date: on, orders, faults: [], underWay, ...(now ? { now } : {}) });
};

/** Minutes that the bench needs for so many strings: 20 s to load one, 10 s to take it off. */
const minutesFor = (strings: number): number => (strings * (BENCH.loadSeconds + BENCH.unloadSeconds)) / 60;

describe('strings still to come from a run under way', () => {
  it('are not made a second time, and their order is ready when the run ends', () => {
    const day = dayOf([order(SHORT, 100)], [run()]);
    expect(day.lots).toEqual([]);
    expect(day.plan.runs).toEqual([]);
    expect(day.orders[0]).toMatchObject({ readyAt: { date: MONDAY, lotIds: [] }, daysLate: 0 });
    expect(day.roll.sets).toMatchObject([{ state: 'after-winding' }]);
  });

  it('leave only what they do not cover to be made', () => {
    expect(dayOf([order(SHORT, 132)], [run()]).lots).toMatchObject([{ quantity: 12, orderLines: [1] }]);
  });

  it('are as many as were counted where the winder made more than was wanted', () => {
    expect(dayOf([order(SHORT, 126)], [run({ quantity: 120, made: 126 })]).lots).toEqual([]);
  });

  it('make an order late that cannot wait for them, and the run is named', () => {
    // Two strings a minute, 480 minutes a day: the run ends on Tuesday.
    const day = dayOf([order(SHORT, 100, MONDAY)], [run({ quantity: 1200 })]);
    expect(day.orders[0]).toMatchObject({
      readyAt: { date: '2026-03-03' },
      daysLate: 1,
      lateBecause: { kind: 'waits-for-run', machineId: BENCH.id, run: 'Friday’s run' },
    });
  });
});

describe('a machine with a run under way', () => {
  it('is busy until the run is expected to end, and is set up for what comes next after that', () => {
    const day = dayOf([order(LONG, 60)], [run({ quantity: 120, made: 40 })]);
    const [busy] = day.underWay!;
    expect(busy).toMatchObject({ runId: 'run-a', from: { date: MONDAY, minute: MORNING } });
    // Eighty are left; its own set-up stands already.
    expect(busy!.to.minute - MORNING).toBeCloseTo(minutesFor(80), 6);
    expect(day.plan.runs[0]!.setUpFrom).toEqual(busy!.to);
    // Only the stop is moved between the two lengths.
    expect(day.plan.runs[0]!.setUpMinutes).toBe(BENCH.changeMinutes.base + BENCH.changeMinutes.length);
    expect(day.sheets[0]!.setUpMinutes).toBe(day.plan.runs[0]!.setUpMinutes);
    const [bench] = day.plan.machines;
    expect(bench!.stringsToday).toBe(80 + 60);
  });

  it('ends what runs, then what was paused, then what nobody began', () => {
    const day = dayOf(
      [],
      [
        run({ id: 'planned', state: 'planned', spec: LONG, spoolIds: [] }),
        run({ id: 'paused', state: 'paused', spec: LONG }),
        run({ id: 'running' }),
      ],
    );
    const inTime = [...day.underWay!].sort((a, b) => a.to.minute - b.to.minute);
    expect(inTime.map(({ runId }) => runId)).toEqual(['running', 'paused', 'planned']);
    expect(inTime[1]!.from).toEqual(inTime[0]!.to);
  });

  it('goes on with it until the plan’s day begins, and ends what is left then', () => {
    // Of a bench day of 480 minutes from half past seven, an hour is left at half past two.
    const now = { date: MONDAY, minute: MORNING + 420 };
    const tuesday = date('2026-03-03');
    const over = dayOf([], [run({ quantity: 100 })], { on: tuesday, now });
    expect(minutesFor(100)).toBeLessThan(60);
    expect(over.underWay![0]!.to).toEqual({ date: tuesday, minute: MORNING });
    const left = dayOf([], [run({ quantity: 300 })], { on: tuesday, now });
    expect(left.underWay![0]!.to.minute - MORNING).toBeCloseTo(minutesFor(300) - 60, 6);
  });

  it('is expected to end it counted from now, where the day has begun', () => {
    const now = { date: MONDAY, minute: MORNING + 90 };
    const [busy] = dayOf([], [run({ quantity: 60 })], { now }).underWay!;
    expect(busy!.to.minute).toBeCloseTo(MORNING + 90 + minutesFor(60), 6);
  });

  it('holds no minutes for a recipe that it could not make any more, yet its strings come', () => {
    const shop = { ...SHOP, machines: [{ ...BENCH, gaugesThou: { least: 15, most: 20 } }] };
    const day = dayOf([order(SHORT, 100)], [run()], { shop });
    expect(day.underWay![0]!.to.minute).toBe(MORNING);
    expect(day.faults).toEqual([]);
  });
});

describe('wire of a run under way', () => {
  /** Wire that so many strings take, kg, as the bench is told to pull it. */
  const kgFor = (strings: number): number =>
    dayOf([order(SHORT, strings)], []).wirePulls.reduce((sum, { neededKg }) => sum + neededKg, 0);
  const withKg = (netKg: number): Shop => ({ ...SHOP, spools: [{ ...SHOP.spools[0]!, netKg }] });
  /** Dialling in may scrap a few strings: room for those of a run and of a lot. */
  const SOME = 12;

  it('is not there for others: an order that would need it is told so', () => {
    const shop = withKg(kgFor(120 + 60) - kgFor(SOME));
    expect(dayOf([order(LONG, 60)], [], { shop }).faults).toEqual([]);
    const day = dayOf([order(LONG, 60)], [run()], { shop });
    expect(day.faults).toMatchObject([
      { code: 'order.wire-missing', facts: { wireId: PLAIN_12.coreWireId } },
    ]);
  });

  it('is that of all its strings until it is closed, since wire leaves the books only then', () => {
    const shop = withKg(kgFor(120 + 60) - kgFor(SOME));
    expect(dayOf([order(LONG, 60)], [run({ made: 110 })], { shop }).faults).toHaveLength(1);
  });

  it('is less what spools gave that were taken off before', () => {
    const shop = withKg(kgFor(60 + 72));
    const taken = run({ takenKg: { [PLAIN_12.coreWireId]: kgFor(120) } });
    expect(dayOf([order(LONG, 60)], [run()], { shop }).faults).toHaveLength(1);
    expect(dayOf([order(LONG, 60)], [taken], { shop }).faults).toEqual([]);
  });

  it('is not carried to another machine: what a pull leaves on a spool is what stays on it after both', () => {
    const day = dayOf([order(LONG, 60)], [run()]);
    const [pull] = day.wirePulls;
    const left = pull!.spools[0]!.leavesKg;
    const dialledIn =
      BENCH.changeScrap.base + BENCH.changeScrap.core + BENCH.changeScrap.wrap + BENCH.changeScrap.alloy;
    expect(left).toBeCloseTo(5 - kgFor(120) * (1 + dialledIn / 120) - pull!.neededKg, 9);
  });
});

it('a day without records of runs says nothing of them', () => {
  const day = workOutResolved({ shop: SHOP, date: MONDAY, orders: [], faults: [] });
  expect(day).not.toHaveProperty('underWay');
});

it('strings that wait to be let onto the shelf are packed on the day, and not made again', () => {
  const waiting = { spec: SHORT, count: 50, lot: 'lot 3', binId: 'A1', reorderLevel: 0 };
  const day = workOutResolved({
    shop: SHOP,
    date: MONDAY,
    orders: [order(SHORT, 40)],
    faults: [],
    inCheck: [waiting],
  });
  expect(day.lots).toEqual([]);
  expect(day.orders[0]!.readyAt).toEqual({ date: MONDAY, lotIds: [] });
  expect(day.roll.stops).toMatchObject([{ binId: 'A1', picks: [{ count: 40 }] }]);
});

const retired: Recipe = { ...PLAIN_12, id: 'plain 12 of old' };
it('a run goes on by the recipe that it was set up by, though the shop has it no more', () => {
  const day = dayOf([order(SHORT, 100)], [run({ recipe: retired })]);
  expect(day.lots).toEqual([]);
  expect(day.underWay![0]!.to.minute).toBeGreaterThan(MORNING);
});

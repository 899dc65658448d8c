import { describe, expect, it } from 'vitest';
import { demoWorkshop } from '../../demo/index.js';
import { changeOver } from '../../src/core/winding/index.js';
import {
  type Clock,
  closeRun,
  judgeTrialString,
  newId,
  perform,
  planRun,
  recordMeasurements,
  recordTally,
  recordTrialString,
  saveSettings,
  setUpsSeen,
  shopView,
  startRun,
  voidTrialString,
} from '../../src/workshop/index.js';
import { SERVO } from '../fixtures/winders.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

describe.each(engines())('what set-ups teach, on $name', (engine) => {
  async function open() {
    const shop = await SmallShop.open(engine);
    const { name, invented, rules, rates } = demoWorkshop();
    const ruled = { ...rules, dayStartsAtMinute: 420, workingDays: [...rules.workingDays] };
    await shop.done(saveSettings, { id: newId(), body: { name, invented, rules: ruled, rates } });
    const core = await shop.spool(shop.wires.core, 2, 'core one');
    const wrap = await shop.spool(shop.wires.wrap, 2, 'wrap one');
    let hour = Date.parse('2027-03-01T08:00:00.000Z');
    let lengthM = 1;
    /** A run after a change of the length: so many trial strings are scrap, the last is good, and it takes so long. */
    const run = async ({ scrap = 3, minutes = 30 } = {}) => {
      hour += 3_600_000 * 2;
      lengthM = lengthM === 1 ? 0.9 : 1;
      let at = hour;
      const clock: Clock = { now: () => new Date(at).toISOString() };
      const done: SmallShop['done'] = async (useCase, input) => {
        const answer = await perform(shop.store, useCase, {
          actor: shop.as('owner'),
          clock,
          newId,
          input,
        });
        if (!answer.ok) throw new Error(JSON.stringify(answer.fault));
        return answer.value;
      };
      const runId = newId();
      const { servo: machineId } = shop.machines;
      const spec = { ...W36, lengthM };
      const { bronze36: recipeId } = shop.recipes;
      await done(planRun, { id: runId, name: runId, recipeId, machineId, spec, quantity: 20 });
      await done(startRun, { runId, expectedVersion: 1, spoolIds: [wrap, core] });
      const tried: string[] = [];
      for (let number = 1; number <= scrap + 1; number++) {
        at = hour + (minutes * 60_000 * number) / (scrap + 2);
        const id = newId();
        await done(recordTrialString, { id, runId, number, position: 1 });
        const verdict = number > scrap ? 'good' : 'scrap';
        await done(judgeTrialString, { trialStringId: id, runId, verdict });
        tried.push(id);
      }
      at = hour + minutes * 60_000;
      const reading = { id: newId(), runId, trialStringId: tried.at(-1)!, instrument: 'micrometer' };
      await done(recordMeasurements, { rows: [{ ...reading, quantity: 'diameter', value: 0.0009 }] });
      at += 60_000;
      const of = { runId, station: 'winder' } as const;
      await done(recordTally, { id: newId(), ...of, outcome: 'good', reason: '', count: 18 });
      await done(recordTally, { id: newId(), ...of, outcome: 'scrap', reason: 'gap', count: 2 });
      const close = () =>
        done(closeRun, {
          runId,
          expectedVersion: 2,
          lotId: newId(),
          lotName: runId,
          binId: lengthM === 1 ? shop.bins.first : shop.bins.second,
          good: 18,
          scrap: [{ reason: 'gap', count: 2 }],
          spools: [],
        });
      return { tried, close };
    };
    const seen = () => shop.store.read(setUpsSeen);
    const servo = async () =>
      (await shop.store.read(shopView)).machines.find(({ name }) => name === SERVO.name)!;
    return { shop, run, seen, servo };
  }

  it('comes from what was tried, judged, read and counted; the first run of a machine, of which nobody knows, is left out', async () => {
    const { shop, run, seen, servo } = await open();
    const figure = SERVO.changeScrap.base;
    for (let count = 0; count < 5; count++) await (await run()).close();
    const four = await seen();
    expect(four.kinds).toMatchObject([{ kind: 'length', setUps: 4, isUsed: false }]);
    expect(await servo()).not.toHaveProperty('changeLearned');
    await (await run()).close();
    const { kinds, scrap } = await seen();
    expect(kinds).toHaveLength(1);
    const [learned] = kinds;
    expect(learned).toMatchObject({
      machineId: shop.machines.servo,
      kind: 'length',
      setUps: 5,
      isUsed: true,
    });
    expect(learned!.scrap.figure).toBe(figure);
    expect(Math.sign(learned!.scrap.learned - figure)).toBe(Math.sign(3 - figure));
    expect(Math.abs(learned!.scrap.learned - 3)).toBeLessThan(Math.abs(figure - 3));
    const { base, length } = SERVO.changeMinutes;
    expect(learned!.minutes!.figure).toBe(base + length);
    expect(Math.abs(learned!.minutes!.learned - 30)).toBeLessThan(Math.abs(base + length - 30));
    // By cause: what was thrown away while dialling in, and what the run itself lost.
    expect(scrap).toEqual([
      {
        machineId: shop.machines.servo,
        kind: 'length',
        reason: 'dialling in',
        strings: 15,
        inSetUp: 15,
      },
      { machineId: shop.machines.servo, kind: 'length', reason: 'gap', strings: 10, inSetUp: 0 },
    ]);

    const machine = await servo();
    const traits = { coreWireId: 'c', wrapWireIds: ['w'], wrapAlloy: 'phosphor-bronze', lengthM: 1 };
    const change = changeOver(machine, traits, { ...traits, lengthM: 0.9 });
    expect(change.learnedFrom).toBe(5);
    expect(change.scrapStrings).toBeCloseTo(learned!.scrap.learned, 9);
    expect(change.minutes).toBeCloseTo(learned!.minutes!.learned, 9);
  });

  it('has nothing of strings that were taken back, nor of a run that still goes on', async () => {
    const { shop, run, seen } = await open();
    await (await run()).close();
    const { tried, close } = await run();
    expect((await seen()).kinds).toEqual([]);
    for (const trialStringId of tried.slice(0, 2))
      await shop.done(voidTrialString, { id: newId(), trialStringId, reason: 'a slip' });
    await close();
    const { scrap } = await seen();
    expect(scrap.find(({ reason }) => reason === 'dialling in')).toMatchObject({ strings: 1, inSetUp: 1 });
  });

  it('leaves out how long it took where a night or a pause may lie between', async () => {
    const { run, seen } = await open();
    await (await run()).close();
    await (await run({ minutes: 241 })).close();
    const [learned] = (await seen()).kinds;
    expect(learned).toMatchObject({ setUps: 1 });
    expect(learned).not.toHaveProperty('minutes');
  });
});

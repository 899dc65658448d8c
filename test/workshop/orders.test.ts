import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, it } from 'vitest';
import type { BodyOf, InputOf, StoredRecord } from '../../src/contract/index.js';
import type { SetUpNow } from '../../src/core/day/index.js';
import { keysOf, type PlayerRequest, requestAnswerer } from '../../src/core/orders/index.js';
import type { ReadTransaction } from '../../src/store/index.js';
import {
  abandonRun,
  answerComplaint,
  cancelOrder,
  cardOfRequest,
  changeSpool,
  closeComplaint,
  closeRun,
  DEMO_DATE,
  dayOfShop,
  declineRequest,
  demoDay,
  demoFile,
  demoShop,
  freezePlan,
  importOrders,
  newId,
  openOrders,
  openPacks,
  orderRequest,
  pickString,
  planRun,
  receiveRequest,
  receiveSpool,
  recordTally,
  registerComplaint,
  releaseLot,
  reopenComplaint,
  resolveRequest,
  runsUnderWay,
  saveOrder,
  sealPack,
  shipOrder,
  shopBook,
  shopView,
  startRun,
  stepRecipe,
  stringsInCheck,
  unpickString,
  voidPack,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { cornerShop, type Desk, deskOf, expectLedgerTrue } from './desk.js';

const SET = 'Meadow six, 10';
const STANDARD = [64, 59, 55, 50, 45, 40].map((midi) => ({ midi, cents: 0 }));

const ENGINES = engines();

for (const engine of ENGINES) {
  const shopIn = async (): Promise<Desk> => deskOf(await engine.open(), await cornerShop());
  let shared: Promise<Desk> | undefined;
  /** One shop serves all that does not look at everything in it. */
  const sharedShop = (): Promise<Desk> => {
    shared ??= shopIn();
    return shared;
  };

  describe(`a player’s request in ${engine.name}`, () => {
    let desk: Desk;
    beforeAll(async () => {
      desk = await sharedShop();
    });

    it('is answered with strings that the shop can make, and their whole pull', async () => {
      const asked = await desk.must(resolveRequest, letter());
      expect(asked.state).toBe('answered');
      const { strings, totalTensionN } = asked.body.answer!;
      expect(strings.map(({ spec }) => spec.kind)).toEqual([
        'plain',
        'plain',
        'plain',
        'wound',
        'wound',
        'wound',
      ]);
      // Six strings at 75 N each, met as far as gauges allow.
      expect(Math.abs(totalTensionN / 450 - 1)).toBeLessThan(0.05);
      const recipes = await desk.store.read((tx) => tx.records.all('recipe'));
      for (const { recipeId } of strings) expect(recipes.map(({ id }) => id)).toContain(recipeId);
    });

    it('may wait before it is answered', async () => {
      const { id, ...asked } = letter();
      const waiting = await desk.must(receiveRequest, { id, ...asked });
      expect(waiting).toMatchObject({ state: 'waiting', body: asked });
      expect(waiting.body).not.toHaveProperty('answer');
      const order = { requestId: id, expectedVersion: 1, orderId: newId(), number: 'Q-0', due: '2027-03-20' };
      expect(await desk.refused(orderRequest, order)).toMatchObject({
        code: 'lifecycle.step-refused',
        state: 'waiting',
      });
      const answered = await desk.must(resolveRequest, { id, expectedVersion: 1, ...asked });
      expect(answered).toMatchObject({ state: 'answered', version: 2 });
      expect(answered.body.answer!.strings).toHaveLength(6);
    });

    it('is answered with the set that was chosen of the best, its figures and warnings as they were told', async () => {
      const { request, ...rest } = letter();
      const shop = await desk.store.read(shopView);
      const answer = requestAnswerer(shop)({ request, quantity: rest.quantity, count: 3 });
      if (!answer.ok) throw new Error('the shop can answer');
      const third = answer.value.sets[2]!;
      const chosen = keysOf(third, answer.value);
      const asked = await desk.must(resolveRequest, { ...rest, request, chosen: [...chosen] });
      const { strings, figures, totalTensionN } = asked.body.answer!;
      expect(strings.map(({ stringKey }) => stringKey)).toEqual(chosen);
      expect(figures.map(({ tensionN }) => tensionN)).toEqual(third.strings.map(({ tensionN }) => tensionN));
      expect(totalTensionN).toBeCloseTo(
        figures.reduce((sum, { tensionN }) => sum + tensionN, 0),
        9,
      );
      const card = await desk.store.read((tx) => cardOfRequest(tx, asked.id));
      expect(card).toMatchObject({ request: asked.body, shop: { name: shop.name } });
    });

    it('is not answered with a set that is none of the best', async () => {
      const [first, ...others] = (await desk.must(resolveRequest, letter())).body.answer!.strings;
      const chosen = [first!.stringKey.replace(/^\S+/, '17'), ...others.map(({ stringKey }) => stringKey)];
      expect(await desk.refused(resolveRequest, { ...letter(), chosen })).toEqual({
        code: 'request.set-not-offered',
      });
    });

    it('can be answered anew, as long as nobody ordered it', async () => {
      const asked = await desk.must(resolveRequest, letter());
      const firmer = { ...letter(90), id: asked.id, expectedVersion: asked.version };
      const again = await desk.must(resolveRequest, firmer);
      expect(again.version).toBe(2);
      expect(again.body.answer!.totalTensionN).toBeGreaterThan(asked.body.answer!.totalTensionN * 1.1);
      expect(await desk.refused(resolveRequest, firmer)).toMatchObject({ code: 'stale-version' });
    });

    it('that no string could bear is refused with the fault of the cell that would mend it', async () => {
      const { request, ...rest } = letter();
      const tuning = { ...request.tuning, pitches: [{ midi: 88, cents: 0 }, ...STANDARD.slice(1)] };
      const fault = await desk.refused(resolveRequest, { ...rest, request: { ...request, tuning } });
      expect(fault).toMatchObject({
        code: 'request.unanswerable',
        faults: [{ code: 'order.pitch-unreachable', facts: { position: 1 } }],
      });
    });

    it('becomes an order of the very strings that the player was promised, once', async () => {
      const asked = await desk.must(resolveRequest, letter());
      const order = { requestId: asked.id, orderId: newId(), number: 'Q-1', due: '2027-03-20' };
      const made = await desk.must(orderRequest, { ...order, expectedVersion: 1 });
      expect(made.request).toMatchObject({ state: 'ordered', body: { orderId: order.orderId } });
      expect(made.order).toMatchObject({
        state: 'received',
        body: { number: 'Q-1', player: 'Jorla Barleycroft' },
      });
      expect(made.order.body.lines).toEqual([
        {
          lineNumber: 1,
          kind: 'request',
          setName: asked.body.answer!.setName,
          quantity: 2,
          strings: asked.body.answer!.strings,
        },
      ]);
      expect(
        await desk.refused(orderRequest, { ...order, orderId: newId(), expectedVersion: 2 }),
      ).toMatchObject({ code: 'lifecycle.step-refused', state: 'ordered' });
    });

    it('is not ordered under a number that is taken, nor for a day that is none', async () => {
      const asked = await desk.must(resolveRequest, letter());
      const order = { requestId: asked.id, expectedVersion: 1, orderId: newId() };
      expect(await desk.refused(orderRequest, { ...order, number: 'Q-1', due: '2027-03-20' })).toMatchObject({
        code: 'taken',
        kind: 'order',
        key: 'number',
      });
      expect(await desk.refused(orderRequest, { ...order, number: 'Q-2', due: '2027-02-30' })).toEqual({
        code: 'date.impossible',
        read: '2027-02-30',
      });
    });

    it('can be declined, and then is neither answered nor ordered', async () => {
      const asked = await desk.must(resolveRequest, letter());
      const declined = await desk.must(declineRequest, {
        requestId: asked.id,
        expectedVersion: 1,
        reason: 'left-handed harp',
      });
      expect(declined.state).toBe('declined');
      expect(
        await desk.refused(resolveRequest, { ...letter(), id: asked.id, expectedVersion: 2 }),
      ).toMatchObject({ code: 'lifecycle.step-refused', allowed: [] });
    });

    it('is not ordered by a recipe that was retired after the answer', async () => {
      const asked = await desk.must(resolveRequest, letter());
      const { recipeId } = asked.body.answer!.strings[5]!;
      const recipe = await desk.store.read((tx) => tx.records.get('recipe', recipeId));
      const step = { id: recipeId, expectedVersion: recipe!.version, note: '' };
      const retired = await desk.must(stepRecipe, { ...step, step: 'retire' });
      expect(
        await desk.refused(orderRequest, {
          requestId: asked.id,
          expectedVersion: 1,
          orderId: newId(),
          number: 'Q-3',
          due: '2027-03-20',
        }),
      ).toMatchObject({ code: 'request.recipe-retired', position: 6 });
      await desk.must(stepRecipe, {
        id: recipeId,
        expectedVersion: retired.version,
        step: 'revive',
        note: '',
      });
    });
  });

  describe(`an order by hand in ${engine.name}`, () => {
    let desk: Desk;
    beforeAll(async () => {
      desk = await sharedShop();
    });

    it('holds the strings of each line, each with its recipe', async () => {
      const order = await desk.must(
        saveOrder,
        byHand('H-1', [
          { quantity: 3, wanted: { kind: 'stock', setName: 'meadow six, 10' } },
          {
            quantity: 1,
            wanted: {
              kind: 'custom',
              material: 'nickel-plated-steel',
              end: 'ball',
              strings: [10, 14, 18, 28, 38, 50].map((gaugeThou) => ({ gaugeThou })),
            },
          },
        ]),
      );
      expect(
        order.body.lines.map(({ lineNumber, kind, setName, quantity }) => [
          lineNumber,
          kind,
          setName,
          quantity,
        ]),
      ).toEqual([
        [1, 'stock', SET, 3],
        [2, 'custom', '10-14-18-28-38-50, nickel-plated steel', 1],
      ]);
      expect(order.body.lines[1]!.strings.map(({ stringKey }) => stringKey)).toContain(
        '50 wound nickel-plated-steel ball 1000 mm',
      );
    });

    it('is refused whole where a line names what the shop does not have', async () => {
      const fault = await desk.refused(
        saveOrder,
        byHand('H-2', [stock(1), { quantity: 1, wanted: { kind: 'stock', setName: 'Medow six 10' } }]),
      );
      expect(fault).toMatchObject({
        code: 'order.lines-unresolved',
        number: 'H-2',
        faults: [{ line: 2, code: 'order.set-unknown', facts: { nearest: expect.arrayContaining([SET]) } }],
      });
    });

    it('can be changed until its first pack is opened', async () => {
      const input = byHand('H-3', [stock(1)]);
      const order = await desk.must(saveOrder, input);
      const changed = await desk.must(saveOrder, { ...input, expectedVersion: 1, note: 'gift' });
      expect(changed).toMatchObject({ version: 2, body: { note: 'gift' } });
      await desk.must(openPacks, { orderId: order.id, expectedVersion: 2 });
      expect(await desk.refused(saveOrder, { ...input, expectedVersion: 3 })).toMatchObject({
        code: 'order.under-way',
        state: 'packing',
      });
    });

    it('is cancelled with its empty packs, not while one of them holds a string', async () => {
      const order = await desk.must(saveOrder, byHand('H-4', [stock(1)]));
      const { packs } = await desk.must(openPacks, { orderId: order.id, expectedVersion: 1 });
      const [pack] = packs;
      const lies = await desk.store.read((tx) =>
        tx.ledger.balances({ accountPrefix: 'bin/', item: `string/${pack!.body.wanted[0]!.stringKey}` }),
      );
      const place = { lotId: lies[0]!.lot, binId: lies[0]!.account.slice(4) };
      await desk.must(pickString, { packId: pack!.id, expectedVersion: 1, position: 1, ...place });
      const cancel = { orderId: order.id, expectedVersion: 2, reason: 'changed their mind' };
      expect(await desk.refused(cancelOrder, cancel)).toMatchObject({
        code: 'order.packs-hold-strings',
        packs: [{ packId: pack!.id, strings: 1 }],
      });
      await desk.must(unpickString, { packId: pack!.id, expectedVersion: 2, position: 1 });
      expect(await desk.must(cancelOrder, cancel)).toMatchObject({ state: 'cancelled' });
      const left = await desk.store.read((tx) => tx.records.get('pack', pack!.id));
      expect(left!.state).toBe('void');
      expect(await desk.refused(cancelOrder, { ...cancel, expectedVersion: 3 })).toMatchObject({
        code: 'lifecycle.step-refused',
        allowed: [],
      });
    });
  });

  describe(`a file of orders taken into ${engine.name}`, () => {
    const CSV = [
      'order,player,quantity,due,set,gauges,material,note',
      `F-1,Perrin Oddlestone,2,2027-03-10,"${SET}",,,for the band`,
      `F-1,Perrin Oddlestone,1,2027-03-05,,10-14-18-28-38-50,nickel-plated steel,`,
      `F-2,Deldra Thistlemere,1,2027-03-08,"Meadow six, 10 and deep",,,`,
    ].join('\n');
    const file = (csv: string, commit = true) => ({ source: 'web shop', csv, commit });
    const outcomes = (answer: { preview: { orders: readonly { number: string; outcome: string }[] } }) =>
      answer.preview.orders.map(({ number, outcome }) => [number, outcome]);
    let desk: Desk;
    beforeAll(async () => {
      desk = await sharedShop();
    });

    it('is shown before anything is written', async () => {
      const shown = await desk.must(importOrders, file(CSV, false));
      expect(shown.committed).toBe(false);
      expect(outcomes(shown)).toEqual([
        ['F-1', 'new'],
        ['F-2', 'new'],
      ]);
      expect(shown.preview.orders[0]).toMatchObject({
        fileLines: [2, 3],
        lines: [
          { setName: SET, quantity: 2 },
          { setName: '10-14-18-28-38-50, nickel-plated steel', quantity: 1 },
        ],
      });
      expect(await ordersKept(desk, 'F-')).toEqual([]);
    });

    it('gathers the lines of an order under its number, due when the first of them is', async () => {
      const done = await desk.must(importOrders, file(CSV));
      expect(done.committed).toBe(true);
      const kept = await ordersKept(desk, 'F-');
      expect(
        kept.map(({ state, body }) => [state, body.number, body.due, body.note, body.lines.length]),
      ).toEqual([
        ['received', 'F-1', '2027-03-05', 'for the band', 2],
        ['received', 'F-2', '2027-03-08', '', 1],
      ]);
    });

    it('changes nothing when it comes again, also with its columns in another order', async () => {
      const before = await ordersKept(desk, 'F-');
      const again = await desk.must(importOrders, file(CSV));
      expect(outcomes(again)).toEqual([
        ['F-1', 'same'],
        ['F-2', 'same'],
      ]);
      const turned = CSV.split('\n')
        .map((line) =>
          line
            .split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/)
            .reverse()
            .join(';'),
        )
        .join('\r\n');
      expect(outcomes(await desk.must(importOrders, file(turned)))).toEqual([
        ['F-1', 'same'],
        ['F-2', 'same'],
      ]);
      expect(await ordersKept(desk, 'F-')).toEqual(before);
    });

    it('writes the next version of an order whose rows changed, and leaves the others alone', async () => {
      const changed = CSV.replace('Thistlemere,1,', 'Thistlemere,4,');
      const shown = await desk.must(importOrders, file(changed, false));
      expect(shown.preview.orders[1]).toMatchObject({
        outcome: 'changed',
        before: [{ setName: 'Meadow six, 10 and deep', quantity: 1 }],
        lines: [{ setName: 'Meadow six, 10 and deep', quantity: 4 }],
      });
      await desk.must(importOrders, file(changed));
      const kept = await ordersKept(desk, 'F-');
      expect(kept.map(({ version, body }) => [body.number, version, body.lines[0]!.quantity])).toEqual([
        ['F-1', 1, 2],
        ['F-2', 2, 4],
      ]);
    });

    it('is still the same after a person changed an order that it brought: the person has the last word', async () => {
      const [order] = await desk.store.read((tx) => tx.records.all('order', { number: 'F-2' }));
      const { player, due } = order!.body;
      const lines = [{ quantity: 5, wanted: { kind: 'stock' as const, setName: SET } }];
      const edited = { id: order!.id, number: 'F-2', player, due, note: 'five after all', lines };
      await desk.must(saveOrder, { ...edited, expectedVersion: order!.version });
      const changed = CSV.replace('Thistlemere,1,', 'Thistlemere,4,');
      expect(outcomes(await desk.must(importOrders, file(changed)))).toContainEqual(['F-2', 'same']);
      const [kept] = await desk.store.read((tx) => tx.records.all('order', { number: 'F-2' }));
      expect(kept!.body).toMatchObject({ note: 'five after all', lines: [{ quantity: 5 }] });
    });

    it('with one fault commits nothing at all, and names line, column and cell', async () => {
      const before = await ordersKept(desk, 'F-');
      const faulty = [
        'Order;Player;Qty;Due date;Set',
        `F-8;Brinek Marrowmere;1;2027-03-09;${SET}`,
        'F-9;Corris Underholt;1;2027-03-09;Medow six 10',
      ].join('\n');
      const shown = await desk.must(importOrders, file(faulty, false));
      expect(outcomes(shown)).toEqual([
        ['F-8', 'new'],
        ['F-9', 'fault'],
      ]);
      const fault = {
        line: 3,
        column: 'Set',
        orderId: 'F-9',
        read: 'Medow six 10',
        code: 'order.set-unknown',
      };
      expect(shown.preview.faults).toEqual([expect.objectContaining(fault)]);
      expect(await desk.refused(importOrders, file(faulty))).toMatchObject({
        code: 'import.has-faults',
        preview: { faults: [fault] },
      });
      expect(await ordersKept(desk, 'F-')).toEqual(before);
    });

    it('does not overwrite an order of another source, one that is being packed, or one for two players', async () => {
      await desk.must(saveOrder, byHand('F-5', [stock(1)]));
      const mixed = [
        'order,player,quantity,due,set',
        `F-5,Halla Winnowbeck,1,2027-03-09,"${SET}"`,
        `F-6,Halla Winnowbeck,1,2027-03-09,"${SET}"`,
        `F-6,Cormin Coppermere,1,2027-03-09,"${SET}"`,
      ].join('\n');
      const [order] = await desk.store.read((tx) => tx.records.all('order', { number: 'F-1' }));
      await desk.must(openPacks, { orderId: order!.id, expectedVersion: order!.version });
      const late = CSV.replace('Oddlestone,2,', 'Oddlestone,3,');
      const shown = [
        await desk.must(importOrders, file(mixed, false)),
        await desk.must(importOrders, file(late, false)),
      ];
      expect(shown.flatMap(({ preview }) => preview.faults.map(({ line, code }) => [line, code]))).toEqual([
        [2, 'import.number-taken'],
        [4, 'import.players-differ'],
        [2, 'import.order-under-way'],
      ]);
      expect(outcomes(await desk.must(importOrders, file(CSV, false)))[0]).toEqual(['F-1', 'same']);
    });

    it('remembers by its source which heading means what', async () => {
      const odd = (number: string) =>
        ['Ref,Whose,How many,Wanted by,What', `${number},Delris Marrowley,1,2027-03-12,"${SET}"`].join('\n');
      const mapping = { order: 'Ref', player: 'Whose', set: 'What' };
      const told = { source: 'club', commit: true };
      const first = await desk.must(importOrders, { ...told, csv: odd('C-1'), mapping });
      expect(first.preview.columns).toMatchObject({ ...mapping, quantity: 'How many', due: 'Wanted by' });
      const second = await desk.must(importOrders, { ...told, csv: odd('C-2') });
      expect(second.preview.columns).toEqual(first.preview.columns);
      expect(outcomes(second)).toEqual([['C-2', 'new']]);
      expect(
        (await desk.must(importOrders, { ...told, source: 'stranger', csv: odd('C-3'), commit: false }))
          .preview.faults,
      ).not.toEqual([]);
    });

    it('refuses a mapping to a heading that the file does not have, and a file that is no table of orders', async () => {
      const mapping = { player: 'Patron' };
      expect(await desk.refused(importOrders, { ...file(CSV), mapping })).toMatchObject({
        code: 'import.headings-missing',
        missing: ['Patron'],
      });
      expect(await desk.refused(importOrders, file('a,b\n1,2'))).toMatchObject({
        code: 'file.no-known-headings',
      });
      expect(await desk.refused(importOrders, file('\n'))).toMatchObject({ code: 'file.empty' });
    });

    it('shows a row that names no order, though it belongs to none', async () => {
      const shown = await desk.must(importOrders, {
        ...file(`order,player,quantity,due,set\n,Halla Winnowbeck,1,2027-03-09,"${SET}"`, false),
      });
      expect(shown.preview.orders).toEqual([]);
      expect(shown.preview.faults).toMatchObject([{ line: 2, column: 'order', code: 'order.cell-empty' }]);
    });
  });

  describe(`a plan in ${engine.name}`, () => {
    const DAY = '2027-03-01';
    let desk: Desk;
    beforeAll(async () => {
      desk = await shopIn();
      await desk.must(saveOrder, byHand('L-1', [stock(40)], '2027-03-04'));
    });

    it('makes what orders and bins want, and its runs of the day stand planned on their machines', async () => {
      const frozen = await desk.must(freezePlan, { id: newId(), date: DAY, note: 'first' });
      expect(frozen.plan).toMatchObject({ state: 'in-force', body: { date: DAY, note: 'first' } });
      expect(frozen.runs.length).toBeGreaterThan(0);
      const today = frozen.plan.body.runs.filter(({ setUpFrom }) => setUpFrom.date === DAY);
      expect(frozen.runs.map(({ id }) => id)).toEqual(today.map(({ runId }) => runId));
      for (const run of frozen.runs)
        expect(run).toMatchObject({ state: 'planned', body: { planId: frozen.plan.id } });
      const names = frozen.runs.map(({ body }) => body.name);
      expect(new Set(names).size).toBe(names.length);
      const ofOrder = frozen.plan.body.runs.filter(({ orderIds }) => orderIds.length > 0);
      expect(ofOrder.map(({ stringKey }) => stringKey)).toContain(
        '46 wound nickel-plated-steel ball 1000 mm',
      );
    });

    it('takes the place of the day’s earlier plan, whose runs are given up unless they were begun', async () => {
      const [first] = await desk.store.read((tx) => tx.records.all('plan', { state: 'in-force' }));
      const before = await runsOf(desk, first!);
      const begun = before[0]!;
      await desk.must(startRun, {
        runId: begun.id,
        expectedVersion: 1,
        spoolIds: await spoolsFor(desk, begun),
      });
      const frozen = await desk.must(freezePlan, { id: newId(), date: DAY });
      const plans = await desk.store.read((tx) => tx.records.all('plan', { date: DAY }));
      expect(plans.map(({ state }) => state)).toEqual(['superseded', 'in-force']);
      const after = await runsOf(desk, first!);
      expect(after.map(({ state }) => state)).toEqual(['running', ...before.slice(1).map(() => 'abandoned')]);
      const taken = new Set(before.map(({ body }) => body.name));
      for (const run of frozen.runs) expect(taken.has(run.body.name)).toBe(false);
      // What the run that was begun will give is not planned a second time.
      const planned = (plan: typeof first, key: string): number =>
        plan!.body.runs
          .filter(({ stringKey }) => stringKey === key)
          .reduce((sum, { quantity }) => sum + quantity, 0);
      const key = begun.body.stringKey;
      expect(planned(frozen.plan, key)).toBe(planned(first, key) - begun.body.quantity);
    });

    it('stands behind a run that goes on: its machine is busy and its strings come', async () => {
      const run = (await desk.store.read((tx) => tx.records.all('run', { state: 'running' })))[0]!;
      const { machineId, quantity, stringKey } = run.body;
      await desk.must(recordTally, {
        id: newId(),
        runId: run.id,
        station: 'winder',
        outcome: 'good',
        reason: '',
        count: 5,
      });
      const { day, book, standing } = await desk.store.read(async (tx) => {
        const { day, book } = await dayOfShop(tx, { date: DEMO_DATE });
        return { day, book, standing: await runsUnderWay(tx, book) };
      });
      expect(standing.find(({ id }) => id === run.id)).toMatchObject({ state: 'running', made: 5 });
      const busy = day.underWay!.find(({ runId }) => runId === run.id)!;
      expect(busy).toMatchObject({ quantity, stringKey });
      expect(book.records.machine.byName.get(busy.machineId)!.id).toBe(machineId);
      const after = day.plan.runs.filter((each) => each.machineId === busy.machineId);
      for (const { setUpFrom } of after)
        expect([setUpFrom.date, setUpFrom.minute] >= [busy.to.date, busy.to.minute]).toBe(true);
      // Planned for good, the plan keeps what it stands behind.
      const frozen = await desk.must(freezePlan, { id: newId(), date: DAY });
      expect(frozen.plan.body.underWay).toMatchObject([{ runId: run.id, machineId }]);
    });

    it('knows which spools a run has, and the wire that is off the books for it already', async () => {
      const [run] = await desk.store.read((tx) => tx.records.all('run', { state: 'running' }));
      const oldSpoolId = run!.body.spoolIds[0]!;
      const { spool, wire, heldMg } = await desk.store.read(async (tx) => {
        const spool = (await tx.records.get('spool', oldSpoolId))!;
        const wire = (await tx.records.get('wire', spool.body.wireId))!;
        const heldMg = await tx.ledger.balance(`spool/${spool.id}`, `wire/${wire.id}`);
        return { spool, wire, heldMg };
      });
      const newSpoolId = newId();
      await desk.must(receiveSpool, {
        id: newSpoolId,
        wireId: wire.id,
        name: 'fresh spool',
        lot: 'fresh lot',
        grossKg: 3,
        tareKg: 0,
      });
      const change = { runId: run!.id, expectedVersion: run!.version, oldSpoolId, newSpoolId };
      const oldGrossKg = (heldMg - 100_000) / 1e6 + spool.body.tareKg;
      expect(await desk.must(changeSpool, { ...change, oldGrossKg })).toMatchObject({ usedMg: 100_000 });
      const [known] = await desk.store.read(async (tx) => runsUnderWay(tx, await shopBook(tx)));
      expect(known!.takenKg[wire.body.name]).toBeCloseTo(0.1, 9);
      expect(known!.spoolIds).toContain('fresh spool');
      expect(known!.spoolIds).not.toContain(spool.body.name);
    });

    it('tells of orders that will be late, and leaves out those whose strings nobody can make any more', async () => {
      const recipes = await desk.store.read((tx) => tx.records.all('recipe'));
      const deep = recipes.find(({ body }) => body.name === 'nickel-plated-steel 54')!;
      await desk.must(saveOrder, byHand('L-2', [stock(1)], '2027-02-20'));
      await desk.must(
        saveOrder,
        byHand('L-3', [{ quantity: 1, wanted: { kind: 'stock', setName: 'Meadow six, 10 and deep' } }]),
      );
      await desk.must(stepRecipe, { id: deep.id, expectedVersion: deep.version, step: 'retire', note: '' });
      const frozen = await desk.must(freezePlan, { id: newId(), date: '2027-03-02' });
      expect(frozen.late).toContainEqual(expect.objectContaining({ number: 'L-2' }));
      expect(frozen.leftOut).toMatchObject([
        { number: 'L-3', code: 'order.recipe-missing', facts: { gaugeThou: 54, kind: 'wound' } },
      ]);
    });

    it('is refused for a day that is none', async () => {
      expect(await desk.refused(freezePlan, { id: newId(), date: '2027-02-29' })).toMatchObject({
        code: 'date.impossible',
      });
    });
  });

  describe(`what is still wanted and what is coming in ${engine.name}`, () => {
    let desk: Desk;
    beforeAll(async () => {
      desk = await shopIn();
    });

    it('counts sets without a pack whole, begun packs by what they lack, sealed ones not at all', async () => {
      const received = await desk.must(saveOrder, byHand('W-1', [stock(4)]));
      const { packs } = await desk.must(openPacks, { orderId: received.id, expectedVersion: 1 });
      await pickInto(desk, packs[0]!, [1, 2]);
      const full = await pickInto(desk, packs[1]!, [1, 2, 3, 4, 5, 6]);
      await desk.must(sealPack, { packId: full.id, expectedVersion: full.version });
      const lost = { packId: packs[2]!.id, expectedVersion: 1, reason: 'label torn' };
      await desk.must(voidPack, lost);
      const { orders, faults } = await desk.store.read(async (tx) => openOrders(tx, await shopBook(tx)));
      expect(faults).toEqual([]);
      expect(
        orders.map(({ line, quantity, strings }) => [line, quantity, strings.map((s) => s.position)]),
      ).toEqual([
        [1, 2, [1, 2, 3, 4, 5, 6]],
        [2, 1, [3, 4, 5, 6]],
      ]);
    });

    it('counts a run as coming, then its lot in check, and as lying on the shelf once that is released', async () => {
      const { runs } = await desk.must(freezePlan, { id: newId(), date: '2027-03-01' });
      const run = runs[0]!;
      const mine = (rows: readonly { readonly lot: string }[]) =>
        rows.filter(({ lot }) => lot === run.body.name);
      const look = () =>
        desk.store.read(async (tx) => ({
          underWay: (await runsUnderWay(tx, await shopBook(tx))).filter(({ id }) => id === run.id),
          inCheck: mine(await stringsInCheck(tx)),
          shelf: mine((await shopView(tx)).strings),
        }));
      const { spec, quantity } = run.body;
      const row = expect.objectContaining({ spec, count: quantity });
      expect(await look()).toEqual({
        underWay: [expect.objectContaining({ spec, quantity, state: 'planned', made: 0 })],
        inCheck: [],
        shelf: [],
      });
      const lot = await windToCheck(desk, run);
      expect(await look()).toEqual({ underWay: [], inCheck: [row], shelf: [] });
      await desk.must(releaseLot, { lotId: lot.id, expectedVersion: lot.version, reason: 'measured' });
      expect(await look()).toEqual({ underWay: [], inCheck: [], shelf: [row] });
    });

    it('a machine stays set up as it was last begun on, however many runs are planned and given up', async () => {
      const setUps = async () => (await desk.store.read(shopView)).setUpNow;
      const before = await setUps();
      expect(before.length).toBeGreaterThan(0);
      const { run, recipe, machine } = await desk.store.read((tx) => plannedOtherThan(tx, before));
      const { recipeId, machineId, spec } = run.body;
      for (let at = 0; at < 60; at++) {
        const spare = { id: newId(), name: `spare ${at}`, recipeId, machineId, spec, quantity: 12 };
        const { version } = await desk.must(planRun, spare);
        await desk.must(abandonRun, { runId: spare.id, expectedVersion: version, reason: 'for the test' });
      }
      expect(await setUps()).toEqual(before);
      await windToCheck(desk, run);
      expect(await setUps()).toContainEqual({ machineId: machine, recipeId: recipe, lengthM: spec.lengthM });
    });
  });

  describe(`a complaint in ${engine.name}`, () => {
    let desk: Desk;
    beforeAll(async () => {
      desk = await sharedShop();
    });

    it('is written down, answered, closed and opened again', async () => {
      const id = newId();
      const open = await desk.must(registerComplaint, {
        id,
        player: 'Emidra Winnowbeck',
        text: 'dull',
        faultCode: 'dull',
      });
      expect(open.state).toBe('open');
      const answered = await desk.must(answerComplaint, {
        complaintId: id,
        expectedVersion: 1,
        answer: 'a new set',
      });
      expect(answered).toMatchObject({ state: 'answered', body: { answer: 'a new set' } });
      expect((await desk.must(closeComplaint, { complaintId: id, expectedVersion: 2 })).state).toBe('closed');
      expect(
        await desk.refused(answerComplaint, { complaintId: id, expectedVersion: 3, answer: 'again' }),
      ).toMatchObject({ code: 'lifecycle.step-refused', allowed: ['reopen'] });
      const again = { complaintId: id, expectedVersion: 3, reason: 'it came back' };
      expect((await desk.must(reopenComplaint, again)).state).toBe('open');
    });

    it('leads to a pack and a lot that are there, the lot one of the pack’s', async () => {
      const words = {
        player: 'Emidra Winnowbeck',
        text: 'broke at the ball',
        faultCode: 'broke-at-ball' as const,
      };
      const nowhere = newId();
      expect(await desk.refused(registerComplaint, { id: newId(), ...words, packId: nowhere })).toEqual({
        code: 'record.missing',
        kind: 'pack',
        id: nowhere,
      });
      const order = await desk.must(saveOrder, byHand('K-1', [stock(1)]));
      const { packs } = await desk.must(openPacks, { orderId: order.id, expectedVersion: 1 });
      const [lot] = await desk.store.read((tx) => tx.records.all('string-lot'));
      const about = { packId: packs[0]!.id, lotId: lot!.id };
      expect(await desk.refused(registerComplaint, { id: newId(), ...words, ...about })).toMatchObject({
        code: 'complaint.lot-not-in-pack',
        ...about,
      });
    });
  });

  describe(`a whole day in ${engine.name}`, () => {
    it('goes from a file of orders to the post, and the ledger is true at its end', async () => {
      const desk = await shopIn();
      const csv = [
        'order,player,quantity,due,set',
        `D-1,Brila Winnowholt,12,2027-03-03,"${SET}"`,
        `D-2,Jormin Marrowcroft,2,2027-03-04,"${SET}"`,
      ].join('\n');
      await desk.must(importOrders, { source: 'web shop', csv, commit: true });
      const { runs } = await desk.must(freezePlan, { id: newId(), date: '2027-03-01' });
      expect(runs.length).toBeGreaterThan(0);
      for (const run of runs) await wind(desk, run);
      for (const { id, version } of await ordersKept(desk)) await packAndShip(desk, id, version);

      const orders = await ordersKept(desk);
      expect(orders.map(({ state }) => state)).toEqual(['shipped', 'shipped']);
      const { customer, bound } = await desk.store.read(async (tx) => ({
        customer: await tx.ledger.balances({ account: 'customer' }),
        bound: [
          ...(await tx.ledger.balances({ accountPrefix: 'order/' })),
          ...(await tx.ledger.balances({ accountPrefix: 'pack/' })),
        ],
      }));
      expect(sum(customer.filter(({ item }) => item === `set/${SET}`))).toBe(14);
      expect(sum(customer.filter(({ item }) => item.startsWith('string/')))).toBe(14 * 6);
      expect(bound).toEqual([]);
      await expectLedgerTrue(desk);
    });
  });
}

type Run = StoredRecord<BodyOf<'run'>>;
type Pack = StoredRecord<BodyOf<'pack'>>;
type Wanted = InputOf<typeof saveOrder.definition>['lines'][number];

const stock = (quantity: number): Wanted => ({ quantity, wanted: { kind: 'stock', setName: SET } });

const byHand = (number: string, lines: Wanted[], due = '2027-03-10') => ({
  id: newId(),
  number,
  player: 'Perrin Oddlestone',
  due,
  note: '',
  lines,
});

function letter(evenN = 75) {
  const request = {
    instrument: { name: 'electric 25.5', scaleLengthsM: Array.from({ length: 6 }, () => 0.6477) },
    tuning: { pitches: STANDARD, referenceHz: 440 },
    octavesAssumed: false,
    material: 'nickel-plated-steel',
    end: 'ball',
    wishes: { target: 'even', pullsN: [evenN], woundThird: false },
  } satisfies PlayerRequest;
  return { id: newId(), player: 'Jorla Barleycroft', letter: 'Even, please.', quantity: 2, request };
}

const ordersKept = async (desk: Desk, prefix = '') =>
  (await desk.store.read((tx) => tx.records.all('order'))).filter(({ body }) =>
    body.number.startsWith(prefix),
  );

/** A planned run that its machine would have to be set up anew for. */
async function plannedOtherThan(tx: ReadTransaction, setUps: readonly SetUpNow[]) {
  for (const run of await tx.records.all('run', { state: 'planned' })) {
    const recipe = (await tx.records.get('recipe', run.body.recipeId))!.body.name;
    const machine = (await tx.records.get('machine', run.body.machineId))!.body.name;
    if (setUps.some(({ machineId, recipeId }) => machineId === machine && recipeId !== recipe))
      return { run, recipe, machine };
  }
  throw new Error('every planned run keeps the set-up of its machine');
}

const runsOf = (desk: Desk, plan: StoredRecord<BodyOf<'plan'>>): Promise<Run[]> =>
  desk.store.read(async (tx) => {
    const runs: Run[] = [];
    for (const { runId } of plan.body.runs) if (runId) runs.push((await tx.records.get('run', runId))!);
    return runs;
  });

/** A spool on the shelf for each wire of the run's recipe: the fullest. */
const spoolsFor = (desk: Desk, run: Run): Promise<string[]> =>
  desk.store.read(async (tx) => {
    const recipe = await tx.records.get('recipe', run.body.recipeId);
    const spoolIds: string[] = [];
    for (const wireId of new Set([recipe!.body.coreWireId, ...recipe!.body.wrapWireIds])) {
      const free = new Set(
        (await tx.records.all('spool', { wireId, state: 'on-shelf' })).map(({ id }) => id),
      );
      const full = (await tx.ledger.balances({ accountPrefix: 'spool/', item: `wire/${wireId}` }))
        .filter(({ unit, lot }) => unit === 'mg' && free.has(lot))
        .sort((a, b) => b.quantity - a.quantity);
      spoolIds.push(full[0]!.lot);
    }
    return spoolIds;
  });

/** Starts a run and makes all that it is to make: a lot in check, in the bin of its kind. */
async function windToCheck(desk: Desk, run: Run): Promise<StoredRecord<BodyOf<'string-lot'>>> {
  const spoolIds = await spoolsFor(desk, run);
  const started = await desk.must(startRun, { runId: run.id, expectedVersion: run.version, spoolIds });
  const [bin] = await desk.store.read(async (tx) =>
    (await tx.records.all('bin')).filter(({ body }) => body.stringKey === run.body.stringKey),
  );
  const { lot } = await desk.must(closeRun, {
    runId: run.id,
    expectedVersion: started.version,
    lotId: newId(),
    lotName: run.body.name,
    binId: bin!.id,
    good: run.body.quantity,
    scrap: [{ reason: 'dialling in', count: 2 }],
    spools: [],
  });
  return lot!;
}

/** The same, and its strings are let onto the shelf. */
async function wind(desk: Desk, run: Run): Promise<void> {
  const lot = await windToCheck(desk, run);
  await desk.must(releaseLot, { lotId: lot.id, expectedVersion: lot.version, reason: 'measured' });
}

/** Picks strings for these positions from wherever they lie. */
async function pickInto(desk: Desk, pack: Pack, positions: readonly number[]): Promise<Pack> {
  let seen = pack;
  for (const { position, stringKey } of pack.body.wanted.filter((each) =>
    positions.includes(each.position),
  )) {
    const [lies] = await desk.store.read((tx) =>
      tx.ledger.balances({ accountPrefix: 'bin/', item: `string/${stringKey}` }),
    );
    const place = { lotId: lies!.lot, binId: lies!.account.slice('bin/'.length) };
    seen = await desk.must(pickString, {
      packId: pack.id,
      expectedVersion: seen.version,
      position,
      ...place,
    });
  }
  return seen;
}

async function packAndShip(desk: Desk, orderId: string, version: number): Promise<void> {
  const { order, packs } = await desk.must(openPacks, { orderId, expectedVersion: version });
  for (const pack of packs) {
    const { id, version: expectedVersion } = await pickInto(desk, pack, [1, 2, 3, 4, 5, 6]);
    await desk.must(sealPack, { packId: id, expectedVersion });
  }
  await desk.must(shipOrder, { orderId, expectedVersion: order.version, partial: false });
}

const sum = (rows: readonly { readonly quantity: number }[]): number =>
  rows.reduce((total, { quantity }) => total + quantity, 0);

describe('a plan of the whole invented workshop', () => {
  it('from its records is the plan from its files: the same strings, as many, on as many machines', async () => {
    const [engine] = ENGINES;
    const desk = await deskOf(await engine!.open(), await demoShop());
    const csv = await readFile(demoFile('orders.csv'), 'utf8');
    await desk.must(importOrders, { source: 'demo', csv, commit: true });
    const frozen = await desk.must(freezePlan, { id: newId(), date: DEMO_DATE });
    const day = await demoDay();
    const kept = new Map<string, number>();
    for (const { stringKey, quantity } of frozen.plan.body.runs)
      kept.set(stringKey, (kept.get(stringKey) ?? 0) + quantity);
    const filed = new Map<string, number>();
    for (const { stringKey, quantity } of day.lots)
      filed.set(stringKey, (filed.get(stringKey) ?? 0) + quantity);
    expect(Object.fromEntries(kept)).toEqual(Object.fromEntries(filed));
    expect(frozen.plan.body.runs.map(({ setUpFrom, to }) => [setUpFrom, to])).toEqual(
      day.plan.runs.map(({ setUpFrom, to }) => [setUpFrom, to]),
    );
    expect(frozen.leftOut.map(({ number, code }) => [number, code])).toEqual(
      day.faults.map(({ orderId, code }) => [orderId, code]),
    );
    expect(frozen.late.map(({ number, daysLate }) => [number, daysLate])).toEqual(
      day.orders.filter(({ daysLate }) => daysLate > 0).map(({ orderId, daysLate }) => [orderId, daysLate]),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEMO_DATE, demoOrders, demoWorkshop } from '../../demo/index.js';
import { type Day, type Shop, workOutDay } from '../../src/core/day/index.js';
import { calendarDate } from '../../src/core/foundation/index.js';
import { type ReadOrders, readOrders } from '../../src/core/orders/index.js';
import { readTable } from '../../src/workshop/index.js';

const workshop = demoWorkshop();

function read(text: string, shop: Shop = workshop): ReadOrders {
  const table = readTable(new TextEncoder().encode(text));
  if (!table.ok) throw new Error(table.fault.code);
  return readOrders(table.value.headings, table.value.rows, shop);
}

const dayOf = (text: string, shop: Shop = workshop): Day =>
  workOutDay({ shop, read: read(text, shop), date: DEMO_DATE });

const HEADINGS = 'order,player,quantity,due,set,gauges,material';
const order = (id: string, rest: string): string => `${id},Ama Barley,${rest}`;
const file = (...rows: string[]): string => [HEADINGS, ...rows].join('\n');

describe('a day', () => {
  it('puts every line of the file among its orders or its faults, and none in both', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 60 }), (seed, count) => {
        const text = demoOrders(workshop, {
          from: DEMO_DATE,
          days: 10,
          count,
          seed,
          customShare: 0.4,
          requestShare: 0.2,
        });
        const day = dayOf(text);
        const good = day.orders.map(({ line }) => line);
        const bad = [...new Set(day.faults.map(({ line }) => line))];
        expect([...good, ...bad].sort((a, b) => a - b)).toEqual(
          Array.from({ length: count }, (_, at) => at + 2),
        );
      }),
      { numRuns: 12 },
    );
  });

  it('makes or takes exactly the strings that its orders want', () => {
    const day = dayOf(demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 80 }));
    const wanted = new Map<string, number>();
    for (const { strings, quantity } of day.orders)
      for (const { stringKey } of strings) wanted.set(stringKey, (wanted.get(stringKey) ?? 0) + quantity);
    const made = new Map<string, number>();
    for (const { stringKey, quantity } of day.lots)
      made.set(stringKey, (made.get(stringKey) ?? 0) + quantity);
    for (const [key, count] of wanted) {
      const shelf = workshop.strings
        .filter(
          ({ spec }) =>
            key ===
            `${spec.gaugeThou} ${spec.kind} ${spec.material} ${spec.end} ${Math.round(spec.lengthM * 1000)} mm`,
        )
        .reduce((sum, stock) => sum + stock.count, 0);
      expect(shelf + (made.get(key) ?? 0), key).toBeGreaterThanOrEqual(count);
    }
  });

  it('winds lots in whole lot sizes', () => {
    const day = dayOf(file(order('A', '1,2027-03-05,,11-15-22w-33-43-57,nickel-plated steel')));
    for (const { quantity } of day.lots) expect(quantity % workshop.rules.lotSize).toBe(0);
  });

  it('has a sheet, wire and a reason for every run that starts on it', () => {
    const day = dayOf(demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 60 }));
    const today = day.plan.runs.filter(({ setUpFrom }) => setUpFrom.date === DEMO_DATE);
    expect(day.sheets.map(({ lotId }) => lotId)).toEqual(today.map(({ lotId }) => lotId));
    const pulled = new Set(day.wirePulls.flatMap(({ runs }) => runs));
    for (const { lotId } of today) expect(pulled.has(lotId), lotId).toBe(true);
    for (const { cautions } of day.sheets) expect(cautions).toContain('local-rules');
  });

  it('agrees between sheet and plan on the minutes of set-up', () => {
    const day = dayOf(demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 60 }));
    for (const sheet of day.sheets)
      expect(sheet.setUpMinutes).toBeCloseTo(
        day.plan.runs.find(({ lotId }) => lotId === sheet.lotId)!.setUpMinutes,
        9,
      );
  });

  it('picks for its roll exactly what the sets of the roll need', () => {
    const day = dayOf(demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 60 }));
    const picked = day.roll.stops.flatMap(({ picks }) => picks).reduce((sum, { count }) => sum + count, 0);
    const needed = day.roll.sets.reduce((sum, { quantity, strings }) => sum + quantity * strings.length, 0);
    expect(picked).toBe(needed);
    const walk = day.roll.stops.map(({ walkOrder }) => walkOrder);
    expect(walk).toEqual([...walk].sort((a, b) => a - b));
  });

  it('costs what its parts cost', () => {
    const { costs } = dayOf(demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 60 }));
    const { totalMinor, ...parts } = costs;
    expect(Object.values(parts).reduce((sum, part) => sum + part, 0)).toBe(totalMinor);
  });

  it('is the same for the same files', () => {
    const text = demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 60 });
    expect(dayOf(text)).toEqual(dayOf(text));
  });

  it('with no orders still tops bins up and packs nothing', () => {
    const day = dayOf(`${HEADINGS}\n`);
    expect(day.orders).toEqual([]);
    expect(day.roll.sets).toEqual([]);
    expect(day.lots.every(({ orderLines }) => orderLines.length === 0)).toBe(true);
    expect(day.lots.length).toBeGreaterThan(0);
  });
});

describe('a day on which the shop does not work', () => {
  const sunday = calendarDate('2027-03-07')!;
  const text = demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 40 });
  const day = workOutDay({ shop: workshop, read: read(text), date: sunday });

  it('starts no run and keeps no machine busy', () => {
    expect(day.plan.runs.length).toBeGreaterThan(0);
    for (const { setUpFrom } of day.plan.runs) expect(setUpFrom.date > sunday).toBe(true);
    for (const { busyShareToday, stringsToday } of day.plan.machines)
      expect([busyShareToday, stringsToday]).toEqual([0, 0]);
    expect(day.sheets).toEqual([]);
  });

  it('still packs what lies on the shelf', () => {
    expect(day.roll.sets.every(({ state }) => state === 'pack-now')).toBe(true);
  });
});

describe('a shop that lacks something', () => {
  const text = demoOrders(workshop, { from: DEMO_DATE, days: 10, count: 40 });

  it('without machines sells from the shelf and says so of every other order', () => {
    const day = dayOf(text, { ...workshop, machines: [], setUpNow: [] });
    expect(day.plan.runs).toEqual([]);
    expect(day.orders.every(({ readyAt }) => readyAt === 'now')).toBe(true);
    expect(day.faults.length).toBeGreaterThan(0);
    for (const { code, facts } of day.faults) {
      expect(code).toBe('order.machine-missing');
      expect(facts.machines).toEqual([]);
    }
  });

  it('without spools or without bins still accounts for every line', () => {
    for (const lacking of [{ spools: [] }, { strings: [], bins: [] }]) {
      const day = dayOf(text, { ...workshop, ...lacking });
      expect(new Set([...day.orders, ...day.faults].map(({ line }) => line)).size).toBe(40);
    }
  });

  it('without a recipe for what a bin wants leaves the bin low and says why', () => {
    const [bin] = workshop.strings;
    const odd = { ...bin!, spec: { ...bin!.spec, gaugeThou: 9.33 }, count: 2, reorderLevel: 12 };
    const day = dayOf(`${HEADINGS}\n`, { ...workshop, strings: [odd] });
    expect(day.lots).toEqual([]);
    expect(day.unmade).toEqual([
      { stringKey: expect.stringMatching(/^9\.33 /), quantity: 10, because: 'recipe' },
    ]);
  });
});

describe('what cannot be made', () => {
  const gauges = '11-15-22w-33-43-57';
  const custom = order('A', `3,2027-03-05,,${gauges},phosphor bronze`);

  it('names the wire that is missing and the nearest that is there', () => {
    const recipe = workshop.recipes.find(({ id }) => id === 'phosphor-bronze 57')!;
    const wire = recipe.wrapWireIds[0]!;
    const shop = { ...workshop, spools: workshop.spools.filter(({ wireId }) => wireId !== wire) };
    const day = dayOf(file(custom), shop);
    expect(day.orders).toEqual([]);
    const fault = day.faults.find(({ code }) => code === 'order.wire-missing');
    expect(fault?.facts.wireId).toBe(wire);
    expect(fault?.facts.nearest).not.toContain(wire);
    expect((fault!.facts.nearest as string[])[0]).toMatch(/^phosphor-bronze /);
  });

  it('lets the orders due last go when wire suffices for the others', () => {
    const key = workshop.recipes.find(({ id }) => id === 'phosphor-bronze 57')!;
    const wire = key.wrapWireIds[0]!;
    const text = file(
      order('late', `40,2027-03-20,,${gauges},phosphor bronze`),
      order('early', `4,2027-03-04,,${gauges},phosphor bronze`),
    );
    const spools = [
      ...workshop.spools.filter(({ wireId }) => wireId !== wire),
      { id: 's', wireId: wire, lot: 'l', netKg: 0.4 },
    ];
    const day = dayOf(text, { ...workshop, strings: [], spools });
    expect(day.orders.map(({ orderId }) => orderId)).toEqual(['early']);
    expect(day.faults.map(({ orderId, code }) => [orderId, code])).toEqual([['late', 'order.wire-missing']]);
  });

  it('does not take small orders down with a large one that alone asks for too much', () => {
    const day = dayOf(
      file(
        order('large', `9000,2027-03-05,,${gauges},phosphor bronze`),
        order('small', `1,2027-03-20,,${gauges},phosphor bronze`),
      ),
    );
    expect(day.orders.map(({ orderId }) => orderId)).toEqual(['small']);
    expect(new Set(day.faults.map(({ orderId }) => orderId))).toEqual(new Set(['large']));
  });

  it('is told under the headings of the file, wherever the fault was found', () => {
    const text =
      'Order No.,Qty,Due date,My gauges,Strings,Material\nA,1,2027-03-05,,10-13-17-26-36-97,phosphor bronze';
    expect(dayOf(text).faults).toMatchObject([{ column: 'Strings', code: 'order.recipe-missing' }]);
  });

  it('says of each machine why it cannot make a string that none can', () => {
    const shop = {
      ...workshop,
      strings: [],
      machines: workshop.machines.filter(({ id }) => id === 'bench' || id === 'two-herons'),
    };
    const day = dayOf(file(order('A', '1,2027-03-05,,10-13-17-26-36-62,nickel-plated steel')), shop);
    const fault = day.faults.find(({ code }) => code === 'order.machine-missing');
    expect(fault?.facts.machines).toEqual(['Two Herons (gearbox, two at once)', 'Cutting bench']);
    expect(fault?.facts.reasons).toEqual([
      'winding.gauge-out-of-range winding.wrap-out-of-range',
      'winding.wrong-station',
    ]);
    expect(day.orders).toEqual([]);
  });

  it('does not need a machine for what lies on the shelf', () => {
    const set = workshop.sets.find(({ name }) => name === 'Meadow six, 10')!;
    const strings = set.strings.map((spec, at) => ({
      spec,
      count: 9,
      binId: workshop.bins[at]!.id,
      lot: 'l',
      reorderLevel: 0,
    }));
    const day = dayOf(file(order('A', '2,2027-03-05,"Meadow six, 10",,')), {
      ...workshop,
      machines: workshop.machines.slice(0, 1),
      strings,
    });
    expect(day.faults).toEqual([]);
    expect(day.orders[0]?.readyAt).toBe('now');
    expect(day.lots).toEqual([]);
  });

  it('names the nearest gauges that have a recipe', () => {
    const day = dayOf(file(order('A', '1,2027-03-05,,10-13-17-26-36-97,phosphor bronze')));
    expect(day.faults).toMatchObject([
      {
        line: 2,
        column: 'gauges',
        code: 'order.recipe-missing',
        facts: { gaugeThou: 97, nearestGauges: [80] },
      },
    ]);
  });

  it('says to which pitch a string may go that would break, and on which scale it would not', () => {
    const text = [
      'order,quantity,due,material,scale,tuning,likes',
      'A,1,2027-03-05,nickel-plated steel,34 in,E A D G B E,"Meadow six, 10"',
    ].join('\n');
    const [fault] = dayOf(text).faults;
    expect(fault).toMatchObject({ code: 'order.pitch-unreachable', facts: { position: 1, pitch: 'E4' } });
    // A plain string's breaking pitch depends on scale alone: the same strength serves E4 on the scale that is named.
    const { longestScaleMm } = fault!.facts as { longestScaleMm: number };
    const scaled = (millimetres: number) => text.replace('34 in', `${millimetres} mm`);
    expect(dayOf(scaled(longestScaleMm)).faults).toEqual([]);
    expect(dayOf(scaled(longestScaleMm + 2)).faults).toHaveLength(1);
  });
});

describe('a late order', () => {
  it('that was due before the day says so', () => {
    const day = dayOf(file(order('A', '1,2027-02-26,"Meadow six, 10",,')));
    expect(day.orders[0]).toMatchObject({ lateBecause: { kind: 'due-already-past' } });
    expect(day.orders[0]!.daysLate).toBeGreaterThanOrEqual(3);
  });

  it('that needs more work than is left before its day says how much', () => {
    const day = dayOf(file(order('A', '400,2027-03-01,"Slate eight, 10",,')), {
      ...workshop,
      strings: [],
      spools: workshop.spools.map((spool) => ({ ...spool, netKg: 50 })),
    });
    expect(day.orders[0]!.daysLate).toBeGreaterThan(0);
    expect(['too-short-notice', 'machine-full']).toContain(day.orders[0]!.lateBecause!.kind);
  });
});

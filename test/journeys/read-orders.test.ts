import { describe, expect, it } from 'vitest';
import { demoWorkshop } from '../../demo/index.js';
import { readOrders, resolver } from '../../src/core/orders/index.js';

const shop = demoWorkshop();

const read = (...rows: Readonly<Record<string, string>>[]) => {
  const headings = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return readOrders(
    headings,
    rows.map((cells, at) => ({ line: at + 2, cells })),
    shop,
  );
};

const stock = {
  Order: 'A-1',
  Player: 'Ama Barley',
  Qty: '2',
  'Due date': '2027-03-05',
  Set: 'Meadow six, 10',
};
const request = {
  order: 'R-1',
  quantity: '1',
  due: '2027-03-05',
  material: 'nickel-plated steel',
  scale: '25.5 in',
  tuning: 'D G D G B D',
  likes: '10-13-17-26-36-46',
};

const codes = (result: ReturnType<typeof read>) =>
  result.faults.map(({ code, column }) => (column ? `${code} @${column}` : code));

describe('a file of orders', () => {
  it('is read whatever case and signs its headings have', () => {
    const { lines, faults } = read(stock);
    expect(faults).toEqual([]);
    expect(lines).toEqual([
      {
        line: 2,
        orderId: 'A-1',
        player: 'Ama Barley',
        quantity: 2,
        due: '2027-03-05',
        note: '',
        wanted: { kind: 'stock', setName: 'Meadow six, 10' },
      },
    ]);
  });

  it('says which headings it does not know and which are doubled', () => {
    const { columns } = read({ ...stock, Colour: 'red', Quantity: '2' });
    expect(columns.ignored).toEqual(['Colour']);
    expect(columns.doubled).toEqual([{ column: 'quantity', headings: ['Qty', 'Quantity'] }]);
  });

  it('lists each fault of a line with the column as the file has it, and reads the others', () => {
    const result = read({ ...stock, Qty: 'two', 'Due date': '03/04/2027' }, stock, { ...stock, Order: '' });
    expect(result.lines.map(({ line }) => line)).toEqual([3]);
    expect(codes(result)).toEqual([
      'order.cell-unreadable @Qty',
      'order.cell-ambiguous @Due date',
      'order.cell-empty @Order',
    ]);
  });

  it('refuses a line that repeats another, and names that one', () => {
    const { faults, lines } = read(stock, { ...stock, Order: 'A-2' }, stock);
    expect(lines).toHaveLength(2);
    expect(faults).toMatchObject([{ line: 4, code: 'order.duplicate', facts: { firstLine: 2 } }]);
  });

  it('refuses a line that wants nothing, or two things at once', () => {
    expect(codes(read({ ...stock, Set: '' }))).toEqual(['order.nothing-wanted']);
    expect(codes(read({ ...stock, gauges: '10-13-17-26-36-46' }))).toEqual(['order.more-than-one-wish']);
  });

  it.each(['0', '-1', '10001'])('refuses %s sets', (Qty) => {
    expect(codes(read({ ...stock, Qty }))).toEqual(['order.quantity-out-of-range @Qty']);
  });
});

describe('a custom set in a line', () => {
  const bass = {
    order: 'B-1',
    quantity: '1',
    due: '2027-03-05',
    gauges: '45-65-80-100',
    material: 'nickel-plated steel',
  };
  const lengthsMm = (row: Readonly<Record<string, string>>) => {
    const [line] = read(row).lines;
    const resolution = resolver(shop)(line!);
    if (!resolution.ok) throw new Error('the demo workshop makes these');
    return [...new Set(resolution.value.strings.map(({ spec }) => Math.round(spec.lengthM * 1000)))];
  };

  it('is cut for the scale that is told, and at the usual length where none is', () => {
    expect(lengthsMm(bass)).toEqual([1000]);
    expect(lengthsMm({ ...bass, scale: '25.5 in' })).toEqual([1000]);
    expect(lengthsMm({ ...bass, scale: '34 in' })).toEqual([1250]);
    expect(lengthsMm({ ...bass, instrument: 'Bass 34' })).toEqual([1250]);
  });

  it('must have as many strings as the instrument that is told', () => {
    expect(codes(read({ ...bass, instrument: 'electric 25.5' }))).toEqual([
      'order.strings-do-not-match @gauges',
    ]);
    expect(codes(read({ ...bass, scale: '64.8' }))).toEqual(['order.cell-ambiguous @scale']);
  });

  it('heeds no wish and no liked set, and says so', () => {
    expect(codes(read({ ...bass, wishes: 'even 180 N', likes: '45-65-80-100' }))).toEqual([
      'order.cell-unheeded @likes',
      'order.cell-unheeded @wishes',
    ]);
  });
});

describe('a stock set in a line', () => {
  const resolve = (row: Readonly<Record<string, string>>) => {
    const [line] = read(row).lines;
    const resolution = resolver(shop)(line!);
    return resolution.ok ? [] : resolution.fault.map(({ code, column }) => `${code} @${column}`);
  };

  it('may name its own material and end, and no others', () => {
    expect(resolve({ ...stock, Material: 'nickel-plated steel', End: 'ball' })).toEqual([]);
    expect(resolve({ ...stock, Material: 'phosphor bronze', End: 'loop' })).toEqual([
      'order.cell-unheeded @material',
      'order.cell-unheeded @end',
    ]);
  });

  it('heeds no wish, and says so', () => {
    expect(codes(read({ ...stock, Wishes: 'wound third' }))).toEqual(['order.cell-unheeded @Wishes']);
  });
});

describe('a request in a line', () => {
  it('carries scale, tuning treble first, material, end, the liked set and wishes', () => {
    const { lines, faults } = read({ ...request, wishes: 'heavier bass 5 %' });
    expect(faults).toEqual([]);
    const wanted = lines[0]?.wanted;
    if (wanted?.kind !== 'request') throw new Error('a tuning makes a request');
    expect(wanted.request.instrument.scaleLengthsM).toEqual(Array(6).fill(0.6477));
    expect(wanted.request.tuning.pitches.map(({ midi }) => midi)).toEqual([62, 59, 55, 50, 43, 38]);
    expect(wanted.request).toMatchObject({
      octavesAssumed: true,
      material: 'nickel-plated-steel',
      end: 'ball',
      wishes: { target: 'feel', heavierBass: 0.05 },
    });
    expect(wanted.request.reference?.strings.map(({ gaugeThou }) => gaugeThou)).toEqual([
      10, 13, 17, 26, 36, 46,
    ]);
    // Liked on the same scale in the usual tuning where the line says no more.
    expect(wanted.request.reference?.tuning.pitches.map(({ midi }) => midi)).toEqual([
      64, 59, 55, 50, 45, 40,
    ]);
  });

  it('lays a fan evenly from the shorter treble to the longer bass', () => {
    const { lines } = read({
      ...request,
      tuning: 'standard eight',
      scale: '26-28 in',
      likes: 'Slate eight, 10',
    });
    const wanted = lines[0]?.wanted;
    if (wanted?.kind !== 'request') throw new Error('a tuning makes a request');
    const inches = wanted.request.instrument.scaleLengthsM.map((lengthM) => lengthM / 0.0254);
    expect(inches[0]).toBeCloseTo(26, 9);
    expect(inches[3]).toBeCloseTo(26 + (2 * 3) / 7, 9);
    expect(inches[7]).toBeCloseTo(28, 9);
  });

  it('takes an instrument that the shop knows by name, and refuses a tuning with more strings', () => {
    const named = { ...request, scale: '', instrument: 'Electric 25.5' };
    expect(read(named).faults).toEqual([]);
    expect(codes(read({ ...named, tuning: 'standard seven' }))).toEqual([
      'order.strings-do-not-match @tuning',
    ]);
    expect(read({ ...named, instrument: 'electrik 25.5' }).faults[0]?.facts.nearest).toContain(
      'electric 25.5',
    );
  });

  it.each([
    [{ scale: '' }, 'order.cell-empty @scale'],
    [{ scale: '64.8' }, 'order.cell-ambiguous @scale'],
    [{ scale: '3 m' }, 'order.cell-unreadable @scale'],
    [{ tuning: 'D A D H A D' }, 'order.tuning-unreadable @tuning'],
    [{ material: '' }, 'order.cell-empty @material'],
    [{ material: 'cheese' }, 'order.material-unknown @material'],
    [{ likes: '' }, 'order.cell-empty @likes'],
    [{ likes: '10-13-17-26-36-0.46' }, 'order.cell-ambiguous @likes'],
    [{ wishes: 'more twang' }, 'order.cell-unreadable @wishes'],
    [{ likes: '10-13-17', 'likes tuning': 'E A D G B E' }, 'order.strings-do-not-match @likes tuning'],
  ])('with %j is refused as %s', (change, code) => {
    expect(codes(read({ ...request, ...change }))).toEqual([code]);
  });
});

import { beforeAll, describe, expect, it } from 'vitest';
import { demoShop } from '../../../test/fixtures/invented-shop.js';
import type { Catalogue } from './catalogue.js';
import { readOrders } from './read-orders.js';

let shop: Catalogue;
beforeAll(async () => {
  shop = await demoShop();
});

const LETTER = {
  order: 'L-1',
  quantity: '1',
  due: '2027-03-05',
  material: 'nickel-plated steel',
  wishes: 'feel',
};

const read = (cells: Readonly<Record<string, string>>) => {
  const whole = { ...LETTER, ...cells };
  const { lines, faults } = readOrders(Object.keys(whole), [{ line: 1, cells: whole }], shop);
  const wanted = lines[0]?.wanted;
  return { request: wanted?.kind === 'request' ? wanted.request : undefined, fault: faults[0] };
};

describe('what a player writes of a guitar', () => {
  it('names an instrument by the beginning of its name and the scale beside it', () => {
    const { request } = read({
      instrument: 'baritone',
      scale: '27',
      tuning: 'open B baritone',
      likes: 'Meadow six, 10',
      likesScale: '25.5 in',
    });
    expect(request?.instrument.name).toBe('baritone 27');
  });

  it('is asked for more where several instruments begin so', () => {
    const { fault } = read({ instrument: 'baritone', tuning: 'open B baritone', likes: 'Meadow six, 10' });
    expect(fault).toMatchObject({
      code: 'order.instrument-unknown',
      facts: { nearest: ['baritone 27', 'baritone 28.5'], meant: 2 },
    });
  });

  it('names a tuning by the beginning of its name, which notes never are taken for', () => {
    const { request } = read({ instrument: 'baritone 27', tuning: 'open b', likes: 'Meadow six, 10' });
    expect(request?.tuning.pitches.map(({ midi }) => midi)).toEqual([59, 54, 51, 47, 42, 35]);
    // Three notes for six strings are too few; they are not the beginning of D A D G A D.
    const { fault } = read({ instrument: 'electric 25.5', tuning: 'D A D', likes: 'Meadow six, 10' });
    expect(fault).toMatchObject({ code: 'order.tuning-unreadable', facts: { given: 3, strings: 6 } });
  });

  it('calls a liked set by its first string: the sets that begin so are offered, of the same material first', () => {
    const { fault } = read({ instrument: 'electric 25.5', tuning: 'D A D F# A D', likes: 'my tens' });
    expect(fault?.facts.nearest).toEqual([
      'Meadow six, 10',
      'Meadow six, 10 and deep',
      'Slate seven, 10',
      'Slate eight, 10',
    ]);
    const bronze = read({
      instrument: 'acoustic 25.4',
      tuning: 'D A D F# A D',
      material: 'phosphor bronze',
      likes: '12s',
    });
    expect(bronze.fault?.facts.nearest).toEqual(['Hazel bronze, 12']);
  });
});

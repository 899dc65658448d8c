import { describe, expect, it } from 'vitest';
import type { BodyOf } from '../../../contract/index.js';
import { orderForm, readOrderForm, withLine } from './order-form.js';

const string = (gaugeThou: number, kind: 'plain' | 'wound') => ({
  position: 1,
  spec: {
    gaugeThou,
    kind,
    material: kind === 'plain' ? ('plain-steel' as const) : ('pure-nickel' as const),
    end: 'loop' as const,
    lengthM: 1,
  },
  stringKey: '',
  recipeId: '',
});

const body: BodyOf<'order'> = {
  number: 'T-1',
  player: 'Jorla Barleycroft',
  due: '2027-03-05',
  note: '',
  lines: [
    { lineNumber: 1, kind: 'stock', setName: 'Meadow six, 10', quantity: 3, strings: [string(10, 'plain')] },
    {
      lineNumber: 2,
      kind: 'request',
      setName: 'for Jorla',
      quantity: 1,
      strings: [string(13.5, 'plain'), string(26, 'wound')],
    },
  ],
};

describe('an order that is typed', () => {
  it('says of a kept order what would be asked of the shop to make it again', () => {
    const form = orderForm({ body });
    expect(form.lines[1]).toMatchObject({ kind: 'custom', gauges: '13.5p 26w', wasRequest: true });
    expect(readOrderForm(form)).toEqual({
      ok: true,
      value: {
        number: 'T-1',
        player: 'Jorla Barleycroft',
        due: '2027-03-05',
        note: '',
        lines: [
          { quantity: 3, wanted: { kind: 'stock', setName: 'Meadow six, 10' } },
          {
            quantity: 1,
            wanted: {
              kind: 'custom',
              strings: [
                { gaugeThou: 13.5, kind: 'plain' },
                { gaugeThou: 26, kind: 'wound' },
              ],
              material: 'pure-nickel',
              end: 'loop',
            },
          },
        ],
      },
    });
  });

  it('says of a blank one everything that it lacks', () => {
    const read = readOrderForm(orderForm(undefined));
    expect(read).toEqual({ ok: false, fault: { number: true, due: true, lines: { 1: { set: true } } } });
  });

  it('says which line is wrong and how', () => {
    const { lines, ...form } = orderForm({ body });
    const [first, second] = withLine(lines);
    const read = readOrderForm({
      ...form,
      lines: [
        { ...first!, quantity: '2.5' },
        { ...second!, gauges: '10; 13; heavy; 26' },
      ],
    });
    expect(read).toMatchObject({
      ok: false,
      fault: { lines: { 1: { quantity: true }, 2: { gauges: 'heavy' } } },
    });
  });
});

import { beforeAll, describe, expect, it } from 'vitest';
import { demoShop } from '../../../../test/fixtures/invented-shop.js';
import type { Shop } from '../../../core/day/index.js';
import type { PlayerRequest } from '../../../core/orders/index.js';
import type { Instrument } from '../../../core/sets/index.js';
import { askTheSame, formOfRequest } from './form-of-request.js';
import { readRequestLine } from './read-request-line.js';
import { BLANK_FORM, cellsOf, type RequestForm } from './request-form.js';

let shop: Shop;
beforeAll(async () => {
  shop = await demoShop();
});

const read = (form: RequestForm) => {
  const request = readRequestLine(cellsOf(form), shop);
  if (!request.ok) throw new Error(JSON.stringify(request.fault));
  return request.value;
};

const FORMS: readonly Partial<RequestForm>[] = [
  { instrument: 'electric 25.5', tuning: 'D A D F# A D', likes: 'Meadow six, 10' },
  { instrument: 'baritone 27', tuning: 'open B baritone', likes: 'Meadow six, 10', likesScale: '25.5 in' },
  { scale: '25.5-27 in', tuning: 'B1 E2 A2 D3 G3 B3 E4', aim: 'even', pulls: '72 N' },
  {
    scale: '647.7 mm',
    tuning: 'E A D G B E',
    aim: 'graded',
    gradePercent: 2.5,
    pulls: '60 N',
    bassPercent: -7,
  },
  {
    scale: '620 mm, 622 mm, 625 mm, 630 mm, 640 mm, 655 mm',
    tuning: 'E A D G B E',
    aim: 'free',
    pulls: '60 N 61 N 62.5 N 63 N 64 N 65 N',
    more: 'string 1 = 10; string 3 = 20 wound',
    third: 'wound',
    end: 'loop',
    quantity: '3',
  },
  {
    instrument: 'electric 25.5',
    tuning: 'E2 A2 D3 G3 B3 E4 +14 c',
    likes: '10-13-17-26 wound-36-46',
    likesMaterial: 'pure nickel',
    likesTuning: 'D A D G B E',
    bendPercent: 40,
    treblePercent: 12,
  },
];

describe('a kept request opened again', () => {
  it.each(FORMS)('fills the fields so that they say the same: %j', (change) => {
    const form = { ...BLANK_FORM, ...change };
    const request = read(form);
    const again = formOfRequest(request, Number(form.quantity), shop);
    expect(plain(read(again))).toEqual(plain(request));
    expect(askTheSame(read(again), request)).toBe(true);
    expect(again.quantity).toBe(form.quantity);
  });

  it('is told from one that asks something else', () => {
    const form = { ...BLANK_FORM, ...FORMS[0] };
    expect(askTheSame(read(form), read({ ...form, bassPercent: 1 }))).toBe(false);
    expect(askTheSame(read(form), read({ ...form, scale: '25.4 in' }))).toBe(false);
    expect(askTheSame(read(form), read({ ...form, end: 'loop' }))).toBe(false);
  });
});

/** Without what things are called, and lengths to the micrometre. */
function plain({ octavesAssumed: _, ...request }: PlayerRequest): unknown {
  const nameless = ({ name: _name, ...thing }: Instrument) => ({
    ...thing,
    scaleLengthsM: thing.scaleLengthsM.map((lengthM) => lengthM.toFixed(6)),
  });
  const { reference, instrument, tuning, ...rest } = request;
  return {
    ...rest,
    instrument: nameless(instrument),
    pitches: tuning.pitches,
    ...(reference
      ? {
          reference: {
            strings: reference.strings.map(({ gaugeThou, kind }) => ({ gaugeThou, kind })),
            material: reference.material,
            instrument: nameless(reference.instrument),
            pitches: reference.tuning.pitches,
          },
        }
      : {}),
  };
}

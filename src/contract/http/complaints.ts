import Type, { type Static } from 'typebox';
import { COMPLAINT_FAULTS } from '../../core/stock/index.js';
import { id, instant } from '../records/bodies.js';
import { closed, date, notNegative, oneOf, text, wholeFrom } from '../schemas/pieces.js';

const fault = oneOf(COMPLAINT_FAULTS);

export const complaintRegisterQuery = closed({
  from: Type.Optional(date),
  to: Type.Optional(date),
  fault: Type.Optional(fault),
});

const rate = {
  complaints: wholeFrom(0, 'about strings sent in these days'),
  strings: wholeFrom(1, 'sent in these days'),
  perThousand: notNegative('complaints per thousand strings'),
  interval: closed({ from: notNegative('per thousand'), to: notNegative('per thousand') }, '95 %, exact'),
};

const row = closed({
  id,
  at: instant,
  state: text(),
  player: text(),
  fault,
  said: Type.Optional(text('the fault in other words, as it was written before there was a list')),
  stringKey: Type.Optional(text('where its lot is known')),
  lot: Type.Optional(text()),
  hasTrace: Type.Boolean({ description: 'its lot is known' }),
});

const table = closed({
  by: text('`machine`, `gauge`, `sent` (month), `made` (month), `wire lot`'),
  p: Type.Optional(
    notNegative('chance of so uneven a split if all were alike, made good for every sort asked'),
  ),
  rates: Type.Array(
    closed({
      name: text(),
      ...rate,
      times: Type.Optional(notNegative('its share of the complaints over its share of the strings')),
      p: Type.Optional(notNegative('chance of so many here, made good for all sources of the sort')),
    }),
  ),
});

/** Letters of some days; and of strings sent in these days how many were complained of, whenever the letter came. */
export const complaintRegisterAnswer = closed({
  from: date,
  to: date,
  complaints: Type.Array(row, { description: 'written down in these days, the newest first' }),
  all: Type.Optional(closed(rate)),
  faults: Type.Array(closed({ fault, ...rate }), { description: 'those that came, the most first' }),
  unplaced: wholeFrom(0, 'complaints of these days whose pack nobody knows: they are in no rate'),
  fresh: closed({
    days: wholeFrom(1, 'strings sent so lately are not all complained of yet'),
    strings: wholeFrom(0, 'sent in them'),
  }),
  tables: Type.Array(table, { description: 'where strings came from, the most uneven first' }),
  crowd: Type.Optional(
    closed({
      days: wholeFrom(1, 'the window looked through'),
      count: wholeFrom(1, 'letters in the fullest one'),
      from: date,
      p: notNegative('chance of so many together somewhere if they came evenly'),
    }),
  ),
});
export type ComplaintRegister = Static<typeof complaintRegisterAnswer>;

export const complaintTraceQuery = closed({ complaintId: id });

/** Where a complaint leads, as far as the records go. */
export const complaintTraceAnswer = closed({
  pack: Type.Optional(
    closed({
      id,
      labelCode: text(),
      setName: text(),
      shippedAt: Type.Optional(instant),
      orderId: id,
      order: text(),
      player: Type.String(),
    }),
  ),
  strings: Type.Array(
    closed({
      position: Type.Optional(wholeFrom(1, '1 is the treble')),
      isMeant: Type.Boolean({ description: 'the complaint names it' }),
      stringKey: text(),
      lotId: id,
      lot: text(),
      lotState: text(),
      sameLot: wholeFrom(0, 'other complaints about the lot'),
      run: Type.Optional(closed({ id, name: text(), machine: text(), closedAt: Type.Optional(instant) })),
      spools: Type.Array(closed({ id, name: text(), wire: text(), lot: text('the maker’s') })),
    }),
  ),
  endsAt: oneOf(['nothing', 'pack', 'lot', 'run', 'spools'], 'how far the records lead'),
});
export type ComplaintTrace = Static<typeof complaintTraceAnswer>;

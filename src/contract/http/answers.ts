import Type, { type TSchema } from 'typebox';
import { id, instant } from '../records/bodies.js';
import { endChecked } from '../schemas/end-check.js';
import { closed, oneOf, text } from '../schemas/pieces.js';
import { caution } from '../schemas/set-up-sheet.js';

/** A part of a long list. */
export const pageAnswer = <Item extends TSchema>(item: Item) =>
  closed({
    items: Type.Array(item),
    next: Type.Optional(text('give it as `after` for the next page; left out where this is the last')),
  });

/** All of a short list. */
export const wholeAnswer = <Item extends TSchema>(item: Item) => closed({ items: Type.Array(item) });

const unit = oneOf(['mg', 'mm', 'pieces']);
const quantity = Type.Integer({ description: 'whole number of the unit' });
const by = text('`person/ID`, `token/ID` or `console`');
const lot = Type.String({ description: "spool's or string lot's id; empty where lots are not told apart" });

export const balanceAnswer = closed({ account: text(), item: text(), lot, unit, quantity });

export const movementAnswer = closed({
  id,
  at: instant,
  by,
  what: text('`receive`, `use`, `make`, `scrap`, `move`, `pick`, `seal`, `ship`, `count`, `correct`'),
  reason: Type.String(),
  ofKind: text('kind of the record that it belongs to'),
  ofId: text(),
  entries: Type.Array(closed({ account: text(), item: text(), lot, unit, quantity })),
});

export const trialStringAnswer = closed({
  id,
  runId: id,
  number: Type.Integer(),
  position: Type.Integer({ description: 'of a two-at-once machine, 1 or 2' }),
  verdict: oneOf(['open', 'good', 'scrap']),
  setting: Type.Optional(Type.Number({ description: 'what was turned, in the unit of the machine' })),
  setBy: Type.Optional(oneOf(['advice', 'override'])),
  seen: Type.Optional(oneOf(['gaps', 'overlaps', 'even'], 'how the turns lie')),
  at: instant,
  by,
});

const orNull = <Value extends TSchema>(value: Value) => Type.Union([value, Type.Null()]);

export const measurementAnswer = closed({
  id,
  runId: id,
  trialStringId: orNull(id),
  quantity: oneOf(['diameter', 'mass', 'length']),
  value: Type.Number({ description: 'm or kg' }),
  placeM: orNull(Type.Number()),
  rotationDeg: orNull(Type.Number()),
  instrument: Type.String(),
  at: instant,
  by,
});

export const endCheckAnswer = closed({
  id,
  runId: id,
  machineId: id,
  wireId: id,
  spoolId: orNull(id),
  end: oneOf(['ball', 'loop']),
  ...endChecked,
  leastBreakingN: orNull(Type.Number({ description: 'of its wire as known on the day, N' })),
  strengthFrom: orNull(oneOf(['certificate', 'standard'])),
  gauge: Type.String({ description: 'what it was pulled with' }),
  insteadOf: orNull(id),
  at: instant,
  by,
});

export const tallyAnswer = closed({
  id,
  runId: orNull(id),
  lotId: orNull(id),
  station: oneOf(['winder', 'coiler']),
  outcome: oneOf(['good', 'scrap']),
  reason: Type.String(),
  count: Type.Integer(),
  at: instant,
  by,
});

/** What was taken back, with what it said. */
export const voidedEntryAnswer = closed({
  id,
  entryId: id,
  runId: orNull(id),
  lotId: orNull(id),
  reason: Type.String(),
  at: instant,
  by,
  was: Type.Union([
    closed({
      of: Type.Literal('tally'),
      station: oneOf(['winder', 'coiler']),
      outcome: oneOf(['good', 'scrap']),
      reason: Type.String(),
      count: Type.Integer(),
      at: instant,
      by,
    }),
    closed({
      of: Type.Literal('measurement'),
      quantity: oneOf(['diameter', 'mass', 'length']),
      value: Type.Number({ description: 'm or kg' }),
      trialStringId: orNull(id),
      at: instant,
      by,
    }),
    closed({ of: Type.Literal('trial-string'), number: Type.Integer(), at: instant, by }),
  ]),
});

const cautionsRead = {
  cautions: Type.Array(caution),
  edition: Type.Integer({ description: 'which words the cautions had' }),
};

export const myCautionsAnswer = closed({
  acknowledged: Type.Array(closed({ ...cautionsRead, on: text('a day, YYYY-MM-DD') })),
  lastStart: Type.Optional(text('when one last started a run there, YYYY-MM-DD')),
});

export const cautionReadingAnswer = closed({
  id,
  personId: id,
  machineId: id,
  ...cautionsRead,
  at: instant,
});

export const journalAnswer = closed({
  id,
  at: instant,
  by,
  useCase: text(),
  input: Type.Unknown({ description: 'what was asked, secrets left out' }),
  touched: Type.Array(closed({ kind: text(), id: Type.String(), version: Type.Integer() })),
});

export const lifeAnswer = closed({
  of: text(),
  initial: text(),
  steps: Type.Record(Type.String(), closed({ from: Type.Array(text()), to: text() })),
});

import Type from 'typebox';
import { closed, date, notNegative, oneOf, positive, share, stringSpec, text, wholeFrom } from './pieces.js';
import { setUpSheet } from './set-up-sheet.js';

const money = (description = 'minor units') => Type.Integer({ description });

const resolvedString = closed({
  position: wholeFrom(1, '1 is the treble'),
  spec: stringSpec,
  stringKey: text('names the kind of string in plain words'),
  recipeId: text(),
  sounding: Type.Optional(
    closed({
      speakingLengthM: positive('m'),
      frequencyHz: positive('Hz'),
      tensionN: positive('N'),
      stressShare: Type.Optional(positive('of minimum strength')),
      wishedTensionN: positive('N'),
    }),
  ),
});

export const warning = Type.Union([
  closed({ code: Type.Literal('neck-load'), totalN: positive('N'), referenceN: positive('N') }),
  closed({ code: Type.Literal('octaves-assumed'), tuning: text() }),
  closed({
    code: Type.Literal('slack'),
    position: wholeFrom(1, '1 is the treble'),
    tensionN: positive('N'),
    leastN: positive('N'),
  }),
  closed({
    code: Type.Literal('near-strength'),
    position: wholeFrom(1, '1 is the treble'),
    stressShare: positive('share'),
  }),
]);

const lateReason = Type.Union([
  closed({ kind: Type.Literal('due-already-past'), due: date }),
  closed({ kind: Type.Literal('machine-full'), machineId: text(), lotId: text() }),
  closed({ kind: Type.Literal('too-short-notice'), lotId: text(), minutesNeeded: positive('min') }),
  closed({ kind: Type.Literal('waits-for-run'), machineId: text(), run: text('settled before this plan') }),
]);

const order = closed({
  line: wholeFrom(1, 'line of the orders file'),
  orderId: text(),
  player: Type.String(),
  quantity: wholeFrom(1, 'sets'),
  due: date,
  note: Type.String(),
  kind: oneOf(['stock', 'custom', 'request']),
  setName: text(),
  strings: Type.Array(resolvedString, { minItems: 1 }),
  warnings: Type.Array(warning),
  readyAt: Type.Union([Type.Literal('now'), closed({ date, lotIds: Type.Array(text()) })]),
  daysLate: wholeFrom(0, 'calendar days after the due date'),
  lateBecause: Type.Optional(lateReason),
  costMinor: money(),
});

const fact = Type.Union([Type.String(), Type.Number(), Type.Array(Type.String()), Type.Array(Type.Number())]);

export const ORDER_FAULT_CODES = [
  'order.cells-too-many',
  'order.quote-open',
  'order.cell-empty',
  'order.cell-unreadable',
  'order.cell-ambiguous',
  'order.quantity-out-of-range',
  'order.duplicate',
  'order.nothing-wanted',
  'order.more-than-one-wish',
  'order.cell-unheeded',
  'order.set-unknown',
  'order.material-unknown',
  'order.instrument-unknown',
  'order.tuning-unreadable',
  'order.strings-do-not-match',
  'order.recipe-missing',
  'order.pitch-unreachable',
  'order.no-set-fits',
  'order.machine-missing',
  'order.wire-missing',
] as const;

const orderFault = closed({
  line: wholeFrom(1, 'line of the orders file'),
  column: Type.Optional(text()),
  orderId: Type.Optional(text()),
  read: Type.Optional(Type.String()),
  code: oneOf(ORDER_FAULT_CODES),
  facts: Type.Record(Type.String(), fact),
});

export const clock = closed({ date, minute: Type.Number({ description: 'after midnight' }) });

export const placementReason = Type.Union([
  closed({ kind: Type.Literal('frozen') }),
  closed({
    kind: Type.Literal('due-first'),
    dueMinute: Type.Number({ description: 'working minutes from the start of the plan' }),
  }),
  closed({
    kind: Type.Literal('same-set-up'),
    keeps: Type.Array(oneOf(['core', 'wrap', 'alloy', 'length'])),
  }),
  closed({ kind: Type.Literal('released'), releaseMinute: Type.Number() }),
  closed({ kind: Type.Literal('only-machine') }),
  closed({ kind: Type.Literal('weighed'), aheadOf: text('lot that is due earlier') }),
  closed({ kind: Type.Literal('fills-bin') }),
  closed({ kind: Type.Literal('by-hand') }),
]);

/** What a run makes and when: the same in a day that was worked out and in a plan that is kept. */
export const runFields = {
  stringKey: text(),
  quantity: wholeFrom(1, 'good strings'),
  scrapStrings: notNegative('expected while dialling in'),
  setUpFrom: clock,
  runFrom: clock,
  to: clock,
  setUpMinutes: notNegative('min'),
  lateMinutes: notNegative('working minutes'),
  reason: placementReason,
};

const run = closed({ lotId: text(), machineId: text(), recipeId: text(), ...runFields });

const plan = closed({
  runs: Type.Array(run),
  score: closed({
    weightedLateMinutes: notNegative('working minutes times orders that wait'),
    changeCostMinor: notNegative('minor units'),
    movedLots: notNegative('lots that stand elsewhere than in the plan in force'),
    makespanMinutes: notNegative('working minutes'),
  }),
  machines: Type.Array(
    closed({
      machineId: text(),
      name: text(),
      stringsToday: wholeFrom(0, 'good strings'),
      busyShareToday: share('of its minutes on duty'),
    }),
  ),
});

export const runUnderWay = closed({
  runId: text(),
  name: text('as the floor calls it'),
  machineId: text(),
  stringKey: text(),
  quantity: wholeFrom(0, 'good strings that it brings'),
  from: clock,
  to: clock,
});

const wirePull = closed({
  wireId: text(),
  neededKg: notNegative('kg'),
  neededM: notNegative('m'),
  spools: Type.Array(
    closed({ spoolId: text(), lot: text(), takeKg: notNegative('kg'), leavesKg: notNegative('kg') }),
  ),
  shortKg: notNegative('what no spool can give, kg'),
  runs: Type.Array(text()),
});

const roll = closed({
  stops: Type.Array(
    closed({
      binId: text(),
      walkOrder: Type.Number(),
      picks: Type.Array(
        closed({ stringKey: text(), count: wholeFrom(1, 'strings'), forLines: Type.Array(Type.Integer()) }),
      ),
    }),
    { description: 'in walking order' },
  ),
  sets: Type.Array(
    closed({
      line: wholeFrom(1, 'line of the orders file'),
      orderId: text(),
      player: Type.String(),
      setName: text(),
      quantity: wholeFrom(1, 'sets'),
      state: oneOf(['pack-now', 'after-winding']),
      strings: Type.Array(
        closed({ position: wholeFrom(1, '1 is the treble'), stringKey: text(), binId: text() }),
      ),
      labelCode: text('what the label reads as'),
    }),
  ),
});

/** What `tautwork day --json` prints and `day.json` holds. */
export const DaySchema = Type.Object(
  {
    shop: closed({ name: text(), invented: Type.Boolean(), currency: text(), minorDigits: Type.Integer() }),
    date,
    orders: Type.Array(order),
    faults: Type.Array(orderFault, { description: 'lines that could not go on' }),
    lots: Type.Array(
      closed({
        id: text(),
        recipeId: text(),
        stringKey: text(),
        quantity: wholeFrom(1, 'good strings'),
        orderLines: Type.Array(Type.Integer()),
        due: date,
      }),
    ),
    unmade: Type.Array(
      closed({
        stringKey: text(),
        quantity: wholeFrom(1, 'strings'),
        because: oneOf(['recipe', 'machine', 'wire']),
        wireId: Type.Optional(text()),
        shortKg: Type.Optional(positive('kg')),
      }),
      { description: 'what bins lack and cannot be made now' },
    ),
    plan,
    underWay: Type.Optional(
      Type.Array(runUnderWay, { description: 'runs settled before, which the plan stands behind' }),
    ),
    sheets: Type.Array(setUpSheet, { description: 'one for every run that starts on the day' }),
    wirePulls: Type.Array(wirePull),
    roll,
    costs: closed({
      wireMinor: money(),
      endsMinor: money(),
      packMinor: money(),
      labourMinor: money(),
      overheadMinor: money(),
      scrapMinor: money(),
      totalMinor: money(),
    }),
  },
  {
    title: 'Tautwork day',
    description: "A day's work. SI units; money in minor units of `shop.currency`.",
    additionalProperties: false,
  },
);

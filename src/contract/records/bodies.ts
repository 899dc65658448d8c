import Type, { type Static } from 'typebox';
import { ROLES } from '../permissions.js';
import { runFields, runUnderWay, warning } from '../schemas/day.js';
import {
  closed,
  date,
  MATERIALS,
  notNegative,
  oneOf,
  positive,
  stringSpec,
  text,
  wholeFrom,
  within,
} from '../schemas/pieces.js';
import { playerRequest } from '../schemas/player-request.js';
import { construction, machineBody, ownSpread, rates, rules, seatModel, wireBody } from '../schemas/shop.js';

export const id = Type.String({
  format: 'uuid',
  description: 'UUID, made by whoever first writes the record',
});
export const instant = Type.String({
  pattern: '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}\\.\\d{3}Z$',
  description: 'UTC, to the millisecond',
});

const certificate = closed({
  number: Type.Optional(text()),
  diameterM: Type.Optional(positive('m')),
  tensilePa: Type.Optional(positive('minimum tensile strength, Pa')),
});

const resolvedString = closed({
  position: wholeFrom(1, '1 is the treble'),
  spec: stringSpec,
  stringKey: text(),
  recipeId: id,
});

const answerFigures = closed({
  position: wholeFrom(1, '1 is the treble'),
  speakingLengthM: positive('m'),
  frequencyHz: positive('Hz'),
  tensionN: positive('N'),
  wishedTensionN: positive('N'),
  stressShare: Type.Optional(positive('of the strength of its wire')),
  bendForceN: Type.Optional(positive('to bend a whole tone at the 12th fret, N')),
  liked: Type.Optional(
    closed({ tensionN: positive('N'), bendForceN: Type.Optional(positive('N')) }, 'what is liked does there'),
  ),
});

const orderLine = closed({
  lineNumber: wholeFrom(1, 'within the order'),
  kind: oneOf(['stock', 'custom', 'request']),
  setName: text(),
  quantity: wholeFrom(1, 'sets'),
  strings: Type.Array(resolvedString, { minItems: 1 }),
});

const pickedString = closed({
  position: wholeFrom(1, '1 is the treble'),
  stringKey: text(),
  lotId: id,
  binId: id,
});

const planLine = closed({
  lotId: text('of the plan: what is made together'),
  machineId: id,
  recipeId: id,
  ...runFields,
  due: date,
  orderIds: Type.Array(id, { description: 'orders that wait for it; none where it fills a bin' }),
  runId: Type.Optional(id),
});

export const PULL_UNITS = ['N', 'lbf', 'kgf'] as const;
export const LENGTH_UNITS = ['in', 'mm'] as const;

/** How a person wishes to see figures, on whatever screen. */
export const sight = closed({
  pull: oneOf(PULL_UNITS),
  length: oneOf(LENGTH_UNITS),
  locale: Type.String({
    maxLength: 35,
    description: 'of dates and numbers (BCP 47); empty: as the browser has it',
  }),
});
export type Sight = Static<typeof sight>;

/** What the machine was set to; what nobody said is left out. */
export const setTo = {
  coreTensionN: Type.Optional(positive('N')),
  layers: Type.Array(
    closed({
      tensionN: Type.Optional(positive('N')),
      dial: Type.Optional(Type.Number({ description: 'number on the machine’s tension scale' })),
      spindleRpm: Type.Optional(positive('turns a minute')),
    }),
    { maxItems: 2, description: 'from the core outwards' },
  ),
};

const runSettings = closed({
  ...setTo,
  lots: Type.Array(closed({ wireId: id, lot: text() }), { description: 'of the wires that were wound' }),
  how: oneOf(['written-down', 'dialled-in'], 'by a person, or the last setting of the dial-in'),
  at: instant,
  by: text(),
});

export const dialQuantity = oneOf(['traverse', 'pull'], 'what the dial gives: m per turn, or N');
export const readingError = positive('of one reading of rule or scale, one standard deviation, m or N');

/** What a hand read: turns, and where the guide stood before and after; or the pull on a hanging scale. */
const readOff = Type.Union([
  closed({
    turns: wholeFrom(1, 'whole turns of the spindle'),
    startM: Type.Number({ description: 'of the guide, by the rule, m' }),
    endM: Type.Number({ description: 'of the guide, by the rule, m' }),
  }),
  closed({ pullN: positive('N') }),
]);

/** A reading at a number of the dial, as it is entered. */
export const enteredDialReading = {
  readingId: id,
  dial: Type.Number(),
  read: readOff,
  instrument: text('what it was read with'),
};

const dialReading = closed({
  ...enteredDialReading,
  at: instant,
  by: text(),
  isStruck: Type.Optional(Type.Boolean({ description: 'a slip: kept, not counted' })),
});

const dialRow = closed({ dial: Type.Number(), value: positive('m per turn, or N') });

/** What each kind of record holds. Quantities on hand are not here: they are the ledger's. */
export const BODIES = {
  wire: wireBody,
  spool: closed({
    name: text('as written on the spool'),
    wireId: id,
    lot: text(),
    tareKg: notNegative('weight of the empty spool, kg'),
    receivedAt: instant,
    certificate: Type.Optional(certificate),
    machineId: Type.Optional(id),
    weighed: Type.Optional(
      closed({ grossKg: notNegative('with its wire, kg'), at: instant }, 'the last time on the scale'),
    ),
    holdReason: Type.Optional(text('why it is in quarantine')),
  }),
  machine: machineBody,
  person: closed({
    name: text(),
    roles: Type.Array(oneOf(ROLES)),
    active: Type.Boolean(),
    sight: Type.Optional(sight),
  }),
  instrument: closed({
    name: text(),
    scaleLengthsM: Type.Array(positive('m'), { minItems: 1 }),
    stretchingLengthsM: Type.Optional(Type.Array(positive('m'))),
  }),
  tuning: closed({
    name: text(),
    pitches: Type.Array(closed({ midi: Type.Integer(), cents: Type.Number() }), { minItems: 1 }),
    referenceHz: positive('Hz'),
  }),
  request: closed({
    player: text(),
    letter: Type.String(),
    quantity: wholeFrom(1, 'sets'),
    request: playerRequest,
    answer: Type.Optional(
      closed({
        setName: text(),
        strings: Type.Array(resolvedString),
        figures: Type.Array(answerFigures, { description: 'as the player was told them, treble first' }),
        totalTensionN: positive('N'),
        likedTensionN: Type.Optional(positive('of the set that is liked, where it is liked, N')),
        warnings: Type.Array(warning),
      }),
    ),
    orderId: Type.Optional(id),
  }),
  set: closed({ name: text(), strings: Type.Array(stringSpec, { minItems: 1 }) }),
  recipe: closed({
    name: text(),
    gaugeThou: positive('thousandths of an inch'),
    material: oneOf(MATERIALS),
    construction,
    coreWireId: id,
    wrapWireIds: Type.Array(id),
    note: Type.String(),
  }),
  run: closed({
    name: text('as the floor calls it'),
    recipeId: id,
    recipeVersion: wholeFrom(1, 'version that it was set up by'),
    machineId: id,
    spec: stringSpec,
    stringKey: text(),
    quantity: wholeFrom(1, 'good strings wanted'),
    spoolIds: Type.Array(id, { description: 'on the machine now, core first' }),
    takenOff: Type.Optional(
      Type.Array(closed({ spoolId: id, mg: wholeFrom(0, 'wire that it gave to this run, mg') }), {
        description: 'spools taken off before the run was closed',
      }),
    ),
    lotId: Type.Optional(id),
    goodCount: wholeFrom(0, 'strings'),
    scrapCount: wholeFrom(0, 'strings'),
    startedAt: Type.Optional(instant),
    closedAt: Type.Optional(instant),
    winderId: Type.Optional(id),
    planId: Type.Optional(id),
    settings: Type.Optional(runSettings),
    note: Type.String(),
  }),
  'string-lot': closed({
    name: text(),
    runId: Type.Optional(id),
    spec: stringSpec,
    stringKey: text(),
    made: wholeFrom(0, 'strings'),
    spoolIds: Type.Array(id, { description: 'every spool that went into it' }),
    holdReason: Type.Optional(text()),
    releasedBy: Type.Optional(id),
  }),
  bin: closed({
    name: text(),
    walkOrder: Type.Number(),
    stringKey: Type.Optional(text()),
    reorderLevel: wholeFrom(0, 'strings'),
  }),
  'dry-room-reading': closed({
    at: instant,
    room: text(),
    temperatureC: Type.Number({ minimum: -40, maximum: 80 }),
    relativeHumidity: Type.Number({ minimum: 0, maximum: 1, description: 'share' }),
  }),
  order: closed({
    number: text(),
    player: Type.String(),
    due: date,
    note: Type.String(),
    lines: Type.Array(orderLine, { minItems: 1 }),
    imported: Type.Optional(
      closed({ source: text('where its file came from'), hash: text('of the rows that it was read from') }),
    ),
  }),
  pack: closed({
    orderId: id,
    lineNumber: wholeFrom(1, 'line of the order'),
    copy: wholeFrom(1, 'which of the sets of that line'),
    labelCode: text(),
    setName: text(),
    wanted: Type.Array(resolvedString, { minItems: 1 }),
    picked: Type.Array(pickedString),
    sealedAt: Type.Optional(instant),
    shippedAt: Type.Optional(instant),
  }),
  complaint: closed({
    player: text(),
    text: text(),
    faultCode: text('of the shop’s list; what was written before there was one may be in other words'),
    packId: Type.Optional(id),
    lotId: Type.Optional(id),
    position: Type.Optional(wholeFrom(1, 'which string of the pack, 1 is the treble')),
    answer: Type.Optional(text()),
  }),
  document: closed({
    title: text(),
    mediaType: text(),
    ofKind: text(),
    ofId: id,
    contentBase64: Type.String(),
  }),
  plan: closed({
    date,
    runs: Type.Array(planLine, { description: 'in the order in which set-up begins' }),
    underWay: Type.Optional(
      Type.Array(closed({ ...runUnderWay.properties, runId: id, machineId: id }), {
        description: 'runs settled before, which these stand behind',
      }),
    ),
    note: Type.String(),
  }),
  'dial-round': closed({
    machineId: id,
    quantity: dialQuantity,
    dials: Type.Array(Type.Number(), {
      minItems: 2,
      maxItems: 60,
      description: 'numbers to be read, ascending',
    }),
    readingError,
    wantedShare: within(0.0001, 0.1, 'wanted of one reading, one standard deviation, share'),
    readings: Type.Array(dialReading, { description: 'in the order in which they were read' }),
    adopted: Type.Optional(
      closed({
        at: instant,
        by: text(),
        before: Type.Array(dialRow, {
          description: 'the table that was in force; empty where there was none',
        }),
        after: Type.Array(dialRow, { description: 'the table that took its place' }),
      }),
    ),
  }),
  settings: closed({
    name: text('of the shop'),
    invented: Type.Boolean(),
    rules,
    rates,
    seat: Type.Optional(seatModel),
    spread: Type.Optional(ownSpread),
    limits: Type.Optional(
      closed(
        {
          dryRoom: Type.Optional(
            closed({
              leastC: Type.Number({ minimum: -40, maximum: 80 }),
              mostC: Type.Number({ minimum: -40, maximum: 80 }),
              mostHumidity: Type.Number({ exclusiveMinimum: 0, maximum: 1, description: 'share' }),
            }),
          ),
          wireCoverDays: Type.Optional(positive('days of use below which wire is to be ordered')),
        },
        'past which a person is told; where left out, common practice holds',
      ),
    ),
  }),
} as const;

import Type from 'typebox';
import { BODIES, id } from '../records/bodies.js';
import { recordSchema } from '../records/record-schema.js';
import { closed, notNegative, positive, text, wholeFrom } from '../schemas/pieces.js';
import { defineUseCase } from '../use-case.js';
import { expectedVersion } from './shop.js';

export const reason = text('why, in a few words; kept in the journal');

const { certificate } = BODIES.spool.properties;
const grossKg = positive('what the spool weighs with its wire, kg');
const ofSpool = { spoolId: id, expectedVersion };

export const receiveSpool = defineUseCase({
  name: 'receive-spool',
  summary: 'Take in a spool of wire by weight',
  permission: 'wire.receive',
  path: '/spools/receive',
  input: closed({
    id,
    wireId: id,
    name: text('as written on the spool'),
    lot: text('the maker’s lot'),
    grossKg,
    tareKg: notNegative('weight of the empty spool, kg'),
    certificate,
  }),
  output: recordSchema('spool'),
});

export const weighSpool = defineUseCase({
  name: 'weigh-spool',
  summary: 'Weigh a spool; the difference from the books is written as such',
  permission: 'wire.weigh',
  path: '/spools/weigh',
  input: closed({
    ...ofSpool,
    grossKg: notNegative(
      'what the spool weighs with its wire, kg; 0 of a coil without a spool that is used up',
    ),
    reason: Type.Optional(text('why it differs; needed where it weighs more than at the last weighing')),
  }),
  output: closed({
    record: recordSchema('spool'),
    differenceMg: Type.Integer({
      description: 'weighed less what the books said; negative where wire is missing',
    }),
  }),
});

export const quarantineSpool = defineUseCase({
  name: 'quarantine-spool',
  summary: 'Keep a spool from being used',
  permission: 'wire.weigh',
  path: '/spools/quarantine',
  input: closed({ ...ofSpool, reason }),
  output: recordSchema('spool'),
});

export const freeSpool = defineUseCase({
  name: 'free-spool',
  summary: 'Let a spool out of quarantine',
  permission: 'wire.weigh',
  path: '/spools/free',
  input: closed({ ...ofSpool, reason }),
  output: recordSchema('spool'),
});

export const moveStrings = defineUseCase({
  name: 'move-strings',
  summary: 'Move strings of a lot from one bin to another',
  permission: 'stock.move',
  path: '/strings/move',
  input: closed({ lotId: id, fromBinId: id, toBinId: id, count: wholeFrom(1, 'strings') }),
  output: closed({
    fromBin: wholeFrom(0, 'strings of the lot left there'),
    toBin: wholeFrom(1, 'strings of the lot there now'),
  }),
});

export const countStrings = defineUseCase({
  name: 'count-strings',
  summary: 'Take stock of a lot in a bin; the difference is written as such',
  permission: 'stock.count',
  path: '/strings/count',
  input: closed({ binId: id, lotId: id, counted: wholeFrom(0, 'strings that lie there'), reason }),
  output: closed({
    counted: wholeFrom(0, 'strings'),
    difference: Type.Integer({ description: 'counted less what the books said' }),
  }),
});

export const scrapStrings = defineUseCase({
  name: 'scrap-strings',
  summary: 'Throw some strings of a lot away, with the reason',
  permission: 'tally.enter',
  path: '/strings/scrap',
  input: closed({
    lotId: id,
    binId: id,
    count: wholeFrom(1, 'strings'),
    reason,
    tallyId: Type.Optional(id),
  }),
  output: closed({ left: wholeFrom(0, 'strings of the lot left in the bin') }),
});

export const recordDryRoom = defineUseCase({
  name: 'record-dry-room',
  summary: 'Write down the climate of the room where wire and strings lie',
  permission: 'dryroom.enter',
  path: '/dry-room/readings',
  input: closed({
    id,
    room: BODIES['dry-room-reading'].properties.room,
    temperatureC: BODIES['dry-room-reading'].properties.temperatureC,
    relativeHumidity: BODIES['dry-room-reading'].properties.relativeHumidity,
  }),
  output: recordSchema('dry-room-reading'),
});

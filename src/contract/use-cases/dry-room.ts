import Type from 'typebox';
import { BODIES } from '../records/bodies.js';
import { closed, oneOf, text, wholeFrom } from '../schemas/pieces.js';
import { defineUseCase } from '../use-case.js';
import { fileHeadings, importFault } from './import-parts.js';

const { room, temperatureC, relativeHumidity, at } = BODIES['dry-room-reading'].properties;

/** As sensors write a moment: with its offset from UTC, seconds and their parts as they like. */
const moment = Type.String({
  pattern: '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2}(\\.\\d{1,9})?)?(Z|[+-]\\d{2}:\\d{2})$',
  description: 'when it was read, with the offset from UTC: 2027-03-01T10:20:00Z',
});

export const reportDryRoom = defineUseCase({
  name: 'report-dry-room',
  summary:
    'Take readings that a sensor sends, each with its moment; what is known already is not written twice',
  permission: 'dryroom.enter',
  path: '/dry-room/report',
  input: closed({
    room,
    readings: Type.Array(closed({ at: moment, temperatureC, relativeHumidity }), {
      minItems: 1,
      maxItems: 1000,
    }),
  }),
  output: closed({
    taken: wholeFrom(0, 'readings written'),
    known: wholeFrom(0, 'readings that were there already'),
  }),
});

export const CLIMATE_COLUMNS = ['at', 'date', 'time', 'temperature', 'humidity', 'room'] as const;
export type ClimateColumn = (typeof CLIMATE_COLUMNS)[number];

const climateMapping = Type.Partial(
  closed({
    at: text('date and time in one'),
    date: text(),
    time: text(),
    temperature: text('°F where the heading says so, else °C'),
    humidity: text('per cent'),
    room: text(),
  }),
  { additionalProperties: false, description: 'for each column, the heading that the file has for it' },
);

const readClimate = closed({ line: wholeFrom(1, 'of the file'), at, room, temperatureC, relativeHumidity });

export const importDryRoom = defineUseCase({
  name: 'import-dry-room',
  summary:
    'Take in the file of a climate logger, all or nothing; the same file again, or one that overlaps it, doubles nothing',
  permission: 'dryroom.enter',
  path: '/dry-room/import',
  input: closed({
    source: text('which logger: its column mapping is remembered by this name'),
    room: Type.Optional(text('where it lay; needed where the file does not say')),
    csv: Type.String({ minLength: 1, maxLength: 4_000_000, description: 'the file as text' }),
    mapping: Type.Optional(climateMapping),
    dayFirst: Type.Optional(
      Type.Boolean({ description: 'how 03/04/2026 is meant, where the file does not tell by itself' }),
    ),
    clock: Type.Optional(
      oneOf(['shop', 'utc'], 'whose time its moments without an offset are; the shop’s where left out'),
    ),
    commit: Type.Boolean({ description: 'false only shows what would be taken' }),
  }),
  output: closed({
    preview: closed({
      headings: fileHeadings,
      columns: climateMapping,
      ignored: Type.Array(Type.String(), { description: 'headings that mean nothing to us' }),
      fresh: wholeFrom(0, 'readings that would be written'),
      known: wholeFrom(0, 'readings that are there already'),
      rooms: Type.Array(text()),
      first: Type.Optional(at),
      last: Type.Optional(at),
      samples: Type.Array(readClimate, { description: 'the first and the last rows, as understood' }),
      faults: Type.Array(importFault, { description: 'the first of them' }),
      faultCount: wholeFrom(0, 'faults in all'),
    }),
    committed: Type.Boolean(),
  }),
});

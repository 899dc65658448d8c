import Type, { type Static } from 'typebox';
import { BODIES, instant } from '../records/bodies.js';
import { closed, date, notNegative, oneOf, text, wholeFrom } from '../schemas/pieces.js';

const { temperatureC, relativeHumidity } = BODIES['dry-room-reading'].properties;
const hours = (what: string) => notNegative(`h ${what}`);

export const dryRoomAirQuery = closed({
  room: Type.Optional(text('the one read last where left out')),
  from: Type.Optional(date),
  to: Type.Optional(date),
});

const span = { from: instant, to: instant };

const periodAir = closed({
  date: date,
  ...span,
  readings: wholeFrom(0, 'taken in it'),
  knownHours: hours('of which the air is known'),
  unknownHours: hours('that nobody read'),
  outsideHours: hours('outside the limits'),
  criticalHours: hours('at or above the humidity at which steel rusts'),
  wetHours: hours('in which metal counts as wet'),
  air: Type.Optional(
    closed({
      meanC: temperatureC,
      leastC: temperatureC,
      mostC: temperatureC,
      meanHumidity: relativeHumidity,
      leastHumidity: relativeHumidity,
      mostHumidity: relativeHumidity,
    }),
  ),
});

const excursion = closed({
  ...span,
  readings: wholeFrom(1, 'outside, in it'),
  mostHumidity: relativeHumidity,
  leastC: temperatureC,
  mostC: temperatureC,
  humidityOver: notNegative('share beyond the limit'),
  warmerByC: notNegative('°C beyond the limit'),
  colderByC: notNegative('°C beyond the limit'),
  beginsUnseen: Type.Boolean({ description: 'nobody read the air before it: it may have begun earlier' }),
  endsUnseen: Type.Boolean({ description: 'nobody read the air after it: it may have gone on' }),
});

/** The air of one room, from the first day asked about to the last, or to now. */
export const dryRoomAirAnswer = closed({
  room: Type.String({ description: 'empty where nothing was ever read' }),
  rooms: Type.Array(text()),
  ...span,
  limits: closed({
    leastC: temperatureC,
    mostC: temperatureC,
    mostHumidity: relativeHumidity,
    basis: oneOf(['shop', 'common-practice']),
  }),
  readingCount: wholeFrom(0, 'readings of these days'),
  readings: Type.Array(closed({ at: instant, temperatureC, relativeHumidity }), {
    description: 'oldest first; of many as many as a picture needs, no peak left out',
  }),
  usualStepMinutes: notNegative('min between two readings, as it usually was'),
  longestSilenceMinutes: notNegative('min; a longer silence is a gap'),
  excursions: Type.Array(excursion),
  gaps: Type.Array(closed(span), { description: 'what nobody read' }),
  days: Type.Array(periodAir),
  weeks: Type.Array(periodAir, { description: 'each from its Monday' }),
  risk: closed({
    knownHours: hours('of which the air is known'),
    criticalHours: hours('at or above the humidity at which steel rusts'),
    wetHours: hours('in which metal counts as wet: RH > 80 %, above freezing'),
    wetHoursAYear: Type.Optional(notNegative('h in a year at this rate')),
    wetness: Type.Optional(
      Type.Integer({ minimum: 1, maximum: 5, description: 'category of time of wetness' }),
    ),
    verdict: oneOf(['unknown', 'dry', 'damp', 'wet']),
  }),
});
export type DryRoomAir = Static<typeof dryRoomAirAnswer>;

export const lotsLyingDuringQuery = closed({ from: instant, to: instant });

export const lotsLyingDuringAnswer = closed({
  items: Type.Array(
    closed({
      lotId: text(),
      lot: text(),
      state: text('of the lot now'),
      stringKey: text(),
      bins: Type.Array(text()),
      atFirst: wholeFrom(0, 'strings in bins when it began'),
      cameIn: wholeFrom(0, 'strings put into bins while it lasted, from other bins too'),
    }),
  ),
});

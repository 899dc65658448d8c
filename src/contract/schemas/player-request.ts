import Type from 'typebox';
import { closed, MATERIALS, oneOf, positive, text, wholeFrom } from './pieces.js';

/** A gauge asked for by number; whether plain or wound may be left to the shop's rule. */
const wantedString = closed({
  gaugeThou: positive('thousandths of an inch'),
  kind: Type.Optional(oneOf(['plain', 'wound'])),
});

const tuning = closed({
  name: Type.Optional(text()),
  pitches: Type.Array(
    closed({
      midi: Type.Integer({ minimum: 0, maximum: 127, description: 'MIDI note number; 69 is A4' }),
      cents: Type.Number({ minimum: -100, maximum: 100 }),
    }),
    { minItems: 1, maxItems: 24, description: 'open strings, treble first' },
  ),
  referenceHz: Type.Number({ minimum: 300, maximum: 600, description: 'frequency of A4, Hz' }),
});

const instrument = closed({
  name: text(),
  scaleLengthsM: Type.Array(positive('m'), {
    minItems: 1,
    maxItems: 24,
    description: 'sounding length of each string, treble first',
  }),
  stretchingLengthsM: Type.Optional(Type.Array(positive('m'), { maxItems: 24 })),
});

const gauges = Type.Array(wantedString, { minItems: 1, maxItems: 24, description: 'treble first' });

const wishes = closed({
  target: oneOf(['feel', 'even', 'graded', 'free'], 'feel: that of the set which is liked'),
  pullsN: Type.Optional(Type.Array(positive('N'), { minItems: 1, maxItems: 24 })),
  gradePerString: Type.Optional(Type.Number({ minimum: -1, maximum: 1, description: 'share of pull' })),
  heavierBass: Type.Optional(Type.Number({ minimum: -1, maximum: 1, description: 'share of pull' })),
  heavierTreble: Type.Optional(Type.Number({ minimum: -1, maximum: 1, description: 'share of pull' })),
  bendShare: Type.Optional(Type.Number({ minimum: 0, maximum: 1, description: '0 pull, 1 bending force' })),
  pins: Type.Optional(
    Type.Array(closed({ position: wholeFrom(1, '1 is the treble'), string: wantedString }), { maxItems: 24 }),
  ),
  woundThird: Type.Optional(Type.Boolean()),
});

/** What a player wishes, before it is a set. */
export const playerRequest = closed({
  instrument,
  tuning,
  octavesAssumed: Type.Boolean({ description: 'octaves were missing and the usual ones were taken' }),
  material: oneOf(MATERIALS),
  end: oneOf(['ball', 'loop']),
  reference: Type.Optional(
    closed(
      { strings: gauges, material: oneOf(MATERIALS), instrument, tuning },
      'the set that is liked, where it is liked',
    ),
  ),
  wishes,
});

/** What an order line wants: a stock set by name, a set by its gauges, or a request for the shop to answer. */
export const wantedSet = Type.Union([
  closed({ kind: Type.Literal('stock'), setName: text() }),
  closed({
    kind: Type.Literal('custom'),
    strings: gauges,
    material: oneOf(MATERIALS),
    end: oneOf(['ball', 'loop']),
  }),
  closed({ kind: Type.Literal('request'), request: playerRequest }),
]);

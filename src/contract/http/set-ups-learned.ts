import Type from 'typebox';
import { CHANGE_KINDS } from '../../core/winding/index.js';
import { id } from '../records/bodies.js';
import { closed, notNegative, oneOf, wholeFrom } from '../schemas/pieces.js';

const kind = oneOf(CHANGE_KINDS, 'what is changed, the length apart');

const figure = closed({
  setUps: wholeFrom(1, 'that it is learned from'),
  figure: notNegative('what the machine’s record lets expect of these changes, on average'),
  learned: notNegative('what is to be expected'),
  low: notNegative('the middle nine tenths of where that may lie'),
  high: notNegative('the same'),
});

export const setUpsLearnedAnswer = closed({
  leastSetUps: wholeFrom(1, 'with so many of a kind the plan goes by what is learned'),
  kinds: Type.Array(
    closed({
      machineId: id,
      kind,
      setUps: wholeFrom(1, 'set-ups'),
      scrap: figure,
      minutes: Type.Optional(figure),
      isUsed: Type.Boolean({ description: 'whether the plan goes by it' }),
    }),
  ),
  scrap: Type.Array(
    closed({
      machineId: id,
      kind,
      reason: Type.String(),
      strings: wholeFrom(0, 'strings scrapped in runs after such a change'),
      inSetUp: wholeFrom(0, 'of these, until the run was let run'),
    }),
  ),
});

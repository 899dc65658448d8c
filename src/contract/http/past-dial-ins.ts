import Type from 'typebox';
import { id } from '../records/bodies.js';
import { closed, text } from '../schemas/pieces.js';

export const pastDialInsQuery = closed({ machineId: id });

const errorsM = Type.Array(Type.Number(), { description: 'mean diameter less what was wanted, m' });

/** What past runs teach of dialling in, the oldest first. */
export const pastDialInAnswer = closed({
  machineId: text('as the shop calls it'),
  family: text('strings that are dialled in alike'),
  responseMPerUnit: Type.Number({ description: 'diameter gained by one unit of setting as reckoned, m' }),
  positions: Type.Array(
    closed({
      reckonedSetting: Type.Number(),
      strings: Type.Array(closed({ setting: Type.Number(), errorsM }), {
        description: 'each with its error at every place',
      }),
      overrideErrorsM: errorsM,
    }),
  ),
});

import Type from 'typebox';
import { closed, oneOf, positive } from './pieces.js';

/** What may be looked at of one end; what was not is left out, and never nought. */
export const endChecked = {
  lengthM: Type.Optional(positive('over all, m')),
  twists: Type.Optional(Type.Number({ minimum: 0, maximum: 100, description: 'turns of the twist' })),
  tailM: Type.Optional(
    Type.Number({ minimum: 0, maximum: 1, description: 'left behind the last turn, m; 0 where it is flush' }),
  ),
  seat: Type.Optional(oneOf(['straight', 'crooked', 'loose'], 'how ball or eye sits')),
  pull: Type.Optional(
    closed(
      {
        forceN: positive('the highest that it reached, N'),
        came: oneOf(
          ['held', 'at-twist', 'in-length', 'slipped'],
          'held and let go; broke at the end; broke along the wire; slipped out of its twist',
        ),
      },
      'the pull test',
    ),
  ),
};

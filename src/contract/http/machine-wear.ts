import Type, { type Static } from 'typebox';
import { id, instant } from '../records/bodies.js';
import { closed, date, notNegative, oneOf, text, wholeFrom } from '../schemas/pieces.js';

const metres = (of: string) => Type.Number({ description: `${of}, m` });
const days = (of: string) => notNegative(`days until the tolerance is used up, ${of}`);

const point = closed({
  date,
  offM: metres('mean of first strings less what was expected of them, instruments taken out'),
  u: notNegative('standard uncertainty, m'),
  runs: wholeFrom(1, 'of that month'),
});

const drift = closed({
  z: Type.Number({ description: 'Kendall’s statistic over its standard deviation' }),
  perDayM: closed(
    { value: metres('a day'), from: metres('a day'), to: metres('a day') },
    'median of pairwise slopes with its 90 % interval',
  ),
  soFarM: metres('over the days seen'),
  days: notNegative('days seen'),
  daysLeft: Type.Optional(
    closed(
      {
        value: days('at that rate'),
        earliest: days('at the fastest of the interval'),
        latest: Type.Optional(days('at the slowest')),
      },
      'only where a trend is proven',
    ),
  ),
});

/** Whether machines drift, by the first strings of their runs. */
export const machineWearAnswer = closed({
  at: instant,
  toleranceM: notNegative('of mean diameter to either side, m'),
  machines: Type.Array(
    closed({
      machineId: id,
      since: Type.Optional(date),
      verdict: oneOf(['too-little', 'steady', 'unclear', 'drifts', 'replace']),
      points: Type.Array(point, { description: 'month by month' }),
      drift: Type.Optional(drift),
    }),
    { description: '`since`: when its gears were measured anew; strings before that do not count' },
  ),
  instruments: Type.Array(
    closed({ instrument: text(), from: date, byM: metres('that it reads more since') }),
    { description: 'that read otherwise from some month on, as the others tell' },
  ),
});
export const machineWearQuery = closed({});

export type MachineWearView = Static<typeof machineWearAnswer>;

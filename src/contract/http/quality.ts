import Type, { type Static } from 'typebox';
import { GROUPINGS, MEASURES } from '../../core/quality/index.js';
import { id, instant } from '../records/bodies.js';
import { closed, date, notNegative, oneOf, share, text, wholeFrom } from '../schemas/pieces.js';

/** A maker's lot of a wire, as views name it: the wire's id, a slash, the lot. */
const lotId = text('the wire’s id, a slash, and the maker’s lot');
const metres = (of: string) => Type.Number({ description: `${of}, m` });
const chance = (of: string) => Type.Number({ minimum: 0, maximum: 1, description: `chance of ${of}` });
const figure = (of: string) => Type.Number({ description: `${of}: m, of weight a share` });

export const qualityQuery = closed({
  from: Type.Optional(date),
  until: Type.Optional(date),
  machineId: Type.Optional(id),
  recipeId: Type.Optional(id),
  lot: Type.Optional(lotId),
  instrument: Type.Optional(text()),
  measure: Type.Optional(
    oneOf(
      MEASURES,
      'which figure of each run: how far its first string was off, its running strings, how much strings vary along themselves, how far their weight is off',
    ),
  ),
  by: Type.Optional(oneOf(GROUPINGS, 'what groups are compared by')),
  mine: Type.Optional(oneOf(['yes'], 'only runs that one wound oneself')),
});

const drift = closed({
  machineId: id,
  verdict: oneOf(['drifts', 'replace']),
  perDayM: closed({ value: metres('a day'), from: metres('a day'), to: metres('a day') }),
  soFarM: metres('over the days seen'),
  days: notNegative('days seen'),
  since: date,
  daysLeft: Type.Optional(notNegative('until the tolerance is used up')),
  z: Type.Number({ description: 'Kendall’s statistic over its standard deviation' }),
  runs: wholeFrom(1, 'first strings that it rests on'),
});

const shift = closed({
  instrument: text(),
  since: date,
  byM: metres('that it reads more since'),
  fromM: metres('95 % interval'),
  toM: metres('95 % interval'),
  p: chance('as much without a shift, made good for all instruments'),
  runsBefore: wholeFrom(1, 'in which it met another'),
  runsSince: wholeFrom(1, 'in which it met another'),
});

const oddLot = closed({
  lot: lotId,
  by: oneOf(['along', 'weight']),
  value: Type.Number({ description: 'along: how many times as much; weight: by what share' }),
  from: Type.Number({ description: '95 % interval' }),
  to: Type.Number({ description: '95 % interval' }),
  p: chance('as much by luck, made good for all lots looked at'),
  runs: wholeFrom(1, 'made of it'),
  lotsLookedAt: wholeFrom(1, 'lots'),
});

const point = closed({
  runId: id,
  at: instant,
  value: figure('of the run'),
  strings: wholeFrom(1, 'that it stands on'),
  runs: wholeFrom(1, 'in a row that the point stands for'),
});

const series = closed({
  points: Type.Array(point, { description: 'at most 5,000, in the order in which runs were begun' }),
  limits: Type.Optional(
    closed({ centre: figure('mean'), lower: figure('limit'), upper: figure('limit') }, 'of chance alone'),
  ),
  signals: Type.Array(wholeFrom(0, 'place of a point that chance does not explain')),
  change: Type.Optional(
    closed(
      {
        point: wholeFrom(0, 'place of the first point after it'),
        before: figure('middle value'),
        after: figure('middle value'),
        p: chance('as much without a change'),
      },
      'where the level changed most, if that is proven',
    ),
  ),
});

const group = closed({
  name: text('id of machine or recipe, lot, or instrument'),
  runs: wholeFrom(1, 'runs'),
  strings: wholeFrom(1, 'strings'),
  mean: figure('of its runs'),
  spread: Type.Optional(figure('standard deviation between its runs')),
  against: Type.Optional(
    closed(
      {
        difference: figure('less the mean of all others'),
        from: figure('95 % interval'),
        to: figure('95 % interval'),
        p: chance('as much by luck, made good for all groups compared'),
      },
      'all others',
    ),
  ),
});

const named = closed({ id: text(), name: text() });

/** How the strings of a period came out, and what follows from it. */
export const qualityAnswer = closed({
  at: instant,
  from: date,
  until: date,
  toleranceM: notNegative('of mean diameter to either side, m'),
  measure: oneOf(MEASURES, 'that the series and the groups are of'),
  by: oneOf(GROUPINGS, 'what the groups are'),
  runs: wholeFrom(0, 'begun in that time, of what was asked for'),
  readings: wholeFrom(0, 'measurements of those runs'),
  findings: closed(
    {
      from: date,
      machines: Type.Array(drift),
      instruments: Type.Array(shift),
      lots: Type.Array(oddLot),
    },
    'of the whole shop, over the year that ends with the period: causes only',
  ),
  series,
  capability: Type.Optional(
    closed(
      {
        strings: wholeFrom(2, 'strings'),
        runs: wholeFrom(2, 'runs'),
        meanOffM: metres('mean less what was wanted'),
        sigmaM: notNegative('standard deviation of single strings, m'),
        ratio: closed({
          value: Type.Number(),
          from: Type.Number({ description: '95 % interval' }),
          to: Type.Number({ description: '95 % interval' }),
          atLeast: Type.Number({ description: 'with 95 % confidence' }),
        }),
      },
      'of running strings within the tolerance; left out where too few runs were measured',
    ),
  ),
  groups: Type.Array(group),
  firstPass: Type.Optional(
    closed({
      wound: wholeFrom(1, 'strings'),
      right: wholeFrom(0, 'that came through winding and coiling the first time'),
      share: share('of them'),
      from: share('exact 95 % interval'),
      to: share('exact 95 % interval'),
    }),
  ),
  scrap: Type.Array(
    closed({
      reason: Type.Optional(text('left out where nobody told it: mostly thrown away in setting up')),
      winder: wholeFrom(0, 'strings thrown away at the machine'),
      coiler: wholeFrom(0, 'strings thrown away in coiling'),
      cumulative: share('of all scrap, with all reasons above'),
    }),
    { description: 'the commonest first' },
  ),
  hands: Type.Optional(
    closed(
      {
        winders: wholeFrom(2, 'with runs enough'),
        share: share('of what is left of the scatter, between them'),
        p: chance('as much between winders who wind alike'),
      },
      'what lies between winders after machine, recipe, instrument and wire are taken out; nobody is named',
    ),
  ),
  choices: closed({
    machines: Type.Array(named),
    recipes: Type.Array(named),
    lots: Type.Array(named),
    instruments: Type.Array(text()),
  }),
});

export const qualityRunQuery = closed({ runId: id });

/** One run of a chart, down to its strings and spools. */
export const qualityRunAnswer = closed({
  runId: id,
  name: text(),
  machine: named,
  recipe: named,
  at: instant,
  good: wholeFrom(0, 'strings'),
  scrap: wholeFrom(0, 'strings'),
  spools: Type.Array(closed({ id, name: text(), wireId: id, wire: text(), lot: text() })),
  strings: Type.Array(
    closed({
      at: instant,
      instrument: text(),
      number: Type.Optional(wholeFrom(1, 'of the trial string')),
      position: Type.Optional(wholeFrom(1, 'of a machine that winds two at once')),
      verdict: Type.Optional(oneOf(['open', 'good', 'scrap'])),
      offM: Type.Optional(metres('mean diameter less what was wanted')),
      alongM: Type.Optional(notNegative('standard deviation between places along it, m')),
      weightOff: Type.Optional(Type.Number({ description: 'weight less what was wanted, as a share' })),
    }),
    { description: 'in the order in which they were measured' },
  ),
});

export type QualityQuery = Static<typeof qualityQuery>;
export type QualityView = Static<typeof qualityAnswer>;
export type QualityRunView = Static<typeof qualityRunAnswer>;

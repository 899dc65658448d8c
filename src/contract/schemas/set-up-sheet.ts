import Type from 'typebox';
import { ALLOYS, closed, estimate, notNegative, oneOf, positive, text, wholeFrom, within } from './pieces.js';

export const caution = oneOf([
  'rotating-spindle',
  'wire-whip',
  'sharp-ends',
  'nickel-skin',
  'metal-dust',
  'lock-out',
  'local-rules',
  'flatten-round-core',
  'turning-hook',
  'pull-test',
]);

const bound = closed(
  {
    upperN: positive('N'),
    share: positive('of the strength'),
    strengthPa: positive('Pa'),
    areaM2: positive('m²'),
    basis: oneOf(['core-elastic-limit', 'wrap-softest-temper-breaks']),
    temper: Type.Optional(text()),
    standing: oneOf(['printed', 'derived', 'memory']),
    sources: Type.Array(text()),
  },
  'upper = share x strength x area',
);

const fromRuns = {
  low: positive('N; nine times in ten the run is set between this and the next'),
  high: positive('N'),
  runs: wholeFrom(0, 'past runs that are near at all'),
  startShare: within(0, 1, 'how much of the figure is the cautious start’s'),
  leanedOn: Type.Array(
    closed({
      name: Type.Optional(text()),
      runId: Type.Optional(text()),
      date: Type.Optional(text()),
      machineId: text(),
      share: within(0, 1, 'of the whole figure'),
    }),
    { description: 'the nearest runs, nearest first' },
  ),
  dial: Type.Optional(Type.Number({ description: 'the number on the machine’s own scale' })),
};

const setPoint = Type.Union(
  [
    closed({
      kind: Type.Literal('from-record'),
      value: positive('N'),
      ...fromRuns,
      bound: Type.Optional(bound),
      shareOfBreaking: Type.Optional(positive('share')),
    }),
    closed({
      kind: Type.Literal('no-record'),
      start: positive('N; a guess to begin at'),
      ...fromRuns,
      upper: positive('N'),
      upperWhy: oneOf(['core-elastic-limit', 'wrap-softest-temper-breaks']),
      bound,
    }),
    closed({ kind: Type.Literal('unknown') }),
  ],
  {
    description:
      'A tension to set. No published values exist: where no past run is near, a cautious start is given as a guess.',
  },
);

const drive = Type.Union([
  closed({ kind: Type.Literal('servo'), pitchM: positive('wrap pitch to type in, m') }),
  closed({
    kind: Type.Literal('gear'),
    dial: Type.Number(),
    pitchM: positive('wrap pitch that the dial really gives, m'),
    gap: notNegative('over the pitch of touching turns'),
  }),
]);

const layer = closed({
  wireId: text(),
  wireDiameterM: positive('m'),
  woundLengthM: positive('m'),
  wrapPitchM: positive('m'),
  leadAngleRad: positive('rad'),
  turns: positive('turns'),
  wirePerStringM: positive('tails included, m'),
  wirePerStringKg: positive('kg'),
  spindleRpm: positive('turns a minute'),
  rpmLimitedBy: oneOf(['machine', 'wire-speed', 'whirl', 'record']),
  traverseMPerS: positive('m/s'),
  drive,
  wrapTension: setPoint,
  wrapStrain: Type.Optional(notNegative('share of its length')),
  windSeconds: positive('s'),
});

const whirl = closed(
  {
    layer: wholeFrom(0, 'from the core'),
    spindleRpm: positive('turns a minute'),
    freeSpanM: positive('m'),
    dampersAtM: Type.Array(positive('m from the support at the head')),
    nearestAtM: notNegative('along the wound length, m'),
    keepOutShare: notNegative('share'),
    leastCoreTensionN: positive('N'),
    damperBestAtM: positive('where one damper more does most, m from the head'),
    leastCoreTensionDampedN: positive('N; with that damper'),
    assumedTensionN: positive('N'),
    assumed: oneOf(['record', 'strength-bound', 'least-needed']),
    bareRpm: positive('turns a minute'),
    lowestRpm: positive('turns a minute'),
    marginShare: Type.Number(),
  },
  'How near the turning core comes to whirling',
);

const cautions = Type.Array(caution);

const pullTest = closed(
  {
    proofN: positive('N'),
    share: positive('of the wire’s least strength'),
    leastBreakingN: positive('N'),
    strengthPa: positive('Pa'),
    areaM2: positive('m²'),
    strengthFrom: oneOf(['certificate', 'standard']),
    table: Type.Optional(text()),
    sources: Type.Array(text()),
    whipMPerS: positive('as fast as a broken wire could fly, m/s'),
  },
  'proof = share x strength x area',
);

const ends = closed(
  {
    of: oneOf(['plain-string', 'core']),
    wireId: text(),
    shape: oneOf(['round', 'hex']),
    sizeM: positive('m'),
    alloy: oneOf(ALLOYS),
    end: oneOf(['ball', 'loop']),
    quantity: wholeFrom(1, 'strings or cores'),
    cut: closed({
      lengthM: positive('to cut, m'),
      lengthOverAllM: positive('m'),
      endM: notNegative('set aside for the end, m'),
      tailM: notNegative('held and cut off, m'),
      endNeedsM: positive('what the end takes by its geometry, m'),
    }),
    wireM: positive('of them all, m'),
    wireKg: positive('of them all, kg'),
    twists: closed({
      wanted: wholeFrom(1, 'full turns'),
      least: wholeFrom(1, 'full turns'),
      most: wholeFrom(1, 'full turns'),
      decidedBy: oneOf(['neck', 'friction', 'most-bends']),
    }),
    pullLeftShare: notNegative('of the pull, that friction leaves in the tail'),
    tail: closed({ wantedM: notNegative('m'), mostM: positive('m') }),
    lengthEitherWayM: positive('m'),
    pull: Type.Optional(pullTest),
    toPull: closed({
      pieces: wholeFrom(1, 'ends'),
      why: oneOf(['no-record', 'not-shown-yet', 'shown', 'one-gave-way']),
      goodInARow: wholeFrom(0, 'ends'),
      goodNeeded: wholeFrom(1, 'ends'),
      confidence: positive('share'),
      coverage: positive('share'),
    }),
    cautions,
  },
  'How wire is cut and ended: of a plain string, or of a core before it is wound',
);

export const setUpSheet = closed({
  kind: oneOf(['wind', 'cut']),
  lotId: text(),
  machineId: text(),
  machineName: text(),
  recipeId: text(),
  stringKey: text(),
  gaugeThou: positive('thousandths of an inch'),
  positions: Type.Union([Type.Literal(1), Type.Literal(2)]),
  quantity: wholeFrom(1, 'good strings'),
  core: closed({
    wireId: text(),
    shape: oneOf(['round', 'hex']),
    sizeM: positive('m'),
    cutLengthM: positive('m'),
    end: oneOf(['ball', 'loop']),
  }),
  ends: Type.Optional(ends),
  layers: Type.Array(layer, { description: 'from the core outwards; empty on the bench' }),
  meanDiameterM: estimate,
  caliperDiameterM: estimate,
  unitWeightKgPerM: estimate,
  whirl: Type.Optional(whirl),
  coreTension: Type.Optional(setPoint),
  cycleSeconds: positive('s'),
  runMinutes: positive('min'),
  setUpMinutes: notNegative('min'),
  expectedScrap: notNegative('strings'),
  firstOff: closed({
    strings: wholeFrom(1, 'strings'),
    placesFromEndM: Type.Array(positive('m')),
    rotationsDeg: Type.Array(notNegative('degrees')),
    why: oneOf(['hex-corners-and-flats', 'round-ovality']),
    kind: oneOf(['plain', 'round-core', 'hex-core', 'two-layers'], 'strings whose spreads are alike'),
    toleranceM: positive('to either side, m'),
    spreads: closed({
      betweenM: positive('string to string, m'),
      withinM: notNegative('place to place, m'),
      micrometerM: notNegative('micrometer and hand, m'),
      isOwn: Type.Boolean({ description: 'whether the first is the shop’s own' }),
    }),
    protocol: closed({
      stringsEach: wholeFrom(1, 'of each position'),
      places: wholeFrom(1, 'along each string'),
      stopBeyondM: positive('stopped where the mean is off by more, m'),
      badM: notNegative('m'),
      letGoChance: within(0, 1, 'that one so far off is let go'),
      goodM: positive('m'),
      stopChance: within(0, 1, 'that one no further off is stopped'),
      isEnough: Type.Boolean(),
    }),
  }),
  cautions,
  looseTail: Type.Optional(closed({ tailM: positive('m'), speedMPerS: positive('m/s') })),
});

import Type from 'typebox';
import {
  ALLOYS,
  closed,
  estimate,
  MATERIALS,
  notNegative,
  oneOf,
  positive,
  STRENGTH_TABLES,
  share,
  stringSpec,
  text,
  wholeFrom,
  wholeWithin,
  within,
} from './pieces.js';

const MINUTES_A_DAY = 24 * 60;
/** Above these a figure is a slip of the pen, and sums of money would lose their last figures. */
const MOST_MINOR = 10_000_000;
const MOST_MINOR_EACH = 100_000;
const MOST_STRINGS = 1_000_000;

const wireFields = {
  use: oneOf(['core', 'wrap']),
  shape: oneOf(['round', 'hex']),
  sizeM: positive('diameter; across flats of a hexagon, m'),
  alloy: oneOf(ALLOYS),
  strengthTable: Type.Optional(oneOf(STRENGTH_TABLES, 'core wire: the standard its strength is judged by')),
  certifiedStrengthPa: Type.Optional(positive('minimum tensile strength by the certificate, Pa')),
  priceMinorPerKg: wholeWithin(0, MOST_MINOR, 'price per kilogram in minor units of money'),
};

const wire = closed({ id: text(), ...wireFields });

/** A kind of wire as a record: its own name instead of an id. */
export const wireBody = closed({ name: text(), ...wireFields });

const spool = closed({
  id: text(),
  wireId: text(),
  lot: text(),
  netKg: within(0, 1000, 'wire on the spool, kg'),
});

const range = (unit: string) => closed({ least: notNegative(unit), most: positive(unit) });

const station = {
  name: text(),
  positions: Type.Union([Type.Literal(1), Type.Literal(2)], { description: 'strings made side by side' }),
  longestStringM: positive('m'),
  gaugesThou: range('thousandths of an inch'),
  loadSeconds: within(0, 3600, 'hand time a cycle, s'),
  unloadSeconds: within(0, 3600, 'hand time a cycle, s'),
  minutesPerDay: within(1, MINUTES_A_DAY, 'minutes on duty in a day; must end by midnight'),
  changeMinutes: closed({
    base: within(0, MINUTES_A_DAY, 'min'),
    core: within(0, MINUTES_A_DAY, 'min'),
    wrap: within(0, MINUTES_A_DAY, 'min'),
    alloy: within(0, MINUTES_A_DAY, 'min'),
    length: within(0, MINUTES_A_DAY, 'min'),
  }),
  changeScrap: closed({
    base: within(0, 1000, 'strings'),
    core: within(0, 1000, 'strings'),
    wrap: within(0, 1000, 'strings'),
    alloy: within(0, 1000, 'strings'),
  }),
};

const learnedChange = Type.Optional(
  closed({
    setUps: wholeFrom(1, 'set-ups that it is learned from'),
    scrapTimes: notNegative('scrap, as a multiple of the machine’s figure'),
    minutesTimes: Type.Optional(notNegative('minutes, likewise')),
  }),
);

/** Worked out, so no part of the record. */
const learned = {
  changeLearned: Type.Optional(
    closed(
      {
        length: learnedChange,
        core: learnedChange,
        wrap: learnedChange,
        'core+wrap': learnedChange,
        'wrap+alloy': learnedChange,
        'core+wrap+alloy': learnedChange,
      },
      'what the shop’s own set-ups make of these figures, by kind of change',
    ),
  ),
};

const knob = closed(
  {
    unit: Type.String({ maxLength: 12, description: '`N`; empty where it counts in numbers' }),
    least: Type.Number(),
    most: Type.Number(),
    step: positive('finest step'),
    deadBand: notNegative('smaller moves it does not follow'),
    backlash: notNegative('lost when the direction changes'),
    responseMPerUnit: Type.Number({ description: 'diameter gained by one unit, m; mostly negative' }),
    roughness: within(0, 1, 'how far off its mark a move lands, as a share of the move'),
  },
  'what is turned to move the diameter',
);

const winder = {
  ...station,
  knob: Type.Optional(knob),
  pullTable: Type.Optional(
    Type.Array(closed({ dial: Type.Number(), pullN: positive('N') }), {
      minItems: 2,
      description: 'what the numbers of its tension scale pull, measured, numbers ascending',
    }),
  ),
  kind: Type.Literal('winder'),
  spindleRpm: closed({
    least: notNegative('turns a minute'),
    most: within(10, 100_000, 'turns a minute'),
  }),
  wireSpeedLimitMPerS: positive('fastest run of the wrap wire, m/s'),
  freeSpanM: positive('longest free length of core between supports, m'),
  dampersAtM: Type.Optional(
    Type.Array(positive('m from the support at the head'), {
      maxItems: 8,
      description: 'where dampers hold the core still within the free span, ascending',
    }),
  ),
  coreSizeM: range('m'),
  wrapDiameterM: range('m'),
  maxLayers: Type.Union([Type.Literal(1), Type.Literal(2)]),
  hexCore: Type.Boolean(),
  roundCore: Type.Boolean(),
};

const servoWinder = {
  ...winder,
  drive: Type.Literal('servo'),
  pitchStepM: positive('m'),
  pitchM: range('m'),
};

const gearWinder = {
  ...winder,
  drive: Type.Literal('gear'),
  dialTable: Type.Array(closed({ dial: Type.Number(), traversePerTurnM: positive('m') }), {
    minItems: 2,
    description: 'measured, dial ascending',
  }),
  dialStep: positive('finest step of the dial'),
};

const cuttingBench = {
  ...station,
  kind: Type.Literal('bench'),
  ends: Type.Optional(
    closed(
      {
        makes: oneOf(['ball', 'loop', 'both']),
        twists: range('full turns'),
        tailM: closed({ least: notNegative('m'), most: positive('m') }),
        cutM: range('m'),
      },
      'what its core-end machine can do',
    ),
  ),
};

/** A machine as a record: its id is the record's. */
export const machineBody = Type.Union([closed(servoWinder), closed(gearWinder), closed(cuttingBench)]);

const named = { id: text() };
const machine = Type.Union([
  closed({ ...named, ...learned, ...servoWinder }),
  closed({ ...named, ...learned, ...gearWinder }),
  closed({ ...named, ...learned, ...cuttingBench }),
]);

const coreWire = {
  sizeM: positive('m'),
  alloy: oneOf(ALLOYS),
  strengthTable: oneOf(STRENGTH_TABLES),
  certifiedStrengthPa: Type.Optional(positive('Pa')),
};

const layer = closed({
  wireDiameterM: positive('m'),
  alloy: oneOf(ALLOYS),
  rolledThicknessM: Type.Optional(positive('m')),
  gap: notNegative('wrap pitch over touching pitch, less 1'),
});

export const construction = Type.Union([
  closed({ kind: Type.Literal('plain'), wire: closed({ ...coreWire, shape: Type.Literal('round') }) }),
  closed({
    kind: Type.Literal('wound'),
    core: closed({ ...coreWire, shape: oneOf(['round', 'hex']) }),
    layers: Type.Union([Type.Tuple([layer]), Type.Tuple([layer, layer])], {
      description: 'from the core outwards',
    }),
  }),
]);

const recipe = closed({
  id: text(),
  gaugeThou: positive('thousandths of an inch'),
  material: oneOf(MATERIALS),
  construction,
  state: oneOf(['predicted', 'calibrated']),
  version: wholeFrom(1, 'counts up with every change'),
  coreWireId: text(),
  wrapWireIds: Type.Array(text()),
});

const pitch = closed({
  midi: Type.Integer({ minimum: 0, maximum: 127, description: 'MIDI note number; 69 is A4' }),
  cents: within(-100, 100, 'offset from the note'),
});

const tuning = closed({
  name: Type.Optional(text()),
  pitches: Type.Array(pitch, { minItems: 1, description: 'open strings, treble first' }),
  referenceHz: within(220, 880, 'frequency of A4, Hz'),
});

const instrument = closed({
  name: text(),
  scaleLengthsM: Type.Array(positive('m'), {
    minItems: 1,
    description: 'sounding length of each string, treble first',
  }),
  stretchingLengthsM: Type.Optional(Type.Array(positive('m'))),
});

const stringStock = closed({
  spec: stringSpec,
  count: wholeWithin(0, MOST_STRINGS, 'strings in the bin'),
  binId: text(),
  lot: text(),
  reorderLevel: wholeWithin(0, MOST_STRINGS, 'top up when fewer lie there; 0 is made to order'),
});

export const rules = closed({
  lotSize: wholeWithin(1, 10_000, 'strings'),
  stressLimit: within(0.1, 1, 'share of minimum strength'),
  plainUpToThou: positive('thousandths of an inch'),
  thickestPlainThou: positive('thousandths of an inch'),
  thinnestWoundThou: positive('thousandths of an inch'),
  standardLengthM: within(0.3, 3, 'm'),
  longLengthM: within(0.3, 3, 'm'),
  standardScaleUpToM: positive('m'),
  dayStartsAtMinute: wholeWithin(0, MINUTES_A_DAY - 1, 'minutes after midnight'),
  workingDays: Type.Array(Type.Integer({ minimum: 1, maximum: 7 }), {
    minItems: 1,
    description: '1 is Monday',
  }),
});

export const rates = closed({
  currency: Type.String({ pattern: '^[A-Z]{3}$', description: 'ISO 4217 code' }),
  minorDigits: Type.Integer({ minimum: 0, maximum: 4 }),
  labourMinorPerHour: wholeWithin(0, MOST_MINOR, 'minor units'),
  overheadShare: share('of labour'),
  endMinorEach: closed({
    ball: wholeWithin(0, MOST_MINOR_EACH, 'minor units'),
    loop: wholeWithin(0, MOST_MINOR_EACH, 'minor units'),
  }),
  packMinorPerSet: wholeWithin(0, MOST_MINOR_EACH, 'minor units'),
  packMinutesPerSet: within(0, MINUTES_A_DAY, 'min'),
  runScrapShare: within(0, 1, 'share of good strings'),
});

const seatFigures = {
  massSeat: estimate,
  caliperSeat: estimate,
  flattening: estimate,
  axialShare: estimate,
  bendingShare: estimate,
  extraGap: Type.Optional(estimate),
  correlations: Type.Optional(
    Type.Array(Type.Number({ minimum: -1, maximum: 1 }), {
      minItems: 10,
      maxItems: 10,
      description:
        'of massSeat, caliperSeat, flattening, extraGap and axialShare, row by row below the diagonal',
    }),
  ),
  state: oneOf(['predicted', 'calibrated']),
};

export const seatFamily = closed({
  coreShape: oneOf(['round', 'hex']),
  wrapAlloy: oneOf(ALLOYS),
  wrapBand: oneOf(['thin', 'middle', 'thick'], 'of the outermost wrap wire'),
});

export const seatModel = closed({
  ...seatFigures,
  families: Type.Optional(
    Type.Array(
      closed({
        ...seatFigures,
        family: seatFamily,
        machineId: Type.Optional(text('left out: on whichever machine')),
        strings: wholeFrom(0, 'measured strings that it was learned from'),
      }),
      { description: 'families of strings that more is known of; they stand in place of the rest' },
    ),
  ),
});

/** How far a shop's own strings differ, as its last calibration settled it. */
export const ownSpread = closed({
  stringM: positive('diameter from string to string at one setting, m'),
  degrees: notNegative('degrees of freedom by which it is known'),
});

const pastRun = closed(
  {
    machineId: text(),
    name: Type.Optional(text()),
    runId: Type.Optional(text()),
    date: Type.Optional(text('on which it ended')),
    recipeId: Type.Optional(text()),
    core: closed({
      shape: oneOf(['round', 'hex']),
      sizeM: positive('m'),
      tensionN: Type.Optional(positive('N')),
      lot: Type.Optional(text('of the wire')),
    }),
    layers: Type.Array(
      closed({
        alloy: oneOf(ALLOYS),
        wireDiameterM: positive('m'),
        tensionN: Type.Optional(positive('N')),
        spindleRpm: Type.Optional(positive('turns a minute')),
        lot: Type.Optional(text('of the wire')),
      }),
      { description: 'from the core outwards' },
    ),
  },
  'what a machine was set to in a run whose strings were good',
);

/** The file that a shop keeps of itself: `--shop FILE`. Lengths in metres, money in minor units. */
export const ShopSchema = Type.Object(
  {
    $schema: Type.Optional(Type.String()),
    name: text(),
    invented: Type.Boolean({ description: 'true for a workshop that does not exist' }),
    wires: Type.Array(wire),
    spools: Type.Array(spool),
    machines: Type.Array(machine),
    setUpNow: Type.Array(closed({ machineId: text(), recipeId: text(), lengthM: positive('m') })),
    recipes: Type.Array(recipe),
    sets: Type.Array(
      closed({
        id: text(),
        name: text(),
        version: wholeFrom(1, 'counts up'),
        strings: Type.Array(stringSpec, { minItems: 1 }),
      }),
    ),
    instruments: Type.Array(instrument),
    tunings: Type.Array(closed({ name: text(), tuning })),
    bins: Type.Array(
      closed({ id: text(), walkOrder: Type.Number({ description: 'bins are walked by this, ascending' }) }),
    ),
    strings: Type.Array(stringStock),
    rates,
    rules,
    seat: Type.Optional(seatModel),
    spread: Type.Optional(ownSpread),
    record: Type.Optional(
      Type.Array(pastRun, { description: 'past runs, newest first; set-up advice leans on them' }),
    ),
  },
  {
    title: 'Tautwork shop',
    description: 'All that a shop owns and has settled. SI units; money in minor units.',
    additionalProperties: false,
  },
);

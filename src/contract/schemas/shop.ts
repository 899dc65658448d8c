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
} from './pieces.js';

const wire = closed({
  id: text(),
  use: oneOf(['core', 'wrap']),
  shape: oneOf(['round', 'hex']),
  sizeM: positive('diameter; across flats of a hexagon, m'),
  alloy: oneOf(ALLOYS),
  strengthTable: Type.Optional(oneOf(STRENGTH_TABLES, 'core wire: the standard its strength is judged by')),
  certifiedStrengthPa: Type.Optional(positive('minimum tensile strength by the certificate, Pa')),
  priceMinorPerKg: wholeFrom(0, 'price per kilogram in minor units of money'),
});

const spool = closed({
  id: text(),
  wireId: text(),
  lot: text(),
  netKg: notNegative('wire on the spool, kg'),
});

const range = (unit: string) => closed({ least: notNegative(unit), most: positive(unit) });

const station = {
  id: text(),
  name: text(),
  positions: Type.Union([Type.Literal(1), Type.Literal(2)], { description: 'strings made side by side' }),
  longestStringM: positive('m'),
  gaugesThou: range('thousandths of an inch'),
  loadSeconds: notNegative('hand time a cycle, s'),
  unloadSeconds: notNegative('hand time a cycle, s'),
  minutesPerDay: positive('minutes on duty in a day'),
  changeMinutes: closed({
    base: notNegative('min'),
    core: notNegative('min'),
    wrap: notNegative('min'),
    alloy: notNegative('min'),
    length: notNegative('min'),
  }),
  changeScrap: closed({
    base: notNegative('strings'),
    core: notNegative('strings'),
    wrap: notNegative('strings'),
    alloy: notNegative('strings'),
  }),
};

const winder = {
  ...station,
  kind: Type.Literal('winder'),
  spindleRpm: range('turns a minute'),
  wireSpeedLimitMPerS: positive('fastest run of the wrap wire, m/s'),
  freeSpanM: positive('longest free length of core between supports, m'),
  coreSizeM: range('m'),
  wrapDiameterM: range('m'),
  maxLayers: Type.Union([Type.Literal(1), Type.Literal(2)]),
  hexCore: Type.Boolean(),
  roundCore: Type.Boolean(),
};

const servoWinder = closed({
  ...winder,
  drive: Type.Literal('servo'),
  pitchStepM: positive('m'),
  pitchM: range('m'),
});

const gearWinder = closed({
  ...winder,
  drive: Type.Literal('gear'),
  dialTable: Type.Array(closed({ dial: Type.Number(), traversePerTurnM: positive('m') }), {
    minItems: 2,
    description: 'measured, dial ascending',
  }),
  dialStep: positive('finest step of the dial'),
});

const cuttingBench = closed({ ...station, kind: Type.Literal('bench') });

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

const construction = Type.Union([
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
  cents: Type.Number(),
});

const tuning = closed({
  name: Type.Optional(text()),
  pitches: Type.Array(pitch, { minItems: 1, description: 'open strings, treble first' }),
  referenceHz: positive('frequency of A4, Hz'),
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
  count: wholeFrom(0, 'strings in the bin'),
  binId: text(),
  lot: text(),
  reorderLevel: wholeFrom(0, 'top up when fewer lie there; 0 is made to order'),
});

const rules = closed({
  lotSize: wholeFrom(1, 'strings'),
  stressLimit: share('of minimum strength'),
  plainUpToThou: positive('thousandths of an inch'),
  thickestPlainThou: positive('thousandths of an inch'),
  thinnestWoundThou: positive('thousandths of an inch'),
  standardLengthM: positive('m'),
  longLengthM: positive('m'),
  standardScaleUpToM: positive('m'),
  dayStartsAtMinute: wholeFrom(0, 'minutes after midnight'),
  workingDays: Type.Array(Type.Integer({ minimum: 1, maximum: 7 }), {
    minItems: 1,
    description: '1 is Monday',
  }),
});

const rates = closed({
  currency: Type.String({ pattern: '^[A-Z]{3}$', description: 'ISO 4217 code' }),
  minorDigits: Type.Integer({ minimum: 0, maximum: 4 }),
  labourMinorPerHour: wholeFrom(0, 'minor units'),
  overheadShare: share('of labour'),
  endMinorEach: closed({ ball: wholeFrom(0, 'minor units'), loop: wholeFrom(0, 'minor units') }),
  packMinorPerSet: wholeFrom(0, 'minor units'),
  packMinutesPerSet: notNegative('min'),
  runScrapShare: share('of good strings'),
});

/** The file that a shop keeps of itself: `--shop FILE`. Lengths in metres, money in minor units. */
export const ShopSchema = Type.Object(
  {
    $schema: Type.Optional(Type.String()),
    name: text(),
    invented: Type.Boolean({ description: 'true for a workshop that does not exist' }),
    wires: Type.Array(wire),
    spools: Type.Array(spool),
    machines: Type.Array(Type.Union([servoWinder, gearWinder, cuttingBench])),
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
    seat: Type.Optional(
      closed({
        massSeat: estimate,
        caliperSeat: estimate,
        flattening: estimate,
        axialShare: estimate,
        bendingShare: estimate,
        state: oneOf(['predicted', 'calibrated']),
      }),
    ),
  },
  {
    title: 'Tautwork shop',
    description: 'All that a shop owns and has settled. SI units; money in minor units.',
    additionalProperties: false,
  },
);

import type { BodyOf } from '../../../contract/index.js';
import { ALLOYS, STRENGTH_TABLES } from '../../../core/materials/index.js';
import type { SHOP_WORDS } from '../../words/shop.js';
import type { FieldSpec, Option } from './form/form-spec.js';
import { readPitches, readScales, writePitches, writeScales } from './form/list-texts.js';
import { figure, millimetres, percent, thou } from './form/rules.js';

type Words = (typeof SHOP_WORDS)['en'];

export function specsOfWire({ name, wire: words, rules: { minorHint } }: Words): readonly FieldSpec[] {
  const { groups, fields, uses, shapes } = words;
  return [
    { path: 'name', label: name, group: groups.it, kind: { type: 'text' } },
    { path: 'use', label: fields.use, group: groups.it, kind: { type: 'choice', options: optionsOf(uses) } },
    {
      path: 'shape',
      label: fields.shape,
      group: groups.it,
      kind: { type: 'choice', options: optionsOf(shapes) },
    },
    {
      path: 'sizeM',
      label: fields.size,
      group: groups.it,
      kind: { type: 'amount', rule: thou(1, 200) },
    },
    {
      path: 'alloy',
      label: fields.alloy,
      group: groups.it,
      kind: {
        type: 'choice',
        options: Object.values(ALLOYS).map((alloy) => ({ value: alloy.id, label: alloy.name })),
      },
    },
    {
      path: 'strengthTable',
      label: fields.table,
      hint: words.tableHint,
      group: groups.strength,
      kind: {
        type: 'choice',
        optional: true,
        options: Object.entries(STRENGTH_TABLES).map(([value, { designation }]) => ({
          value,
          label: designation,
        })),
      },
    },
    {
      path: 'certifiedStrengthPa',
      label: fields.certified,
      hint: words.certifiedHint,
      group: groups.strength,
      kind: {
        type: 'amount',
        optional: true,
        rule: { units: { MPa: 1e6, mpa: 1e6, ksi: 6894757.293168361 }, bare: 'MPa', least: 1e6, most: 6e9 },
      },
    },
    {
      path: 'priceMinorPerKg',
      label: fields.price,
      hint: minorHint,
      group: groups.price,
      kind: { type: 'amount', rule: figure(0, 10_000_000, true) },
    },
  ];
}

export const specsOfBin = (
  { name, bin: { group, fields, levelHint } }: Words,
  kinds: readonly Option[],
): readonly FieldSpec[] => [
  { path: 'name', label: name, group, kind: { type: 'text' } },
  { path: 'walkOrder', label: fields.walk, group, kind: { type: 'amount', rule: figure(0, 1_000_000) } },
  {
    path: 'stringKey',
    label: fields.holds,
    group,
    kind: { type: 'choice', optional: true, options: kinds },
  },
  {
    path: 'reorderLevel',
    label: fields.level,
    hint: levelHint,
    group,
    kind: { type: 'amount', rule: figure(0, 1_000_000, true) },
  },
];

export const specsOfInstrument = ({ name, instrument: words }: Words): readonly FieldSpec[] => [
  { path: 'name', label: name, group: words.group, kind: { type: 'text' } },
  {
    path: 'scaleLengthsM',
    label: words.fields.scales,
    hint: words.scalesHint,
    group: words.group,
    kind: { type: 'list', read: readScales, write: writeScales },
  },
  {
    path: 'stretchingLengthsM',
    label: words.fields.stretching,
    hint: words.stretchingHint,
    group: words.group,
    kind: { type: 'list', read: readScales, write: writeScales, optional: true },
  },
];

export const specsOfTuning = ({ name, tuning: words }: Words): readonly FieldSpec[] => [
  { path: 'name', label: name, group: words.group, kind: { type: 'text' } },
  {
    path: 'pitches',
    label: words.fields.pitches,
    hint: words.pitchesHint,
    group: words.group,
    kind: { type: 'list', read: readPitches, write: writePitches },
  },
  {
    path: 'referenceHz',
    label: words.fields.reference,
    group: words.group,
    kind: { type: 'amount', rule: { units: { Hz: 1, hz: 1 }, bare: 'Hz', least: 220, most: 880 } },
  },
];

export function specsOfSettings({ name, rules: words }: Words): readonly FieldSpec[] {
  const { groups, fields, weekdays } = words;
  const amount = (
    path: string,
    label: string,
    group: string,
    rule: ReturnType<typeof figure>,
    more: { readonly hint?: string; readonly optional?: boolean } = {},
  ): FieldSpec => ({
    path,
    label,
    group,
    ...(more.hint === undefined ? {} : { hint: more.hint }),
    kind: { type: 'amount', rule, ...(more.optional ? { optional: true } : {}) },
  });
  const money = figure(0, 10_000_000, true);
  const degrees = figure(-40, 80);
  const inLimits = { hint: words.limitsHint, optional: true };
  const coin = { hint: words.minorHint };
  return [
    { path: 'name', label: name, group: groups.it, kind: { type: 'text' } },
    amount('rules.lotSize', fields.lotSize, groups.lots, figure(1, 10_000, true)),
    amount('rules.stressLimit', fields.stressLimit, groups.lots, percent(10, 100)),
    amount('rules.plainUpToThou', fields.plainUpTo, groups.lots, figure(1, 200)),
    amount('rules.thickestPlainThou', fields.thickestPlain, groups.lots, figure(1, 200)),
    amount('rules.thinnestWoundThou', fields.thinnestWound, groups.lots, figure(1, 200)),
    amount('rules.standardLengthM', fields.standardLength, groups.lots, millimetres(300, 3000)),
    amount('rules.longLengthM', fields.longLength, groups.lots, millimetres(300, 3000)),
    amount('rules.standardScaleUpToM', fields.standardScale, groups.lots, millimetres(300, 3000)),
    amount('rules.dayStartsAtMinute', fields.dayStarts, groups.days, figure(0, 1439, true), {
      hint: words.minuteHint,
    }),
    {
      path: 'rules.workingDays',
      label: fields.workingDays,
      group: groups.days,
      kind: {
        type: 'several',
        options: weekdays.map((label, at) => ({ value: String(at + 1), label })),
      },
    },
    amount('limits.dryRoom.leastC', fields.leastC, groups.limits, degrees, inLimits),
    amount('limits.dryRoom.mostC', fields.mostC, groups.limits, degrees, inLimits),
    amount('limits.dryRoom.mostHumidity', fields.mostHumidity, groups.limits, percent(1, 100), inLimits),
    amount('limits.wireCoverDays', fields.cover, groups.limits, figure(1, 1000), {
      hint: words.coverHint,
      optional: true,
    }),
    { path: 'rates.currency', label: fields.currency, group: groups.rates, kind: { type: 'text' } },
    amount('rates.minorDigits', fields.digits, groups.rates, figure(0, 4, true)),
    amount('rates.labourMinorPerHour', fields.labour, groups.rates, money, coin),
    amount('rates.overheadShare', fields.overhead, groups.rates, percent(0, 1000)),
    amount('rates.endMinorEach.ball', fields.ball, groups.rates, money, coin),
    amount('rates.endMinorEach.loop', fields.loop, groups.rates, money, coin),
    amount('rates.packMinorPerSet', fields.pack, groups.rates, money, coin),
    amount('rates.packMinutesPerSet', fields.packMinutes, groups.rates, figure(0, 1440)),
    amount('rates.runScrapShare', fields.runScrap, groups.rates, percent(0, 100)),
  ];
}

const optionsOf = (labels: Readonly<Record<string, string>>): readonly Option[] =>
  Object.entries(labels).map(([value, label]) => ({ value, label }));

export const NEW_WIRE: BodyOf<'wire'> = {
  name: '',
  use: 'wrap',
  shape: 'round',
  sizeM: 0.000254,
  alloy: 'nickel-plated-steel',
  priceMinorPerKg: 0,
};
export const NEW_BIN: BodyOf<'bin'> = { name: '', walkOrder: 0, reorderLevel: 0 };
export const NEW_INSTRUMENT: BodyOf<'instrument'> = {
  name: '',
  scaleLengthsM: [0.648, 0.648, 0.648, 0.648, 0.648, 0.648],
};
export const NEW_TUNING: BodyOf<'tuning'> = {
  name: '',
  pitches: [64, 59, 55, 50, 45, 40].map((midi) => ({ midi, cents: 0 })),
  referenceHz: 440,
};

/** What an unsettled shop begins with: middling figures, to be written over. */
export const NEW_SETTINGS: BodyOf<'settings'> = {
  name: '',
  invented: false,
  rules: {
    lotSize: 24,
    stressLimit: 0.8,
    plainUpToThou: 19,
    thickestPlainThou: 26,
    thinnestWoundThou: 17,
    standardLengthM: 1,
    longLengthM: 1.25,
    standardScaleUpToM: 0.67,
    dayStartsAtMinute: 450,
    workingDays: [1, 2, 3, 4, 5],
  },
  rates: {
    currency: 'EUR',
    minorDigits: 2,
    labourMinorPerHour: 0,
    overheadShare: 0,
    endMinorEach: { ball: 0, loop: 0 },
    packMinorPerSet: 0,
    packMinutesPerSet: 0,
    runScrapShare: 0,
  },
};

import type { BodyOf } from '../../../contract/index.js';
import type { SHOP_WORDS } from '../../words/shop.js';
import type { FieldSpec } from './form/form-spec.js';
import {
  readDialRows,
  readPlaces,
  readPullRows,
  writeDialRows,
  writePlaces,
  writePullRows,
} from './form/list-texts.js';
import { figure, millimetres, percent, thou } from './form/rules.js';

type MachineBody = BodyOf<'machine'>;
type Words = (typeof SHOP_WORDS)['en'];

/** The fields of a machine, by what it is. */
export function specsOfMachine(body: MachineBody, words: Words): readonly FieldSpec[] {
  const common = stationSpecs(words);
  if (body.kind === 'bench') return [...common, ...endSpecs(words)];
  return [
    ...common,
    ...winderSpecs(words),
    ...(body.drive === 'gear' ? gearSpecs(words) : servoSpecs(words)),
    ...knobSpecs(words),
  ];
}

function stationSpecs({ name, machine: { groups, fields } }: Words): readonly FieldSpec[] {
  const amount = (path: string, label: string, group: string, rule = figure(0, 3600)): FieldSpec => ({
    path,
    label,
    group,
    kind: { type: 'amount', rule },
  });
  const minutes = figure(0, 1440);
  const strings = figure(0, 1000);
  return [
    { path: 'name', label: name, group: groups.it, kind: { type: 'text' } },
    {
      path: 'positions',
      label: fields.positions,
      group: groups.it,
      kind: { type: 'choice', numeric: true, options: ONE_OR_TWO },
    },
    amount('longestStringM', fields.longest, groups.able, millimetres(100, 5000)),
    amount('gaugesThou.least', fields.gaugeLeast, groups.able, figure(0, 200)),
    amount('gaugesThou.most', fields.gaugeMost, groups.able, figure(1, 200)),
    amount('loadSeconds', fields.load, groups.hand),
    amount('unloadSeconds', fields.unload, groups.hand),
    amount('minutesPerDay', fields.minutes, groups.hand, figure(1, 1440)),
    amount('changeMinutes.base', fields.base, groups.change, minutes),
    amount('changeMinutes.core', fields.core, groups.change, minutes),
    amount('changeMinutes.wrap', fields.wrap, groups.change, minutes),
    amount('changeMinutes.alloy', fields.alloy, groups.change, minutes),
    amount('changeMinutes.length', fields.length, groups.change, minutes),
    amount('changeScrap.base', fields.base, groups.scrap, strings),
    amount('changeScrap.core', fields.core, groups.scrap, strings),
    amount('changeScrap.wrap', fields.wrap, groups.scrap, strings),
    amount('changeScrap.alloy', fields.alloy, groups.scrap, strings),
  ];
}

/** All or none of them: an end machine that is half written down is refused by the shop. */
function endSpecs({ machine: { groups, fields, makes, endsHint } }: Words): readonly FieldSpec[] {
  const amount = (path: string, label: string, rule: ReturnType<typeof figure>): FieldSpec => ({
    path,
    label,
    group: groups.ends,
    kind: { type: 'amount', rule, optional: true },
  });
  return [
    {
      path: 'ends.makes',
      label: fields.makes,
      hint: endsHint,
      group: groups.ends,
      kind: {
        type: 'choice',
        optional: true,
        options: (['ball', 'loop', 'both'] as const).map((value) => ({ value, label: makes[value] })),
      },
    },
    amount('ends.twists.least', fields.twistsLeast, figure(0, 40)),
    amount('ends.twists.most', fields.twistsMost, figure(1, 40)),
    amount('ends.tailM.least', fields.tailLeast, millimetres(0, 50)),
    amount('ends.tailM.most', fields.tailMost, millimetres(0.1, 50)),
    amount('ends.cutM.least', fields.cutLeast, millimetres(0, 5000)),
    amount('ends.cutM.most', fields.cutMost, millimetres(1, 5000)),
  ];
}

function winderSpecs({ machine: { groups, fields } }: Words): readonly FieldSpec[] {
  const group = groups.able;
  const amount = (path: string, label: string, rule = thou(1, 200)): FieldSpec => ({
    path,
    label,
    group,
    kind: { type: 'amount', rule },
  });
  return [
    amount('coreSizeM.least', fields.coreLeast),
    amount('coreSizeM.most', fields.coreMost),
    amount('wrapDiameterM.least', fields.wrapLeast),
    amount('wrapDiameterM.most', fields.wrapMost),
    {
      path: 'maxLayers',
      label: fields.layers,
      group,
      kind: { type: 'choice', numeric: true, options: ONE_OR_TWO },
    },
    { path: 'hexCore', label: fields.hex, group, kind: { type: 'flag' } },
    { path: 'roundCore', label: fields.round, group, kind: { type: 'flag' } },
    { ...amount('spindleRpm.least', fields.rpmLeast, figure(0, 100_000)), group: groups.drive },
    { ...amount('spindleRpm.most', fields.rpmMost, figure(10, 100_000)), group: groups.drive },
    { ...amount('wireSpeedLimitMPerS', fields.wireSpeed, figure(0.01, 100)), group: groups.drive },
    { ...amount('freeSpanM', fields.freeSpan, millimetres(10, 5000)), group: groups.drive },
    {
      path: 'dampersAtM',
      label: fields.dampers,
      hint: fields.dampersHint,
      group: groups.drive,
      kind: { type: 'list', read: readPlaces, write: writePlaces, optional: true },
    },
  ];
}

function servoSpecs({ machine: { groups, fields } }: Words): readonly FieldSpec[] {
  const amount = (path: string, label: string, most = 10): FieldSpec => ({
    path,
    label,
    group: groups.drive,
    kind: { type: 'amount', rule: millimetres(0.0001, most) },
  });
  return [
    amount('pitchStepM', fields.pitchStep, 1),
    amount('pitchM.least', fields.pitchLeast),
    amount('pitchM.most', fields.pitchMost),
  ];
}

const gearSpecs = ({ machine: { groups, fields, dialHint } }: Words): readonly FieldSpec[] => [
  {
    path: 'dialStep',
    label: fields.dialStep,
    group: groups.drive,
    kind: { type: 'amount', rule: figure(0.0001, 1000) },
  },
  {
    path: 'dialTable',
    label: fields.dialTable,
    hint: dialHint,
    group: groups.drive,
    kind: { type: 'list', read: readDialRows, write: writeDialRows },
  },
];

/** All of the knob is said or nothing. */
function knobSpecs({ machine: { groups, fields, knobHint, pullHint } }: Words): readonly FieldSpec[] {
  const group = groups.knob;
  const amount = (path: string, label: string, rule = figure(0, 1e6)): FieldSpec => ({
    path: `knob.${path}`,
    label,
    group,
    together: 'knob',
    kind: { type: 'amount', rule, optional: true },
  });
  return [
    {
      path: 'knob.unit',
      together: 'knob',
      label: fields.knobUnit,
      hint: knobHint,
      group,
      kind: {
        type: 'choice',
        optional: true,
        options: [
          { value: 'N', label: fields.knobNewtons },
          { value: 'numbers', label: fields.knobNumbers, means: '' },
        ],
      },
    },
    amount('least', fields.knobLeast, figure(-1e6, 1e6)),
    amount('most', fields.knobMost, figure(-1e6, 1e6)),
    amount('step', fields.knobStep, figure(1e-6, 1e6)),
    amount('deadBand', fields.knobDeadBand),
    amount('backlash', fields.knobBacklash),
    amount('responseMPerUnit', fields.knobResponse, {
      units: { µm: 1e-6, mm: 0.001, thou: 25.4e-6 },
      bare: 'µm',
      least: -0.001,
      most: 0.001,
    }),
    amount('roughness', fields.knobRoughness, percent(0, 100)),
    {
      path: 'pullTable',
      label: fields.pullTable,
      hint: pullHint,
      group,
      kind: { type: 'list', read: readPullRows, write: writePullRows, optional: true },
    },
  ];
}

const ONE_OR_TWO = [
  { value: '1', label: '1' },
  { value: '2', label: '2' },
];

const STATION = {
  name: '',
  positions: 1,
  longestStringM: 1.3,
  gaugesThou: { least: 18, most: 130 },
  loadSeconds: 15,
  unloadSeconds: 10,
  minutesPerDay: 450,
  changeMinutes: { base: 6, core: 7, wrap: 9, alloy: 4, length: 3 },
  changeScrap: { base: 2, core: 1, wrap: 3, alloy: 1 },
} as const;

const WINDER = {
  ...STATION,
  kind: 'winder',
  spindleRpm: { least: 300, most: 6000 },
  wireSpeedLimitMPerS: 8,
  freeSpanM: 0.45,
  coreSizeM: { least: 0.0002286, most: 0.001016 },
  wrapDiameterM: { least: 0.0000762, most: 0.000762 },
  maxLayers: 1,
  hexCore: true,
  roundCore: true,
} as const;

/** What a new machine begins with, by what it is: middling figures, to be written over. */
export const NEW_MACHINES: Readonly<Record<'servo' | 'gear' | 'bench', MachineBody>> = {
  servo: { ...WINDER, drive: 'servo', pitchStepM: 0.000001, pitchM: { least: 0.00005, most: 0.002 } },
  gear: {
    ...WINDER,
    drive: 'gear',
    dialStep: 1,
    dialTable: [
      { dial: 10, traversePerTurnM: 0.0001 },
      { dial: 100, traversePerTurnM: 0.001 },
    ],
  },
  bench: { ...STATION, kind: 'bench', gaugesThou: { least: 7, most: 26 } },
};

import {
  cautionInWords,
  countInWords,
  durationInWords,
  firstOffInWords,
  leanedOnInWords,
  looseTailInWords,
  protocolInWords,
  setPointInWords,
  speedLimitInWords,
  whirlInWords,
  wholeStringInWords,
} from '../contract/index.js';
import type { Estimate } from '../core/numeric/index.js';
import { formatFraction, formatMillimetres, formatThou, formatUnitWeight } from '../core/units/index.js';
import type { LayerSetUp, SetPoint, SetUpSheet } from '../core/winding/index.js';
import { endsLines } from './ends-report.js';

/** A set-up sheet for a person at a terminal: cautions first, as on paper. */
export function sheetReport(sheet: SetUpSheet): string {
  return [
    `Set-up of ${sheet.machineName}: ${wholeStringInWords(sheet.stringKey)} (recipe ${sheet.recipeId})`,
    ['Before the hand goes in', ...sheet.cautions.map(cautionLine), ...tailLine(sheet)].join('\n'),
    coreLines(sheet),
    ...sheet.layers.map((layer, at) => layerLines(layer, at, sheet.layers.length)),
    ...(sheet.ends?.of === 'plain-string' ? [endsLines(sheet.ends)] : []),
    expectedLines(sheet),
    firstOffLines(sheet),
    timeLines(sheet),
  ].join('\n\n');
}

const cautionLine = (caution: SetUpSheet['cautions'][number]): string => {
  const { title, sentence } = cautionInWords(caution);
  return `  ! ${title}. ${sentence}`;
};

const tailLine = ({ looseTail }: SetUpSheet): readonly string[] =>
  looseTail ? [`  ! ${looseTailInWords(looseTail)}`] : [];

function coreLines({ core, coreTension, whirl, kind }: SetUpSheet): string {
  return [
    kind === 'cut' ? 'Wire' : 'Core',
    `  ${core.wireId} (${core.shape}, ${both(core.sizeM)}), cut ${formatMillimetres(core.cutLengthM, 0)} mm, ${core.end} end`,
    ...(coreTension ? tensionLines(coreTension) : []),
    ...(whirl ? [`  whirl: ${whirlInWords(whirl)}`] : []),
  ].join('\n');
}

function layerLines(layer: LayerSetUp, at: number, count: number): string {
  const { drive } = layer;
  const setting =
    drive.kind === 'servo'
      ? `wrap pitch ${formatMillimetres(drive.pitchM, 4)} mm`
      : `dial ${drive.dial}, which gives a wrap pitch of ${formatMillimetres(drive.pitchM, 4)} mm`;
  return [
    count === 1 ? 'Wrap' : `Wrap, layer ${at + 1}`,
    `  ${layer.wireId} (${both(layer.wireDiameterM)}), ${Math.round(layer.turns)} turns over ${formatMillimetres(layer.woundLengthM, 0)} mm`,
    `  ${setting}, lead angle ${((layer.leadAngleRad * 180) / Math.PI).toFixed(2)}°`,
    `  spindle ${Math.round(layer.spindleRpm)} rpm at most (held by ${speedLimitInWords(layer.rpmLimitedBy)}), traverse ${(layer.traverseMPerS * 1000).toFixed(2)} mm/s`,
    `  ${layer.wirePerStringM.toFixed(2)} m of wire a string, ${(layer.wirePerStringKg * 1000).toFixed(2)} g`,
    ...tensionLines(layer.wrapTension),
  ].join('\n');
}

/** What to set, and the runs that it leans on. */
const tensionLines = (point: SetPoint): readonly string[] => {
  const runs = leanedOnInWords(point);
  return [`  tension: ${setPointInWords(point)}`, ...(runs === '' ? [] : [`    ${runs}`])];
};

const expectedLines = ({ meanDiameterM, caliperDiameterM, unitWeightKgPerM }: SetUpSheet): string =>
  [
    'Expected, with standard uncertainty',
    `  diameter, mean over a rotation: ${withUncertainty(meanDiameterM)}`,
    `  largest reading: ${withUncertainty(caliperDiameterM)}`,
    `  unit weight: ${formatUnitWeight(unitWeightKgPerM.value)} ± ${formatFraction(unitWeightKgPerM.u / unitWeightKgPerM.value, 1)}`,
  ].join('\n');

const firstOffLines = ({ firstOff }: SetUpSheet): string =>
  [
    'First strings',
    `  measure ${firstOff.strings}, at ${firstOff.placesFromEndM.map((placeM) => formatMillimetres(placeM, 0)).join(', ')} mm from the end, turned to ${firstOff.rotationsDeg.map((degrees) => `${degrees}°`).join(' and ')}. ${firstOffInWords(firstOff.why)}`,
    `  ${protocolInWords(firstOff)}`,
  ].join('\n');

const timeLines = ({
  cycleSeconds,
  positions,
  setUpMinutes,
  runMinutes,
  expectedScrap,
  quantity,
}: SetUpSheet): string =>
  [
    'Time and scrap',
    `  ${cycleSeconds.toFixed(0)} s a cycle${positions === 2 ? ' of two strings' : ''}; set-up ${durationInWords(setUpMinutes)}, running ${durationInWords(runMinutes)} for ${countInWords(quantity, 'good string')}; about ${Number(expectedScrap.toFixed(1))} to scrap while dialling in`,
  ].join('\n');

const both = (sizeM: number): string => `${formatThou(sizeM)} thou, ${formatMillimetres(sizeM)} mm`;

const withUncertainty = ({ value, u }: Estimate): string =>
  `${formatThou(value)} ± ${formatThou(u)} thou (${formatMillimetres(value)} ± ${formatMillimetres(u)} mm)`;

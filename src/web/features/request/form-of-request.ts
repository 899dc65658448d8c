import { materialInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import type { PlayerRequest, ReferenceSet, WantedString, Wishes } from '../../../core/orders/index.js';
import { fanScaleLengthsM, type Instrument, type Tuning, usualTuning } from '../../../core/sets/index.js';
import {
  formatGauge,
  formatTrimmed,
  inchesFromMetres,
  METRES_PER_INCH,
  millimetresFromMetres,
  pitchName,
} from '../../../core/units/index.js';
import { BLANK_FORM, type RequestForm } from './request-form.js';

type Names = Pick<Shop, 'instruments' | 'tunings' | 'sets'>;

/** A request that is kept, as the fields would have been filled for it. Read again they say the same, but for what no field
 * can say: a reference pitch of its own, a stretching length. */
export function formOfRequest(request: PlayerRequest, quantity: number, shop: Names): RequestForm {
  const { instrument, tuning, material, end, reference, wishes } = request;
  return {
    ...BLANK_FORM,
    quantity: String(quantity),
    ...instrumentTexts(instrument, shop),
    tuning: tuningText(tuning, shop),
    material: materialInWords(material),
    end,
    ...(reference ? likesTexts(reference, request, shop) : {}),
    ...wishTexts(wishes),
  };
}

function instrumentTexts({ name, scaleLengthsM }: Instrument, { instruments }: Names) {
  const known = instruments.find((each) => each.name === name);
  const isItsOwn = known !== undefined && sameNumbers(known.scaleLengthsM, scaleLengthsM);
  return { instrument: known ? name : '', scale: isItsOwn ? '' : scaleText(scaleLengthsM) };
}

/** `25.5 in`, `25.5 in-27 in` for a fan, or one a string. */
function scaleText(lengthsM: readonly number[]): string {
  const [trebleM = 0] = lengthsM;
  const bassM = lengthsM.at(-1) ?? trebleM;
  if (sameNumbers(lengthsM, fanScaleLengthsM({ trebleM, bassM, count: lengthsM.length })) && trebleM <= bassM)
    return trebleM === bassM ? lengthText(trebleM) : `${lengthText(trebleM)}-${lengthText(bassM)}`;
  return lengthsM.map(lengthText).join(', ');
}

/** In inches where that is a tidy number, else in millimetres. */
function lengthText(lengthM: number): string {
  const inches = formatTrimmed(inchesFromMetres(lengthM), 4);
  if (Math.abs(Number(inches) * METRES_PER_INCH - lengthM) < TIDY_M) return `${inches} in`;
  return `${formatTrimmed(millimetresFromMetres(lengthM), 4)} mm`;
}

function tuningText({ pitches, referenceHz }: Tuning, { tunings }: Names): string {
  const known = tunings.find(({ tuning }) => sameTuning(tuning, { pitches, referenceHz }));
  return known?.name ?? pitches.toReversed().map(pitchName).join(' ');
}

function likesTexts(reference: ReferenceSet, request: PlayerRequest, shop: Names) {
  const { strings, material, instrument, tuning } = reference;
  const set = shop.sets.find(
    (each) =>
      each.strings.every(({ kind, material: own }) => kind === 'plain' || own === material) &&
      each.strings.length === strings.length &&
      each.strings.every(
        ({ gaugeThou, kind }, at) => strings[at]?.gaugeThou === gaugeThou && strings[at]?.kind === kind,
      ),
  );
  const usual = usualTuning(strings.length);
  return {
    likes: set?.name ?? strings.map(gaugeText).join('-'),
    likesMaterial: set || material === request.material ? '' : materialInWords(material),
    likesTuning: usual && sameTuning(usual, tuning) ? '' : tuningText(tuning, shop),
    likesScale: sameNumbers(instrument.scaleLengthsM, request.instrument.scaleLengthsM)
      ? ''
      : scaleText(instrument.scaleLengthsM),
  };
}

const gaugeText = ({ gaugeThou, kind }: WantedString): string =>
  [formatGauge(gaugeThou), kind].filter(Boolean).join(' ');

function wishTexts(wishes: Wishes): Partial<RequestForm> {
  const {
    target,
    pullsN = [],
    gradePerString,
    heavierBass,
    heavierTreble,
    bendShare,
    woundThird,
    pins,
  } = wishes;
  return {
    aim: target,
    pulls: pullsN.map((pullN) => `${formatTrimmed(pullN, 4)} N`).join(' '),
    gradePercent: gradePerString === undefined ? BLANK_FORM.gradePercent : percentOf(gradePerString),
    bassPercent: percentOf(heavierBass ?? 0),
    treblePercent: percentOf(heavierTreble ?? 0),
    bendPercent: percentOf(bendShare ?? 0),
    third: woundThird === undefined ? 'either' : woundThird ? 'wound' : 'plain',
    more: (pins ?? []).map(({ position, string }) => `string ${position} = ${gaugeText(string)}`).join('; '),
  };
}

/** Without the noise that a share of binary digits has as per cent. */
const percentOf = (share: number): number => Number((share * 100).toFixed(6));

const TIDY_M = 1e-8;

const sameNumbers = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((value, at) => Math.abs(value - (b[at] ?? Number.NaN)) < 1e-6);

const sameTuning = (a: Tuning, b: Tuning): boolean =>
  a.referenceHz === b.referenceHz &&
  a.pitches.length === b.pitches.length &&
  a.pitches.every(({ midi, cents }, at) => b.pitches[at]?.midi === midi && b.pitches[at]?.cents === cents);

/** Whether two requests ask the same, whatever their instrument and tuning are called, and whoever supplied the octaves. */
export const askTheSame = (a: PlayerRequest, b: PlayerRequest): boolean => bare(a) === bare(b);

const bare = (request: PlayerRequest): string =>
  JSON.stringify(request, (field, value: unknown) => {
    if (field === 'name' || field === 'octavesAssumed') return undefined;
    if (typeof value === 'number') return Number(value.toFixed(7));
    return isPlainRecord(value) ? inOrder(value) : value;
  });

const isPlainRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const inOrder = (record: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));

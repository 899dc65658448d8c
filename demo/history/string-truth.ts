import { type CalendarDate, type Chance, daysBetween } from '../../src/core/foundation/index.js';
import { estimate } from '../../src/core/numeric/index.js';
import {
  type Construction,
  PRIOR_SEAT,
  type SeatModel,
  type StringBody,
  stringBody,
} from '../../src/core/string/index.js';
import type { PlantedCauses } from './causes.js';
import { normal } from './normal.js';
import { type WireTruth, wireTruth } from './wire-truth.js';

/** Of what a string is wound, where and when. */
export interface StringToWind {
  readonly construction: Construction;
  readonly lengthM: number;
  readonly machine: string;
  readonly position: number;
  readonly date: CalendarDate;
  /** The makers' lots of its wires: core, then wraps from inside outwards. */
  readonly lots: readonly string[];
  /** How far the machine is set off what the sheet says, as it shows in the diameter. */
  readonly settingM: number;
}

/** A string as it truly is, which nobody in the shop can know. */
export interface StringTruth {
  readonly meanM: number;
  /** Diameter at places along it, without ovality. */
  readonly atPlaceM: (place: number) => number;
  /** Half the difference between its widest and narrowest rotation, and where the widest is. */
  readonly ovalM: number;
  readonly widestDeg: number;
  /** Without its end. */
  readonly massKg: number;
}

/** How wrap truly sits on core in this shop: a little off what is believed before anyone has measured. */
const TRUE_SEAT: SeatModel = {
  ...PRIOR_SEAT,
  massSeat: estimate(1.108, 0),
  caliperSeat: estimate(1.1285, 0),
  flattening: estimate(0.955, 0),
};

/** What each machine adds of its own, position by position. Invented. */
const MACHINE_OFF_M: Readonly<Record<string, readonly number[]>> = {
  wren: [0.5e-6],
  'twin-finch': [-1e-6, 1.5e-6],
  'old-heron': [1e-6],
  'two-herons': [-2e-6, 2e-6],
};

/** From string to string, along one string, and out of round: standard deviations and size. Invented. */
const STRING_TO_STRING_M = 2.5e-6;
const ALONG_M = 1.2e-6;
const OVAL_M = 1.5e-6;

/** Winds a string: nominal size as this shop truly winds, with what machine, wire, wear and chance make of it. */
export function windString(string: StringToWind, causes: PlantedCauses, chance: Chance): StringTruth {
  const { construction, lots } = string;
  const body = bodyInTruth(construction);
  const wires = wiresOf(construction).map((wire, at) => ({
    ...wire,
    ...wireTruth(lots[at] ?? '', causes.badLot),
  }));
  const isWound = construction.kind === 'wound';
  const madeM = isWound
    ? string.settingM + machineOffM(string, causes) + normal(chance, STRING_TO_STRING_M)
    : 0;
  const meanM =
    body.meanDiameterM + sum(wires.map(({ inDiameterM, offShare }) => inDiameterM * offShare)) + madeM;
  const alongM = Math.hypot(
    isWound ? ALONG_M : 0,
    ...wires.map(({ inDiameterM, spreadShare }) => inDiameterM * spreadShare),
  );
  const along = [0, 1, 2].map(() => normal(chance, alongM));
  return {
    meanM,
    atPlaceM: (place) => meanM + (along[place] ?? 0),
    ovalM: isWound ? OVAL_M * (0.5 + chance.next()) : 0.3e-6,
    widestDeg: chance.whole(0, 179),
    massKg: massKg(body, wires, string.lengthM),
  };
}

/** Drift of a machine with worn gears, and its own offset. */
function machineOffM({ machine, position, date }: StringToWind, { wear }: PlantedCauses): number {
  const ownM = MACHINE_OFF_M[machine]?.[position - 1] ?? 0;
  const isWorn = machine === wear.machine && date > wear.from;
  return ownM + (isWorn ? wear.growthMPerDay * daysBetween(wear.from, date) : 0);
}

interface WireInString {
  /** How far the string's diameter goes with the wire's. */
  readonly inDiameterM: number;
}

function wiresOf(construction: Construction): readonly WireInString[] {
  if (construction.kind === 'plain') return [{ inDiameterM: construction.wire.sizeM }];
  const { core, layers } = construction;
  const seat = core.shape === 'hex' ? TRUE_SEAT.massSeat.value : 1;
  return [
    { inDiameterM: seat * core.sizeM },
    ...layers.map((layer) => ({ inDiameterM: 2 * TRUE_SEAT.flattening.value * layer.wireDiameterM })),
  ];
}

/** Mass goes with the square of a wire's diameter; of what is wound, each wire by its own share. */
function massKg(body: StringBody, [core, ...wraps]: readonly WireTruth[], lengthM: number): number {
  const wrapShare = wraps.length === 0 ? 1 : sum(wraps.map(square)) / wraps.length;
  return (body.coreMassKgPerM * (core ? square(core) : 1) + body.wrapMassKgPerM * wrapShare) * lengthM;
}

const square = ({ offShare }: WireTruth): number => (1 + offShare) ** 2;

function bodyInTruth(construction: Construction): StringBody {
  const body = stringBody(construction, TRUE_SEAT);
  if (!body.ok) throw new Error(`the demo winds what cannot be wound: ${body.fault.code}`);
  return body.value;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

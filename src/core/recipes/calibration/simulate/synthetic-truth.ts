import type { Chance } from '../../../foundation/index.js';
import { estimate } from '../../../numeric/index.js';
import { normalDraw } from '../../../stats/index.js';
import {
  type Construction,
  PRIOR_SEAT,
  type SeatModel,
  type StringBody,
  seatFamilyOf,
  stringBody,
  type WoundConstruction,
} from '../../../string/index.js';
import { CALIBRATION_PRIOR } from '../calibration-prior.js';
import { familyKey } from '../sample.js';
import { SEAT_UNKNOWNS } from '../seat-unknowns.js';
import { factor } from './normal-draws.js';

/** How wrap truly sits in a synthetic shop, and how its strings scatter. */
export interface SyntheticTruth {
  readonly seatOf: (construction: Construction, machineId: string) => SeatModel;
  readonly noise: {
    readonly runM: number;
    readonly stringM: number;
    readonly runWeight: number;
    readonly stringWeight: number;
  };
}

/** Seats from the prior's normal distributions; spreads between families and machines, and noise, off the stated ones by a factor. */
export function drawnTruth(chance: Chance): SyntheticTruth {
  const { unknowns, shares, noise } = CALIBRATION_PRIOR;
  const spread = { shop: 1, family: factor(chance), machine: factor(chance) };
  const draw = (level: keyof typeof shares) =>
    SEAT_UNKNOWNS.map(
      (name) => Math.sqrt(shares[level]) * spread[level] * unknowns[name].u * normalDraw(chance),
    );
  const shop = draw('shop');
  const own = new Map<string, readonly number[]>();
  const ownOf = (level: 'family' | 'machine', key: string) => {
    const known = own.get(key) ?? draw(level);
    own.set(key, known);
    return known;
  };
  return {
    seatOf: (construction, machineId) => {
      const family = familyKey(seatFamilyOf(construction));
      const parts = [shop, ownOf('family', family), ownOf('machine', machineId)];
      const at = (k: number) =>
        estimate(unknowns[SEAT_UNKNOWNS[k]!].value + parts.reduce((sum, part) => sum + part[k]!, 0));
      return {
        ...PRIOR_SEAT,
        massSeat: at(0),
        caliperSeat: at(1),
        flattening: at(2),
        extraGap: at(3),
        axialShare: at(4),
      };
    },
    noise: {
      runM: noise.runM * factor(chance),
      stringM: noise.stringM * factor(chance),
      runWeight: noise.runWeight * factor(chance),
      stringWeight: noise.stringWeight * factor(chance),
    },
  };
}

/** A string to be wound. */
export interface SyntheticWinding {
  readonly construction: WoundConstruction;
  readonly machineId: string;
  /** How far the wires truly are off the sizes that the construction states, m. */
  readonly offs: readonly number[];
  /** How far the machine is set off the sheet, as it shows in the diameter, m. */
  readonly settingM: number;
  /** What this run's strings weigh more than others, as a share. */
  readonly runWeight: number;
}

export interface SyntheticString {
  readonly meanDiameterM: number;
  readonly unitWeightKgPerM: number;
}

/** What a micrometer leaves in the mean of several readings, m. */
const READING_M = 0.5e-6;

/** One string as micrometer and scale have it. */
export function windOne(truth: SyntheticTruth, winding: SyntheticWinding, chance: Chance): SyntheticString {
  const { construction, machineId, offs, settingM, runWeight } = winding;
  const { noise } = truth;
  const body = bodyInTruth(truth, withOffs(construction, offs), machineId);
  const offM = settingM + noise.stringM * normalDraw(chance);
  const perM = body.layers.reduce((sum, layer) => sum + layer.massKgPerM / layer.windingDiameterM, 0);
  const share = runWeight + noise.stringWeight * normalDraw(chance);
  return {
    meanDiameterM: body.meanDiameterM + offM + READING_M * normalDraw(chance),
    unitWeightKgPerM: (body.linearDensityKgPerM + perM * offM) * (1 + share),
  };
}

/** What strings of this construction truly are in the mean; the construction is sound. */
export function bodyInTruth(
  { seatOf }: SyntheticTruth,
  construction: Construction,
  machineId: string,
): StringBody {
  const body = stringBody(construction, seatOf(construction, machineId));
  if (!body.ok) throw new Error(`a synthetic shop winds what cannot be wound: ${body.fault.code}`);
  return body.value;
}

function withOffs(construction: WoundConstruction, offs: readonly number[]): WoundConstruction {
  const [first] = construction.layers;
  return {
    ...construction,
    core: { ...construction.core, sizeM: construction.core.sizeM + offs[0]! },
    layers: [{ ...first, wireDiameterM: first.wireDiameterM + offs[1]! }],
  };
}

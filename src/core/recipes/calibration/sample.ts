import { type SeatFamily, seatFamilyOf } from '../../string/index.js';
import { type CalibrationPrior, type NoiseSpreads, priorMiddle } from './calibration-prior.js';
import type { MeasuredString, WireUsed } from './measured-string.js';
import { robustMean } from './robust-mean.js';
import { type StringSlopes, stringSlopes } from './string-slopes.js';
import { tellingVariance } from './telling-noise.js';
import { offsOf, slopesOfTelling, type Telling, telling, toldBy } from './told-by-string.js';

/** One thing that strings of one run tell alike: all that sets them apart is chance. */
export interface Sample {
  readonly key: string;
  readonly telling: Telling;
  readonly runId: string;
  readonly recipeId: string;
  readonly machineId: string;
  /** Left out for plain strings, of which there is nothing to learn but their wire. */
  readonly family?: SeatFamily;
  readonly familyKey: string;
  readonly wires: readonly WireUsed[];
  /** The same for runs of one recipe on one machine from the same lots of wire. */
  readonly replicateKey: string;
  readonly slopes: StringSlopes;
  readonly byUnknown: readonly number[];
  /** How it goes with one standard uncertainty of each lot whose size is not known exactly. */
  readonly ways: readonly { readonly lot: string; readonly way: number }[];
  readonly strings: readonly SampleString[];
  /** Robust mean of what was measured less what is expected. */
  readonly mean: number;
  /** So many strings of ordinary scatter would tell as much. */
  readonly effective: number;
  /** Squares of its strings about their mean, those far off counting less. */
  readonly squares: number;
}

export interface SampleString {
  readonly stringId: string;
  /** Measured less expected. */
  readonly off: number;
  /** 1 as others, less where it stands apart from the rest of its sample. */
  readonly weight: number;
}

/** Names of families as keys of maps. */
export const familyKey = (family: SeatFamily | undefined): string =>
  family ? `${family.coreShape} ${family.wrapAlloy} ${family.wrapBand}` : 'plain';

/** All that strings tell, in samples, in the order in which they first come. */
export function samplesOf(strings: readonly MeasuredString[], prior: CalibrationPrior): readonly Sample[] {
  const about = priorMiddle(prior);
  const known = new Map<string, StringSlopes>();
  const opened = new Map<string, Opened>();
  for (const string of strings) {
    const told = toldBy(string);
    if (told.length === 0) continue;
    const slopes = slopesOf(string, about, known);
    const lotsKey = string.wires.map(({ lot }) => lot).join(' | ');
    const offs = offsOf(string, slopes);
    for (const kind of told) {
      const key = `${string.runId} ${kind} ${string.tensionRatio ?? 1} ${lotsKey}`;
      const sample = opened.get(key) ?? { kind, string, slopes, lotsKey, members: [] };
      opened.set(key, sample);
      const parts = telling(kind, slopes);
      const off = parts.reduce((sum, part, quantity) => sum + part * offs[quantity]!, 0);
      sample.members.push({ stringId: string.stringId, off });
    }
  }
  return [...opened].map(([key, sample]) => closed(key, sample, prior.noise));
}

interface Opened {
  readonly kind: Telling;
  readonly string: MeasuredString;
  readonly slopes: StringSlopes;
  readonly lotsKey: string;
  readonly members: Omit<SampleString, 'weight'>[];
}

/** Strings of one recipe and the same sizes share their slopes. */
function slopesOf(
  { recipeId, construction }: MeasuredString,
  about: readonly number[],
  known: Map<string, StringSlopes>,
): StringSlopes {
  const core = construction.kind === 'plain' ? construction.wire : construction.core;
  const layers = construction.kind === 'plain' ? [] : construction.layers;
  const parts = layers.map(({ alloy, wireDiameterM, gap }) => `${alloy} ${wireDiameterM} ${gap}`);
  const key = `${recipeId} ${core.shape} ${core.sizeM} ${parts.join()}`;
  const slopes = known.get(key) ?? stringSlopes(construction, about);
  known.set(key, slopes);
  return slopes;
}

function closed(
  key: string,
  { kind, string, slopes, lotsKey, members }: Opened,
  noise: NoiseSpreads,
): Sample {
  const family = seatFamilyOf(string.construction);
  const offs = members.map(({ off }) => off);
  const { weights, mean, squares } = robustMean(offs, tellingVariance(kind, slopes, noise).string);
  const { byUnknown, byWire } = slopesOfTelling(kind, slopes, string.tensionRatio);
  return {
    key,
    telling: kind,
    runId: string.runId,
    recipeId: string.recipeId,
    machineId: string.machineId,
    ...(family ? { family } : {}),
    familyKey: familyKey(family),
    wires: string.wires,
    replicateKey: `${string.recipeId} ${string.machineId} ${lotsKey}`,
    slopes,
    byUnknown,
    ways: waysOf(string.wires, byWire),
    strings: members.map((member, at) => ({ ...member, weight: weights[at]! })),
    mean,
    effective: weights.reduce((sum, weight) => sum + weight, 0),
    squares,
  };
}

/** A wire used in two layers has one deviation. */
function waysOf(wires: readonly WireUsed[], byWire: readonly number[]): Sample['ways'] {
  const ways: { lot: string; way: number }[] = [];
  wires.forEach(({ lot, sizeUM }, wire) => {
    const way = sizeUM * (byWire[wire] ?? 0);
    if (way === 0) return;
    const before = ways.find((each) => each.lot === lot);
    if (before) before.way += way;
    else ways.push({ lot, way });
  });
  return ways;
}

import { type SourceKey, type Standing, wrapStrength } from '../materials/index.js';
import type { StringBody, WrapLayer } from '../string/index.js';

/** The most that strength allows a wire to be pulled, with its arithmetic: upper = share x strength x area. */
export interface StrengthBound {
  readonly upperN: number;
  readonly share: number;
  readonly strengthPa: number;
  readonly areaM2: number;
  readonly basis: StrengthBasis;
  /** Temper whose strength counts, for wrap. */
  readonly temper?: string;
  /** Whether the strength was read in print or recalled; of core, the standard's table or the certificate. */
  readonly standing: Standing;
  readonly sources: readonly SourceKey[];
}

/** Core: the lowest elastic limit in print. Wrap: where the softest temper on record breaks. */
export type StrengthBasis = 'core-elastic-limit' | 'wrap-softest-temper-breaks';

/**
 * Steel wire's elastic limit in tension is 65 to 75 % of its tensile strength (music-wire data sheet); the
 * lower end, of the least strength, keeps the core from being drawn.
 */
export const CORE_ELASTIC_SHARE = 0.65;

/** Most pull on the core in the machine, N; undefined where no strength is known for the wire. */
export function coreBound(body: StringBody): StrengthBound | undefined {
  if (body.minimumStrengthPa === undefined) return undefined;
  return {
    upperN: CORE_ELASTIC_SHARE * body.minimumStrengthPa * body.coreAreaM2,
    share: CORE_ELASTIC_SHARE,
    strengthPa: body.minimumStrengthPa,
    areaM2: body.coreAreaM2,
    basis: 'core-elastic-limit',
    standing: 'printed',
    sources: ['music-wire-notes'],
  };
}

/**
 * Pull at which the wrap wire would break if it were as soft as the softest temper on record, N. An outer
 * bound, not an aim: what to set below it nobody has published. Undefined where no strength is on record.
 */
export function wrapBound(layer: WrapLayer): StrengthBound | undefined {
  const softest = wrapStrength({ alloy: layer.alloy, diameterM: layer.wireDiameterM });
  if (!softest.ok) return undefined;
  const { minimumPa, temper, standing, sources } = softest.value;
  const areaM2 = wrapSectionM2(layer);
  return {
    upperN: minimumPa * areaM2,
    share: 1,
    strengthPa: minimumPa,
    areaM2,
    basis: 'wrap-softest-temper-breaks',
    temper,
    standing,
    sources,
  };
}

/** Metal in a cut through the wrap wire; rolling flat keeps it. */
export const wrapSectionM2 = (layer: WrapLayer): number => (Math.PI / 4) * layer.wireDiameterM ** 2;

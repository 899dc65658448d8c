import { useMemo } from 'react';
import type { Result } from '../../../core/foundation/index.js';
import {
  type RecipeChoices,
  type RecipeFault,
  type RecipeSearch,
  recipesForGauge,
} from '../../../core/recipes/index.js';
import type { SeatModel, Sounding } from '../../../core/string/index.js';
import { parseGauge } from '../../../core/units/index.js';
import type { RecipeDraft, WireRecord } from './recipe-draft.js';
import { coresOffered, wrapsOffered } from './wires-offered.js';

export interface WaysWish {
  readonly gauge: string;
  readonly material: RecipeDraft['material'];
  readonly toleranceM: number | undefined;
  /** Left out: two from a gauge of 60 on. */
  readonly maxLayers: 1 | 2 | undefined;
}

/** Every way to make a gauge of the shop's wires; undefined while it is not said which, or how near. */
export function useWays(
  { gauge, material, toleranceM, maxLayers }: WaysWish,
  wires: readonly WireRecord[],
  { seat, sounding }: { readonly seat: SeatModel | undefined; readonly sounding: Sounding | undefined },
): Result<RecipeChoices, RecipeFault> | undefined {
  const { frequencyHz, speakingLengthM } = sounding ?? {};
  return useMemo(() => {
    const read = parseGauge(gauge);
    if (!read.ok || toleranceM === undefined) return undefined;
    const search: RecipeSearch = {
      gaugeThou: read.value,
      material,
      toleranceM,
      cores: coresOffered(wires),
      wraps: wrapsOffered(wires),
      ...(maxLayers === undefined ? {} : { maxLayers }),
      ...(seat ? { seat } : {}),
      ...(frequencyHz !== undefined && speakingLengthM !== undefined
        ? { sounding: { frequencyHz, speakingLengthM } }
        : {}),
    };
    return recipesForGauge(search);
  }, [gauge, material, toleranceM, maxLayers, wires, seat, frequencyHz, speakingLengthM]);
}

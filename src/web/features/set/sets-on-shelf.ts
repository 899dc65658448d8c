import type { Shop } from '../../../core/day/index.js';
import { type StringSpec, stringKey } from '../../../core/sets/index.js';

/** What of a set lies on the shelf. */
export interface SetOnShelf {
  /** Whole sets that could be packed now. */
  readonly sets: number;
  /** The string of which there are fewest for a set; where several are, the first from the treble. */
  readonly shortest: { readonly spec: StringSpec; readonly onShelf: number } | undefined;
}

/** How many whole sets the shelf holds: a string that a set has twice counts half. */
export function setsOnShelf(specs: readonly StringSpec[], { strings }: Pick<Shop, 'strings'>): SetOnShelf {
  const onShelf = new Map<string, number>();
  for (const { spec, count } of strings) {
    const key = stringKey(spec);
    onShelf.set(key, (onShelf.get(key) ?? 0) + count);
  }
  const inSet = new Map<string, number>();
  for (const spec of specs) inSet.set(stringKey(spec), (inSet.get(stringKey(spec)) ?? 0) + 1);
  let sets = Number.POSITIVE_INFINITY;
  let shortest: SetOnShelf['shortest'];
  for (const spec of specs) {
    const key = stringKey(spec);
    const count = onShelf.get(key) ?? 0;
    const whole = Math.floor(count / (inSet.get(key) ?? 1));
    if (whole >= sets) continue;
    sets = whole;
    shortest = { spec, onShelf: count };
  }
  return { sets: shortest ? sets : 0, shortest };
}

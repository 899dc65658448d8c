import { grouped } from '../../foundation/index.js';
import { type Layout, layoutOf } from './layout.js';
import type { Sample } from './sample.js';

/** What stays the same from round to round of a fit: samples, their places among the unknowns, who repeats whom. */
export interface FitFrame {
  readonly samples: readonly Sample[];
  readonly layout: Layout;
  readonly lots: readonly string[];
  readonly places: readonly SamplePlace[];
  /** Samples that tell mean diameter, by what they repeat: same recipe, machine and lots. By index. */
  readonly diameters: readonly (readonly number[])[];
  /** The same of unit weight beside mean diameter. */
  readonly weights: readonly (readonly number[])[];
}

export interface SamplePlace {
  /** Where the unknowns of shop, family and machine begin: what is measured goes with the sum of the three. None of a plain string. */
  readonly blocks: readonly number[];
  /** Cell of that family and machine, counted from 0; -1 for a plain string. */
  readonly cell: number;
  /** Lots by index, and how the sample goes with one standard uncertainty of each. */
  readonly ways: readonly { readonly lot: number; readonly way: number }[];
}

export function fitFrame(samples: readonly Sample[]): FitFrame {
  const layout = layoutOf(samples);
  const lots = new Map<string, number>();
  const cells = new Map<number, number>();
  const counted = <Key>(known: Map<Key, number>, key: Key): number => {
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, known.size);
    return known.size - 1;
  };
  const places = samples.map((sample): SamplePlace => {
    const family = layout.familyAt(sample.familyKey);
    const machine = layout.machineAt(sample.machineId);
    const ways = sample.ways.map(({ lot, way }) => ({ lot: counted(lots, lot), way }));
    if (family === undefined || machine === undefined) return { blocks: [], cell: -1, ways };
    return { blocks: [0, family, machine], cell: counted(cells, family * layout.size + machine), ways };
  });
  return {
    samples,
    layout,
    lots: [...lots.keys()],
    places,
    diameters: replicates(samples, 'mean-diameter'),
    weights: replicates(samples, 'weight-beside-mean'),
  };
}

function replicates(samples: readonly Sample[], telling: Sample['telling']): readonly (readonly number[])[] {
  const telled: number[] = [];
  samples.forEach((sample, at) => {
    if (sample.telling === telling && sample.family !== undefined) telled.push(at);
  });
  const groups = grouped(
    telled.map((at) => ({ at, key: samples[at]!.replicateKey })),
    ({ key }) => key,
  );
  return [...groups.values()].map((group) => group.map(({ at }) => at));
}

import { byText, type Chance } from '../src/core/foundation/index.js';
import { type StringSet, type StringSpec, stringKey } from '../src/core/sets/index.js';
import type { Bin, Spool, StringStock, Wire } from '../src/core/stock/index.js';

const BINS_A_RACK = 12;

export interface Shelf {
  readonly bins: readonly Bin[];
  readonly strings: readonly StringStock[];
}

/** A bin for every kind of string of the stock sets, thin ones first along the walk, each with what lies in it. */
export function demoShelf(sets: readonly StringSet[], chance: Chance): Shelf {
  const kinds = new Map<string, StringSpec>();
  for (const spec of sets.flatMap(({ strings }) => strings)) kinds.set(stringKey(spec), spec);
  const ordered = [...kinds.values()].sort(
    (a, b) =>
      byText(a.kind, b.kind) ||
      byText(a.material, b.material) ||
      a.gaugeThou - b.gaugeThou ||
      a.lengthM - b.lengthM,
  );
  const bins = ordered.map((_, at) => ({ id: binName(at), walkOrder: at + 1 }));
  const strings = ordered.flatMap((spec, at) => stockOf(spec, binName(at), chance));
  return { bins, strings };
}

/** Plain strings lie ready by the gross; wound ones by the dozen, and one kind in six has run out. */
function stockOf(spec: StringSpec, binId: string, chance: Chance): readonly StringStock[] {
  const reorderLevel = spec.kind === 'plain' ? 60 : 24;
  const most = spec.kind === 'plain' ? 288 : 150;
  const count = chance.next() < 1 / 6 ? 0 : chance.whole(6, most);
  const older = Math.floor(count * chance.next() * 0.4);
  const lot = chance.whole(100, 180);
  const stock = (quantity: number, number: number): StringStock => ({
    spec,
    count: quantity,
    binId,
    lot: `lot ${number}`,
    reorderLevel,
  });
  return older > 0
    ? [stock(older, lot), stock(count - older, lot + chance.whole(1, 40))]
    : [stock(count, lot)];
}

/** The demo shows what happens when a wire runs short. */
const RAN_OUT = 'pure-nickel 10';

/** Each wire has a part-used spool and most have full ones behind it; one is nearly out. */
export function demoSpools(wires: readonly Wire[], chance: Chance): readonly Spool[] {
  return wires.flatMap((wire) => {
    const full = wire.use === 'core' ? 5 : 4;
    const nearlyOut = wire.id === RAN_OUT;
    const opened = round(nearlyOut ? 0.17 : full * (0.2 + 0.7 * chance.next()));
    const behind = nearlyOut ? 0 : chance.whole(1, 2);
    return Array.from(
      { length: 1 + behind },
      (_, at): Spool => ({
        id: `${wire.id} / ${at + 1}`,
        wireId: wire.id,
        lot: `wire lot ${chance.whole(400, 460) + at}`,
        netKg: at === 0 ? opened : full,
      }),
    );
  });
}

const binName = (at: number): string =>
  `rack ${Math.floor(at / BINS_A_RACK) + 1} bin ${(at % BINS_A_RACK) + 1}`;
const round = (kg: number): number => Math.round(kg * 1000) / 1000;

import type { AlloyId } from '../src/core/materials/index.js';
import type { Wire } from '../src/core/stock/index.js';
import { metresFromThou } from '../src/core/units/index.js';

/** Round steel: plain strings are cut from it, and round-core strings wound on it. Thou. */
const ROUND_CORES = [8, 9, 9.5, 10, 10.5, 11, 12, 13, 13.5, 14, 15, 16, 17, 18, 20] as const;
const HEX_CORES = [12, 13, 14, 15, 16, 17, 18, 19, 20, 22, 24, 28, 31] as const;

/** Wrap sizes by alloy, thou. Nickel-plated steel goes on to bass strings. */
const WRAPS: Readonly<Partial<Record<AlloyId, readonly number[]>>> = {
  'nickel-plated-steel': [3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 24, 28],
  'pure-nickel': [3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 24],
  'phosphor-bronze': [3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 24],
  'bronze-80-20': [3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 24],
};

/** Invented prices, minor units per kilogram; finer wire costs more to draw. */
const PRICE_AT_10_THOU: Readonly<Partial<Record<AlloyId, number>>> = {
  'music-wire': 1450,
  'nickel-plated-steel': 2300,
  'pure-nickel': 6200,
  'phosphor-bronze': 2950,
  'bronze-80-20': 2600,
};

/** The invented workshop's wire list. */
export const demoWires = (): readonly Wire[] => [
  ...ROUND_CORES.map((thou) => core('round', thou)),
  ...HEX_CORES.map((thou) => core('hex', thou)),
  ...(Object.keys(WRAPS) as AlloyId[]).flatMap((alloy) =>
    (WRAPS[alloy] ?? []).map((thou) => wrap(alloy, thou)),
  ),
];

function core(shape: Wire['shape'], thou: number): Wire {
  return {
    id: `${shape} steel ${thou}`,
    use: 'core',
    shape,
    sizeM: metresFromThou(thou),
    alloy: 'music-wire',
    strengthTable: 'astm-a228',
    priceMinorPerKg: price('music-wire', thou) + (shape === 'hex' ? 350 : 0),
  };
}

function wrap(alloy: AlloyId, thou: number): Wire {
  return {
    id: `${alloy} ${thou}`,
    use: 'wrap',
    shape: 'round',
    sizeM: metresFromThou(thou),
    alloy,
    priceMinorPerKg: price(alloy, thou),
  };
}

const price = (alloy: AlloyId, thou: number): number =>
  Math.round(((PRICE_AT_10_THOU[alloy] ?? 2000) * (0.75 + 2.5 / thou)) / 10) * 10;

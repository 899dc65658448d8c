import {
  type OfferedCore,
  type OfferedWrap,
  type Recipe,
  recipesForGauge,
  type StringMaterial,
  settledRecipe,
  usualCoreRatio,
} from '../src/core/recipes/index.js';
import type { Wire } from '../src/core/stock/index.js';
import { metresFromThou } from '../src/core/units/index.js';
import { demoWires } from './wires.js';

const WOUND_MATERIALS: readonly StringMaterial[] = [
  'nickel-plated-steel',
  'pure-nickel',
  'phosphor-bronze',
  'bronze-80-20',
];

const WOUND_GAUGES = Array.from({ length: 61 }, (_, at) => 20 + at);
const BASS_GAUGES = [85, 90, 95, 100, 105, 110, 120, 130];
const TOLERANCE_M = metresFromThou(0.75);
/** A thou off the gauge is as bad as this much off the core ratio: the maker wants both close. */
const RATIO_PER_THOU = 0.06;

/** A recipe for every gauge from 20 to 80 in four materials, bass strings to 130, and the plain strings. */
export function demoRecipes(): readonly Recipe[] {
  const wires = demoWires();
  const cores = wires.filter(({ use }) => use === 'core').map(offeredCore);
  const wraps = wires.filter(({ use }) => use === 'wrap').map(offeredWrap);
  const hex = cores.filter(({ shape }) => shape === 'hex');
  const wound = WOUND_MATERIALS.flatMap((material) =>
    [...WOUND_GAUGES, ...(material === 'nickel-plated-steel' ? BASS_GAUGES : [])].flatMap((gaugeThou) =>
      woundRecipe({ gaugeThou, material, cores: hex, wraps }),
    ),
  );
  const plain = cores.filter(({ shape }) => shape === 'round').map((core): Recipe => plainRecipe(core));
  return [...plain, ...wound];
}

interface Wanted {
  readonly gaugeThou: number;
  readonly material: StringMaterial;
  readonly cores: readonly OfferedCore[];
  readonly wraps: readonly OfferedWrap[];
}

/** The choice that stays nearest to gauge and core ratio together. A gauge that the wires cannot make has none. */
function woundRecipe({ gaugeThou, material, cores, wraps }: Wanted): readonly Recipe[] {
  const ask = {
    gaugeThou,
    material,
    toleranceM: TOLERANCE_M,
    cores,
    wraps: wraps.filter(({ alloy }) => alloy === material),
  };
  const oneLayer = recipesForGauge({ ...ask, maxLayers: 1 });
  const search = oneLayer.ok ? oneLayer : recipesForGauge({ ...ask, maxLayers: 2 });
  if (!search.ok) return [];
  const target = usualCoreRatio(gaugeThou);
  const regret = ({ figures, offGaugeM }: (typeof search.value.front)[number]): number =>
    Math.abs(figures.coreRatio - target) + RATIO_PER_THOU * Math.abs(offGaugeM / metresFromThou(1));
  const best = [...search.value.front].sort((a, b) => regret(a) - regret(b))[0];
  return best ? [settledRecipe(best, { id: `${material} ${gaugeThou}`, state: 'predicted' })] : [];
}

function plainRecipe(core: OfferedCore): Recipe {
  const gaugeThou = Math.round((core.sizeM / metresFromThou(1)) * 2) / 2;
  const { shape: _, wireId, priceMinorPerKg: __, ...wire } = core;
  return {
    id: `plain-steel ${gaugeThou}`,
    gaugeThou,
    material: 'plain-steel',
    construction: { kind: 'plain', wire: { ...wire, shape: 'round' } },
    state: 'predicted',
    version: 1,
    coreWireId: wireId,
    wrapWireIds: [],
  };
}

const offeredCore = ({ id, shape, sizeM, alloy, priceMinorPerKg }: Wire): OfferedCore => ({
  wireId: id,
  shape,
  sizeM,
  alloy,
  strengthTable: 'astm-a228',
  priceMinorPerKg,
});

const offeredWrap = ({ id, sizeM, alloy, priceMinorPerKg }: Wire): OfferedWrap => ({
  wireId: id,
  wireDiameterM: sizeM,
  alloy,
  priceMinorPerKg,
});

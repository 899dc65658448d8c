import type { Merit, RecipeFault } from '../../core/recipes/index.js';
import { formatGauge, formatThou } from '../../core/units/index.js';
import { listInWords } from './lists.js';
import type { FaultWords } from './order-faults.js';
import { materialInWords } from './strings.js';

/** Why a gauge cannot be made, and what would work. */
export function recipeFaultWords(fault: RecipeFault): FaultWords {
  switch (fault.code) {
    case 'recipe.no-core':
      return { what: 'The shop has no core wire that would do.', mend: 'Add core wire to the shop.' };
    case 'recipe.no-wrap-of-material':
      return {
        what: `The shop has no wrap wire of ${materialInWords(fault.material)}.`,
        mend: 'Add such wire to the shop, or choose another material.',
      };
    case 'recipe.no-plain-wire':
      return {
        what: `The shop has no round steel wire within ${formatThou(fault.toleranceM)} thou of ${formatGauge(fault.gaugeThou)}.`,
        mend:
          fault.nearest.length === 0
            ? 'Add round core wire to the shop.'
            : `Nearest: ${listInWords(fault.nearest.map(({ coreWireId }) => coreWireId))}.`,
      };
    case 'recipe.none-within-tolerance':
      return {
        what: `No core and wrap of the shop come within ${formatThou(fault.toleranceM)} thou of ${formatGauge(fault.gaugeThou)} in ${materialInWords(fault.material)}.`,
        mend: [nearestInWords(fault), wrapsInWords(fault)].filter((part) => part !== '').join(' '),
      };
  }
}

type NoneWithin = Extract<RecipeFault, { code: 'recipe.none-within-tolerance' }>;

const nearestInWords = ({ nearest }: NoneWithin): string =>
  nearest === undefined
    ? ''
    : `Nearest: ${nearest.coreWireId} with ${listInWords(nearest.wrapWireIds)} gives ${nearest.gaugeThou.toFixed(1)}.`;

const wrapsInWords = ({ wrapsNeeded }: NoneWithin): string => {
  const [first] = wrapsNeeded;
  return first === undefined
    ? ''
    : `A wrap of ${formatThou(first.wireDiameterM, 1)} thou on ${first.coreWireId} would meet it.`;
};

/** What a recipe is best at, in a word or two. */
export const meritInWords = (merit: Merit): string => MERITS[merit];

const MERITS: Readonly<Record<Merit, string>> = {
  'nearest-gauge': 'nearest the gauge',
  'most-flexible': 'most flexible',
  strongest: 'strongest',
  'least-inharmonic': 'least inharmonic',
  'nearest-core-ratio': 'nearest the core ratio aimed at',
  cheapest: 'cheapest wire',
};

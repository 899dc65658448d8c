import { formatThou } from '../../core/units/index.js';
import { countInWords } from './lists.js';
import type { WordsOfFault } from './shop-wide-faults.js';

/** Refusals about what the shop learns from its measured strings. */
export const CALIBRATION_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'calibration.nothing-measured': {
    what: 'No string of this shop has been measured yet.',
    mend: 'Measure trial strings of a run: diameter at two rotations, and the weight of one.',
  },
  'calibration.recipe-not-ready': (facts) => ({
    what: `Recipe ${facts.recipeName} cannot be called calibrated: ${reasonInWords(facts)}.`,
    mend: 'Measure more of its strings, first strings of a run above all; or step the recipe by hand if you know better.',
  }),
};

function reasonInWords(facts: Readonly<Record<string, unknown>>): string {
  if (!facts.hasStrings)
    return `${countInWords(Number(facts.strings), 'string')} from ${countInWords(Number(facts.runs), 'run')} are too few`;
  if (!facts.isNarrow)
    return `its diameter is known to ±${formatThou(Number(facts.halfIntervalM), 2)} thou only, of a tolerance of ±${formatThou(Number(facts.toleranceM), 2)}`;
  return 'its strings do not come out as its family lets expect';
}

import { materialInWords } from '../../../contract/index.js';
import { formatGauge } from '../../../core/units/index.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import type { UnmadeString } from './strung-set.js';

/** Says which string has no recipe. */
export function UnmadeWords({ unmade: { spec } }: { readonly unmade: UnmadeString }) {
  const { strung: words } = useWords(SETS_WORDS);
  return (
    <p className="care">
      {words.unmade(spec.kind, formatGauge(spec.gaugeThou), materialInWords(spec.material))}
    </p>
  );
}

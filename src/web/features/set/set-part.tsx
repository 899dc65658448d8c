import { materialInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import type { StringSpec } from '../../../core/sets/index.js';
import { formatGauge } from '../../../core/units/index.js';
import { StringingFields } from './stringing-fields.js';
import { StrungPart } from './strung-part.js';
import type { UnmadeString } from './strung-set.js';
import { useStrungSet } from './use-strung-set.js';

interface SetPartProps {
  readonly specs: readonly StringSpec[];
  readonly shop: Shop;
}

/** A set strung as the fields say. */
export function SetPart({ specs, shop }: SetPartProps) {
  const { form, change, strung } = useStrungSet(specs, shop);
  const isUnmade = !strung.ok && 'spec' in strung.fault;
  return (
    <>
      <StringingFields
        shop={shop}
        count={specs.length}
        form={form}
        change={change}
        faults={strung.ok || 'spec' in strung.fault ? {} : strung.fault}
      />
      {strung.ok && <StrungPart strung={strung.value} />}
      {!strung.ok && isUnmade && <UnmadeWords unmade={strung.fault as UnmadeString} />}
    </>
  );
}

/** Says which string has no recipe. */
export const UnmadeWords = ({ unmade: { spec } }: { readonly unmade: UnmadeString }) => (
  <p className="care">
    The shop has no recipe for a {spec.kind} {formatGauge(spec.gaugeThou)} in {materialInWords(spec.material)}
    .
  </p>
);

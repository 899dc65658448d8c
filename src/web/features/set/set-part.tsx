import type { Shop } from '../../../core/day/index.js';
import type { StringSpec } from '../../../core/sets/index.js';
import { ComparePart } from './compare-part.js';
import { StringingFields } from './stringing-fields.js';
import { StrungPart } from './strung-part.js';
import type { UnmadeString } from './strung-set.js';
import { UnmadeWords } from './unmade-words.js';
import { useStrungSet } from './use-strung-set.js';

export interface NamedSet {
  readonly name: string;
  readonly specs: readonly StringSpec[];
}

interface SetPartProps {
  readonly specs: readonly StringSpec[];
  readonly shop: Shop;
  /** This set and another to lay beside it in the same place. */
  readonly compare?: { readonly name: string; readonly other: NamedSet } | undefined;
}

/** A set strung as the fields say. */
export function SetPart({ specs, shop, compare }: SetPartProps) {
  const { form, change, strung, likewise } = useStrungSet(specs, shop);
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
      {strung.ok && compare && (
        <ComparePart
          name={compare.name}
          strung={strung.value}
          other={compare.other.name}
          otherStrung={likewise(compare.other.specs)}
        />
      )}
      {strung.ok && <StrungPart strung={strung.value} />}
      {!strung.ok && isUnmade && <UnmadeWords unmade={strung.fault as UnmadeString} />}
    </>
  );
}

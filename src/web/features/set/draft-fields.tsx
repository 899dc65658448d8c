import { NativeSelect, TextInput } from '@mantine/core';
import { materialInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import type { StringEnd } from '../../../core/sets/index.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import { wrapMaterials } from '../request/request-fields.js';
import { type DraftFault, lengthText, SET_LENGTH_RANGE_M, type SetDraft } from './set-draft.js';

interface DraftFieldsProps {
  readonly draft: SetDraft;
  readonly change: (change: Partial<SetDraft>) => void;
  readonly shop: Shop;
  readonly faults: readonly DraftFault[];
  readonly isTried: boolean;
}

/** Name, gauges, and what all strings of a set have alike. */
export function DraftFields({ draft, change, shop, faults, isTried }: DraftFieldsProps) {
  const { edit: words } = useWords(SETS_WORDS);
  const { length } = useFigures();
  const { rules } = shop;
  const faultOf = (field: DraftFault['field']): string | undefined => {
    const fault = faults.find((each) => each.field === field);
    // A field that is still empty is not wrong before somebody wants to save.
    if (!fault || (!isTried && draft[field] === '')) return undefined;
    switch (fault.field) {
      case 'name':
        return words.nameMissing;
      case 'gauges':
        return words.gaugesUnreadable(fault.part);
      case 'length':
        return fault.isOutOfRange
          ? words.lengthRange(length(SET_LENGTH_RANGE_M.leastM), length(SET_LENGTH_RANGE_M.mostM))
          : words.lengthUnreadable;
    }
  };
  return (
    <div className={desk.fields}>
      <TextInput
        label={words.name}
        description={words.nameHint}
        value={draft.name}
        autoComplete="off"
        {...HINT_BELOW}
        error={faultOf('name')}
        onChange={(event) => change({ name: event.currentTarget.value })}
      />
      <TextInput
        label={words.gauges}
        description={words.gaugesHint}
        value={draft.gauges}
        autoComplete="off"
        {...HINT_BELOW}
        error={faultOf('gauges')}
        onChange={(event) => change({ gauges: event.currentTarget.value })}
      />
      <NativeSelect
        label={words.material}
        value={draft.material}
        data={wrapMaterials(shop).map(materialInWords)}
        onChange={(event) => change({ material: event.currentTarget.value })}
      />
      <NativeSelect
        label={words.end}
        value={draft.end}
        data={Object.entries(words.ends).map(([value, label]) => ({ value, label }))}
        onChange={(event) => change({ end: event.currentTarget.value as StringEnd })}
      />
      <TextInput
        label={words.length}
        description={words.lengthHint(lengthText(rules.standardLengthM), lengthText(rules.longLengthM))}
        value={draft.length}
        autoComplete="off"
        {...HINT_BELOW}
        error={faultOf('length')}
        onChange={(event) => change({ length: event.currentTarget.value })}
      />
    </div>
  );
}

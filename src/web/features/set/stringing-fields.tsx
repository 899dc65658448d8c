import { NativeSelect } from '@mantine/core';
import type { Shop } from '../../../core/day/index.js';
import type { FieldFaults } from '../request/form-faults.js';
import { LABELS } from '../request/form-faults.js';
import { SuggestedInput } from '../request/suggested-input.js';
import styles from './set-part.module.css';
import type { Held, StringingForm } from './use-strung-set.js';

interface StringingFieldsProps {
  readonly shop: Shop;
  readonly count: number;
  readonly form: StringingForm;
  readonly faults: FieldFaults;
  readonly change: (change: Partial<StringingForm>) => void;
}

/** On what, in which tuning, and against which pulls a set is shown. */
export function StringingFields({ shop, count, form, faults, change }: StringingFieldsProps) {
  return (
    <form className={styles.fields} onSubmit={(event) => event.preventDefault()}>
      <SuggestedInput
        label={LABELS.instrument}
        value={form.instrument}
        onChange={(instrument) => change({ instrument })}
        suggestions={shop.instruments
          .filter(({ scaleLengthsM }) => scaleLengthsM.length === count)
          .map(({ name }) => name)}
        fault={faults.instrument ?? faults.whole}
      />
      <SuggestedInput
        label={LABELS.scale}
        placeholder="the instrument’s"
        value={form.scale}
        onChange={(scale) => change({ scale })}
        fault={faults.scale}
      />
      <SuggestedInput
        label={LABELS.tuning}
        value={form.tuning}
        onChange={(tuning) => change({ tuning })}
        suggestions={shop.tunings
          .filter(({ tuning }) => tuning.pitches.length === count)
          .map(({ name }) => name)}
        fault={faults.tuning}
      />
      <NativeSelect
        label="Wished pull"
        value={form.held}
        data={HELD}
        onChange={(event) => change({ held: event.currentTarget.value as Held })}
      />
    </form>
  );
}

const HELD = [
  { value: 'even', label: 'alike on every string' },
  { value: 'graded', label: 'growing 3 % a string to the bass' },
  { value: 'home', label: 'as in the tuning first shown' },
];

import { NativeSelect } from '@mantine/core';
import type { Shop } from '../../../core/day/index.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import type { FieldFaults } from '../request/form-faults.js';
import { SuggestedInput } from '../request/suggested-input.js';
import type { Home } from './at-home.js';
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
  const { strung: words } = useWords(SETS_WORDS);
  return (
    <form className={styles.fields} onSubmit={(event) => event.preventDefault()}>
      <PlaceFields shop={shop} count={count} place={form} faults={faults} change={change} />
      <NativeSelect
        label={words.held}
        value={form.held}
        data={Object.entries(words.heldAs).map(([value, label]) => ({ value, label }))}
        onChange={(event) => change({ held: event.currentTarget.value as Held })}
      />
    </form>
  );
}

interface PlaceFieldsProps {
  readonly shop: Shop;
  /** Of so many strings; of any number where left out. */
  readonly count?: number | undefined;
  readonly place: Home;
  readonly faults: FieldFaults;
  readonly change: (change: Partial<Home>) => void;
}

/** Instrument, scale and tuning, each picked or typed. */
export function PlaceFields({ shop, count, place, faults, change }: PlaceFieldsProps) {
  const { strung: words } = useWords(SETS_WORDS);
  const fits = (strings: number) => count === undefined || strings === count;
  return (
    <>
      <SuggestedInput
        label={words.instrument}
        value={place.instrument}
        onChange={(instrument) => change({ instrument })}
        suggestions={shop.instruments
          .filter(({ scaleLengthsM }) => fits(scaleLengthsM.length))
          .map(({ name }) => name)}
        fault={faults.instrument ?? faults.whole}
      />
      <SuggestedInput
        label={words.scale}
        placeholder={words.scaleEmpty}
        value={place.scale}
        onChange={(scale) => change({ scale })}
        fault={faults.scale}
      />
      <SuggestedInput
        label={words.tuning}
        value={place.tuning}
        onChange={(tuning) => change({ tuning })}
        suggestions={shop.tunings.filter(({ tuning }) => fits(tuning.pitches.length)).map(({ name }) => name)}
        fault={faults.tuning}
      />
    </>
  );
}

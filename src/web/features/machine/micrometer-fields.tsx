import { SegmentedControl, TextInput } from '@mantine/core';
import { useId } from 'react';
import styles from '../../parts/floor.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useSight } from '../../sight/sight.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { useRemembered } from './my-machine.js';

export interface Micrometer {
  readonly name: string;
  readonly unit: 'in' | 'mm';
  readonly rename: (name: string) => void;
  readonly turn: (unit: string) => void;
}

/** The micrometer that lies by this screen: what it is called, and what it shows. */
export function useMicrometer(): Micrometer {
  const words = useWords(STRINGS_WORDS);
  const { sight } = useSight();
  const [name, rename] = useRemembered('micrometer', words.firstName);
  const [unit, turn] = useRemembered('micrometer-unit', sight.length);
  return { name, rename, unit: unit === 'mm' ? 'mm' : 'in', turn };
}

export function MicrometerFields({ micrometer }: { readonly micrometer: Micrometer }) {
  const words = useWords(STRINGS_WORDS);
  const id = useId();
  return (
    <div className={styles.fields}>
      <TextInput
        {...HINT_BELOW}
        label={words.micrometerName}
        description={words.micrometerNameHint}
        value={micrometer.name}
        autoComplete="off"
        onChange={(event) => micrometer.rename(event.currentTarget.value)}
      />
      <div>
        <p id={id} className={styles.label}>
          {words.unitOf}
        </p>
        <SegmentedControl
          aria-labelledby={id}
          size="md"
          classNames={{ label: styles.unit ?? '' }}
          data={[
            { value: 'in', label: words.units.in },
            { value: 'mm', label: words.units.mm },
          ]}
          value={micrometer.unit}
          onChange={micrometer.turn}
        />
      </div>
    </div>
  );
}

import { TextInput } from '@mantine/core';
import { useId } from 'react';
import { Button } from '../../parts/button.js';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import type { FieldFault } from './form-faults.js';
import styles from './request-part.module.css';

interface SuggestedInputProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly suggestions?: readonly string[];
  readonly description?: string;
  readonly placeholder?: string;
  readonly fault?: FieldFault | undefined;
}

/**
 * A text that may be typed freely or picked from names that are known; what is wrong with it stands under it, and the
 * names that may have been meant, one touch each.
 */
export function SuggestedInput({
  suggestions,
  onChange,
  fault,
  description,
  placeholder,
  ...rest
}: SuggestedInputProps) {
  const { meant } = useWords(REQUESTS_WORDS);
  const id = useId();
  return (
    <div>
      <TextInput
        {...rest}
        {...HINT_BELOW}
        {...(description === undefined ? {} : { description })}
        {...(placeholder === undefined ? {} : { placeholder })}
        {...(suggestions ? { list: id } : {})}
        autoComplete="off"
        spellCheck={false}
        error={fault && `${fault.what} ${fault.mend}`}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
      {suggestions && (
        <datalist id={id}>
          {suggestions.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      )}
      {fault?.nearest && fault.nearest.length > 0 && (
        <fieldset className={styles.meant}>
          <legend>{meant}</legend>
          {fault.nearest.map((name) => (
            <Button key={name} onClick={() => onChange(name)}>
              {name}
            </Button>
          ))}
        </fieldset>
      )}
    </div>
  );
}

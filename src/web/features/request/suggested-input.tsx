import { TextInput } from '@mantine/core';
import { useId } from 'react';
import type { FaultWords } from '../../../contract/index.js';
import { HINT_BELOW } from '../../parts/hint-below.js';

interface SuggestedInputProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly suggestions?: readonly string[];
  readonly description?: string;
  readonly placeholder?: string;
  readonly fault?: FaultWords | undefined;
}

/** A text that may be typed freely or picked from names that are known; what is wrong with it stands under it. */
export function SuggestedInput({
  suggestions,
  onChange,
  fault,
  description,
  placeholder,
  ...rest
}: SuggestedInputProps) {
  const id = useId();
  return (
    <>
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
    </>
  );
}

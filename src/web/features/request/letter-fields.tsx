import { Textarea, TextInput } from '@mantine/core';
import { memo } from 'react';
import type { FaultWords } from '../../../contract/index.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import styles from './request-part.module.css';

export interface Letter {
  readonly player: string;
  readonly text: string;
}

interface LetterFieldsProps {
  readonly letter: Letter;
  readonly onLetter: (letter: Letter) => void;
  readonly quantity: string;
  readonly change: (change: { readonly quantity: string }) => void;
  readonly quantityFault: FaultWords | undefined;
  /** Said once somebody wanted to keep a letter of nobody. */
  readonly playerMissing: boolean;
}

/** Whose letter it is, how many sets are wanted, and what it says. */
export const LetterFields = memo(function LetterFields(props: LetterFieldsProps) {
  const { letter, onLetter, quantity, change, quantityFault, playerMissing } = props;
  const { letter: words, fields } = useWords(REQUESTS_WORDS);
  return (
    <fieldset className={styles.group}>
      <legend>{words.legend}</legend>
      <div className={styles.pair}>
        <TextInput
          label={words.player}
          value={letter.player}
          autoComplete="off"
          error={playerMissing && letter.player.trim() === '' ? words.noPlayer : undefined}
          onChange={(event) => onLetter({ ...letter, player: event.currentTarget.value })}
        />
        <TextInput
          label={fields.quantity}
          value={quantity}
          inputMode="numeric"
          autoComplete="off"
          error={quantityFault && `${quantityFault.what} ${quantityFault.mend}`}
          onChange={(event) => change({ quantity: event.currentTarget.value })}
        />
      </div>
      <Textarea
        label={words.letter}
        description={words.letterHint}
        value={letter.text}
        rows={5}
        maxLength={20_000}
        onChange={(event) => onLetter({ ...letter, text: event.currentTarget.value })}
      />
    </fieldset>
  );
});

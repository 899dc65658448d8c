import { TextInput } from '@mantine/core';
import type { KeyboardEvent, Ref } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { HINT_BELOW } from './hint-below.js';
import { type AmountRule, readAmount } from './read-amount.js';

interface AmountFieldProps {
  readonly label: string;
  /** Said, not shown: where a heading above says it already. */
  readonly isLabelUnseen?: boolean;
  readonly rule: AmountRule;
  /** The text as typed; an empty one is no fault, it is only not there yet. */
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly description?: string;
  readonly inputRef?: Ref<HTMLInputElement>;
  readonly onEnter?: (() => void) | undefined;
  readonly disabled?: boolean;
  readonly large?: boolean;
}

/** Where a number is typed, by a person or by an instrument that types digits and Enter; says at once what is wrong with it. */
export function AmountField(props: AmountFieldProps) {
  const {
    label,
    rule,
    text,
    onText,
    description,
    inputRef,
    onEnter,
    disabled,
    large = false,
    isLabelUnseen = false,
  } = props;
  const words = useWords(PARTS_WORDS);
  const read = text.trim() === '' ? undefined : readAmount(text, rule);
  return (
    <TextInput
      {...HINT_BELOW}
      ref={inputRef}
      {...(isLabelUnseen ? { 'aria-label': label } : { label })}
      description={description}
      value={text}
      size={large ? 'lg' : 'md'}
      inputMode="decimal"
      autoComplete="off"
      disabled={disabled ?? false}
      error={read && !read.ok ? words.amountFault(read.fault, rule.bare) : undefined}
      onChange={(event) => onText(event.currentTarget.value)}
      onKeyDown={(event: KeyboardEvent) => {
        if (event.key !== 'Enter' || !onEnter) return;
        event.preventDefault();
        onEnter();
      }}
    />
  );
}

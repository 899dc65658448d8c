import { TextInput } from '@mantine/core';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import styles from './scan-box.module.css';

interface ScanBoxProps {
  readonly label: string;
  readonly hint: string;
  readonly onScan: (text: string) => void;
}

/**
 * Where a scanner types, which is a keyboard to the browser: whatever comes while no other field has the focus goes in here, and its
 * Enter ends it. No keyboard rises on the screen for it until the field is touched.
 */
export function ScanBox({ label, hint, onScan }: ScanBoxProps) {
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState('');
  const [isTouched, setTouched] = useState(false);
  useEffect(() => {
    const begin = (event: KeyboardEvent) => {
      if (isOfScan(event)) field.current?.focus();
    };
    document.addEventListener('keydown', begin);
    return () => document.removeEventListener('keydown', begin);
  }, []);
  const scan = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === '') return;
    onScan(text.trim());
    setText('');
  };
  return (
    <form onSubmit={scan} className={styles.box}>
      <TextInput
        ref={field}
        label={label}
        description={hint}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
        inputMode={isTouched ? 'text' : 'none'}
        onPointerDown={() => setTouched(true)}
        onBlur={() => setTouched(false)}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        classNames={{ input: styles.field ?? '' }}
      />
    </form>
  );
}

/** Not what is typed into a field, asked in a dialog, or a key that presses a button. */
function isOfScan({ key, ctrlKey, altKey, metaKey, target }: KeyboardEvent): boolean {
  if (key.length !== 1 || key === ' ' || ctrlKey || altKey || metaKey) return false;
  return !(target instanceof Element && target.closest('input, textarea, select, dialog[open]'));
}

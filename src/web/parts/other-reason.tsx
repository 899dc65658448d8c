import { TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import { Button } from './button.js';
import { Dialog } from './dialog.js';
import styles from './floor.module.css';

interface OtherReasonProps {
  readonly title: string;
  readonly label: string;
  /** What the button says that ends it. */
  readonly enter: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly onReason: (reason: string) => void;
}

/** Asks for a reason that no button has. */
export function OtherReason({ title, label, enter, open, onClose, onReason }: OtherReasonProps) {
  const [text, setText] = useState('');
  const say = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === '') return;
    onReason(text.trim());
    setText('');
  };
  return (
    <Dialog title={title} open={open} onClose={onClose}>
      <form onSubmit={say} className={styles.asking}>
        <TextInput
          label={label}
          size="lg"
          value={text}
          autoComplete="off"
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <Button kind="main" size="floor" type="submit" disabled={text.trim() === ''}>
          {enter}
        </Button>
      </form>
    </Dialog>
  );
}

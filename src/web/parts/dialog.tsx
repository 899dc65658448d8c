import { type ReactNode, useEffect, useId, useRef } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { Button } from './button.js';
import styles from './dialog.module.css';

interface DialogProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** What ends it, beside the way out. */
  readonly actions?: ReactNode;
}

/** A sheet laid over the page until it is closed: the platform's own, which keeps the keyboard inside and gives it back after. */
export function Dialog({ title, open, onClose, children, actions }: DialogProps) {
  const words = useWords(PARTS_WORDS);
  const sheet = useRef<HTMLDialogElement>(null);
  const name = useId();
  useEffect(() => {
    if (open && !sheet.current?.open) sheet.current?.showModal();
    if (!open) sheet.current?.close();
  }, [open]);
  return (
    <dialog ref={sheet} aria-labelledby={name} className={styles.sheet} onClose={onClose}>
      {open && (
        <>
          <h2 id={name}>{title}</h2>
          <div className={styles.inside}>{children}</div>
          <div className={styles.actions}>
            <Button onClick={onClose}>{actions ? words.keepAsIs : words.close}</Button>
            {actions}
          </div>
        </>
      )}
    </dialog>
  );
}

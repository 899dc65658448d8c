import type { ButtonHTMLAttributes, Ref } from 'react';
import styles from './button.module.css';

export interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'className'> {
  /** `main` for the one thing that the page is about, `plain` for others, `grave` for what cannot be undone, `bare` beside text. */
  readonly kind?: 'main' | 'plain' | 'grave' | 'bare';
  /** `floor` is for gloves-off hands in a hurry: at least 56 px high. */
  readonly size?: 'desk' | 'floor';
  readonly busy?: boolean;
  readonly ref?: Ref<HTMLButtonElement>;
}

/** A thing to press. While it is busy it takes no second press, but keeps the focus. */
export function Button({ kind = 'plain', size = 'desk', busy = false, onClick, ...rest }: ButtonProps) {
  return (
    <button
      type="button"
      {...rest}
      className={`${styles.button} ${styles[kind]} ${styles[size]}`}
      aria-disabled={busy || undefined}
      onClick={busy ? (event) => event.preventDefault() : onClick}
    />
  );
}

/** For links that look as a button does. */
export const buttonClass = (kind: 'main' | 'plain' = 'plain', size: 'desk' | 'floor' = 'desk'): string =>
  `${styles.button} ${styles[kind]} ${styles[size]}`;

import { type ReactNode, useId, useState } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import styles from './explained.module.css';

export interface Explanation {
  /** What the figure is, in a line. */
  readonly what: string;
  /** How it comes about, as one reads a formula aloud or writes it: `T = 4 µ L² f²`. */
  readonly formula?: string;
  readonly inputs?: readonly { readonly name: string; readonly value: string }[];
  /** Where formula and inputs come from: author, year, table; or the shop's own measurements, and how many. */
  readonly source: string;
}

interface Named {
  /** What it is called, for those who hear the page: `pull of the third string`. */
  readonly name: string;
  readonly children: ReactNode;
}

/** Where many figures change at once, `how` is asked only of the one that is opened. */
type ExplainedProps = Named & (Explanation | { readonly how: () => Explanation });

/** A figure that tells, when it is touched or pressed, how it is known. */
export function Explained({ name, children, ...told }: ExplainedProps) {
  const words = useWords(PARTS_WORDS);
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  return (
    <span className={styles.explained}>
      <button type="button" className={styles.figure} popoverTarget={id}>
        {children}
        <span className="unseen"> {words.howKnown(name)}</span>
      </button>
      <span
        id={id}
        popover="auto"
        className={styles.note}
        onToggle={(event) => setOpen(event.newState === 'open')}
      >
        {isOpen && <Note {...('how' in told ? told.how() : told)} />}
      </span>
    </span>
  );
}

function Note({ what, formula, inputs = [], source }: Explanation) {
  return (
    <>
      <span className={styles.line}>{what}</span>
      {formula && <span className={styles.formula}>{formula}</span>}
      {inputs.map((input) => (
        <span key={input.name} className={styles.line}>
          {input.name}: <strong>{input.value}</strong>
        </span>
      ))}
      <span className={`${styles.line} quiet small`}>{source}</span>
    </>
  );
}

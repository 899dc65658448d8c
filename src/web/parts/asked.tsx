import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import styles from './asked.module.css';

interface AskedProps<T> {
  readonly question: UseQueryResult<T>;
  /** What is waited for, in words: `the day`. */
  readonly what: string;
  readonly children: (answer: T) => ReactNode;
}

/** Shows an answer of the server, or that it is waited for, or why there is none and how to ask again. */
export function Asked<T>({ question, what, children }: AskedProps<T>) {
  if (question.data !== undefined) return children(question.data);
  if (question.isError) {
    return (
      <div role="alert" className={styles.failed}>
        <h1>Could not fetch {what}</h1>
        <p>{question.error.message}</p>
        <button type="button" className={styles.again} onClick={() => void question.refetch()}>
          Ask again
        </button>
      </div>
    );
  }
  return (
    <div role="status" className={styles.waiting}>
      <span className={styles.string} aria-hidden="true" />
      <p>Working out {what} …</p>
    </div>
  );
}

import type { UseQueryResult } from '@tanstack/react-query';
import { type ReactNode, useLayoutEffect, useState } from 'react';
import { Refused } from '../api/client.js';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import styles from './asked.module.css';
import { Button } from './button.js';
import { NotSettled } from './not-settled.js';
import { RoomTitle } from './room-title.js';

interface AskedProps<T> {
  readonly question: UseQueryResult<T>;
  /** What is waited for, in words: `the day`. */
  readonly what: string;
  readonly children: (answer: T) => ReactNode;
}

/** Shows an answer of the server, or that it is waited for, or why there is none and how to ask again. */
export function Asked<T>({ question, what, children }: AskedProps<T>) {
  const words = useWords(PARTS_WORDS);
  if (question.data !== undefined) return children(question.data);
  if (question.error instanceof Refused && question.error.problem.code === 'settings.missing')
    return (
      <div className={styles.unsettled}>
        <FailedTitle title={words.notSettledTitle} />
        <NotSettled />
      </div>
    );
  if (question.isError) {
    return (
      <div role="alert" className={styles.failed}>
        <FailedTitle title={words.couldNotFetch(what)} />
        <p>{question.error.message}</p>
        <Button kind="main" onClick={() => void question.refetch()}>
          {words.askAgain}
        </Button>
      </div>
    );
  }
  return (
    <div role="status" className={styles.waiting}>
      <span className={styles.string} aria-hidden="true" />
      <p>{words.fetching(what)}</p>
    </div>
  );
}

/** The title of the room where it has no other: a room is asked for as a whole, or in a part of it. */
function FailedTitle({ title }: { readonly title: string }) {
  const [isAlone, setAlone] = useState(false);
  useLayoutEffect(() => setAlone(document.querySelector('h1') === null), []);
  return isAlone ? <RoomTitle title={title} /> : <h2>{title}</h2>;
}

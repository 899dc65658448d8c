import { createContext, type ReactNode, use, useCallback, useMemo, useRef, useState } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { Button } from './button.js';
import styles from './notices.module.css';

interface Notice {
  readonly text: string;
  /** `care` stays until it is closed. */
  readonly kind?: 'done' | 'care';
  /** How to take back what was just done. */
  readonly undo?: () => unknown;
}

type Tell = (notice: Notice) => void;

const NoticesContext = createContext<Tell>(() => {});

/** Long enough to read and reach for. */
const STANDS_MS = 10_000;

/** Says at the foot of the page what was done, with a way back where there is one. */
export function NoticesProvider({ children }: { readonly children: ReactNode }) {
  const words = useWords(PARTS_WORDS);
  const [notices, setNotices] = useState<readonly (Notice & { readonly number: number })[]>([]);
  const counted = useRef(0);
  const drop = useCallback((number: number) => {
    setNotices((before) => before.filter((notice) => notice.number !== number));
  }, []);
  const tell = useCallback<Tell>(
    (notice) => {
      const number = ++counted.current;
      setNotices((before) => [...before.slice(-2), { ...notice, number }]);
      if (notice.kind !== 'care') setTimeout(() => drop(number), STANDS_MS);
    },
    [drop],
  );
  const value = useMemo(() => tell, [tell]);
  return (
    <NoticesContext value={value}>
      {children}
      <div role="status" className={styles.notices}>
        {notices.map(({ number, text, kind = 'done', undo }) => (
          <div key={number} className={`${styles.notice} ${styles[kind]}`}>
            <p>{text}</p>
            {undo && (
              <Button
                onClick={() => {
                  drop(number);
                  undo();
                }}
              >
                {words.undo}
              </Button>
            )}
            <Button kind="bare" onClick={() => drop(number)}>
              {words.close}
            </Button>
          </div>
        ))}
      </div>
    </NoticesContext>
  );
}

/** Tells the person what was done or went wrong. */
export const useTell = (): Tell => use(NoticesContext);

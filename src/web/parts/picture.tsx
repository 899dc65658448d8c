import { SegmentedControl } from '@mantine/core';
import { type ReactNode, useId, useState } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import styles from './picture.module.css';

interface PictureProps {
  readonly title: string;
  readonly picture: ReactNode;
  /** The same as a table, for those who would rather read. */
  readonly table: ReactNode;
  readonly caption?: ReactNode;
  readonly beside?: ReactNode;
}

/** A drawing with its title and, at choice, the same as a table. */
export function Picture({ title, picture, table, caption, beside }: PictureProps) {
  const words = useWords(PARTS_WORDS);
  const [view, setView] = useState<'picture' | 'table'>('picture');
  const id = useId();
  return (
    <section aria-labelledby={id} className={styles.picture}>
      <div className={styles.head}>
        <h2 id={id}>{title}</h2>
        <div className={styles.choices}>
          {beside}
          <SegmentedControl
            aria-label={words.seenAs(title)}
            data={[
              { value: 'picture', label: words.picture },
              { value: 'table', label: words.table },
            ]}
            value={view}
            onChange={(wanted) => setView(wanted as typeof view)}
          />
        </div>
      </div>
      {view === 'picture' ? picture : table}
      {view === 'picture' && caption}
    </section>
  );
}

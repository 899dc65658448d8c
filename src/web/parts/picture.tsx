import { SegmentedControl } from '@mantine/core';
import { type ReactNode, useId, useState } from 'react';
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
  const [view, setView] = useState<'picture' | 'table'>('picture');
  const id = useId();
  return (
    <section aria-labelledby={id} className={styles.picture}>
      <div className={styles.head}>
        <h2 id={id}>{title}</h2>
        <div className={styles.choices}>
          {beside}
          <SegmentedControl
            aria-label={`${title}: seen as`}
            data={[
              { value: 'picture', label: 'Picture' },
              { value: 'table', label: 'Table' },
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

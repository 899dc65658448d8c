import type { ReactNode } from 'react';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { Button } from './button.js';
import desk from './desk.module.css';
import { type FieldWords, fieldsApart } from './fields-apart.js';
import styles from './problem-box.module.css';
import { VersionsApart } from './versions-apart.js';

interface StaleBoxProps {
  /** The record as it stands now, and as this person would have it. */
  readonly current: readonly FieldWords[];
  readonly yours: readonly FieldWords[];
  /** Who changed it meanwhile and when, where that is known. */
  readonly about?: ReactNode;
  readonly busy: boolean;
  readonly onWriteYours: () => void;
  readonly onTakeCurrent: () => void;
}

/** Somebody else changed the record meanwhile: both versions, and the choice between them. Until it is made, nothing is lost. */
export function StaleBox({ current, yours, about, busy, onWriteYours, onTakeCurrent }: StaleBoxProps) {
  const words = useWords(PARTS_WORDS);
  return (
    <section role="alert" className={`${styles.box} ${desk.stack}`} aria-label={words.changedMeanwhile}>
      <p className="care">{words.changedMeanwhile}</p>
      {about && <p>{about}</p>}
      <VersionsApart
        caption={words.changedMeanwhile}
        headings={[words.theirVersion, words.yourVersion]}
        fields={fieldsApart(current, yours)}
      />
      <div className={desk.row}>
        <Button busy={busy} onClick={onWriteYours}>
          {words.writeYours}
        </Button>
        <Button busy={busy} onClick={onTakeCurrent}>
          {words.takeCurrent}
        </Button>
      </div>
    </section>
  );
}

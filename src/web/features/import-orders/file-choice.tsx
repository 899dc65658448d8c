import { type DragEvent, useId, useState } from 'react';
import desk from '../../parts/desk.module.css';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { fileText } from './file-text.js';
import styles from './import-orders.module.css';

/** A button for those who choose a file, a place for those who drop one; gives its text. */
export function FileChoice({ onText }: { readonly onText: (text: string) => void }) {
  const words = useWords(ORDERS_WORDS);
  const [isOver, setOver] = useState(false);
  const [fault, setFault] = useState<string>();
  const id = useId();
  const take = async (file: File | undefined) => {
    if (!file) return;
    const read = await fileText(file);
    setFault(read.ok ? undefined : read.fault === 'too-large' ? words.tooLarge : words.unreadable);
    if (read.ok) onText(read.value);
  };
  const over = (event: DragEvent) => {
    event.preventDefault();
    setOver(event.type !== 'dragleave');
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is for pointers; the field inside does the same for all
    <div
      className={styles.drop}
      data-over={isOver || undefined}
      onDragEnter={over}
      onDragOver={over}
      onDragLeave={over}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void take(event.dataTransfer.files[0]);
      }}
    >
      <label htmlFor={id} className={desk.label}>
        {words.choose}
      </label>
      <input
        id={id}
        type="file"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        className={styles.file}
        onChange={(event) => void take(event.currentTarget.files?.[0])}
      />
      <p className="quiet small">{words.drop}</p>
      {fault && (
        <p role="alert" className="care">
          {fault}
        </p>
      )}
    </div>
  );
}

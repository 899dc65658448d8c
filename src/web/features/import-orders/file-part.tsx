import { Textarea, TextInput } from '@mantine/core';
import { type DragEvent, type RefObject, useId, useState } from 'react';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { fileText } from './file-text.js';
import styles from './import-orders.module.css';
import type { Importing } from './use-import.js';

interface FilePartProps {
  readonly importing: Importing;
  readonly textRef: RefObject<HTMLTextAreaElement | null>;
}

/** Where the file comes from, and its text: chosen, dropped, pasted or mended. */
export function FilePart({ importing, textRef }: FilePartProps) {
  const words = useWords(ORDERS_WORDS);
  const [fault, setFault] = useState<string>();
  const { source, text, setSource, setText, look, busy, preview, isFresh } = importing;
  const take = async (file: File | undefined) => {
    if (!file) return;
    const read = await fileText(file);
    setFault(read.ok ? undefined : read.fault === 'too-large' ? words.tooLarge : words.unreadable);
    if (!read.ok) return;
    setText(read.value);
    await look(undefined, read.value);
  };
  return (
    <section aria-label={words.file} className={desk.stack}>
      <div className={desk.fields}>
        <TextInput
          {...HINT_BELOW}
          label={words.source}
          description={words.sourceHint}
          value={source}
          onChange={(event) => setSource(event.currentTarget.value)}
        />
        <FileChoice take={take} fault={fault} />
      </div>
      <Textarea
        {...HINT_BELOW}
        ref={textRef}
        label={words.text}
        description={words.textHint}
        size="md"
        autosize
        minRows={4}
        maxRows={14}
        spellCheck={false}
        classNames={{ input: styles.text ?? '' }}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      <div className={desk.row}>
        <Button
          kind={preview && isFresh ? 'plain' : 'main'}
          busy={busy}
          disabled={text.trim() === ''}
          onClick={() => void look()}
        >
          {preview ? words.lookAgain : words.preview}
        </Button>
        {preview && !isFresh && <p className="care">{words.changedSince}</p>}
      </div>
    </section>
  );
}

interface FileChoiceProps {
  readonly take: (file: File | undefined) => Promise<void>;
  readonly fault: string | undefined;
}

/** A button for those who choose, a place for those who drop. */
function FileChoice({ take, fault }: FileChoiceProps) {
  const words = useWords(ORDERS_WORDS);
  const [isOver, setOver] = useState(false);
  const id = useId();
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

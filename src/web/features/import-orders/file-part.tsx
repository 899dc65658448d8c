import { Textarea, TextInput } from '@mantine/core';
import type { RefObject } from 'react';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { FileChoice } from './file-choice.js';
import styles from './import-orders.module.css';
import type { Importing } from './use-import.js';

interface FilePartProps {
  readonly importing: Importing;
  readonly textRef: RefObject<HTMLTextAreaElement | null>;
}

/** Where the file comes from, and its text: chosen, dropped, pasted or mended. */
export function FilePart({ importing, textRef }: FilePartProps) {
  const words = useWords(ORDERS_WORDS);
  const { source, text, setSource, setText, look, busy, preview, isFresh } = importing;
  const take = (taken: string) => {
    setText(taken);
    void look(undefined, taken);
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
        <FileChoice onText={take} />
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

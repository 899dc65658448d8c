import { TextInput } from '@mantine/core';
import { useState } from 'react';
import type { LyingStrings } from '../../../contract/index.js';
import { useRecords } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';

interface AnotherLotProps {
  readonly stringKey: string | undefined;
  readonly taken: readonly string[];
  readonly onFound: (lot: Pick<LyingStrings, 'lotId' | 'lot' | 'stringKey' | 'state' | 'count'>) => void;
}

/** A lot that the books do not have in this bin, found by its name. */
export function AnotherLot({ stringKey, taken, onFound }: AnotherLotProps) {
  const words = useWords(STRINGS_WORDS);
  const [text, setText] = useState('');
  const sought = text.trim();
  const query = { search: sought, limit: 8, ...(stringKey === undefined ? {} : { stringKey }) };
  const found = useRecords('string-lot', query, { enabled: sought !== '' });
  const lots = sought === '' ? [] : (found.data?.items ?? []).filter(({ id }) => !taken.includes(id));
  return (
    <div className={desk.stack}>
      <TextInput
        label={words.another}
        value={text}
        className={desk.narrowField}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      {sought !== '' && found.isSuccess && lots.length === 0 && <p className="quiet">{words.anotherNone}</p>}
      {lots.length > 0 && (
        <div className={desk.row}>
          {lots.map(({ id, state, body }) => (
            <Button
              key={id}
              onClick={() => {
                onFound({ lotId: id, lot: body.name, stringKey: body.stringKey, state, count: 0 });
                setText('');
              }}
            >
              {words.anotherFound(body.name)}
            </Button>
          ))}
        </div>
      )}
    </div>
  );
}

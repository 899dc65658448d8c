import { useDebouncedValue } from '@mantine/hooks';
import { useState } from 'react';
import { useAllRecords, useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';

const SETTLES_AFTER_MS = 200;
const LEAST_SIGNS = 2;

interface FindPackProps {
  readonly text: string;
  readonly onPack: (packId: string) => void;
  readonly onLot: (lotId: string) => void;
}

/** Packs by their label or their order, lots by their name. */
export function FindPack({ text, onPack, onLot }: FindPackProps) {
  const { form: words } = useWords(COMPLAINTS_WORDS);
  const [sought] = useDebouncedValue(text.trim(), SETTLES_AFTER_MS);
  const isEnough = sought.length >= LEAST_SIGNS;
  const [orderId, setOrderId] = useState<string>();
  const question = useReading('search', { text: sought || ' ' }, { enabled: isEnough });
  if (!isEnough) return null;
  return (
    <Asked question={question} what={words.searching}>
      {({ hits }) => {
        const found = hits.filter(({ kind }) => ['pack', 'order', 'string-lot'].includes(kind));
        if (found.length === 0) return <p>{words.nothing}</p>;
        return (
          <ul aria-label={words.found} className={desk.list}>
            {found.map(({ kind, id, name, about }) => (
              <li key={id}>
                <button
                  type="button"
                  className={desk.linked}
                  onClick={() =>
                    kind === 'pack' ? onPack(id) : kind === 'order' ? setOrderId(id) : onLot(id)
                  }
                >
                  {kind === 'pack'
                    ? words.pack(name, about)
                    : kind === 'order'
                      ? words.order(name)
                      : words.lot(name)}
                </button>{' '}
                {kind === 'order' && <span className="quiet small">{about}</span>}
                {kind === 'order' && id === orderId && (
                  <PacksOfOrder orderId={id} number={name} onPack={onPack} />
                )}
              </li>
            ))}
          </ul>
        );
      }}
    </Asked>
  );
}

interface PacksOfOrderProps {
  readonly orderId: string;
  readonly number: string;
  readonly onPack: (packId: string) => void;
}

function PacksOfOrder({ orderId, number, onPack }: PacksOfOrderProps) {
  const { form: words } = useWords(COMPLAINTS_WORDS);
  return (
    <Asked question={useAllRecords('pack', { orderId })} what={words.searching}>
      {(all) => {
        const packs = all.filter(({ state }) => state !== 'void');
        if (packs.length === 0) return <p>{words.noPacks}</p>;
        return (
          <ul aria-label={words.packs(number)} className={desk.list}>
            {packs.map(({ id, body }) => (
              <li key={id}>
                {words.pack(body.labelCode, body.setName)}{' '}
                <Button onClick={() => onPack(id)}>{words.take}</Button>
              </li>
            ))}
          </ul>
        );
      }}
    </Asked>
  );
}

import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { stringKeyInWords } from '../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { BigWord } from '../../parts/big-word.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { RoomTitle } from '../../parts/room-title.js';
import { ScanBox } from '../../parts/scan-box.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';
import { lotCalled } from './lot-count.js';
import { LotRoom } from './lot-room.js';
import { LotState } from './lot-state.js';
import { useLotHeardOf, useLots } from './use-lots.js';

type Lot = RecordOf<'string-lot'>;

/** Lots from the machines, looked through string by string before they may be packed. */
export function CoilingRoom({ lotId }: { readonly lotId: string | undefined }) {
  // Asked for at the door, so that a lot opened later without a line has them.
  useAllRecords('bin');
  return lotId === undefined ? <LotsPart /> : <LotDoor key={lotId} lotId={lotId} />;
}

function LotDoor({ lotId }: { readonly lotId: string }) {
  const words = useWords(COILING_WORDS);
  const { question, lot } = useLotHeardOf(lotId);
  if (lot) return <LotRoom lot={lot} />;
  return (
    <Asked question={question} what={words.what.lots}>
      {(asked) => <LotRoom lot={asked} />}
    </Asked>
  );
}

function LotsPart() {
  const words = useWords(COILING_WORDS);
  const sound = useSound();
  const navigate = useNavigate();
  const { question, lots } = useLots();
  const [stray, setStray] = useState<string>();
  const scan = (text: string) => {
    const lot = lotCalled(text, lots);
    if (lot) {
      sound.accepted();
      return void navigate({ to: '/coiling', search: { lot: lot.id } });
    }
    sound.refused();
    setStray(text);
  };
  const ofState = (state: string) => lots.filter((lot) => lot.state === state);
  return (
    <>
      <RoomTitle title={words.title} />
      <div className={styles.part}>
        <ScanBox label={words.scan} hint={words.scanHint} onScan={scan} />
        {stray !== undefined && (
          <BigWord tone="stopped" word={words.unknown} more={words.unknownMore(stray)} />
        )}
      </div>
      <Asked question={question} what={words.what.lots}>
        {() => (
          <>
            <LotList title={words.inCheck} lots={ofState('in-check')} />
            <LotList title={words.onHold} lots={ofState('on-hold')} />
            {ofState('in-check').length + ofState('on-hold').length === 0 && <Empty what={words.nothing} />}
          </>
        )}
      </Asked>
    </>
  );
}

function LotList({ title, lots }: { readonly title: string; readonly lots: readonly Lot[] }) {
  const words = useWords(COILING_WORDS);
  const figures = useFigures();
  if (lots.length === 0) return null;
  return (
    <section aria-label={title} className={styles.part}>
      <h2>{title}</h2>
      <ul className={styles.runs}>
        {lots.map((lot) => {
          const { short, material, finish } = stringKeyInWords(lot.body.stringKey);
          const { holdReason, made, name } = lot.body;
          return (
            <li key={lot.id}>
              <Link to="/coiling" search={{ lot: lot.id }} className={styles.run}>
                <LotState state={lot.state} />
                <span className={styles.lines}>
                  <strong className={styles.gauge}>{short}</strong>
                  <span>{[material, finish].filter(Boolean).join(', ')}</span>
                </span>
                <span className={styles.lines}>
                  <span>
                    {name}, {words.made(figures.number(made))}
                  </span>
                  {lot.state === 'on-hold' && holdReason !== undefined && (
                    <span className="quiet">{words.held(holdReason)}</span>
                  )}
                </span>
              </Link>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

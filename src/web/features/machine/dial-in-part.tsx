import { pitchAdviceInWords } from '../../../contract/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useQueued } from '../../outbox/index.js';
import styles from '../../parts/floor.module.css';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_IN_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { PositionPanel, type WoundString } from '../dial-in/position-panel.js';
import { UndoStep } from './undo-step.js';
import { UNDO_MS } from './use-enter-tally.js';
import type { RunBook } from './use-run-book.js';
import type { RunDialIn } from './use-run-dial-in.js';

interface DialInPartProps {
  readonly book: RunBook;
  readonly dialIn: RunDialIn;
  readonly onNew: (trialStringId: string) => void;
}

/** What to do at each position, from all strings so far and from past runs; and the touch for the next string. */
export function DialInPart({ book, dialIn, onNew }: DialInPartProps) {
  const { run, nextNumber: number } = book;
  const words = useWords(DIAL_IN_WORDS);
  const stringWords = useWords(STRINGS_WORDS);
  const sound = useSound();
  const trial = useQueued('record-trial-string');
  const { positions, knob, unit, isOnRecord, hasPast, traverse } = dialIn;
  const wind = async (string: WoundString) => {
    const id = freshId();
    const input = { id, runId: run.id, number, ...string };
    await trial.enter(input, { label: stringWords.entered(number), undoWithin: UNDO_MS });
    sound.accepted();
    onNew(id);
  };
  return (
    <>
      {positions.map((at) => (
        <PositionPanel
          key={at.advice.position}
          at={at}
          position={positions.length === 2 ? (at.advice.position === 0 ? 1 : 2) : undefined}
          knob={knob}
          unit={unit}
          isAdviceShown
          asksTurns
          onString={(string) => void wind(string)}
        />
      ))}
      {traverse && <Traverse traverse={traverse} />}
      {!isOnRecord && <p className="quiet">{words.starting}</p>}
      {!hasPast && <p className="quiet">{words.noPast}</p>}
      <UndoStep book={book} />
    </>
  );
}

function Traverse({ traverse: { advice, dial } }: { readonly traverse: NonNullable<RunDialIn['traverse']> }) {
  const words = useWords(DIAL_IN_WORDS);
  const figures = useFigures();
  const { what, why } = pitchAdviceInWords(advice);
  return (
    <section aria-label={words.traverse}>
      <p className={styles.said} role="status">
        {what} {dial !== undefined && words.dialIs(figures.number(dial, 2))}
      </p>
      <p>{why}</p>
    </section>
  );
}

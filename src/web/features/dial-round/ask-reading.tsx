import { TextInput } from '@mantine/core';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { freshId } from '../../api/fresh-id.js';
import { useQueued } from '../../outbox/index.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { readAmount } from '../../parts/read-amount.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';
import { useRemembered } from '../machine/my-machine.js';
import { UNDO_MS } from '../machine/use-enter-tally.js';
import { READ_RULES, TURNS_RULE } from './reading-rules.js';
import type { RoundNow } from './round-now.js';
import type { DialRound } from './use-dial-rounds.js';

interface AskReadingProps {
  readonly round: DialRound;
  readonly now: RoundNow;
}

/** One number after the other: digits and Enter, and the next is asked for by itself. */
export function AskReading({ round, now: { next, turns } }: AskReadingProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const figures = useFigures();
  const sound = useSound();
  const { quantity } = round.body;
  const [instrument, rename] = useRemembered(`dial-${quantity}`, words.instruments[quantity]);
  const { enter } = useQueued('record-dial-reading');
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState('');
  const [turnsText, setTurnsText] = useState('');
  const [startM, setStartM] = useState<number>();
  const asked = next.kind === 'read' ? `${next.dial} ${next.done}` : '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: with each next number the field is at hand again
  useEffect(() => field.current?.focus(), [asked, startM]);
  if (next.kind === 'done') return null;
  const { dial } = next;
  const number = figures.number(dial, 2);
  const turnsRead = readAmount(turnsText === '' ? String(turns?.turns ?? 1) : turnsText, TURNS_RULE);
  const take = (read: DialRound['body']['readings'][number]['read']) => {
    const input = {
      roundId: round.id,
      readingId: freshId(),
      dial,
      read,
      instrument: instrument.trim() || words.instruments[quantity],
    };
    void enter(input, { label: words.entered(number), undoWithin: UNDO_MS, about: [round.id] });
    setStartM(undefined);
    setTurnsText('');
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const read = readAmount(text, READ_RULES[quantity]);
    if (!read.ok || !turnsRead.ok || (startM !== undefined && startM === read.value)) return sound.refused();
    sound.accepted();
    setText('');
    if (quantity === 'pull') return take({ pullN: read.value });
    if (startM === undefined) return setStartM(read.value);
    return take({ turns: turnsRead.value, startM, endM: read.value });
  };
  const isEnd = startM !== undefined;
  return (
    <form onSubmit={submit} className={styles.asking} aria-label={words.reading(number)}>
      <p className="quiet">
        {words.left(next.done, next.foreseen)} {words.why[next.why]}
      </p>
      <p className={styles.said} role="status">
        {isEnd
          ? words.turn(turnsRead.ok ? turnsRead.value : 0)
          : words.comeUp(
              number,
              next.backBelow === undefined ? undefined : figures.number(next.backBelow, 2),
            )}
      </p>
      <AmountField
        label={quantity === 'pull' ? words.pullField : isEnd ? words.endField : words.startField}
        description={quantity === 'pull' ? words.pullHint : words.ruleHint}
        rule={READ_RULES[quantity]}
        text={text}
        onText={setText}
        inputRef={field}
        large
      />
      {isEnd && turns && (
        <AmountField
          label={words.turnsField}
          description={words.turnsWhy({
            turns: turns.turns,
            travel: figures.length(turns.travelM),
            share: figures.number(100 * turns.share, 2),
            isEnough: turns.isEnough,
          })}
          rule={TURNS_RULE}
          text={turnsText === '' ? String(turns.turns) : turnsText}
          onText={setTurnsText}
        />
      )}
      {!isEnd && (
        <TextInput
          {...HINT_BELOW}
          label={words.instrument}
          value={instrument}
          autoComplete="off"
          onChange={(event) => rename(event.currentTarget.value)}
        />
      )}
      <div className={styles.doing}>
        <Button size="floor" type="submit">
          {words.enter}
        </Button>
        {isEnd && (
          <Button size="floor" onClick={() => setStartM(undefined)}>
            {words.startAgain}
          </Button>
        )}
      </div>
    </form>
  );
}

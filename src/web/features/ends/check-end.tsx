import { TextInput } from '@mantine/core';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { EndCheck, EndedPiece, EndSheet } from '../../../core/winding/index.js';
import { BigWord } from '../../parts/big-word.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { useSight } from '../../sight/sight.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { useRemembered } from '../machine/my-machine.js';
import {
  type Answered,
  answered,
  chosen,
  type DraftFault,
  draftFrom,
  NEW_DRAFT,
  OUTCOMES,
  SEATS,
  STEPS,
} from './end-draft.js';

interface CheckEndProps {
  readonly runId: string;
  /** Which end of the run it is, counted from 1. */
  readonly number: number;
  readonly ends: EndSheet;
  readonly onCheck: (check: EndCheck) => void;
}

/** One end, thing by thing: digits and Enter, and the next is asked for by itself. Half an end outlives the page. */
export function CheckEnd({ runId, number, ends, onCheck }: CheckEndProps) {
  const words = useWords(ENDS_WORDS);
  const sound = useSound();
  const { sight } = useSight();
  const field = useRef<HTMLInputElement>(null);
  const [kept, keep] = useRemembered(`end ${runId}`, '');
  const [text, setText] = useState('');
  const [doubt, setDoubt] = useState<{ readonly text: string; readonly fault: DraftFault }>();
  const draft = draftFrom(kept);
  const { step } = draft;
  const hint = useStepHint(ends)[step];
  const asked = { piece: pieceOf(ends), pullUnit: sight.pull };
  const at = STEPS.indexOf(step);
  // biome-ignore lint/correctness/useExhaustiveDependencies: with each next thing the field is at hand again
  useEffect(() => field.current?.focus(), [at, number]);
  const go = (next: Answered) => {
    sound.accepted();
    setText('');
    setDoubt(undefined);
    keep(next.kind === 'next' ? JSON.stringify(next.draft) : '');
    if (next.kind === 'done' && next.check) onCheck(next.check);
  };
  const enter = (event: FormEvent) => {
    event.preventDefault();
    const result = answered(draft, text, asked);
    if (result.ok) return go(result.value);
    sound.refused();
    setDoubt({ text, fault: result.fault });
    setText('');
  };
  return (
    <form onSubmit={enter} className={styles.asking} aria-label={words.checking(number)}>
      <p className="quiet">
        {words.checking(number)}, {words.stepOf(at, STEPS.length)}
      </p>
      <p className={styles.said} role="status">
        {words.asks[step]}
      </p>
      <TextInput
        {...HINT_BELOW}
        ref={field}
        label={words.field}
        description={hint}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
        inputMode="decimal"
        autoComplete="off"
        classNames={{ input: styles.reading ?? '' }}
      />
      {(step === 'seat' || step === 'came') && (
        <Choices
          names={
            step === 'seat'
              ? SEATS.map((each) => words.seats[each])
              : OUTCOMES.map((each) => words.outcomes[each])
          }
          onChoose={(choice) => go(chosen(draft, (step === 'seat' ? SEATS : OUTCOMES)[choice] ?? ''))}
        />
      )}
      {doubt && <Doubt {...doubt} unit={unitOf(step, words, sight.pull)} />}
      {at > 0 && <Button onClick={() => go({ kind: 'next', draft: NEW_DRAFT })}>{words.startOver}</Button>}
    </form>
  );
}

const pieceOf = ({ cut, pull }: EndSheet): EndedPiece => ({
  lengthM: cut.lengthOverAllM,
  ...(pull && { leastBreakingN: pull.leastBreakingN }),
});

type Words = (typeof ENDS_WORDS)['en'];

const unitOf = (step: (typeof STEPS)[number], words: Words, pullUnit: string): string =>
  step === 'pull' ? pullUnit : step === 'twists' ? words.turnsUnit : words.mm;

/** What the sheet wants of each thing, beside the field that asks for it. */
function useStepHint(ends: EndSheet): Readonly<Record<(typeof STEPS)[number], string>> {
  const { hints } = useWords(ENDS_WORDS);
  const figures = useFigures();
  const { sight } = useSight();
  const millimetres = (lengthM: number, decimals: number) => figures.number(lengthM * 1000, decimals);
  const { twists, tail, cut, pull } = ends;
  return {
    length: hints.length(millimetres(cut.lengthOverAllM, 0)),
    twists: hints.twists(twists.least, twists.most),
    tail: hints.tail(millimetres(tail.mostM, 1)),
    seat: hints.seat,
    pull: pull ? hints.pull(sight.pull, figures.pull(pull.proofN)) : hints.pullUnknown(sight.pull),
    came: hints.came,
  };
}

interface ChoicesProps {
  readonly names: readonly string[];
  readonly onChoose: (at: number) => void;
}

/** Each with the number that may be typed instead. */
function Choices({ names, onChoose }: ChoicesProps) {
  return (
    <div className={styles.doing}>
      {names.map((name, at) => (
        <Button key={name} size="floor" onClick={() => onChoose(at)}>
          {at + 1} {name}
        </Button>
      ))}
    </div>
  );
}

interface DoubtProps {
  readonly text: string;
  readonly fault: DraftFault;
  readonly unit: string;
}

function Doubt({ text, fault, unit }: DoubtProps) {
  const words = useWords(ENDS_WORDS);
  const figures = useFigures();
  const more =
    fault.code === 'range'
      ? words.impossible(text, figures.number(fault.least, 1), figures.number(fault.most, 1), unit)
      : words.unreadable(text);
  return <BigWord tone="stopped" word={words.lookAgain} more={more} />;
}

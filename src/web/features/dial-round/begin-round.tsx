import { type FormEvent, useState } from 'react';
import {
  type DialQuantity,
  type DialValue,
  dialsToRead,
  type WindingMachine,
} from '../../../core/winding/index.js';
import { freshId } from '../../api/fresh-id.js';
import type { RecordOf } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';
import { ERROR_RULES } from './reading-rules.js';

interface BeginRoundProps {
  readonly machine: RecordOf<'machine'>;
  readonly quantity: DialQuantity;
  readonly inForce: readonly DialValue[];
}

const NUMBER: AmountRule = { units: { '': 1 }, bare: '', least: -1e6, most: 1e6 };
const HOW_MANY: AmountRule = { units: { '': 1 }, bare: '', least: 2, most: 60, whole: true };
const PER_CENT: AmountRule = { units: { '%': 0.01 }, bare: '%', least: 0.0001, most: 0.1 };

/** Which numbers are to be measured, with what, and how well. */
export function BeginRound({ machine, quantity, inForce }: BeginRoundProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const { enter } = useQueued('begin-dial-round');
  const [texts, setTexts] = useState(() =>
    firstTexts(machine.body as Omit<WindingMachine, 'id'>, quantity, inForce),
  );
  const read = {
    from: readAmount(texts.from, NUMBER),
    to: readAmount(texts.to, NUMBER),
    count: readAmount(texts.count, HOW_MANY),
    error: readAmount(texts.error, ERROR_RULES[quantity]),
    share: readAmount(texts.share, PER_CENT),
  };
  const { from, to, count, error, share } = read;
  const isReady = from.ok && to.ok && count.ok && error.ok && share.ok && from.value < to.value;
  const begin = (event: FormEvent) => {
    event.preventDefault();
    if (!isReady) return;
    const step = 'dialStep' in machine.body && quantity === 'traverse' ? machine.body.dialStep : STEP;
    const dials = dialsToRead({ least: from.value, most: to.value, step, numbers: count.value });
    const asked = { machineId: machine.id, quantity, readingError: error.value, wantedShare: share.value };
    void enter({ id: freshId(), ...asked, dials: [...dials] }, { label: words.begun(machine.body.name) });
  };
  const field = (name: keyof typeof texts, rule: AmountRule, label: string, hint?: string) => (
    <AmountField
      label={label}
      rule={rule}
      text={texts[name]}
      large
      onText={(text) => setTexts({ ...texts, [name]: text })}
      {...(hint === undefined ? {} : { description: hint })}
    />
  );
  return (
    <form onSubmit={begin} className={styles.part} aria-label={words.beginTitle}>
      <h2>{words.beginTitle}</h2>
      <p>{words.lead[quantity]}</p>
      <div className={styles.fields}>
        {field('from', NUMBER, words.from)}
        {field('to', NUMBER, words.to)}
        {field('count', HOW_MANY, words.count)}
        {field('error', ERROR_RULES[quantity], words.error[quantity], words.errorHint[quantity])}
        {quantity === 'traverse' && field('share', PER_CENT, words.share, words.shareHint)}
      </div>
      <div className={styles.onward}>
        <Button kind="main" size="floor" type="submit" disabled={!isReady}>
          {words.begin}
        </Button>
      </div>
    </form>
  );
}

/** A knob in numbers is rarely read finer. */
const STEP = 0.1;

function firstTexts(
  machine: Omit<WindingMachine, 'id'>,
  quantity: DialQuantity,
  inForce: readonly DialValue[],
) {
  const knob = machine.knob?.unit === '' && quantity === 'pull' ? machine.knob : undefined;
  return {
    from: String(inForce[0]?.dial ?? knob?.least ?? ''),
    to: String(inForce.at(-1)?.dial ?? knob?.most ?? ''),
    count: '8',
    error: quantity === 'pull' ? '0.1' : '0.05',
    share: quantity === 'pull' ? '2' : '0.2',
  };
}

import { useId, useState } from 'react';
import { dialInInWords } from '../../../contract/index.js';
import type { DialInAdvice, Knob, TurnsSeen } from '../../../core/winding/index.js';
import { AmountField } from '../../parts/amount-field.js';
import { BigWord } from '../../parts/big-word.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { readAmount } from '../../parts/read-amount.js';
import type { StateTone } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_IN_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import { advisedSetting, type Dialled, settingRule } from './next-string.js';
import { TurnsAsked } from './turns-asked.js';

/** How a position stands. */
export interface PositionAtHand {
  readonly advice: DialInAdvice;
  /** What its last string was wound at. */
  readonly standsAt: number | undefined;
  /** Its last string is not measured yet: until then there is nothing to advise. */
  readonly isToMeasure: boolean;
}

export interface WoundString extends Dialled {
  readonly position: 1 | 2;
  readonly seen?: TurnsSeen;
}

interface PositionPanelProps {
  readonly at: PositionAtHand;
  /** Of a machine that makes two at once; else undefined. */
  readonly position: 1 | 2 | undefined;
  readonly knob: Knob;
  readonly unit: string;
  readonly isAdviceShown: boolean;
  readonly asksTurns: boolean;
  readonly onString: (string: WoundString) => void;
}

/** What to do at one position in one sentence, and the touch that says that it was done. */
export function PositionPanel(props: PositionPanelProps) {
  const { at, position, knob, unit, isAdviceShown, asksTurns, onString } = props;
  const words = useWords(DIAL_IN_WORDS);
  const figures = useFigures();
  const heading = useId();
  const [own, setOwn] = useState<string>();
  const [seen, setSeen] = useState<TurnsSeen>();
  const rule = settingRule(knob, unit);
  const typed = own === undefined || own.trim() === '' ? undefined : readAmount(own, rule);
  const isTyping = own !== undefined;
  const needsTyping = !isAdviceShown && at.standsAt === undefined;
  const setting = dialledOf(at, typed, isAdviceShown);
  const wind = () => {
    if (!setting) return;
    onString({ position: position ?? 1, ...setting, ...(seen ? { seen } : {}) });
    setOwn(undefined);
    setSeen(undefined);
  };
  const title = position === undefined ? words.title : words.position(position);
  return (
    <section aria-labelledby={heading} className={styles.entry}>
      <h3 id={heading}>{title}</h3>
      <Said at={at} unit={unit} isAdviceShown={isAdviceShown} />
      {asksTurns && !at.isToMeasure && <TurnsAsked seen={seen} onSeen={setSeen} />}
      {(isTyping || needsTyping) && (
        <AmountField
          large
          label={position === undefined ? words.setting(unit) : words.settingAt(unit, position)}
          description={words.settingHint(figures.number(knob.least, 2), figures.number(knob.most, 2))}
          rule={rule}
          text={own ?? ''}
          onText={setOwn}
          onEnter={wind}
        />
      )}
      <div className={styles.doing}>
        <Button
          kind={at.advice.decision.kind === 'run' ? 'plain' : 'main'}
          size="floor"
          disabled={!setting}
          onClick={wind}
        >
          {position === undefined ? words.newString : words.newStringAt(position)}
        </Button>
        {!needsTyping && (
          <Button size="floor" onClick={() => setOwn(isTyping ? undefined : '')}>
            {isTyping && words.asAdvised}
            {!isTyping && (position === undefined ? words.otherwise : words.otherwiseAt(position))}
          </Button>
        )}
      </div>
    </section>
  );
}

/** The setting that goes with the next string; undefined while what was typed cannot be read. */
function dialledOf(
  { advice, standsAt }: PositionAtHand,
  typed: ReturnType<typeof readAmount> | undefined,
  isAdviceShown: boolean,
): Dialled | undefined {
  if (typed) return typed.ok ? { setting: typed.value, setBy: 'override' } : undefined;
  if (isAdviceShown) return { setting: advisedSetting(advice, standsAt), setBy: 'advice' };
  return standsAt === undefined ? undefined : { setting: standsAt, setBy: 'override' };
}

interface SaidProps {
  readonly at: PositionAtHand;
  readonly unit: string;
  readonly isAdviceShown: boolean;
}

function Said({ at: { advice, standsAt, isToMeasure }, unit, isAdviceShown }: SaidProps) {
  const words = useWords(DIAL_IN_WORDS);
  const figures = useFigures();
  if (isToMeasure) return <BigWord tone="goes" word={words.measureIt} more={words.measureItMore} />;
  const at = `${figures.number(standsAt ?? 0, 2)} ${unit}`.trim();
  if (!isAdviceShown)
    return standsAt === undefined ? null : <p className={styles.said}>{words.stands(at)}</p>;
  const { what, why } = dialInInWords(advice, unit);
  return <BigWord tone={TONES[advice.decision.kind]} word={what} more={why} />;
}

const TONES: Readonly<Record<DialInAdvice['decision']['kind'], StateTone>> = {
  start: 'waits',
  adjust: 'waits',
  'measure-one-more': 'waits',
  'measure-again': 'goes',
  run: 'done',
  stop: 'stopped',
};

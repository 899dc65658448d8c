import type { RecordOf } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { useSound } from '../../parts/sound.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import type { Trial } from './run-count.js';

interface JudgeStringProps {
  readonly run: RecordOf<'run'>;
  readonly trial: Trial;
  readonly name: string;
}

/** Good or scrap: the last word stands, so a slip is mended by the other button. */
export function JudgeString({ run, trial, name }: JudgeStringProps) {
  const words = useWords(STRINGS_WORDS);
  const sound = useSound();
  const judge = useQueued('judge-trial-string');
  const say = async (verdict: 'good' | 'scrap') => {
    const input = { trialStringId: trial.id, runId: run.id, verdict };
    await judge.enter(input, { label: words.judged(name, words.verdicts[verdict]) });
    sound.accepted();
  };
  return (
    <fieldset className={styles.judging}>
      <legend>{words.judge(name)}</legend>
      {(['good', 'scrap'] as const).map((verdict) => (
        <Button
          key={verdict}
          size="floor"
          kind={verdict === 'good' ? 'main' : 'grave'}
          aria-pressed={trial.verdict === verdict}
          onClick={() => void say(verdict)}
        >
          {words[verdict]}
        </Button>
      ))}
    </fieldset>
  );
}

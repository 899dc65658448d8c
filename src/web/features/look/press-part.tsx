import { Link } from '@tanstack/react-router';
import { Button, buttonClass } from '../../parts/button.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';
import styles from './look.module.css';
import { Part } from './part.js';

const KINDS = ['main', 'plain', 'grave', 'bare'] as const;
const SIZES = ['desk', 'floor'] as const;
const TONES: readonly StateTone[] = ['waits', 'goes', 'done', 'care', 'stopped'];

/** What is pressed, in every kind, size and state; and the marks of states. */
export function PressPart() {
  const words = useWords(LOOK_WORDS);
  const { buttonKinds, pressStates } = words;
  return (
    <>
      <Part title={words.buttons}>
        {SIZES.flatMap((size) =>
          KINDS.map((kind) => (
            <div key={`${size} ${kind}`} className={styles.row}>
              <Button kind={kind} size={size}>
                {buttonKinds[kind]}, {pressStates.usual}
              </Button>
              <Button kind={kind} size={size} busy>
                {buttonKinds[kind]}, {pressStates.busy}
              </Button>
              <Button kind={kind} size={size} disabled>
                {buttonKinds[kind]}, {pressStates.disabled}
              </Button>
            </div>
          )),
        )}
        <div className={styles.row}>
          <Link to="/" className={buttonClass('main')}>
            {words.link}
          </Link>
          <Link to="/" className={buttonClass('plain', 'floor')}>
            {words.link}
          </Link>
        </div>
      </Part>
      <Part title={words.tones}>
        <div className={styles.row}>
          {TONES.map((tone) => (
            <StateMark key={tone} tone={tone}>
              {words.toneNames[tone]}
            </StateMark>
          ))}
        </div>
      </Part>
    </>
  );
}

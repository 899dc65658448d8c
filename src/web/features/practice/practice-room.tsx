import { Link, useNavigate } from '@tanstack/react-router';
import { SIMULATED_MACHINES, type SimulatedKind } from '../../../core/winding/index.js';
import { Button, buttonClass } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { RoomTitle } from '../../parts/room-title.js';
import { PRACTICE_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import { PractisedRun } from './practised-run.js';

interface PracticeRoomProps {
  readonly machine: string | undefined;
  /** Draws the machine and its run; the same seed is the same machine. */
  readonly seed: string | undefined;
}

const KINDS = Object.keys(SIMULATED_MACHINES) as SimulatedKind[];

/** A simulated machine to dial in, as often as one likes. Nothing of it goes to the shop. */
export function PracticeRoom({ machine, seed }: PracticeRoomProps) {
  const words = useWords(PRACTICE_WORDS);
  const navigate = useNavigate();
  const kind = KINDS.find((each) => each === machine);
  const go = (to: SimulatedKind | undefined) =>
    void navigate({ to: '/practice', search: to ? { machine: to, seed: String(freshSeed()) } : {} });
  const drawn = Number.parseInt(seed ?? '', 10);
  return (
    <>
      <header className={styles.head}>
        <RoomTitle title={words.title} />
        <div className={styles.doing}>
          {kind && <Button onClick={() => go(undefined)}>{words.other}</Button>}
          <Link to="/machine" className={buttonClass()}>
            {words.back}
          </Link>
        </div>
      </header>
      <p>{words.lead}</p>
      {kind && drawn > 0 ? (
        <PractisedRun key={`${kind} ${drawn}`} run={{ kind, seed: drawn }} onAgain={() => go(kind)} />
      ) : (
        <section aria-labelledby="which-practice" className={styles.part}>
          <h2 id="which-practice">{words.which}</h2>
          <ul className={styles.choices}>
            {KINDS.map((each) => (
              <li key={each}>
                <Button size="floor" onClick={() => go(each)}>
                  <span className={styles.lines}>
                    {words.kinds[each][0]}
                    <small>{words.kinds[each][1]}</small>
                  </span>
                </Button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

const freshSeed = (): number => 1 + ((crypto.getRandomValues(new Uint32Array(1))[0] ?? 0) % 1_000_000);

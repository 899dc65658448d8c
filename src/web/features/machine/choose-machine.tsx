import { Link } from '@tanstack/react-router';
import { stringKeyInWords } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { Button, buttonClass } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { RoomTitle } from '../../parts/room-title.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';
import { PracticeDoor } from '../practice/practice-door.js';
import { runsAhead } from './runs-ahead.js';

interface ChooseMachineProps {
  readonly machines: readonly RecordOf<'machine'>[];
  readonly onChoose: (machineId: string) => void;
}

/** Once for a screen: which machine it stands by. */
export function ChooseMachine({ machines, onChoose }: ChooseMachineProps) {
  const words = useWords(MACHINE_WORDS);
  const doing = useDoing();
  const mayEdit = useMay()('shop.edit');
  return (
    <>
      <header className={styles.head}>
        <RoomTitle title={words.title} />
        <PracticeDoor />
      </header>
      {machines.length === 0 ? (
        <Empty what={words.noMachines}>
          {mayEdit && (
            <Link to="/shop/$part" params={{ part: 'machines' }} className={buttonClass('main', 'floor')}>
              {words.enterMachine}
            </Link>
          )}
        </Empty>
      ) : (
        <section aria-labelledby="which-machine" className={styles.part}>
          <h2 id="which-machine">{words.whichMachine}</h2>
          <p className="quiet">{words.whichMachineMore}</p>
          <ul className={styles.choices}>
            {machines
              .toSorted((one, other) => one.body.name.localeCompare(other.body.name))
              .map(({ id, body }) => (
                <li key={id}>
                  <Button size="floor" onClick={() => onChoose(id)}>
                    <span className={styles.lines}>
                      {body.name}
                      <small>{words.positions(body.positions)}</small>
                      {doing(id).map((line) => (
                        <small key={line}>{line}</small>
                      ))}
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

/** So many strings are named of what comes after the next. */
const NAMED = 8;

/** What a machine does now, next and then: whoever looks for a string finds it by that. Nothing until it is known. */
function useDoing(): (machineId: string) => readonly string[] {
  const words = useWords(MACHINE_WORDS);
  const planned = useAllRecords('run', { state: 'planned' }).data;
  const running = useAllRecords('run', { state: 'running' }).data;
  const paused = useAllRecords('run', { state: 'paused' }).data;
  const plans = (useAllRecords('plan', { state: 'in-force' }).data ?? []).map(({ body }) => body);
  return (machineId) => {
    if (!planned || !running || !paused) return [];
    const here = [...planned, ...running, ...paused].filter(({ body }) => body.machineId === machineId);
    const { underWay, planned: ahead } = runsAhead(here, plans);
    const [next, ...then] = ahead;
    const short = (run: RecordOf<'run'>) => stringKeyInWords(run.body.stringKey).short;
    const lines = [
      ...underWay.map((run) => (run.state === 'paused' ? words.stoodStill : words.runsNow)(short(run))),
      ...(next ? [words.nextUp(short(next))] : []),
      ...(then.length > 0
        ? [words.thenUp(then.slice(0, NAMED).map(short), Math.max(0, then.length - NAMED))]
        : []),
    ];
    return lines.length > 0 ? lines : [words.nothingUp];
  };
}

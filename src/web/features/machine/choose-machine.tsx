import type { RecordOf } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { RoomTitle } from '../../parts/room-title.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';
import { PracticeDoor } from '../practice/practice-door.js';

interface ChooseMachineProps {
  readonly machines: readonly RecordOf<'machine'>[];
  readonly onChoose: (machineId: string) => void;
}

/** Once for a screen: which machine it stands by. */
export function ChooseMachine({ machines, onChoose }: ChooseMachineProps) {
  const words = useWords(MACHINE_WORDS);
  return (
    <>
      <header className={styles.head}>
        <RoomTitle title={words.title} />
        <PracticeDoor />
      </header>
      {machines.length === 0 ? (
        <Empty what={words.noMachines} />
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

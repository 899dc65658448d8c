import { Link } from '@tanstack/react-router';
import { type DialQuantity, dialTableOf, type WindingMachine } from '../../../core/winding/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { useComing } from '../../outbox/index.js';
import { Asked } from '../../parts/asked.js';
import { BigWord } from '../../parts/big-word.js';
import styles from '../../parts/floor.module.css';
import { Lost } from '../../parts/lost.js';
import { RoomTitle } from '../../parts/room-title.js';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';
import { useMyMachine } from '../machine/my-machine.js';
import { AskReading } from './ask-reading.js';
import { BeginRound } from './begin-round.js';
import { roundNow } from './round-now.js';
import { RoundResult } from './round-result.js';
import { LastAdopted, SettleRound } from './settle-round.js';
import { useDialRounds } from './use-dial-rounds.js';

interface DialRoomProps {
  readonly machineId: string | undefined;
  readonly what: string | undefined;
}

/** Measuring what the numbers of a machine's dial give, number by number. */
export function DialRoom({ machineId, what }: DialRoomProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const mine = useMyMachine().machineId;
  const machines = useAllRecords('machine');
  return (
    <Asked question={machines} what={words.what}>
      {(all) => {
        const machine = all.find(({ id }) => id === (machineId ?? mine));
        if (machine?.body.kind !== 'winder') return <Lost what={words.noMachine} />;
        const quantity: DialQuantity =
          what === 'pull' || machine.body.drive === 'servo' ? 'pull' : 'traverse';
        return <DialOfMachine key={`${machine.id} ${quantity}`} machine={machine} quantity={quantity} />;
      }}
    </Asked>
  );
}

interface DialOfMachineProps {
  readonly machine: RecordOf<'machine'>;
  readonly quantity: DialQuantity;
}

function DialOfMachine({ machine, quantity }: DialOfMachineProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const { question, rounds } = useDialRounds(machine.id, quantity);
  const coming = useComing();
  const inForce = dialTableOf(machine.body as never, quantity) ?? [];
  const round = rounds.findLast(({ state }) => state === 'open');
  const adopted = rounds.findLast(({ state }) => state === 'adopted');
  const body = machine.body as Omit<WindingMachine, 'id'>;
  const isGear = body.drive === 'gear';
  const other = quantity === 'pull' ? 'traverse' : 'pull';
  return (
    <>
      <header className={styles.head}>
        <div>
          <RoomTitle title={words.titles[quantity](body.name)} />
          <Link to="/machine" className={styles.back}>
            {words.back}
          </Link>
        </div>
        {(isGear || other === 'pull') && (
          <Link to="/machine/dial" search={{ machine: machine.id, what: other }} className={styles.back}>
            {words.otherDial[other]}
          </Link>
        )}
      </header>
      <Asked question={question} what={words.what}>
        {() => {
          if (!round)
            return (
              <>
                <BeginRound machine={machine} quantity={quantity} inForce={inForce} />
                {adopted && <LastAdopted round={adopted} />}
              </>
            );
          const now = roundNow(round, body, inForce);
          const isOnTheWay = coming.some(({ about, state }) => about.includes(round.id) && state !== 'done');
          const isDone = now.next.kind === 'done';
          return (
            <>
              <AskReading round={round} now={now} />
              {isDone && <BigWord tone="done" word={words.done} more={words.doneMore} />}
              <SettleRound round={round} isDone={isDone} isOnTheWay={isOnTheWay} />
              <RoundResult round={round} now={now} />
            </>
          );
        }}
      </Asked>
    </>
  );
}

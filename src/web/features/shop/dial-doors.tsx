import { Link } from '@tanstack/react-router';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';

interface DialDoorsProps {
  readonly machineId: string;
  readonly isGear: boolean;
}

/** The way to the room in which a machine's dials are measured. */
export function DialDoors({ machineId: machine, isGear }: DialDoorsProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const doors = isGear ? ([TRAVERSE, PULL] as const) : ([PULL] as const);
  return (
    <p className={desk.row}>
      {doors.map((what) => (
        <Link key={what} to="/machine/dial" search={{ machine, what }} className={buttonClass()}>
          {what === PULL ? words.doorPull : words.door}
        </Link>
      ))}
    </p>
  );
}

const TRAVERSE = 'traverse';
const PULL = 'pull';

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
  return (
    <p className={desk.row}>
      {isGear && (
        <Link to="/machine/dial" search={{ machine, what: 'traverse' }} className={buttonClass()}>
          {words.door}
        </Link>
      )}
      <Link to="/machine/dial" search={{ machine, what: 'pull' }} className={buttonClass()}>
        {words.doorPull}
      </Link>
    </p>
  );
}

import { Link } from '@tanstack/react-router';
import { buttonClass } from '../../parts/button.js';
import { PRACTICE_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';

/** The way to the room where nothing can be spoilt. */
export function PracticeDoor() {
  const words = useWords(PRACTICE_WORDS);
  return (
    <Link to="/practice" className={buttonClass()}>
      {words.door}
    </Link>
  );
}

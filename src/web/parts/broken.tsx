import { type ErrorComponentProps, Link, useRouter } from '@tanstack/react-router';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { Button } from './button.js';
import { RoomTitle } from './room-title.js';

/** Where a room fell over: the frame stands, and the person is told what holds and what to do. */
export function Broken({ error, reset }: ErrorComponentProps) {
  const words = useWords(PARTS_WORDS);
  const router = useRouter();
  const again = () => {
    reset();
    void router.invalidate();
  };
  return (
    <div role="alert">
      <RoomTitle title={words.brokenTitle} />
      <p>{words.broken}</p>
      <p>
        <Button kind="main" onClick={again}>
          {words.brokenAgain}
        </Button>
      </p>
      <p>
        <Link to="/">{words.backToDay}</Link>
      </p>
      <p className="quiet">{words.brokenWhat(error instanceof Error ? error.message : String(error))}</p>
    </div>
  );
}

import { Link } from '@tanstack/react-router';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { RoomTitle } from './room-title.js';

/** Where an address leads nowhere. */
export function Lost({ what }: { readonly what?: string }) {
  const words = useWords(PARTS_WORDS);
  return (
    <>
      <RoomTitle title={words.nothingHere} />
      <p>{what ?? words.nothingAtAddress}</p>
      <p>
        <Link to="/">{words.backToDay}</Link>
      </p>
    </>
  );
}

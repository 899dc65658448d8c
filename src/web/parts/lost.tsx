import { Link } from '@tanstack/react-router';
import { RoomTitle } from './room-title.js';

/** Where an address leads nowhere. */
export function Lost({ what = 'There is nothing at this address.' }: { readonly what?: string }) {
  return (
    <>
      <RoomTitle title="Nothing here" />
      <p>{what}</p>
      <p>
        <Link to="/">Back to the day</Link>
      </p>
    </>
  );
}

import { getRouteApi } from '@tanstack/react-router';
import { AskedWireBook } from '../features/wire-room/asked-wire-book.js';
import { OneWireRoom } from '../features/wire-room/one-wire-room.js';
import { SpoolRoom } from '../features/wire-room/spool-room.js';
import { WireRoom } from '../features/wire-room/wire-room.js';
import { Lost } from '../parts/lost.js';
import { useWords } from '../words/language.js';
import { WIRE_WORDS } from '../words/wire.js';

const route = getRouteApi('/wire');

/** All wire of the shop; or one wire, or one spool, where the address names it. */
export function WirePage() {
  const words = useWords(WIRE_WORDS);
  const { wire: wireId, spool: spoolId } = route.useSearch();
  return (
    <AskedWireBook>
      {(lines) => {
        if (spoolId !== undefined) {
          const line = lines.find(({ spools, emptied }) =>
            [...spools, ...emptied].some(({ spool }) => spool.id === spoolId),
          );
          return line ? (
            <SpoolRoom key={spoolId} line={line} spoolId={spoolId} />
          ) : (
            <Lost what={words.missingSpool} />
          );
        }
        if (wireId === undefined) return <WireRoom lines={lines} />;
        const line = lines.find(({ wire }) => wire.id === wireId);
        return line ? (
          <OneWireRoom key={wireId} line={line} lines={lines} />
        ) : (
          <Lost what={words.missingWire} />
        );
      }}
    </AskedWireBook>
  );
}

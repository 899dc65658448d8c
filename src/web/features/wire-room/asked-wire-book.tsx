import type { ReactNode } from 'react';
import { useAllRecords, useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { type WireLine, wireBook } from './wire-book.js';

/** What the shop has of each wire, once all that it is put together from has come. */
export function AskedWireBook({
  children,
}: {
  readonly children: (lines: readonly WireLine[]) => ReactNode;
}) {
  const words = useWords(WIRE_WORDS);
  const wires = useAllRecords('wire');
  const spools = useAllRecords('spool');
  const balances = useReading('balances', { accountPrefix: 'spool/' });
  const covers = useReading('wire-cover', {});
  return (
    <Asked question={wires} what={words.what}>
      {(allWires) => (
        <Asked question={spools} what={words.what}>
          {(allSpools) => (
            <Asked question={balances} what={words.what}>
              {({ items }) =>
                children(
                  wireBook({
                    wires: allWires,
                    spools: allSpools,
                    balances: items,
                    covers: covers.data?.items ?? [],
                  }),
                )
              }
            </Asked>
          )}
        </Asked>
      )}
    </Asked>
  );
}

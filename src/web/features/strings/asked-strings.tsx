import type { ReactNode } from 'react';
import type { LyingStrings } from '../../../contract/index.js';
import { useAllRecords, useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import type { BinRecord } from './strings-book.js';

interface AskedStringsProps {
  readonly children: (bins: readonly BinRecord[], lying: readonly LyingStrings[]) => ReactNode;
}

/** The bins and what lies in them, once both have come. */
export function AskedStrings({ children }: AskedStringsProps) {
  const words = useWords(STRINGS_WORDS);
  const bins = useAllRecords('bin');
  const lying = useReading('strings-lying', {});
  return (
    <Asked question={bins} what={words.what}>
      {(allBins) => (
        <Asked question={lying} what={words.what}>
          {({ items }) => children(allBins, items)}
        </Asked>
      )}
    </Asked>
  );
}

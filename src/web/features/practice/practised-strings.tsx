import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_IN_WORDS, PRACTICE_WORDS } from '../../words/dial-in.js';
import { useWords } from '../../words/language.js';
import type { PractisedString } from './practice-run.js';

interface PractisedStringsProps {
  readonly strings: readonly PractisedString[];
  readonly wantedM: number;
  readonly isTwo: boolean;
}

/** What was wound so far, the latest first, as the micrometer has it. */
export function PractisedStrings({ strings, wantedM, isTwo }: PractisedStringsProps) {
  const words = useWords(PRACTICE_WORDS);
  const dialWords = useWords(DIAL_IN_WORDS);
  const figures = useFigures();
  const rows = strings.map((string, at) => ({ ...string, number: at + 1 })).toReversed();
  type Row = (typeof rows)[number];
  const columns: readonly SheetColumn<Row>[] = [
    { heading: words.string, names: true, whole: true, cell: ({ number }) => number },
    ...(isTwo ? [{ heading: words.position, cell: ({ position }: Row) => position + 1 }] : []),
    {
      heading: words.setTo,
      whole: true,
      cell: ({ setting, setBy }) => {
        const shown = figures.number(setting, 2);
        return setBy === 'override' ? dialWords.byHand(shown) : shown;
      },
    },
    {
      heading: words.mean,
      whole: true,
      cell: ({ errorsM }) => {
        const meanM = errorsM.reduce((sum, each) => sum + each, 0) / errorsM.length;
        return words.off(figures.slight(Math.abs(meanM)), meanM > 0);
      },
    },
    {
      heading: words.places,
      cell: ({ errorsM }) => errorsM.map((errorM) => figures.diameter(wantedM + errorM)).join(' · '),
    },
  ];
  return (
    <SheetTable caption={words.measured} columns={columns} rows={rows} rowKey={({ number }) => number} />
  );
}

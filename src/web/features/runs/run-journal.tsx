import type { ReadingAnswer } from '../../../contract/index.js';
import { useReading } from '../../api/use-records.js';
import { useWho } from '../../api/use-who.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';

type Entry = ReadingAnswer<'journal'>['items'][number];

/** Who did what with the run, newest first. */
export function RunJournal({ runId }: { readonly runId: string }) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const journal = useReading('journal', { recordId: runId, limit: 200 });
  const { journalColumns: heads } = words;
  const columns: readonly SheetColumn<Entry>[] = [
    { heading: heads.at, whole: true, cell: ({ at }) => figures.moment(at) },
    { heading: heads.by, cell: ({ by }) => whoOf(by) },
    { heading: heads.what, wide: true, cell: ({ useCase }) => words.did[useCase] ?? useCase },
  ];
  return (
    <section className={desk.part} aria-labelledby="journal">
      <h2 id="journal">{words.journal}</h2>
      <Asked question={journal} what={words.journal}>
        {({ items }) => (
          <SheetTable caption={words.journal} columns={columns} rows={items} rowKey={({ id }) => id} />
        )}
      </Asked>
    </section>
  );
}

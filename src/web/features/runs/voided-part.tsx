import type { ReadingAnswer } from '../../../contract/index.js';
import { useReading } from '../../api/use-records.js';
import { useWho } from '../../api/use-who.js';
import desk from '../../parts/desk.module.css';
import { SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';

type Voided = ReadingAnswer<'voided-entries'>['items'][number];

/** What was entered for the run and taken back, by whom and why; nothing where nothing was. */
export function VoidedPart({ runId }: { readonly runId: string }) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const called = useVoidedCalled();
  const voided = useReading('voided-entries', { runId }).data?.items ?? [];
  if (voided.length === 0) return null;
  const { voidedColumns: heads } = words;
  const when = ({ by, at }: { readonly by: string; readonly at: string }) =>
    words.whoAndWhen(whoOf(by), figures.moment(at));
  return (
    <section className={desk.part} aria-labelledby="voided">
      <h2 id="voided">{words.voided}</h2>
      <p className={desk.lead}>{words.voidedLead}</p>
      <SheetTable
        caption={words.voided}
        columns={[
          { heading: heads.what, names: true, cell: ({ was }) => called(was) },
          { heading: heads.entered, whole: true, cell: ({ was }) => when(was) },
          { heading: heads.back, whole: true, cell: when },
          { heading: heads.why, cell: ({ reason }) => reason },
        ]}
        rows={voided}
        rowKey={({ id }) => id}
      />
    </section>
  );
}

function useVoidedCalled(): (was: Voided['was']) => string {
  const { voidedWas: said } = useWords(RUNS_WORDS);
  const figures = useFigures();
  return (was) => {
    if (was.of === 'trial-string') return said.trial(was.number);
    if (was.of === 'tally') {
      const count = figures.number(was.count);
      return was.outcome === 'good' ? said.good(count) : said.scrap(count, was.reason);
    }
    const { quantity, value } = was;
    if (quantity === 'mass') return said.reading(figures.weight(value));
    return said.reading(quantity === 'length' ? figures.length(value) : figures.diameter(value));
  };
}

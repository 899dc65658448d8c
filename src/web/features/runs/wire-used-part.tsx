import { Link } from '@tanstack/react-router';
import { useAllRecords } from '../../api/use-records.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';
import type { WireTaken } from './use-run-wire.js';

/** What the run took off each spool: wound into strings, and scrap. */
export function WireUsedPart({ taken }: { readonly taken: readonly WireTaken[] }) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const spools = useAllRecords('spool').data ?? [];
  const { wireColumns: heads } = words;
  const columns: readonly SheetColumn<WireTaken>[] = [
    {
      heading: heads.spool,
      names: true,
      cell: ({ spoolId }) => (
        <Link to="/wire" search={{ spool: spoolId }}>
          {spools.find(({ id }) => id === spoolId)?.body.name ?? '…'}
        </Link>
      ),
    },
    { heading: heads.wound, figures: true, cell: ({ woundKg }) => figures.weight(woundKg) },
    { heading: heads.scrap, figures: true, cell: ({ scrapKg }) => figures.weight(scrapKg) },
    {
      heading: heads.all,
      figures: true,
      cell: ({ woundKg, scrapKg }) => figures.weight(woundKg + scrapKg),
    },
    { heading: heads.length, figures: true, cell: ({ metres }) => figures.metres(metres) },
    { heading: heads.when, whole: true, cell: ({ at }) => figures.moment(at) },
  ];
  return (
    <section className={desk.part} aria-labelledby="wire-used">
      <h2 id="wire-used">{words.wire}</h2>
      {taken.length === 0 ? (
        <p className="quiet">{words.wireNone}</p>
      ) : (
        <SheetTable
          caption={words.wire}
          columns={columns}
          rows={taken}
          rowKey={({ spoolId, at }) => `${spoolId} ${at}`}
        />
      )}
    </section>
  );
}

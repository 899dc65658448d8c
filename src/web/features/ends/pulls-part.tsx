import { jointInWords } from '../../../contract/index.js';
import { jointStrength, PROOF_SHARE, pullsOf } from '../../../core/winding/index.js';
import { useMay } from '../../api/session.js';
import { useReading } from '../../api/use-records.js';
import { useShopView } from '../../api/use-shop.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { kindsOfEnd, type PulledKind } from './kinds-of-end.js';

interface PullsPartProps {
  /** Of which wire, spool or bench. */
  readonly query: { readonly wireId: string } | { readonly spoolId: string } | { readonly machineId: string };
}

const LATEST = 500;

/** What the pull tests of a wire, a spool or a bench say: kind by kind, and in sentences where there is one kind alone. Nothing
 * for those who may not see runs. */
export function PullsPart({ query }: PullsPartProps) {
  const words = useWords(ENDS_WORDS);
  const may = useMay()('run.read');
  const checks = useReading('end-checks', { ...query, limit: LATEST }, { enabled: may });
  if (!may) return null;
  return (
    <section className={desk.part} aria-labelledby="pulls">
      <h2 id="pulls">{words.says}</h2>
      <Asked question={checks} what={words.loading}>
        {({ items }) => {
          const kinds = kindsOfEnd(items.toReversed());
          const [only, ...others] = kinds;
          if (!only) return <p className="quiet">{words.noPulls}</p>;
          return (
            <>
              <KindsTable kinds={kinds} />
              {others.length === 0 && (
                <ul>
                  {jointInWords(jointStrength(pullsOf(only.rows), PROOF_SHARE)).map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
                </ul>
              )}
              <p className="quiet">{words.source}</p>
            </>
          );
        }}
      </Asked>
    </section>
  );
}

function KindsTable({ kinds }: { readonly kinds: readonly PulledKind[] }) {
  const words = useWords(ENDS_WORDS);
  const figures = useFigures();
  const wires = useShopView().data?.ids.wires ?? {};
  const { kindColumns: heads } = words;
  const nameOf = (wireId: string) => Object.entries(wires).find(([, id]) => id === wireId)?.[0] ?? wireId;
  const rows = kinds.map((kind) => ({ ...kind, joint: jointStrength(pullsOf(kind.rows), PROOF_SHARE) }));
  const between = (range: { readonly low: number; readonly high: number } | undefined) =>
    range ? words.between(figures.share(range.low), figures.share(range.high)) : words.notLooked;
  const columns: readonly SheetColumn<(typeof rows)[number]>[] = [
    {
      heading: heads.kind,
      names: true,
      cell: ({ wireId, end }) => words.kindOf(nameOf(wireId), words.ends[end]),
    },
    { heading: heads.tried, figures: true, cell: ({ joint }) => figures.number(joint.tried) },
    { heading: heads.good, figures: true, cell: ({ joint }) => figures.number(joint.good) },
    { heading: heads.holds, whole: true, cell: ({ joint }) => between(joint.holds) },
    { heading: heads.middle, whole: true, cell: ({ joint }) => between(joint.efficiency) },
  ];
  return (
    <SheetTable
      caption={words.says}
      columns={columns}
      rows={rows}
      rowKey={({ wireId, end }) => `${wireId} ${end}`}
    />
  );
}

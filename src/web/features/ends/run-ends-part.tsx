import type { ShopView } from '../../../contract/index.js';
import { type EndSheet, standingChecks } from '../../../core/winding/index.js';
import type { RecordOf } from '../../api/use-records.js';
import { useShopView } from '../../api/use-shop.js';
import { useWho } from '../../api/use-who.js';
import { useWholeReading } from '../../api/use-whole-reading.js';
import desk from '../../parts/desk.module.css';
import { useFigures } from '../../sight/figures.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { EndsTable } from './ends-table.js';
import { useCoreSheet } from './use-core-sheet.js';
import type { KeptCheck } from './use-end-checks.js';

type Run = RecordOf<'run'>;

/** What was found of a run's ends, at the desk; of a wound string nothing where nobody looked at its cores. */
export function RunEndsPart({ run }: { readonly run: Run }) {
  const words = useWords(ENDS_WORDS);
  const view = useShopView().data;
  const checks = standingChecks(useWholeReading('end-checks', { runId: run.id }).data ?? []);
  const [first] = checks;
  if (!first && run.body.spec.kind === 'wound') return null;
  return (
    <section className={desk.part} aria-labelledby="run-ends">
      <h2 id="run-ends">{run.body.spec.kind === 'wound' ? words.foundOfCores : words.found}</h2>
      {!first && <p className="quiet">{words.none}</p>}
      {first &&
        (view ? (
          <Judged run={run} checks={checks} benchId={first.machineId} view={view} />
        ) : (
          <Found checks={checks} sheet={undefined} />
        ))}
    </section>
  );
}

interface JudgedProps {
  readonly run: Run;
  readonly checks: readonly KeptCheck[];
  readonly benchId: string;
  readonly view: ShopView;
}

function Judged({ run, checks, benchId, view }: JudgedProps) {
  const made = useCoreSheet(run, benchId, view);
  return <Found checks={checks} sheet={made.kind === 'sheet' ? made.ends : undefined} />;
}

interface FoundProps {
  readonly checks: readonly KeptCheck[];
  readonly sheet: EndSheet | undefined;
}

function Found({ checks, sheet }: FoundProps) {
  const words = useWords(ENDS_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  return (
    <EndsTable
      rows={checks}
      numberOf={(row) => checks.indexOf(row) + 1}
      sheet={sheet}
      more={[
        { heading: words.columns.gauge, cell: ({ gauge }) => gauge || words.notLooked },
        { heading: words.columns.at, whole: true, cell: ({ at }) => figures.moment(at) },
        { heading: words.columns.by, cell: ({ by }) => whoOf(by) },
      ]}
    />
  );
}

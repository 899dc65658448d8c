import { Link } from '@tanstack/react-router';
import { stringKeyInWords } from '../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import styles from '../../parts/floor.module.css';
import { useFigures } from '../../sight/figures.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';

/** Runs of wound strings that are planned: their cores get their ends at the bench first. Nothing where there are none. */
export function CoresList() {
  const words = useWords(ENDS_WORDS);
  const planned = useAllRecords('run', { state: 'planned' }).data ?? [];
  const machines = useAllRecords('machine').data ?? [];
  const wound = planned.filter(({ body }) => body.spec.kind === 'wound');
  if (wound.length === 0) return null;
  const nameOf = (id: string) => machines.find((machine) => machine.id === id)?.body.name ?? '';
  return (
    <section aria-label={words.cores} className={styles.part}>
      <h2>{words.cores}</h2>
      <p className="quiet">{words.coresLead}</p>
      <ul className={styles.runs}>
        {wound.map((run) => (
          <CoresLine key={run.id} run={run} machineName={nameOf(run.body.machineId)} />
        ))}
      </ul>
    </section>
  );
}

function CoresLine({ run, machineName }: { readonly run: RecordOf<'run'>; readonly machineName: string }) {
  const words = useWords(ENDS_WORDS);
  const figures = useFigures();
  const { short, material } = stringKeyInWords(run.body.stringKey);
  return (
    <li>
      <Link to="/machine" search={{ run: run.id }} className={styles.run}>
        <span className={styles.lines}>
          <strong className={styles.gauge}>{short}</strong>
          <span>{material}</span>
        </span>
        <span className={styles.lines}>
          <span>{words.coresWanted(figures.number(run.body.quantity))}</span>
          <span className="quiet">{[run.body.name, words.coresFor(machineName)].join(', ')}</span>
        </span>
      </Link>
    </li>
  );
}

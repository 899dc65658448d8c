import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { stringKeyInWords } from '../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { useFigures } from '../../sight/figures.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';
import { RunState } from '../machine/run-state.js';
import { runsAhead } from '../machine/runs-ahead.js';

/** So many are shown at once. */
const SHOWN = 6;

/** Runs of wound strings that are planned, in the order of the plan: their cores get their ends at the bench first. Nothing where
 * there are none. */
export function CoresList() {
  const words = useWords(ENDS_WORDS);
  const machineWords = useWords(MACHINE_WORDS);
  const runs = useAllRecords('run', { state: 'planned' }).data ?? [];
  const machines = useAllRecords('machine').data ?? [];
  const plans = (useAllRecords('plan', { state: 'in-force' }).data ?? []).map(({ body }) => body);
  const [showsAll, setShowsAll] = useState(false);
  const wound = runsAhead(runs, plans).planned.filter(({ body }) => body.spec.kind === 'wound');
  const shown = showsAll ? wound : wound.slice(0, SHOWN);
  if (wound.length === 0) return null;
  const nameOf = (id: string) => machines.find((machine) => machine.id === id)?.body.name ?? '';
  return (
    <section aria-label={words.cores} className={styles.part}>
      <h2>{words.cores}</h2>
      <p className="quiet">{words.coresLead}</p>
      <ul className={styles.runs}>
        {shown.map((run) => (
          <CoresLine key={run.id} run={run} machineName={nameOf(run.body.machineId)} />
        ))}
      </ul>
      {shown.length < wound.length && (
        <Button size="floor" onClick={() => setShowsAll(true)}>
          {machineWords.moreRuns(wound.length - shown.length)}
        </Button>
      )}
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
        <RunState state={run.state} />
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

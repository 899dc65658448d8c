import { Link } from '@tanstack/react-router';
import { formatFraction } from '../../../core/units/index.js';
import type { SetPoint } from '../../../core/winding/index.js';
import { useMay } from '../../api/session.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import styles from './set-up.module.css';

/** The past runs that a tension leans on, each with its share; who may see runs can open them. */
export function LeanedOn({ point }: { readonly point: SetPoint }) {
  const words = useWords(SET_UP_WORDS);
  const mayOpen = useMay()('run.read');
  if (point.kind === 'unknown' || point.leanedOn.length === 0) return null;
  const more = point.runs - point.leanedOn.length;
  return (
    <>
      <p className={styles.under}>{words.leansOn}</p>
      <ul className={styles.leaned}>
        {point.leanedOn.map(({ name, runId, date, machineId, share }) => (
          <li key={runId ?? `${name} ${date} ${share}`}>
            {runId !== undefined && mayOpen ? (
              <Link to="/runs/$id" params={{ id: runId }}>
                {name ?? words.aRun}
              </Link>
            ) : (
              (name ?? words.aRun)
            )}
            {words.runTold(
              date !== undefined && name?.includes(date) ? undefined : date,
              machineId,
              formatFraction(share),
            )}
          </li>
        ))}
        {more > 0 && <li>{words.moreRuns(more)}</li>}
      </ul>
    </>
  );
}

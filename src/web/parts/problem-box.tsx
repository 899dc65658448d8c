import type { ProblemDetails } from '../../contract/index.js';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import styles from './problem-box.module.css';

/** What the shop refused, in its own words: what is wrong and how to mend it, each place by itself where there are several. */
export function ProblemBox({ problem }: { readonly problem: ProblemDetails | undefined }) {
  const words = useWords(PARTS_WORDS);
  if (!problem) return null;
  return (
    <div role="alert" className={styles.box}>
      <p className="care">{words.refused}</p>
      <p>{problem.detail}</p>
      {placesOf(problem).length > 0 && (
        <ul>
          {placesOf(problem).map(({ where, what }) => (
            <li key={`${where}${what}`}>
              {where && <strong>{where}: </strong>}
              {what}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

interface Place {
  readonly where: string;
  readonly what: string;
}

/** Problems of single fields, as the server lists them. */
function placesOf(problem: ProblemDetails): readonly Place[] {
  const { problems } = problem as { readonly problems?: unknown };
  if (!Array.isArray(problems)) return [];
  return problems.map((each: { readonly path?: string; readonly message?: string }) => ({
    where: each.path ?? '',
    what: each.message ?? JSON.stringify(each),
  }));
}

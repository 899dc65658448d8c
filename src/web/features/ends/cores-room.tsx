import { Link } from '@tanstack/react-router';
import { type ShopView, unableInWords } from '../../../contract/index.js';
import type { RecordOf } from '../../api/use-records.js';
import styles from '../../parts/floor.module.css';
import { StringHead } from '../../parts/string-head.js';
import { useFigures } from '../../sight/figures.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { CautionsBox } from '../set-up/cautions-box.js';
import setUp from '../set-up/set-up.module.css';
import { EndPart } from './end-part.js';
import { EndsStep } from './ends-step.js';
import { useCoreSheet } from './use-core-sheet.js';

interface CoresRoomProps {
  readonly run: RecordOf<'run'>;
  readonly benchId: string;
  readonly view: ShopView;
}

/** The cores of a wound string's run at the bench: the sheet, cautions first, and the checks under it. */
export function CoresRoom({ run, benchId, view }: CoresRoomProps) {
  const words = useWords(ENDS_WORDS);
  const figures = useFigures();
  const made = useCoreSheet(run, benchId, view);
  const isOver = run.state === 'closed' || run.state === 'abandoned';
  return (
    <article className={styles.room}>
      <header className={styles.runHead}>
        <StringHead
          stringKey={run.body.stringKey}
          name={words.coresOf(run.body.name)}
          back={
            <Link to="/machine" className={styles.back}>
              {words.back}
            </Link>
          }
        />
        <p className={styles.progress}>{words.coresWanted(figures.number(run.body.quantity))}</p>
      </header>
      {made.kind === 'no-recipe' && <p>{words.noSheet}</p>}
      {made.kind === 'unable' && (
        <section className={styles.part}>
          <p>{words.cannot}</p>
          <ul>
            {made.reasons.map((reason) => (
              <li key={reason.code}>{unableInWords(reason)}</li>
            ))}
          </ul>
        </section>
      )}
      {made.kind === 'sheet' && (
        <>
          <div className={setUp.sheet}>
            <CautionsBox sheet={made.ends} />
            <EndPart ends={made.ends} />
          </div>
          {isOver ? (
            <p className={styles.said}>{words.noCores}</p>
          ) : (
            <EndsStep
              run={run}
              machineId={benchId}
              ends={made.ends}
              wireId={view.ids.wires[made.ends.wireId] ?? ''}
            />
          )}
        </>
      )}
    </article>
  );
}

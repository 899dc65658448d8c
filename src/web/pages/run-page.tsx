import { getRouteApi, Link } from '@tanstack/react-router';
import { dateInWords, stringKeyInWords } from '../../contract/index.js';
import type { Day, DayRun } from '../../core/day/index.js';
import type { SetUpSheet } from '../../core/winding/index.js';
import { useDay } from '../api/use-day.js';
import { runWords } from '../features/lanes/run-words.js';
import { machineNames } from '../features/orders/order-words.js';
import { SetUpPart } from '../features/set-up/set-up-part.js';
import { useMadeString } from '../features/set-up/use-made-string.js';
import { Asked } from '../parts/asked.js';
import { Lost } from '../parts/lost.js';
import { RoomTitle } from '../parts/room-title.js';
import styles from './run-page.module.css';

const route = getRouteApi('/runs/$lotId');

/** The set-up sheet of one run, as it hangs at the machine. */
export function RunPage() {
  const { lotId } = route.useParams();
  return (
    <Asked question={useDay()} what="the set-up sheet">
      {(day) => {
        const run = day.plan.runs.find((each) => each.lotId === lotId);
        return run ? (
          <RunRoom key={lotId} day={day} run={run} />
        ) : (
          <Lost what={`The plan has no lot ${lotId}.`} />
        );
      }}
    </Asked>
  );
}

function RunRoom({ day, run }: { readonly day: Day; readonly run: DayRun }) {
  const sheet = day.sheets.find(({ lotId }) => lotId === run.lotId);
  const { short, material, finish } = stringKeyInWords(run.stringKey);
  const { quantity, times, promised, why } = runWords(run, day);
  return (
    <article className={styles.run}>
      <header className={styles.head}>
        <div>
          <RoomTitle title={short} />
          <p className={styles.lead}>{[material, finish].filter(Boolean).join(', ')}</p>
          <p className={styles.lead}>{quantity}</p>
        </div>
        <div className={styles.machine}>
          <p className={styles.name}>{machineNames(day)(run.machineId)}</p>
          <p>
            {run.lotId}, recipe {run.recipeId}
          </p>
          <p>{times}</p>
        </div>
      </header>
      <p>
        {promised}. <em>{why}</em>
      </p>
      {sheet ? (
        <Sheet sheet={sheet} />
      ) : (
        <p>
          This run starts on {dateInWords(run.setUpFrom.date)}. Its set-up sheet is made on that day, from
          what stands on the machine then.
        </p>
      )}
      <Neighbours day={day} run={run} />
    </article>
  );
}

const Sheet = ({ sheet }: { readonly sheet: SetUpSheet }) => (
  <SetUpPart sheet={sheet} made={useMadeString(sheet.recipeId)} />
);

/** The runs before and after on the same machine. */
function Neighbours({ day, run }: { readonly day: Day; readonly run: DayRun }) {
  const lane = day.plan.runs.filter(({ machineId }) => machineId === run.machineId);
  const at = lane.findIndex(({ lotId }) => lotId === run.lotId);
  return (
    <nav aria-label="Runs on this machine" className={styles.neighbours}>
      <Neighbour words="Before" run={lane[at - 1]} />
      <Link to="/" className={styles.door}>
        The day’s plan
      </Link>
      <Neighbour words="Next" run={lane[at + 1]} />
    </nav>
  );
}

function Neighbour({ words, run }: { readonly words: string; readonly run: DayRun | undefined }) {
  if (!run) return <span />;
  return (
    <Link to="/runs/$lotId" params={{ lotId: run.lotId }} className={styles.door}>
      {words}: {stringKeyInWords(run.stringKey).short} ({run.lotId})
    </Link>
  );
}

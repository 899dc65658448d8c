import { getRouteApi, Link } from '@tanstack/react-router';
import { stringKeyInWords } from '../../contract/index.js';
import type { Day, DayRun } from '../../core/day/index.js';
import type { SetUpSheet } from '../../core/winding/index.js';
import { useReading } from '../api/use-records.js';
import { runWords } from '../features/lanes/run-words.js';
import { machineNames } from '../features/orders/order-words.js';
import { paperAddress } from '../features/plan/papers-part.js';
import { SetUpPart } from '../features/set-up/set-up-part.js';
import { useMadeString } from '../features/set-up/use-made-string.js';
import { Asked } from '../parts/asked.js';
import { Explained } from '../parts/explained.js';
import { Facts } from '../parts/facts.js';
import { Lost } from '../parts/lost.js';
import { RoomTitle } from '../parts/room-title.js';
import { useFigures } from '../sight/figures.js';
import { useWords } from '../words/language.js';
import { PLAN_WORDS } from '../words/plan.js';
import styles from './planned-lot-page.module.css';

const route = getRouteApi('/plan/$lotId');

/** The set-up sheet of one run, as it hangs at the machine. */
export function PlannedLotPage() {
  const words = useWords(PLAN_WORDS);
  const { lotId } = route.useParams();
  const { date } = route.useSearch();
  return (
    <Asked question={useReading('plan-view', date === undefined ? {} : { date })} what={words.sheet}>
      {({ day }) => {
        const run = day.plan.runs.find((each) => each.lotId === lotId);
        return run ? <RunRoom key={lotId} day={day} run={run} /> : <Lost what={words.noLot(lotId)} />;
      }}
    </Asked>
  );
}

function RunRoom({ day, run }: { readonly day: Day; readonly run: DayRun }) {
  const words = useWords(PLAN_WORDS);
  const figures = useFigures();
  const { lotId } = run;
  const sheet = day.sheets.find((each) => each.lotId === lotId);
  const { short, material, finish } = stringKeyInWords(run.stringKey);
  const { quantity, times, promised, why } = runWords(run, day, words);
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
          <p>{words.recipe(lotId, run.recipeId)}</p>
          <p>{times}</p>
        </div>
      </header>
      <p>
        {`${promised}. `}
        <em>{why}</em>
      </p>
      {sheet && <Minutes sheet={sheet} run={run} />}
      {sheet ? <Sheet sheet={sheet} /> : <p>{words.startsOn(figures.date(run.setUpFrom.date))}</p>}
      {sheet && (
        <p className="on-screen">
          <a
            href={paperAddress('set-up-sheets', { date: day.date, lot: lotId })}
            target="_blank"
            rel="noreferrer"
            className={styles.door}
          >
            {words.printSheet}
          </a>
        </p>
      )}
      <Neighbours day={day} run={run} />
    </article>
  );
}

/** How long it is expected to take, and what it costs in strings. */
function Minutes({ sheet, run }: { readonly sheet: SetUpSheet; readonly run: DayRun }) {
  const { minutesOf: words } = useWords(PLAN_WORDS);
  const { number } = useFigures();
  const { cycleSeconds, positions } = sheet;
  return (
    <Facts
      facts={[
        {
          name: words.setUp,
          value: (
            <Explained
              name={words.setUp}
              what={words.setUpWhat}
              formula={words.setUpFormula}
              source={words.setUpSource}
            >
              {words.minutes(number(Math.ceil(run.setUpMinutes)))}
            </Explained>
          ),
        },
        {
          name: words.run,
          value: (
            <Explained
              name={words.run}
              what={words.runWhat}
              formula={words.runFormula}
              source={words.runSource}
            >
              {words.seconds(number(cycleSeconds, 0))}
            </Explained>
          ),
          under: words.runAtOnce(positions),
        },
        {
          name: words.scrap,
          value: (
            <Explained
              name={words.scrap}
              what={words.scrapWhat}
              formula={words.scrapFormula}
              source={words.setUpSource}
            >
              {number(run.scrapStrings, 1)}
            </Explained>
          ),
        },
      ]}
    />
  );
}

const Sheet = ({ sheet }: { readonly sheet: SetUpSheet }) => (
  <SetUpPart sheet={sheet} made={useMadeString(sheet.recipeId)} />
);

/** The runs before and after on the same machine. */
function Neighbours({ day, run }: { readonly day: Day; readonly run: DayRun }) {
  const words = useWords(PLAN_WORDS);
  const lane = day.plan.runs.filter(({ machineId }) => machineId === run.machineId);
  const at = lane.findIndex(({ lotId }) => lotId === run.lotId);
  const { date } = day;
  return (
    <nav aria-label={words.neighbours} className={styles.neighbours}>
      <Neighbour words={words.beforeIt} run={lane[at - 1]} date={date} />
      <Link to="/plan" search={{ date }} className={styles.door}>
        {words.dayPlan}
      </Link>
      <Neighbour words={words.next} run={lane[at + 1]} date={date} />
    </nav>
  );
}

interface NeighbourProps {
  readonly words: string;
  readonly run: DayRun | undefined;
  readonly date: string;
}

function Neighbour({ words, run, date }: NeighbourProps) {
  const { neighbour } = useWords(PLAN_WORDS);
  if (!run) return <span />;
  const { lotId, stringKey } = run;
  return (
    <Link to="/plan/$lotId" params={{ lotId }} search={{ date }} className={styles.door}>
      {neighbour(words, stringKeyInWords(stringKey).short, lotId)}
    </Link>
  );
}

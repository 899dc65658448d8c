import { useReading } from '../api/use-records.js';
import { FirstSteps } from '../features/today/first-steps.js';
import { NeedsPart } from '../features/today/needs-part.js';
import { Asked } from '../parts/asked.js';
import { Empty } from '../parts/empty.js';
import { RoomTitle } from '../parts/room-title.js';
import { useFigures } from '../sight/figures.js';
import { useWords } from '../words/language.js';
import { TODAY_WORDS } from '../words/today.js';
import styles from './today-page.module.css';

/** What needs a person now. It is asked anew whenever anything in the shop changes. */
export function TodayPage() {
  const words = useWords(TODAY_WORDS);
  return (
    <Asked question={useReading('needs', {})} what={words.what}>
      {({ at, needs }) => (
        <div className={styles.today}>
          <header className={styles.head}>
            <RoomTitle title={words.title} />
            <Lead at={at} all={needs.length} now={needs.filter(({ urgency }) => urgency === 'now').length} />
          </header>
          <FirstSteps />
          {needs.length === 0 ? (
            <Empty what={words.nothing}>
              <p>{words.nothingMore}</p>
            </Empty>
          ) : (
            <NeedsPart needs={needs} />
          )}
        </div>
      )}
    </Asked>
  );
}

function Lead({ at, all, now }: { readonly at: string; readonly all: number; readonly now: number }) {
  const words = useWords(TODAY_WORDS);
  const { moment } = useFigures();
  return (
    <>
      <p className="quiet">{moment(at)}</p>
      {all > 0 && (
        <p role="status" className={styles.summary}>
          {words.summary(all, now)}
        </p>
      )}
    </>
  );
}

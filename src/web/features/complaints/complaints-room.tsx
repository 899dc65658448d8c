import { Link } from '@tanstack/react-router';
import { addDays, type CalendarDate } from '../../../core/foundation/index.js';
import { COMPLAINT_FAULTS } from '../../../core/stock/index.js';
import { useMay } from '../../api/session.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { RoomTitle } from '../../parts/room-title.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import { ComplaintsList } from './complaints-list.js';
import type { ListWish } from './narrow-complaints.js';
import { RatesPart } from './rates-part.js';
import { SourcesPart } from './sources-part.js';

const USUAL_DAYS = 365;

/** What players wrote, and whether it comes from somewhere. */
export function ComplaintsRoom({ wish }: { readonly wish: ListWish }) {
  const { list: words } = useWords(COMPLAINTS_WORDS);
  const may = useMay();
  const today = useReading('now', {}).data?.today;
  const days = Number(wish.days) || USUAL_DAYS;
  const fault = COMPLAINT_FAULTS.find((each) => each === wish.fault);
  const question = useReading(
    'complaint-register',
    {
      ...(today ? { from: addDays(today as CalendarDate, 1 - days) } : {}),
      ...(fault ? { fault } : {}),
    },
    { enabled: today !== undefined },
  );
  return (
    <div className={desk.room}>
      <header className={desk.head}>
        <div>
          <RoomTitle title={words.title} />
          <p className={desk.lead}>{words.lead}</p>
        </div>
        {may('complaint.register') && (
          <Link to="/complaints/$id" params={{ id: 'new' }} className={buttonClass('main')}>
            {words.register}
          </Link>
        )}
      </header>
      <Asked question={question} what={words.what}>
        {(register) => (
          <>
            <ComplaintsList register={register} wish={wish} days={days} />
            <RatesPart register={register} />
            <SourcesPart register={register} />
          </>
        )}
      </Asked>
    </div>
  );
}

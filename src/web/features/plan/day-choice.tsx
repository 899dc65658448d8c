import { TextInput } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import { addDays, type CalendarDate, calendarDate } from '../../../core/foundation/index.js';
import { buttonClass } from '../../parts/button.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import styles from './plan.module.css';

/** Which day's plan is looked at: the day before, the day after, any other. */
export function DayChoice({ date }: { readonly date: CalendarDate }) {
  const words = useWords(PLAN_WORDS);
  const navigate = useNavigate();
  return (
    <nav aria-label={words.day} className={styles.choice}>
      <Link to="/plan" search={{ date: addDays(date, -1) }} className={buttonClass()}>
        <span aria-hidden="true">‹</span>
        <span className="unseen">{words.dayBefore}</span>
      </Link>
      <TextInput
        type="date"
        aria-label={words.day}
        value={date}
        onChange={({ currentTarget: { value } }) => {
          const wanted = calendarDate(value);
          if (wanted) void navigate({ to: '/plan', search: { date: wanted } });
        }}
      />
      <Link to="/plan" search={{ date: addDays(date, 1) }} className={buttonClass()}>
        <span aria-hidden="true">›</span>
        <span className="unseen">{words.dayAfter}</span>
      </Link>
      <Link to="/plan" search={{}} className={buttonClass()}>
        {words.today}
      </Link>
    </nav>
  );
}
